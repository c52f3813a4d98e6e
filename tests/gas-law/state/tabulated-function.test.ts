import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import { rowCodes } from '../../../src/errors/index.ts'
import {
  dryAir,
  gasState,
  nitrox,
  tabulated,
  tabulatedInto,
  tabulatedValue,
  viscosity,
} from '../../../src/gas-law/index.ts'
import { absolute, bar, celsius, kelvin, temperatureOf } from '../../../src/units/index.ts'

const box = {
  temperature: [temperatureOf(0, celsius), temperatureOf(50, celsius)],
  pressure: [absolute(1, bar), absolute(290, bar)],
  tolerance: 1e-6,
} as const
const inBox = [double({ min: 1, max: 290, noNaN: true }), double({ min: 273.15, max: 323.15, noNaN: true })] as const

test('a tabulated viscosity is the viscosity, within the stated error', () => {
  const mixture = nitrox(0.32)
  const table = tabulated((pressure, temperature) => viscosity(mixture, { pressure, temperature }), box)
  assert(
    property(...inBox, (p, t) => {
      const state = { pressure: absolute(p, bar), temperature: temperatureOf(t, kelvin) }
      const found = tabulatedValue(table, state.pressure, state.temperature)
      expect(Math.abs(found / viscosity(mixture, state) - 1)).toBeLessThan(1e-6)
    }),
  )
})

test('an enthalpy, which passes through zero, is tabulated to a part of its largest value', () => {
  const enthalpy = (p: number, t: number): number =>
    gasState(dryAir, { pressure: absolute(p, bar), temperature: temperatureOf(t, kelvin) }).molarEnthalpy
  const table = tabulated((p, t) => gasState(dryAir, { pressure: p, temperature: t }).molarEnthalpy, {
    ...box,
    errorOf: 'largest',
  })
  const largest = Math.abs(enthalpy(290, 273.15))
  assert(
    property(...inBox, (p, t) => {
      const found = tabulatedValue(table, absolute(p, bar), temperatureOf(t, kelvin))
      expect(Math.abs(found - enthalpy(p, t))).toBeLessThan(1e-6 * 2 * largest)
    }),
  )
})

test('rows outside the box and rows without a number have codes of their own, and NaN', () => {
  const table = tabulated((p, t) => p / t, box)
  const columns = {
    pressurePascal: Float64Array.of(200e5, Number.NaN, 400e5, 200e5, Number.POSITIVE_INFINITY),
    temperatureKelvin: Float64Array.of(300, 300, 300, 200, 300),
  }
  const out = { value: new Float64Array(5), code: new Uint8Array(5).fill(9) }
  tabulatedInto(out, columns, table)
  expect([...out.code]).toEqual([rowCodes.good, rowCodes.missing, ...Array<number>(3).fill(rowCodes.outOfRange)])
  expect(out.value[0]).toBeCloseTo(200e5 / 300, 1)
  expect([...out.value.slice(1)].every(Number.isNaN)).toBe(true)
})

test('where the function has no value the box is cut, and the row says so', () => {
  const table = tabulated((p, t) => (t < 285 ? Number.NaN : p * t), box)
  expect(table.cellsCut).toBeGreaterThan(0)
  const out = { value: new Float64Array(1), code: new Uint8Array(1) }
  tabulatedInto(out, { pressurePascal: Float64Array.of(1e7), temperatureKelvin: Float64Array.of(275) }, table)
  expect(out.code[0]).toBe(rowCodes.outsideValidity)
  expect(() => tabulatedValue(table, absolute(100, bar), temperatureOf(275, kelvin))).toThrow(
    'state is 100 bar and 275 K',
  )
})

test('a kink is refused, and so are options that are none', () => {
  expect(() => tabulated((_, t) => Math.abs(t - 290), { ...box, errorOf: 'largest', tolerance: 1e-9 })).toThrow(
    expect.objectContaining({ code: 'not-converged' }),
  )
  expect(() => tabulated(() => Number.NaN, box)).toThrow(expect.objectContaining({ code: 'outside-validity' }))
  // @ts-expect-error a misspelt option
  expect(() => tabulated((p) => p, { ...box, tolerence: 1 })).toThrow('Did you mean tolerance?')
  // @ts-expect-error there is no such word
  expect(() => tabulated((p) => p, { ...box, errorOf: 'Largest' })).toThrow("Did you mean 'largest'?")
})
