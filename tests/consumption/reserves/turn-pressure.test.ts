import { assert, double, integer, property, record } from 'fast-check'
import { expect, test } from 'vitest'
import { turnPressures } from '../../../src/consumption/index.ts'
import {
  absolute,
  bar,
  barLitre,
  celsius,
  difference,
  inUnit,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'
import { breathed } from '../given.ts'

const ideal = {
  gas: 'ideal',
  ambientPressure: absolute(1, bar),
  breathingGasTemperature: temperatureOf(15, celsius),
  gaugeZero: absolute(1, bar),
  show: { unit: bar, step: 1 },
} as const

// engineering vectors C5-1, C5-3, C5-4: gas above the 1 bar that stays, pressures on the gauge
test.each([
  { fraction: 1 / 3, a: [24, 200], b: [24, 200], use: 1600, turnA: 133.33333333333331, turnB: 133.33333333333331 },
  { fraction: 1 / 3, a: [24, 210], b: [30, 180], use: 1680, turnA: 140, turnB: 124 },
  { fraction: 1 / 6, a: [24, 200], b: [24, 200], use: 800, turnA: 166.66666666666666, turnB: 166.66666666666666 },
] as const)('C5: $a and $b (L, bar) turn at $turnA and $turnB bar after $use bar·L each', (given) => {
  const team = [given.a, given.b].map(([litres, bars]) => breathed(litres, bars + 1, 1))
  const { useOfEach, turns } = turnPressures(team, { ...ideal, fraction: given.fraction })
  expect(inUnit(useOfEach, barLitre) / given.use).toBeCloseTo(1, 12)
  expect(inUnit(turns[0]?.gaugePressure ?? absolute(0, bar), bar) / given.turnA).toBeCloseTo(1, 12)
  expect(inUnit(turns[1]?.gaugePressure ?? absolute(0, bar), bar) / given.turnB).toBeCloseTo(1, 12)
  for (const { shown, gaugePressure } of turns)
    expect(shown.value).toBeGreaterThanOrEqual(inUnit(gaugePressure, bar) - 1e-9)
})

test('who has least sets the use of all, and turns after exactly the fraction', () => {
  const team = [breathed(24, 201, 1), breathed(20, 201, 1)]
  const { limitedBy, turns } = turnPressures(team, { ...ideal, fraction: 1 / 3 })
  expect(limitedBy).toBe(1)
  expect(inUnit(turns[1]?.pressure ?? absolute(0, bar), bar)).toBeCloseTo(400 / 3 + 1, 9)
  expect(inUnit(turns[0]?.pressure ?? absolute(0, bar), bar)).toBeGreaterThan(400 / 3 + 1)
})

test('a pressure that is kept is left out of the rule, and the gauge error is added on top', () => {
  const kept = { ...breathed(24, 200, 50), maximumPermissibleError: difference(4, bar) }
  const { turns } = turnPressures([kept], { ...ideal, fraction: 1 / 3 })
  expect(inUnit(turns[0]?.pressure ?? absolute(0, bar), bar)).toBeCloseTo(150, 9)
  expect(inUnit(turns[0]?.gaugePressure ?? absolute(0, bar), bar)).toBeCloseTo(153, 9)
  expect(turns[0]?.shown.text).toBe('153')
})

test('real gas turns at a higher pressure than a third of the gauge, because the first bars hold less', () => {
  const team = [breathed(24, 301, 1)]
  const real = turnPressures(team, { ...ideal, gas: 'real', fraction: 1 / 3 }).turns[0]
  const bars = turnPressures(team, { ...ideal, fraction: 1 / 3 }).turns[0]
  expect(inUnit(bars?.pressure ?? absolute(0, bar), bar)).toBeCloseTo(201, 9)
  expect(inUnit(real?.pressure ?? absolute(0, bar), bar)).toBeLessThan(190)
})

test('turn pressures are shown on the cautious side whatever the cylinders', () => {
  const diver = record({ litres: double({ min: 3, max: 40, noNaN: true }), bars: integer({ min: 60, max: 320 }) })
  assert(
    property(diver, diver, double({ min: 0.05, max: 0.9, noNaN: true }), (a, b, fraction) => {
      const team = [a, b].map(({ litres, bars }) => breathed(litres, bars, 1))
      const { turns, useOfEach } = turnPressures(team, { ...ideal, fraction, show: { unit: bar, step: 5 } })
      for (const [i, { shown, gaugePressure, pressure }] of turns.entries()) {
        expect(shown.value).toBeGreaterThanOrEqual(inUnit(gaugePressure, bar) * (1 - 1e-12))
        const { litres = 0, bars = 0 } = [a, b][i] ?? {}
        // nobody uses more than the fraction of what each has
        expect((bars - inUnit(pressure, bar)) * litres).toBeLessThanOrEqual(fraction * bars * litres * (1 + 1e-9))
      }
      expect(useOfEach).toBeGreaterThan(0)
    }),
    { numRuns: 200 },
  )
})

test('more reserve than gas, no divers or a fraction of one are refused', () => {
  const short = breathed(12, 40, 60)
  expect(() => turnPressures([short], { ...ideal, fraction: 1 / 3 })).toThrow(/20 bar short/)
  expect(() => turnPressures([short], { ...ideal, fraction: 1 / 3 })).toThrow(
    expect.objectContaining({ argument: 'team[0].residualPressure' }),
  )
  expect(() => turnPressures([], { ...ideal, fraction: 1 / 3 })).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => turnPressures([breathed(12, 200, 1)], { ...ideal, fraction: 1 })).toThrow(
    expect.objectContaining({ argument: 'options.fraction' }),
  )
  expect(() =>
    turnPressures([breathed(12, 200, 1)], { ...ideal, fraction: 1 / 3, gaugeZero: absolute(0, pascal) }),
  ).toThrow(expect.objectContaining({ argument: 'options.gaugeZero' }))
})
