import { LitrebarError, requireKeys, requireList, shown } from '../errors/index.ts'
import { requireWithin } from '../units/index.ts'
import { anyValue, spread } from './accepted.ts'
import { type Correlation, correlationMatrix, triangularRoot } from './correlation.ts'
import {
  type Distribution,
  type DistributionShape,
  requireDistribution,
  type Spread,
  type Stated,
} from './distribution.ts'
import { requireDegreesOfFreedom } from './quantile.ts'
import { requireFunction } from './require-function.ts'

/** Inputs by name, each a distribution. */
export type Inputs = Readonly<Record<string, Distribution>>

/** The values that a function gets, one for each input. */
export type Values<Given extends Readonly<Record<string, Distribution>>> = {
  readonly [Name in keyof Given]: Given[Name]['value']
}

/** What the inputs have to do with each other. */
export interface PropagateOptions<Name extends string = string> {
  /** Inputs that vary together; all others are independent. */
  readonly correlations?: readonly Correlation<Name>[]
}

/** One row of the budget: what an input adds. */
export interface Contribution {
  readonly input: string
  readonly value: number
  readonly standardUncertainty: number
  readonly shape: DistributionShape
  readonly degreesOfFreedom: number
  /** Change of the result per change of the input. */
  readonly sensitivity: number
  /** Sensitivity times standard uncertainty, with its sign, in the unit of the result. */
  readonly contribution: number
  /** Share of the variance of the result; shares add up to 1. Correlation can make one negative. */
  readonly share: number
}

/** What the law of propagation gives. */
export interface Propagated<R extends number = number> {
  readonly value: Stated<R>
  /** Combined standard uncertainty, first order. */
  readonly standardUncertainty: Spread<Stated<R>>
  /** Effective degrees of freedom; not truncated. */
  readonly degreesOfFreedom: number
  /** The budget, in the order of the inputs. */
  readonly contributions: readonly Contribution[]
  /** Combined standard uncertainty with the curvature of each input and of each pair counted, inputs taken as normal. */
  readonly secondOrderUncertainty: Spread<Stated<R>>
  /** Largest departure from the straight line within two standard uncertainties, in combined standard uncertainties. */
  readonly departure: number
  /** Whether that departure is at most 0.2. If not, the first-order result misleads: use `propagateBySampling`. */
  readonly linear: boolean
}

// 0.2 standard uncertainties at the end of a 95 % interval of about 2: one tenth of its half width.
const largestDeparture = 0.2

/**
 * Uncertainty of the result of any function, by the law of propagation to first order.
 * Slopes are central differences with each input's own uncertainty as the step, so that they never fall into the noise of rounding.
 * Kinks, steps and curvature make a first-order result wrong; the departure from a straight line is measured, and `linear` says
 * whether it matters. A function that refuses a value within two standard uncertainties counts as not linear. What a few values of the function cannot show, a spike between them, it does not find.
 *
 * @param fn - any function of the named inputs; it is called 4 times for each input and each pair, and 8 times with all of them moved
 * @param inputs - a distribution for each; what is known exactly belongs into the function
 * @param options - correlations between inputs
 * @returns value, combined standard uncertainty, degrees of freedom, budget, and how straight the function is
 * @throws LitrebarError `input` or `range` for inputs and correlations; what `fn` throws at one standard uncertainty
 * @source gum-2008, 5.1.2, 5.2.2 and G.4.1
 * @example
 * const inputs = { full: normalDistribution(200, 2), left: normalDistribution(50, 2) }
 * propagate(({ full, left }) => full - left, inputs).standardUncertainty.toFixed(3) // => '2.828'
 */
export function propagate<Given extends Inputs, R extends number>(
  fn: (values: Values<Given>) => R,
  inputs: Given,
  options: PropagateOptions<Extract<keyof Given, string>> = {},
): Propagated<R> {
  requireFunction('fn', fn)
  requireKeys('options', options, { correlations: false })
  const names = inputNames(inputs)
  const given = names.map((name) => inputs[name] as Distribution)
  const matrix = correlationMatrix(names, options.correlations ?? [])
  triangularRoot(matrix) // refuses what contradicts itself
  const at = evaluator(fn as (values: Readonly<Record<string, number>>) => number, names, given)
  const value = finiteResult(at([]))
  const probes = given.map((one, i) => probed(one, (steps) => at([[i, steps]])))
  const contributions = probes.map(({ up, down }) => (up - down) / 2)
  const variance = quadraticForm(matrix, contributions)
  const standardUncertainty = Math.sqrt(Math.max(variance, 0))
  const isExact = given.map((one) => one.standardUncertainty === 0)
  const bend = bends(value, probes, isExact, at)
  const departure = bend.largest === 0 ? 0 : bend.largest / standardUncertainty
  return {
    value,
    standardUncertainty,
    degreesOfFreedom: effectiveDegreesOfFreedom(
      standardUncertainty,
      contributions.map((contribution, i) => ({
        standardUncertainty: contribution,
        degreesOfFreedom: (given[i] as Distribution).degreesOfFreedom,
      })),
    ),
    contributions: given.map((one, i) => row(names[i] as string, one, contributions, i, matrix, variance)),
    secondOrderUncertainty: Math.sqrt(Math.max(variance, 0) + bend.variance),
    departure,
    linear: departure <= largestDeparture,
  } as unknown as Propagated<R>
}

/** The names of the inputs, each of them checked. */
export function inputNames(inputs: Inputs): readonly string[] {
  requireKeys('inputs', inputs, Object(inputs) as Inputs)
  const names = Object.keys(inputs)
  for (const name of names) requireDistribution(`inputs.${name}`, inputs[name] as Distribution)
  return names
}

type Step = readonly [input: number, standardUncertainties: number]

function evaluator(
  fn: (values: Readonly<Record<string, number>>) => number,
  names: readonly string[],
  given: readonly Distribution[],
): (steps: readonly Step[]) => number {
  return (steps) => {
    const values: Record<string, number> = {}
    names.forEach((name, i) => {
      values[name] = (given[i] as Distribution).value
    })
    for (const [i, count] of steps) {
      const { value, standardUncertainty } = given[i] as Distribution
      values[names[i] as string] = value + count * standardUncertainty
    }
    return fn(values)
  }
}

/** Results one and two standard uncertainties to both sides of an input; the far ones NaN where the function refuses. */
interface Probe {
  readonly up: number
  readonly down: number
  readonly farUp: number
  readonly farDown: number
}

function probed({ standardUncertainty }: Distribution, at: (steps: number) => number): Probe {
  if (standardUncertainty === 0) return { up: 0, down: 0, farUp: 0, farDown: 0 }
  return { up: finiteResult(at(1)), down: finiteResult(at(-1)), farUp: attempted(at, 2), farDown: attempted(at, -2) }
}

function attempted(at: (steps: number) => number, steps: number): number {
  try {
    return at(steps)
  } catch {
    // A refusal is a finding here, not a failure: the function ends within reach of the input.
    return Number.NaN
  }
}

function finiteResult(result: number): number {
  if (Number.isFinite(result)) return result
  throw new LitrebarError({
    code: 'range',
    argument: 'fn(inputs)',
    value: shown(result),
    expected: 'a finite number within one standard uncertainty of each input',
    hint: 'Narrow the uncertainty, or keep the function away from where it has no value.',
  })
}

/**
 * Second-order variance, and the largest departure from the straight line at two standard uncertainties. An input counts as exact by
 * its uncertainty alone: a product of two inputs at zero moves with neither of them and still moves with both.
 */
function bends(
  value: number,
  probes: readonly Probe[],
  isExact: readonly boolean[],
  at: (steps: readonly Step[]) => number,
): { readonly variance: number; readonly largest: number } {
  let variance = 0
  let largest = 0
  const twists: { readonly i: number; readonly j: number; readonly twist: number }[] = []
  const note = (departure: number): void => {
    // a difference of a few units in the last place is rounding, not a bend
    const noise = 16 * Number.EPSILON * Math.abs(value)
    largest = Math.max(largest, departure - departure === 0 ? (departure > noise ? departure : 0) : Infinity)
  }
  probes.forEach((first, i) => {
    if (isExact[i] === true) return
    const slope = (first.up - first.down) / 2
    const curvature = (first.up + first.down) / 2 - value
    variance += 2 * curvature * curvature
    note(Math.abs(curvature))
    note(Math.abs(first.farUp - value - 2 * slope))
    note(Math.abs(first.farDown - value + 2 * slope))
    probes.slice(i + 1).forEach((second, k) => {
      const j = i + 1 + k
      if (isExact[j] === true) return
      const pair = (steps: number): number =>
        attempted(
          (s) =>
            at([
              [i, s],
              [j, s],
            ]),
          steps,
        )
      const both = pair(1)
      const neither = pair(-1)
      const twist = (both + neither - first.up - first.down - second.up - second.down) / 2 + value
      if (twist - twist === 0) variance += twist * twist
      // both inputs two standard uncertainties out is four times as far along a twist, and as rare as one at 2.7
      note(2 * Math.abs(twist))
      twists.push({ i, j, twist })
      // a corner that both have to pass shows where both are far out; a refusal there is none within reach of either
      const corners = [
        pair(2) - (first.farUp + second.farUp - value + 4 * twist),
        pair(-2) - (first.farDown + second.farDown - value + 4 * twist),
      ]
      for (const corner of corners) if (corner - corner === 0) note(Math.abs(corner) / 2)
    })
  })
  for (const signs of allMoved(isExact)) {
    let expected = value
    for (const [i, sign] of signs) expected += ((sign > 0 ? probes[i]?.up : probes[i]?.down) ?? Number.NaN) - value
    const sign = new Map(signs)
    for (const { i, j, twist } of twists) expected += (sign.get(i) ?? 0) * (sign.get(j) ?? 0) * twist
    // what three inputs do together, or two of them beyond a product, no pair shows
    note(Math.abs(attempted(() => at(signs), 1) - expected))
  }
  return { variance, largest }
}

/** Which inputs move up in each probe with all of them moved: bits of a number, mixed so that no two inputs move alike in all. */
const signPatterns = [0, 0x55555555, 0x33333333, 0x0f0f0f0f, 0x9a6c35e1, 0xc3a95536, 0x5ac33c69, 0xffffffff]

function allMoved(isExact: readonly boolean[]): readonly (readonly Step[])[] {
  const moving = isExact.flatMap((exact, i) => (exact ? [] : [i]))
  if (moving.length < 2) return []
  return signPatterns.map((bits) => moving.map((i, k): Step => [i, (bits >>> (k % 32)) & 1 ? 1 : -1]))
}

function quadraticForm(matrix: readonly (readonly number[])[], c: readonly number[]): number {
  return c.reduce((sum, ci, i) => sum + ci * weighted(matrix[i] as readonly number[], c), 0)
}

function weighted(row: readonly number[], c: readonly number[]): number {
  return row.reduce((sum, r, j) => sum + r * (c[j] as number), 0)
}

function row(
  input: string,
  { value, standardUncertainty, shape, degreesOfFreedom }: Distribution,
  contributions: readonly number[],
  i: number,
  matrix: readonly (readonly number[])[],
  variance: number,
): Contribution {
  const contribution = contributions[i] as number
  return {
    input,
    value,
    standardUncertainty,
    shape,
    degreesOfFreedom,
    sensitivity: standardUncertainty === 0 ? 0 : contribution / standardUncertainty,
    contribution,
    share: variance > 0 ? (contribution * weighted(matrix[i] as readonly number[], contributions)) / variance : 0,
  }
}

/**
 * Effective degrees of freedom of a combined standard uncertainty, after Welch and Satterthwaite.
 * For independent inputs; the guide gives no formula for correlated ones.
 *
 * @param combined - combined standard uncertainty
 * @param parts - the standard uncertainty that each input adds, in the unit of the result, and its degrees of freedom
 * @returns degrees of freedom, not truncated; `Infinity` if every part has infinitely many
 * @throws LitrebarError `range`, naming the part, for a number that is not finite; `input` for no list of parts
 * @source gum-2008, G.4.1
 * @example
 * const parts = [{ standardUncertainty: 0.57, degreesOfFreedom: 9 }, { standardUncertainty: 0.25, degreesOfFreedom: Infinity }]
 * effectiveDegreesOfFreedom(Math.hypot(0.57, 0.25), parts).toFixed(1) // => '12.8'
 */
export function effectiveDegreesOfFreedom(
  combined: number,
  parts: readonly { readonly standardUncertainty: number; readonly degreesOfFreedom: number }[],
): number {
  requireWithin('combined', combined, spread)
  requireList('parts', parts, 1)
  parts.forEach((part, i) => {
    requireKeys(`parts[${i}]`, part, { standardUncertainty: true, degreesOfFreedom: true })
    requireWithin(`parts[${i}].standardUncertainty`, part.standardUncertainty, anyValue)
    requireDegreesOfFreedom(`parts[${i}].degreesOfFreedom`, part.degreesOfFreedom)
  })
  // ratios first: a fourth power of pascals overflows nothing but those of cubic metres vanish
  const sum = parts.reduce((total, part) => {
    if (combined === 0 || part.degreesOfFreedom === Infinity) return total
    const ratio = part.standardUncertainty / combined
    return total + (ratio * ratio * ratio * ratio) / part.degreesOfFreedom
  }, 0)
  return 1 / sum
}
