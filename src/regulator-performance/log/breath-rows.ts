import { addToSlices } from '../loop/loop-slices.ts'
import type { CleanLog } from './breathing-log.ts'
import { rowAt } from './pause.ts'
import { middleOf } from './rank.ts'
import type { TurningPoint } from './turning-points.ts'

/** One whole breath of a log: from end exhalation over end inhalation to end exhalation. */
export interface BreathRows {
  readonly start: TurningPoint
  readonly middle: TurningPoint
  readonly end: TurningPoint
}

/**
 * The whole breaths between the turns, and how many a gap in the record spoilt. A breath starts where flow in starts and lasts until
 * the next one starts: the pause after it belongs to it, a rest before the first or after the last does not.
 */
export function wholeBreaths(
  turns: readonly TurningPoint[],
  { time, breaks }: Pick<CleanLog, 'time' | 'breaks'>,
): { readonly breaths: readonly BreathRows[]; readonly spoilt: number } {
  const breaths: BreathRows[] = []
  let spoilt = 0
  const usual = usualPause(turns)
  for (let index = 0; index + 2 < turns.length; index++) {
    const [start, middle, end] = turns.slice(index, index + 3) as [TurningPoint, TurningPoint, TurningPoint]
    if (start.kind !== 'lowest' || middle.kind !== 'highest') continue
    const isLast = index + 4 >= turns.length
    const breath = {
      start: atPauseEnd(start, time),
      middle,
      end: isLast ? atLastEnd(end, middle, time, usual) : atPauseEnd(end, time),
    }
    // a turn beside a gap may be the edge of the gap
    if (breaks.some((row) => row >= breath.start.row - 1 && row <= breath.end.row + 2)) spoilt++
    else breaths.push(breath)
  }
  return { breaths, spoilt }
}

/** Median pause of all breaths but the first and the last, where it may be a rest; undefined where there are no others. */
function usualPause(turns: readonly TurningPoint[]): number | undefined {
  const inner = turns.slice(1, -1).filter(({ kind }) => kind === 'lowest')
  return middleOf(inner.map(({ pause }) => (pause === undefined ? 0 : pause.to - pause.from)))
}

function atPauseEnd(turn: TurningPoint, time: Float64Array): TurningPoint {
  return turn.pause === undefined ? turn : at(turn, turn.pause.to, time)
}

/**
 * The end of the last breath: a rest may follow its pause, so that it gets no more than the usual one. A single breath keeps a pause no
 * longer than its flow out.
 */
function atLastEnd(
  turn: TurningPoint,
  middle: TurningPoint,
  time: Float64Array,
  usual: number | undefined,
): TurningPoint {
  const { pause } = turn
  if (pause === undefined) return turn
  const lasting = pause.to - pause.from
  const outward = pause.from - middle.time
  const kept = usual === undefined ? (lasting > outward ? 0 : lasting) : Math.min(lasting, usual)
  return at(turn, pause.from + kept, time)
}

function at(turn: TurningPoint, moment: number, time: Float64Array): TurningPoint {
  return { ...turn, time: moment, row: Math.min(rowAt(time, moment), time.length - 1) }
}

type Channels = Pick<CleanLog, 'time' | 'volume' | 'pressure'>

/** What a half breath comes to, SI. */
interface HalfMeasure {
  /** −∫ p dV along the samples. */
  readonly polygonWork: number
  /** What the curve between the samples adds. */
  readonly curvatureWork: number
  /** ∫ dp/dt dV: by how much the work falls per second of delay. */
  readonly perDelay: number
  readonly lowestRow: number
  readonly highestRow: number
}

/** The work of a half breath, with what the curve between the samples adds and what a delay would change. */
export function measureHalf(log: Channels, from: TurningPoint, to: TurningPoint): HalfMeasure {
  const { time, volume, pressure } = log
  const [first, last] = rowsBetween(time, from, to)
  const ahead: Bend = { volume: 0, pressure: 0 }
  bendInto(ahead, log, first - 1)
  let polygonWork = 0
  let curvatureWork = 0
  let perDelay = 0
  let lowestRow = first
  let highestRow = first
  let lowest = Infinity
  let highest = -Infinity
  let t0 = from.time
  let v0 = from.volume
  let p0 = pressureAt(log, from)
  // the last segment ends at the turn itself
  for (let row = first; row <= last + 1; row++) {
    const isInside = row <= last
    const t1 = isInside ? (time[row] as number) : to.time
    const v1 = isInside ? (volume[row] as number) : to.volume
    const p1 = isInside ? (pressure[row] as number) : pressureAt(log, to)
    const { volume: volumeBend, pressure: pressureBend } = ahead
    bendInto(ahead, log, row)
    const h = t1 - t0
    const dv = v1 - v0
    const dp = p1 - p0
    polygonWork -= (dv * (p0 + p1)) / 2
    curvatureWork -= ((h * h) / 24) * (dp * (volumeBend + ahead.volume) - dv * (pressureBend + ahead.pressure))
    if (h > 0) perDelay += (dp * dv) / h
    if (isInside && p1 < lowest) {
      lowest = p1
      lowestRow = row
    }
    if (isInside && p1 > highest) {
      highest = p1
      highestRow = row
    }
    t0 = t1
    v0 = v1
    p0 = p1
  }
  return { polygonWork, curvatureWork, perDelay, lowestRow, highestRow }
}

/** Adds the work and the time of a half breath to slices of the tidal volume. */
export function addHalfToSlices(
  slices: { readonly work: Float64Array; readonly time: Float64Array },
  log: Channels,
  { from, to, perVolume }: { readonly from: TurningPoint; readonly to: TurningPoint; readonly perVolume: number },
): void {
  const { time, volume, pressure } = log
  const [first, last] = rowsBetween(time, from, to)
  let t0 = from.time
  let v0 = from.volume * perVolume
  let p0 = pressureAt(log, from)
  for (let row = first; row <= last; row++) {
    const t1 = time[row] as number
    const v1 = (volume[row] as number) * perVolume
    const p1 = pressure[row] as number
    addToSlices(slices.work, v0, v1, p0, p1, slices.time, t1 - t0)
    t0 = t1
    v0 = v1
    p0 = p1
  }
  addToSlices(slices.work, v0, to.volume * perVolume, p0, pressureAt(log, to), slices.time, to.time - t0)
}

/** Pressure at a turn, between its two samples. */
export function pressureAt({ time, pressure }: Pick<CleanLog, 'time' | 'pressure'>, turn: TurningPoint): number {
  const after = Math.min(firstAfter(time, turn), time.length - 1)
  const before = Math.max(0, after - 1)
  const span = (time[after] as number) - (time[before] as number)
  const share = span > 0 ? Math.min(1, Math.max(0, (turn.time - (time[before] as number)) / span)) : 0
  return (pressure[before] as number) * (1 - share) + (pressure[after] as number) * share
}

/** First and last row that lie strictly between two turns. */
function rowsBetween(time: Float64Array, from: TurningPoint, to: TurningPoint): readonly [number, number] {
  let last = to.row
  while (last < time.length - 1 && (time[last + 1] as number) < to.time) last++
  while (last >= 0 && (time[last] as number) >= to.time) last--
  return [firstAfter(time, from), last]
}

function firstAfter(time: Float64Array, turn: TurningPoint): number {
  let row = turn.row
  while (row > 0 && (time[row - 1] as number) > turn.time) row--
  while (row < time.length && (time[row] as number) <= turn.time) row++
  return row
}

/** Second derivatives by time. */
interface Bend {
  volume: number
  pressure: number
}

/** Both second derivatives at a row, from it and its neighbours; none at the ends of the record. */
function bendInto(bend: Bend, { time, volume, pressure }: Channels, row: number): void {
  if (row < 1 || row > time.length - 2) {
    bend.volume = 0
    bend.pressure = 0
    return
  }
  const now = time[row] as number
  const perBefore = 1 / (now - (time[row - 1] as number))
  const perAfter = 1 / ((time[row + 1] as number) - now)
  const scale = 2 / ((time[row + 1] as number) - (time[row - 1] as number))
  const v = volume[row] as number
  const p = pressure[row] as number
  bend.volume = scale * (((volume[row + 1] as number) - v) * perAfter - (v - (volume[row - 1] as number)) * perBefore)
  bend.pressure =
    scale * (((pressure[row + 1] as number) - p) * perAfter - (p - (pressure[row - 1] as number)) * perBefore)
}
