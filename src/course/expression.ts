import { LitrebarError } from '../errors/index.ts'
import { type Dimension, dimensions } from '../units/index.ts'

/**
 * A formula as plain JSON: a number, the name of a symbol, or an operator with its arguments.
 * `call` stands for something that has no closed form (a compressibility factor): it is shown by name, with its value.
 */
export type Expression<Symbol extends string = string> =
  | number
  | Symbol
  | readonly ['+' | '*' | 'min' | 'max', ...Expression<Symbol>[]]
  | readonly ['-' | '/' | '^', Expression<Symbol>, Expression<Symbol>]
  | readonly ['sqrt' | 'ln' | 'exp' | 'sin' | 'cos' | 'tan' | 'arctan', Expression<Symbol>]
  | readonly ['call', string, ...Expression<Symbol>[]]

/** What an operator may be, `call:` followed by the name for a call. */
export type Operator =
  | '+'
  | '-'
  | '*'
  | '/'
  | '^'
  | 'sqrt'
  | 'ln'
  | 'exp'
  | 'sin'
  | 'cos'
  | 'tan'
  | 'arctan'
  | 'min'
  | 'max'
  | `call:${string}`

/** One walk serves numbers, dimensions and every kind of writing: the algebra is passed in. */
export interface Algebra<Result> {
  /** What a bare number becomes. */
  readonly number: (n: number) => Result
  /** What a symbol becomes, by its name. */
  readonly symbol: (name: string) => Result
  /** What an operator makes of what its arguments became. */
  readonly apply: (operator: Operator, parts: readonly Result[]) => Result
}

/**
 * Folds an expression from its leaves to its root.
 *
 * @param expression - the formula
 * @param algebra - what to make of numbers, symbols and operators
 * @returns what the algebra makes of the root
 */
export function fold<Result>(expression: Expression, algebra: Algebra<Result>): Result {
  if (typeof expression === 'number') return algebra.number(expression)
  if (typeof expression === 'string') return algebra.symbol(expression)
  if (expression[0] === 'call') {
    const [, name, ...parts] = expression
    return algebra.apply(
      `call:${name}`,
      parts.map((part) => fold(part, algebra)),
    )
  }
  const [operator, ...parts] = expression
  return algebra.apply(
    operator,
    parts.map((part) => fold(part, algebra)),
  )
}

/**
 * The symbols of an expression.
 *
 * @param expression - the formula
 * @returns names, each once, in the order in which they stand
 */
export function symbolsIn(expression: Expression): string[] {
  if (typeof expression === 'number') return []
  if (typeof expression === 'string') return [expression]
  const parts = (expression[0] === 'call' ? expression.slice(2) : expression.slice(1)) as readonly Expression[]
  return [...new Set(parts.flatMap(symbolsIn))]
}

/** The functions behind the `call` leaves of a formula, on numbers in SI. */
export type Calls = Readonly<Record<string, (...parts: readonly number[]) => number>>

/**
 * The number that an expression comes to.
 *
 * @param expression - the formula
 * @param values - a number for every symbol
 * @param calls - a function for every call
 * @returns the value
 * @throws LitrebarError `input` for a symbol without a finite value or a call without a function
 */
export function evaluate(expression: Expression, values: Readonly<Record<string, number>>, calls: Calls = {}): number {
  return fold<number>(expression, {
    number: (n) => n,
    symbol: (name) => {
      const value = values[name]
      if (value !== undefined && Number.isFinite(value)) return value
      throw new LitrebarError({
        code: 'input',
        argument: `inputs.${name}`,
        value: String(value),
        expected: 'a finite number',
        hint: 'Give every symbol of the formula but the one to be found.',
      })
    },
    apply: (operator, parts) => applied(operator, parts, calls),
  })
}

type Arithmetic = Exclude<Operator, `call:${string}`>

const arithmetic: Readonly<Record<Arithmetic, (...parts: readonly number[]) => number>> = {
  '+': (...parts) => parts.reduce((a, b) => a + b),
  '*': (...parts) => parts.reduce((a, b) => a * b),
  '-': (a = Number.NaN, b = Number.NaN) => a - b,
  '/': (a = Number.NaN, b = Number.NaN) => a / b,
  '^': (a = Number.NaN, b = Number.NaN) => a ** b,
  sqrt: (a = Number.NaN) => Math.sqrt(a),
  ln: (a = Number.NaN) => Math.log(a),
  exp: (a = Number.NaN) => Math.exp(a),
  sin: (a = Number.NaN) => Math.sin(a),
  cos: (a = Number.NaN) => Math.cos(a),
  tan: (a = Number.NaN) => Math.tan(a),
  arctan: (a = Number.NaN) => Math.atan(a),
  min: (...parts) => Math.min(...parts),
  max: (...parts) => Math.max(...parts),
}

function applied(operator: Operator, parts: readonly number[], calls: Calls): number {
  if (!operator.startsWith('call:')) return arithmetic[operator as Arithmetic](...parts)
  const called = calls[operator.slice('call:'.length)]
  if (called !== undefined) return called(...parts)
  throw new LitrebarError({
    code: 'input',
    argument: 'calls',
    value: `without ${operator.slice('call:'.length)}`,
    expected: 'a function for every call of the formula',
    hint: 'Pass the card’s own calls, or add the function.',
  })
}

/** Exponents of metre, kilogram, second, kelvin, mole and ampere. */
export type Exponents = readonly [
  metre: number,
  kilogram: number,
  second: number,
  kelvin: number,
  mole: number,
  ampere: number,
]

const pure: Exponents = [0, 0, 0, 0, 0, 0]

/**
 * The dimension that an expression comes to. Adding a pressure to a length is an error here, not a printed formula.
 *
 * @param expression - the formula
 * @param symbols - the dimension of every symbol
 * @param calls - the dimension of the result of every call
 * @returns exponents of the base units
 * @throws LitrebarError `input` where unlike dimensions are added, or a function is taken of a quantity with a dimension
 */
export function dimensionOf(
  expression: Expression,
  symbols: Readonly<Record<string, { readonly dimension: Dimension }>>,
  calls: Readonly<Record<string, { readonly dimension: Dimension }>> = {},
): Exponents {
  return fold<{ exponents: Exponents; power?: number }>(expression, {
    number: (n) => ({ exponents: pure, power: n }),
    symbol: (name) => ({ exponents: exponentsOf(symbols[name]?.dimension, name) }),
    apply: (operator, parts) => ({
      exponents: operator.startsWith('call:')
        ? exponentsOf(calls[operator.slice('call:'.length)]?.dimension, operator)
        : combined(operator as Arithmetic, parts),
    }),
  }).exponents
}

function exponentsOf(dimension: Dimension | undefined, name: string): Exponents {
  if (dimension !== undefined) return dimensions[dimension]
  throw unlike(name, 'no dimension')
}

function combined(operator: Arithmetic, parts: readonly { exponents: Exponents; power?: number }[]): Exponents {
  const [first = { exponents: pure }, second = { exponents: pure }] = parts
  const each = (f: (index: number) => number): Exponents => [f(0), f(1), f(2), f(3), f(4), f(5)]
  const at = (exponents: Exponents, index: number): number => exponents[index] ?? 0
  switch (operator) {
    case '*':
      return each((i) => parts.reduce((sum, part) => sum + at(part.exponents, i), 0))
    case '/':
      return each((i) => at(first.exponents, i) - at(second.exponents, i))
    case '^': {
      const { power } = second
      if (power === undefined && !same(first.exponents, pure)) throw unlike('^', 'a power that is not a number')
      return each((i) => at(first.exponents, i) * (power ?? 1))
    }
    case 'sqrt':
      return each((i) => at(first.exponents, i) / 2)
    case 'ln':
    case 'exp':
    case 'sin':
    case 'cos':
    case 'tan':
    case 'arctan':
      if (!same(first.exponents, pure)) throw unlike(operator, `[${first.exponents.join(', ')}]`)
      return pure
    default: {
      const other = parts.find((part) => !same(part.exponents, first.exponents))
      if (other !== undefined)
        throw unlike(operator, `[${first.exponents.join(', ')}] and [${other.exponents.join(', ')}]`)
      return first.exponents
    }
  }
}

function same(a: Exponents, b: Exponents): boolean {
  return a.every((exponent, index) => exponent === b[index])
}

function unlike(operator: string, value: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: `expression at ${operator}`,
    value,
    expected: 'quantities whose dimensions fit the operator',
    hint: 'Add and compare quantities of one dimension; take logarithms and powers of pure numbers.',
  })
}
