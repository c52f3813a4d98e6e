import { expect, test } from 'vitest'
import { normalGravity, standardGravity } from '../../src/environment/index.ts'
import { altitudeOf, degree, depthOf, measure, metre, radian } from '../../src/units/index.ts'

// teos-10, gsw_grav at the sea surface, worked out by another program to 1e-6
test.each([
  [0, 9.780327],
  [15, 9.783787],
  [30, 9.793249],
  [45, 9.8062],
  [60, 9.819179],
  [75, 9.828698],
  [80, 9.830616],
  [90, 9.832186],
])('gravity at %d° and sea level is %d m/s²', (latitude, expected) => {
  expect(Math.abs(normalGravity({ latitude: measure(latitude, degree) }) - expected)).toBeLessThanOrEqual(5.1e-7)
})

test('north and south are alike', () => {
  const north = normalGravity({ latitude: measure(0.8, radian) })
  expect(normalGravity({ latitude: measure(-0.8, radian) })).toBe(north)
})

test('gravity falls with altitude and grows with depth in the sea', () => {
  const latitude = measure(45, degree)
  const surface = normalGravity({ latitude })
  expect(normalGravity({ latitude, altitude: altitudeOf(2000, metre) })).toBeLessThan(surface - 0.006)
  expect(normalGravity({ latitude, depth: depthOf(2000, metre) })).toBeGreaterThan(surface + 0.004)
})

test('standard gravity is exact', () => {
  expect(standardGravity).toBe(9.80665)
})

test('a latitude beyond the pole, or in degrees read as radians, is refused', () => {
  expect(() => normalGravity({ latitude: measure(91, degree) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'latitude', expected: 'at least -90 and at most 90 °' }),
  )
  expect(() => normalGravity({ latitude: measure(45, radian) })).toThrow(expect.objectContaining({ code: 'range' }))
  expect(() => normalGravity({ latitude: measure(45, degree), depth: depthOf(20_000, metre) })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'depth' }),
  )
})

test('altitude and depth together do not compile', () => {
  const latitude = measure(45, degree)
  // @ts-expect-error a place is either above or below sea level
  normalGravity({ latitude, altitude: altitudeOf(1, metre), depth: depthOf(1, metre) })
  expect(normalGravity({ latitude, depth: depthOf(1, metre) })).toBeGreaterThan(9.8)
})
