import { inputError, shown } from '../errors/index.ts'
import type { Expression } from './expression.ts'

type Operator = Exclude<Expression, number | string>[0]

/** How many arguments each operator takes. Names of calls are no arguments. */
const argumentsOf: Readonly<Record<Operator, readonly [least: number, most: number]>> = {
  '+': [1, Infinity],
  '*': [1, Infinity],
  min: [1, Infinity],
  max: [1, Infinity],
  '-': [2, 2],
  '/': [2, 2],
  '^': [2, 2],
  sqrt: [1, 1],
  ln: [1, 1],
  exp: [1, 1],
  sin: [1, 1],
  cos: [1, 1],
  tan: [1, 1],
  arctan: [1, 1],
  call: [0, Infinity],
}

/** No formula is as deep, and a list that holds itself has no end. */
const deepest = 100

/**
 * Refuses what is not an expression.
 *
 * @param argument - the parameter with its path
 * @param given - what was handed in
 * @param depth - how many operators stand around it
 * @throws LitrebarError `input` for an operator that is not known or has too few or too many arguments, and for what is neither a
 *   finite number, a symbol nor an operator with its arguments
 */
export function requireExpression(argument: string, given: unknown, depth = 0): void {
  if (Number.isFinite(given) || (typeof given === 'string' && given !== '')) return
  if (!Array.isArray(given) || depth > deepest) throw refusal(argument, shown(given))
  const [operator, ...rest] = given as readonly unknown[]
  if (typeof operator !== 'string' || !Object.hasOwn(argumentsOf, operator)) throw refusal(argument, shown(operator))
  const [name, ...parts] = operator === 'call' ? rest : ['', ...rest]
  const [least, most] = argumentsOf[operator as Operator]
  if (typeof name !== 'string' || (operator === 'call' && name === '') || parts.length < least || parts.length > most)
    throw refusal(argument, `'${operator}' with ${String(rest.length)} parts`)
  parts.forEach((part, at) => {
    requireExpression(`${argument}[${String(at + (operator === 'call' ? 2 : 1))}]`, part, depth + 1)
  })
}

function refusal(argument: string, value: string): Error {
  return inputError(
    argument,
    value,
    'a finite number, a symbol, or an operator with its arguments',
    "Write p·V as ['*', 'p', 'V'].",
  )
}
