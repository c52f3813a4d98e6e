import { LitrebarError, requireKeys } from '../../errors/index.ts'
import type { SourceId } from '../../references/sources.ts'
import { type Accepted, type Depth, type Duration, day, requireWithin, second } from '../../units/index.ts'
import { depth, finite } from '../accepted.ts'
import type { DepthAtTime } from './ascent-rate.ts'

/** The rate that a diving watch may gain or lose in a magnetic field and after a shock, as a summary of its standard gives it. */
export const watchRates = {
  magneticField: { secondsPerDay: 30, source: 'iso-6425' },
  shock: { secondsPerDay: 60, source: 'iso-6425' },
} as const satisfies Readonly<Record<string, { readonly secondsPerDay: number; readonly source: SourceId }>>

const drift: Accepted = { atLeast: 0, atMost: 3600, unit: second, hint: 'Give the seconds gained or lost in a day.' }
const elapsed: Accepted = { atLeast: 0, atMost: 30, unit: day, hint: 'Give the time that was measured.' }
const step: Accepted = { atLeast: 0, atMost: 60, unit: second, hint: 'Give the step of the display.' }

/**
 * Largest error of a measured time: rate of the timer, and one step of its display. A minute display errs more than any watch.
 *
 * @param timer - seconds gained or lost in a day; step of the display, s; time measured, s
 * @returns error, s
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation
 * @example
 * const timer = { perDay: measure(30, second), step: measure(60, second), elapsed: measure(40, minute) }
 * timerError(timer).toFixed(1) // => '60.8'
 */
export function timerError(timer: {
  readonly perDay: Duration
  readonly step: Duration
  readonly elapsed: Duration
}): Duration {
  requireKeys('timer', timer, { perDay: true, step: true, elapsed: true })
  requireWithin('timer.perDay', timer.perDay, drift)
  requireWithin('timer.step', timer.step, step)
  requireWithin('timer.elapsed', timer.elapsed, elapsed)
  return ((timer.perDay * timer.elapsed) / day.factor + timer.step) as Duration
}

/** What an automatic timer counts of a dive. */
export interface AutomaticTime {
  /** Counted: from when it starts to when it stops. */
  readonly shown: Duration
  /** From the first reading below the surface to the last. */
  readonly underWater: Duration
}

/**
 * Dive time as an automatic timer counts it: it runs while the depth is at least that at which it starts. Time in the first metre is lost;
 * a pause at the surface stops it.
 *
 * @param readings - depths, m, at rising times, s
 * @param startDepth - depth at which the timer runs, m
 * @returns time shown and time under water, s
 * @throws LitrebarError `input` for fewer than two readings or times that do not rise; `range`
 * @source litrebar-derivation
 * @example
 * const readings = [[0, 0], [60, 10], [600, 10], [660, 0]].map(([t = 0, d = 0]) => ({ time: measure(t, second), depth: depthOf(d, metre) }))
 * automaticTime(readings, depthOf(1, metre)).shown // => 648
 */
export function automaticTime(readings: readonly DepthAtTime[], startDepth: Depth): AutomaticTime {
  requireWithin('startDepth', startDepth, depth)
  if (!Array.isArray(readings) || readings.length < 2) throw disorder('readings', 'too few')
  let shown = 0
  let underWater = 0
  readings.forEach((next: DepthAtTime, i) => {
    requireKeys(`readings[${i}]`, next, { time: true, depth: true })
    requireWithin(`readings[${i}].time`, next.time, finite)
    requireWithin(`readings[${i}].depth`, next.depth, depth)
    const last: DepthAtTime | undefined = (readings as readonly DepthAtTime[])[i - 1]
    if (last === undefined) return
    if (!(next.time > last.time)) throw disorder(`readings[${i}].time`, `${next.time} s`)
    shown += timeBelow(last, next, startDepth)
    underWater += timeBelow(last, next, 0)
  })
  return { shown: shown as Duration, underWater: underWater as Duration }
}

/** Time of a straight stretch that lies at a depth or below; at the surface itself nobody is under water. */
function timeBelow(a: DepthAtTime, b: DepthAtTime, limit: number): number {
  const duration = b.time - a.time
  const low = Math.min(a.depth, b.depth)
  const high = Math.max(a.depth, b.depth)
  if (high < limit || high === 0) return 0
  return low >= limit ? duration : (duration * (high - limit)) / (high - low)
}

function disorder(argument: string, value: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value,
    expected: 'two readings or more, in order of time',
    hint: 'Sort the readings.',
  })
}
