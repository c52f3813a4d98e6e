import { array, assert, double, property, tuple } from 'fast-check'
import { expect, test } from 'vitest'
import { independentTurn } from '../../../src/consumption/index.ts'
import { absolute, bar, barLitre, celsius, inUnit, temperatureOf } from '../../../src/units/index.ts'
import { breathed } from '../given.ts'

const options = {
  gas: 'ideal',
  ambientPressure: absolute(1, bar),
  breathingGasTemperature: temperatureOf(15, celsius),
  gaugeZero: absolute(1, bar),
  show: { unit: bar, step: 1 },
} as const

// min((A + B)/3, A, B) of the usable gas, worked out by hand
test.each([
  { a: [12, 220, 20], b: [12, 200, 20], used: 1520, left: [1520 / 12 + 20, 1520 / 12 + 20] },
  { a: [12, 220, 20], b: [7, 200, 20], used: 1220, left: [1220 / 12 + 20, 1220 / 7 + 20] },
  // the small one stays full, and sets the use
  { a: [15, 230, 20], b: [5, 180, 20], used: 800, left: [(3150 - 800) / 15 + 20, 180] },
] as const)('$a and $b (L, bar, bar kept) may use $used bar·L', ({ a, b, used, left }) => {
  const pair = [a, b].map(([litres, bars, residual]) => breathed(litres, bars, residual))
  for (const [cylinders, expected] of [
    [pair, left],
    [[...pair].reverse(), [...left].reverse()],
  ] as const) {
    const found = independentTurn(cylinders, options)
    expect(inUnit(found.used, barLitre)).toBeCloseTo(used, 6)
    found.turns.forEach(({ pressure, gaugePressure, shown }, i) => {
      expect(inUnit(pressure, bar)).toBeCloseTo(expected[i] ?? 0, 6)
      expect(shown.value).toBeGreaterThanOrEqual(inUnit(gaugePressure, bar) - 1e-9)
    })
    expect(found.cautions).toEqual(['reserve', 'always'])
  }
})

const some = array(tuple(double({ min: 1, max: 20, noNaN: true }), double({ min: 30, max: 300, noNaN: true })), {
  minLength: 2,
  maxLength: 5,
})

test('whichever cylinder is lost, the others hold the way back; and with a little more use they would not', () => {
  assert(
    property(some, (given) => {
      const cylinders = given.map(([litres, bars]) => breathed(litres, bars, 20))
      const { used, turns } = independentTurn(cylinders, options)
      const left = turns.map(({ pressure }, i) => (inUnit(pressure, bar) - 20) * (given[i]?.[0] ?? 0))
      const total = left.reduce((sum, each) => sum + each, 0)
      const whole = given.reduce((sum, [litres, bars]) => sum + litres * (bars - 20), 0)
      expect(total + inUnit(used, barLitre)).toBeCloseTo(whole, 5)
      const worst = total - Math.max(...left)
      expect(worst).toBeGreaterThanOrEqual(inUnit(used, barLitre) - 1e-6)
      // brute force: no other spread allows more, as what each holds beyond the cap is bound to be lost with it
      const more = inUnit(used, barLitre) * 1.001
      const cap = whole - 2 * more
      const held = given.reduce((sum, [litres, bars]) => sum + Math.min(litres * (bars - 20), cap), 0)
      expect(held).toBeLessThan(whole - more)
    }),
    { numRuns: 300 },
  )
})

test('equal fractions of cylinders of different sizes are short by what is said', () => {
  const { equalFractions } = independentTurn([breathed(12, 220, 20), breathed(7, 200, 20)], options)
  expect(inUnit(equalFractions.shortfall, barLitre)).toBeCloseTo(1220 - 840, 6)
  expect(equalFractions.worstLoss).toBe(0)
  expect(independentTurn([breathed(12, 220, 20), breathed(12, 220, 20)], options).equalFractions.shortfall).toBe(0)
})

test('one cylinder, one below its residual, and a residual below ambient are refused', () => {
  expect(() => independentTurn([breathed(12, 200, 20)], options)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'cylinders' }),
  )
  expect(() => independentTurn([breathed(12, 200, 20), breathed(12, 10, 20)], options)).toThrow(/10 bar short/)
  expect(() =>
    independentTurn([breathed(12, 200, 20), breathed(12, 100, 5)], { ...options, ambientPressure: absolute(6, bar) }),
  ).toThrow(expect.objectContaining({ code: 'range', argument: 'cylinders[1].residualPressure' }))
})
