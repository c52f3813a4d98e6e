import { LitrebarError, shown } from '../errors/index.ts'
import type { Dimension } from './dimension.ts'
import type { Unit } from './unit.ts'

/** What to do about a number that is not there. */
export const missingValue = 'Replace a missing value before the calculation.'

/** The quantity that a constructor takes, and the units that people write most, for the hint. */
export interface UnitKind {
  readonly quantity: Dimension
  readonly use: string
}

/** Whether something is a unit row of a quantity. */
export function isUnitOf(unit: Unit | undefined, quantity: Dimension): unit is Unit {
  return unit?.quantity === quantity && typeof unit.factor === 'number' && typeof unit.symbol === 'string'
}

/** Whether this is the row of a unit, of whatever quantity. */
export function isUnit(unit: Unit | undefined): unit is Unit {
  const { quantity } = Object(unit) as Partial<Unit>
  return typeof quantity === 'string' && isUnitOf(unit, quantity)
}

/** The error of a constructor that was handed something else than a number and a unit of its quantity. */
export function notStated(argument: string, n: unknown, unit: Unit | undefined, kind: UnitKind): LitrebarError {
  const isNumber = typeof n === 'number'
  return new LitrebarError({
    code: isNumber ? 'unit' : 'input',
    argument,
    value: isNumber ? `${String(n)} ${unit?.symbol ?? 'without a unit'}` : shown(n),
    expected: isNumber ? `a unit of ${kind.quantity}` : 'a number',
    hint: isNumber ? `Use ${kind.use}.` : missingValue,
  })
}

/** The quantity of a unit that `measure` takes. Refuses one of pressure or temperature, and what is not a unit. */
export function measuredQuantity(n: unknown, unit: Unit | undefined): Dimension {
  const quantity = unit?.quantity
  if (typeof quantity === 'string' && quantity !== 'pressure' && !quantity.startsWith('temperature')) return quantity
  throw new LitrebarError({
    code: 'unit',
    argument: 'measure',
    value: `${shown(n)} ${typeof unit?.symbol === 'string' ? unit.symbol : `with ${shown(unit)} for its unit`}`.trim(),
    expected: 'a unit of any quantity but pressure and temperature',
    hint:
      quantity === 'pressure'
        ? 'Say gauge(), absolute() or difference().'
        : quantity === 'temperature'
          ? 'Say temperatureOf() or difference().'
          : 'Hand in the unit row itself, such as litrePerMinute.',
  })
}

/** The quantity of a unit row. */
export function quantityOf(argument: string, unit: Unit | undefined): Dimension {
  const quantity = unit?.quantity
  if (typeof quantity === 'string' && isUnitOf(unit, quantity)) return quantity
  throw new LitrebarError({
    code: 'unit',
    argument,
    value: shown(unit),
    expected: 'a unit',
    hint: 'Hand in the unit row itself, such as bar or litre.',
  })
}

/** The error for a unit of another quantity. */
export function notOfQuantity(argument: string, unit: Unit | undefined, quantity: Dimension): LitrebarError {
  const other = quantityOf(argument, unit)
  return new LitrebarError({
    code: 'unit',
    argument,
    value: unit?.symbol ?? '',
    expected: `a unit of ${quantity}`,
    hint: `This is a unit of ${other}; use one of ${quantity}.`,
  })
}

/** Refuses what is not a finite number. */
export function requireNumber(argument: string, q: unknown): void {
  if (typeof q === 'number' && Number.isFinite(q)) return
  throw new LitrebarError({
    code: typeof q === 'number' ? 'range' : 'input',
    argument,
    value: shown(q),
    expected: 'a finite number in SI',
    hint: missingValue,
  })
}
