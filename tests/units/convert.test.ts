import { assert, constantFrom, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  type AbsolutePressure,
  type Accepted,
  absolute,
  allUnits,
  atmosphere,
  bar,
  celsius,
  convertInto,
  depthOf,
  difference,
  differenceInUnit,
  differenceOf,
  fahrenheit,
  fractionOf,
  freeGasOf,
  gauge,
  internalVolumeOf,
  inUnit,
  isWithin,
  joulePerLitre,
  kelvin,
  kilogram,
  kilopascal,
  litre,
  type MeasuredDimension,
  measure,
  metre,
  offsetBy,
  percent,
  psi,
  requireWithin,
  sumOf,
  temperatureOf,
  toAbsolute,
  toGauge,
  type Unit,
} from '../../src/units/index.ts'

const measurable = allUnits.filter(
  (unit) => !['pressure', 'temperature'].includes(unit.quantity),
) as Unit<MeasuredDimension>[]

test('a value comes back from any unit to within two ulp', () => {
  assert(
    property(constantFrom(...measurable), double({ min: 1e-6, max: 1e6, noNaN: true }), (unit, n) => {
      expect(Math.abs(inUnit(measure(n, unit), unit) / n - 1)).toBeLessThanOrEqual(4.5e-16)
    }),
  )
})

test('gauge and absolute differ by the ambient pressure, both ways', () => {
  const ambient = absolute(1, atmosphere)
  const filled = gauge(232, bar)
  expect(inUnit(toAbsolute(filled, ambient), bar)).toBeCloseTo(233.01325, 12)
  expect(toGauge(toAbsolute(filled, ambient), ambient)).toBeCloseTo(filled, 6)
})

test('the zero of a temperature scale enters a temperature and not a difference', () => {
  expect(temperatureOf(32, fahrenheit)).toBeCloseTo(273.15, 12)
  expect(inUnit(temperatureOf(70, fahrenheit), celsius)).toBeCloseTo(21.1111111111, 9)
  expect(difference(18, fahrenheit)).toBeCloseTo(10, 12)
  expect(differenceInUnit(difference(10, celsius), fahrenheit)).toBeCloseTo(18, 12)
  expect(differenceInUnit(differenceOf(temperatureOf(20, celsius), temperatureOf(15, celsius)), celsius)).toBeCloseTo(
    5,
    9,
  )
})

test('energy per volume is a pressure: 1 J/L is 1 kPa', () => {
  expect(inUnit(difference(1, joulePerLitre), kilopascal)).toBe(1)
})

test.each([
  [
    () => absolute(-0.1, bar),
    'absolute pressure is -0.1 bar, expected at least 0 bar. Nothing is below vacuum: a reading below zero is a gauge pressure.',
  ],
  [() => absolute(Number.NaN, bar), 'absolute pressure is NaN bar, expected at least 0 bar.'],
  [() => gauge(Number.POSITIVE_INFINITY, psi), 'gauge pressure is Infinity psi, expected a finite number.'],
  [() => temperatureOf(-300, celsius), 'temperature is -300 °C, expected above -273.15 °C.'],
  [() => temperatureOf(0, kelvin), 'temperature is 0 K, expected above 0 K.'],
  [() => depthOf(-3, metre), 'depth is -3 m, expected at least 0 m. Depth counts downwards from the surface.'],
  [
    () => fractionOf(32),
    'mole fraction is 32, expected at least 0 and at most 1. Give 32 per cent as 0.32, or name the unit `percent`.',
  ],
  [() => fractionOf(101, percent), 'mole fraction is 101 %, expected at least 0 and at most 100 %.'],
  [() => measure(Number.NaN, kilogram), 'mass is NaN kg, expected a finite number.'],
  [() => internalVolumeOf(-12, litre), 'internal volume is -12 L, expected at least 0 L.'],
  [
    () => toAbsolute(gauge(-2, bar), absolute(1, bar)),
    'pressure + ambientPressure is -100000 Pa, expected at least 0 Pa.',
  ],
])('%# refuses with argument, value, range and remedy', (make, message) => {
  expect(make).toThrow(message)
  expect(make).toThrow(expect.objectContaining({ code: 'range' }))
})

// Checked by `tsc`: each mistake has a compiling twin beside it.
test('mistakes of datum, kind and unit do not compile', () => {
  const filled = gauge(200, bar)
  const inside = absolute(201, bar)
  const takesAbsolute = (p: AbsolutePressure): number => p

  takesAbsolute(inside)
  // @ts-expect-error gauge for absolute
  takesAbsolute(filled)
  // @ts-expect-error the bare sum of two absolutes is a plain number
  takesAbsolute(inside + inside)
  takesAbsolute(offsetBy(inside, difference(1, bar)))
  // @ts-expect-error a plain number is no pressure
  takesAbsolute(200)

  differenceOf(inside, inside)
  // @ts-expect-error difference of an absolute and a gauge pressure
  differenceOf(inside, filled)

  absolute(200, bar)
  // @ts-expect-error a quantity cannot be given a second unit
  absolute(filled, bar)
  // @ts-expect-error a volume unit for a pressure
  expect(() => absolute(1, litre)).toThrow('Use bar or psi.')

  inUnit(inside, bar)
  // @ts-expect-error a pressure read in litres
  inUnit(inside, litre)
  // @ts-expect-error a difference of temperatures has no zero
  inUnit(difference(5, celsius), celsius)
  differenceInUnit(difference(5, celsius), celsius)

  // @ts-expect-error a pressure without its datum
  expect(() => measure(1, bar)).toThrow('Say gauge(), absolute() or difference().')
  measure(1, litre)

  const atZero = { name: '0 °C, 1 atm' } as const
  const atFifteen = { name: '15 °C, 1 atm' } as const
  sumOf(freeGasOf(1, litre, atZero), freeGasOf(2, litre, atZero))
  // @ts-expect-error free gas of two reference conditions
  sumOf(freeGasOf(1, litre, atZero), freeGasOf(2, litre, atFifteen))
  // @ts-expect-error absolute pressures do not add
  sumOf(inside, inside)

  const takesInternal = (v: ReturnType<typeof internalVolumeOf>): number => v
  takesInternal(internalVolumeOf(12, litre))
  // @ts-expect-error free gas for internal volume
  takesInternal(freeGasOf(12, litre, atZero))
  // @ts-expect-error a temperature difference for a temperature
  differenceOf(temperatureOf(20, celsius), difference(5, celsius))
  differenceOf(temperatureOf(20, celsius), temperatureOf(15, celsius))
  expect(inside).toBe(20_100_000)
})

test('a column converts like its scalars and marks the rows that are not finite', () => {
  const column = Float64Array.of(3000, Number.NaN, 2250, Number.POSITIVE_INFINITY)
  const out = { value: new Float64Array(4), code: new Uint8Array(4) }
  convertInto(out, column, { from: psi, to: bar })
  expect([...out.code]).toEqual([0, 1, 0, 2])
  expect((out.value[0] ?? 0) / inUnit(absolute(3000, psi), bar)).toBeCloseTo(1, 15)
  expect((out.value[2] ?? 0) / inUnit(absolute(2250, psi), bar)).toBeCloseTo(1, 15)
  convertInto(out, Float64Array.of(68, 32), { from: fahrenheit, to: celsius })
  expect(out.value[0]).toBeCloseTo(20, 12)
  expect(out.value[1]).toBeCloseTo(0, 12)
})

test.each([
  ['a misspelt limit', { atMots: 3, unit: bar, hint: '' }],
  ['a limit that is a text', { atMost: '3', unit: bar, hint: '' }],
  ['a limit that is null', { above: null, unit: bar, hint: '' }],
  ['no unit', { atMost: 3, hint: '' }],
  ['nothing', null],
])('a row of an accepted range with %s lets nothing through', (_, row) => {
  expect(() => isWithin(1e5, row as never)).toThrow(expect.objectContaining({ code: 'input', argument: 'accepted' }))
  expect(() => requireWithin('pressure', 1e5, row as never)).toThrow('accepted is')
})

test('a row of an accepted range may carry words such as a source', () => {
  expect(isWithin(1e5, { atMost: 3, unit: bar, hint: '', source: 'memory' } as Accepted)).toBe(true)
})

test('numbers that would overflow when squared, or when divided by, are out of every range', () => {
  const any: Accepted = { unit: bar, hint: 'Check it.' }
  for (const large of [1e150, -1e308]) {
    expect(isWithin(large, any)).toBe(false)
    expect(() => requireWithin('force', large, { ...any, below: 0 })).toThrow('expected a size below 1e150')
  }
  expect(() => requireWithin('force', 5e-324, { ...any, above: 0 })).toThrow('force is 0 bar, expected above 0 bar')
  expect(isWithin(2e-150, { ...any, above: 0 })).toBe(true)
  for (const inside of [0, -0, 5e-324, -1e149]) expect(isWithin(inside, any)).toBe(true)
})
