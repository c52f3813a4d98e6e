import { LitrebarError } from '../errors/index.ts'
import { type Dimension, dimensions } from '../units/index.ts'
import { dimensionShape } from './card-shape.table.ts'
import { type Arithmetic, type Expression, fold } from './expression.ts'
import { requireShape } from './require-shape.ts'

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
 * @throws LitrebarError `input` for what is no expression, where unlike dimensions are added, or where a function is taken of a
 *   quantity with a dimension
 */
export function dimensionOf(
  expression: Expression,
  symbols: Readonly<Record<string, { readonly dimension: Dimension }>>,
  calls: Readonly<Record<string, { readonly dimension: Dimension }>> = {},
): Exponents {
  requireShape('expression', expression, 'expression')
  requireShape('symbols', symbols, { each: dimensionShape })
  requireShape('calls', calls, { each: dimensionShape })
  return fold<{ exponents: Exponents; power?: number }>(expression, {
    number: (n) => ({ exponents: pure, power: n }),
    symbol: (name) => ({ exponents: exponentsOf(symbols, name, name) }),
    apply: (operator, parts) => ({
      exponents: operator.startsWith('call:')
        ? exponentsOf(calls, operator.slice('call:'.length), operator)
        : combined(operator as Arithmetic, parts),
    }),
  }).exponents
}

function exponentsOf(
  rows: Readonly<Record<string, { readonly dimension: Dimension }>>,
  name: string,
  place: string,
): Exponents {
  const row = Object.hasOwn(rows, name) ? rows[name] : undefined
  if (row !== undefined) return dimensions[row.dimension]
  throw unlike(place, 'no dimension')
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
