import { LitrebarError, requireKeys } from '../errors/index.ts'
import { type Accepted, one, type PlainNumber, requireWithin } from '../units/index.ts'
import { seededRandom } from './random.ts'
import { sobolSequence } from './sobol-sequence.ts'
import { requireWhole } from './whole.ts'

/** Inputs by name, each from a lowest to a highest value. */
export type InputRanges<Name extends string = string> = Readonly<
  Record<Name, { readonly from: number; readonly to: number }>
>

/** Rows of inputs, one column a name: what the functions named `…Into` read. */
export type DesignColumns<Name extends string = string> = Readonly<Record<Name, Float64Array>>

const countRange: Accepted = { atLeast: 1, atMost: 1e8, unit: one, hint: 'A hundred million rows at most.' }
const anyNumber: Accepted = { atLeast: -1e300, atMost: 1e300, unit: one, hint: 'Give a finite number.' }

/**
 * Every combination of evenly spaced values, the last input running fastest.
 *
 * @param ranges - lowest and highest value of each input and how many values, both ends among them; one value is the lowest
 * @returns the columns
 * @throws LitrebarError `range` or `input`
 * @source common-practice
 * @example
 * [...gridDesign({ a: { from: 0, to: 1, count: 2 }, b: { from: 5, to: 7, count: 3 } }).b] // => [5, 6, 7, 5, 6, 7]
 */
export function gridDesign<Name extends string>(
  ranges: Readonly<Record<Name, { readonly from: number; readonly to: number; readonly count: PlainNumber }>>,
): DesignColumns<Name> {
  const names = requireRanges(ranges, { from: true, to: true, count: true })
  for (const name of names) requireCount(`ranges.${name}.count`, ranges[name].count)
  const count = names.reduce((product, name) => product * ranges[name].count, 1)
  requireCount('rows', count)
  let repeat = count
  return columnsOf(names, (name) => {
    const { from, to, count: values } = ranges[name]
    repeat /= values
    const each = repeat
    return Float64Array.from({ length: count }, (_, row) => {
      const place = Math.floor(row / each) % values
      return values === 1 ? from : place === values - 1 ? to : from + ((to - from) * place) / (values - 1)
    })
  })
}

/**
 * Random rows, even over every range and independent of one another.
 *
 * @param ranges - lowest and highest value of each input
 * @param options - how many rows, and the seed: the same one gives the same rows
 * @returns the columns
 * @throws LitrebarError `range` or `input`
 * @source common-practice
 * @example
 * randomDesign({ a: { from: 2, to: 3 } }, { count: 5, seed: 1 }).a.every((a) => a > 2 && a < 3) // => true
 */
export function randomDesign<Name extends string>(
  ranges: InputRanges<Name>,
  options: { readonly count: PlainNumber; readonly seed: PlainNumber },
): DesignColumns<Name> {
  const names = checked(ranges, options)
  const random = seededRandom(options.seed)
  return columnsOf(names, (name) => stretched(ranges[name], options.count, () => random()))
}

/**
 * A Latin hypercube: each range is cut into as many slices as there are rows, and every slice of every input is met exactly once.
 *
 * @param ranges - lowest and highest value of each input
 * @param options - how many rows, and the seed
 * @returns the columns
 * @throws LitrebarError `range` or `input`
 * @source mckay-1979
 * @example
 * const { a } = latinHypercube({ a: { from: 0, to: 4 } }, { count: 4, seed: 1 })
 * Array.from(a).map(Math.floor).sort() // => [0, 1, 2, 3]
 */
export function latinHypercube<Name extends string>(
  ranges: InputRanges<Name>,
  options: { readonly count: PlainNumber; readonly seed: PlainNumber },
): DesignColumns<Name> {
  const names = checked(ranges, options)
  const { count } = options
  const random = seededRandom(options.seed)
  return columnsOf(names, (name) => {
    const slices = Float64Array.from({ length: count }, (_, row) => row)
    for (let row = count - 1; row > 0; row--) {
      const other = Math.floor(random() * (row + 1))
      const held = slices[row] as number
      slices[row] = slices[other] as number
      slices[other] = held
    }
    return stretched(ranges[name], count, (row) => ((slices[row] as number) + random()) / count)
  })
}

/**
 * Rows of the Sobol sequence, the evenest filling: errors of a mean fall nearly with the number of rows, not with its root.
 *
 * @param ranges - lowest and highest value of each input, 20 inputs at most
 * @param options - how many rows, best a power of two; how many to pass over when going on, 0 unless given
 * @returns the columns
 * @throws LitrebarError `range` or `input`
 * @source joe-kuo-2008
 * @example
 * [...sobolDesign({ a: { from: 0, to: 8 } }, { count: 4 }).a] // => [0, 4, 6, 2]
 */
export function sobolDesign<Name extends string>(
  ranges: InputRanges<Name>,
  options: { readonly count: PlainNumber; readonly skip?: PlainNumber },
): DesignColumns<Name> {
  const names = requireRanges(ranges)
  requireKeys('options', options, { count: true, skip: false })
  const points = sobolSequence({ dimensions: names.length, ...options })
  let dimension = 0
  return columnsOf(names, (name) => {
    const column = points[dimension++] as Float64Array
    return stretched(ranges[name], column.length, (row) => column[row] as number)
  })
}

function columnsOf<Name extends string>(
  names: readonly Name[],
  columnOf: (name: Name) => Float64Array,
): DesignColumns<Name> {
  return Object.fromEntries(names.map((name) => [name, columnOf(name)])) as Record<Name, Float64Array>
}

function stretched(
  { from, to }: { readonly from: number; readonly to: number },
  count: number,
  place: (row: number) => number,
): Float64Array {
  return Float64Array.from({ length: count }, (_, row) => from + (to - from) * place(row))
}

function checked<Name extends string>(
  ranges: InputRanges<Name>,
  options: { readonly count: PlainNumber; readonly seed: PlainNumber },
): readonly Name[] {
  requireKeys('options', options, { count: true, seed: true })
  requireCount('options.count', options.count)
  requireWhole('options.seed', options.seed)
  return requireRanges(ranges)
}

function requireCount(argument: string, count: number): void {
  requireWithin(argument, count, countRange)
  requireWhole(argument, count)
}

/**
 * Refuses ranges that are none.
 *
 * @returns the names of the inputs
 */
export function requireRanges<Name extends string>(
  ranges: InputRanges<Name>,
  keys: Readonly<Record<string, boolean>> = { from: true, to: true },
): readonly Name[] {
  const given: unknown = ranges
  const names = (typeof given === 'object' && given !== null ? Object.keys(given) : []) as Name[]
  if (names.length === 0) throw noInputs()
  for (const name of names) {
    const argument = `ranges.${name}`
    requireKeys(argument, ranges[name], keys)
    const { from, to } = ranges[name]
    requireWithin(`${argument}.from`, from, anyNumber)
    requireWithin(`${argument}.to`, to, anyNumber)
    if (!(to >= from)) throw wrongOrder(argument, from, to)
  }
  return names
}

function noInputs(): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'ranges',
    value: 'no inputs',
    expected: 'at least one input by name',
    hint: 'Name each input with its lowest and highest value.',
  })
}

function wrongOrder(argument: string, from: number, to: number): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument,
    value: `${from} to ${to}`,
    expected: 'the lowest value first',
    hint: 'Swap them.',
  })
}
