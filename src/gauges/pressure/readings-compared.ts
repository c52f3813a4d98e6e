import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import {
  type Accepted,
  type GaugePressure,
  one,
  type PressureDifference,
  percent,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { correlation, finite, gaugeReading, uncertainty } from '../accepted.ts'
import { gaugeError, type PressureGauge } from './gauge-error.ts'

/** A reading with its standard uncertainty, in SI. */
export interface UncertainReading {
  readonly value: number
  readonly standardUncertainty: number
}

/** Two readings of one quantity. */
export interface ReadingPair {
  readonly first: UncertainReading
  readonly second: UncertainReading
  /** How far their errors go together: 0 for instruments of different kinds, near 1 for two of one make in the same water, or one read twice. */
  readonly correlation: number
}

const percentOfScale: Accepted = { above: 0, atMost: 100, unit: percent, hint: 'Give the largest difference allowed.' }

/**
 * Whether two instruments disagree by more than their uncertainties allow. Their errors seldom are independent: two gauges of one
 * make read the same cold water, and what they share does not show. Agreement therefore proves neither right.
 *
 * @param pair - two readings with standard uncertainties, SI; the correlation of their errors, -1 to 1
 * @returns an assessment of their distance, in expanded uncertainties (k = 2) of the difference, against 1
 * @throws LitrebarError `range`, naming the field, also where equal, fully correlated errors leave no uncertainty of the difference;
 *   `input` for an unknown key
 * @source gum-2008, 5.2.2; common-practice (interlaboratory comparison)
 * @example
 * const pair = {
 *   first: { value: 30.4, standardUncertainty: 0.25 },
 *   second: { value: 29.9, standardUncertainty: 0.3 },
 *   correlation: 0,
 * }
 * assessDisagreement(pair).verdict // => 'within'
 */
export function assessDisagreement(pair: ReadingPair): Assessment {
  requireKeys('pair', pair, { first: true, second: true, correlation: true })
  for (const name of ['first', 'second'] as const) {
    requireKeys(`pair.${name}`, pair[name], { value: true, standardUncertainty: true })
    requireWithin(`pair.${name}.value`, pair[name].value, finite)
    requireWithin(`pair.${name}.standardUncertainty`, pair[name].standardUncertainty, uncertainty)
  }
  requireWithin('pair.correlation', pair.correlation, correlation)
  const { first, second } = pair
  const apart = Math.abs(first.value - second.value)
  const allowed = 2 * uncertaintyOfDifference(first.standardUncertainty, second.standardUncertainty, pair.correlation)
  if (allowed === 0) throw nothingLeft()
  const value = apart / allowed
  const against: Reason[] =
    value <= 1
      ? []
      : [
          {
            code: 'readings-apart',
            text: 'The two differ by more than their uncertainties allow: at least one is wrong.',
          },
        ]
  const shared = {
    code: 'shared-error',
    text: 'An error that both share does not show in their difference.',
    source: 'gum-2008',
  } as const
  return {
    value,
    limit: 1,
    margin: 1 - value,
    ...verdictFrom({ against, doubts: [], notes: [shared] }),
    cautions: ['instrument'],
    sources: ['gum-2008', 'common-practice'],
  }
}

function nothingLeft(): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument: 'pair',
    value: 'two readings whose difference has an uncertainty of 0',
    expected: 'an uncertainty above 0',
    hint: 'Equal, fully correlated errors cancel in the difference: state a correlation below 1.',
  })
}

/**
 * Standard uncertainty of the difference of two readings.
 *
 * @param first - standard uncertainty of one, SI
 * @param second - of the other
 * @param together - correlation of their errors, -1 to 1
 * @returns standard uncertainty of the difference
 * @throws LitrebarError `range`
 * @source gum-2008, 5.2.2
 * @example
 * uncertaintyOfDifference(2, 2, 0).toFixed(3) // => '2.828'
 */
export function uncertaintyOfDifference(first: number, second: number, together: number): number {
  requireWithin('first', first, uncertainty)
  requireWithin('second', second, uncertainty)
  requireWithin('together', together, correlation)
  return Math.sqrt(Math.max(0, first * first + second * second - 2 * together * first * second))
}

/** Pressure taken out of a cylinder by two readings of one gauge. */
export interface PressureUsed {
  readonly used: PressureDifference
  /** By the class, with the correlation stated. */
  readonly standardUncertainty: PressureDifference
  /** The largest error if all that the class allows is an error of scale, which no correlation removes. */
  readonly largestScaleError: PressureDifference
}

/**
 * Pressure used by two readings of one gauge. Its two errors go together: taken as independent they overstate the uncertainty of the
 * difference, taken as equal they hide an error of scale. Both are given.
 *
 * @param readings - before and after, gauge, Pa; gauge; temperature of its element, K; correlation of the two errors, -1 to 1
 * @returns the difference, its standard uncertainty, and the largest error of scale, Pa
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source gum-2008, 5.2.2; en-837-1, accuracy classes
 * @example
 * const { largestScaleError } = pressureUsed({
 *   before: gauge(200, bar),
 *   after: gauge(60, bar),
 *   gauge: { span: difference(400, bar), accuracyClass: 0.016 },
 *   temperature: temperatureOf(20, celsius),
 *   correlation: 1,
 * })
 * inUnit(largestScaleError, bar).toFixed(2) // => '2.24'
 */
export function pressureUsed(readings: {
  readonly before: GaugePressure
  readonly after: GaugePressure
  readonly gauge: PressureGauge
  readonly temperature: Temperature
  readonly correlation: number
}): PressureUsed {
  requireKeys('readings', readings, { before: true, after: true, gauge: true, temperature: true, correlation: true })
  const { before, after, gauge } = readings
  requireWithin('readings.before', before, gaugeReading)
  requireWithin('readings.after', after, gaugeReading)
  const { standardUncertainty: u, largestError } = gaugeError(gauge, readings.temperature)
  const used = before - after
  return {
    used: used as PressureDifference,
    standardUncertainty: uncertaintyOfDifference(u, u, readings.correlation) as PressureDifference,
    largestScaleError: (largestError * Math.abs(used / gauge.span)) as PressureDifference,
  }
}

/**
 * Whether two equivalent gauges differ by more than a share of their full scale: the rule of US commercial diving that sends depth gauges
 * to be tested. It says nothing about which of the two is wrong.
 *
 * @param pair - two readings and the full scale, in one unit; the share allowed, 2 per cent in that rule
 * @returns an assessment of the difference, as a fraction of full scale
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source osha-1910-430, gauges and timekeeping devices, as a state code restates it
 * @example
 * assessEquivalentGauges({ first: 30.4, second: 29.5, fullScale: 60, allowed: 0.02 }).verdict // => 'within'
 */
export function assessEquivalentGauges(pair: {
  readonly first: number
  readonly second: number
  readonly fullScale: number
  readonly allowed: number
}): Assessment {
  requireKeys('pair', pair, { first: true, second: true, fullScale: true, allowed: true })
  requireWithin('pair.first', pair.first, finite)
  requireWithin('pair.second', pair.second, finite)
  requireWithin('pair.fullScale', pair.fullScale, { above: 0, unit: one, hint: 'Give the end of the scale.' })
  requireWithin('pair.allowed', pair.allowed, percentOfScale)
  const value = Math.abs(pair.first - pair.second) / pair.fullScale
  const text = 'The two gauges differ by more than the share of full scale: both need a test.'
  return {
    value,
    limit: pair.allowed,
    margin: pair.allowed - value,
    ...verdictFrom({
      against: value > pair.allowed ? [{ code: 'difference', text, source: 'osha-1910-430' }] : [],
      doubts: [],
    }),
    cautions: ['instrument'],
    sources: ['osha-1910-430'],
  }
}
