import { pressureAtDepth, standardGravity, type WaterColumn } from '../../environment/index.ts'
import { requireKeys, requireList } from '../../errors/index.ts'
import type { Mixture } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  type Depth,
  type Duration,
  isWithin,
  metre,
  metrePerMinute,
  minute,
  one,
  type PressureVolume,
  requireWithin,
  type Speed,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import type { GasOptions } from '../gas/vessel-gas.ts'
import { breathingRate, densityTime } from '../use/breathed-dive.ts'

/** An ascent for which gas is counted. It is the caller's ascent: nothing here says that it is the right one. */
export interface Ascent {
  readonly depth: Depth
  readonly water: WaterColumn
  /** Respiratory minute volume of each who breathes from the gas that is counted, at ease. */
  readonly breathers: readonly VolumeFlow[]
  /** How many times their rate at ease they breathe when it happens; 1 for none. */
  readonly stressFactor: number
  /** Before the ascent begins. */
  readonly timeAtDepth: Duration
  readonly ascentRate: Speed
  /** A stop on the way, if one is to be counted. */
  readonly stop?: { readonly depth: Depth; readonly duration: Duration }
}

/** What one part of an ascent takes. */
export interface AscentLeg {
  readonly cause: 'time at depth' | 'ascent to the stop' | 'stop' | 'ascent to the surface'
  readonly duration: Duration
  /** Around the divers at its start and end, Pa. */
  readonly from: AbsolutePressure
  readonly to: AbsolutePressure
  /** Pressure times volume breathed at ambient by all. */
  readonly pressureVolume: PressureVolume
}

/** What an ascent accepts. */
export const ascentRanges = {
  depth: { above: 0, atMost: 500, unit: metre, hint: 'Give the depth where the ascent begins.' },
  stressFactor: { atLeast: 1, atMost: 10, unit: one, hint: 'Give 1 for breathing at ease, 2 for twice as much.' },
  timeAtDepth: { atLeast: 0, atMost: 600, unit: minute, hint: 'Give the minutes before the ascent begins.' },
  ascentRate: { above: 0, atMost: 100, unit: metrePerMinute, hint: 'Give the rate of ascent, upwards positive.' },
  stopDuration: { atLeast: 0, atMost: 600, unit: minute, hint: 'Leave the stop out, or give its minutes.' },
} as const satisfies Readonly<Record<string, Accepted>>

/**
 * The parts of an ascent in order, each with what all breathe on it: time at depth, ascent to the stop, stop, ascent to the surface.
 *
 * @param ascent - as for `ascentReserve`
 * @returns a row for each part
 * @throws LitrebarError `range` or `input`, naming the field
 * @source litrebar-derivation
 * @example
 * const legs = ascentLegs({
 *   depth: depthOf(30, metre),
 *   water: { surfacePressure: absolute(1013.25, hectopascal), density: measure(1025, kilogramPerCubicMetre) },
 *   breathers: [measure(20, litrePerMinute)],
 *   stressFactor: 1,
 *   timeAtDepth: measure(2, minute),
 *   ascentRate: measure(10, metrePerMinute),
 * })
 * legs.map(({ pressureVolume }) => inUnit(pressureVolume, barLitre).toFixed(0)) // => ['161', '151']
 */
export function ascentLegs(ascent: Ascent): readonly AscentLeg[] {
  requireAscent(ascent)
  return legsOf(ascent)
}

/** The legs of an ascent that was checked. */
export function legsOf(ascent: Ascent): readonly AscentLeg[] {
  const { depth, water, timeAtDepth, ascentRate, stop } = ascent
  const { surfacePressure: surface, density, gravity = standardGravity } = water
  // one column of one density: pressure is a straight line of depth
  const perMetre = (pressureAtDepth({ depth, surfacePressure: surface, density, gravity }) - surface) / depth
  const rate = totalRate(ascent)
  const leg = (cause: AscentLeg['cause'], from: number, to: number, duration: number): AscentLeg => {
    const start = surface + perMetre * from
    const end = surface + perMetre * to
    return {
      cause,
      duration: duration as Duration,
      from: start as AbsolutePressure,
      to: end as AbsolutePressure,
      pressureVolume: (rate * ((start + end) / 2) * duration) as PressureVolume,
    }
  }
  const waiting = leg('time at depth', depth, depth, timeAtDepth)
  if (stop === undefined) return [waiting, leg('ascent to the surface', depth, 0, depth / ascentRate)]
  return [
    waiting,
    leg('ascent to the stop', depth, stop.depth, (depth - stop.depth) / ascentRate),
    leg('stop', stop.depth, stop.depth, stop.duration),
    leg('ascent to the surface', stop.depth, 0, stop.depth / ascentRate),
  ]
}

/** All who breathe, with the stress factor, m³/s. */
function totalRate({ breathers, stressFactor }: Ascent): number {
  return stressFactor * breathers.reduce<number>((sum, each) => sum + each, 0)
}

/** Amount that a leg takes of a mixture, mol. */
export function amountOfLeg(
  ascent: Ascent,
  leg: AscentLeg,
  reckoning: GasOptions,
  mixture: Mixture,
  temperature: Temperature,
): Amount {
  return (totalRate(ascent) * densityTime(reckoning, mixture, leg, temperature)) as Amount
}

const surfaceRange: Accepted = {
  atLeast: 0.2,
  atMost: 1.2,
  unit: bar,
  hint: 'State the absolute pressure at the surface.',
}
const ascentKeys = {
  depth: true,
  water: true,
  breathers: true,
  stressFactor: true,
  timeAtDepth: true,
  ascentRate: true,
  stop: false,
} as const

/** Refuses an ascent that makes no sense. */
export function requireAscent(ascent: Ascent): void {
  requireKeys('ascent', ascent, ascentKeys)
  requireKeys('ascent.water', ascent.water, { surfacePressure: true, density: true, gravity: false })
  const { depth, breathers, stressFactor, timeAtDepth, ascentRate, stop } = ascent
  requireWithin('water.surfacePressure', ascent.water.surfacePressure, surfaceRange)
  requireWithin('depth', depth, ascentRanges.depth)
  requireList('breathers', breathers, 1, 'Give the rate of each who breathes from the cylinder.')
  breathers.forEach((rate, i) => {
    if (!isWithin(rate, breathingRate)) requireWithin(`breathers[${i}]`, rate, breathingRate)
  })
  requireWithin('stressFactor', stressFactor, ascentRanges.stressFactor)
  requireWithin('timeAtDepth', timeAtDepth, ascentRanges.timeAtDepth)
  requireWithin('ascentRate', ascentRate, ascentRanges.ascentRate)
  if (stop === undefined) return
  requireKeys('ascent.stop', stop, { depth: true, duration: true })
  requireWithin('stop.depth', stop.depth, {
    ...ascentRanges.depth,
    atMost: depth / metre.factor,
    hint: 'A stop lies between the depth and the surface.',
  })
  requireWithin('stop.duration', stop.duration, ascentRanges.stopDuration)
}
