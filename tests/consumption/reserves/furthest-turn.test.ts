import { assert, double, integer, property, record } from 'fast-check'
import { expect, test } from 'vitest'
import { furthestTurn } from '../../../src/consumption/index.ts'
import { gerg2008GasConstant } from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  inUnit,
  litrePerMinute,
  measure,
  minute,
  temperatureOf,
} from '../../../src/units/index.ts'
import { breathed } from '../given.ts'

const options = {
  gas: 'ideal',
  ambientPressure: absolute(1, bar),
  breathingGasTemperature: temperatureOf(15, celsius),
  fraction: 1 / 3,
  gaugeZero: absolute(1, bar),
  show: { unit: bar, step: 5 },
} as const

function consumer(litres: number, bars: number, rate: number) {
  // the gas above the 1 bar that stays
  return { ...breathed(litres, bars + 1, 1), respiratoryMinuteVolume: measure(rate, litrePerMinute) }
}

function barLitres(moles: number): number {
  return (moles * gerg2008GasConstant * 288.15) / 100
}

// engineering vectors C6-1, C6-2, C6-3: at 1 bar litres are bar·litres
test.each([
  { a: [24, 20], b: [24, 20], turn: 80, useA: 1600, useB: 1600 },
  { a: [24, 15], b: [24, 25], turn: 73.84615384615384, useA: 1107.6923076923076, useB: 1846.153846153846 },
  { a: [24, 20], b: [18, 20], turn: 60, useA: 1200, useB: 1200 },
] as const)('C6: $a and $b (L at 200 bar, L/min) turn after $turn min at the latest', ({ a, b, turn, useA, useB }) => {
  const { turnTime, turns } = furthestTurn([consumer(a[0], 200, a[1]), consumer(b[0], 200, b[1])], options)
  expect(inUnit(turnTime, minute) / turn).toBeCloseTo(1, 12)
  expect(barLitres(turns[0]?.use ?? 0) / useA).toBeCloseTo(1, 12)
  expect(barLitres(turns[1]?.use ?? 0) / useB).toBeCloseTo(1, 12)
})

test('equal divers get thirds, and a lone diver half', () => {
  const equal = furthestTurn([consumer(24, 200, 20), consumer(24, 200, 20)], options)
  expect(equal.turnTime / equal.fractionRule.turnTime).toBeCloseTo(1, 12)
  expect(Math.max(...equal.fractionRule.shortfall)).toBeLessThan(1e-9)
  expect(
    inUnit(furthestTurn([consumer(24, 200, 20)], options).turns[0]?.pressure ?? absolute(0, bar), bar),
  ).toBeCloseTo(101, 9)
})

test('thirds are not enough for a small supply beside a hungry partner, and the result says by how much', () => {
  const { turnTime, fractionRule, limitedBy } = furthestTurn([consumer(7.5, 200, 15), consumer(15, 200, 25)], options)
  // thirds: the first turns after 500 bar·L, 33.3 min; then both need 33.3 · (15 + 25) more from 1000
  expect(inUnit(fractionRule.turnTime, minute)).toBeCloseTo(100 / 3, 9)
  expect((fractionRule.shortfall[0] ?? 0) / 100).toBeCloseTo((100 / 3) * 55 - 1500, 6)
  expect(turnTime).toBeLessThan(fractionRule.turnTime)
  expect(limitedBy).toBe(0)
})

const diver = record({
  litres: double({ min: 5, max: 40, noNaN: true }),
  bars: integer({ min: 50, max: 300 }),
  rate: double({ min: 8, max: 40, noNaN: true }),
})

test('from the furthest turn every supply brings its owner and any other back, and one of them only just', () => {
  assert(
    property(diver, diver, diver, (a, b, c) => {
      const team = [a, b, c]
      const { turnTime } = furthestTurn(
        team.map(({ litres, bars, rate }) => consumer(litres, bars, rate)),
        options,
      )
      const minutes = inUnit(turnTime, minute)
      const left = team.flatMap(({ litres, bars, rate }, i) =>
        team.filter((_, j) => j !== i).map((other) => litres * bars - rate * minutes - (rate + other.rate) * minutes),
      )
      expect(Math.min(...left)).toBeGreaterThan(-1e-6)
      expect(Math.min(...left)).toBeLessThan(1e-6)
    }),
    { numRuns: 100 },
  )
})

test('a zero rate is refused where it stands', () => {
  expect(() => furthestTurn([consumer(12, 200, 20), consumer(12, 200, 0)], options)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'team[1].respiratoryMinuteVolume' }),
  )
  expect(() => furthestTurn([], options)).toThrow(expect.objectContaining({ code: 'input' }))
})
