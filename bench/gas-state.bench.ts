// Real-gas states per second, one thread. States as in the reference measurement: 1000 random ones per mixture, 255 to
// 355 K and 1 to 441 bar, in nine times 20 rounds; the best round and the median.

import { differentiate } from '../src/gas-law/equation/density-derivatives.ts'
import { reducedDensityAt } from '../src/gas-law/equation/density-solve.ts'
import { equationFor } from '../src/gas-law/equation/gas-equation.ts'
import { idealPartFor } from '../src/gas-law/equation/ideal-part.ts'
import { setTemperature, setTemperatureAndDerivatives } from '../src/gas-law/equation/set-temperature.ts'
import {
  compileMixture,
  dryAir,
  gasState,
  type Mixture,
  mixture,
  molarDensity,
  molarDensityInto,
  trimix,
} from '../src/gas-law/index.ts'
import { propertiesInto } from '../src/gas-law/state/gas-state.ts'
import { type AbsolutePressure, absolute, bar, kelvin, type Temperature, temperatureOf } from '../src/units/index.ts'

const states = 1000
const rounds = 20
const repeats = 9

let seed = 2026
function random(): number {
  seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0
  return seed / 2 ** 32
}
const temperatureKelvin = Float64Array.from({ length: states }, () => 255 + 100 * random())
const pressurePascal = Float64Array.from({ length: states }, () => 1e5 + 440e5 * random())

let sink = 0

/**
 * Times a round of states, 20 rounds to warm up and then nine times 20, and prints the best and the median: the best is
 * what the code can do, the median what else the machine was doing.
 */
function measure(name: string, round: () => number, perRound: number = states, warmUp = rounds): number {
  for (let k = 0; k < warmUp; k++) sink += round()
  const seconds = Array.from({ length: repeats * warmUp }, () => {
    const began = performance.now()
    sink += round()
    return (performance.now() - began) / 1000
  }).sort((a, b) => a - b)
  const best = perRound / (seconds[0] as number) / 1e6
  const median = perRound / (seconds[seconds.length >> 1] as number) / 1e6
  console.log(
    `${name.padEnd(52)} ${best.toFixed(3)} M/s, median ${median.toFixed(3)} (best ${(1000 / best).toFixed(1)} ns)`,
  )
  return best
}

/** Five Math.exp and 250 multiply-adds, each waiting for the one before: what a processor of another speed scales by. */
function calibration(): number {
  let x = 0.5
  for (let k = 0; k < 1000; k++) {
    for (let j = 0; j < 5; j++) x = Math.exp(-x)
    for (let j = 0; j < 250; j++) x = x * 0.999 + 0.0005
  }
  return x
}

function each(check: (pressure: number, temperature: number) => number): () => number {
  return () => {
    let sum = 0
    for (let k = 0; k < states; k++) sum += check(pressurePascal[k] as number, temperatureKelvin[k] as number)
    return sum
  }
}

const calibrated = measure('calibration, 5 exp and 250 multiply-adds', calibration)

const share = 0.999
const mixtures: readonly (readonly [name: string, gas: Mixture])[] = [
  ['three gases', trimix({ oxygen: 0.18, helium: 0.45 })],
  ['dry air, four gases', dryAir],
  [
    'humid air, five gases',
    mixture({
      nitrogen: 0.7808 * share,
      oxygen: 0.2095 * share,
      argon: 0.0093 * share,
      carbonDioxide: 0.0004 * share,
      water: 1 - share,
    }),
  ],
]

for (const [name, gas] of mixtures) {
  console.log(`\n${name}`)
  const equation = equationFor(gas)
  const ideal = idealPartFor(gas, equation)
  const { properties: out } = equation
  const densities = { molarDensityMolePerCubicMetre: new Float64Array(states), code: new Uint8Array(states) }
  const columns = { pressurePascal, temperatureKelvin }

  // without judgement of the phase, as the native program: humid air of this kind would condense in most of the states
  const solved = measure(
    'density from pressure and temperature',
    each((p, T) => reducedDensityAt(equation, p, T)),
  )
  console.log(`  per calibration loop: ${(solved / calibrated).toFixed(2)}`)
  const deltas = Float64Array.from(pressurePascal, (p, k) =>
    reducedDensityAt(equation, p, temperatureKelvin[k] as number),
  )
  measure(
    '  at one temperature',
    each((p) => reducedDensityAt(equation, p, 300)),
  )
  measure('pressure from density and temperature', () => {
    let sum = 0
    for (let k = 0; k < states; k++) {
      setTemperature(equation, temperatureKelvin[k] as number)
      differentiate(equation, deltas[k] as number)
      sum += equation.derivative[0] as number
    }
    return sum
  })
  const all = measure(
    'all properties from pressure and temperature',
    each((p, T) => {
      setTemperatureAndDerivatives(equation, T)
      propertiesInto(out, equation, ideal, reducedDensityAt(equation, p, T), T)
      return out[4] as number
    }),
  )
  console.log(`  per calibration loop: ${(all / calibrated).toFixed(2)}`)
  if (gas.water > 0) continue
  measure('molarDensityInto, with its checks', () => {
    molarDensityInto(densities, columns, { mixture: gas })
    return densities.molarDensityMolePerCubicMetre[7] as number
  })
  measure(
    'molarDensity, with its checks',
    each((p, T) => molarDensity(gas, p as AbsolutePressure, T as Temperature)),
  )
  measure(
    'gasState, with checks, record and fugacities',
    each((p, T) => {
      return gasState(gas, { pressure: p as AbsolutePressure, temperature: T as Temperature }).density
    }),
  )

  const box = {
    temperature: [temperatureOf(255, kelvin), temperatureOf(355, kelvin)],
    pressure: [absolute(1, bar), absolute(441, bar)],
    tolerance: 5e-9,
  } as const
  measure('compileMixture to 5e-9', () => compileMixture(gas, box).cells, 1, 3)
  const compiled = compileMixture(gas, box)
  const size = (compiled.coefficients.byteLength / 1e6).toFixed(2)
  console.log(
    `  ${compiled.cells} × ${compiled.cells / 2} cells, ${size} MB, largest error ${compiled.largestError.toExponential(1)}`,
  )
  measure(
    'molarDensityInto from the table',
    () => {
      molarDensityInto(densities, columns, { compiled })
      return densities.molarDensityMolePerCubicMetre[7] as number
    },
    states,
    1000,
  )
}
console.log(Number.isNaN(sink) ? 'a state failed' : '')
