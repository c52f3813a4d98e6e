import { LitrebarError } from '../../errors/index.ts'
import { type Calls, type Expression, fold, type Operator } from '../expression.ts'

/** A formula made ready to be evaluated many times, on numbers in SI. */
export type Evaluator = (values: Numbers) => number

/** Numbers in SI by symbol. */
export type Numbers = { readonly [symbol: string]: number | undefined }

/** A number and how far it may be off. */
interface Uncertain {
  readonly value: number
  readonly error: number
}

/**
 * A formula as a function of its symbols: the walk over the expression is made once.
 *
 * @param expression - the formula
 * @param calls - a function for every call
 * @returns the function; NaN where a symbol has no value
 */
export function evaluatorOf(expression: Expression, calls: Calls = {}): Evaluator {
  return fold<Evaluator>(expression, {
    number: (n) => () => n,
    symbol: (name) => (values) => values[name] ?? Number.NaN,
    apply: (operator, parts) => {
      const of = functionOf(operator, calls)
      const [first, second] = parts
      if (first !== undefined && second !== undefined && parts.length === 2)
        return (values) => of(first(values), second(values))
      return (values) => of(...parts.map((part) => part(values)))
    },
  })
}

/**
 * How far the result of a formula may be off when every intermediate result is rounded to a number of figures, whatever
 * the order of the work and the unit it is done in: to first order, all errors to one side. The result itself is not rounded.
 *
 * @param expression - the formula
 * @param figures - figures that intermediate results keep
 * @param calls - a function for every call
 * @returns a function of the symbols, giving the greatest error
 */
export function roundingSpreadOf(expression: Expression, figures: number, calls: Calls = {}): Evaluator {
  const share = 0.5 * 10 ** (1 - figures) // half a unit of the last figure of a number that begins with 1
  return spreadOf(expression, share, calls)
}

type Spread = (values: Numbers) => Uncertain

interface Node {
  /** The part as it enters what it is part of. */
  readonly entering: Spread
  /** The part before it is rounded. */
  readonly unrounded: Spread
}

function spreadOf(expression: Expression, share: number, calls: Calls): Evaluator {
  const leaf = (spread: Spread): Node => ({ entering: spread, unrounded: spread })
  const root = fold<Node>(expression, {
    number: (n) => leaf(() => ({ value: n, error: 0 })),
    symbol: (name) => leaf((values) => ({ value: values[name] ?? Number.NaN, error: 0 })),
    apply: (operator, parts) => {
      const of = functionOf(operator, calls)
      const unrounded: Spread = (values) => {
        const entered = parts.map((part) => part.entering(values))
        const numbers = entered.map((part) => part.value)
        const value = of(...numbers)
        let error = 0
        entered.forEach((part, index) => {
          if (part.error === 0) return
          const moved = of(...numbers.with(index, part.value + part.error))
          error += Math.abs(moved - value)
        })
        return { value, error }
      }
      const entering: Spread = (values) => {
        const { value, error } = unrounded(values)
        return { value, error: error + share * Math.abs(value) }
      }
      return { entering, unrounded }
    },
  })
  return (values) => root.unrounded(values).error
}

function functionOf(operator: Operator, calls: Calls): (...parts: readonly number[]) => number {
  if (!operator.startsWith('call:')) return arithmetic[operator as keyof typeof arithmetic]
  const name = operator.slice('call:'.length)
  const called = Object.hasOwn(calls, name) ? calls[name] : undefined
  if (called !== undefined) return called
  throw new LitrebarError({
    code: 'input',
    argument: 'calls',
    value: `without ${name}`,
    expected: 'a function for every call of the formula',
    hint: 'Pass the card’s own calls.',
  })
}

const nothing = Number.NaN
const arithmetic: Readonly<Record<Exclude<Operator, `call:${string}`>, (...parts: readonly number[]) => number>> = {
  '+': (...parts) => parts.reduce((a, b) => a + b),
  '*': (...parts) => parts.reduce((a, b) => a * b),
  '-': (a = nothing, b = nothing) => a - b,
  '/': (a = nothing, b = nothing) => a / b,
  '^': (a = nothing, b = nothing) => a ** b,
  sqrt: (a = nothing) => Math.sqrt(a),
  ln: (a = nothing) => Math.log(a),
  exp: (a = nothing) => Math.exp(a),
  sin: (a = nothing) => Math.sin(a),
  cos: (a = nothing) => Math.cos(a),
  tan: (a = nothing) => Math.tan(a),
  arctan: (a = nothing) => Math.atan(a),
  min: (...parts) => Math.min(...parts),
  max: (...parts) => Math.max(...parts),
}
