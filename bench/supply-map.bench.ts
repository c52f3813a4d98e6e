// What one first stage can feed: compiling a supply, and a million cells of supply over demand, by the ideal formula and by the real gas.
import { dryAir, trimix } from '../src/gas-law/index.ts'
import { compileSupply, type MappedSupply, peakDemand, supplyRatioInto } from '../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  type Fraction,
  litrePerMinute,
  measure,
  squareMillimetre,
  temperatureOf,
} from '../src/units/index.ts'

const supply: MappedSupply = {
  orifice: { area: measure(1.77, squareMillimetre), dischargeCoefficient: 0.7 as Fraction },
  mixture: dryAir,
  supplyTemperature: temperatureOf(4, celsius),
  breathingGasTemperature: temperatureOf(4, celsius),
  peakFlow: peakDemand(measure(40, litrePerMinute), { shift: 0 as Fraction }).peakFlow,
  intermediatePressure: difference(9.5, bar),
  regulatingMargin: difference(2, bar),
}
const maximumPressure = absolute(300, bar)
const side = 1000
const columns = {
  supplyPressurePascal: Float64Array.from(
    { length: side * side },
    (_, cell) => (10 + 0.29 * Math.floor(cell / side)) * 1e5,
  ),
  ambientPressurePascal: Float64Array.from({ length: side * side }, (_, cell) => (1 + 0.01 * (cell % side)) * 1e5),
}
const out = { ratio: new Float64Array(side * side), code: new Uint8Array(side * side) }

let sink = 0
for (const gas of ['ideal', 'real'] as const) {
  for (const [name, mixture] of [
    ['air', dryAir],
    ['trimix 18/45', trimix({ oxygen: 0.18, helium: 0.45 })],
  ] as const) {
    const ofGas = { ...supply, mixture }
    report(`compiling ${name}, ${gas}`, 5, () => compileSupply(ofGas, { maximumPressure, gas }).factors[7] as number)
    const compiled = compileSupply(ofGas, { maximumPressure, gas })
    report(`${columns.supplyPressurePascal.length} cells of ${name}, ${gas}`, 9, () => {
      supplyRatioInto(out, columns, compiled)
      return out.ratio[700_500] as number
    })
  }
}
console.log(sink === 0 ? 'nothing was measured' : '')

function report(name: string, runs: number, run: () => number): void {
  sink += run()
  const times = Array.from({ length: runs }, () => {
    const began = performance.now()
    sink += run()
    return performance.now() - began
  }).sort((a, b) => a - b)
  const [median = 0, slowest = 0] = [times[runs >> 1], times[runs - 1]]
  console.log(`${name}: median ${median.toFixed(1)} ms, slowest ${slowest.toFixed(1)} ms`)
}
