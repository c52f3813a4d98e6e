import { faultOfRow, LitrebarError, requireKeys, requireRows, rowCodes, shown } from '../../errors/index.ts'
import {
  type Accepted,
  type Depth,
  type Duration,
  type Length,
  metre,
  metrePerMinute,
  requireWithin,
  type Speed,
  second,
} from '../../units/index.ts'
import { finite } from '../accepted.ts'

/** A depth at a moment. */
export interface DepthAtTime {
  readonly time: Duration
  readonly depth: Depth
}

/** Rate of ascent by a straight line through some depths. */
export interface AscentRate {
  /** Upwards positive. */
  readonly rate: Speed
  /** From the noise of one depth. */
  readonly standardUncertainty: Speed
  /** How late it is: the rate is that of the middle of the readings. For N readings Δt apart (N - 1) Δt / 2. */
  readonly delay: Duration
}

const noise: Accepted = { atLeast: 0, atMost: 10, unit: metre, hint: 'State the noise of one depth.' }
const speed: Accepted = { atLeast: -200, atMost: 200, unit: metrePerMinute, hint: 'Upwards is positive.' }
const constant: Accepted = { atLeast: 0, atMost: 600, unit: second, hint: 'Give the time constant of the filter.' }
const elapsed: Accepted = { atLeast: 0, unit: second, hint: 'Give the time since the ascent began.' }

/**
 * Rate of ascent from two depths or more, by least squares, with its uncertainty and its delay. Two readings are a plain difference;
 * more are quieter with the power 3/2 of their number, and later: show the delay beside the rate. A common offset of the depths cancels.
 *
 * @param readings - depths, m, at rising times, s
 * @param depthUncertainty - standard uncertainty of one depth by its noise, m
 * @returns rate, m/s, upwards positive; its standard uncertainty; delay, s
 * @throws LitrebarError `input` for fewer than two or times that do not rise; `range`, naming the reading
 * @source litrebar-derivation (slope of least squares, white noise)
 * @example
 * const readings = [20, 19.84, 19.71, 19.54].map((depth, i) => ({ time: measure(i, second), depth: depthOf(depth, metre) }))
 * inUnit(ascentRate(readings, measure(0.05, metre)).rate, metrePerMinute).toFixed(1) // => '9.1'
 */
export function ascentRate(readings: readonly DepthAtTime[], depthUncertainty: Length): AscentRate {
  requireWithin('depthUncertainty', depthUncertainty, noise)
  requireReadings(readings)
  const times = readings.map(({ time }) => time as number)
  const depths = readings.map(({ depth }) => depth as number)
  const { slope, squares, meanTime } = lineThrough(times, depths, 0, times.length)
  return {
    rate: -slope as Speed,
    standardUncertainty: (depthUncertainty / Math.sqrt(squares)) as Speed,
    delay: ((times.at(-1) ?? 0) - meanTime) as Duration,
  }
}

/** What is worked out for each row of a depth log. */
export interface AscentRateColumns {
  /** Upwards positive. */
  readonly rateMetrePerSecond: Float64Array
  readonly standardUncertaintyMetrePerSecond: Float64Array
  readonly delaySecond: Float64Array
  readonly code: Uint8Array
}

/**
 * Rate of ascent at every row of a depth log, from that row and those before it. The first rows have no full window: they are `missing`,
 * as is a window with a missing value in it. Rows before `from` are read, so that a log can be worked out in parts.
 *
 * @param out - `rateMetrePerSecond`, `standardUncertaintyMetrePerSecond`, `delaySecond`, `code` of `rowCodes`
 * @param columns - `timeSecond`, rising, and `depthMetre`
 * @param options - `window`: how many readings, 2 to 1000; standard uncertainty of one depth, m
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `input` for columns, options or a window that is not whole; `range` for rows
 * @source litrebar-derivation (slope of least squares, white noise)
 */
export function ascentRateInto(
  out: AscentRateColumns,
  columns: { readonly timeSecond: Float64Array; readonly depthMetre: Float64Array },
  options: { readonly window: number; readonly depthUncertainty: Length },
  from = 0,
  to?: number,
): void {
  const names = ['rateMetrePerSecond', 'standardUncertaintyMetrePerSecond', 'delaySecond', 'code']
  const end = requireRows([columns, ['timeSecond', 'depthMetre']], [out, names], from, to)
  requireKeys('options', options, { window: true, depthUncertainty: true })
  const { window, depthUncertainty } = options
  requireWithin('options.depthUncertainty', depthUncertainty, noise)
  if (!(Number.isSafeInteger(window) && window >= 2 && window <= 1000))
    throw refusal('options.window', shown(window), 'a whole number, 2 to 1000')
  const { timeSecond, depthMetre } = columns
  for (let row = from; row < end; row++) {
    const start = row - window + 1
    const code = start < 0 ? rowCodes.missing : faultOfWindow(timeSecond, depthMetre, start, row)
    out.code[row] = code
    if (code !== rowCodes.good) {
      out.rateMetrePerSecond[row] = Number.NaN
      out.standardUncertaintyMetrePerSecond[row] = Number.NaN
      out.delaySecond[row] = Number.NaN
      continue
    }
    const { slope, squares, meanTime } = lineThrough(timeSecond, depthMetre, start, row + 1)
    out.rateMetrePerSecond[row] = -slope
    out.standardUncertaintyMetrePerSecond[row] = depthUncertainty / Math.sqrt(squares)
    out.delaySecond[row] = (timeSecond[row] as number) - meanTime
  }
}

/** What a display with a filter of first order shows of a steady ascent. */
export interface FilterLag {
  /** By how much the depth shown trails behind once the filter has settled. */
  readonly depthLag: Length
  /** Rate shown at that moment. */
  readonly shownRate: Speed
}

/**
 * What a filter of first order does to a steady ascent that has just begun: the depth trails by rate times time constant, and the rate shown
 * rises to the true one only in several time constants.
 *
 * @param filter - time constant, s; true rate, m/s, upwards positive; time since the ascent began, s
 * @returns lag of depth, m, when settled; rate shown, m/s
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation (filter of first order)
 * @example
 * const filter = { timeConstant: measure(3, second), rate: measure(9, metrePerMinute), elapsed: measure(10, second) }
 * inUnit(filterLag(filter).shownRate, metrePerMinute).toFixed(2) // => '8.68'
 */
export function filterLag(filter: {
  readonly timeConstant: Duration
  readonly rate: Speed
  readonly elapsed: Duration
}): FilterLag {
  requireKeys('filter', filter, { timeConstant: true, rate: true, elapsed: true })
  requireWithin('filter.timeConstant', filter.timeConstant, constant)
  requireWithin('filter.rate', filter.rate, speed)
  requireWithin('filter.elapsed', filter.elapsed, elapsed)
  const reached = filter.timeConstant === 0 ? 1 : -Math.expm1(-filter.elapsed / filter.timeConstant)
  return {
    depthLag: (filter.rate * filter.timeConstant) as Length,
    shownRate: (filter.rate * reached) as Speed,
  }
}

interface LineThrough {
  readonly slope: number
  /** Sum of squares of the times about their mean. */
  readonly squares: number
  readonly meanTime: number
}

function lineThrough(times: ArrayLike<number>, depths: ArrayLike<number>, from: number, to: number): LineThrough {
  let sumTime = 0
  let sumDepth = 0
  for (let i = from; i < to; i++) {
    sumTime += times[i] as number
    sumDepth += depths[i] as number
  }
  const meanTime = sumTime / (to - from)
  const meanDepth = sumDepth / (to - from)
  let squares = 0
  let products = 0
  for (let i = from; i < to; i++) {
    const away = (times[i] as number) - meanTime
    squares += away * away
    products += away * ((depths[i] as number) - meanDepth)
  }
  return { slope: products / squares, squares, meanTime }
}

function faultOfWindow(times: Float64Array, depths: Float64Array, start: number, row: number): number {
  for (let i = start; i <= row; i++) {
    const time = times[i] as number
    const depth = depths[i] as number
    if (!(Math.abs(time) < Infinity && Math.abs(depth) <= 11_000)) return faultOfRow(rowCodes.outOfRange, time, depth)
    if (i > start && !(time > (times[i - 1] as number))) return rowCodes.input
  }
  return rowCodes.good
}

function requireReadings(readings: readonly DepthAtTime[]): void {
  if (!Array.isArray(readings) || readings.length < 2)
    throw refusal('readings', Array.isArray(readings) ? `${String(readings.length)} of them` : 'no list', 'at least 2')
  let before = -Infinity
  readings.forEach((reading: DepthAtTime, i) => {
    requireKeys(`readings[${i}]`, reading, { time: true, depth: true })
    requireWithin(`readings[${i}].time`, reading.time, finite)
    requireWithin(`readings[${i}].depth`, reading.depth, finite)
    if (!(reading.time > before)) throw refusal(`readings[${i}].time`, `${reading.time} s`, `later than ${before} s`)
    before = reading.time
  })
}

function refusal(argument: string, value: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value,
    expected,
    hint: 'A rate needs readings in order of time.',
  })
}
