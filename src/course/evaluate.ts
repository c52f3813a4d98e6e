import { LitrebarError, shown } from '../errors/index.ts'
import { type Calls, type Expression, numberOf } from './expression.ts'
import { requireShape } from './require-shape.ts'

/**
 * The number that an expression comes to.
 *
 * @param expression - the formula
 * @param values - a number for every symbol
 * @param calls - a function for every call
 * @returns the value
 * @throws LitrebarError `input` for what is no expression, a symbol without a finite value or a call without a function; `range`
 *   where nothing finite comes of the numbers, as of the root of a negative one
 */
export function evaluate(expression: Expression, values: Readonly<Record<string, number>>, calls: Calls = {}): number {
  requireShape('expression', expression, 'expression')
  requireShape('values', values, { each: 'number' })
  requireShape('calls', calls, { each: 'function' })
  const value = numberOf(expression, values, calls)
  if (Number.isFinite(value)) return value
  throw new LitrebarError({
    code: 'range',
    argument: 'values',
    value: `numbers that come to ${shown(value)}`,
    expected: 'numbers that the formula has an answer for',
    hint: 'Look for a division by zero, or the root or logarithm of a negative number.',
  })
}
