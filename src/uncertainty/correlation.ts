import { LitrebarError, requireKeys, requireList, shown } from '../errors/index.ts'
import { one, requireWithin } from '../units/index.ts'
import { anyValue } from './accepted.ts'

/** How two inputs vary together. */
export interface Correlation<Name extends string = string> {
  readonly between: readonly [Name, Name]
  /** From -1 to 1. */
  readonly coefficient: number
}

/** Rows of the correlation matrix, in the order of the names. */
export type Matrix = readonly (readonly number[])[]

/**
 * The full matrix of the correlations stated, ones on its diagonal, zeros where nothing is said.
 *
 * @param names - of all inputs
 * @param correlations - those that are not zero
 * @returns its rows
 * @throws LitrebarError `input` for a name that is not an input or a pair stated twice or with itself; `range` for a coefficient
 */
export function correlationMatrix(names: readonly string[], correlations: readonly Correlation[]): Matrix {
  const rows = names.map((_, i) => names.map((_, j): number => (i === j ? 1 : 0)))
  requireList('options.correlations', correlations)
  correlations.forEach((correlation, k) => {
    const argument = `correlations[${k}]`
    requireKeys(argument, correlation, { between: true, coefficient: true })
    const { between, coefficient } = correlation
    requireList(`${argument}.between`, between, 2, 'Name the two inputs.')
    requireWithin(`${argument}.coefficient`, coefficient, coefficientRange)
    const [i, j] = between.map((name) => names.indexOf(name)) as [number, number]
    const first = rows[i]
    const second = rows[j]
    if (first === undefined || second === undefined || i === j || first[j] !== 0) {
      throw new LitrebarError({
        code: 'input',
        argument: `${argument}.between`,
        value: between.map(shown).join(' and '),
        expected: `two different inputs of ${names.join(', ')}, each pair once`,
        hint: 'Name inputs as in the second argument.',
      })
    }
    first[j] = coefficient
    second[i] = coefficient
  })
  return rows
}

const coefficientRange = { atLeast: -1, atMost: 1, unit: one, hint: 'A correlation coefficient lies between -1 and 1.' }

/**
 * The triangular root of a correlation matrix: it turns independent normal numbers into correlated ones.
 *
 * @param matrix - from `correlationMatrix`
 * @returns its rows
 * @throws LitrebarError `input` if no quantities can vary together like that
 */
export function triangularRoot(matrix: Matrix): Matrix {
  const root = matrix.map((row) => row.map(() => 0))
  matrix.forEach((row, i) => {
    const own = root[i] as number[]
    for (let j = 0; j <= i; j++) {
      const other = root[j] as number[]
      let rest = row[j] as number
      for (let k = 0; k < j; k++) rest -= (own[k] as number) * (other[k] as number)
      const pivot = other[j] as number
      // a full correlation leaves nothing for the later of the two: a zero row end, no negative one
      if (i === j) own[j] = Math.sqrt(Math.max(requirePossible(rest), 0))
      else if (pivot > 0) own[j] = rest / pivot
      else requirePossible(-Math.abs(rest))
    }
  })
  return root
}

const rounding = 1e-12

function requirePossible(rest: number): number {
  if (rest >= -rounding) return rest
  throw new LitrebarError({
    code: 'input',
    argument: 'correlations',
    value: 'a set that contradicts itself',
    expected: 'coefficients that can hold at once',
    hint: 'If a goes with b and b with c, then a goes with c: state all three.',
  })
}

/**
 * Correlation coefficient of two series that were observed together.
 *
 * @param first - at least two finite values, not all equal
 * @param second - as many
 * @returns the coefficient, -1 to 1; also that of their means
 * @throws LitrebarError `input` if there are fewer than two, not equally many, or a series does not vary
 * @source gum-2008, 5.2.2 and 5.2.3
 * @example
 * correlationCoefficient([1, 2, 3], [2, 4, 6]) // => 1
 */
export function correlationCoefficient(first: readonly number[], second: readonly number[]): number {
  requireList('first', first, 2)
  requireList('second', second, 2)
  if (first.length !== second.length) {
    throw new LitrebarError({
      code: 'input',
      argument: 'second',
      value: `${second.length} values beside ${first.length}`,
      expected: 'two series of equal length, at least two values each',
      hint: 'Give the values that were observed together.',
    })
  }
  const a = deviations('first', first)
  const b = deviations('second', second)
  return dot(a, b) / Math.sqrt(dot(a, a) * dot(b, b))
}

function deviations(argument: string, series: readonly number[]): readonly number[] {
  for (const [i, x] of series.entries()) requireWithin(`${argument}[${i}]`, x, anyValue)
  const mean = series.reduce((sum, x) => sum + x, 0) / series.length
  const from = series.map((x) => x - mean)
  if (from.some((x) => x > 0)) return from
  throw new LitrebarError({
    code: 'input',
    argument,
    value: 'without variation',
    expected: 'finite values that vary',
    hint: 'A series that never changes goes with nothing.',
  })
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, x, i) => sum + x * (b[i] as number), 0)
}
