import { differentiate } from '../../../src/gas-law/equation/density-derivatives.ts'
import { reducedDensityAt } from '../../../src/gas-law/equation/density-solve.ts'
import { equationFor } from '../../../src/gas-law/equation/gas-equation.ts'
import { isGas } from '../../../src/gas-law/equation/single-phase.ts'
import {
  type Gas,
  gases,
  gerg2008GasConstant,
  type Mixture,
  mixture,
  saturationPressure,
} from '../../../src/gas-law/index.ts'
import { pressureOfEquation } from '../../../src/gas-law/state/pressure-at-density.ts'
import type { Temperature } from '../../../src/units/index.ts'

/** What a sweep over random states found. */
export interface SweepResult {
  readonly mixtures: number
  readonly states: number
  /** |p(ρ, T)/p - 1|, the largest. */
  readonly largestResidual: number
  /** No density, not a number, a residual above 1e-12, or a refusal other than of condensing carbon dioxide. */
  readonly failures: number
  /** Roots below which the isotherm falls or already reached the pressure. */
  readonly wrongRoots: number
  /** States refused because carbon dioxide condenses, and those of them where it should not. */
  readonly condensed: number
  readonly condensedUnexpectedly: number
  readonly examples: readonly string[]
}

/**
 * Solves random states of random mixtures of one to seven gases and proves each: carbon dioxide at most 5 %, water below
 * its saturation, 230 to 400 K, 0.1 to 450 bar. At 5 % carbon dioxide does condense from helium or hydrogen in the coldest
 * and densest corner of that: such refusals are counted apart.
 *
 * @param task - seed; how many mixtures; how many states of each
 * @returns the counts
 */
export function sweep(task: {
  readonly seed: number
  readonly mixtures: number
  readonly statesPerMixture: number
}): SweepResult {
  const random = randomFrom(task.seed)
  const examples: string[] = []
  let states = 0
  let largestResidual = 0
  let failures = 0
  let wrongRoots = 0
  let condensed = 0
  let condensedUnexpectedly = 0
  for (let m = 0; m < task.mixtures; m++) {
    const gas = randomMixture(random)
    const equation = equationFor(gas)
    for (let n = 0; n < task.statesPerMixture; n++) {
      const { pressure, temperature } = randomState(random, gas)
      states++
      const delta = reducedDensityAt(equation, pressure, temperature)
      const residual = Math.abs(pressureOfEquation(equation, delta, temperature) / pressure - 1)
      if (!(residual <= 1e-12)) {
        failures++
        examples.push(`${JSON.stringify(gas)} ${temperature} K ${pressure} Pa: δ ${delta}, residual ${residual}`)
        continue
      }
      if (residual > largestResidual) largestResidual = residual
      if (!isFirstRoot(equation, delta, pressure / (gerg2008GasConstant * temperature * equation.reducingDensity))) {
        wrongRoots++
        examples.push(`${JSON.stringify(gas)} ${temperature} K ${pressure} Pa: δ ${delta} is not the first root`)
      }
      if (isGas(equation, pressure, temperature, delta)) continue
      condensed++
      if (temperature < 256 && pressure > 50e5 && gas.carbonDioxide > 0.01) continue
      condensedUnexpectedly++
      examples.push(`${JSON.stringify(gas)} ${temperature} K ${pressure} Pa: refused`)
    }
  }
  return {
    mixtures: task.mixtures,
    states,
    largestResidual,
    failures,
    wrongRoots,
    condensed,
    condensedUnexpectedly,
    examples,
  }
}

/** Numbers from 0 to below 1, the same for the same seed in every engine. */
function randomFrom(seed: number): () => number {
  let state = Math.imul(seed, 0x9e3779b9) | 1
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return (state >>> 0) / 2 ** 32
  }
}

function randomMixture(random: () => number): Mixture {
  const count = 1 + Math.floor(random() * 7)
  const chosen = gases
    .map((gas) => ({ gas, order: random() }))
    .sort((a, b) => a.order - b.order)
    .slice(0, count)
    .map(({ gas }): Gas => gas)
  const amounts: { [Name in Gas]?: number } = {}
  // at least one of the gases that may be there in any amount
  const main = chosen.filter((gas) => gas !== 'carbonDioxide' && gas !== 'water')
  for (const gas of main.length > 0 ? main : (['nitrogen'] as const)) amounts[gas] = random() ** 2 + 1e-6
  const total = Object.values(amounts).reduce((sum, x) => sum + x, 0)
  const carbonDioxide = chosen.includes('carbonDioxide') ? 0.05 * random() : 0
  const water = chosen.includes('water') ? 1e-7 * 1e6 ** random() : 0
  for (const gas of gases) amounts[gas] = ((amounts[gas] ?? 0) / total) * (1 - carbonDioxide - water)
  return mixture({ ...amounts, carbonDioxide, water }, { normalise: true })
}

const lowest = 0.1e5
const highest = 450e5

/** Half of the pressures spread evenly, half by their logarithm; below saturation of the water in the mixture. */
function randomState(random: () => number, gas: Mixture): { readonly pressure: number; readonly temperature: number } {
  for (;;) {
    const temperature = 230 + 170 * random()
    const top = gas.water > 0 ? Math.min(highest, saturationPressure(temperature as Temperature) / gas.water) : highest
    if (top < lowest) continue
    const share = random()
    const pressure = random() < 0.5 ? lowest + share * (top - lowest) : lowest * (top / lowest) ** share
    return { pressure, temperature }
  }
}

/** Whether the isotherm rises from nothing to the root, and stays below the pressure until there. */
function isFirstRoot(equation: ReturnType<typeof equationFor>, root: number, target: number): boolean {
  for (let step = 1; step <= 12; step++) {
    const delta = (root * step) / 12
    differentiate(equation, delta)
    const first = equation.derivative[0] as number
    if (!(1 + first + (equation.derivative[1] as number) > 0)) return false
    if (step < 12 && !(delta * (1 + first) < target)) return false
  }
  return true
}
