import { expect, expectTypeOf, test } from 'vitest'
import {
  atpd,
  atps,
  btps,
  btpsAt,
  dryAir,
  freeGasAt,
  isoStandard,
  iupacStandard,
  normalCondition,
  type ReferenceCondition,
  referenceConditions,
  roomCondition,
  stpd,
  usStandard,
} from '../../../src/gas-law/index.ts'
import { saturationPressure } from '../../../src/gas-law/water/saturation.ts'
import { sources } from '../../../src/references/sources.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  fahrenheit,
  freeGasOf,
  inUnit,
  kilopascal,
  litre,
  millibar,
  millimetreOfMercury,
  psi,
  sumOf,
  temperatureOf,
} from '../../../src/units/index.ts'

test.each([
  { condition: isoStandard, temperature: temperatureOf(15, celsius), pressure: absolute(1.01325, bar) },
  { condition: normalCondition, temperature: temperatureOf(0, celsius), pressure: absolute(1.01325, bar) },
  { condition: iupacStandard, temperature: temperatureOf(0, celsius), pressure: absolute(1, bar) },
  { condition: roomCondition, temperature: temperatureOf(20, celsius), pressure: absolute(1, atmosphere) },
  { condition: usStandard, temperature: temperatureOf(70, fahrenheit), pressure: absolute(14.696, psi) },
  { condition: stpd, temperature: temperatureOf(0, celsius), pressure: absolute(1, atmosphere) },
  { condition: btps, temperature: temperatureOf(37, celsius), pressure: absolute(1, atmosphere) },
])('$condition.name is what its name says', ({ condition, temperature, pressure }) => {
  expect(condition.temperature / temperature).toBeCloseTo(1, 15)
  expect(condition.pressure / pressure).toBeCloseTo(1, 15)
})

test.each(referenceConditions)('$name says its moisture, its vapour pressure and its source', (condition) => {
  expect(condition.waterVapourPressure > 0).toBe(condition.moisture === 'saturated')
  expect(sources).toHaveProperty(condition.source)
  expect(condition.place).not.toBe('')
})

test('no two reference conditions share a name', () => {
  expect(new Set(referenceConditions.map(({ name }) => name)).size).toBe(referenceConditions.length)
})

test('the vapour pressure of BTPS is the own saturation pressure at 37 °C, and the convention is 47 mmHg to the pascal', () => {
  expect(btps.waterVapourPressure).toBeCloseTo(saturationPressure(temperatureOf(37, celsius)), 1.5)
  const conventional = referenceConditions.find(({ name }) => name === 'BTPS, 47 mmHg')
  expect(conventional?.waterVapourPressure).toBe(Math.round(absolute(47, millimetreOfMercury)))
})

const bench = { name: 'bench', pressure: absolute(990, millibar), temperature: temperatureOf(18, celsius) }

test('ATPD and ATPS differ by the room that the vapour takes', () => {
  const dry = freeGasOf(1, litre, atpd(bench))
  const moist = freeGasAt(dry, { from: atpd(bench), to: atps(bench), mixture: dryAir })
  const vapour = saturationPressure(bench.temperature)
  expect(moist / dry).toBeCloseTo(99_000 / (99_000 - vapour), 12)
})

test('BTPS at a pressure of 1 atm is BTPS', () => {
  const { pressure, temperature, waterVapourPressure, moisture } = btps
  const there = btpsAt({ name: 'at 1 atm', pressure })
  expect(there).toMatchObject({ pressure, temperature, moisture })
  expect(there.waterVapourPressure).toBeCloseTo(waterVapourPressure, 1.5)
})

// Ventilation of a diver: the same gas fills less at depth, but the vapour pressure stays.
test('at 601.325 kPa the factor from STPD to BTPS falls to 0.19334', () => {
  const from = freeGasOf(1, litre, stpd)
  const deep = btpsAt({ name: 'at 50 m', pressure: absolute(601.325, kilopascal) })
  const factor = inUnit(freeGasAt(from, { from: stpd, to: deep, mixture: dryAir, gas: 'ideal' }), litre)
  // worked out apart from this library with the conventional 6266 Pa; ours is 16 Pa more
  expect(factor / 0.193342426576062).toBeCloseTo(1, 4)
  expect(factor).toBeGreaterThan(0.193342426576062)
})

test.each([
  { argument: 'temperature', state: { ...bench, temperature: Number.NaN } },
  { argument: 'temperature', state: { ...bench, temperature: 18 } },
  { argument: 'pressure', state: { ...bench, pressure: Number.NaN } },
  { argument: 'pressure', state: { ...bench, pressure: Infinity } },
  { argument: 'pressure', state: { ...bench, pressure: -1e5 } },
])('names $argument when it is wrong', ({ argument, state }) => {
  const range = expect.objectContaining({ code: 'range', argument })
  expect(() => atpd(state as typeof bench)).toThrow(range)
  expect(() => atps(state as typeof bench)).toThrow(range)
})

test('refuses a pressure that the vapour alone fills', () => {
  const steam = { name: 'steam', pressure: absolute(15, millibar), temperature: temperatureOf(18, celsius) }
  expect(atpd(steam).waterVapourPressure).toBe(0)
  expect(() => atps(steam)).toThrow(expect.objectContaining({ code: 'range', argument: 'pressure' }))
})

test('types: a measured state carries its own name, so that gas of two states does not add', () => {
  const hall = { ...bench, name: 'hall' } as const
  expectTypeOf(atps(hall)).toEqualTypeOf<ReferenceCondition<'ATPS hall'>>()
  const onBench = freeGasOf(1, litre, atps({ ...bench, name: 'bench' }))
  const inHall = freeGasOf(1, litre, atps(hall))
  expect(sumOf(onBench, onBench)).toBe(2 * onBench)
  // @ts-expect-error gas measured at two states
  sumOf(onBench, inHall)
  // @ts-expect-error saturated and dry
  sumOf(onBench, freeGasOf(1, litre, atpd({ ...bench, name: 'bench' })))
})
