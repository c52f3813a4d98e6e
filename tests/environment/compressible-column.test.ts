import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  conventionDifferences,
  depthConventions,
  depthInStandardOcean,
  depthInWaterColumn,
  practicalSalinityOf,
  pressureAtDepth,
  pressureInWaterColumn,
  seawaterDensity,
  type standardGravity,
} from '../../src/environment/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  degree,
  depthOf,
  hectopascal,
  measure,
  metre,
  temperatureOf,
} from '../../src/units/index.ts'

const fjord = {
  surfacePressure: absolute(1, atmosphere),
  salinity: practicalSalinityOf(33),
  temperature: temperatureOf(6, celsius),
  latitude: measure(61, degree),
}

test('depth and pressure are each other’s inverse in any water', () => {
  const within = (min: number, max: number) => double({ min, max, noNaN: true })
  assert(
    property(within(0, 300), within(0, 42), within(-2, 40), within(0, 90), within(600, 1050), (d, s, t, lat, p) => {
      const column = {
        surfacePressure: absolute(p, hectopascal),
        salinity: practicalSalinityOf(s),
        temperature: temperatureOf(t, celsius),
        latitude: measure(lat, degree),
      }
      const pressure = pressureInWaterColumn({ depth: depthOf(d, metre), ...column })
      expect(Math.abs(depthInWaterColumn({ pressure, ...column }) - d)).toBeLessThan(1e-8)
    }),
  )
})

test('compression adds 0.07 % of the pressure of 300 m to that of the density at the surface', () => {
  const { salinity, temperature, surfacePressure } = fjord
  const density = seawaterDensity({ salinity, temperature, pressure: surfacePressure })
  const depth = depthOf(300, metre)
  const uniform = pressureAtDepth({ depth, surfacePressure: fjord.surfacePressure, density })
  const scale = pressureInWaterColumn({ depth: depthOf(0.001, metre), ...fjord }) - fjord.surfacePressure
  const gravity = (scale / 0.001 / density) as typeof standardGravity
  const sameGravity = pressureAtDepth({ depth, surfacePressure: fjord.surfacePressure, density, gravity })
  const real = pressureInWaterColumn({ depth, ...fjord })
  expect(real).toBeGreaterThan(uniform)
  expect((real - sameGravity) / (real - fjord.surfacePressure)).toBeCloseTo(0.0007, 4)
})

test('the deeper of two layers weighs more: pressure grows faster than depth', () => {
  const at = (d: number): number => pressureInWaterColumn({ depth: depthOf(d, metre), ...fjord })
  expect(at(300) - at(200)).toBeGreaterThan(at(200) - at(100))
})

test('a display of 10 m for each bar shows 0.8 % too deep in a cold fjord, 2 % too shallow in a lake', () => {
  const depth = depthOf(40, metre)
  const inFjord = conventionDifferences({ depth, ...fjord }).depthGauge
  expect(inFjord.depthDifference / 40).toBeCloseTo(0.0078, 3)
  const lake = { ...fjord, salinity: practicalSalinityOf(0), temperature: temperatureOf(4, celsius) }
  const inLake = conventionDifferences({ depth, ...lake }).depthGauge
  expect(inLake.depthDifference / 40).toBeCloseTo(-0.018, 3)
  expect(inLake.pressureDifference).toBeGreaterThan(0)
})

test('the differences name every convention of the table, or those that are asked for', () => {
  const at = { depth: depthOf(30, metre), ...fjord }
  expect(Object.keys(conventionDifferences(at))).toEqual(Object.keys(depthConventions))
  const { own } = conventionDifferences(at, { own: depthConventions.footOfSeaWaterThirtyThree })
  expect(own.convention.name).toBe('foot of sea water, 1/33 atm')
})

test('the standard ocean formula and the closed form agree within 5 cm at 300 m', () => {
  const ocean = { ...fjord, salinity: practicalSalinityOf(35), temperature: temperatureOf(0, celsius) }
  const pressure = pressureInWaterColumn({ depth: depthOf(300, metre), ...ocean })
  const { surfacePressure, latitude } = ocean
  expect(Math.abs(depthInStandardOcean({ pressure, surfacePressure, latitude }) - 300)).toBeLessThan(0.05)
})

test('a depth below 300 m, or a pressure that lies there, is outside the compared range', () => {
  expect(() => pressureInWaterColumn({ depth: depthOf(301, metre), ...fjord })).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'depth' }),
  )
  expect(() => depthInWaterColumn({ pressure: absolute(40, bar), ...fjord })).toThrow(
    expect.objectContaining({ code: 'outside-validity' }),
  )
  expect(() => depthInWaterColumn({ pressure: absolute(0.5, bar), ...fjord })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'pressure' }),
  )
})
