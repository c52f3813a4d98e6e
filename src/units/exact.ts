import { Decimal as DecimalDefault } from 'decimal.js'
import { inputError, LitrebarError, shown } from '../errors/index.ts'
import { quantityOf } from './check-unit.ts'
import type { Dimension } from './dimension.ts'
import type { Unit } from './unit.ts'

// A constructor of our own, so that an application's precision setting and ours leave each other alone.
const precision = 60

/** An exact decimal number of decimal.js. */
export type Exact = DecimalDefault

/**
 * Converts without rounding to a double: for tables that state a definition, and for tests of the factors.
 *
 * @param n - the number as decimal text, such as `"3000"`
 * @param from - its unit, with a definition
 * @param to - the unit wanted, with a definition
 * @returns the number in `to`, to 60 digits
 * @throws LitrebarError `input` if a unit carries no definition; `input` if the text is not a finite number
 * @example
 * toExact('3000', psi, bar).toFixed(12) // => '206.842718795051'
 */
export function toExact<D extends Dimension>(n: string, from: Unit<D>, to: Unit<NoInfer<D>>): Exact {
  const Decimal = DecimalDefault.clone({ precision, defaults: true })
  // one way to read any digits: \d+\.?\d* has as many as there are digits
  if (typeof n !== 'string' || !/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i.test(n.trim())) {
    throw new LitrebarError({
      code: 'input',
      argument: 'n',
      value: shown(n),
      expected: 'a decimal number as text',
      hint: 'Write digits with a point as decimal sign, without unit.',
    })
  }
  const { factor: fromFactor, offset: fromOffset } = exactDefinition(from)
  const { factor: toFactor, offset: toOffset } = exactDefinition(to)
  return new Decimal(n.trim()).times(fromFactor).plus(fromOffset).minus(toOffset).div(toFactor)
}

/**
 * Factor and offset of a unit, worked out from its definition.
 *
 * @param unit - a unit that carries a definition
 * @returns SI value of one unit and of its zero, to 60 digits
 * @throws LitrebarError `unit` for what is not a unit; `input` if the unit carries no definition
 */
export function exactDefinition(unit: Unit): { readonly factor: Exact; readonly offset: Exact } {
  quantityOf('unit', unit)
  const { symbol, definition, offsetDefinition = '0' } = unit
  if (!isProduct(definition) || !isProduct(offsetDefinition)) {
    throw inputError('unit', symbol, 'a unit with a definition', 'Add the exact factor as `definition` to the unit.')
  }
  return { factor: worked(definition), offset: worked(offsetDefinition) }
}

function isProduct(definition: unknown): definition is string {
  return (
    typeof definition === 'string' && /^[\d.]+(e[+-]?\d+)?(\^\d+)?([*/][\d.]+(e[+-]?\d+)?(\^\d+)?)*$/.test(definition)
  )
}

/** Products, quotients and whole powers, from left to right. */
function worked(definition: string): Exact {
  const Decimal = DecimalDefault.clone({ precision, defaults: true })
  let result = new Decimal(1)
  for (const [, operator = '*', number = '', power = '1'] of definition.matchAll(
    /([*/]?)([\d.]+(?:e[+-]?\d+)?)(?:\^(\d+))?/g,
  )) {
    const term = new Decimal(number).pow(Number(power))
    result = operator === '/' ? result.div(term) : result.times(term)
  }
  return result
}
