import { type BreathRows, pressureTime } from './breath-rows.ts'
import type { CleanLog } from './breathing-log.ts'

/** What was taken off a channel over the whole record: SI, and s. */
export interface RemovedDrift {
  readonly change: number
  readonly during: number
}

/** A baseline through points of time, straight between them and beyond the first and the last. */
interface Baseline {
  readonly time: readonly number[]
  readonly value: readonly number[]
}

/**
 * Takes the drift off pressure and volume, in place, and gives the breaths with their turns moved along.
 * Pressure: the mean over each whole breath must stay; volume: each end exhalation comes back to 0. What was at the start of the
 * record stays. A single breath shows no drift of pressure: it is left as it is.
 */
export function removeDrift(
  log: CleanLog,
  breaths: readonly BreathRows[],
  ofPressure: 'removed' | 'kept',
): { readonly breaths: readonly BreathRows[]; readonly pressure: RemovedDrift; readonly volume: RemovedDrift } {
  const pressureLine = ofPressure === 'removed' ? meanPressures(log, breaths) : undefined
  const volumeLine = endExhalations(breaths)
  const start = pressureLine === undefined ? 0 : valueAt(pressureLine, log.time[0] as number)
  const last = log.time.length - 1
  const during = (log.time[last] as number) - (log.time[0] as number)
  const pressureChange = pressureLine === undefined ? 0 : valueAt(pressureLine, log.time[last] as number) - start
  const volumeChange = valueAt(volumeLine, log.time[last] as number) - valueAt(volumeLine, log.time[0] as number)
  if (pressureLine !== undefined) subtract(log.pressure, log.time, pressureLine, start)
  subtract(log.volume, log.time, volumeLine, 0)
  const moved = breaths.map(({ start: a, middle, end }) => ({
    start: { ...a, volume: 0 },
    middle: { ...middle, volume: middle.volume - valueAt(volumeLine, middle.time) },
    end: { ...end, volume: 0 },
  }))
  return {
    breaths: moved,
    pressure: { change: pressureChange, during },
    volume: { change: volumeChange, during },
  }
}

function meanPressures(log: CleanLog, breaths: readonly BreathRows[]): Baseline | undefined {
  if (breaths.length < 2) return undefined
  const value = breaths.map(({ start, middle, end }) => {
    const sum = pressureTime(log, start, middle) + pressureTime(log, middle, end)
    return sum / (end.time - start.time)
  })
  return { time: breaths.map(({ start, end }) => (start.time + end.time) / 2), value }
}

function endExhalations(breaths: readonly BreathRows[]): Baseline {
  const turns = breaths.flatMap(({ start, end }, index) => {
    const next = breaths[index + 1]
    return next !== undefined && next.start.time === end.time ? [start] : [start, end]
  })
  return { time: turns.map(({ time }) => time), value: turns.map(({ volume }) => volume) }
}

function subtract(values: Float64Array, time: Float64Array, line: Baseline, keep: number): void {
  let piece = 0
  for (let row = 0; row < values.length; row++) {
    const t = time[row] as number
    while (piece < line.time.length - 2 && (line.time[piece + 1] as number) <= t) piece++
    values[row] = (values[row] as number) - onPiece(line, piece, t) + keep
  }
}

function valueAt(line: Baseline, t: number): number {
  let piece = 0
  while (piece < line.time.length - 2 && (line.time[piece + 1] as number) <= t) piece++
  return onPiece(line, piece, t)
}

function onPiece({ time, value }: Baseline, piece: number, t: number): number {
  const from = value[piece] as number
  const to = value[piece + 1]
  if (to === undefined) return from
  const start = time[piece] as number
  return from + ((to - from) * (t - start)) / ((time[piece + 1] as number) - start)
}
