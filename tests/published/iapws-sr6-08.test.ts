import { expect, test } from 'vitest'
import { type LiquidWater, liquidWaterAt } from '../../src/environment/index.ts'
import { celsius, kelvin, temperatureOf } from '../../src/units/index.ts'
import fixture from '../fixtures/iapws-sr6-08.json' with { type: 'json' }

/** The property of a row, and SI in one of its unit. */
const properties: Record<string, [keyof LiquidWater, number]> = {
  'liquid water at 1 bar, density': ['density', 1],
  'liquid water at 1 bar, isobaric heat capacity': ['isobaricHeatCapacity', 1000],
  'liquid water at 1 bar, speed of sound': ['speedOfSound', 1],
  'liquid water at 1 bar, viscosity': ['viscosity', 1e-6],
  'liquid water at 1 bar, thermal conductivity': ['thermalConductivity', 1],
}

test.each(fixture.items)(
  '$place: $topic at $given.T_K K is $printed $unit ($id)',
  ({ topic, given, printed, tolerance }) => {
    const property = properties[topic]
    if (property === undefined) throw new Error(`no property for ${topic}`)
    const [name, factor] = property
    const found = liquidWaterAt(temperatureOf(given.T_K, kelvin))[name] / factor
    expect(Math.abs(found - printed)).toBeLessThanOrEqual(tolerance)
  },
)

test('all printed rows are there: 12', () => {
  expect(fixture.items).toHaveLength(12)
})

test('steam is no liquid', () => {
  expect(() => liquidWaterAt(temperatureOf(120, celsius))).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'temperature' }),
  )
})
