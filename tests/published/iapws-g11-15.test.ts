import { expect, test } from 'vitest'
import { type HumidAirVirials, humidAirVirials, waterFugacityInAir } from '../../src/gas-law/index.ts'
import { absolute, fractionOf, kelvin, megapascal, temperatureOf } from '../../src/units/index.ts'
import fixture from '../fixtures/iapws-g11-15.json' with { type: 'json' }

const coefficients: Record<string, keyof HumidAirVirials> = {
  'air-water cross second virial coefficient': 'Baw',
  'air-air-water third virial coefficient': 'Caaw',
  'air-water-water third virial coefficient': 'Caww',
  'second virial coefficient of dry air': 'Baa',
  'third virial coefficient of dry air': 'Caaa',
  'second virial coefficient of water vapour': 'Bww',
  'third virial coefficient of water vapour': 'Cwww',
}

type Given = { T_K: number; p_MPa?: number; x_water?: number }
function found(topic: string, { T_K, p_MPa, x_water }: Given): number {
  const temperature = temperatureOf(T_K, kelvin)
  if (topic === 'fugacity of water in humid air') {
    const pressure = absolute(p_MPa ?? Number.NaN, megapascal)
    return waterFugacityInAir({ waterFraction: fractionOf(x_water ?? Number.NaN), pressure, temperature }) / 1e6
  }
  const name = coefficients[topic]
  if (name === undefined) throw new Error(`no coefficient for ${topic}`)
  return humidAirVirials(temperature)[name]
}

test.each(fixture.items)('$place: $topic, $given: $printed $unit ($id)', ({ topic, given, printed, tolerance }) => {
  expect(Math.abs(found(topic, given) - printed)).toBeLessThanOrEqual(tolerance)
})

test('all printed rows are there: 20', () => {
  expect(fixture.items).toHaveLength(20)
})

test('the equation refuses pressures and temperatures that it was not made for', () => {
  const state = {
    waterFraction: fractionOf(0.01),
    pressure: absolute(6, megapascal),
    temperature: temperatureOf(300, kelvin),
  }
  expect(() => waterFugacityInAir(state)).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'pressure' }),
  )
  expect(() => humidAirVirials(temperatureOf(190, kelvin))).toThrow(
    expect.objectContaining({ code: 'outside-validity' }),
  )
})
