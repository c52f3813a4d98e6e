import { expect, test } from 'vitest'
import { saturationPressureOverIce } from '../../src/gas-law/index.ts'
import { kelvin, temperatureOf } from '../../src/units/index.ts'
import fixture from '../fixtures/iapws-r14-08.json' with { type: 'json' }

const sublimation = fixture.items.filter(({ topic }) => topic === 'sublimation pressure of ice')

test.each(sublimation)(
  '$place: ice at $given.T_K K is in balance at $printed $unit ($id)',
  ({ given, printed, tolerance }) => {
    const found = saturationPressureOverIce(temperatureOf(given.T_K, kelvin)) / 1e6
    expect(Math.abs(found - printed)).toBeLessThanOrEqual(tolerance)
  },
)

// The other row is the melting pressure of ice, 138 MPa at 260 K: no function here works with water under such pressure.
test('one row is expressed and one is not', () => {
  expect(sublimation).toHaveLength(1)
  expect(fixture.items.map(({ topic }) => topic)).toContain('melting pressure of ice Ih')
  expect(fixture.items).toHaveLength(2)
})
