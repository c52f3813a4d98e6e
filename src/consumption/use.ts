import { LitrebarError } from '../errors/index.ts'
import { type GasContents, gerg2008GasConstant, molarMass } from '../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  type Duration,
  litrePerMinute,
  type Mass,
  minute,
  type PressureVolume,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../units/index.ts'
import { first, last, type Profile, requireProfile, type Segment, segmentsOf } from './profile.ts'
import { amountIn, densityOf, type GasOptions, type GasQuantity, inBarLitres, pressureHolding } from './supply.ts'

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
  readonly cylinders: Readonly<Record<Name, GasContents>>
  /** Of the gas as it is breathed, to which the respiratory minute volume is stated. */
  readonly breathingGasTemperature: Temperature
}

/** What a dive takes from one cylinder. */
export interface CylinderUse {
  readonly used: GasQuantity
  /** Absolute pressure left, at the temperature of the contents. */
  readonly pressureLeft: AbsolutePressure
}

export const breathingRate: Accepted = {
  above: 0,
  atMost: 500,
  unit: litrePerMinute,
  hint: 'Give the litres breathed each minute, at the pressure of the diver.',
}

/**
 * Pressure times volume breathed over a profile at one rate: exact for even changes between the points, and free of any
 * equation of state.
 *
 * @param profile - pressure against time
 * @param respiratoryMinuteVolume - at the pressure of the diver, m³/s, above 0 and at most 500 L/min
 * @returns pressure times volume at ambient, Pa·m³
 * @throws LitrebarError `range` or `input`
 * @source litrebar-derivation
 * @example
 * const profile = steadyProfile(absolute(3, bar), measure(40, minute))
 * inUnit(pressureVolumeBreathed(profile, measure(15, litrePerMinute)), barLitre) // => 1800
 */
export function pressureVolumeBreathed(profile: Profile, respiratoryMinuteVolume: VolumeFlow): PressureVolume {
  requireProfile('profile', profile)
  requireWithin('respiratoryMinuteVolume', respiratoryMinuteVolume, breathingRate)
  let integral = 0
  for (const segment of segmentsOf(profile)) integral += pressureTime(segment)
  return (respiratoryMinuteVolume * integral) as PressureVolume
}

/**
 * Gas that a dive takes from each of its cylinders, and the pressure left.
 *
 * @param dive - profile; periods of breathing; cylinders by name; temperature of the gas as it is breathed, K
 * @param options - `gas: 'ideal'` to leave out compressibility, in the cylinder and where it is breathed
 * @returns use and pressure left, by the names of the cylinders
 * @throws LitrebarError `range` if a cylinder holds less than is breathed from it: says by how much and from when on;
 *   `input` for periods that are out of order or name no cylinder
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const back = {
 *   internalVolume: internalVolumeOf(12, litre),
 *   pressure: absolute(200, bar),
 *   temperature: temperatureOf(10, celsius),
 *   mixture: dryAir,
 * }
 * const { pressureLeft } = gasUsed({
 *   profile: steadyProfile(absolute(3, bar), measure(40, minute)),
 *   breathing: [{ from: measure(0, minute), respiratoryMinuteVolume: measure(15, litrePerMinute), cylinder: 'back' }],
 *   cylinders: { back },
 *   breathingGasTemperature: temperatureOf(10, celsius),
 * }).back
 * inUnit(pressureLeft, bar).toFixed(1) // => '45.8'
 */
export function gasUsed<Name extends string>(
  dive: BreathedDive<Name>,
  options: GasOptions = {},
): Readonly<Record<Name, CylinderUse>> {
  requireDive(dive)
  const tallies = new Map<Name, { amount: number; pressureVolume: number }>()
  for (const cylinder of Object.keys(dive.cylinders) as Name[]) tallies.set(cylinder, { amount: 0, pressureVolume: 0 })
  for (const stretch of stretchesOf(dive)) {
    const tally = tallies.get(stretch.cylinder)
    if (tally === undefined) continue
    tally.pressureVolume += stretch.rate * pressureTime(stretch)
    tally.amount += amountBreathed(options, dive, stretch)
  }
  const uses = [...tallies].map(([name, tally]): [Name, CylinderUse] => {
    const contents = dive.cylinders[name]
    const amount = amountIn(contents, options)
    if (!(tally.amount < amount)) throw runsOut(dive, name, options)
    return [
      name,
      {
        used: {
          amount: tally.amount as Amount,
          mass: (tally.amount * molarMass(contents.mixture)) as Mass,
          pressureVolume: tally.pressureVolume as PressureVolume,
        },
        pressureLeft: pressureHolding(amount - tally.amount, contents, options),
      },
    ]
  })
  return Object.fromEntries(uses) as Record<Name, CylinderUse>
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
    densityTime(reckoning, dive.cylinders[stretch.cylinder].mixture, stretch, dive.breathingGasTemperature)
  )
}

function pressureTime({ from, to, duration }: Segment): number {
  return ((from + to) / 2) * duration
}

const gaussPoint = 1 / Math.sqrt(3)

/**
 * Molar density integrated over a stretch of even pressure change. Density is nearly a straight line of pressure here, so that
 * two Gauss points, exact for a cubic, leave less than 1e-9.
 */
export function densityTime(
  reckoning: GasOptions,
  mixture: GasContents['mixture'],
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
  const { profile, breathing, cylinders } = dive
  requireProfile('profile', profile)
  const start = first(profile).time
  if (breathing[0]?.from !== start) {
    throw new LitrebarError({
      code: 'input',
      argument: 'breathing[0].from',
      value: breathing[0] === undefined ? 'missing' : `${breathing[0].from} s`,
      expected: `the start of the profile, ${start} s`,
      hint: 'Say what is breathed from the first moment on.',
    })
  }
  breathing.forEach(({ from, respiratoryMinuteVolume, cylinder }, i) => {
    requireWithin(`breathing[${i}].respiratoryMinuteVolume`, respiratoryMinuteVolume, breathingRate)
    if (!Object.hasOwn(cylinders, cylinder)) {
      throw new LitrebarError({
        code: 'input',
        argument: `breathing[${i}].cylinder`,
        value: cylinder,
        expected: `one of ${Object.keys(cylinders).join(', ')}`,
        hint: 'Name a cylinder as in cylinders.',
      })
    }
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

/** The error of a cylinder that does not last: when it is empty, and how much more would be needed. */
export function runsOut<Name extends string>(
  dive: BreathedDive<Name>,
  name: Name,
  reckoning: GasOptions,
): LitrebarError {
  let left = amountIn(dive.cylinders[name], reckoning)
  let empty = 0
  for (const stretch of stretchesOf(dive)) {
    if (stretch.cylinder !== name) continue
    const used = amountBreathed(reckoning, dive, stretch)
    if (left > 0) empty = stretch.start + (stretch.duration * Math.min(left, used)) / used
    left -= used
  }
  const lacking = -left * gerg2008GasConstant * dive.breathingGasTemperature
  return new LitrebarError({
    code: 'range',
    argument: `cylinders.${name}`,
    value: `empty after about ${String(Number((empty / minute.factor).toPrecision(3)))} min`,
    expected: `gas for the whole profile, ${inBarLitres(lacking)} more`,
    hint: 'Breathe less from it, fill it further, or change the cylinder earlier.',
  })
}
