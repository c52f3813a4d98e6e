import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  dryAir,
  gases,
  graham,
  henry,
  idealGasDensity,
  mixtureOfPartialPressures,
  molarGasConstant,
  molarMass,
  partialPressure,
  partialPressures,
  pressureChange,
  pressureVolume,
  pureGas,
  totalPressure,
  trimix,
  vanDerWaalsConstants,
  vanDerWaalsMolarDensity,
  vanDerWaalsPressure,
} from '../../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  barLitre,
  celsius,
  difference,
  fractionOf,
  gauge,
  gramPerMole,
  internalVolumeOf,
  inUnit,
  kelvin,
  litre,
  type MolarDensity,
  measure,
  molePerCubicMetre,
  molePerLitre,
  one,
  pascal,
  temperatureOf,
} from '../../../src/units/index.ts'

const pressures = double({ min: 0.01, max: 300, noNaN: true }).map((n) => absolute(n, bar))
const range = (argument: string): unknown => expect.objectContaining({ code: 'range', argument })

test('Dalton: the partial pressures of a mixture add up to its pressure, and give the mixture back', () => {
  const mixture = trimix({ oxygen: 0.18, helium: 0.45 })
  assert(
    property(pressures, (pressure) => {
      const parts = partialPressures(mixture, pressure)
      expect(totalPressure(parts) / pressure).toBeCloseTo(1, 12)
      expect(parts.helium).toBe(partialPressure(mixture.helium, pressure))
      const again = mixtureOfPartialPressures(parts)
      for (const gas of gases) expect(again[gas]).toBeCloseTo(mixture[gas], 12)
    }),
  )
})

test('Dalton: refuses what is no partial pressure, by name', () => {
  for (const bad of [Number.NaN, Infinity, -1]) {
    expect(() => totalPressure({ oxygen: bad as never })).toThrow(range('pressures.oxygen'))
    expect(() => partialPressures(dryAir, bad as never)).toThrow(range('pressure'))
    expect(() => partialPressure(fractionOf(0.2, one), bad as never)).toThrow(range('pressure'))
    expect(() => partialPressure(bad as never, absolute(1, bar))).toThrow(range('fraction'))
  }
  expect(() => totalPressure({ neon: absolute(1, bar) } as never)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'pressures.neon' }),
  )
  expect(() => totalPressure({ oxigen: absolute(1, bar) } as never)).toThrow('Did you mean oxygen?')
  expect(() => mixtureOfPartialPressures({ oxygen: absolute(0, bar) })).toThrow(
    expect.objectContaining({ code: 'mixture', argument: 'fractions' }),
  )
})

test('Henry: twice the partial pressure dissolves twice the gas, whichever quantity is asked for', () => {
  assert(
    property(pressures, double({ min: 0.5, max: 3, noNaN: true }), (initialPartialPressure, factor) => {
      const initialConcentration = measure(0.3, molePerCubicMetre)
      const finalPartialPressure = absolute(inUnit(initialPartialPressure, bar) * factor, bar)
      const known = { initialPartialPressure, initialConcentration, finalPartialPressure }
      const { finalConcentration } = henry(known)
      expect(finalConcentration / initialConcentration).toBeCloseTo(factor, 12)
      const back = henry({ initialPartialPressure, finalPartialPressure, finalConcentration })
      expect(back.initialConcentration / initialConcentration).toBeCloseTo(1, 12)
    }),
  )
})

test('Graham: a gas of a quarter of the molar mass effuses twice as fast, and its molar mass is found from that', () => {
  const secondMolarMass = measure(32, gramPerMole)
  const firstMolarMass = measure(8, gramPerMole)
  expect(graham({ firstMolarMass, secondMolarMass }).rateRatio).toBeCloseTo(2, 14)
  const rateRatio = measure(2, one)
  expect(inUnit(graham({ rateRatio, secondMolarMass }).firstMolarMass, gramPerMole)).toBeCloseTo(8, 12)
  expect(inUnit(graham({ rateRatio, firstMolarMass }).secondMolarMass, gramPerMole)).toBeCloseTo(32, 12)
  expect(() => graham({ rateRatio: Number.NaN as never, firstMolarMass })).toThrow(
    'rateRatio is NaN, expected above 0 and at most 1000. Check the unit.',
  )
})

test('ideal density: a weighed density gives the molar mass that gave the density', () => {
  const state = { pressure: absolute(3, bar), temperature: temperatureOf(12, celsius) }
  const { density } = idealGasDensity({ ...state, molarMass: molarMass(dryAir) })
  expect(density).toBeCloseTo((3e5 * molarMass(dryAir)) / (molarGasConstant * 285.15), 12)
  expect(idealGasDensity({ ...state, density }).molarMass / molarMass(dryAir)).toBeCloseTo(1, 12)
})

test('van der Waals: density from pressure is the inverse of pressure from density, above the critical temperature and below', () => {
  const warm = { constants: vanDerWaalsConstants.nitrogen, temperature: temperatureOf(290, kelvin) }
  const cold = { constants: vanDerWaalsConstants.carbonDioxide, temperature: temperatureOf(280, kelvin) }
  assert(
    property(double({ min: 0.001, max: 20, noNaN: true }), (n) => {
      const density = measure(n, molePerLitre)
      const pressure = vanDerWaalsPressure({ ...warm, molarDensity: density })
      expect(vanDerWaalsMolarDensity({ ...warm, pressure }) / density).toBeCloseTo(1, 10)
    }),
  )
  assert(
    property(double({ min: 0.001, max: 3, noNaN: true }), (n) => {
      const density = measure(n, molePerLitre)
      const pressure = vanDerWaalsPressure({ ...cold, molarDensity: density })
      expect(vanDerWaalsMolarDensity({ ...cold, pressure }) / density).toBeCloseTo(1, 10)
    }),
  )
})

test('van der Waals: thin gas is ideal, and nothing is nothing', () => {
  const state = { constants: vanDerWaalsConstants.oxygen, temperature: temperatureOf(290, kelvin) }
  for (const pascals of [0.1, 1e-30, 1e-200]) {
    const density = vanDerWaalsMolarDensity({ ...state, pressure: absolute(pascals, pascal) })
    expect(density / (pascals / (molarGasConstant * 290))).toBeCloseTo(1, 7)
  }
  expect(vanDerWaalsMolarDensity({ ...state, pressure: absolute(0, bar) })).toBe(0)
})

test('van der Waals: refuses a pressure at which it has only a liquid', () => {
  const state = { constants: vanDerWaalsConstants.carbonDioxide, temperature: temperatureOf(250, kelvin) }
  const { pressure } = { pressure: absolute(20, bar) }
  expect(vanDerWaalsMolarDensity({ ...state, pressure })).toBeGreaterThan(0)
  expect(() => vanDerWaalsMolarDensity({ ...state, pressure: absolute(100, bar) })).toThrow(
    expect.objectContaining({ code: 'outside-validity', argument: 'pressure' }),
  )
})

test('van der Waals: next to absolute zero it says that it found nothing', () => {
  const state = { constants: vanDerWaalsConstants.helium, temperature: temperatureOf(1e-80, kelvin) }
  expect(() => vanDerWaalsMolarDensity({ ...state, pressure: absolute(1e-90, pascal) })).toThrow(
    expect.objectContaining({ code: 'not-converged' }),
  )
})

test('van der Waals: refuses a density beyond the closest packing, and what is no number', () => {
  const state = { constants: vanDerWaalsConstants.helium, temperature: temperatureOf(290, kelvin) }
  expect(() => vanDerWaalsPressure({ ...state, molarDensity: measure(43, molePerLitre) })).toThrow(
    range('molarDensity'),
  )
  for (const bad of [Number.NaN, Infinity, -1]) {
    expect(() => vanDerWaalsPressure({ ...state, molarDensity: bad as MolarDensity })).toThrow(range('molarDensity'))
    expect(() => vanDerWaalsMolarDensity({ ...state, pressure: bad as never })).toThrow(range('pressure'))
    expect(() => vanDerWaalsMolarDensity({ ...state, temperature: bad as never, pressure: absolute(1, bar) })).toThrow(
      range('temperature'),
    )
  }
})

test('bar·litres: a cylinder of 12 L loses 50 bar to 600 bar·L', () => {
  const cylinder = internalVolumeOf(12, litre)
  expect(inUnit(pressureVolume(gauge(200, bar), cylinder), barLitre)).toBeCloseTo(2400, 10)
  const lost = pressureChange(pressureVolume(difference(50, bar), cylinder), cylinder)
  expect(inUnit(lost, bar)).toBeCloseTo(50, 12)
  expect(() => pressureVolume(gauge(-1, bar), cylinder)).toThrow(range('pressure'))
  expect(() => pressureChange(Number.NaN as never, cylinder)).toThrow(range('product'))
})

test('types: bar·litres are no free gas and no internal volume', () => {
  const cylinder = internalVolumeOf(12, litre)
  const product = pressureVolume(gauge(200, bar), cylinder)
  pressureChange(product, cylinder)
  // @ts-expect-error bar·litres for a volume
  expect(() => pressureChange(product, product)).toThrow(range('internalVolume'))
  // @ts-expect-error a volume for bar·litres
  pressureChange(cylinder, cylinder)
  expect(molarMass(pureGas('helium'))).toBeLessThan(molarMass(dryAir))
})
