import { expect, test } from 'vitest'
import { dryAir, mixture, molarMass } from '../../../src/gas-law/index.ts'
import { assessCold, type ColdCase, iceBound } from '../../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  type Duration,
  difference,
  litrePerMinute,
  type MoleFraction,
  measure,
  minute,
  temperatureOf,
} from '../../../src/units/index.ts'

const lake: ColdCase = {
  mixture: dryAir,
  supplyPressure: absolute(200, bar),
  waterTemperature: temperatureOf(0, celsius),
  ambientPressure: absolute(4, bar),
  intermediatePressure: difference(9.5, bar),
  respiratoryMinuteVolume: measure(30, litrePerMinute),
  freezingPoint: temperatureOf(0, celsius),
}
const tenMinutes = measure(10, minute)

test('water at its freezing point: all the heat to bring the gas back, over the heat of fusion', () => {
  const { requiredHeat } = assessCold(lake)
  const { heat, outside } = iceBound(lake, tenMinutes)
  // `requiredHeat` ends at intermediate pressure; what the second stage adds is small
  expect(heat / (requiredHeat * 600)).toBeGreaterThan(1)
  expect(heat / (requiredHeat * 600)).toBeLessThan(1.08)
  expect(outside).toBeCloseTo(heat / 333.4e3, 12)
})

test('warmer water leaves less ice: the gas arrives warmer, and the water has to cool first', () => {
  const at = (degrees: number) => iceBound({ ...lake, waterTemperature: temperatureOf(degrees, celsius) }, tenMinutes)
  expect(at(4).outside).toBeLessThan(at(0).outside)
  expect(at(4).heat / at(4).outside).toBeCloseTo(333.4e3 + 3.95e3 * 4, 3)
  // warm water and a half empty cylinder: the gas never gets below the freezing point
  const warm = { ...lake, supplyPressure: absolute(60, bar), waterTemperature: temperatureOf(25, celsius) }
  expect(iceBound(warm, tenMinutes)).toMatchObject({ heat: 0, outside: 0 })
})

test('ice of sea water below zero gives a little less heat', () => {
  const sea = { ...lake, waterTemperature: temperatureOf(-1.9, celsius), freezingPoint: temperatureOf(-1.9, celsius) }
  const { heat, outside } = iceBound(sea, tenMinutes)
  expect(heat / outside).toBeCloseTo(333.4e3 - 1.9 * 2.1e3, 3)
})

test('helium warms, and no ice can grow outside', () => {
  const helium = mixture({ helium: 0.8, oxygen: 0.2 })
  const cold = { ...lake, mixture: helium, waterTemperature: temperatureOf(2, celsius) }
  expect(iceBound(cold, tenMinutes).outside).toBe(0)
})

test('inside grows no more than the gas carried, in proportion to the time', () => {
  const waterFraction = 40e-6 as MoleFraction
  const { inside = 0 } = iceBound({ ...lake, waterFraction }, tenMinutes)
  const moles = (assessCold(lake).massFlow / molarMass(dryAir)) * 600
  expect(inside).toBeCloseTo(moles * 40e-6 * 0.018015, 12)
  expect(iceBound(lake, tenMinutes)).not.toHaveProperty('inside')
  expect(iceBound(lake, (2 * tenMinutes) as Duration).outside / iceBound(lake, tenMinutes).outside).toBeCloseTo(2, 12)
})

test('bad input is refused by name, and cautions go along', () => {
  expect(() => iceBound(lake, -1 as Duration)).toThrow(/lasting/)
  expect(() => iceBound(lake, Number.NaN as Duration)).toThrow(/lasting/)
  expect(() => iceBound({ ...lake, water: 1 } as ColdCase, tenMinutes)).toThrow(/at.water/)
  expect(iceBound(lake, tenMinutes).cautions).toEqual(['regulator-cold', 'regulator'])
})
