import { expect, test } from 'vitest'
import { rateOfNextDive } from '../../../src/consumption/index.ts'
import { inUnit, litrePerMinute, measure } from '../../../src/units/index.ts'

const rates = [14.2, 16.1, 15.0, 17.3, 13.8, 15.6].map((litres) => measure(litres, litrePerMinute))

// engineering vector C12-1 (quantiles of a statistics package)
test('C12-1: six dives give a mean, a two-sided interval and a one-sided bound for the seventh', () => {
  const next = rateOfNextDive(rates, 0.95)
  expect(inUnit(next.mean, litrePerMinute) / 15.33333333333333).toBeCloseTo(1, 9)
  expect(inUnit(next.standardDeviation, litrePerMinute) / 1.2863384728238008).toBeCloseTo(1, 9)
  const half = (next.meanInterval.high - next.meanInterval.low) / 2 / litrePerMinute.factor
  expect(half / 1.3499294383506688).toBeCloseTo(1, 9)
  expect(inUnit(next.upperPredictionBound, litrePerMinute) / 18.133050306270164).toBeCloseTo(1, 9)
  expect(next.count).toBe(6)
})

test('one dive, or a rate of zero, is refused', () => {
  expect(() => rateOfNextDive(rates.slice(0, 1), 0.95)).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => rateOfNextDive([...rates, measure(0, litrePerMinute)], 0.95)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'rates[6]' }),
  )
})
