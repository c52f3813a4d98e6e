import type { BreathRows } from './breath-rows.ts'
import type { CleanLog } from './breathing-log.ts'
import { mean } from './mean.ts'
import { meanWithin, rowAt } from './pause.ts'
import { middleOf } from './rank.ts'
import type { Pause, TurningPoint } from './turning-points.ts'

/** What was taken off a channel over the whole record: SI, and s. */
export interface RemovedDrift {
  readonly change: number
  readonly during: number
  /** Standard uncertainty of the change. */
  readonly uncertainty: number
}

/** A baseline through points of time, straight between them and beyond the first and the last. */
interface Baseline {
  readonly time: readonly number[]
  readonly value: readonly number[]
}

/** A baseline that runs smoothly by its points. */
interface SmoothedBaseline extends Baseline {
  readonly points: readonly Point[]
}

/**
 * Takes the drift off pressure and volume, in place, and gives the breaths with their turns moved along.
 * Pressure: what is read about each end exhalation must stay, in the pause where there is one. At that moment neither the size of the
 * breaths nor elastance speaks. Volume: each end exhalation comes back to 0. What was at the start of the record stays. A single breath
 * shows no drift of pressure: it is left as it is.
 */
export function removeDrift(
  log: CleanLog,
  breaths: readonly BreathRows[],
  ofPressure: 'removed' | 'kept',
): {
  readonly breaths: readonly BreathRows[]
  readonly pressure: RemovedDrift
  readonly volume: RemovedDrift
  readonly zeroStep: number
} {
  const turns = endExhalations(breaths)
  const pressureLine = ofPressure === 'removed' && breaths.length > 1 ? restPressures(log, breaths, turns) : undefined
  const volumeLine = { time: turns.map(({ time }) => time), value: turns.map(({ volume }) => volume) }
  const { highest, lowest } = log.channels.pressure
  const zeroStep = pressureLine === undefined ? 0 : stepOf(pressureLine, highest - lowest)
  const last = log.time.length - 1
  const during = (log.time[last] as number) - (log.time[0] as number)
  if (pressureLine !== undefined) {
    subtract(log.pressure, log.time, pressureLine, valueAt(pressureLine, log.time[0] as number))
  }
  subtract(log.volume, log.time, volumeLine, 0)
  const moved = breaths.map(({ start: a, middle, end }) => ({
    start: { ...a, volume: 0 },
    middle: { ...middle, volume: middle.volume - valueAt(volumeLine, middle.time) },
    end: { ...end, volume: 0 },
  }))
  return {
    breaths: moved,
    pressure: pressureLine === undefined ? { change: 0, during, uncertainty: 0 } : trendOf(pressureLine, during),
    volume: trendOf(volumeLine, during),
    zeroStep,
  }
}

// Ours. What wanders or scatters jumps by like amounts everywhere; a step does so once.
const leastStep = { deviations: 8, shareOfSwing: 0.05 }

/** The jump from one point of a baseline to the next that lies furthest from all others, beyond what they scatter; 0 for none. */
function stepOf({ points }: SmoothedBaseline, swing: number): number {
  const jumps = points.slice(1).map(({ value }, k) => value - (points[k] as Point).value)
  const usual = middleOf(jumps) ?? 0
  const steps = jumps.map((jump) => jump - usual)
  const scatter = 1.4826 * (middleOf(steps.map(Math.abs)) ?? 0)
  const largest = steps.reduce((most, step) => (Math.abs(step) > Math.abs(most) ? step : most), 0)
  const isStep = Math.abs(largest) > Math.max(leastStep.deviations * scatter, leastStep.shareOfSwing * swing)
  return isStep ? largest : 0
}

// About an end exhalation without pause: this share of the breath on either side, without the samples that straddle the turn.
const share = 0.07
const straddling = 1.5

/** Pressure at each end exhalation: in its pause, or the mean of both sides of the turn. All points are read in one way. */
function restPressures(
  log: CleanLog,
  breaths: readonly BreathRows[],
  turns: readonly TurningPoint[],
): SmoothedBaseline {
  const rests = turns.flatMap(({ pause }) => {
    const value = pause && meanWithin(pause, log.time, log.pressure)
    return pause === undefined || value === undefined ? [] : [{ time: (pause.from + pause.to) / 2, value }]
  })
  if (rests.length >= 2 && rests.length >= 0.7 * turns.length) {
    return smoothed(rests)
  }
  const reach = share * mean(breaths.map(({ start, end }) => end.time - start.time))
  const step = ((log.time[log.time.length - 1] as number) - (log.time[0] as number)) / (log.time.length - 1)
  const points = turns.flatMap(({ time, pause = { from: time, to: time } }) => {
    const sides: readonly Pause[] = [
      { from: pause.from - reach, to: pause.from - straddling * step },
      { from: pause.to + straddling * step, to: pause.to + reach },
    ]
    const [before, after] = sides.map((side) => timeMean(side, log.time, log.pressure))
    return before === undefined || after === undefined ? [] : [{ time, value: (before + after) / 2 }]
  })
  return smoothed(points)
}

interface Point {
  readonly time: number
  readonly value: number
}

// On either side. A zero wanders slowly; what differs from one breath to the next is the breaths.
const neighbours = 4

/** Each point on the straight line through it and its neighbours. */
function smoothed(points: readonly Point[]): SmoothedBaseline {
  const value = points.map(({ time }, index) => {
    const first = Math.max(0, Math.min(index - neighbours, points.length - 2 * neighbours - 1))
    const near = points.slice(first, first + 2 * neighbours + 1)
    const line = lineThrough(near)
    return line.level + line.slope * (time - line.middle)
  })
  return { time: points.map(({ time }) => time), value, points }
}

interface Line {
  readonly middle: number
  readonly level: number
  readonly slope: number
  /** Sum of the squared distances from the middle. */
  readonly variance: number
}

function lineThrough(points: readonly Point[]): Line {
  const middle = mean(points.map(({ time }) => time))
  const level = mean(points.map(({ value }) => value))
  let covariance = 0
  let variance = 0
  for (const { time, value } of points) {
    covariance += (time - middle) * (value - level)
    variance += (time - middle) ** 2
  }
  return { middle, level, slope: variance > 0 ? covariance / variance : 0, variance }
}

/** Mean over time of a signal between two moments, straight between its samples; undefined where the record does not hold them. */
function timeMean({ from, to }: Pause, time: Float64Array, values: Float64Array): number | undefined {
  const first = rowAt(time, from)
  if (first === 0 || to > (time[time.length - 1] as number) || !(to > from)) return undefined
  const between = (row: number, at: number): number => {
    const t0 = time[row - 1] as number
    const v0 = values[row - 1] as number
    return v0 + (((values[row] as number) - v0) * (at - t0)) / ((time[row] as number) - t0)
  }
  let t0 = from
  let v0 = between(first, from)
  let sum = 0
  let row = first
  for (; (time[row] as number) < to; row++) {
    sum += ((v0 + (values[row] as number)) / 2) * ((time[row] as number) - t0)
    t0 = time[row] as number
    v0 = values[row] as number
  }
  sum += ((v0 + between(row, to)) / 2) * (to - t0)
  return sum / (to - from)
}

function endExhalations(breaths: readonly BreathRows[]): readonly TurningPoint[] {
  return breaths.flatMap(({ start, end }, index) => {
    const next = breaths[index + 1]
    return next !== undefined && next.start.time === end.time ? [start] : [start, end]
  })
}

/** The straight trend of a baseline over the record, and how sure it is by the scatter from point to point. */
function trendOf({ time, value }: Baseline, during: number): RemovedDrift {
  const n = time.length
  if (n < 2) return { change: 0, during, uncertainty: 0 }
  const { slope, variance } = lineThrough(time.map((t, k) => ({ time: t, value: value[k] as number })))
  const steps = value
    .slice(1)
    .map((v, k) => v - (value[k] as number) - slope * ((time[k + 1] as number) - (time[k] as number)))
  const scatter = middleOf(steps.map(Math.abs)) as number
  // 1.4826 median sizes are a standard deviation; a step holds the scatter of two points
  const sigma = n < 3 ? 0 : (1.4826 * scatter) / Math.SQRT2
  return { change: slope * during, during, uncertainty: (sigma / Math.sqrt(variance)) * during }
}

function subtract(values: Float64Array, time: Float64Array, line: Baseline, keep: number): void {
  if (line.time.length === 0) return
  let row = 0
  for (let piece = 0; piece === 0 || piece < line.time.length - 1; piece++) {
    const start = line.time[piece] as number
    const value = line.value[piece] as number
    const until = piece < line.time.length - 2 ? (line.time[piece + 1] as number) : Infinity
    const slope = slopeOn(line, piece)
    for (; row < values.length && (time[row] as number) < until; row++) {
      values[row] = (values[row] as number) - (value + slope * ((time[row] as number) - start)) + keep
    }
  }
}

function valueAt(line: Baseline, t: number): number {
  if (line.time.length === 0) return 0
  let piece = 0
  while (piece < line.time.length - 2 && (line.time[piece + 1] as number) <= t) piece++
  return onPiece(line, piece, t)
}

function onPiece(line: Baseline, piece: number, t: number): number {
  return (line.value[piece] as number) + slopeOn(line, piece) * (t - (line.time[piece] as number))
}

/** Slope of a piece; a baseline of a single point is level. */
function slopeOn({ time, value }: Baseline, piece: number): number {
  const to = value[piece + 1]
  return to === undefined
    ? 0
    : (to - (value[piece] as number)) / ((time[piece + 1] as number) - (time[piece] as number))
}
