import { expect, test } from 'vitest'
import { coverageFactor, normalQuantile, studentQuantile } from '../../src/uncertainty/index.ts'

test('the normal quantile agrees with tabled digits', () => {
  // memory of standard tables: 0.5, 0.95, 0.975, 0.995, 0.9999
  expect(normalQuantile(0.5)).toBe(0)
  expect(normalQuantile(0.95)).toBeCloseTo(1.6448536269514722, 13)
  expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 13)
  expect(normalQuantile(0.995)).toBeCloseTo(2.5758293035489004, 13)
  expect(normalQuantile(0.0001)).toBeCloseTo(-3.7190164854556804, 12)
})

test('one and two degrees of freedom agree with their closed forms', () => {
  for (const p of [0.6, 0.75, 0.9, 0.975, 0.995, 0.9999]) {
    expect(studentQuantile(p, 1) / Math.tan(Math.PI * (p - 0.5))).toBeCloseTo(1, 11)
    const a = 4 * p * (1 - p)
    expect(studentQuantile(p, 2) / (2 * (p - 0.5) * Math.sqrt(2 / a))).toBeCloseTo(1, 12)
  }
})

test('four degrees of freedom agree with their closed form', () => {
  for (const p of [0.6, 0.9, 0.975, 0.999]) {
    const a = Math.sqrt(4 * p * (1 - p))
    const q = Math.cos(Math.acos(a) / 3) / a
    expect(studentQuantile(p, 4) / (2 * Math.sqrt(q - 1))).toBeCloseTo(1, 12)
  }
})

test('the quantile is continuous where the expansion about the normal distribution takes over', () => {
  for (const p of [0.9, 0.975, 0.999, 0.999999]) {
    const below = studentQuantile(p, 1000)
    const above = studentQuantile(p, 1000.0000001)
    expect(Math.abs(below / above - 1)).toBeLessThan(2e-10)
  }
  expect(studentQuantile(0.975, Infinity)).toBe(normalQuantile(0.975))
})

test('the quantile is antisymmetric about one half', () => {
  expect(studentQuantile(0.1, 7)).toBe(-studentQuantile(0.9, 7))
  expect(studentQuantile(0.5, 7)).toBe(0)
})

test('a one-sided bound lies nearer than the end of a two-sided interval of the same share', () => {
  const two = coverageFactor({ probability: 0.95, degreesOfFreedom: 10, sides: 'two' })
  const one = coverageFactor({ probability: 0.95, degreesOfFreedom: 10, sides: 'one' })
  expect(one).toBeLessThan(two)
  expect(one).toBeCloseTo(studentQuantile(0.95, 10), 12)
})

test('a share of one or more, or degrees of freedom of zero, is refused', () => {
  expect(() => studentQuantile(1, 5)).toThrow(expect.objectContaining({ code: 'range', argument: 'p' }))
  expect(() => studentQuantile(Number.NaN, 5)).toThrow(expect.objectContaining({ code: 'range' }))
  expect(() => studentQuantile(0.9, 0)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'degreesOfFreedom' }),
  )
  expect(() => coverageFactor({ probability: 95, degreesOfFreedom: 5, sides: 'two' })).toThrow(/0.95/)
})
