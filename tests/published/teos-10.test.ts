import { expect, test } from 'vitest'
import {
  absoluteSalinityOf,
  conservativeTemperatureOf,
  depthInWaterColumn,
  freshWaterDensity,
  normalGravity,
  pressureInWaterColumn,
  seawaterDensity,
  seawaterDensityTeos10,
  speedOfSoundInWater,
  standardGravity,
  toPracticalSalinity,
} from '../../src/environment/index.ts'
import {
  absolute,
  atmosphere,
  celsius,
  decibar,
  degree,
  depthOf,
  difference,
  gramPerKilogram,
  measure,
  metre,
  offsetBy,
  temperatureOf,
} from '../../src/units/index.ts'
import fixture from '../fixtures/teos-10.json' with { type: 'json' }

const surfacePressure = absolute(1, atmosphere)
const atSea = (p: number) => offsetBy(surfacePressure, difference(p, decibar))
const grid = fixture.density.rows as [number, number, number, number, number, number][]

test('the polynomial of TEOS-10 agrees with the toolbox to 1e-6 kg/m³ on 648 states', () => {
  expect(grid).toHaveLength(648)
  for (const [sa, t, p, density] of grid) {
    const found = seawaterDensityTeos10({
      salinity: absoluteSalinityOf(sa, gramPerKilogram),
      temperature: conservativeTemperatureOf(t, celsius),
      pressure: atSea(p),
    })
    expect(Math.abs(found - density)).toBeLessThanOrEqual(6e-7)
  }
})

test('the equation of 1980 is within 0.01 kg/m³ of the Gibbs function of TEOS-10 on 648 states, 0.006 down to 300 dbar', () => {
  for (const [sa, t, p, , density] of grid) {
    const found = seawaterDensity({
      salinity: toPracticalSalinity(absoluteSalinityOf(sa, gramPerKilogram)),
      temperature: temperatureOf(t, celsius),
      pressure: atSea(p),
    })
    expect(Math.abs(found - density)).toBeLessThanOrEqual(p <= 300 ? 0.006 : 0.01)
  }
})

test('fresh water is within 0.002 kg/m³ of IAPWS-95 to 300 dbar, within 0.011 to 3000', () => {
  expect(fixture.pureWater.rows).toHaveLength(15)
  for (const [t, p, density] of fixture.pureWater.rows as [number, number, number][]) {
    const found = freshWaterDensity({ temperature: temperatureOf(t, celsius), pressure: atSea(p) })
    expect(Math.abs(found - density)).toBeLessThanOrEqual(p <= 300 ? 0.002 : 0.011)
  }
})

test('the closed form of the column is within 0.005 dbar of integrating TEOS-10 down to 300 m in eight waters', () => {
  const rows = fixture.columns.rows as [string, number, number, number, number, number][]
  expect(rows).toHaveLength(64)
  let worst = 0
  const { thermometer } = fixture.columns
  for (const [name, sa, , latitude, depth, p] of rows) {
    const column = {
      surfacePressure,
      salinity: toPracticalSalinity(absoluteSalinityOf(sa, gramPerKilogram)),
      temperature: temperatureOf(thermometer[name as keyof typeof thermometer], celsius),
      latitude: measure(latitude, degree),
    }
    const pressure = pressureInWaterColumn({ depth: depthOf(depth, metre), ...column })
    worst = Math.max(worst, Math.abs((pressure - surfacePressure) / 1e4 - p))
    expect(Math.abs(depthInWaterColumn({ pressure, ...column }) - depth)).toBeLessThan(1e-9)
  }
  expect(worst).toBeLessThanOrEqual(0.005)
  expect(worst).toBeGreaterThan(0.001) // the comparison reaches the error that the documentation states
})

test('the closed form agrees with the standard ocean at three latitudes to 0.005 dbar', () => {
  const salinity = toPracticalSalinity(absoluteSalinityOf(35.16504, gramPerKilogram))
  for (const [depth, ...pressures] of fixture.standardOcean.rows as [number, number, number, number][]) {
    ;[0, 45, 80].forEach((latitude, i) => {
      const pressure = pressureInWaterColumn({
        depth: depthOf(depth, metre),
        surfacePressure,
        salinity,
        temperature: temperatureOf(0, celsius),
        latitude: measure(latitude, degree),
      })
      expect(Math.abs((pressure - surfacePressure) / 1e4 - (pressures[i] as number))).toBeLessThanOrEqual(0.005)
    })
  }
})

test('one uniform density with standard gravity stands in for the standard ocean as worked out elsewhere, to 0.05 kg/m³', () => {
  const salinity = toPracticalSalinity(absoluteSalinityOf(35.16504, gramPerKilogram))
  for (const [depth, latitude, density] of fixture.uniformDensity.rows as [number, number, number][]) {
    const pressure = pressureInWaterColumn({
      depth: depthOf(depth, metre),
      surfacePressure,
      salinity,
      temperature: temperatureOf(0, celsius),
      latitude: measure(latitude, degree),
    })
    expect(Math.abs((pressure - surfacePressure) / (depth * standardGravity) - density)).toBeLessThanOrEqual(0.05)
  }
})

test('Chen and Millero’s sound speed differs from TEOS-10 by at most 0.2 m/s down to 300 dbar, as worked out elsewhere', () => {
  for (const [state, chenMillero, teos10] of fixture.sound.rows as [string, number, number][]) {
    const [sa, t, p] = state.split(',').map((part) => Number(part.split('=')[1])) as [number, number, number]
    const found = speedOfSoundInWater({
      salinity: toPracticalSalinity(absoluteSalinityOf(sa, gramPerKilogram)),
      temperature: temperatureOf(t, celsius),
      pressure: atSea(p),
    })
    expect(Math.abs(found - chenMillero)).toBeLessThanOrEqual(0.0006)
    expect(Math.abs(found - teos10)).toBeLessThanOrEqual(0.2)
  }
})

test('gravity in the sea grows by 2.26e-7 of itself per metre', () => {
  const latitude = measure(45, degree)
  const growth = normalGravity({ latitude, depth: depthOf(1000, metre) }) / normalGravity({ latitude }) - 1
  expect(growth).toBeCloseTo(2.26e-4, 12)
})
