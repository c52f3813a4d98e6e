import { LitrebarError, requireKeys, requireList } from '../../errors/index.ts'
import { type GasContents, molarMass } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Amount,
  bar,
  celsius,
  type Fraction,
  hectopascal,
  type Mass,
  one,
  type PressureDifference,
  type PressureVolume,
  type PressureVolumeFlow,
  type Quantity,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import { amountIn, densityOf, type GasOptions, type GasQuantity, requireGasOptions } from '../gas/vessel-gas.ts'
import { densityTime } from '../use/breathed-dive.ts'
import { durationOf, meanAmbientPressure, type Profile, requireProfile, segmentsOf } from '../use/profile.ts'

/**
 * Free gas taken each minute, brought back to the surface: divided by how many times the surface pressure the diver was under.
 * For an ideal gas its number is that of the respiratory minute volume. It is a different quantity nonetheless: it stands for an
 * amount of gas, the other for litres in the lungs.
 */
export type SurfaceEquivalentRate = Quantity<'volume flow', 'surface equivalent'>

/** One cylinder before and after, each with the temperature that its gas had at the reading. */
export interface PressureDrop {
  readonly before: GasContents
  readonly after: GasContents
}

/** Readings from which a rate of consumption follows. */
export interface MeasuredUse {
  /** All cylinders breathed from, of any size. */
  readonly cylinders: readonly PressureDrop[]
  /** Between the two readings: measured, or `steadyProfile` at the mean pressure. */
  readonly profile: Profile
  /** Of the gas as it was breathed. */
  readonly breathingGasTemperature: Temperature
  /** At the surface of that dive, absolute. */
  readonly surfacePressure: AbsolutePressure
}

/** A rate of consumption, by three names that must not be mixed. */
export interface ConsumptionRate {
  /** Litres breathed each minute at the pressure of the diver: about the same at every depth. */
  readonly respiratoryMinuteVolume: VolumeFlow
  /** Free gas each minute, brought back to surface pressure. */
  readonly surfaceEquivalentRate: SurfaceEquivalentRate
  /** Bar·litres each minute on this dive: grows with depth, and says nothing about another one. */
  readonly useRate: PressureVolumeFlow
  readonly used: GasQuantity
}

const breathed: Accepted = { atLeast: -10, atMost: 60, unit: celsius, hint: 'Check the temperature scale.' }
const surface: Accepted = {
  atLeast: 200,
  atMost: 1200,
  unit: hectopascal,
  hint: 'State the absolute pressure at the surface.',
}

/**
 * Rate of consumption from the drop of pressure in one or more cylinders, with real gas and the temperature at each reading.
 * A cylinder that was read warm after filling and cold after the dive has lost pressure without a breath: the ideal
 * figure may be many times too large.
 *
 * @param measured - cylinders before and after; profile between the readings; temperature of the breathed gas, K, -10 to 60 °C;
 *   surface pressure, absolute, Pa, 200 to 1200 hPa
 * @param options - `gas: 'ideal'` to leave out compressibility, in the cylinder and where it was breathed
 * @returns the rate by its three names, and the gas used
 * @throws LitrebarError `input` if there is no cylinder, or the readings leave no gas used; `range`, naming the field
 * @source litrebar-derivation; gerg-2008, density
 * @example
 * const cylinder = { internalVolume: internalVolumeOf(12, litre), mixture: dryAir }
 * const before = { ...cylinder, pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) }
 * const after = { ...cylinder, pressure: absolute(50, bar), temperature: temperatureOf(10, celsius) }
 * const { respiratoryMinuteVolume } = measuredRate({
 *   cylinders: [{ before, after }],
 *   profile: steadyProfile(absolute(3.01325, bar), measure(40, minute)),
 *   breathingGasTemperature: temperatureOf(15, celsius),
 *   surfacePressure: absolute(1013.25, hectopascal),
 * })
 * inUnit(respiratoryMinuteVolume, litrePerMinute).toFixed(1) // => '13.9'
 */
export function measuredRate(measured: MeasuredUse, options: GasOptions = {}): ConsumptionRate {
  requireKeys('measured', measured, {
    cylinders: true,
    profile: true,
    breathingGasTemperature: true,
    surfacePressure: true,
  })
  requireGasOptions(options)
  const { cylinders, profile, breathingGasTemperature, surfacePressure } = measured
  requireProfile('profile', profile)
  requireWithin('breathingGasTemperature', breathingGasTemperature, breathed)
  requireWithin('surfacePressure', surfacePressure, surface)
  const duration = durationOf(profile)
  const mean = meanAmbientPressure(profile)
  let amount = 0
  let mass = 0
  let litres = 0
  let surfaceLitres = 0
  requireList('cylinders', cylinders, 1, 'Leave out cylinders that were not breathed from, but not all.')
  for (const [i, drop] of cylinders.entries()) {
    requireKeys(`cylinders[${i}]`, drop, { before: true, after: true })
    const used = amountIn(drop.before, options) - amountIn(drop.after, options)
    const { mixture } = drop.before
    if (!(used > 0)) throw noUse(i, used)
    amount += used
    mass += used * molarMass(mixture)
    const meanDensity = segmentsOf(profile).reduce(
      (sum, segment) => sum + densityTime(options, mixture, segment, breathingGasTemperature),
      0,
    )
    litres += (used / meanDensity) * duration
    surfaceLitres += used / densityOf(options, mixture, surfacePressure, breathingGasTemperature)
  }
  return {
    respiratoryMinuteVolume: (litres / duration) as VolumeFlow,
    surfaceEquivalentRate: ((surfaceLitres / duration) * (surfacePressure / mean)) as SurfaceEquivalentRate,
    useRate: ((litres / duration) * mean) as PressureVolumeFlow,
    used: { amount: amount as Amount, mass: mass as Mass, pressureVolume: (litres * mean) as PressureVolume },
  }
}

function noUse(i: number, amount: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: `cylinders[${i}].after`,
    value: `${String(Number((-amount).toPrecision(3)))} mol more than before`,
    expected: 'less gas than before',
    hint: 'Check that both temperatures are those of the gas at its reading, and that no reading is swapped.',
  })
}

/** What is known about the readings behind a rate; relative uncertainties as fractions. */
export interface RateReadings {
  /** First reading less second. */
  readonly pressureDrop: PressureDifference
  /** Standard uncertainty of each of the two readings, independent; an offset of the gauge cancels and does not count. */
  readonly readingUncertainty: PressureDifference
  readonly relativeVolumeUncertainty: Fraction | number
  readonly relativeDurationUncertainty: Fraction | number
  readonly relativeAmbientPressureUncertainty: Fraction | number
}

const positive: Accepted = { above: 0, atMost: 700, unit: bar, hint: 'Give first reading less second.' }
const spread: Accepted = { atLeast: 0, atMost: 700, unit: bar, hint: 'Give a standard uncertainty.' }
const relative: Accepted = { atLeast: 0, below: 1, unit: one, hint: 'Give one per cent as 0.01.' }

/**
 * Relative standard uncertainty of a rate from a drop of pressure, ideal gas. A drop of half the size doubles the part
 * of the readings. For real gas, or a gauge class, hand `measuredRate` to `propagate`.
 *
 * @param readings - drop and uncertainty of a reading, Pa; relative uncertainties of volume, duration and ambient pressure
 * @returns relative standard uncertainty
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const known = {
 *   pressureDrop: difference(150, bar),
 *   readingUncertainty: difference(3, bar),
 *   relativeVolumeUncertainty: 0.01,
 *   relativeDurationUncertainty: 0.01,
 *   relativeAmbientPressureUncertainty: 0.02,
 * }
 * relativeRateUncertainty(known).toFixed(4) // => '0.0374'
 */
export function relativeRateUncertainty(readings: RateReadings): Fraction {
  requireKeys('readings', readings, {
    pressureDrop: true,
    readingUncertainty: true,
    relativeVolumeUncertainty: true,
    relativeDurationUncertainty: true,
    relativeAmbientPressureUncertainty: true,
  })
  const { pressureDrop, readingUncertainty } = readings
  requireWithin('pressureDrop', pressureDrop, positive)
  requireWithin('readingUncertainty', readingUncertainty, spread)
  const parts = [
    'relativeVolumeUncertainty',
    'relativeDurationUncertainty',
    'relativeAmbientPressureUncertainty',
  ] as const
  for (const part of parts) requireWithin(part, readings[part], relative)
  return Math.hypot(
    (Math.SQRT2 * readingUncertainty) / pressureDrop,
    ...parts.map((part) => readings[part]),
  ) as Fraction
}
