import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { decay, exponential, logarithm, logarithmOfOnePlus } from '../../../src/gas-law/equation/exponential.ts'

/** Checks that two functions differ by no more than an allowance, over a range. */
function agrees(
  ours: (x: number) => number,
  engine: (x: number) => number,
  range: { readonly min: number; readonly max: number },
  allowance: (x: number) => number,
): void {
  assert(
    property(double({ ...range, noNaN: true }), (x) => {
      expect(Math.abs(ours(x) - engine(x))).toBeLessThanOrEqual(allowance(x))
    }),
    { numRuns: 3000 },
  )
}

// The engine is within an ulp or so of the truth and we within two or three, so the two meet within 1e-15.
test('exp(-u) agrees with the engine within 1e-15 relative, and ends as 0 at 40', () => {
  agrees(
    decay,
    (u) => Math.exp(-u),
    { min: 0, max: 39.99 },
    (u) => 1e-15 * Math.exp(-u),
  )
  expect(decay(0)).toBe(1)
  expect(decay(40)).toBe(0)
  expect(decay(1e300)).toBe(0)
})

test('exp goes both ways', () => {
  agrees(exponential, Math.exp, { min: -39.99, max: 39.99 }, (x) => 1.5e-15 * Math.exp(x))
})

test('the logarithm agrees with the engine over all sizes of numbers, and best near 1', () => {
  agrees(logarithm, Math.log, { min: 1e-300, max: 1e300 }, (x) => 1e-15 * Math.max(1, Math.abs(Math.log(x))))
  agrees(logarithm, Math.log, { min: 0.5, max: 2 }, () => 3e-16)
})

test('ln(1 + x) keeps its digits where x is small', () => {
  agrees(logarithmOfOnePlus, Math.log1p, { min: -0.03, max: 0.03 }, (x) => 1e-15 * Math.abs(x) + 1e-320)
  agrees(logarithmOfOnePlus, Math.log1p, { min: -0.9, max: 1 }, () => 2e-15)
  expect(logarithmOfOnePlus(1e-17)).toBe(1e-17)
})

test.each([0, -1, Infinity, Number.NaN])('there is no logarithm of %s', (x) => {
  expect(logarithm(x)).toBeNaN()
})

test('exp(-u) has no step where its tables change', () => {
  let largest = 0
  for (let n = 1; n < 1280; n++) {
    const edge = (n + 0.5) / 32
    const apart = 4e-16 * edge
    largest = Math.max(largest, Math.abs(decay(edge + apart) / decay(edge - apart) - 1) - 2 * apart)
  }
  expect(largest).toBeLessThan(2e-14) // apart itself rounds to whole ulps of u, up to 7e-15
})
