import { assert, double, property } from 'fast-check'
import psychrolib from 'psychrolib'
import { expect, test } from 'vitest'
import {
  dewPoint,
  dewPointAtPressure,
  humidityRatio,
  humidityRatioFromWetBulb,
  isoStandard,
  moistureConcentration,
  normalCondition,
  relativeHumidity,
  roomCondition,
  saturatedWaterFraction,
  waterFractionFromConcentration,
  waterFractionFromHumidity,
  waterFractionFromHumidityRatio,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  fahrenheit,
  fractionOf,
  inUnit,
  measure,
  milligramPerCubicMetre,
  one,
  partPerMillion,
  pascal,
  percent,
  temperatureOf,
} from '../../../src/units/index.ts'
import fixture from '../../fixtures/humidity.json' with { type: 'json' }

const references: Record<string, typeof roomCondition | typeof normalCondition | typeof isoStandard> = {
  '20 C, 1013.25 hPa': roomCondition,
  '0 C, 1013.25 hPa': normalCondition,
  '15 C, 1013.25 hPa': isoStandard,
}
const pressures = [1.01325, 10, 40, 50, 100, 200, 232, 300]

// Worked out by another program from a polynomial that is 0.4 % off over water and 1.3 % over ice, 0.1 % at one atmosphere:
// a per cent of water is 0.13 K of frost point at most, 0.2 K of dew point
test('30 concentrations give the parts per million and the dew points of another program at eight pressures, within 0.2 K', () => {
  const rows = fixture.conversions.rows as unknown as [number, string, ...number[]][]
  expect(rows).toHaveLength(30)
  for (const [milligrams, name, ppm = Number.NaN, ...dewPoints] of rows) {
    const reference = references[name]
    if (reference === undefined) throw new Error(`no reference for ${name}`)
    const waterFraction = waterFractionFromConcentration(measure(milligrams, milligramPerCubicMetre), reference)
    expect(inUnit(waterFraction, partPerMillion) / ppm).toBeCloseTo(1, 5)
    expect(inUnit(moistureConcentration(waterFraction, reference), milligramPerCubicMetre)).toBeCloseTo(milligrams, 9)
    pressures.forEach((p, i) => {
      const found = dewPoint({ waterFraction, pressure: absolute(p, bar) })
      expect(Math.abs(inUnit(found.temperature, celsius) - (dewPoints[i] ?? Number.NaN))).toBeLessThan(0.2)
    })
  }
})

test('72 saturated states hold what another program found within 0.5 % over water and 1.4 % over ice', () => {
  const rows = fixture.saturated.rows as [number, number, number, number][]
  expect(rows).toHaveLength(72)
  for (const [t, p, ppm] of rows) {
    const state = { temperature: temperatureOf(t, celsius), pressure: absolute(p, bar) }
    const found = inUnit(saturatedWaterFraction(state), partPerMillion)
    expect(Math.abs(found / ppm - 1)).toBeLessThan(t > 0 ? 0.005 : 0.014)
  }
})

test('dew points of US limits at one atmosphere: -50 °F are 67 ppm, -65 °F 24 ppm', () => {
  for (const [f, ppm] of fixture.fahrenheit.rows as [number, number][]) {
    const state = { temperature: temperatureOf(f, fahrenheit), pressure: absolute(1, atmosphere) }
    expect(inUnit(saturatedWaterFraction(state), partPerMillion) / ppm).toBeCloseTo(1, 2)
  }
})

test('dew point and water fraction are each other’s inverse at any pressure', () => {
  const within = (min: number, max: number) => double({ min, max, noNaN: true })
  assert(
    property(within(-75, 60), within(1, 300), (t, p) => {
      const pressure = absolute(p, bar)
      const temperature = temperatureOf(t, celsius)
      const waterFraction = saturatedWaterFraction({ temperature, pressure })
      const found = dewPoint({ waterFraction, pressure })
      expect(Math.abs(found.temperature - temperature)).toBeLessThan(1e-6)
      if (t < -3) expect(found.over).toBe('ice')
      if (t > 0.01) expect(found.over).toBe('water')
    }),
    { numRuns: 80 },
  )
})

test('compressing raises the dew point, letting down lowers it, and back again is where it was', () => {
  const atSurface = { dewPoint: temperatureOf(-45, celsius), pressure: absolute(1, atmosphere) }
  const inCylinder = dewPointAtPressure({ ...atSurface, toPressure: absolute(232, bar) })
  expect(inCylinder.temperature).toBeGreaterThan(atSurface.dewPoint + 45)
  const back = dewPointAtPressure({
    dewPoint: inCylinder.temperature,
    pressure: absolute(232, bar),
    toPressure: atSurface.pressure,
  })
  expect(back.temperature).toBeCloseTo(atSurface.dewPoint, 6)
  expect(back.over).toBe('ice')
})

test('leaving the enhancement out would put the dew point of 67 ppm at 200 bar wrong by 10 K', () => {
  const { temperature } = dewPoint({ waterFraction: fractionOf(67, partPerMillion), pressure: absolute(200, bar) })
  expect(inUnit(temperature, celsius)).toBeCloseTo(0.8, 1)
  const partial = 67e-6 * 200e5
  expect(partial).toBeGreaterThan(1300) // the vapour pressure of 11 °C
})

test('relative humidity and its inverse agree, and saturation is 1', () => {
  const state = { temperature: temperatureOf(18, celsius), pressure: absolute(1, atmosphere) }
  const waterFraction = waterFractionFromHumidity({ ...state, relativeHumidity: measure(63, percent) })
  expect(relativeHumidity({ ...state, waterFraction })).toBeCloseTo(0.63, 12)
  expect(relativeHumidity({ ...state, waterFraction: saturatedWaterFraction(state) })).toBe(1)
})

test('humidity ratio and mole fraction are each other’s inverse', () => {
  assert(
    property(double({ min: 0, max: 0.99, noNaN: true }), (x) => {
      expect(waterFractionFromHumidityRatio(humidityRatio(fractionOf(x)))).toBeCloseTo(x, 12)
    }),
  )
})

// psychrolib leaves the enhancement out: 0.4 % of the water of saturated air near one atmosphere
test('a general psychrometric library gives the same air from humidity, dew point and wet bulb, but for the enhancement of 0.5 %', () => {
  psychrolib.SetUnitSystem(psychrolib.SI)
  const pressure = absolute(101_325, pascal)
  for (let t = 5; t <= 45; t += 5) {
    const temperature = temperatureOf(t, celsius)
    for (const humidity of [0.2, 0.5, 0.9]) {
      const waterFraction = waterFractionFromHumidity({
        temperature,
        pressure,
        relativeHumidity: measure(humidity, one),
      })
      const other = psychrolib.GetHumRatioFromRelHum(t, humidity, 101_325)
      const ratio = humidityRatio(waterFraction) / other
      expect(ratio).toBeGreaterThan(1.003)
      expect(ratio).toBeLessThan(1.006)
      const dew = inUnit(dewPoint({ waterFraction, pressure }).temperature, celsius)
      // both ways of the round trip carry the enhancement, so the dew points agree
      if (dew > 0.5) expect(Math.abs(dew - psychrolib.GetTDewPointFromRelHum(t, humidity))).toBeLessThan(0.02)
      const wetBulb = psychrolib.GetTWetBulbFromRelHum(t, humidity, 101_325)
      if (wetBulb > 0.5) {
        const fromWetBulb = humidityRatioFromWetBulb({
          temperature,
          wetBulb: temperatureOf(wetBulb, celsius),
          pressure,
        })
        const saturatedThere = psychrolib.GetSatHumRatio(wetBulb, 101_325)
        expect(Math.abs(fromWetBulb - other)).toBeLessThan(0.006 * saturatedThere)
      }
    }
  }
})

test('a wet bulb above the dry one, or a drier wick than air can make, is refused', () => {
  const pressure = absolute(1, atmosphere)
  const reading = { temperature: temperatureOf(20, celsius), wetBulb: temperatureOf(25, celsius), pressure }
  expect(() => humidityRatioFromWetBulb(reading)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'wetBulb' }),
  )
  const tooCold = { ...reading, temperature: temperatureOf(50, celsius), wetBulb: temperatureOf(5, celsius) }
  expect(() => humidityRatioFromWetBulb(tooCold)).toThrow(expect.objectContaining({ code: 'input' }))
})

test('moisture is refused when it is none, in per cent, or drier than a frost point of -80 °C', () => {
  const pressure = absolute(200, bar)
  expect(() => dewPoint({ waterFraction: fractionOf(0), pressure })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'waterFraction' }),
  )
  expect(() => dewPoint({ waterFraction: fractionOf(1e-10), pressure })).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'waterFraction' }),
  )
  const state = { temperature: temperatureOf(20, celsius), pressure, relativeHumidity: measure(50, one) }
  expect(() => waterFractionFromHumidity(state)).toThrow(
    expect.objectContaining({ code: 'range', argument: 'relativeHumidity' }),
  )
  expect(() =>
    waterFractionFromConcentration(measure(2, { symbol: 'kg/m³', quantity: 'density', factor: 1 }), roomCondition),
  ).toThrow(expect.objectContaining({ code: 'range', argument: 'concentration' }))
})

// murphy-koop-2005, from memory, by another program: 125.504 Pa over supercooled water at -20 °C, 18.9121 at -40; over ice 103.239 and 12.84117
test('supercooled water holds 1.216 times the vapour of ice at -20 °C, 1.473 at -40, within 0.2 and 0.8 %', () => {
  const pressure = absolute(1, atmosphere)
  const ratio = (t: number): number => {
    const state = { temperature: temperatureOf(t, celsius), pressure }
    return saturatedWaterFraction({ ...state, over: 'water' }) / saturatedWaterFraction(state)
  }
  expect(Math.abs(ratio(-20) / (125.504 / 103.239) - 1)).toBeLessThan(0.002)
  expect(Math.abs(ratio(-40) / (18.9121 / 12.84117) - 1)).toBeLessThan(0.008)
})

test('a dew point over supercooled water is lower than the frost point of the same gas, by 2.3 K at -20 °C', () => {
  const pressure = absolute(1, atmosphere)
  const waterFraction = saturatedWaterFraction({ temperature: temperatureOf(-20, celsius), pressure })
  const overWater = dewPoint({ waterFraction, pressure, over: 'water' })
  expect(inUnit(overWater.temperature, celsius)).toBeCloseTo(-22.25, 1)
  expect(overWater.over).toBe('water')
  const back = saturatedWaterFraction({ temperature: overWater.temperature, pressure, over: 'water' })
  expect(back / waterFraction).toBeCloseTo(1, 10)
  const inLine = dewPointAtPressure({
    dewPoint: overWater.temperature,
    pressure,
    toPressure: absolute(10, bar),
    over: 'water',
  })
  const fromFrost = dewPointAtPressure({
    dewPoint: temperatureOf(-20, celsius),
    pressure,
    toPressure: absolute(10, bar),
  })
  expect(inLine.temperature).toBeCloseTo(fromFrost.temperature, 8)
})

test('ice above its melting point and water below -40 °C are refused', () => {
  const pressure = absolute(1, atmosphere)
  const at = (t: number, over: 'ice' | 'water') => () =>
    saturatedWaterFraction({ temperature: temperatureOf(t, celsius), pressure, over })
  expect(at(5, 'ice')).toThrow(expect.objectContaining({ code: 'outside-validity', argument: 'temperature' }))
  expect(at(-45, 'water')).toThrow(expect.objectContaining({ code: 'outside-validity', argument: 'temperature' }))
})

test('any moisture at any pressure has a dew point within -80 to 100 °C, or is refused as one that has none', () => {
  assert(
    property(
      double({ min: -18, max: -0.01, noNaN: true }),
      double({ min: -2, max: 5.7, noNaN: true }),
      (logX, logP) => {
        const pressure = absolute(Math.exp(logP), bar)
        const waterFraction = fractionOf(Math.exp(logX))
        try {
          const { temperature } = dewPoint({ waterFraction, pressure })
          expect(temperature).toBeGreaterThan(192.9)
          expect(temperature).toBeLessThan(373.2)
          expect(Math.abs(saturatedWaterFraction({ temperature, pressure }) / waterFraction - 1)).toBeLessThan(1e-8)
        } catch (thrown) {
          expect(thrown).toMatchObject({ code: 'outside-validity', argument: 'waterFraction' })
        }
      },
    ),
    { numRuns: 300 },
  )
})

test('a concentration without the state of its cubic metre does not compile', () => {
  const concentration = measure(50, milligramPerCubicMetre)
  // @ts-expect-error the reference condition is missing
  expect(() => waterFractionFromConcentration(concentration)).toThrow()
  expect(waterFractionFromConcentration(concentration, roomCondition)).toBeGreaterThan(6.6e-5)
})
