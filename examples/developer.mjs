// For people who build apps: typed quantities in, a checked number out.
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  dryAir,
  freeGas,
  gauge,
  internalVolumeOf,
  inUnit,
  isoStandard,
  litre,
  temperatureOf,
} from 'litrebar'

const cylinder = {
  internalVolume: internalVolumeOf(12, litre),
  gaugePressure: gauge(232, bar), // a gauge pressure does not fit where an absolute one belongs
  ambientPressure: absolute(1, atmosphere),
  temperature: temperatureOf(15, celsius),
  mixture: dryAir,
}
for (const gas of ['real', 'ideal']) {
  console.log(`${gas}: ${inUnit(freeGas(cylinder, { reference: isoStandard, gas }), litre).toFixed(0)} L of free air`)
}
