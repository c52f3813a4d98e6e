import { assert, double, property } from 'fast-check'
import { expect, test } from 'vitest'
import {
  dryAir,
  enrichedAir,
  gases,
  heliox,
  type Mixture,
  mixture,
  molarDensity,
  molarMass,
  nitrox,
  pureGas,
  sameMixture,
  trimix,
} from '../../../src/gas-law/index.ts'
import { absolute, bar, fractionOf, kelvin, temperatureOf } from '../../../src/units/index.ts'

const refused = expect.objectContaining({ code: 'mixture' })
const share = double({ min: 0, max: 1, noNaN: true })

function sum(gas: Mixture): number {
  return gases.reduce((total, name) => total + gas[name], 0)
}

test('every way of making a mixture gives fractions that add up to 1', () => {
  assert(
    property(share, share, (a, b) => {
      expect(sum(nitrox(a))).toBeCloseTo(1, 14)
      expect(sum(heliox(a))).toBeCloseTo(1, 14)
      expect(sum(trimix({ oxygen: a * b, helium: a * (1 - b) }))).toBeCloseTo(1, 14)
      expect(sum(enrichedAir(0.2095 + 0.7905 * a))).toBeCloseTo(1, 14)
      expect(sum(mixture({ oxygen: a, helium: b, argon: 0.01 }, { normalise: true }))).toBeCloseTo(1, 14)
    }),
  )
  expect(sum(dryAir)).toBe(1)
  for (const name of gases) expect(pureGas(name)[name]).toBe(1)
})

test('enriched air keeps the proportions of air, and air itself is its lower end', () => {
  const rich = enrichedAir(fractionOf(0.4))
  expect(rich.oxygen).toBe(0.4)
  expect(rich.argon / rich.nitrogen).toBeCloseTo(dryAir.argon / dryAir.nitrogen, 14)
  expect(enrichedAir(0.2095)).toEqual(dryAir)
  expect(() => enrichedAir(0.2)).toThrow(refused)
})

test('trimix fills up with nitrogen, to nothing if need be', () => {
  expect(trimix({ oxygen: 0.18, helium: 0.45 }).nitrogen).toBeCloseTo(0.37, 14)
  expect(trimix({ oxygen: 0.21, helium: 0.79 })).toEqual(mixture({ oxygen: 0.21, helium: 0.79 }))
  expect(() => trimix({ oxygen: 0.5, helium: 0.6 })).toThrow(refused)
})

test.each([
  [{ oxygen: 0.21, nitrogen: 0.78 }, 'fractions is 0.99 in sum, expected 1.'],
  [{ oxygen: -0.1, nitrogen: 1.1 }, 'fractions.oxygen is -0.1'],
  [{ oxygen: Number.NaN, nitrogen: 1 }, 'fractions.oxygen is NaN'],
  [{ oxygen: Infinity }, 'fractions.oxygen is Infinity'],
  [{}, 'fractions is 0 in sum'],
])('%o is no mixture', (fractions, message) => {
  expect(() => mixture(fractions)).toThrow(refused)
  expect(() => mixture(fractions)).toThrow(message)
})

test('a gas that the equation does not know is refused by name', () => {
  // @ts-expect-error neon is no component
  expect(() => mixture({ neon: 0.1, oxygen: 0.9 })).toThrow(
    'fractions.neon is present, expected one of nitrogen, oxygen',
  )
  expect(() => mixture({ toString: 1, oxygen: 1 } as never)).toThrow('fractions.toString is present')
  expect(() => mixture({ oxygen: 1 })).not.toThrow()
})

test('an analysis in per cent, or one that does not add up, is normalised on request only', () => {
  const analysis = { oxygen: 32, nitrogen: 67.8 }
  expect(() => mixture(analysis)).toThrow(refused)
  expect(mixture(analysis, { normalise: true }).oxygen).toBeCloseTo(32 / 99.8, 14)
})

// Molar masses as in the equation; dry air of four gases
test('molar mass of dry air is 28.9657 g/mol', () => {
  expect(molarMass(dryAir) * 1000).toBeCloseTo(28.9657, 4)
})

test('only a checked mixture fits: a record of fractions does not', () => {
  const fractions = { nitrogen: 1, oxygen: 0, argon: 0, helium: 0, carbonDioxide: 0, water: 0, hydrogen: 0 }
  const at = [absolute(1, bar), temperatureOf(300, kelvin)] as const
  // @ts-expect-error plain record
  expect(molarDensity(fractions, ...at)).toBe(molarDensity(mixture(fractions), ...at))
})

test('two mixtures are the same by their fractions, not by being one object', () => {
  expect(sameMixture(dryAir, JSON.parse(JSON.stringify(dryAir)) as Mixture)).toBe(true)
  expect(sameMixture(nitrox(0.32), mixture({ nitrogen: 0.68, oxygen: 0.32 }))).toBe(true)
  expect(sameMixture(nitrox(0.32), nitrox(0.320001))).toBe(false)
  expect(() => sameMixture(nitrox(0.32), {} as never)).toThrow(refused)
})

test('a percentage, a misspelt gas and a wrong option say what to write', () => {
  expect(() => nitrox(32)).toThrow(
    'oxygen is 32, expected a mole fraction from 0 to 1. This is a percentage: write nitrox(0.32).',
  )
  expect(() => trimix({ oxygen: 18, helium: 45 })).toThrow('write trimix({ oxygen: 0.18, helium: 0.45 }).')
  expect(() => mixture({ oxigen: 1 } as never)).toThrow('Did you mean oxygen?')
  expect(() => mixture({ oxygen: 1 }, { normalize: true } as never)).toThrow('Did you mean normalise?')
  expect(() => trimix({ oxygen: 0.18 } as never)).toThrow('fractions.helium is missing')
  expect(() => pureGas('constructor' as never)).toThrow(refused)
})

test('what is handed in as a mixture has every gas, as a number, and no other', () => {
  for (const slip of [null, undefined, 'air', [], {}, { oxygen: 0.21, nitrogen: 0.79 }])
    expect(() => molarMass(slip as never)).toThrow(refused)
  expect(() => molarMass({ ...dryAir, oxygen: '0.2095' } as never)).toThrow("mixture.oxygen is '0.2095'")
  expect(() => molarMass({ ...dryAir, neon: 0 } as never)).toThrow('mixture.neon')
})
