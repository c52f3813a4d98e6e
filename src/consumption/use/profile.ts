import { pressureAtDepthInto, type WaterColumn } from '../../environment/index.ts'
import { LitrebarError, requireKeys, requireList } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Depth,
  type Duration,
  isWithin,
  metre,
  minute,
  requireWithin,
  second,
} from '../../units/index.ts'

/** A moment of a dive. Between two of them pressure changes evenly with time. */
export interface ProfilePoint {
  /** From the start of the dive. */
  readonly time: Duration
  /** Around the diver, absolute. */
  readonly ambientPressure: AbsolutePressure
}

/** A dive as pressure against time: at least two moments, each later than the one before. */
export type Profile = readonly ProfilePoint[]

/** A moment of a dive as a depth gauge tells it. */
export interface DepthPoint {
  readonly time: Duration
  readonly depth: Depth
}

const ambient: Accepted = {
  atLeast: 0.2,
  atMost: 100,
  unit: bar,
  hint: 'Give the absolute pressure around the diver: about 1 bar at the surface.',
}
/** A moment of a dive. */
export const moment: Accepted = {
  atLeast: 0,
  atMost: 1e8,
  unit: second,
  hint: 'Count time from the start of the dive.',
}
const gapRange: Accepted = { above: 0, unit: second, hint: 'Give the longest time between two readings.' }
const durationRange: Accepted = {
  above: 0,
  atMost: 100_000,
  unit: minute,
  hint: 'A rate over no time has no value: give the time between the two readings.',
}

/**
 * Profile from depths read in water of one density.
 *
 * @param points - time from the start, s; depth, m; at least two, each later than the one before
 * @param water - surface pressure, density and gravity
 * @param options - `longestGap`: refuse a longer time between two readings, so that a break in a record is not
 *   taken for an even change of depth
 * @returns pressure against time
 * @throws LitrebarError `range` or `input`, naming the point
 * @source openstax-college-physics, section 11.4 (pressure at depth)
 * @example
 * const water = { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) }
 * const points = [[0, 0], [2, 30], [22, 30], [25, 5], [28, 5], [29, 0]] as const
 * const profile = profileInWater(
 *   points.map(([minutes, metres]) => ({ time: measure(minutes, minute), depth: depthOf(metres, metre) })),
 *   water,
 * )
 * inUnit(meanAmbientPressure(profile), bar).toFixed(3) // => '3.440'
 */
export function profileInWater(
  points: readonly DepthPoint[],
  water: WaterColumn,
  options: { readonly longestGap?: Duration } = {},
): Profile {
  requireKeys('options', options, { longestGap: false })
  if (options.longestGap !== undefined) requireWithin('options.longestGap', options.longestGap, gapRange)
  requireList('points', points, 2, 'Give the start and the end at least.')
  requireKeys('water', water, { surfacePressure: true, density: true, gravity: false })
  const depthMetre = Float64Array.from(points, (point, i) => {
    if (!hasKeys(point, depthKeys)) requireKeys(`points[${i}]`, point, depthKeys)
    const { depth } = point
    if (!isWithin(depth, depthRange)) requireWithin(`points[${i}].depth`, depth, depthRange)
    return depth
  })
  const out = { pressurePascal: new Float64Array(points.length), code: new Uint8Array(points.length) }
  pressureAtDepthInto(out, { depthMetre }, water)
  const profile = points.map(({ time }, i) => ({ time, ambientPressure: out.pressurePascal[i] as AbsolutePressure }))
  requireProfile('points', profile, options)
  return profile
}

const depthRange: Accepted = {
  atLeast: 0,
  atMost: 1000,
  unit: metre,
  hint: 'Depth counts downwards; fill a missing reading before the calculation.',
}

/**
 * Profile that stays at one pressure.
 *
 * @param ambientPressure - around the diver, absolute, Pa, 0.2 to 100 bar
 * @param duration - s, above 0
 * @returns pressure against time, of two points
 * @throws LitrebarError `range`
 * @example
 * steadyProfile(absolute(3, bar), measure(40, minute)).length // => 2
 */
export function steadyProfile(ambientPressure: AbsolutePressure, duration: Duration): Profile {
  requireWithin('ambientPressure', ambientPressure, ambient)
  requireWithin('duration', duration, durationRange)
  return [
    { time: 0 as Duration, ambientPressure },
    { time: duration, ambientPressure },
  ]
}

/**
 * Refuses what is not a profile: fewer than two points, a point that is not later than the one before, a gap, a value out of range.
 *
 * @param argument - path of the profile
 * @param profile - its points
 * @param options - `longestGap` between two points
 * @throws LitrebarError `input` or `range`, naming the point
 */
export function requireProfile(
  argument: string,
  profile: Profile,
  options: { readonly longestGap?: Duration } = {},
): void {
  requireList(argument, profile, 2, 'Give the start and the end at least.')
  profile.forEach((point, i) => {
    if (!hasKeys(point, pointKeys)) requireKeys(`${argument}[${i}]`, point, pointKeys)
    const { time, ambientPressure } = point
    if (!isWithin(time, moment)) requireWithin(`${argument}[${i}].time`, time, moment)
    if (!isWithin(ambientPressure, ambient)) {
      requireWithin(`${argument}[${i}].ambientPressure`, ambientPressure, ambient)
    }
    const before = profile[i - 1]?.time
    if (before === undefined) return
    if (!(time > before)) {
      throw new LitrebarError({
        code: 'input',
        argument: `${argument}[${i}].time`,
        value: `${time} s`,
        expected: `later than the ${before} s of the point before`,
        hint: 'Sort the points by time, and keep one of two at the same moment.',
      })
    }
    if (options.longestGap !== undefined && time - before > options.longestGap) {
      throw new LitrebarError({
        code: 'input',
        argument: `${argument}[${i}].time`,
        value: `${time - before} s after the point before`,
        expected: `at most ${options.longestGap} s`,
        hint: 'The record has a gap: fill it, split the profile there, or allow a longer one.',
      })
    }
  })
}

const pointKeys = { time: true, ambientPressure: true } as const
const depthKeys = { time: true, depth: true } as const

/** Whether a point holds nothing that is misspelt: a long log is looked through at the cost of two comparisons a point. */
function hasKeys(point: unknown, keys: Readonly<Record<string, true>>): boolean {
  if (typeof point !== 'object' || point === null) return false
  for (const key in point) if (keys[key] !== true) return false
  return true
}

/** Time from the first point to the last. */
export function durationOf(profile: Profile): Duration {
  return (last(profile).time - first(profile).time) as Duration
}

export function first(profile: Profile): ProfilePoint {
  return profile[0] as ProfilePoint
}

export function last(profile: Profile): ProfilePoint {
  return profile.at(-1) as ProfilePoint
}

/**
 * Mean pressure around the diver: what the mean depth stands for. At a constant breathing rate a dive takes as much gas as
 * one spent at this pressure; with a rate that changes it does not.
 *
 * @param profile - pressure against time
 * @returns absolute pressure, Pa
 * @throws LitrebarError `input` or `range` for what is not a profile
 * @source litrebar-derivation (exact for even changes between the points)
 */
export function meanAmbientPressure(profile: Profile): AbsolutePressure {
  requireProfile('profile', profile)
  let integral = 0
  for (const segment of segmentsOf(profile)) integral += ((segment.from + segment.to) / 2) * segment.duration
  return (integral / durationOf(profile)) as AbsolutePressure
}

/** A stretch of a profile over which pressure changes evenly. */
export interface Segment {
  /** Ambient pressure at its start and end, Pa. */
  readonly from: number
  readonly to: number
  readonly start: number
  /** s */
  readonly duration: number
}

/** The segments of a profile between two moments, the ends cut where they fall inside one. */
export function segmentsOf(
  profile: Profile,
  start = first(profile).time,
  end = last(profile).time,
): readonly Segment[] {
  const segments: Segment[] = []
  if (!(end > start)) return segments
  for (let i = 1; i < profile.length; i++) {
    const a = profile[i - 1] as ProfilePoint
    const b = profile[i] as ProfilePoint
    if (b.time <= start || a.time >= end) continue
    const slope = (b.ambientPressure - a.ambientPressure) / (b.time - a.time)
    const from = Math.max(a.time, start)
    const to = Math.min(b.time, end)
    segments.push({
      from: from === a.time ? a.ambientPressure : a.ambientPressure + slope * (from - a.time),
      to: to === b.time ? b.ambientPressure : a.ambientPressure + slope * (to - a.time),
      start: from,
      duration: to - from,
    })
  }
  return segments
}
