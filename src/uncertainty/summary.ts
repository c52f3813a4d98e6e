import { LitrebarError, shown } from '../errors/index.ts'
import { type Accepted, one, requireWithin } from '../units/index.ts'

/** What a column of results amounts to. */
export interface ValueSummary {
  /** Rows with a value. */
  readonly count: number
  /** Rows without: NaN. */
  readonly missing: number
  readonly mean: number
  /** Of the values themselves, with n − 1; undefined for one value. */
  readonly standardDeviation: number | undefined
  readonly lowest: number
  readonly highest: number
  /** In the order asked for. */
  readonly quantiles: readonly number[]
}

const shares = [0.025, 0.25, 0.5, 0.75, 0.975] as const
const share: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give 95 per cent as 0.95.' }

/**
 * Count, mean, standard deviation, extremes and quantiles of a column, bad rows (NaN) counted apart. A quantile between two values is
 * interpolated.
 *
 * @param column - the values, left as they are
 * @param quantiles - shares from 0 to 1; 2.5, 25, 50, 75 and 97.5 % unless given
 * @returns the summary
 * @throws LitrebarError `range` for a share; `input` for a column without a value or with an infinite one
 * @source hyndman-fan-1996, definition 7
 * @example
 * const found = summaryOf(Float64Array.of(3, 1, Number.NaN, 2))
 * const row = [found.count, found.missing, found.mean, found.quantiles[2]] // => [3, 1, 2, 2]
 */
export function summaryOf(column: Float64Array, quantiles: readonly number[] = shares): ValueSummary {
  if (!(column instanceof Float64Array)) throw refused('column', shown(column), 'a Float64Array')
  if (!isList(quantiles)) throw refused('quantiles', shown(quantiles), 'a list of shares')
  quantiles.forEach((p, place) => {
    requireWithin(`quantiles[${place}]`, p, share)
  })
  const sorted = column.filter((value) => !Number.isNaN(value)).sort()
  const count = sorted.length
  const [lowest] = sorted
  const highest = sorted.at(-1)
  if (lowest === undefined || highest === undefined) throw refused('column', 'without a value', 'at least one number')
  if (!Number.isFinite(highest - lowest))
    throw refused('column', 'infinite in a row', 'finite numbers, NaN where a value is missing')
  // about the lowest value, so that a small spread about a large one is not lost
  let sum = 0
  for (const value of sorted) sum += value - lowest
  const mean = lowest + sum / count
  let squares = 0
  for (const value of sorted) squares += (value - mean) ** 2
  return {
    count,
    missing: column.length - count,
    mean,
    standardDeviation: count > 1 ? Math.sqrt(squares / (count - 1)) : undefined,
    lowest,
    highest,
    quantiles: quantiles.map((p) => quantile(sorted, p)),
  }
}

function quantile(sorted: Float64Array, p: number): number {
  const place = p * (sorted.length - 1)
  const below = Math.floor(place)
  const low = sorted[below] ?? Number.NaN
  const high = sorted[Math.min(below + 1, sorted.length - 1)] ?? Number.NaN
  return low + (place - below) * (high - low)
}

/** Whether it is a list, without loosening the type of its members. */
function isList(given: unknown): boolean {
  return Array.isArray(given)
}

function refused(argument: string, value: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value,
    expected,
    hint: 'Look at the rows with their codes: a bad row has NaN, a good one a finite number.',
  })
}
