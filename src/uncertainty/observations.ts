import { requireKeys, requireList } from '../errors/index.ts'
import { one, requireWithin } from '../units/index.ts'
import { anyValue, spread } from './accepted.ts'
import { coverageFactor } from './coverage.ts'
import { type Distribution, normalDistribution, type Spread, type Stated } from './distribution.ts'

/** What repeated readings of one quantity say. */
export interface Observations<Q extends number = number> {
  readonly count: number
  readonly mean: Stated<Q>
  /** Of a single reading, n - 1. */
  readonly standardDeviation: Spread<Stated<Q>>
  readonly standardUncertaintyOfMean: Spread<Stated<Q>>
  readonly degreesOfFreedom: number
}

/**
 * Mean and spread of repeated readings.
 *
 * @param readings - at least two, finite, of one quantity
 * @returns count, mean, standard deviation, standard uncertainty of the mean
 * @throws LitrebarError `input` for fewer than two, `range` for one that is not finite
 * @source gum-2008, 4.2
 * @example
 * observationsOf([14.2, 16.1, 15.0, 17.3, 13.8, 15.6]).mean.toFixed(4) // => '15.3333'
 */
export function observationsOf<Q extends number>(readings: readonly Q[]): Observations<Q> {
  requireList('readings', readings, 2, 'One reading says nothing about the spread: state its distribution instead.')
  const count = readings.length
  for (const [i, reading] of readings.entries()) requireWithin(`readings[${i}]`, reading, anyValue)
  const mean = readings.reduce<number>((sum, x) => sum + x, 0) / count
  const squares = readings.reduce<number>((sum, x) => sum + (x - mean) * (x - mean), 0)
  const standardDeviation = Math.sqrt(squares / (count - 1))
  return {
    count,
    mean,
    standardDeviation,
    standardUncertaintyOfMean: standardDeviation / Math.sqrt(count),
    degreesOfFreedom: count - 1,
  } as unknown as Observations<Q>
}

/**
 * The distribution of the mean of repeated readings, as an input for `propagate` or `propagateBySampling`.
 *
 * @param readings - at least two, finite
 * @returns Student's t about the mean, n - 1 degrees of freedom
 * @throws LitrebarError `input` or `range`
 * @source gum-2008, 4.2.3; gum-s1-2008, 6.4.9
 */
export function meanOfReadings<Q extends number>(readings: readonly Q[]): Distribution<Stated<Q>> {
  const { mean, standardUncertaintyOfMean, degreesOfFreedom } = observationsOf<number>(readings)
  return normalDistribution<number>(mean, standardUncertaintyOfMean, degreesOfFreedom) as Distribution<Stated<Q>>
}

/**
 * Two-sided interval for the mean of what was observed. It does not tell how far a single reading may lie off.
 *
 * @param observations - from `observationsOf`
 * @param probability - share covered, 0.95 for example
 * @returns its two ends and half its width
 * @throws LitrebarError `range`
 * @source gum-2008, G.3
 */
export function meanInterval<Q extends number>(
  observations: Observations<Q>,
  probability: number,
): { readonly low: Stated<Q>; readonly high: Stated<Q>; readonly halfWidth: Spread<Stated<Q>> } {
  requireObservations(observations)
  const { mean, standardUncertaintyOfMean, degreesOfFreedom } = observations
  const half = coverageFactor({ probability, degreesOfFreedom, sides: 'two' }) * standardUncertaintyOfMean
  return {
    low: (mean - half) as Stated<Q>,
    high: (mean + half) as Stated<Q>,
    halfWidth: half as Spread<Stated<Q>>,
  }
}

/**
 * One-sided prediction bound: the next single reading stays below it with a stated probability.
 * It lies much higher than the end of the interval of the mean, which half of all readings exceed or nearly so.
 *
 * @param observations - from `observationsOf`
 * @param probability - share below the bound, 0.95 for example
 * @returns the bound
 * @throws LitrebarError `range`
 * @source litrebar-derivation (normal readings: mean + t s √(1 + 1/n))
 * @example
 * upperPredictionBound(observationsOf([14.2, 16.1, 15.0, 17.3, 13.8, 15.6]), 0.95).toFixed(2) // => '18.13'
 */
export function upperPredictionBound<Q extends number>(observations: Observations<Q>, probability: number): Stated<Q> {
  requireObservations(observations)
  const { mean, standardDeviation, degreesOfFreedom, count } = observations
  const factor = coverageFactor({ probability, degreesOfFreedom, sides: 'one' })
  return (mean + factor * standardDeviation * Math.sqrt(1 + 1 / count)) as Stated<Q>
}

function requireObservations(observations: Observations): void {
  requireKeys('observations', observations, {
    count: true,
    mean: true,
    standardDeviation: true,
    standardUncertaintyOfMean: true,
    degreesOfFreedom: true,
  })
  requireWithin('observations.count', observations.count, { atLeast: 2, unit: one, hint: 'Count the readings.' })
  requireWithin('observations.mean', observations.mean, anyValue)
  requireWithin('observations.standardDeviation', observations.standardDeviation, spread)
  requireWithin('observations.standardUncertaintyOfMean', observations.standardUncertaintyOfMean, spread)
}
