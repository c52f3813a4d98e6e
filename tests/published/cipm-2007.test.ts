import { expect, test } from 'vitest'
import { humidAirDensity } from '../../src/environment/index.ts'
import { absolute, celsius, measure, millimetreOfMercury, one, temperatureOf } from '../../src/units/index.ts'
import fixture from '../fixtures/air-density.json' with { type: 'json' }

type Given = { t_C: number; p_mmHg: number; rh?: number; rh_percent?: number }
const density = ({ t_C, p_mmHg, rh, rh_percent = Number.NaN }: Given): number =>
  humidAirDensity(
    {
      temperature: temperatureOf(t_C, celsius),
      pressure: absolute(p_mmHg, millimetreOfMercury),
      relativeHumidity: measure(rh ?? rh_percent / 100, one),
    },
    { extrapolate: true },
  )

const rows = fixture.items.filter(({ topic }) => topic === 'density of moist air, CIPM-2007')
const olderFormula = fixture.items.filter(({ topic }) => topic === 'density of moist air, Jones 1978 form')

test('the rows are there', () => {
  expect(rows).toHaveLength(2)
  expect(olderFormula).toHaveLength(2)
})

test.each(rows)('$place: $given: $printed $unit ($id)', ({ given, printed, tolerance }) => {
  expect(Math.abs(density(given as Given) - printed)).toBeLessThanOrEqual(tolerance)
})

// Two further items print an older, shorter formula (Jones 1978), which is not in the library: the two agree within 1e-4.
test.each(olderFormula)(
  '$place prints the formula of 1978: $printed $unit, within 1e-4 of that of 2007 ($id)',
  (item) => {
    expect(Math.abs(density(item.given as Given) / item.printed - 1)).toBeLessThan(1e-4)
  },
)

test('10 °C is outside the range of the equation unless extrapolation is asked for', () => {
  const air = {
    temperature: temperatureOf(10, celsius),
    pressure: absolute(760, millimetreOfMercury),
    relativeHumidity: measure(0.4, one),
  }
  expect(() => humidAirDensity(air)).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'temperature' }),
  )
  expect(humidAirDensity(air, { extrapolate: true })).toBeGreaterThan(1.24)
  expect(() => humidAirDensity({ ...air, relativeHumidity: measure(40, one) }, { extrapolate: true })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'relativeHumidity' }),
  )
})
