import { requireKeys } from '../errors/index.ts'
import { type Accepted, one, type PlainNumber, requireWithin } from '../units/index.ts'
import { sobolDimensions } from './sobol-sequence.table.ts'
import { requireWhole } from './whole.ts'

const bits = 32
const perWord = 2 ** -bits

const dimensionRange: Accepted = { atLeast: 1, atMost: 20, unit: one, hint: 'Twenty inputs at most.' }
const countRange: Accepted = { atLeast: 1, atMost: 1e8, unit: one, hint: 'Take a power of two.' }
const skipRange: Accepted = { atLeast: 0, atMost: 1e9, unit: one, hint: 'Go on where the last points ended.' }

/**
 * The Sobol sequence: points that fill a unit cube far more evenly than random ones. A power of two of them from the start is
 * evenest; its first point is the corner at 0.
 *
 * @param options - number of dimensions, 1 to 20; number of points; how many to pass over, 0 unless given
 * @returns one column a dimension, values from 0 to below 1
 * @throws LitrebarError `range`
 * @source joe-kuo-2008, direction numbers and recurrence
 * @example
 * sobolSequence({ dimensions: 2, count: 4 }).map((column) => [...column])
 * // => [[0, 0.5, 0.75, 0.25], [0, 0.5, 0.25, 0.75]]
 */
export function sobolSequence(options: {
  readonly dimensions: PlainNumber
  readonly count: PlainNumber
  readonly skip?: PlainNumber
}): readonly Float64Array[] {
  requireKeys('options', options, { dimensions: true, count: true, skip: false })
  const { dimensions, count, skip = 0 } = options
  requireWithin('options.dimensions', dimensions, dimensionRange)
  requireWithin('options.count', count, countRange)
  requireWithin('options.skip', skip, skipRange)
  requireWhole('options.dimensions', dimensions)
  requireWhole('options.count', count)
  requireWhole('options.skip', skip)
  return Array.from({ length: dimensions }, (_, dimension) => {
    const directions = directionsOf(dimension)
    let word = wordAt(directions, skip)
    const column = new Float64Array(count)
    for (let point = 0; point < count; point++) {
      column[point] = (word >>> 0) * perWord
      word ^= directions[trailingOnes(skip + point)] as number
    }
    return column
  })
}

/** The word of a point anywhere in the sequence: directions where its Gray code has bits. */
function wordAt(directions: Int32Array, point: number): number {
  let gray = (point ^ (point >>> 1)) >>> 0
  let word = 0
  for (let bit = 0; gray !== 0; bit++, gray >>>= 1) if (gray & 1) word ^= directions[bit] as number
  return word
}

function trailingOnes(n: number): number {
  return 31 - Math.clz32(~n & (n + 1))
}

function directionsOf(dimension: number): Int32Array {
  const directions = new Int32Array(bits)
  if (dimension === 0) {
    for (let bit = 0; bit < bits; bit++) directions[bit] = 1 << (bits - 1 - bit)
    return directions
  }
  const [polynomial = 0, ...first] = sobolDimensions[dimension - 1] ?? []
  const degree = first.length
  for (let bit = 0; bit < bits; bit++) {
    if (bit < degree) {
      directions[bit] = (first[bit] as number) << (bits - 1 - bit)
      continue
    }
    const back = directions[bit - degree] as number
    let direction = back ^ (back >>> degree)
    for (let k = 1; k < degree; k++) {
      if ((polynomial >> (degree - 1 - k)) & 1) direction ^= directions[bit - k] as number
    }
    directions[bit] = direction
  }
  return directions
}
