import { inputError, LitrebarError, requireKeys, requireList, requireWord, shown } from '../../errors/index.ts'
import { gerg2008GasConstant, type Mixture } from '../../gas-law/index.ts'
import {
  type Accepted,
  celsius,
  type Duration,
  litrePerMinute,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { type BreathedCylinder, requireFilledCylinder } from '../gas/residual.ts'
import { densityOf, type GasOptions } from '../gas/vessel-gas.ts'
import { first, last, moment, type Profile, requireProfile, type Segment, segmentsOf } from './profile.ts'

/** From a moment on, who breathes how much out of which cylinder: a change of work, of cylinder or of mixture. */
export interface BreathingPeriod {
  /** Lasts until the next period, or the end of the profile. */
  readonly from: Duration
  readonly respiratoryMinuteVolume: VolumeFlow
  /** Key of the cylinder in `cylinders`. */
  readonly cylinder: string
}

/** A dive with what is breathed on it. */
export interface BreathedDive<Name extends string = string> {
  readonly profile: Profile
  /** In order of time, the first from the start of the profile. */
  readonly breathing: readonly BreathingPeriod[]
  /** Each with the pressure at which it is taken as used up. */
  readonly cylinders: Readonly<Record<Name, BreathedCylinder>>
  /** Of the gas as it is breathed, to which the respiratory minute volume is stated. */
  readonly breathingGasTemperature: Temperature
}

/** Accepted respiratory minute volumes. */
export const breathingRate = {
  above: 0,
  atMost: 500,
  unit: litrePerMinute,
  hint: 'Give the litres breathed each minute, at the pressure of the diver.',
} as const satisfies Accepted

/** Accepted temperatures of gas as it is breathed. */
export const breathedTemperature: Accepted = {
  atLeast: -50,
  atMost: 100,
  unit: celsius,
  hint: 'Give the temperature of the gas as it is breathed.',
}

/** A segment of the profile within one period of breathing. */
export interface Stretch<Name extends string> extends Segment {
  readonly rate: number
  readonly cylinder: Name
}

/** The profile between two moments, cut at its own points and where breathing changes. */
export function stretchesOf<Name extends string>(
  { profile, breathing }: BreathedDive<Name>,
  start = first(profile).time,
  end = last(profile).time,
): readonly Stretch<Name>[] {
  return breathing.flatMap(({ from, respiratoryMinuteVolume, cylinder }, i) => {
    const until = breathing[i + 1]?.from ?? end
    const cut = [Math.max(from, start) as Duration, Math.min(until, end) as Duration] as const
    return segmentsOf(profile, ...cut).map((segment) => ({
      ...segment,
      rate: respiratoryMinuteVolume,
      cylinder: cylinder as Name, // requireDive has seen to it
    }))
  })
}

/** Amount breathed over a stretch, mol. */
export function amountBreathed<Name extends string>(
  reckoning: GasOptions,
  dive: Pick<BreathedDive<Name>, 'cylinders' | 'breathingGasTemperature'>,
  stretch: Stretch<Name>,
): number {
  return (
    stretch.rate *
    densityTime(reckoning, dive.cylinders[stretch.cylinder].contents.mixture, stretch, dive.breathingGasTemperature)
  )
}

/** Ambient pressure integrated over a segment, Pa·s. */
export function pressureTime({ from, to, duration }: Segment): number {
  return ((from + to) / 2) * duration
}

const gaussPoint = 1 / Math.sqrt(3)

/**
 * Molar density integrated over a stretch of even pressure change. Density is nearly a straight line of pressure here, so that
 * two Gauss points, exact for a cubic, leave less than 1e-9.
 */
export function densityTime(
  reckoning: GasOptions,
  mixture: Mixture,
  { from, to, duration }: Pick<Segment, 'from' | 'to' | 'duration'>,
  temperature: Temperature,
): number {
  const middle = (from + to) / 2
  if (reckoning.gas === 'ideal') return (middle / (gerg2008GasConstant * temperature)) * duration
  if (from === to) return densityOf(reckoning, mixture, from, temperature) * duration
  const apart = ((to - from) / 2) * gaussPoint
  const sum =
    densityOf(reckoning, mixture, middle - apart, temperature) +
    densityOf(reckoning, mixture, middle + apart, temperature)
  return (sum / 2) * duration
}

/** Refuses a dive whose profile or periods make no sense. */
export function requireDive(dive: BreathedDive): void {
  requireKeys('dive', dive, { profile: true, breathing: true, cylinders: true, breathingGasTemperature: true })
  const { profile, breathing, cylinders } = dive
  requireProfile('profile', profile)
  requireWithin('breathingGasTemperature', dive.breathingGasTemperature, breathedTemperature)
  if (Object(cylinders) !== cylinders)
    throw inputError('cylinders', shown(cylinders), 'an object of cylinders', 'Give each cylinder a name.')
  for (const name of Object.keys(cylinders))
    requireFilledCylinder(`cylinders.${name}`, cylinders[name] as BreathedCylinder)
  requireList('breathing', breathing, 1, 'Say what is breathed from the first moment on.')
  for (const [i, period] of breathing.entries()) {
    requireKeys(`breathing[${i}]`, period, { from: true, respiratoryMinuteVolume: true, cylinder: true })
    requireWithin(`breathing[${i}].from`, period.from, moment)
  }
  const start = first(profile).time
  if (breathing[0]?.from !== start) {
    throw new LitrebarError({
      code: 'input',
      argument: 'breathing[0].from',
      value: `${breathing[0]?.from} s`,
      expected: `the start of the profile, ${start} s`,
      hint: 'Say what is breathed from the first moment on.',
    })
  }
  breathing.forEach((period, i) => {
    const { from, respiratoryMinuteVolume, cylinder } = period
    requireWithin(`breathing[${i}].respiratoryMinuteVolume`, respiratoryMinuteVolume, breathingRate)
    requireWord(`breathing[${i}].cylinder`, cylinder, Object.keys(cylinders))
    const before = breathing[i - 1]?.from
    if (before !== undefined && !(from > before && from < last(profile).time)) {
      throw new LitrebarError({
        code: 'input',
        argument: `breathing[${i}].from`,
        value: `${from} s`,
        expected: `later than ${before} s and before the end of the profile`,
        hint: 'Sort the periods by time.',
      })
    }
  })
}
