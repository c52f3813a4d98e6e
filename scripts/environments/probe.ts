// Results of every core room, as numbers: the same wherever the library runs.
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  coverageInterval,
  depthOf,
  dewPoint,
  dryAir,
  equalise,
  fractionOf,
  freeGas,
  gasState,
  gauge,
  internalVolumeOf,
  isoStandard,
  kilogramPerCubicMetre,
  litre,
  litrePerMinute,
  measure,
  metre,
  molarDensity,
  parseQuantity,
  practicalSalinityOf,
  pressureAtDepth,
  propagateBySampling,
  readStamp,
  recordSlips,
  rectangular,
  roundNumber,
  seawaterDensity,
  speedOfSoundInWater,
  temperatureOf,
  trimix,
  viscosity,
} from '../../src/index.ts'

/** Numbers by name, and texts that must not depend on the place. */
export function probe(): { readonly numbers: Record<string, number>; readonly texts: Record<string, string> } {
  const temperature = temperatureOf(10, celsius)
  const pressure = absolute(200, bar)
  const mixed = trimix({ oxygen: 0.18, helium: 0.45 })
  const state = gasState(mixed, { pressure, temperature })
  const sea = { salinity: practicalSalinityOf(35), temperature, pressure: absolute(5, bar) }
  const cylinder = (p: number, volume: number) => ({
    internalVolume: internalVolumeOf(volume, litre),
    pressure: absolute(p, bar),
    temperature,
    mixture: dryAir,
  })
  const stamp = readStamp('DOT-3AA2250 AB12345 05A10+', { asOf: '2026-11' })
  const trials = propagateBySampling(
    ({ rate, depth }) =>
      rate *
      pressureAtDepth({
        depth,
        surfacePressure: absolute(1, atmosphere),
        density: measure(1025, kilogramPerCubicMetre),
      }),
    {
      rate: rectangular(measure(20, litrePerMinute), measure(2, litrePerMinute)),
      depth: rectangular(depthOf(30, metre), depthOf(1, metre)),
    },
    { trials: 1000, seed: 1 },
  )
  return {
    numbers: {
      density: state.density,
      enthalpy: state.molarEnthalpy,
      sound: state.speedOfSound,
      viscosity: viscosity(mixed, { pressure, temperature }),
      air: molarDensity(dryAir, pressure, temperature),
      freeGas: freeGas(
        {
          internalVolume: internalVolumeOf(12, litre),
          gaugePressure: gauge(232, bar),
          ambientPressure: absolute(1, atmosphere),
          temperature,
          mixture: dryAir,
        },
        { reference: isoStandard },
      ),
      depth: pressureAtDepth({
        depth: depthOf(30, metre),
        surfacePressure: absolute(1, atmosphere),
        density: measure(1025, kilogramPerCubicMetre),
      }),
      sea: seawaterDensity(sea),
      soundInWater: speedOfSoundInWater(sea),
      dewPoint: dewPoint({ waterFraction: fractionOf(67e-6), pressure }).temperature,
      equalised: equalise([cylinder(250, 50), cylinder(50, 12)], { heat: 'adiabatic' }).pressure,
      parsed: parseQuantity('3000 psi', 'gauge pressure'),
      samples: coverageInterval(trials, 0.95).high,
    },
    texts: {
      rounded: roundNumber(1234.5, { decimals: 0 }).text,
      stamp: JSON.stringify(stamp),
      slip: recordSlips({ depth: depthOf(130, metre), 'oxygen fraction': fractionOf(0.21) })
        .slips.map(({ id }) => id)
        .join(),
      mixture: JSON.stringify(mixed),
    },
  }
}
