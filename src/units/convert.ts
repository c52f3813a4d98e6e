import { faultOfRow, LitrebarError, requireKeys, requireRows, rowCodes } from '../errors/index.ts'
import { isUnitOf, notOfQuantity, quantityOf, requireNumber } from './check-unit.ts'
import type { Dimension } from './dimension.ts'
import type {
  AbsolutePressure,
  GaugePressure,
  Length,
  PlainNumber,
  PressureDifference,
  Quantity,
  Temperature,
  TemperatureDifference,
} from './quantity.ts'
import type { Unit } from './unit.ts'

/**
 * The number of a quantity in a unit of its dimension.
 * For a difference of temperatures use `differenceInUnit`: the zero of a scale must not enter there.
 *
 * @param q - any quantity
 * @param unit - a unit of the same dimension
 * @returns a plain number; unchecked, so that an app which only shows numbers carries no error: the constructors and the functions that give
 *   quantities refuse what is none
 * @example
 * inUnit(absolute(3000, psi), bar) // => 206.84271879505084
 */
export function inUnit<D extends Dimension>(q: Quantity<D, string>, unit: Unit<NoInfer<D>>): number {
  return (q - (unit.offset ?? 0)) / unit.factor
}

/**
 * The number of a difference in a unit of pressure or temperature. The zero of a temperature scale plays no part.
 *
 * @param q - a difference
 * @param unit - a unit of pressure for a pressure, of temperature for a temperature
 * @returns a plain number
 * @example
 * differenceInUnit(difference(10, celsius), fahrenheit) // => 18
 */
export function differenceInUnit(q: TemperatureDifference, unit: Unit<'temperature'>): number
export function differenceInUnit(q: PressureDifference, unit: Unit<'pressure'>): number
export function differenceInUnit(q: number, unit: Unit): number {
  requireNumber('q', q)
  const quantity = quantityOf('unit', unit)
  if (quantity !== 'temperature' && quantity !== 'pressure') throw notOfQuantity('unit', unit, 'pressure')
  const stated = q / unit.factor
  requireNumber('q', stated)
  return stated
}

/**
 * Absolute pressure from a gauge pressure and the pressure around the gauge.
 *
 * @param pressure - gauge pressure, Pa
 * @param ambientPressure - pressure around the gauge, absolute, Pa
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range` if the sum is below vacuum or not finite
 * @example
 * inUnit(toAbsolute(gauge(232, bar), absolute(1, atmosphere)), bar) // => 233.01325
 */
export function toAbsolute(pressure: GaugePressure, ambientPressure: AbsolutePressure): AbsolutePressure {
  requireNumber('pressure', pressure)
  requireNumber('ambientPressure', ambientPressure)
  const sum = pressure + ambientPressure
  if (!(sum >= 0 && sum < Infinity)) {
    throw new LitrebarError({
      code: 'range',
      argument: 'pressure + ambientPressure',
      value: `${String(sum)} Pa`,
      expected: 'at least 0 Pa',
      hint: 'Nothing is below vacuum: check the sign of the reading and its unit.',
    })
  }
  return sum as AbsolutePressure
}

/**
 * Gauge pressure from an absolute pressure and the pressure around the gauge.
 *
 * @param pressure - absolute pressure, Pa
 * @param ambientPressure - pressure around the gauge, absolute, Pa
 * @returns gauge pressure, Pa; negative below ambient
 * @throws LitrebarError `range` if one is not finite
 */
export function toGauge(pressure: AbsolutePressure, ambientPressure: AbsolutePressure): GaugePressure {
  requireNumber('pressure', pressure)
  requireNumber('ambientPressure', ambientPressure)
  return (pressure - ambientPressure) as GaugePressure
}

/** Difference of two temperatures, K. */
export function differenceOf(a: Temperature, b: Temperature): TemperatureDifference
/** Difference of two lengths counted from the same datum, m. */
export function differenceOf<R extends string>(a: Quantity<'length', R>, b: Quantity<'length', NoInfer<R>>): Length
/** Difference of two quantities of one dimension and one reference. */
export function differenceOf<D extends Exclude<Dimension, 'temperature' | 'length'>, R extends string>(
  a: Quantity<D, R>,
  b: Quantity<NoInfer<D>, NoInfer<R>>,
): Quantity<D, 'difference'>
/**
 * Difference of two quantities that are counted from the same reference: two absolute pressures, two depths.
 *
 * @param a - the first
 * @param b - what is taken away from it, of the same dimension and reference
 * @returns the difference in SI
 * @throws LitrebarError `range` if one is not finite
 * @example
 * inUnit(differenceOf(gauge(200, bar), gauge(50, bar)), bar) // => 150
 */
export function differenceOf(a: number, b: number): unknown {
  requireNumber('a', a)
  requireNumber('b', b)
  return a - b
}

/** What adds up: amounts, not points on a scale. The sum of two absolute pressures means nothing. */
export type Additive =
  | 'amount'
  | 'difference'
  | 'internal'
  | 'displaced'
  | 'gas at its own state'
  | 'weight'
  | 'mole'
  | `free gas at ${string}`

/**
 * Sum of amounts of one kind. Free gas adds only at one reference condition; pressures and temperatures do not add at all.
 *
 * @param first - an amount
 * @param others - amounts of the same dimension and reference
 * @returns their sum in SI
 * @throws LitrebarError `range` if one is not finite
 * @example
 * inUnit(sumOf(internalVolumeOf(12, litre), internalVolumeOf(10, litre)), litre) // => 22
 */
export function sumOf<D extends Dimension, R extends Additive>(
  first: Quantity<D, R>,
  ...others: readonly Quantity<NoInfer<D>, NoInfer<R>>[]
): Quantity<D, R> {
  const all: readonly number[] = [first, ...others]
  for (const [i, q] of all.entries()) requireNumber(`amount ${String(i + 1)}`, q)
  return all.reduce((sum, q) => sum + q, 0) as Quantity<D, R>
}

/**
 * A pressure moved by a difference; keeps its reference.
 *
 * @param pressure - gauge or absolute, Pa
 * @param change - difference, Pa, of either sign
 * @returns pressure of the same reference, Pa
 * @throws LitrebarError `range` if one is not finite
 */
export function offsetBy<R extends 'absolute' | 'gauge'>(
  pressure: Quantity<'pressure', R>,
  change: PressureDifference,
): Quantity<'pressure', R> {
  requireNumber('pressure', pressure)
  requireNumber('change', change)
  return (pressure + change) as Quantity<'pressure', R>
}

/**
 * Converts a column from one unit to another, at the speed of the bare loop. A bad row is NaN and gets a code instead of an error.
 *
 * @param out - `value` receives the results, `code` a row code: `good`, `missing` for NaN, `outOfRange` for what is not finite
 * @param column - the numbers
 * @param units - from which unit to which, of one dimension
 * @param from - first row, 0 unless given
 * @param to - row after the last, the length of the column unless given
 * @throws LitrebarError `unit` for two units of different quantities; as `requireRows`
 */
export function convertInto<D extends Dimension>(
  out: { readonly value: Float64Array; readonly code: Uint8Array },
  column: Float64Array,
  units: { readonly from: Unit<D>; readonly to: Unit<NoInfer<D>> },
  from: PlainNumber = 0,
  to?: PlainNumber,
): void {
  requireKeys('units', units, { from: true, to: true })
  const quantity = quantityOf('units.from', units.from)
  if (!isUnitOf(units.to, quantity)) throw notOfQuantity('units.to', units.to, quantity)
  const end = requireRows([{ column }, ['column']], [out, ['value', 'code']], from, to)
  const { value, code } = out
  const factor = units.from.factor / units.to.factor
  const shift = ((units.from.offset ?? 0) - (units.to.offset ?? 0)) / units.to.factor
  for (let row = from; row < end; row++) {
    const converted = (column[row] as number) * factor + shift
    const isGood = converted - converted === 0
    value[row] = isGood ? converted : Number.NaN
    code[row] = isGood ? rowCodes.good : faultOfRow(rowCodes.outOfRange, column[row] as number)
  }
}
