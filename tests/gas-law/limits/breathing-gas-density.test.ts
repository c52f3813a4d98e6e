import { expect, test } from 'vitest'
import {
  assessGasDensity,
  dryAir,
  gasDensityLimits,
  heliox,
  mixture,
  nitrox,
  pressureAtGasDensity,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  gramPerLitre,
  inUnit,
  measure,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'

const air = mixture({ oxygen: 0.21, nitrogen: 0.79 })
const { recommended, hard, carbonDioxideRetention, frenchCode } = gasDensityLimits

// R14: ideal densities worked out by another program, depth in units of 10 kPa under 101 325 Pa; other molar masses, gas constant of 2018
test.each([
  ['air', air, 501_325, 5.933_980_63, 6.368_465_76],
  ['air', air, 401_325, 4.750_321_2, 5.098_138_97],
  ['heliox 16/84', heliox(0.16), 901_325, 3.136_572_12, 3.366_231_44],
  ['nitrox 32', nitrox(0.32), 401_325, 4.822_504_5, 5.175_607_52],
])('%s at %#: ideal density %d Pa is %d g/L at 20 °C, %d at 0 °C', (_, gas, pressure, at20, at0) => {
  const density = (t: number): number => {
    const state = { mixture: gas, pressure: absolute(pressure, pascal), temperature: temperatureOf(t, celsius) }
    return inUnit(assessGasDensity(state, { limit: hard, gas: 'ideal' }).value, gramPerLitre)
  }
  expect(Math.abs(density(20) / at20 - 1)).toBeLessThan(3e-6)
  expect(Math.abs(density(0) / at0 - 1)).toBeLessThan(3e-6)
})

test('the verdict hangs on the temperature that is named: air at 40 m, 6 g/L', () => {
  const gas = { mixture: air, pressure: absolute(501_325, pascal) }
  const at = (t: number) =>
    assessGasDensity({ ...gas, temperature: temperatureOf(t, celsius) }, { limit: carbonDioxideRetention })
  expect(at(20).verdict).toBe('within')
  expect(at(0).verdict).toBe('beyond')
  expect(at(0).because.map(({ code }) => code)).toContain('temperature-not-in-source')
})

// The depths quoted with 5.2 and 6.2 g/L, 31 and 39 m on air, fit 0 °C: 30.6 and 38.5 m of 10 kPa (ideal, worked out elsewhere)
test('the pressures at which air reaches 5.2 and 6.2 g/L at 0 °C are those of 30.6 and 38.5 m', () => {
  for (const [limit, depth] of [
    [recommended, 30.6],
    [hard, 38.5],
  ] as const) {
    const density = measure(limit.atMost.value, limit.atMost.unit)
    const pressure = pressureAtGasDensity(
      { mixture: air, density, temperature: temperatureOf(0, celsius) },
      { gas: 'ideal' },
    )
    expect((pressure - 101_325) / 10_000).toBeCloseTo(depth, 0)
  }
})

test('density and pressure are each other’s inverse, real or ideal', () => {
  for (const gas of ['real', 'ideal'] as const) {
    const temperature = temperatureOf(12, celsius)
    const density = measure(5.7, gramPerLitre)
    const pressure = pressureAtGasDensity({ mixture: dryAir, density, temperature }, { gas })
    const found = assessGasDensity({ mixture: dryAir, pressure, temperature }, { limit: hard, gas })
    expect(found.value / density).toBeCloseTo(1, 10)
  }
})

test('margin, limit, caution and sources stand beside the value', () => {
  const gas = { mixture: dryAir, pressure: absolute(4, bar), temperature: temperatureOf(15, celsius) }
  const found = assessGasDensity(gas, { limit: frenchCode })
  expect(found.verdict).toBe('within')
  expect(found.limit).toBe(9)
  expect(found.margin).toBeCloseTo(9 - found.value, 12)
  expect(found.cautions).toEqual(['gas-density'])
  expect(found.sources).toEqual(['french-code-r238', 'gerg-2008'])
  expect(JSON.stringify(found)).not.toMatch(/safe/i)
})

test('a limit from memory says so in the verdict', () => {
  const gas = { mixture: dryAir, pressure: absolute(4, bar), temperature: temperatureOf(15, celsius) }
  const { because } = assessGasDensity(gas, { limit: recommended })
  expect(because.find(({ code }) => code === 'limit-not-read-at-source')?.text).toMatch(/memory/)
})

test('the temperature has no default', () => {
  const gas = { mixture: dryAir, pressure: absolute(4, bar) }
  // @ts-expect-error the temperature is missing
  expect(() => assessGasDensity(gas, { limit: hard })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'gas.temperature' }),
  )
  expect(assessGasDensity({ ...gas, temperature: temperatureOf(37, celsius) }, { limit: hard }).verdict).toBe(
    'undetermined',
  ) // that limit is from memory
})
