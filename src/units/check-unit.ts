import { LitrebarError, shown } from '../errors/index.ts'
import type { Dimension } from './dimension.ts'
import type { Unit } from './unit.ts'

/** What to do about a number that is not there. */
export const missingValue = 'Replace a missing value before the calculation.'

/** Whether something is a unit row of a quantity. */
export function isUnitOf(unit: Unit | undefined, quantity: Dimension): unit is Unit {
  return unit?.quantity === quantity && typeof unit.factor === 'number' && typeof unit.symbol === 'string'
}

// What people write most, for the hint.
const usual: { readonly [D in Dimension]?: string } = {
  pressure: 'bar or psi',
  temperature: 'celsius or fahrenheit',
  volume: 'litre or cubicFoot',
  length: 'metre or foot',
  fraction: 'one or percent',
  'volume flow': 'litrePerMinute or cubicFootPerMinute',
}

/** The error of a constructor that was handed something else than a number and a unit of its quantity. */
export function notStated(argument: string, n: unknown, unit: Unit | undefined, quantity: Dimension): LitrebarError {
  const use = `use ${usual[quantity] ?? `a unit of ${quantity}`}.`
  if (typeof n !== 'number') {
    const hint = typeof n === 'string' ? 'Read text with parseQuantity().' : missingValue
    return new LitrebarError({ code: 'input', argument, value: shown(n), expected: 'a number', hint })
  }
  const { symbol, quantity: other } = Object(unit) as Partial<Unit>
  const isUnit = typeof symbol === 'string' && typeof other === 'string' && other !== quantity
  return new LitrebarError({
    code: 'unit',
    argument,
    value: `${String(n)} ${isUnit ? symbol : `with ${shown(unit)} for its unit`}`.trim(),
    expected: `a unit of ${quantity}`,
    hint: isUnit ? `${symbol} is a unit of ${other}; ${use}` : `Hand in the unit row itself: ${use}`,
  })
}

/** The quantity of a unit that `measure` takes. Refuses one of pressure or temperature, and what is no unit. */
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
