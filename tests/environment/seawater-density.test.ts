import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  absoluteSalinityOf,
  freshWaterDensity,
  practicalSalinityOf,
  seawaterDensity,
  seawaterDensityInto,
  seawaterDensityTeos10,
  toAbsoluteSalinity,
  toPracticalSalinity,
} from '../../src/environment/index.ts'
import { absolute, atmosphere, bar, celsius, gramPerKilogram, temperatureOf } from '../../src/units/index.ts'

const state = { salinity: practicalSalinityOf(35), temperature: temperatureOf(10, celsius), pressure: absolute(1, bar) }

test('salt and pressure make water denser, whatever the state', () => {
  const within = (min: number, max: number) => double({ min, max, noNaN: true })
  assert(
    property(within(0, 41), within(-2, 40), within(1, 900), (s, t, p) => {
      const at = (salinity: number, pressure: number): number =>
        seawaterDensity({
          salinity: practicalSalinityOf(salinity),
          temperature: temperatureOf(t, celsius),
          pressure: absolute(pressure, bar),
        })
      expect(at(s + 1, p)).toBeGreaterThan(at(s, p))
      expect(at(s, p + 10)).toBeGreaterThan(at(s, p))
    }),
  )
})

test('fresh water is densest at 4 °C', () => {
  const at = (t: number): number =>
    freshWaterDensity({ temperature: temperatureOf(t, celsius), pressure: absolute(1, atmosphere) })
  expect(at(4)).toBeGreaterThan(at(3))
  expect(at(4)).toBeGreaterThan(at(5))
})

test('practical and absolute salinity are two quantities, half a per cent apart', () => {
  const absoluteSalinity = toAbsoluteSalinity(practicalSalinityOf(35))
  expect(absoluteSalinity).toBeCloseTo(0.035_165_04, 12)
  expect(toPracticalSalinity(absoluteSalinity)).toBeCloseTo(35, 12)
  // @ts-expect-error absolute salinity where practical salinity is meant
  expect(seawaterDensity({ ...state, salinity: absoluteSalinityOf(35, gramPerKilogram) })).toBeLessThan(1001)
  expect(seawaterDensity({ ...state, salinity: practicalSalinityOf(35) })).toBeGreaterThan(1026)
})

test('the reading of a thermometer is no conservative temperature', () => {
  const salinity = absoluteSalinityOf(35, gramPerKilogram)
  // @ts-expect-error temperature where conservative temperature is meant
  const density = seawaterDensityTeos10({ salinity, temperature: state.temperature, pressure: state.pressure })
  expect(density).toBeGreaterThan(1026)
})

test('a column gives what single calls give, and a code and NaN for a bad row', () => {
  const columns = {
    practicalSalinity: Float64Array.of(0, 35, 42, 43, Number.NaN, 35),
    temperatureKelvin: Float64Array.of(277.15, 283.15, 271.15, 283.15, 283.15, 350),
    pressurePascal: Float64Array.of(101_325, 5e5, 1e8, 1e5, 1e5, 1e5),
  }
  const out = { densityKilogramPerCubicMetre: new Float64Array(6), code: new Uint8Array(6) }
  seawaterDensityInto(out, columns)
  expect([...out.code]).toEqual([0, 0, 0, 3, 1, 3])
  for (const row of [0, 1, 2]) {
    const single = seawaterDensity({
      salinity: columns.practicalSalinity[row] as typeof state.salinity,
      temperature: columns.temperatureKelvin[row] as typeof state.temperature,
      pressure: columns.pressurePascal[row] as typeof state.pressure,
    })
    expect(out.densityKilogramPerCubicMetre[row]).toBe(single)
  }
  expect(out.densityKilogramPerCubicMetre[3]).toBeNaN()
})
