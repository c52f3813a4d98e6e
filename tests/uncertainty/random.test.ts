import { expect, test } from 'vitest'
import { seededRandom } from '../../src/uncertainty/index.ts'
import { normalDeviates, studentDeviate } from '../../src/uncertainty/random.ts'

const count = 200_000

function moments(next: () => number): { mean: number; variance: number; fourth: number } {
  let sum = 0
  let squares = 0
  let fourths = 0
  for (let k = 0; k < count; k++) {
    const x = next()
    sum += x
    squares += x * x
    fourths += x ** 4
  }
  return { mean: sum / count, variance: squares / count, fourth: fourths / count }
}

test('the same seed gives the same numbers, another seed or stream others', () => {
  const first = seededRandom(7)
  const again = seededRandom(7)
  const numbers = Array.from({ length: 100 }, first)
  expect(Array.from({ length: 100 }, again)).toEqual(numbers)
  for (const other of [seededRandom(8), seededRandom(7, 1), seededRandom(7 + 2 ** 32), seededRandom(-7)]) {
    expect(Array.from({ length: 100 }, other).filter((x) => numbers.includes(x))).toEqual([])
  }
})

test('uniform numbers stay between 0 and 1 and spread evenly', () => {
  const random = seededRandom(1)
  const bins = new Array<number>(64).fill(0)
  let outside = 0
  for (let k = 0; k < count; k++) {
    const x = random()
    if (!(x > 0 && x < 1)) outside++
    const bin = Math.floor(x * 64)
    bins[bin] = (bins[bin] ?? 0) + 1
  }
  expect(outside).toBe(0)
  const expected = count / 64
  const chiSquare = bins.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0)
  // 63 degrees of freedom: 99.9 % of fair generators lie below 103
  expect(chiSquare).toBeLessThan(103)
})

test('neighbouring uniform numbers do not go together', () => {
  const random = seededRandom(3)
  let product = 0
  let last = random() - 0.5
  for (let k = 0; k < count; k++) {
    const next = random() - 0.5
    product += last * next
    last = next
  }
  // standard deviation of the correlation is 1/√n
  expect(Math.abs((12 * product) / count)).toBeLessThan(4 / Math.sqrt(count))
})

test('normal numbers have the moments of the normal distribution', () => {
  const { mean, variance, fourth } = moments(normalDeviates(seededRandom(2)))
  expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(count))
  expect(Math.abs(variance - 1)).toBeLessThan(4 * Math.sqrt(2 / count))
  expect(Math.abs(fourth - 3)).toBeLessThan(4 * Math.sqrt(96 / count))
})

test('Student numbers have the variance of their degrees of freedom, also below 2 in the gamma shape', () => {
  const random = seededRandom(5)
  const normal = normalDeviates(random)
  for (const degreesOfFreedom of [10, 30]) {
    const { mean, variance } = moments(() => studentDeviate(random, normal, degreesOfFreedom))
    expect(Math.abs(mean)).toBeLessThan(0.015)
    expect(variance / (degreesOfFreedom / (degreesOfFreedom - 2))).toBeCloseTo(1, 1)
  }
  // one degree of freedom is Cauchy's distribution: half of all numbers lie within ±1
  let inside = 0
  for (let k = 0; k < count; k++) if (Math.abs(studentDeviate(random, normal, 1)) < 1) inside++
  expect(inside / count).toBeCloseTo(0.5, 2)
})
