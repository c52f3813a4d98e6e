import { LitrebarError, requireKeys, shown } from '../errors/index.ts'
import { type Accepted, type Duration, one, requireWithin, second } from '../units/index.ts'

/** Readings at equal intervals that a rate is worked out from. */
export interface EvenReadings {
  /** Standard uncertainty of a single reading: its noise, in SI. A common offset cancels. */
  readonly standardUncertainty: number
  /** From one reading to the next. */
  readonly interval: Duration
  /** How many readings, at least 2. */
  readonly count: number
}

const noise: Accepted = { atLeast: 0, unit: one, hint: 'State the noise of one reading.' }
const interval: Accepted = { atLeast: 1e-9, unit: second, hint: 'Readings need time between them.' }

/**
 * Standard uncertainty of a rate of change by a straight line through equally spaced readings (least squares).
 * Two readings are the plain difference over the time; more readings gain with the power 3/2 of their number,
 * at the price of blurring a rate that changes.
 *
 * @param readings - noise of one, time between two, and their number
 * @returns standard uncertainty of the rate, in the unit of the reading per second
 * @throws LitrebarError `range`; `input` for a number of readings that is not whole or below 2
 * @source litrebar-derivation (slope of least squares, white noise)
 * @example
 * const noise = { standardUncertainty: 0.05, interval: measure(1, second), count: 10 }
 * slopeUncertainty(noise).toFixed(5) // => '0.00550'
 */
export function slopeUncertainty(readings: EvenReadings): number {
  requireKeys('readings', readings, { standardUncertainty: true, interval: true, count: true })
  const { standardUncertainty, count } = readings
  requireWithin('readings.standardUncertainty', standardUncertainty, noise)
  requireWithin('readings.interval', readings.interval, interval)
  if (!(Number.isSafeInteger(count) && count >= 2)) {
    throw new LitrebarError({
      code: 'input',
      argument: 'readings.count',
      value: shown(count),
      expected: 'a whole number, at least 2',
      hint: 'A rate needs two readings.',
    })
  }
  return standardUncertainty / (readings.interval * Math.sqrt((count * (count * count - 1)) / 12))
}
