import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { practicalSalinityOf, seawaterDensity } from '../../../src/environment/index.ts'
import {
  bunsenCoefficient,
  type DissolvedGas,
  dissolvedConcentration,
  henryConstant,
  type SeaDissolvedGas,
  saturationPressureOverWater,
} from '../../../src/gas-law/index.ts'
import { absolute, atmosphere, bar, celsius, depthOf, kelvin, metre, temperatureOf } from '../../../src/units/index.ts'
import fixture from '../../fixtures/solubility.json' with { type: 'json' }

const water = (t: number, s: number) => ({ temperature: temperatureOf(t, celsius), salinity: practicalSalinityOf(s) })
const inAir = { oxygen: 0.20946, nitrogen: 0.78084, argon: 0.00934, helium: 5.24e-6 } as const

// What moist air at one atmosphere leaves in water, by equations of later measurements
test('dissolved air agrees with later measurements: oxygen, nitrogen and argon within 0.55 %, helium within 0.2 %', () => {
  const rows = fixture.airCheck.rows as [SeaDissolvedGas, number, number, number][]
  expect(rows).toHaveLength(32)
  for (const [gas, s, t, umolPerKilogram] of rows) {
    const at = water(t, s)
    const pressure = absolute(1, atmosphere)
    const vapour = saturationPressureOverWater(at.temperature) * (1 - 0.000537 * s) // salt lowers it
    const partialPressure = (inAir[gas] * (pressure - vapour)) as typeof pressure
    const found = dissolvedConcentration(gas, { ...at, partialPressure }) / seawaterDensity({ ...at, pressure })
    expect(Math.abs((found * 1e6) / umolPerKilogram - 1)).toBeLessThan(gas === 'helium' ? 0.002 : 0.0055)
  }
})

test('Bunsen coefficients are those of another program in fresh and sea water, but for the factor of nitrogen', () => {
  for (const [gas, t, fresh, sea] of fixture.bunsen.rows as [SeaDissolvedGas, number, number, number][]) {
    const factor = gas === 'nitrogen' ? 1.013 : 1
    expect(bunsenCoefficient(gas, water(t, 0)) / (factor * fresh)).toBeCloseTo(1, 3)
    expect(bunsenCoefficient(gas, water(t, 35)) / (factor * sea)).toBeCloseTo(1, 3)
  }
})

test('Henry’s constants at 54 states are those of another program to its five digits', () => {
  const rows = fixture.henry.rows as [DissolvedGas, number, number, number][]
  expect(rows).toHaveLength(54)
  let compared = 0
  for (const [gas, t, gigapascal] of rows) {
    if (gas === 'nitrogen' && t < 5) continue // the data of nitrogen begin at 4.97 °C
    expect(Math.abs(henryConstant(gas, temperatureOf(t, celsius)) / 1e9 / gigapascal - 1)).toBeLessThan(1e-5)
    compared++
  }
  expect(compared).toBe(53)
})

// sander-2023, values of the compilation at 298.15 K, two digits
test('solubilities at 25 °C agree with the compilation within its two digits', () => {
  for (const [gas, compiled] of fixture.compilation.rows as [DissolvedGas, number][]) {
    const perPascal = 997.05 / 0.018015268 / henryConstant(gas, temperatureOf(298.15, kelvin))
    expect(Math.abs(perPascal / compiled - 1)).toBeLessThan(0.04)
  }
})

test('warmer and saltier water takes up less', () => {
  assert(
    property(double({ min: -1, max: 30, noNaN: true }), double({ min: 0, max: 35, noNaN: true }), (t, s) => {
      for (const gas of ['oxygen', 'nitrogen', 'argon'] as const) {
        const found = bunsenCoefficient(gas, water(t, s))
        expect(bunsenCoefficient(gas, water(t + 5, s))).toBeLessThan(found)
        expect(bunsenCoefficient(gas, water(t, s + 5))).toBeLessThan(found)
      }
    }),
  )
})

test('twice the partial pressure dissolves twice the gas', () => {
  const at = water(12, 20)
  const once = dissolvedConcentration('nitrogen', { ...at, partialPressure: absolute(2, bar) })
  expect(dissolvedConcentration('nitrogen', { ...at, partialPressure: absolute(4, bar) }) / once).toBeCloseTo(2, 14)
})

test('hot water, brine and an unknown gas are refused', () => {
  expect(() => bunsenCoefficient('oxygen', water(45, 0))).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'temperature' }),
  )
  expect(() => bunsenCoefficient('oxygen', water(20, 41))).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'salinity' }),
  )
  expect(() => bunsenCoefficient('neon' as SeaDissolvedGas, water(20, 0))).toThrow(
    expect.objectContaining({ code: 'input', argument: 'gas' }),
  )
  const partialPressure = depthOf(10, metre)
  // @ts-expect-error a depth is no partial pressure
  expect(dissolvedConcentration('oxygen', { ...water(10, 0), partialPressure })).toBeGreaterThan(0)
  expect(dissolvedConcentration('oxygen', { ...water(10, 0), partialPressure: absolute(1, bar) })).toBeGreaterThan(1)
})
