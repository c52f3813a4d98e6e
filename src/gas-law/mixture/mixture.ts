import { LitrebarError } from '../../errors/index.ts'
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
  for (const name of Object.keys(fractions)) {
    if (!Object.hasOwn(molarMasses, name)) {
      throw refusal(`fractions.${name}`, 'present', `one of ${gases.join(', ')}`, 'Leave trace gases out.')
    }
  }
  const sum = sumOf(fractions, 'fractions')
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
  const sum = sumOf(candidate, argument)
  if (Math.abs(sum - 1) <= sumTolerance) return
  throw refusal(argument, `${rounded(sum)} in sum of its fractions`, '1', 'Make it with mixture().')
}

function sumOf(fractions: MoleFractions, argument: string): number {
  let sum = 0
  for (const name of gases) {
    const x: number = fractions[name] ?? 0
    if (!(x >= 0 && x < Infinity)) {
      throw refusal(`${argument}.${name}`, String(x), 'at least 0 and at most 1', 'Give a mole fraction.')
    }
    sum += x
  }
  return sum
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
  const { oxygen, helium } = fractions
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
  return mixture({ oxygen, helium: 1 - oxygen })
}

/**
 * Molar mass of a mixture.
 *
 * @param mixture - the gas
 * @returns molar mass, kg/mol
 * @source gerg-2008, molar masses
 * @example
 * inUnit(molarMass(dryAir), gramPerMole).toFixed(4) // => '28.9657'
 */
export function molarMass(mixture: Mixture): MolarMass {
  let mass = 0
  for (const name of gases) mass += mixture[name] * molarMasses[name]
  return (mass / 1000) as MolarMass
}
