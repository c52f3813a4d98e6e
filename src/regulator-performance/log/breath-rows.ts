import type { CleanLog } from './breathing-log.ts'
import { rowAt } from './pause.ts'
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
  const pauses = inner.map(({ pause }) => (pause === undefined ? 0 : pause.to - pause.from)).sort((a, b) => a - b)
  return pauses[pauses.length >> 1]
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

/** Takes one segment of a half breath. */
export type SegmentTaker = (
  fromVolume: number,
  toVolume: number,
  fromPressure: number,
  toPressure: number,
  lasting: number,
) => void

type Channels = Pick<CleanLog, 'time' | 'volume' | 'pressure'>

/** Goes along a half breath from one turn to the next, segment by segment. */
export function alongHalf(log: Channels, from: TurningPoint, to: TurningPoint, take: SegmentTaker): void {
  const { time, volume, pressure } = log
  let t0 = from.time
  let v0 = from.volume
  let p0 = pressureAt(log, from)
  const last = lastBefore(time, to)
  for (let row = firstAfter(time, from); row <= last; row++) {
    const t1 = time[row] as number
    const v1 = volume[row] as number
    const p1 = pressure[row] as number
    take(v0, v1, p0, p1, t1 - t0)
    t0 = t1
    v0 = v1
    p0 = p1
  }
  take(v0, to.volume, p0, pressureAt(log, to), to.time - t0)
}

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
  const { time, pressure } = log
  const first = firstAfter(time, from)
  let polygonWork = 0
  let curvatureWork = 0
  let perDelay = 0
  let lowestRow = first
  let highestRow = first
  let row = first - 1 // the row at or before the segment
  let volumeBend0 = bendAt(time, log.volume, row)
  let pressureBend0 = bendAt(time, pressure, row)
  alongHalf(log, from, to, (v0, v1, p0, p1, h) => {
    row++
    const volumeBend1 = bendAt(time, log.volume, row)
    const pressureBend1 = bendAt(time, pressure, row)
    const dv = v1 - v0
    const dp = p1 - p0
    polygonWork -= (dv * (p0 + p1)) / 2
    curvatureWork -= ((h * h) / 24) * (dp * (volumeBend0 + volumeBend1) - dv * (pressureBend0 + pressureBend1))
    if (h > 0) perDelay += (dp * dv) / h
    if (row < time.length && (time[row] as number) < to.time) {
      if (p1 < (pressure[lowestRow] as number)) lowestRow = row
      if (p1 > (pressure[highestRow] as number)) highestRow = row
    }
    volumeBend0 = volumeBend1
    pressureBend0 = pressureBend1
  })
  return { polygonWork, curvatureWork, perDelay, lowestRow, highestRow }
}

/** Pressure at a turn, between its two samples. */
export function pressureAt({ time, pressure }: Pick<CleanLog, 'time' | 'pressure'>, turn: TurningPoint): number {
  const after = Math.min(firstAfter(time, turn), time.length - 1)
  const before = Math.max(0, after - 1)
  const span = (time[after] as number) - (time[before] as number)
  const share = span > 0 ? Math.min(1, Math.max(0, (turn.time - (time[before] as number)) / span)) : 0
  return (pressure[before] as number) * (1 - share) + (pressure[after] as number) * share
}

function firstAfter(time: Float64Array, turn: TurningPoint): number {
  let row = turn.row
  while (row > 0 && (time[row - 1] as number) > turn.time) row--
  while (row < time.length && (time[row] as number) <= turn.time) row++
  return row
}

function lastBefore(time: Float64Array, turn: TurningPoint): number {
  let row = turn.row
  while (row < time.length - 1 && (time[row + 1] as number) < turn.time) row++
  while (row >= 0 && (time[row] as number) >= turn.time) row--
  return row
}

/** Second derivative by time, from a row and its neighbours. */
function bendAt(time: Float64Array, values: Float64Array, row: number): number {
  if (row < 1 || row > time.length - 2) return 0
  const before = (time[row] as number) - (time[row - 1] as number)
  const after = (time[row + 1] as number) - (time[row] as number)
  const value = values[row] as number
  const rise = ((values[row + 1] as number) - value) / after - (value - (values[row - 1] as number)) / before
  return (2 * rise) / (before + after)
}
