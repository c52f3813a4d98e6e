import { expect, test } from 'vitest'
import {
  altitudeOfGeopotentialHeight,
  geopotentialHeightOf,
  normalGravity,
  pressureAltitude,
  type StandardAir,
  standardAtmosphereAt,
  surfacePressureAtAltitude,
} from '../../src/environment/index.ts'
import { absolute, altitudeOf, degree, hectopascal, inUnit, measure, metre } from '../../src/units/index.ts'
import fixture from '../fixtures/us-standard-atmosphere-1976.json' with { type: 'json' }

const quantityOf: Record<string, keyof StandardAir> = {
  'standard atmosphere pressure': 'pressure',
  'standard atmosphere temperature': 'temperature',
  'standard atmosphere density': 'density',
  'standard atmosphere speed of sound': 'speedOfSound',
  'standard atmosphere dynamic viscosity': 'viscosity',
}

test.each(fixture.items)('$place, $topic: $printed $unit as printed ($id)', ({ topic, given, printed, tolerance }) => {
  const quantity = quantityOf[topic]
  if (quantity === undefined) throw new Error(`no quantity for ${topic}`)
  const found = standardAtmosphereAt(altitudeOf(given.Z_m_geometric, metre))[quantity]
  expect(Math.abs(found - printed)).toBeLessThanOrEqual(tolerance)
})

test('all printed rows are there: 42', () => {
  expect(fixture.items).toHaveLength(42)
})

test('the definition, worked out independently every 250 m, comes out within 1e-6', () => {
  const { rows } = fixture.computed.geometric
  expect(rows).toHaveLength(39)
  for (const [z, , temperature, pressure, density] of rows as [number, number, number, number, number][]) {
    const air = standardAtmosphereAt(altitudeOf(z, metre))
    expect(Math.abs(air.pressure / pressure - 1)).toBeLessThan(1e-6)
    expect(Math.abs(air.density / density - 1)).toBeLessThan(1e-6)
    expect(Math.abs(air.temperature - temperature)).toBeLessThanOrEqual(5e-5 + 1e-9)
  }
})

test('altitudes of 14 pressures come out to the centimetre', () => {
  const { rows } = fixture.computed.heights
  expect(rows).toHaveLength(14)
  for (const [p, h, z] of rows as [number, number, number][]) {
    const altitude = pressureAltitude(absolute(p, hectopascal))
    expect(Math.abs(altitude - z)).toBeLessThanOrEqual(0.005 + 1e-9)
    expect(Math.abs(geopotentialHeightOf(altitude) - h)).toBeLessThanOrEqual(0.005 + 1e-9)
  }
})

test('rows by geopotential height come out within 1e-6, the printed altitude rounded to the centimetre', () => {
  for (const [h, z, , pressure] of fixture.computed.geopotential.rows as [number, number, number, number][]) {
    const altitude = altitudeOfGeopotentialHeight(measure(h, metre))
    expect(Math.abs(altitude - z)).toBeLessThanOrEqual(0.005 + 1e-9)
    expect(geopotentialHeightOf(altitude)).toBeCloseTo(h, 9)
    const air = standardAtmosphereAt(altitude)
    expect(Math.abs(air.pressure / pressure - 1)).toBeLessThan(1e-6)
    expect(Math.abs(pressureAltitude(air.pressure) - z)).toBeLessThanOrEqual(0.005 + 1e-6)
  }
})

test('a printed metric table agrees within half its last digit, density within 0.52 of it', () => {
  const sea = standardAtmosphereAt(altitudeOf(0, metre))
  expect(fixture.metric.rows).toHaveLength(20)
  for (const [z, temperature, pressure, density] of fixture.metric.rows as [number, number, number, number][]) {
    const air = standardAtmosphereAt(altitudeOf(z, metre))
    expect(Math.abs(air.temperature - temperature)).toBeLessThanOrEqual(0.05 + 1e-9)
    expect(Math.abs(air.pressure / 1e5 - pressure)).toBeLessThanOrEqual(0.000_05 + 1e-9)
    // 3000 m, 0.742 249, and 7000 m, 0.481 648, are printed 0.7423 and 0.4817: 0.52 of the last digit
    expect(Math.abs(air.density / sea.density - density)).toBeLessThanOrEqual(0.000_052_1)
  }
})

test('gravity by latitude and height agrees with the 1984 ellipsoid to 1e-5 m/s²', () => {
  const heights = fixture.gravity.columns.slice(1).map((column) => Number(column.replace('h=', '')))
  for (const [latitude, ...values] of fixture.gravity.rows as [number, ...number[]][]) {
    heights.forEach((height, i) => {
      const found = normalGravity({ latitude: measure(latitude, degree), altitude: altitudeOf(height, metre) })
      expect(Math.abs(found - (values[i] as number))).toBeLessThanOrEqual(1e-5)
    })
  }
})

test('sea level has 1013.25 hPa exactly', () => {
  expect(inUnit(surfacePressureAtAltitude(altitudeOf(0, metre)), hectopascal)).toBe(1013.25)
})
