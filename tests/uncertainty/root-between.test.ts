import { expect, test } from 'vitest'
import { closedIn, rootBetween } from '../../src/uncertainty/root-between.ts'

test.each<[string, (x: number) => number, readonly [number, number], number]>([
  ['a parabola', (x) => x * x - 2, [0, 2], Math.SQRT2],
  ['a falling one, its ends exchanged', (x) => 2 - x * x, [2, 0], Math.SQRT2],
  ['an exponential that is flat at one end', (x) => Math.exp(x) - 1e9, [-50, 50], Math.log(1e9)],
  ['a ninth power, along which straight steps creep', (x) => x ** 9 - 1e-9, [0, 10], 0.1],
  ['a root at an end', (x) => x - 3, [3, 5], 3],
])('%s is zero where it is', (_, of, bracket, root) => {
  expect(rootBetween(of, bracket, 1e-14, 'x') / root).toBeCloseTo(1, 13)
})

test('a smooth function is asked for a dozen values at most', () => {
  let values = 0
  const counted = (x: number): number => {
    values++
    return Math.exp(x) - 2
  }
  rootBetween(counted, [0, 1], 1e-14, 'x')
  expect(values).toBeLessThanOrEqual(12)
})

test('no change of sign and no value on the way are refused by the name of what is sought', () => {
  const refusal = expect.objectContaining({ code: 'not-converged', argument: 'pressure' })
  expect(() => rootBetween((x) => x * x + 1, [-1, 1], 1e-14, 'pressure')).toThrow(refusal)
  expect(() => rootBetween((x) => (x > 0.3 && x < 1 ? Number.NaN : x - 0.5), [0, 1], 1e-14, 'pressure')).toThrow(
    refusal,
  )
})

test('a bracket closes on a jump too, and its ends show that it is one', () => {
  const { low, high, atLow, atHigh, isClosed } = closedIn(
    (x) => (x < 0.3 ? -1 : 2),
    { low: 0, atLow: -1, high: 1, atHigh: 2 },
    0,
  )
  expect(isClosed).toBe(true)
  expect(Math.abs(high - low)).toBeLessThan(1e-16)
  expect([atLow, atHigh].sort()).toEqual([-1, 2])
})
