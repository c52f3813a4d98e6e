import { requireKeys } from '../../errors/index.ts'
import { type LogColumn, requireColumns } from './column.ts'
import { quantizationStep } from './quantization.ts'
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
  return healthOf(values, signalNoise(values, time))
}

/** The same, of a column that is known to be finite. */
export function healthOf(values: LogColumn, noise: number): ChannelHealth {
  const { lowest, highest } = extremes(values)
  const step = quantizationStep(values)
  const hold = holdLength(values, step)
  const scan = scanned(values, lowest, highest)
  return {
    lowest,
    highest,
    rowsAtLowest: scan.low.rows,
    rowsAtHighest: scan.high.rows,
    isClippedLow: highest > lowest && isWall(values, scan.low, { extreme: lowest, inward: 1, step, hold }),
    isClippedHigh: highest > lowest && isWall(values, scan.high, { extreme: highest, inward: -1, step, hold }),
    holdLength: hold,
    longestRun: scan.longest,
    quantizationStep: step,
    noise,
  }
}

interface AtExtreme {
  rows: number
  longest: RepeatedRows
}

function extremes(values: LogColumn): { readonly lowest: number; readonly highest: number } {
  let lowest = Infinity
  let highest = -Infinity
  for (let row = 0; row < values.length; row++) {
    const value = values[row] as number
    if (value < lowest) lowest = value
    if (value > highest) highest = value
  }
  return { lowest, highest }
}

function scanned(values: LogColumn, lowest: number, highest: number) {
  const low: AtExtreme = { rows: 0, longest: { from: 0, to: 0 } }
  const high: AtExtreme = { rows: 0, longest: { from: 0, to: 0 } }
  let longest: RepeatedRows = { from: 0, to: 0 }
  const close = (from: number, to: number): void => {
    const value = values[from] as number
    const at = value === lowest ? low : value === highest ? high : undefined
    if (at !== undefined) {
      at.rows += to - from
      if (to - from > at.longest.to - at.longest.from) at.longest = { from, to }
    }
    if (to - from > longest.to - longest.from) longest = { from, to }
  }
  let from = 0
  for (let row = 1; row <= values.length; row++) {
    if (row < values.length && values[row] === values[from]) continue
    close(from, row)
    from = row
  }
  return { low, high, longest }
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

/** How many rows each value stands for, where nearly all stand for more than one; 1 otherwise. */
function holdLength(values: LogColumn, step: number): number {
  const rows = Math.min(values.length, mostProbes)
  const start = (values.length - rows) >> 1
  const lengths: number[] = []
  const jumps: number[] = []
  let from = start
  for (let row = start + 1; row < start + rows; row++) {
    const jump = Math.abs((values[row] as number) - (values[from] as number))
    if (jump === 0) continue
    lengths.push(row - from)
    jumps.push(jump)
    from = row
  }
  if (lengths.length < 8) return 1
  const repeated = lengths.filter((length) => length > 1).length
  const typical = jumps.sort((a, b) => a - b)[jumps.length >> 1] as number
  // numbers of a coarse step repeat too, but then they move by one step at a time
  if (repeated < 0.6 * lengths.length || typical < 3 * step) return 1
  return lengths.sort((a, b) => a - b)[lengths.length >> 1] as number
}
