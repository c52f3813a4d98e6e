import { expect, test } from 'vitest'
import {
  assessAgreement,
  correlationCoefficient,
  meanInterval,
  meanOfReadings,
  observationsOf,
  seededRandom,
  slopeUncertainty,
  upperPredictionBound,
} from '../../src/uncertainty/index.ts'
import { normalDeviates } from '../../src/uncertainty/random.ts'
import { measure, second } from '../../src/units/index.ts'

// engineering vector C12-1
test('C12-1: six rates have a mean, an interval for it and a much higher bound for the next one', () => {
  const rates = observationsOf([14.2, 16.1, 15.0, 17.3, 13.8, 15.6])
  expect(rates.mean / 15.33333333333333).toBeCloseTo(1, 9)
  expect(rates.standardDeviation / 1.2863384728238008).toBeCloseTo(1, 9)
  expect(meanInterval(rates, 0.95).halfWidth / 1.3499294383506688).toBeCloseTo(1, 9)
  expect(upperPredictionBound(rates, 0.95) / 18.133050306270164).toBeCloseTo(1, 9)
  expect(upperPredictionBound(rates, 0.95)).toBeGreaterThan(meanInterval(rates, 0.95).high)
})

test('the prediction bound holds for 95 of 100 next readings, the end of the interval of the mean for far fewer', () => {
  const normal = normalDeviates(seededRandom(17))
  const rounds = 20_000
  let below = 0
  let belowMeanEnd = 0
  for (let k = 0; k < rounds; k++) {
    const past = observationsOf(Array.from({ length: 6 }, () => 15 + 1.3 * normal()))
    const next = 15 + 1.3 * normal()
    if (next < upperPredictionBound(past, 0.95)) below++
    if (next < meanInterval(past, 0.95).high) belowMeanEnd++
  }
  expect(below / rounds).toBeCloseTo(0.95, 2)
  expect(belowMeanEnd / rounds).toBeLessThan(0.85)
})

test('the mean of readings is an input with n - 1 degrees of freedom', () => {
  expect(meanOfReadings([1, 2, 3])).toEqual({
    shape: 'student',
    value: 2,
    standardUncertainty: 1 / Math.sqrt(3),
    degreesOfFreedom: 2,
  })
})

test('one reading, or a missing one, is refused', () => {
  expect(() => observationsOf([15])).toThrow(expect.objectContaining({ code: 'input', argument: 'readings' }))
  expect(() => observationsOf([15, Number.NaN])).toThrow(expect.objectContaining({ argument: 'readings[1]' }))
})

test('a series goes fully with itself and fully against its negative', () => {
  const series = [3, 1, 4, 1, 5]
  expect(correlationCoefficient(series, series)).toBeCloseTo(1, 14)
  expect(
    correlationCoefficient(
      series,
      series.map((x) => -x),
    ),
  ).toBeCloseTo(-1, 14)
  expect(() => correlationCoefficient([1, 1], [1, 2])).toThrow(expect.objectContaining({ argument: 'first' }))
  expect(() => correlationCoefficient([1, 2], [1, 2, 3])).toThrow(/equal length/)
})

// engineering vectors I9-1, I9-2, I9-3
test.each([
  { u: 0.05, interval: 1, count: 2, perMinute: 4.242640687119285 },
  { u: 0.05, interval: 1, count: 10, perMinute: 0.3302891295379082 },
  { u: 0.1, interval: 2, count: 30, perMinute: 0.06328071892930044 },
])('a rate from $count depths with $u m of noise is known to $perMinute m/min', ({ u, interval, count, perMinute }) => {
  const perSecond = slopeUncertainty({ standardUncertainty: u, interval: measure(interval, second), count })
  expect((perSecond * 60) / perMinute).toBeCloseTo(1, 12)
})

test('a rate needs two readings and time between them', () => {
  const noise = { standardUncertainty: 0.05, interval: measure(1, second), count: 1 }
  expect(() => slopeUncertainty(noise)).toThrow(expect.objectContaining({ argument: 'readings.count' }))
  const atOnce = { ...noise, count: 2, interval: measure(0, second) }
  expect(() => slopeUncertainty(atOnce)).toThrow(expect.objectContaining({ argument: 'readings.interval' }))
})

// engineering vectors I10-1, I10-2
test('two depths half a metre apart agree with uncertainties of 0.5 and 0.6 m, not with 0.2 m each', () => {
  const near = assessAgreement({ value: 30.4, expandedUncertainty: 0.5 }, { value: 29.9, expandedUncertainty: 0.6 })
  expect(near.value / 0.6401843996644799).toBeCloseTo(1, 12)
  expect(near.verdict).toBe('within')
  const apart = assessAgreement({ value: 30.4, expandedUncertainty: 0.2 }, { value: 29.9, expandedUncertainty: 0.2 })
  expect(apart.value / 1.7677669529663689).toBeCloseTo(1, 12)
  expect(apart.verdict).toBe('beyond')
  expect(apart.margin).toBeLessThan(0)
})
