import { one } from '../../units/fraction.ts'
import { gramPerMole } from '../../units/molar.ts'
import type { Fraction, MolarMass } from '../../units/quantity.ts'
import { type Law, type OneOmitted, solveForOmitted } from './law.ts'

/** Two gases that leave through the same small hole, at one pressure and temperature. */
export interface GrahamQuantities {
  /** Rate of the first gas over that of the second, both in moles or both in volume per time. */
  readonly rateRatio: Fraction
  readonly firstMolarMass: MolarMass
  readonly secondMolarMass: MolarMass
}

const law: Law<GrahamQuantities> = {
  rateRatio: [2, { above: 0, atMost: 1000, unit: one, hint: 'Check the unit.' }],
  firstMolarMass: [1, { above: 0, atMost: 1e6, unit: gramPerMole, hint: 'Check the unit.' }],
  secondMolarMass: [-1, { above: 0, atMost: 1e6, unit: gramPerMole, hint: 'Check the unit.' }],
}

/**
 * Graham's law: gases effuse at rates inverse to the square root of their molar masses.
 * Finds the quantity that is left out.
 *
 * For holes smaller than the free path of the molecules. The leak of a valve or an O-ring is not one: there gas flows by viscosity.
 *
 * @param knowns - two of the three. Rate of the first gas over that of the second, above 0 and at most 1000;
 *   molar masses kg/mol, above 0 and at most 1e6 g/mol
 * @returns all three, the one left out filled in
 * @throws LitrebarError `range` for a quantity, given or found, that is not finite or out of range;
 *   `input` if not exactly one is left out (from untyped code only)
 * @source openstax-chemistry-2e, section 9.4
 * @example
 * const masses = { firstMolarMass: molarMass(pureGas('helium')), secondMolarMass: molarMass(pureGas('nitrogen')) }
 * graham(masses).rateRatio.toFixed(2) // => '2.65'
 */
export function graham(knowns: OneOmitted<GrahamQuantities>): GrahamQuantities {
  return solveForOmitted(law, knowns)
}
