// Fills by partial pressures per second: three gases, real gas, every target different, so that no mixture is met twice.
import { planBlend } from '../src/cylinder/index.ts'
import { dryAir, nitrox, pureGas, trimix } from '../src/gas-law/index.ts'
import { absolute, bar, celsius, fractionOf, internalVolumeOf, litre, temperatureOf } from '../src/units/index.ts'

const runs = 7
const blends = 20_000
const shared = {
  internalVolume: internalVolumeOf(12, litre),
  gases: [pureGas('helium'), pureGas('oxygen'), nitrox(0.21)],
  temperature: temperatureOf(20, celsius),
}
const withAir = { ...shared, gases: [pureGas('helium'), pureGas('oxygen'), dryAir] }
const cases = {
  'empty cylinder, top gas 21/79': { ...shared, start: { mixture: nitrox(0.21), pressure: absolute(0, bar) } },
  'empty cylinder, top gas air of four gases': { ...withAir, start: { mixture: dryAir, pressure: absolute(0, bar) } },
  '40 bar of trimix left, top gas 21/79': {
    ...shared,
    start: { mixture: trimix({ oxygen: 0.2, helium: 0.3 }), pressure: absolute(40, bar) },
  },
}

let sink = 0
for (const [name, order] of Object.entries(cases)) {
  const rates = Array.from({ length: runs }, (_, run) => {
    const began = performance.now()
    for (let k = 0; k < blends; k++) {
      const oxygen = fractionOf(0.18 + (k + run * blends) * 1e-7)
      const target = { oxygen, helium: fractionOf(0.45), pressure: absolute(232, bar) }
      sink += planBlend({ ...order, target }).amount
    }
    return (1000 * blends) / (performance.now() - began)
  }).sort((a, b) => a - b)
  console.log(`${name}: median ${rates[runs >> 1]?.toFixed(0)} blends/s, slowest run ${rates[0]?.toFixed(0)}`)
}
console.log(sink > 0 ? '' : 'nothing was blended')
