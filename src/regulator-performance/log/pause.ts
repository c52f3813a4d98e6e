import { middleOf } from './rank.ts'
import type { Pause, TurningPoint } from './turning-points.ts'

interface Signal {
  readonly time: Float64Array
  readonly volume: Float64Array
}

// As shares of the time of a breath and of its volume. Below 6 % of the peak flow of a sinusoid there is none.
const window = 0.03
const stillFlow = 0.06
const shortest = 0.08

/** The stretch without flow at each turn, from the end of one flow to the start of the next; undefined where the one turns into the other. */
export function pausesAt(
  { time, volume }: Signal,
  turns: readonly TurningPoint[],
  noise: number,
): readonly (Pause | undefined)[] {
  const breath = usualBreath(turns)
  if (breath === undefined) return turns.map(() => undefined)
  const lasting = window * breath.duration
  const still = Math.max(stillFlow * Math.PI * window * breath.swing, 6 * noise)
  return turns.map((turn) => {
    const height = turn.kind === 'lowest' ? 1 : -1
    const to = edgeOfStill(time, volume, turn.row, { way: 1, height, lasting, still })
    const from = edgeOfStill(time, volume, turn.row, { way: -1, height, lasting, still })
    return to - from > shortest * breath.duration ? { from, to } : undefined
  })
}

/** What counts as still, and which way to go: in time, and away from the turn in volume. */
interface Search {
  readonly way: 1 | -1
  readonly height: 1 | -1
  readonly lasting: number
  readonly still: number
}

/** Time at which the volume leaves its rest, going one way from a row of it. */
function edgeOfStill(time: Float64Array, volume: Float64Array, row: number, search: Search): number {
  const { way, height, lasting, still } = search
  const last = way > 0 ? time.length - 1 : 0
  let here = row
  let ahead = row
  for (; here !== last; here += way) {
    while (ahead !== last && ((time[ahead] as number) - (time[here] as number)) * way < lasting) ahead += way
    if (ahead === last) return time[last] as number
    if ((meanAbout(volume, ahead) - meanAbout(volume, here)) * height >= still) break
  }
  // the volume leaves its rest as a parabola: from two heights back to where it started
  const rest = meanAbout(volume, here)
  const timeAway = (distance: number): number => {
    let at = here
    while (at !== last && ((volume[at] as number) - rest) * height < distance) at += way
    return time[at] as number
  }
  const first = timeAway(still)
  const start = 2 * first - timeAway(4 * still)
  const from = time[here] as number
  return (start - from) * way < 0 ? from : start
}

/** Mean of a row and its neighbours: the outermost of many noisy samples is no height. */
function meanAbout(values: Float64Array, row: number): number {
  const now = values[row] as number
  return (now + (values[row - 1] ?? now) + (values[row + 1] ?? now)) / 3
}

/** Median of the time from one end exhalation to the next, and of the height between turns. */
function usualBreath(
  turns: readonly TurningPoint[],
): { readonly duration: number; readonly swing: number } | undefined {
  const durations: number[] = []
  const swings: number[] = []
  for (let index = 0; index + 1 < turns.length; index++) {
    const [turn, next, after] = turns.slice(index, index + 3) as [TurningPoint, TurningPoint, TurningPoint | undefined]
    swings.push(Math.abs(next.volume - turn.volume))
    durations.push(after === undefined ? 2 * (next.time - turn.time) : after.time - turn.time)
  }
  const [duration, swing] = [middleOf(durations), middleOf(swings)]
  return duration === undefined || swing === undefined ? undefined : { duration, swing }
}

/** Mean of a signal within a pause, away from its edges. */
export function meanWithin({ from, to }: Pause, time: Float64Array, values: Float64Array): number | undefined {
  const edge = 0.15 * (to - from)
  let sum = 0
  let count = 0
  for (let row = rowAt(time, from + edge); row < time.length && (time[row] as number) <= to - edge; row++) {
    sum += values[row] as number
    count++
  }
  return count === 0 ? undefined : sum / count
}

/** Largest minus smallest value of a signal in the middle half of a pause. */
export function rangeWithin({ from, to }: Pause, time: Float64Array, values: Float64Array): number {
  const edge = 0.25 * (to - from)
  let low = Infinity
  let high = -Infinity
  for (let row = rowAt(time, from + edge); row < time.length && (time[row] as number) <= to - edge; row++) {
    const value = values[row] as number
    if (value < low) low = value
    if (value > high) high = value
  }
  return high > low ? high - low : 0
}

/** First row at or after a time. */
export function rowAt(time: Float64Array, at: number): number {
  let low = 0
  let high = time.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((time[middle] as number) < at) low = middle + 1
    else high = middle
  }
  return low
}
