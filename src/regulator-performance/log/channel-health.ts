import { inputError, requireKeys } from '../../errors/index.ts'
import { type LogColumn, requireColumns } from './column.ts'
import { quantizationStep } from './quantization.ts'
import { middleOf } from './rank.ts'
import { signalNoise } from './signal-noise.ts'

/** Rows that stand at one value: from the first to the one behind the last. */
export interface RepeatedRows {
  readonly from: number
  readonly to: number
}

/** What a column of samples says about the channel that wrote it, in the unit of the column. */
export interface ChannelHealth {
  readonly lowest: number
  readonly highest: number
  /** Rows at exactly the lowest and the highest value. */
  readonly rowsAtLowest: number
  readonly rowsAtHighest: number
  /** The signal stops at its lowest or highest value as at a wall: the channel, or what fed it, was at the end of its range. */
  readonly isClippedLow: boolean
  readonly isClippedHigh: boolean
  /** Every value stands for so many rows: a slow channel, written on a faster clock. 1 where each row is its own. */
  readonly holdLength: number
  /** Only one row in so many is a sample, those between lie on straight lines: a slow channel, interpolated. 1 where each row is its own. */
  readonly resampledLength: number
  /** Longest run of exactly one value. A channel that hangs shows one; so does a signal at rest. */
  readonly longestRun: RepeatedRows
  /** Step of the numbers, as of a converter or of printed decimals; 0 where there is none. */
  readonly quantizationStep: number
  /** Standard deviation of independent noise; 0 for fewer than 32 rows. */
  readonly noise: number
}

/**
 * Whether a logged channel was healthy: clipped at an end of its range, hanging, or slower than its clock; with its step and noise.
 * A signal that truly is flat at its extreme, such as the pressure of a constant flow without noise, cannot be told from a clipped one.
 *
 * @param channel - one column, finite values in the order in which they were sampled, and where known the time of each row
 * @returns figures in the unit of the column
 * @throws LitrebarError `range` for a value that is not finite; `input` for an unknown key, or a time of another length
 * @source litrebar-derivation
 * @example
 * const values = Array.from({ length: 400 }, (_, row) => Math.max(-15, -20 * Math.sin(row / 20)))
 * const health = channelHealth({ values })
 * health.isClippedLow // => true
 * health.isClippedHigh // => false
 */
export function channelHealth(channel: { readonly values: LogColumn; readonly time?: LogColumn }): ChannelHealth {
  requireKeys('channel', channel, { values: true, time: false })
  const { values, time } = channel
  requireColumns(time === undefined ? { values } : { values, time }, 'channel')
  if (values.length === 0)
    throw inputError('channel.values', 'empty', 'at least 1 value', 'Give the column of the log.')
  return healthOf(values, signalNoise(values, time), time)
}

/** The same, of a column that is known to be finite. */
export function healthOf(values: LogColumn, noise: number, time?: LogColumn): ChannelHealth {
  const { low, high, longest } = scanned(values)
  const [lowest, highest] = [low.value, high.value]
  const step = quantizationStep(values)
  const hold = holdLength(values, step)
  return {
    lowest,
    highest,
    rowsAtLowest: low.rows,
    rowsAtHighest: high.rows,
    isClippedLow: highest > lowest && isWall(values, low, { extreme: lowest, inward: 1, step, hold }),
    isClippedHigh: highest > lowest && isWall(values, high, { extreme: highest, inward: -1, step, hold }),
    holdLength: hold,
    resampledLength: step > 0 ? 1 : resampledLength(values, time, highest - lowest),
    longestRun: longest,
    quantizationStep: step,
    noise,
  }
}

interface AtExtreme {
  value: number
  rows: number
  longest: RepeatedRows
}

/** The lowest and the highest value with the rows that stand at them, and the longest run of one value. */
function scanned(values: LogColumn): { low: AtExtreme; high: AtExtreme; longest: RepeatedRows } {
  const none: RepeatedRows = { from: 0, to: 0 }
  const low: AtExtreme = { value: Infinity, rows: 0, longest: none }
  const high: AtExtreme = { value: -Infinity, rows: 0, longest: none }
  let longest = none
  let from = 0
  let value = values[0] as number
  for (let row = 1; row <= values.length; row++) {
    const next = values[row]
    if (next === value) continue
    if (value <= low.value) stand(low, value, from, row)
    if (value >= high.value) stand(high, value, from, row)
    if (row - from > longest.to - longest.from) longest = { from, to: row }
    from = row
    value = next as number
  }
  return { low, high, longest }
}

/** Counts a run at an extreme, which it may be the first to reach. */
function stand(at: AtExtreme, value: number, from: number, to: number): void {
  if (value !== at.value) {
    at.value = value
    at.rows = 0
    at.longest = { from: 0, to: 0 }
  }
  at.rows += to - from
  if (to - from > at.longest.to - at.longest.from) at.longest = { from, to }
}

// A rounded top of a smooth signal falls by at most four steps within half its own width beyond its ends; a wall falls at once.
const roundedTop = 8
const fewestAtWall = 3

/** Whether the longest stay at an extreme ends as at a wall. `inward`: 1 where the signal lies above it. */
function isWall(
  values: LogColumn,
  { rows, longest }: AtExtreme,
  { extreme, inward, step, hold }: { extreme: number; inward: 1 | -1; step: number; hold: number },
): boolean {
  const length = longest.to - longest.from
  if (length < fewestAtWall || (hold > 1 && length <= 2 * hold) || length === values.length) return false
  const beyond = Math.ceil(length / 2)
  const depth = (row: number): number =>
    row < 0 || row >= values.length ? 0 : ((values[row] as number) - extreme) * inward
  const fall = Math.max(depth(longest.from - beyond), depth(longest.to - 1 + beyond))
  if (fall > roundedTop * step) return true
  if (step === 0) return false
  let near = 0
  for (let row = 0; row < values.length; row++) {
    const d = ((values[row] as number) - extreme) * inward
    if (d > 0 && d < 4.5 * step) near++
  }
  return rows > 10 && rows > 3 * near
}

const mostProbes = 4000
// Shares of the range: no smooth signal of a channel bends so little from row to row.
const straight = 1e-9
const fewestPieces = 8

/** How many rows each value stands for, where nearly all stand for more than one; 1 otherwise. */
function holdLength(values: LogColumn, step: number): number {
  const probed = Math.min(values.length, mostProbes)
  const start = (values.length - probed) >> 1
  const end = start + probed
  let runs = 0
  let repeated = 0
  let from = start
  for (let row = start + 1; row < end; row++) {
    if (values[row] === values[from]) continue
    runs++
    if (row - from > 1) repeated++
    from = row
  }
  // hardly any log is held: its runs are not worth keeping
  if (runs < fewestPieces || repeated < 0.6 * runs) return 1
  const lengths = new Float64Array(runs)
  const jumps = new Float64Array(runs)
  from = start
  for (let row = start + 1, run = 0; row < end; row++) {
    if (values[row] === values[from]) continue
    lengths[run] = row - from
    jumps[run] = Math.abs((values[row] as number) - (values[from] as number))
    run++
    from = row
  }
  // numbers of a coarse step repeat too, but then they move by one step at a time
  return (middleOf(jumps) as number) < 3 * step ? 1 : (middleOf(lengths) as number)
}

/** How many rows lie between the bends of a column of straight pieces, where nearly all hold more than one step; 1 otherwise. */
function resampledLength(values: LogColumn, time: LogColumn | undefined, range: number): number {
  const probed = Math.min(values.length, mostProbes)
  const start = (values.length - probed) >> 1
  const bends = (row: number): boolean => {
    const [before, after] = [values[row - 1] as number, values[row + 1] as number]
    const share = time === undefined ? 0.5 : shareOfWay(time, row)
    return Math.abs((values[row] as number) - before - share * (after - before)) > straight * range
  }
  let straights = 0
  for (let row = start + 1; row < start + probed - 1; row++) if (!bends(row)) straights++
  // a machine of constant flow draws long lines; a rest is one; hardly any log is worth a second look
  if (straights < 0.3 * probed) return 1
  const lengths: number[] = []
  let from = start
  for (let row = start + 1; row < start + probed - 1; row++) {
    if (!bends(row)) continue
    lengths.push(row - from)
    from = row
  }
  const pieces = lengths.filter((length) => length > 1).length
  if (lengths.length < fewestPieces || pieces < 0.6 * lengths.length) return 1
  return middleOf(lengths) as number
}

function shareOfWay(time: LogColumn, row: number): number {
  const before = time[row - 1] as number
  return ((time[row] as number) - before) / ((time[row + 1] as number) - before)
}
