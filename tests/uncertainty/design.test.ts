import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  gridDesign,
  latinHypercube,
  randomDesign,
  sobolDesign,
  sobolIndices,
  sobolSequence,
  summaryOf,
} from '../../src/uncertainty/index.ts'

test('the first points of the Sobol sequence are the published ones', () => {
  // Joe and Kuo, Notes on generating Sobol sequences: the first ten points in three dimensions
  const columns = sobolSequence({ dimensions: 3, count: 10 })
  const points = Array.from({ length: 10 }, (_, row) => columns.map((column) => column[row]))
  expect(points).toEqual([
    [0, 0, 0],
    [0.5, 0.5, 0.5],
    [0.75, 0.25, 0.25],
    [0.25, 0.75, 0.75],
    [0.375, 0.375, 0.625],
    [0.875, 0.875, 0.125],
    [0.625, 0.125, 0.875],
    [0.125, 0.625, 0.375],
    [0.1875, 0.3125, 0.9375],
    [0.6875, 0.8125, 0.4375],
  ])
})

test('every power of two of Sobol points has one in each slice of each of twenty dimensions', () => {
  for (const count of [1, 2, 16, 1024]) {
    for (const column of sobolSequence({ dimensions: 20, count })) {
      expect(new Set(column.map((value) => Math.floor(value * count))).size).toBe(count)
    }
  }
})

test('every half of every dimension meets every half of all others: property A, for 1 to 20 dimensions', () => {
  // Joe and Kuo 2008 state it of their numbers: the first bits of the direction numbers are an invertible matrix
  const rows = Array.from({ length: 20 }, (_, bit) => {
    const point = sobolSequence({ dimensions: 20, count: 1, skip: 2 ** (bit + 1) - 1 })
    return point.map(([value = 0]) => (value >= 0.5 ? 1 : 0))
  })
  for (let size = 1; size <= 20; size++) {
    const matrix = rows.slice(0, size).map((row) => row.slice(0, size).reduce<number>((word, bit) => 2 * word + bit, 0))
    expect(rankOf(matrix)).toBe(size)
  }
})

/** Rank of a matrix of bits, a word a row. */
function rankOf(words: readonly number[]): number {
  const basis: number[] = []
  for (const word of words) {
    const rest = basis.reduce((left, known) => Math.min(left, left ^ known), word)
    if (rest !== 0) basis.push(rest)
  }
  return basis.length
}

test('the sequence goes on anywhere', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 1, max: 50 }), (skip, count) => {
      const [whole] = sobolSequence({ dimensions: 7, count: skip + count }).slice(6)
      const [part] = sobolSequence({ dimensions: 7, count, skip }).slice(6)
      expect(part).toEqual(whole?.slice(skip))
    }),
    { numRuns: 30 },
  )
})

const ranges = { a: { from: -1, to: 3 }, b: { from: 5, to: 5.5 } }

test('a Latin hypercube meets every slice once, and only the seed decides', () => {
  const count = 1000
  const columns = latinHypercube(ranges, { count, seed: 4 })
  for (const [name, { from, to }] of Object.entries(ranges)) {
    const slices = columns[name as 'a'].map((value) => Math.floor(((value - from) / (to - from)) * count))
    expect(new Set(slices).size).toBe(count)
  }
  expect(latinHypercube(ranges, { count, seed: 4 })).toEqual(columns)
  expect(latinHypercube(ranges, { count, seed: 5 })).not.toEqual(columns)
  const { a, b } = columns
  const product = summaryOf(a.map((value, row) => (value - 1) * ((b[row] ?? 0) - 5.25)))
  expect(Math.abs(product.mean)).toBeLessThan((4 * (product.standardDeviation ?? 0)) / Math.sqrt(count))
})

test('random rows have the moments of an even distribution', () => {
  const count = 100_000
  const { a } = randomDesign(ranges, { count, seed: 3 })
  const { mean, standardDeviation, lowest, highest } = summaryOf(a)
  const spread = 4 / Math.sqrt(12)
  expect(Math.abs(mean - 1)).toBeLessThan((4 * spread) / Math.sqrt(count))
  expect((standardDeviation ?? 0) / spread).toBeCloseTo(1, 2)
  expect(lowest).toBeGreaterThan(-1)
  expect(highest).toBeLessThan(3)
})

test('a grid has every combination once, with both ends', () => {
  const grid = gridDesign({
    a: { from: 0, to: 1, count: 3 },
    b: { from: 2, to: 9, count: 1 },
    c: { from: 1, to: 2, count: 2 },
  })
  expect([...grid.a]).toEqual([0, 0, 0.5, 0.5, 1, 1])
  expect([...grid.b]).toEqual([2, 2, 2, 2, 2, 2])
  expect([...grid.c]).toEqual([1, 2, 1, 2, 1, 2])
})

test('a Sobol design finds a mean far closer than random rows do', () => {
  const unit = { x: { from: 0, to: 1 }, y: { from: 0, to: 1 } }
  const meanOf = ({ x, y }: { x: Float64Array; y: Float64Array }): number =>
    summaryOf(x.map((value, row) => value * (y[row] ?? 0))).mean
  expect(Math.abs(meanOf(sobolDesign(unit, { count: 4096 })) - 0.25)).toBeLessThan(5e-4)
  expect(Math.abs(meanOf(randomDesign(unit, { count: 4096, seed: 1 })) - 0.25)).toBeGreaterThan(5e-4)
})

test('Sobol indices of the Ishigami function are the exact ones within their stated uncertainty', () => {
  // Ishigami and Homma 1990, a = 7, b = 0.1: variances by the integrals
  const [a, b] = [7, 0.1]
  const ofFirst = 0.5 * (1 + (b * Math.PI ** 4) / 5) ** 2
  const ofSecond = a ** 2 / 8
  const ofBoth = (b ** 2 * Math.PI ** 8 * 8) / 225
  const all = ofFirst + ofSecond + ofBoth
  const exact = [
    [ofFirst / all, (ofFirst + ofBoth) / all], // 0.3139, 0.5576
    [ofSecond / all, ofSecond / all], // 0.4424, 0.4424
    [0, ofBoth / all], // 0, 0.2437
  ] as const
  const range = { from: -Math.PI, to: Math.PI }
  const { indices, mean, variance, evaluations } = sobolIndices(
    ({ x, y, z }) => Math.sin(x) + a * Math.sin(y) ** 2 + b * z ** 4 * Math.sin(x),
    { x: range, y: range, z: range },
    { count: 8192, seed: 7 },
  )
  expect(evaluations).toBe(5 * 8192)
  expect(mean).toBeCloseTo(a / 2, 1)
  expect(variance / all).toBeCloseTo(1, 1)
  indices.forEach(({ first, firstUncertainty, total, totalUncertainty }, place) => {
    const [wantedFirst, wantedTotal] = exact[place] ?? [0, 0]
    expect(Math.abs(first - wantedFirst)).toBeLessThan(3 * firstUncertainty)
    expect(Math.abs(total - wantedTotal)).toBeLessThan(3 * totalUncertainty)
    expect(firstUncertainty).toBeLessThan(0.03)
    expect(totalUncertainty).toBeLessThan(0.02)
  })
})

test('a summary is that of the same values by hand', () => {
  // 1 to 5: mean 3, variance 2.5; the quarter of definition 7 is the second value
  const { mean, standardDeviation, quantiles, missing, count } = summaryOf(
    Float64Array.of(5, 1, Number.NaN, 4, 2, 3),
    [0, 0.25, 0.6, 1],
  )
  expect([count, missing, mean]).toEqual([5, 1, 3])
  expect((standardDeviation ?? 0) ** 2).toBeCloseTo(2.5, 12)
  expect(quantiles[0]).toBe(1)
  expect(quantiles[1]).toBe(2)
  expect(quantiles[2]).toBeCloseTo(3.4, 12)
  expect(quantiles[3]).toBe(5)
  expect(summaryOf(Float64Array.of(1e9, 1e9 + 2)).standardDeviation).toBeCloseTo(Math.SQRT2, 9)
  expect(summaryOf(Float64Array.of(7)).standardDeviation).toBeUndefined()
})

test.each([
  [() => sobolSequence({ dimensions: 21, count: 1 }), 'dimensions'],
  [() => sobolSequence({ dimensions: 2, count: 1.5 }), 'count'],
  [() => sobolSequence({ dimensions: 2, count: 4, skipp: 1 } as never), 'skip'],
  [() => latinHypercube({}, { count: 4, seed: 1 }), 'at least one input'],
  [() => latinHypercube({ a: { from: 2, to: 1 } }, { count: 4, seed: 1 }), 'lowest value first'],
  [() => randomDesign({ a: { from: 0, to: Number.NaN } }, { count: 4, seed: 1 }), 'ranges.a.to'],
  [() => gridDesign({ a: { from: 0, to: 1, count: 1e5 }, b: { from: 0, to: 1, count: 1e5 } }), 'rows'],
  [() => sobolIndices(() => Number.NaN, { a: { from: 0, to: 1 } }, { count: 16, seed: 1 }), 'fn(inputs)'],
  [() => sobolIndices(() => 1, {}, { count: 16, seed: 1 }), 'at least one input'],
  [() => summaryOf(Float64Array.of(1, Number.POSITIVE_INFINITY)), 'column'],
  [() => summaryOf(Float64Array.of(1), [2]), 'quantiles[0]'],
  [() => summaryOf(Float64Array.of(Number.NaN)), 'at least one number'],
])('bad input is refused with its name: %#', (call, words) => {
  expect(call).toThrow(words)
})
