import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  pressureAltitude,
  standardAtmosphereAt,
  stationPressure,
  surfacePressureAtAltitude,
} from '../../src/environment/index.ts'
import {
  type Altitude,
  absolute,
  altitudeOf,
  atmosphere,
  bar,
  foot,
  hectopascal,
  inUnit,
  metre,
} from '../../src/units/index.ts'

test('altitude and pressure are each other’s inverse across the tropopause', () => {
  assert(
    property(double({ min: -2000, max: 20_000, noNaN: true }), (z) => {
      const altitude = altitudeOf(z, metre)
      expect(Math.abs(pressureAltitude(surfacePressureAtAltitude(altitude)) - z)).toBeLessThan(1e-6)
    }),
  )
})

test('with an altimeter setting of 1013.25 hPa the station pressure is that of the standard atmosphere', () => {
  const altitude = altitudeOf(1500, metre)
  const station = stationPressure({ altimeterSetting: absolute(1, atmosphere), altitude })
  expect(station / surfacePressureAtAltitude(altitude)).toBeCloseTo(1, 13)
})

test('at sea level the station pressure is the altimeter setting', () => {
  const altimeterSetting = absolute(987.6, hectopascal)
  const station = stationPressure({ altimeterSetting, altitude: altitudeOf(0, metre) })
  expect(inUnit(station, hectopascal)).toBeCloseTo(987.6, 9)
})

test('30 hPa at sea level are about 25 hPa at 1500 m, since the air between is heavier too', () => {
  const altitude = altitudeOf(1500, metre)
  const change =
    stationPressure({ altimeterSetting: absolute(1030, hectopascal), altitude }) -
    stationPressure({ altimeterSetting: absolute(1000, hectopascal), altitude })
  expect(change / 3000).toBeGreaterThan(0.86)
  expect(change / 3000).toBeLessThan(0.88)
})

test('pressure runs on without a step at the tropopause', () => {
  const at = (z: number): number => standardAtmosphereAt(altitudeOf(z, metre)).pressure
  const tropopause = (6_356_766 * 11_000) / (6_356_766 - 11_000)
  expect(Math.abs(at(tropopause + 1e-6) / at(tropopause - 1e-6) - 1)).toBeLessThan(1e-9)
})

test('an altitude in feet given as metres, or none at all, is refused', () => {
  expect(() => surfacePressureAtAltitude(altitudeOf(29_000, metre))).toThrow(
    expect.objectContaining({ code: 'range', argument: 'altitude' }),
  )
  expect(surfacePressureAtAltitude(altitudeOf(29_000, foot))).toBeGreaterThan(30_000)
  expect(() => surfacePressureAtAltitude(Number.NaN as Altitude)).toThrow(expect.objectContaining({ code: 'range' }))
  expect(() => pressureAltitude(absolute(1.5, bar))).toThrow(expect.objectContaining({ argument: 'pressure' }))
  expect(() =>
    stationPressure({ altimeterSetting: absolute(700, hectopascal), altitude: altitudeOf(3000, metre) }),
  ).toThrow(expect.objectContaining({ argument: 'altimeterSetting' }))
})
