import { requireList } from '../../errors/index.ts'
import { meanInterval, observationsOf, upperPredictionBound } from '../../uncertainty/index.ts'
import { requireWithin, type VolumeFlow } from '../../units/index.ts'
import { breathingRate } from '../use/breathed-dive.ts'

/** What several dives say about the next one. */
export interface RateOfNextDive {
  readonly count: number
  readonly mean: VolumeFlow
  /** From dive to dive. */
  readonly standardDeviation: VolumeFlow
  /** Two-sided interval of the mean. Single dives lie outside it more often than not. */
  readonly meanInterval: { readonly low: VolumeFlow; readonly high: VolumeFlow }
  /** One-sided: the next dive stays below it with the probability asked for. The figure to plan with. */
  readonly upperPredictionBound: VolumeFlow
  readonly probability: number
}

/**
 * Rate of the next dive from those of several: mean, its two-sided interval, and the one-sided prediction bound.
 * The mean is exceeded on half of all dives; the bound is what a plan wants. Dives are taken as independent and normal:
 * six in summer say nothing about one under ice.
 *
 * @param rates - respiratory minute volumes, m³/s, each above 0 and at most 500 L/min; at least two
 * @param probability - for interval and bound, above 0 and below 1: 0.95
 * @returns mean, interval, bound
 * @throws LitrebarError `input` for fewer than two, `range` naming the dive
 * @source litrebar-derivation (normal readings: mean + t s √(1 + 1/n))
 * @example
 * const rates = [14.2, 16.1, 15.0, 17.3, 13.8, 15.6].map((litres) => measure(litres, litrePerMinute))
 * const { mean, upperPredictionBound } = rateOfNextDive(rates, 0.95)
 * inUnit(mean, litrePerMinute).toFixed(1) // => '15.3'
 * inUnit(upperPredictionBound, litrePerMinute).toFixed(1) // => '18.1'
 */
export function rateOfNextDive(rates: readonly VolumeFlow[], probability: number): RateOfNextDive {
  requireList('rates', rates, 2, 'One dive says nothing about how much the next may differ.')
  for (const [i, rate] of rates.entries()) requireWithin(`rates[${i}]`, rate, breathingRate)
  const dives = observationsOf<number>(rates)
  const { low, high } = meanInterval(dives, probability)
  return {
    count: dives.count,
    mean: dives.mean as VolumeFlow,
    standardDeviation: dives.standardDeviation as VolumeFlow,
    meanInterval: { low: low as VolumeFlow, high: high as VolumeFlow },
    upperPredictionBound: upperPredictionBound(dives, probability) as VolumeFlow,
    probability,
  }
}
