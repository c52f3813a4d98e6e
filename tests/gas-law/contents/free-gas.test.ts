import { assert, constantFrom, double, property } from 'fast-check'
import { expect, expectTypeOf, test } from 'vitest'
import {
  amountOfFreeGas,
  amountOfGas,
  btps,
  btpsConventional,
  freeGas,
  freeGasAt,
  freeGasByModel,
  freeGasOfAmount,
  type GasContents,
  isoStandard,
  massOfGas,
  normalCondition,
  referenceConditions,
  roomCondition,
  stpd,
} from '../../../src/gas-law/index.ts'
import { dryAir, heliox, molarMass, nitrox, pureGas, trimix } from '../../../src/gas-law/mixture/mixture.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  type FreeGas,
  freeGasOf,
  gauge,
  internalVolumeOf,
  litre,
  measure,
  millilitre,
  sumOf,
  temperatureOf,
} from '../../../src/units/index.ts'

const ambientPressure = absolute(1, atmosphere)
const cylinder = {
  internalVolume: internalVolumeOf(12, litre),
  pressure: absolute(200, bar),
  temperature: temperatureOf(15, celsius),
  mixture: dryAir,
}

test('ideal gas at the reference temperature is pressure ratio times internal volume', () => {
  const ratio = cylinder.pressure / isoStandard.pressure
  expect(freeGas(cylinder, { reference: isoStandard, gas: 'ideal' })).toBeCloseTo(cylinder.internalVolume * ratio, 12)
})

test('twice the internal volume holds twice the free gas', () => {
  assert(
    property(double({ min: 0.1, max: 500, noNaN: true }), (n) => {
      const single = freeGas({ ...cylinder, internalVolume: internalVolumeOf(n, litre) }, { reference: isoStandard })
      const twin = freeGas({ ...cylinder, internalVolume: internalVolumeOf(2 * n, litre) }, { reference: isoStandard })
      expect(twin / single).toBeCloseTo(2, 12)
    }),
  )
})

test('free gas taken from one condition to another is the free gas counted there, and comes back', () => {
  const mixtures = [dryAir, nitrox(0.32), trimix({ oxygen: 0.18, helium: 0.45 }), heliox(0.1)]
  assert(
    property(
      constantFrom(...referenceConditions),
      constantFrom(...referenceConditions),
      constantFrom(...mixtures),
      constantFrom('real' as const, 'ideal' as const),
      (from, to, mixture, gas) => {
        const contents: GasContents = { ...cylinder, mixture }
        const there = freeGas(contents, { reference: from, gas })
        const here = freeGasAt(there, { from, to, mixture, gas })
        expect(here / freeGas(contents, { reference: to, gas })).toBeCloseTo(1, 13)
        expect(freeGasAt(here, { from: to, to: from, mixture, gas }) / there).toBeCloseTo(1, 13)
        expect(amountOfFreeGas(here, { reference: to, mixture, gas }) / amountOfGas(contents, { gas })).toBeCloseTo(
          1,
          13,
        )
      },
    ),
  )
})

test('a gauge pressure with its ambient pressure is the absolute pressure', () => {
  const { pressure, ...rest } = cylinder
  const read: GasContents = { ...rest, gaugePressure: gauge(200 - 1.01325, bar), ambientPressure }
  expect(amountOfGas(read) / amountOfGas({ ...rest, pressure })).toBeCloseTo(1, 13)
})

test('mass is amount times molar mass', () => {
  expect(massOfGas(cylinder)).toBe(amountOfGas(cylinder) * molarMass(dryAir))
})

// Worked out apart from this library with the same equation: gauge pressures over 1.01325 bar, 20 °C.
test.each([
  { name: 'air at 200 bar', mixture: dryAir, at: 200, overstated: 0.028 },
  { name: 'air at 300 bar', mixture: dryAir, at: 300, overstated: 0.106 },
  { name: 'trimix 18/45 at 232 bar', mixture: trimix({ oxygen: 0.18, helium: 0.45 }), at: 232, overstated: 0.134 },
  { name: 'oxygen at 200 bar', mixture: pureGas('oxygen'), at: 200, overstated: -0.06 },
])('the ideal law overstates $name by $overstated', ({ mixture, at, overstated }) => {
  const contents = {
    internalVolume: internalVolumeOf(12, litre),
    gaugePressure: gauge(at, bar),
    ambientPressure,
    temperature: temperatureOf(20, celsius),
    mixture,
  }
  const { real, ideal, overstatement } = freeGasByModel(contents, { reference: roomCondition })
  expect(overstatement).toBeCloseTo(overstated, 3)
  expect(ideal / real - 1).toBe(overstatement)
})

// Equation of ventilation, STPD to BTPS: (310.15/273.15) 101325/(101325 - 6266) with the conventional vapour pressure.
test('ideal gas at BTPS takes up the room of its water vapour', () => {
  const dry = freeGasOf(1, litre, stpd)
  const moist = freeGasAt(dry, { from: stpd, to: btpsConventional, mixture: dryAir, gas: 'ideal' })
  expect(moist / dry).toBeCloseTo(((310.15 / 273.15) * 101_325) / (101_325 - 6266), 12)
  const own = freeGasAt(dry, { from: stpd, to: btps, mixture: dryAir, gas: 'ideal' })
  expect(own / moist - 1).toBeCloseTo(1.7e-4, 5) // 16 Pa of 95 kPa
})

test('elastic expansion adds in proportion to the gauge pressure', () => {
  const gaugePressure = gauge(200, bar)
  const { pressure, ...rest } = cylinder
  const rigid: GasContents = { ...rest, gaugePressure, ambientPressure }
  const elasticExpansion = { volume: measure(60, millilitre), at: gauge(300, bar) }
  expect(pressure).toBe(2e7)
  expect(amountOfGas({ ...rigid, elasticExpansion }) / amountOfGas(rigid)).toBeCloseTo(1 + 0.04 / 12, 12)
})

test.each([
  { field: 'contents.internalVolume', contents: { ...cylinder, internalVolume: internalVolumeOf(0, litre) } },
  { field: 'contents.internalVolume', contents: { ...cylinder, internalVolume: Number.NaN } },
  { field: 'contents.pressure', contents: { ...cylinder, pressure: absolute(3000, bar) } },
  { field: 'contents.pressure', contents: { ...cylinder, pressure: -1e5 } },
  { field: 'contents.pressure', contents: { ...cylinder, pressure: Infinity } },
  { field: 'contents.temperature', contents: { ...cylinder, temperature: 20 } },
  {
    field: 'contents.ambientPressure',
    contents: { ...cylinder, gaugePressure: gauge(200, bar), ambientPressure: Number.NaN },
  },
  {
    field: 'contents.elasticExpansion.volume',
    contents: {
      ...cylinder,
      gaugePressure: gauge(200, bar),
      ambientPressure,
      elasticExpansion: { volume: -1, at: 1e7 },
    },
  },
])('names $field when it is wrong', ({ field, contents }) => {
  const untyped = contents as unknown as GasContents
  expect(() => freeGas(untyped, { reference: isoStandard })).toThrow(
    expect.objectContaining({ code: 'range', argument: field }),
  )
})

test('says that a gauge pressure wants the ambient pressure', () => {
  expect(() => freeGas({ ...cylinder, pressure: absolute(3000, bar) }, { reference: isoStandard })).toThrow(
    'contents.pressure is 3000 bar, expected above 0 and at most 700 bar. Add the ambient pressure to a gauge pressure.',
  )
})

test('refuses fractions that do not add up to 1', () => {
  const contents = { ...cylinder, mixture: { ...dryAir, oxygen: 0.5 } as typeof dryAir }
  expect(() => freeGas(contents, { reference: isoStandard, gas: 'ideal' })).toThrow(
    expect.objectContaining({ code: 'mixture', argument: 'contents.mixture' }),
  )
})

test('refuses a reference condition that is vapour alone', () => {
  const reference = { ...isoStandard, waterVapourPressure: isoStandard.pressure }
  expect(() => freeGas(cylinder, { reference })).toThrow(
    expect.objectContaining({ code: 'range', argument: 'options.reference.waterVapourPressure' }),
  )
})

test('refuses an amount or a volume that is none', () => {
  const options = { reference: isoStandard, mixture: dryAir }
  for (const bad of [Number.NaN, Infinity, -1]) {
    const range = expect.objectContaining({ code: 'range' })
    expect(() => freeGasOfAmount(bad as never, options)).toThrow(range)
    expect(() => amountOfFreeGas(bad as never, options)).toThrow(range)
  }
})

test('types: free gas knows its reference condition, and adds only at one', () => {
  const iso = freeGas(cylinder, { reference: isoStandard })
  const normal = freeGas(cylinder, { reference: normalCondition })
  expectTypeOf(iso).toEqualTypeOf<FreeGas<'15 °C, 1.01325 bar, dry'>>()
  expect(sumOf(iso, iso)).toBe(2 * iso)
  // @ts-expect-error free gas at two reference conditions
  sumOf(iso, normal)
  freeGasAt(normal, { from: normalCondition, to: isoStandard, mixture: dryAir })
  // @ts-expect-error stated at another condition than it is
  freeGasAt(normal, { from: isoStandard, to: normalCondition, mixture: dryAir })
  // @ts-expect-error STPD and the normal condition are one state under two names: the name counts
  sumOf(normal, freeGas(cylinder, { reference: stpd }))
})

test('types: free gas is no internal volume, gauge is no absolute pressure, and the reference must be named', () => {
  const iso = freeGas(cylinder, { reference: isoStandard })
  amountOfGas({ ...cylinder, internalVolume: internalVolumeOf(2, litre) })
  // @ts-expect-error free gas for internal volume
  amountOfGas({ ...cylinder, internalVolume: iso })
  amountOfGas({ ...cylinder, pressure: absolute(100, bar) })
  // @ts-expect-error gauge where absolute belongs
  amountOfGas({ ...cylinder, pressure: gauge(100, bar) })
  const { pressure, ...rest } = cylinder
  expect(amountOfGas({ ...rest, gaugePressure: gauge(100, bar), ambientPressure })).toBeLessThan(
    amountOfGas({ ...rest, pressure }),
  )
  // @ts-expect-error a gauge pressure without the pressure around the gauge
  expect(() => amountOfGas({ ...rest, gaugePressure: gauge(100, bar) })).toThrow()
  // @ts-expect-error no reference condition
  expect(() => freeGas(cylinder, {})).toThrow()
})
