import { inputError, LitrebarError, requireKeys, shown } from '../errors/index.ts'
import { type Accepted, one, requireWithin } from '../units/index.ts'
import { type Correlation, correlationMatrix, triangularRoot } from './correlation.ts'
import { coverageFactor, requireResult } from './coverage.ts'
import type { Distribution, DistributionShape, Spread, Stated } from './distribution.ts'
import { type Inputs, inputNames, type Propagated, type Values } from './propagate.ts'
import { normalDeviates, type Random, seededRandom, studentDeviate } from './random.ts'
import { requireFunction } from './require-function.ts'
import { requireWhole } from './whole.ts'

/** How many draws, and from which random numbers. */
export interface SampleOptions<Name extends string = string> {
  /** How often the function is worked out: 1e6 settles two digits of a 95 % interval. */
  readonly trials: number
  /** Whole number; the same seed gives the same result. */
  readonly seed: number
  /** A different one for each worker. 0 unless given. */
  readonly stream?: number
  /** Between normal inputs only. */
  readonly correlations?: readonly Correlation<Name>[]
}

/** The distribution of a result, as the trials found it. */
export interface Sampled<R extends number = number> {
  readonly mean: Stated<R>
  /** Standard deviation of the results. */
  readonly standardUncertainty: Spread<Stated<R>>
  /** All results, from low to high. */
  readonly sorted: Float64Array
}

const trialsRange: Accepted = { atLeast: 100, atMost: 1e8, unit: one, hint: 'Take 1e6 trials for a 95 % interval.' }

/**
 * Uncertainty of the result of any function by sampling: the function is worked out for many drawings of its inputs.
 * Needs no straight line and no slopes. The generator is seeded and not cryptographic.
 *
 * @param fn - any function of the named inputs; it gets one record that is filled anew for each trial, so it must not keep it
 * @param inputs - a distribution for each
 * @param options - number of trials, 100 to 1e8; seed; correlations, between normal inputs only
 * @returns mean, standard deviation and all results in order, for `quantileOf`, `coverageInterval` and `upperBound`
 * @throws LitrebarError `input` or `range`; what `fn` throws for a drawn value
 * @source gum-s1-2008, clause 7
 * @example
 * const inputs = { full: normalDistribution(200, 2), left: normalDistribution(50, 2) }
 * const used = propagateBySampling(({ full, left }) => full - left, inputs, { trials: 1e5, seed: 1 })
 * used.standardUncertainty.toFixed(1) // => '2.8'
 */
export function propagateBySampling<Given extends Inputs, R extends number>(
  fn: (values: Values<Given>) => R,
  inputs: Given,
  options: SampleOptions<Extract<keyof Given, string>>,
): Sampled<R> {
  requireFunction('fn', fn)
  requireKeys('options', options, { trials: true, seed: true, stream: false, correlations: false })
  const { trials, seed, stream = 0, correlations = [] } = options
  requireWithin('options.trials', trials, trialsRange)
  requireWhole('options.trials', trials)
  requireWhole('options.seed', seed)
  requireWhole('options.stream', stream)
  const names = inputNames(inputs)
  const given = names.map((name) => inputs[name] as Distribution)
  const random = seededRandom(seed, stream)
  const normal = normalDeviates(random)
  const draw = drawing(names, given, correlations, random, normal)
  const values: Record<string, number> = {}
  for (const name of names) values[name] = 0
  const sorted = new Float64Array(trials)
  // sums about the first result, so that a small spread about a large value is not lost
  let first = 0
  let sum = 0
  let squares = 0
  for (let trial = 0; trial < trials; trial++) {
    draw(values)
    const result = fn(values as unknown as Values<Given>)
    if (trial === 0) first = result
    const from = result - first
    sum += from
    squares += from * from
    sorted[trial] = result
  }
  if (!(squares - squares === 0)) throw noResult()
  sorted.sort()
  const meanFrom = sum / trials
  return {
    mean: first + meanFrom,
    standardUncertainty: Math.sqrt(Math.max(squares - sum * meanFrom, 0) / (trials - 1)),
    sorted,
  } as unknown as Sampled<R>
}

/** One number of mean 0, scaled so that value + standard uncertainty × number has the shape. */
const deviates: Readonly<
  Record<DistributionShape, (random: Random, normal: Random, degreesOfFreedom: number) => number>
> = {
  normal: (_, normal) => normal(),
  student: studentDeviate,
  rectangular: (random) => (2 * random() - 1) * Math.sqrt(3),
  triangular: (random) => (random() + random() - 1) * Math.sqrt(6),
  arcsine: (random) => Math.cos(Math.PI * random()) * Math.SQRT2,
}

function drawing(
  names: readonly string[],
  given: readonly Distribution[],
  correlations: readonly Correlation[],
  random: Random,
  normal: Random,
): (values: Record<string, number>) => void {
  const root = triangularRoot(correlationMatrix(names, correlations))
  const bound = new Set(correlations.flatMap(({ between }) => between))
  given.forEach(({ shape }, i) => {
    if (bound.has(names[i] as string)) requireNormal(names[i] as string, shape)
  })
  const columns = given.map(({ shape, value, standardUncertainty, degreesOfFreedom }, i) => ({
    name: names[i] as string,
    value: value,
    standardUncertainty: standardUncertainty,
    deviate: deviates[shape],
    degreesOfFreedom,
    mix: bound.has(names[i] as string) ? (root[i] as readonly number[]) : undefined,
  }))
  const independent = new Float64Array(given.length)
  return (values) => {
    for (let i = 0; i < columns.length; i++) {
      const { name, value, standardUncertainty, deviate, degreesOfFreedom, mix } = columns[
        i
      ] as (typeof columns)[number]
      let number = deviate(random, normal, degreesOfFreedom)
      independent[i] = number
      if (mix !== undefined) {
        number = 0
        for (let j = 0; j <= i; j++) number += (mix[j] as number) * (independent[j] as number)
      }
      values[name] = value + standardUncertainty * number
    }
  }
}

function requireNormal(name: string, shape: DistributionShape): void {
  if (shape === 'normal') return
  throw new LitrebarError({
    code: 'input',
    argument: `inputs.${name}`,
    value: `${shape}, and correlated`,
    expected: 'a normal distribution wherever a correlation is stated',
    hint: 'Make what is common an input of its own (one offset of the gauge for both readings) instead of a correlation.',
  })
}

function noResult(): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument: 'fn(inputs)',
    value: 'not finite in at least one trial',
    expected: 'a finite number for every value that the inputs can take',
    hint: 'A wide normal distribution reaches below zero: use a rectangular one, or guard the function.',
  })
}

function requireSampled(sampled: Sampled): void {
  requireKeys('sampled', sampled, { mean: true, standardUncertainty: true, sorted: true })
  const { sorted } = sampled
  if (sorted instanceof Float64Array && sorted.length > 0 && Number.isFinite(sorted[0])) return
  throw inputError(
    'sampled.sorted',
    shown(sorted),
    'a Float64Array of results',
    'Pass what propagateBySampling() gives.',
  )
}

const figuresRange: Accepted = { atLeast: 1, atMost: 2, unit: one, hint: 'State one figure or two.' }
const share: Accepted = { above: 0, below: 1, unit: one, hint: 'Give 95 per cent as 0.95.' }

/**
 * The value that a share of all results lies below.
 *
 * @param sampled - from `propagateBySampling`
 * @param p - the share, above 0 and below 1
 * @returns the quantile, between two results if it falls there
 * @throws LitrebarError `range`
 * @source gum-s1-2008, 7.5 and D.2
 */
export function quantileOf<R extends number>(sampled: Sampled<R>, p: number): Stated<R> {
  requireWithin('p', p, share)
  requireSampled(sampled)
  const { sorted } = sampled
  const place = Math.min(Math.max(p * sorted.length - 0.5, 0), sorted.length - 1)
  const below = Math.floor(place)
  const low = sorted[below] as number
  const high = sorted[Math.min(below + 1, sorted.length - 1)] as number
  return (low + (place - below) * (high - low)) as Stated<R>
}

/**
 * Two-sided interval that covers a share of the results, with as many beyond either end.
 *
 * @param sampled - from `propagateBySampling`
 * @param probability - the share, 0.95 for example
 * @returns its two ends
 * @throws LitrebarError `range`
 * @source gum-s1-2008, 7.7
 */
export function coverageInterval<R extends number>(
  sampled: Sampled<R>,
  probability: number,
): { readonly low: Stated<R>; readonly high: Stated<R> } {
  requireWithin('probability', probability, share)
  return { low: quantileOf(sampled, (1 - probability) / 2), high: quantileOf(sampled, (1 + probability) / 2) }
}

/** How a first-order result compares with trials of the same function. */
export interface LinearityCheck {
  /** Distance between the lower ends of the two 95 % intervals, and between the upper ends. */
  readonly lowDifference: number
  readonly highDifference: number
  /** Half a unit in the last figure that is to be stated of the standard uncertainty. */
  readonly tolerance: number
  /** Whether both distances are within the tolerance: the first-order result may be stated to so many figures. */
  readonly accepted: boolean
}

/**
 * Compares the interval of a first-order result with that of sampling: the check that Supplement 1 of the guide asks for.
 * Take 1e6 trials for two figures; with fewer, the noise of sampling alone may fail it.
 *
 * @param propagated - from `propagate`
 * @param sampled - from `propagateBySampling`, same function and inputs
 * @param options - probability of the interval, and to how many figures (1 or 2) the standard uncertainty is to be stated
 * @returns distances, tolerance and whether it is met
 * @throws LitrebarError `range`
 * @source gum-s1-2008, clause 8
 */
export function linearityCheck<R extends number>(
  propagated: Pick<Propagated<R>, 'value' | 'standardUncertainty' | 'degreesOfFreedom'>,
  sampled: Sampled<R>,
  options: { readonly probability: number; readonly figures: 1 | 2 },
): LinearityCheck {
  requireKeys('options', options, { probability: true, figures: true })
  const { probability, figures } = options
  requireWithin('options.figures', figures, figuresRange)
  requireResult('propagated', propagated)
  const { value, standardUncertainty, degreesOfFreedom } = propagated
  const half = coverageFactor({ probability, degreesOfFreedom, sides: 'two' }) * standardUncertainty
  const { low, high } = coverageInterval(sampled, probability)
  const lowDifference = Math.abs(value - half - low)
  const highDifference = Math.abs(value + half - high)
  const lastPlace = Math.floor(Math.log10(standardUncertainty)) - figures + 1
  const tolerance = standardUncertainty > 0 ? 0.5 * 10 ** lastPlace : 0
  return {
    lowDifference,
    highDifference,
    tolerance,
    accepted: lowDifference <= tolerance && highDifference <= tolerance,
  }
}
