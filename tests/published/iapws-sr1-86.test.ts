import { expect, test } from 'vitest'
import { saturatedVapourDensity, saturatedWaterDensity, saturationPressureOverWater } from '../../src/gas-law/index.ts'
import { kelvin, type Temperature, temperatureOf } from '../../src/units/index.ts'
import fixture from '../fixtures/iapws-sr1-86.json' with { type: 'json' }

const relations: Record<string, (temperature: Temperature) => number> = {
  'saturation pressure of water': (temperature) => saturationPressureOverWater(temperature) / 1e6,
  'density of saturated liquid water': saturatedWaterDensity,
  'density of saturated steam': saturatedVapourDensity,
}

test.each(fixture.items)(
  '$place: $topic at $given.T_K K is $printed $unit ($id)',
  ({ topic, given, printed, tolerance }) => {
    const relation = relations[topic]
    if (relation === undefined) throw new Error(`no relation for ${topic}`)
    expect(Math.abs(relation(temperatureOf(given.T_K, kelvin)) - printed)).toBeLessThanOrEqual(tolerance)
  },
)

test('all printed rows are there: 6', () => {
  expect(fixture.items).toHaveLength(6)
})
