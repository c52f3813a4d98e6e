import { LitrebarError, requireKeys } from '../errors/index.ts'
import { type Accepted, one, type PlainNumber, requireWithin } from '../units/index.ts'
import { type InputRanges, requireRanges } from './design.ts'
import { seededRandom } from './random.ts'
import { requireFunction } from './require-function.ts'
import { sobolSequence } from './sobol-sequence.ts'
import { requireWhole } from './whole.ts'

/** How much of the variance of a result an input causes. */
export interface SobolIndex<Name extends string = string> {
  readonly input: Name
  /** By itself: how much of the variance would go if the input were known. */
  readonly first: number
  readonly firstUncertainty: number
  /** With all that it does together with others: how much would stay if all others were known. 0: the input does not matter. */
  readonly total: number
  readonly totalUncertainty: number
}

/** The indices of all inputs, and the result over the ranges. */
export interface SobolIndices<Name extends string = string> {
  readonly mean: number
  readonly variance: number
  readonly indices: readonly SobolIndex<Name>[]
  /** How often the function was worked out. */
  readonly evaluations: number
}

const countRange: Accepted = { atLeast: 16, atMost: 1e7, unit: one, hint: 'Take a power of two, 4096 for two figures.' }
const resamples = 200
const mostInputs = 10

/**
 * Which inputs matter, alone and together: first-order and total Sobol indices of any function over ranges of its inputs, which vary
 * evenly and independently. Standard uncertainties by drawing the rows again.
 *
 * @param fn - any function of the named inputs; it gets one record that is filled anew each time, so it must not keep it
 * @param ranges - lowest and highest value of each of at most 10 inputs
 * @param options - base rows, best a power of two: the function is worked out (inputs + 2) times as often; seed
 * @returns mean, variance and the indices
 * @throws LitrebarError `range` or `input`; what `fn` throws
 * @source saltelli-2010, table 2 (b) for first order and (f) for total
 * @example
 * const ranges = { rate: { from: 10, to: 30 }, depth: { from: 20, to: 21 } }
 * const { indices } = sobolIndices(({ rate, depth }) => rate * (1 + depth / 10), ranges, { count: 1024, seed: 1 })
 * indices.map(({ input, total }) => `${input} ${total.toFixed(2)}`) // => ['rate 1.00', 'depth 0.00']
 */
export function sobolIndices<Name extends string>(
  fn: (values: Readonly<Record<Name, number>>) => number,
  ranges: InputRanges<Name>,
  options: { readonly count: PlainNumber; readonly seed: PlainNumber },
): SobolIndices<Name> {
  requireKeys('options', options, { count: true, seed: true })
  const { count, seed } = options
  requireWithin('options.count', count, countRange)
  requireWhole('options.count', count)
  requireWhole('options.seed', seed)
  requireFunction('fn', fn)
  const names = requireRanges(ranges)
  if (names.length > mostInputs) throw tooMany(names.length)
  const random = seededRandom(seed)
  const points = sobolSequence({ dimensions: 2 * names.length, count }).map((column) => shifted(column, random()))
  const [base, other] = [points.slice(0, names.length), points.slice(names.length)]
  const values = {} as Record<Name, number>
  const resultsOf = (columnOf: (input: number) => Float64Array): Float64Array =>
    Float64Array.from({ length: count }, (_, row) => {
      names.forEach((name, input) => {
        const { from, to } = ranges[name]
        values[name] = from + (to - from) * (columnOf(input)[row] as number)
      })
      return requireFinite(fn(values))
    })
  const column = (columns: readonly Float64Array[], input: number): Float64Array => columns[input] as Float64Array
  const a = resultsOf((input) => column(base, input))
  const b = resultsOf((input) => column(other, input))
  const draws = Array.from({ length: resamples }, () =>
    Int32Array.from({ length: count }, () => Math.floor(random() * count)),
  )
  const all = Int32Array.from({ length: count }, (_, row) => row)
  const { mean, variance } = momentsOf(a, b, all)
  const indices = names.map((input, place) => {
    const mixed = resultsOf((each) => column(each === place ? other : base, each))
    const drawn = draws.map((rows) => indexOf(a, b, mixed, rows))
    const { first, total } = indexOf(a, b, mixed, all)
    return {
      input,
      first,
      firstUncertainty: deviation(drawn.map((each) => each.first)),
      total,
      totalUncertainty: deviation(drawn.map((each) => each.total)),
    }
  })
  return { mean, variance, indices, evaluations: (names.length + 2) * count }
}

/** Moved by a random distance around the circle, which keeps it even and takes the first point out of the corner. */
function shifted(column: Float64Array, by: number): Float64Array {
  return column.map((value) => (value + by) % 1)
}

function momentsOf(
  a: Float64Array,
  b: Float64Array,
  rows: Int32Array,
): { readonly mean: number; readonly variance: number } {
  const start = a[0] as number // sums about a value that is met, so that a small spread about a large one is not lost
  let sum = 0
  let squares = 0
  for (const row of rows) {
    const [x, y] = [(a[row] as number) - start, (b[row] as number) - start]
    sum += x + y
    squares += x * x + y * y
  }
  const mean = sum / (2 * rows.length)
  return { mean: start + mean, variance: squares / (2 * rows.length) - mean * mean }
}

function indexOf(
  a: Float64Array,
  b: Float64Array,
  mixed: Float64Array,
  rows: Int32Array,
): { readonly first: number; readonly total: number } {
  const { mean, variance } = momentsOf(a, b, rows)
  let first = 0
  let total = 0
  for (const row of rows) {
    const change = (mixed[row] as number) - (a[row] as number)
    first += ((b[row] as number) - mean) * change
    total += change * change
  }
  if (!(variance > 0)) return { first: 0, total: 0 }
  return { first: first / rows.length / variance, total: total / (2 * rows.length) / variance }
}

function deviation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1))
}

function tooMany(count: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'ranges',
    value: `${count} inputs`,
    expected: `1 to ${mostInputs} inputs`,
    hint: 'Hold the inputs that matter least at one value.',
  })
}

function requireFinite(result: number): number {
  if (result - result === 0) return result
  throw new LitrebarError({
    code: 'range',
    argument: 'fn(inputs)',
    value: String(result),
    expected: 'a finite number everywhere in the ranges',
    hint: 'Narrow the ranges to where the function has a value.',
  })
}
