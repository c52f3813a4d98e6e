import { requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  cubicMetre,
  type Fraction,
  type GasVolume,
  type Mass,
  type MoleFraction,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { dryAir } from '../mixture/mixture.ts'
import { molarDensity } from '../state/molar-density.ts'
import type { WaterPhase } from '../water/saturation.ts'
import { requireEnhancementState } from './enhancement-factor.ts'
import { waterFractionFromHumidity } from './relative-humidity.ts'
import { saturatedFraction } from './saturated-gas.ts'

const volumeRange: Accepted = { above: 0, atMost: 1e9, unit: cubicMetre, hint: 'Give the volume at the intake.' }
const waterMolarMass = 0.018015268

/** What becomes of the water in air that is compressed and cooled. */
export interface Condensate {
  /** Water in the air that was taken in. */
  readonly waterTakenIn: Mass
  /** Water that settles, as liquid or frost. */
  readonly condensed: Mass
  /** Mole fraction of water that stays in the delivered air. */
  readonly waterFraction: MoleFraction
  /** Whether the delivered air is saturated. */
  readonly saturated: boolean
  /** What settles, or would. */
  readonly as: WaterPhase
}

/**
 * Condensate: the water that settles when moist air is compressed and then cooled. Nearly all of it does: air at 200 bar holds
 * a hundredth of the water that it held at the surface.
 * It is what separators and filters must take out, once the air has come to the temperature stated; a hot outlet passes more on.
 *
 * @param air - intake: pressure, absolute, Pa; temperature, K; relative humidity, 0 to 1. Delivered: pressure, absolute, Pa, at most 350 bar;
 *   temperature, K, 193 to 373.15. Intake volume, m³, moist air at the intake
 * @returns masses, kg, and the moisture of the delivered air
 * @throws LitrebarError `outside-validity` or `range`, naming the field
 * @source litrebar-derivation, balance of water with `enhancementFactor`
 * @example
 * const intake = { pressure: absolute(1, atmosphere), temperature: temperatureOf(25, celsius), relativeHumidity: measure(80, percent) }
 * const delivered = { pressure: absolute(225, bar), temperature: temperatureOf(30, celsius) }
 * const { condensed } = condensate({ intake, delivered, intakeVolume: gasVolumeOf(10, cubicMetre) })
 * inUnit(condensed, gram).toFixed(0) // => '183'
 */
export function condensate(air: {
  readonly intake: {
    readonly pressure: AbsolutePressure
    readonly temperature: Temperature
    readonly relativeHumidity: Fraction
  }
  readonly delivered: { readonly pressure: AbsolutePressure; readonly temperature: Temperature }
  readonly intakeVolume: GasVolume
}): Condensate {
  requireKeys('air', air, { intake: true, delivered: true, intakeVolume: true })
  const { intake, delivered, intakeVolume } = air
  requireWithin('intakeVolume', intakeVolume, volumeRange)
  const takenIn = waterFractionFromHumidity(intake)
  requireKeys('air.delivered', delivered, { pressure: true, temperature: true })
  requireEnhancementState(delivered)
  const { fraction: held, over } = saturatedFraction(delivered.temperature, delivered.pressure)
  const amount = intakeVolume * molarDensity(dryAir, intake.pressure, intake.temperature)
  const saturated = takenIn >= held
  const waterFraction = saturated ? held : takenIn
  const settled = saturated ? takenIn - ((1 - takenIn) * held) / (1 - held) : 0
  return {
    waterTakenIn: (amount * takenIn * waterMolarMass) as Mass,
    condensed: (amount * settled * waterMolarMass) as Mass,
    waterFraction: waterFraction as MoleFraction,
    saturated,
    as: over,
  }
}
