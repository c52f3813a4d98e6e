import { LitrebarError, shown } from '../errors/index.ts'

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

/** A call as it stands in an expression. */
export type Call = readonly ['call', string, ...Expression[]]

/** The calls of an expression, inner ones before those that use them. */
export function callsOf(expression: Expression): Call[] {
  if (typeof expression === 'number' || typeof expression === 'string') return []
  const inner = (expression.slice(expression[0] === 'call' ? 2 : 1) as readonly Expression[]).flatMap(callsOf)
  return expression[0] === 'call' ? [...inner, expression] : inner
}

/** The functions behind the `call` leaves of a formula, on numbers in SI. */
export type Calls = Readonly<Record<string, (...parts: readonly number[]) => number>>

/** The number that an expression comes to, of what is known to be one: behind the doors that have checked it. */
export function numberOf(expression: Expression, values: Readonly<Record<string, number>>, calls: Calls = {}): number {
  return fold<number>(expression, {
    number: (n) => n,
    symbol: (name) => {
      const value = Object.hasOwn(values, name) ? values[name] : undefined
      if (value !== undefined && Number.isFinite(value)) return value
      throw new LitrebarError({
        code: 'input',
        argument: `inputs.${name}`,
        value: shown(value),
        expected: 'a finite number',
        hint: 'Give every symbol of the formula but the one to be found.',
      })
    },
    apply: (operator, parts) => applied(operator, parts, calls),
  })
}

/** What needs no function of the card. */
export type Arithmetic = Exclude<Operator, `call:${string}`>

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
  const name = operator.slice('call:'.length)
  const called = Object.hasOwn(calls, name) ? calls[name] : undefined
  if (called !== undefined) return called(...parts)
  throw new LitrebarError({
    code: 'input',
    argument: 'calls',
    value: `without ${name}`,
    expected: 'a function for every call of the formula',
    hint: 'Pass the card’s own calls, or add the function.',
  })
}
