import { LitrebarError, shown } from '../errors/index.ts'
import { requireWithin } from './accepted.ts'
import { isUnitOf, measuredQuantity, missingValue, notStated, type UnitKind } from './check-unit.ts'
import type { Dimension } from './dimension.ts'
import { one } from './fraction.ts'
import type {
  AbsolutePressure,
  Altitude,
  Depth,
  DisplacedVolume,
  FreeGas,
  FreeGasFlow,
  GasVolume,
  GaugePressure,
  InternalVolume,
  MassFraction,
  MoleFraction,
  PlainNumber,
  PressureDifference,
  Quantity,
  Temperature,
  TemperatureDifference,
  VolumeFraction,
} from './quantity.ts'
import type { Unit } from './unit.ts'

// Function declarations, not arrows: bundlers inline the former.
// Each compares first and builds its accepted range only to refuse: a check costs less than a nanosecond that way.

/**
 * Pressure above that around the gauge.
 *
 * @param n - the reading, finite; below 0 for a vacuum gauge
 * @param unit - any pressure unit
 * @returns gauge pressure, Pa
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is not finite
 * @example
 * inUnit(gauge(232, bar), psi) // => 3364.875515340854
 */
export function gauge(n: PlainNumber, unit: Unit<'pressure'>): GaugePressure {
  return anyFinite('gauge pressure', n, unit, ofPressure) as GaugePressure
}

/**
 * Pressure above vacuum.
 *
 * @param n - the pressure, at least 0
 * @param unit - any pressure unit
 * @returns absolute pressure, Pa
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is negative or not finite
 * @example
 * absolute(1, atmosphere) // => 101325
 */
export function absolute(n: PlainNumber, unit: Unit<'pressure'>): AbsolutePressure {
  return notNegative(
    'absolute pressure',
    n,
    unit,
    ofPressure,
    'Nothing is below vacuum: a reading below zero is a gauge pressure.',
  ) as AbsolutePressure
}

/** Difference of two pressures, also of either sign: a breathing pressure, an intermediate pressure over ambient, a work per litre. */
export function difference(n: PlainNumber, unit: Unit<'pressure'>): PressureDifference
/** Difference of two temperatures. The zero of the scale plays no part: 5 °C here is 5 K. */
export function difference(n: PlainNumber, unit: Unit<'temperature'>): TemperatureDifference
/**
 * Difference of two pressures or of two temperatures, stated as such.
 *
 * @param n - the difference, finite, of either sign
 * @param unit - a unit of pressure or of temperature; the zero of a temperature scale plays no part
 * @returns the difference, Pa or K
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is not finite
 * @example
 * difference(9, fahrenheit) // => 5
 */
export function difference(
  n: PlainNumber,
  unit: Unit<'pressure' | 'temperature'>,
): PressureDifference | TemperatureDifference {
  const kind = isUnitOf(unit, 'temperature') ? ofTemperature : ofPressure
  return anyFinite('difference', n, unit, kind) as PressureDifference | TemperatureDifference
}

/**
 * Temperature on any scale.
 *
 * @param n - the temperature, above absolute zero
 * @param unit - any temperature unit, with its own zero
 * @returns thermodynamic temperature, K
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is at or below absolute zero or not finite
 * @example
 * temperatureOf(20, celsius) // => 293.15
 */
export function temperatureOf(n: PlainNumber, unit: Unit<'temperature'>): Temperature {
  const kelvins = siOf('temperature', n, unit, ofTemperature) + (unit.offset ?? 0)
  if (!(kelvins > 0 && kelvins < Infinity)) {
    const absoluteZero = Number((-(unit.offset ?? 0) / unit.factor).toPrecision(12))
    requireWithin('temperature', kelvins, {
      above: absoluteZero,
      unit,
      hint: 'State the temperature on the scale of its unit.',
    })
  }
  return kelvins as Temperature
}

/**
 * The volume inside a cylinder, as stamped or measured with water.
 *
 * @param n - the volume, at least 0
 * @param unit - any volume unit
 * @returns internal volume, m³
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is negative or not finite
 */
export function internalVolumeOf(n: PlainNumber, unit: Unit<'volume'>): InternalVolume {
  return notNegative('internal volume', n, unit, ofVolume, noNegativeVolume) as InternalVolume
}

/**
 * The volume of gas at the pressure and temperature that it has.
 *
 * @param n - the volume, at least 0
 * @param unit - any volume unit
 * @returns volume, m³
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is negative or not finite
 */
export function gasVolumeOf(n: PlainNumber, unit: Unit<'volume'>): GasVolume {
  return notNegative('gas volume', n, unit, ofVolume, noNegativeVolume) as GasVolume
}

/**
 * The volume of water that a body displaces.
 *
 * @param n - the volume, at least 0
 * @param unit - any volume unit
 * @returns displaced volume, m³
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is negative or not finite
 */
export function displacedVolumeOf(n: PlainNumber, unit: Unit<'volume'>): DisplacedVolume {
  return notNegative('displaced volume', n, unit, ofVolume, noNegativeVolume) as DisplacedVolume
}

/**
 * Free gas: a volume together with the condition it is stated at.
 *
 * @param n - the volume at the reference condition, at least 0
 * @param unit - any volume unit
 * @param reference - the reference condition, whose name goes into the type
 * @returns free gas, m³
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is negative or not finite
 */
export function freeGasOf<Reference extends string>(
  n: PlainNumber,
  unit: Unit<'volume'>,
  reference: { readonly name: Reference },
): FreeGas<Reference> {
  return notNegative(freeGasName('free gas', reference), n, unit, ofVolume, noNegativeVolume) as FreeGas<Reference>
}

/**
 * Flow of free gas, with the condition it is stated at.
 *
 * @param n - the flow at the reference condition, at least 0
 * @param unit - any volume flow unit
 * @param reference - the reference condition, whose name goes into the type
 * @returns flow of free gas, m³/s
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is negative or not finite
 */
export function freeGasFlowOf<Reference extends string>(
  n: PlainNumber,
  unit: Unit<'volume flow'>,
  reference: { readonly name: Reference },
): FreeGasFlow<Reference> {
  return notNegative(
    freeGasName('flow of free gas', reference),
    n,
    unit,
    ofVolumeFlow,
    'State the size of the flow.',
  ) as FreeGasFlow<Reference>
}

/**
 * Depth below the surface.
 *
 * @param n - the depth, at least 0, counted downwards
 * @param unit - any length unit
 * @returns depth, m
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is negative or not finite
 */
export function depthOf(n: PlainNumber, unit: Unit<'length'>): Depth {
  return notNegative('depth', n, unit, ofLength, 'Depth counts downwards from the surface.') as Depth
}

/**
 * Height above mean sea level.
 *
 * @param n - the height, finite; below 0 where the ground lies lower than the sea
 * @param unit - any length unit
 * @returns altitude, m
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is not finite
 */
export function altitudeOf(n: PlainNumber, unit: Unit<'length'>): Altitude {
  return anyFinite('altitude', n, unit, ofLength) as Altitude
}

/**
 * Mole fraction.
 *
 * @param n - the fraction, from 0 to 1 (0.32, not 32)
 * @param unit - `one` unless told otherwise: `percent`, `partPerMillion`
 * @returns mole fraction
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if the fraction is not from 0 to 1
 * @example
 * fractionOf(32, percent) // => 0.32
 */
export function fractionOf(n: PlainNumber, unit: Unit<'fraction'> = one): MoleFraction {
  return zeroToOne('mole fraction', n, unit) as MoleFraction
}

/**
 * Volume fraction.
 *
 * @param n - the fraction, from 0 to 1
 * @param unit - `one` unless told otherwise
 * @returns volume fraction
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if the fraction is not from 0 to 1
 */
export function volumeFractionOf(n: PlainNumber, unit: Unit<'fraction'> = one): VolumeFraction {
  return zeroToOne('volume fraction', n, unit) as VolumeFraction
}

/**
 * Mass fraction.
 *
 * @param n - the fraction, from 0 to 1
 * @param unit - `one` unless told otherwise
 * @returns mass fraction
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if the fraction is not from 0 to 1
 */
export function massFractionOf(n: PlainNumber, unit: Unit<'fraction'> = one): MassFraction {
  return zeroToOne('mass fraction', n, unit) as MassFraction
}

/** The dimensions that `measure` takes: all but those where a plain amount would hide a mistake. */
export type MeasuredDimension = Exclude<Dimension, 'pressure' | 'temperature' | 'temperature difference'>

/**
 * A measured quantity of any dimension that has no constructor of its own: mass, duration, flow, energy …
 * Pressures and temperatures are not accepted: say `gauge`, `absolute`, `difference` or `temperatureOf`.
 *
 * @param n - the value, finite
 * @param unit - any unit but one of pressure or temperature
 * @returns the quantity in SI, of the general type of its dimension
 * @throws LitrebarError `unit` for a unit of another quantity; `input` if `n` is not a number; `range` if `n` is not finite
 * @example
 * measure(20, litrePerMinute) // => 0.0003333333333333333
 */
export function measure<D extends MeasuredDimension>(n: PlainNumber, unit: Unit<D>): Quantity<D> {
  const quantity = measuredQuantity(n, unit)
  return anyFinite(quantity, n, unit, { quantity, use: `of ${quantity}` }) as Quantity<D>
}

const ofPressure: UnitKind = { quantity: 'pressure', use: 'bar or psi' }
const ofTemperature: UnitKind = { quantity: 'temperature', use: 'celsius or fahrenheit' }
const ofVolume: UnitKind = { quantity: 'volume', use: 'litre or cubicFoot' }
const ofLength: UnitKind = { quantity: 'length', use: 'metre or foot' }
const ofFraction: UnitKind = { quantity: 'fraction', use: 'one or percent' }
const ofVolumeFlow: UnitKind = { quantity: 'volume flow', use: 'litrePerMinute or cubicFootPerMinute' }
const noNegativeVolume = 'State the size of the volume.'

function anyFinite(argument: string, n: number, unit: Unit, kind: UnitKind): number {
  const si = siOf(argument, n, unit, kind)
  if (si - si !== 0) requireWithin(argument, si, { unit, hint: missingValue })
  return si
}

function notNegative(argument: string, n: number, unit: Unit, kind: UnitKind, hint: string): number {
  const si = siOf(argument, n, unit, kind)
  if (!(si >= 0 && si < Infinity)) requireWithin(argument, si, { atLeast: 0, unit, hint })
  return si
}

function zeroToOne(argument: string, n: number, unit: Unit): number {
  const si = siOf(argument, n, unit, ofFraction)
  if (!(si >= 0 && si <= 1)) {
    requireWithin(argument, si, {
      atLeast: 0,
      atMost: 1 / unit.factor,
      unit,
      hint: 'Give 32 per cent as 0.32, or name the unit `percent`.',
    })
  }
  return si
}

function freeGasName(what: string, reference: { readonly name: string } | null | undefined): string {
  const name: unknown = reference?.name
  if (typeof name === 'string' && name !== '') return `${what} at ${name}`
  throw new LitrebarError({
    code: 'input',
    argument: 'reference.name',
    value: shown(name),
    expected: 'a reference condition',
    hint: 'Name the condition that the volume is stated at, such as isoStandard.',
  })
}

/** The number in SI. Refuses what is not a number and a unit of another quantity, which only untyped code can hand in. */
function siOf(argument: string, n: number, unit: Unit, kind: UnitKind): number {
  if (typeof n !== 'number' || !isUnitOf(unit, kind.quantity)) throw notStated(argument, n, unit, kind)
  return n * unit.factor
}
