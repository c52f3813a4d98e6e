import type { Gas } from '../mixture/gas.ts'
import type { Mixture } from '../mixture/mixture.ts'
import { differentiate } from './density-derivatives.ts'
import { reducedDensityAt } from './density-solve.ts'
import { exponential, logarithm } from './exponential.ts'
import { logFugacityCoefficients } from './fugacity.ts'
import { gerg2008GasConstant } from './gerg2008.parameters.ts'
import { type Equation, equationOf } from './gerg2008.ts'
import { expand } from './residual-part.ts'
import { setTemperature } from './set-temperature.ts'

/** ln φ of a phase, or nothing if the mixture has no such phase there. */
export type Fugacities = (trial: Equation, pressure: number, temperature: number) => number[] | undefined

/**
 * Tangent-plane test from one trial composition, by successive substitution: true as soon as a phase is found in which
 * Σ w (ln w φ - potential) is negative.
 */
export function prefers(
  state: {
    readonly present: readonly Gas[]
    readonly potentials: readonly number[]
    readonly pressure: number
    readonly temperature: number
  },
  start: readonly number[],
  fugacities: Fugacities,
): boolean {
  const { present, potentials, pressure, temperature } = state
  let amounts = start
  for (let step = 0; step < 60; step++) {
    const total = amounts.reduce((sum, w) => sum + w, 0)
    const trial = amounts.map((w) => w / total)
    const phase = equationOf(Object.fromEntries(present.map((gas, k) => [gas, trial[k]])) as unknown as Mixture)
    const logs = fugacities(phase, pressure, temperature)
    if (logs === undefined) return false
    let distance = 0
    const next = amounts.map(() => 0)
    let change = 0
    present.forEach((gas, k) => {
      const w = trial[k] as number
      if (!(w > 0)) return
      const log = logs[phase.present.indexOf(gas)] as number
      const potential = potentials[k] as number
      distance += w * (logarithm(w) + log - potential)
      next[k] = exponential(Math.min(Math.max(potential - log, -39), 39))
      change += Math.abs(next[k] - (amounts[k] as number))
    })
    if (distance < -1e-9) return true
    if (change < 1e-8) return false
    amounts = next
  }
  return false
}

export function gasFugacities(trial: Equation, pressure: number, temperature: number): number[] | undefined {
  const delta = reducedDensityAt(trial, pressure, temperature)
  if (!(delta > 0)) return undefined
  expand(trial, delta)
  return logFugacityCoefficients(trial)
}

/** The densest root. */
export function liquidFugacities(liquid: Equation, pressure: number, temperature: number): number[] | undefined {
  setTemperature(liquid, temperature)
  const target = pressure / (gerg2008GasConstant * temperature * liquid.reducingDensity)
  const { derivative } = liquid
  // From above, Newton's method comes down the convex branch of the isotherm without passing its end.
  let delta = 3.5
  for (let step = 0; step < 50; step++) {
    differentiate(liquid, delta)
    const first = derivative[0] as number
    const slope = 1 + first + (derivative[1] as number)
    if (!(slope > 0)) return undefined
    const change = (delta * (1 + first) - target) / slope
    delta -= change
    if (!(delta > 1)) return undefined // no denser than at the critical point: not a liquid
    if (Math.abs(change) < 1e-9) {
      expand(liquid, delta)
      return logFugacityCoefficients(liquid)
    }
  }
  return undefined
}
