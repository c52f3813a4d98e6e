import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  condensate,
  dryAir,
  molarDensity,
  saturatedVapourDensity,
  saturatedWaterFraction,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  cubicMetre,
  gasVolumeOf,
  measure,
  percent,
  temperatureOf,
} from '../../../src/units/index.ts'

const intake = {
  pressure: absolute(1, atmosphere),
  temperature: temperatureOf(25, celsius),
  relativeHumidity: measure(80, percent),
}
const intakeVolume = gasVolumeOf(1, cubicMetre)

test('what is taken in leaves as condensate or stays in the gas: no water is lost', () => {
  const within = (min: number, max: number) => double({ min, max, noNaN: true })
  assert(
    property(within(-40, 60), within(1.5, 300), within(0, 100), (t, p, humidity) => {
      const found = condensate({
        intake: { ...intake, relativeHumidity: measure(humidity, percent) },
        delivered: { pressure: absolute(p, bar), temperature: temperatureOf(t, celsius) },
        intakeVolume,
      })
      const amount = molarDensity(dryAir, intake.pressure, intake.temperature)
      const dry = amount - found.waterTakenIn / 0.018015268
      const stays = ((dry * found.waterFraction) / (1 - found.waterFraction)) * 0.018015268
      expect(Math.abs(found.condensed + stays - found.waterTakenIn)).toBeLessThan(1e-12)
      expect(found.condensed).toBeGreaterThanOrEqual(0)
    }),
    { numRuns: 60 },
  )
})

test('air that stays above its dew point drops nothing', () => {
  const warm = condensate({
    intake,
    delivered: { pressure: absolute(1, atmosphere), temperature: temperatureOf(30, celsius) },
    intakeVolume,
  })
  expect(warm.condensed).toBe(0)
  expect(warm.saturated).toBe(false)
})

test('air at 25 °C and 80 % drops 18.3 of its 18.5 g per cubic metre by 225 bar and 30 °C', () => {
  const delivered = { pressure: absolute(225, bar), temperature: temperatureOf(30, celsius) }
  const found = condensate({ intake, delivered, intakeVolume })
  // by the density of saturated steam: 23.07 g/m³ at 25 °C, 0.4 % more in air
  expect(found.waterTakenIn / (0.8 * saturatedVapourDensity(intake.temperature) * 1.0042)).toBeCloseTo(1, 2)
  expect(found.condensed / found.waterTakenIn).toBeCloseTo(18.3 / 18.5, 2)
  expect(found.waterFraction).toBe(saturatedWaterFraction(delivered))
  expect(found.as).toBe('water')
})

test('below freezing it is frost', () => {
  const delivered = { pressure: absolute(225, bar), temperature: temperatureOf(-5, celsius) }
  expect(condensate({ intake, delivered, intakeVolume }).as).toBe('ice')
})
