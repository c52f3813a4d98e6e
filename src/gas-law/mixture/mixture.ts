import { LitrebarError, nearestOf, requireKeys, requireWord, shown } from '../../errors/index.ts'
import type { MolarMass, MoleFraction, PlainNumber } from '../../units/quantity.ts'
import { type Gas, gases, molarMasses } from './gas.ts'

declare const checked: unique symbol

/**
 * A gas mixture by mole fractions: every gas is there, those absent as 0, and together they are 1.
 * Made by `mixture`, `nitrox`, `trimix` and so on, which check it; nothing else fits the type.
 */
export interface Mixture extends Readonly<Record<Gas, MoleFraction>> {
  /** @hidden */
  readonly [checked]: true
}

/** Mole fractions as a person gives them; a gas left out is absent. */
export type MoleFractions = { readonly [Name in Gas]?: PlainNumber | MoleFraction }

/** How strictly fractions are taken. */
export interface MixtureOptions {
  /** Divide by the sum, so that an analysis that adds up to 0.998 or 99.8 becomes a mixture. Default false. */
  readonly normalise?: boolean
}

// Decimals as people type them add up to 1 within 1e-15. A sum further off is an unfinished analysis,
// and only its owner knows which gas is to take the rest.
const sumTolerance = 1e-9

/**
 * Gas mixture from mole fractions, which must add up to 1.
 * A volume fraction read off an analyser at ambient pressure is a mole fraction within 0.1 %; a pressure ratio of a
 * filled cylinder is not.
 *
 * @param fractions - mole fraction of each gas present, each 0 to 1, together 1 within 1e-9
 * @param options - `normalise: true` accepts any positive sum and divides by it
 * @returns the mixture
 * @throws LitrebarError `mixture` for an unknown gas, a fraction that is negative or not finite, or a wrong sum
 * @source common-practice
 * @example
 * mixture({ oxygen: 0.21, nitrogen: 0.79 }).oxygen // => 0.21
 */
export function mixture(fractions: MoleFractions, options: MixtureOptions = {}): Mixture {
  if (!isObject(fractions)) throw refusal('fractions', shown(fractions), 'an object of mole fractions', percentHint)
  requireKeys('options', options, { normalise: false })
  if (options.normalise !== undefined) requireWord('options.normalise', options.normalise, [true, false])
  for (const name of Object.keys(fractions)) {
    if (!Object.hasOwn(molarMasses, name)) throw unknownGas(`fractions.${name}`, name)
  }
  const sum = sumOf(fractions)
  if (options.normalise !== true && !(Math.abs(sum - 1) <= sumTolerance)) {
    throw refusal('fractions', `${rounded(sum)} in sum`, '1', 'Correct a fraction, or ask for normalise: true.')
  }
  if (!(sum > 0)) throw refusal('fractions', '0 in sum', 'above 0', 'Give at least one gas.')
  const divisor = options.normalise === true ? sum : 1
  const made = {} as Record<Gas, number>
  for (const name of gases) made[name] = (fractions[name] ?? 0) / divisor
  return Object.freeze(made) as unknown as Mixture
}

/**
 * Refuses what is not a mixture, for input that the compiler has not seen.
 *
 * @param argument - the parameter with its path
 * @param candidate - what is said to be a mixture
 * @throws LitrebarError `mixture`
 */
export function requireMixture(argument: string, candidate: Mixture): void {
  if (!isObject(candidate)) throw refusal(argument, shown(candidate), 'a mixture', makeIt)
  let sum = 0
  for (const name of gases) {
    const x: unknown = candidate[name]
    if (!isFraction(x)) throw refusal(`${argument}.${name}`, shown(x), 'at least 0 and at most 1', makeIt)
    sum += x
  }
  if (!(Math.abs(sum - 1) <= sumTolerance)) {
    throw refusal(argument, `${rounded(sum)} in sum of its fractions`, '1', makeIt)
  }
  for (const name in candidate) if (!Object.hasOwn(molarMasses, name)) throw unknownGas(`${argument}.${name}`, name)
}

const makeIt = 'Make it with mixture(), nitrox(), trimix() or one of their kind.'

/**
 * Whether two mixtures are the same gas: by their fractions, so that one read from a file equals the one written to it.
 *
 * @param a - a mixture
 * @param b - another
 * @returns true where every mole fraction is the same number
 * @throws LitrebarError `mixture` for what is none
 * @source common-practice
 * @example
 * sameMixture(nitrox(0.32), mixture({ oxygen: 0.32, nitrogen: 0.68 }, { normalise: true })) // => true
 */
export function sameMixture(a: Mixture, b: Mixture): boolean {
  requireMixture('a', a)
  requireMixture('b', b)
  // fractions that went through text, or through another order of adding, differ in the last digit
  return gases.every((name) => Math.abs(a[name] - b[name]) <= sameTolerance)
}

const sameTolerance = 1e-12

function sumOf(fractions: MoleFractions): number {
  let sum = 0
  for (const name of gases) {
    const { [name]: x = 0 }: { readonly [Name in Gas]?: unknown } = fractions
    if (!(typeof x === 'number' && x >= 0 && x < Infinity)) {
      throw refusal(`fractions.${name}`, shown(x), 'at least 0 and at most 1', percentHint)
    }
    sum += x
  }
  return sum
}

const percentHint = 'Give a mole fraction: 32 per cent is 0.32.'

function isObject(given: unknown): given is object {
  return typeof given === 'object' && given !== null
}

function isFraction(x: unknown): x is number {
  return typeof x === 'number' && x >= 0 && x <= 1 + sumTolerance
}

/** Refuses a gas that is none of the table, also one with the name of something inherited. */
export function requireGasName(argument: string, gas: unknown): asserts gas is Gas {
  if (typeof gas === 'string' && Object.hasOwn(molarMasses, gas)) return
  if (typeof gas === 'string') throw unknownGas(argument, gas)
  throw refusal(argument, shown(gas), `one of ${gases.join(', ')}`, 'Name the gas.')
}

/** Refuses a fraction given as a percentage, and says how to write it. */
function requireFraction(argument: string, x: unknown, written: string): void {
  if (typeof x === 'number' && x >= 0 && x <= 1) return
  const hint = typeof x === 'number' && x > 1 && x <= 100 ? 'This is a percentage: write' : 'Write'
  throw refusal(argument, shown(x), 'a mole fraction from 0 to 1', `${hint} ${written}.`)
}

function unknownGas(argument: string, name: string): LitrebarError {
  const near = nearestOf(name, gases)
  return refusal(
    argument,
    'present',
    `one of ${gases.join(', ')}`,
    near === undefined ? 'Leave trace gases out.' : `Did you mean ${near}?`,
  )
}

function rounded(n: number): number {
  return Number(n.toPrecision(12))
}

function refusal(argument: string, value: string, expected: string, hint: string): LitrebarError {
  return new LitrebarError({ code: 'mixture', argument, value, expected, hint })
}

/**
 * Dry air: nitrogen 0.7808, oxygen 0.2095, argon 0.0093, carbon dioxide 0.0004.
 *
 * @source common-practice, rounded to four decimals
 */
export const dryAir: Mixture = {
  nitrogen: 0.7808,
  oxygen: 0.2095,
  argon: 0.0093,
  helium: 0,
  carbonDioxide: 0.0004,
  water: 0,
  hydrogen: 0,
} as unknown as Mixture

/**
 * A gas on its own.
 *
 * @param gas - its name
 * @returns the mixture of that gas alone
 * @throws LitrebarError `mixture` for an unknown gas
 * @source common-practice
 * @example
 * pureGas('argon').argon // => 1
 */
export function pureGas(gas: Gas): Mixture {
  requireGasName('gas', gas)
  return mixture({ [gas]: 1 })
}

/**
 * Nitrox: oxygen and nitrogen, nothing else. A cylinder topped up with air holds argon too: `enrichedAir`.
 *
 * @param oxygen - mole fraction of oxygen, 0 to 1
 * @returns the mixture
 * @throws LitrebarError `mixture` unless the fraction is from 0 to 1
 * @source common-practice
 * @example
 * nitrox(0.32).nitrogen // => 0.6799999999999999
 */
export function nitrox(oxygen: PlainNumber | MoleFraction): Mixture {
  requireFraction('oxygen', oxygen, 'nitrox(0.32)')
  return mixture({ oxygen, nitrogen: 1 - oxygen })
}

/**
 * Enriched air: dry air with oxygen added.
 *
 * @param oxygen - mole fraction of oxygen in the result, 0.2095 to 1
 * @returns the mixture, argon and carbon dioxide in proportion to the air in it
 * @throws LitrebarError `mixture` if there is less oxygen than in air, or more than 1
 * @source common-practice
 * @example
 * enrichedAir(0.36).argon.toFixed(5) // => '0.00753'
 */
export function enrichedAir(oxygen: PlainNumber | MoleFraction): Mixture {
  requireFraction('oxygen', oxygen, 'enrichedAir(0.32)')
  const air = (1 - oxygen) / (1 - dryAir.oxygen)
  if (!(air >= 0 && air <= 1 + sumTolerance)) {
    throw refusal('oxygen', String(oxygen), 'at least 0.2095 and at most 1', 'Oxygen can only be added to air.')
  }
  return mixture({
    nitrogen: air * dryAir.nitrogen,
    oxygen,
    argon: air * dryAir.argon,
    carbonDioxide: air * dryAir.carbonDioxide,
  })
}

/**
 * Trimix: oxygen and helium as given, the rest nitrogen.
 *
 * @param fractions - mole fractions of oxygen and helium, together at most 1
 * @returns the mixture
 * @throws LitrebarError `mixture` if they exceed 1 or one is negative
 * @source common-practice
 * @example
 * trimix({ oxygen: 0.18, helium: 0.45 }).nitrogen.toFixed(2) // => '0.37'
 */
export function trimix(fractions: {
  readonly oxygen: PlainNumber | MoleFraction
  readonly helium: PlainNumber | MoleFraction
}): Mixture {
  requireKeys('fractions', fractions, { oxygen: true, helium: true })
  const { oxygen, helium } = fractions
  requireFraction('fractions.oxygen', oxygen, 'trimix({ oxygen: 0.18, helium: 0.45 })')
  requireFraction('fractions.helium', helium, 'trimix({ oxygen: 0.18, helium: 0.45 })')
  if (!(oxygen + helium <= 1 + sumTolerance)) {
    throw refusal('fractions', `${rounded(oxygen + helium)} in sum`, 'at most 1', 'The rest is nitrogen.')
  }
  const rest = 1 - oxygen - helium
  return mixture({ oxygen, helium, nitrogen: Math.abs(rest) < sumTolerance ? 0 : rest })
}

/**
 * Heliox: oxygen and helium, nothing else.
 *
 * @param oxygen - mole fraction of oxygen, 0 to 1
 * @returns the mixture
 * @throws LitrebarError `mixture` unless the fraction is from 0 to 1
 * @source common-practice
 * @example
 * heliox(0.21).helium // => 0.79
 */
export function heliox(oxygen: PlainNumber | MoleFraction): Mixture {
  requireFraction('oxygen', oxygen, 'heliox(0.21)')
  return mixture({ oxygen, helium: 1 - oxygen })
}

/**
 * Molar mass of a mixture.
 *
 * @param mixture - the gas
 * @returns molar mass, kg/mol
 * @throws LitrebarError `mixture` for what is none
 * @source gerg-2008, molar masses
 * @example
 * inUnit(molarMass(dryAir), gramPerMole).toFixed(4) // => '28.9657'
 */
export function molarMass(mixture: Mixture): MolarMass {
  requireMixture('mixture', mixture)
  let mass = 0
  for (const name of gases) mass += mixture[name] * molarMasses[name]
  return (mass / 1000) as MolarMass
}
