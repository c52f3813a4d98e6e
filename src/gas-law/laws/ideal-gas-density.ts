import { kilogramPerCubicMetre } from '../../units/density.ts'
import { gramPerMole } from '../../units/molar.ts'
import type { AbsolutePressure, Density, MolarMass, Temperature } from '../../units/quantity.ts'
import { molarGasConstant } from './ideal-gas-law.ts'
import { initialPressure, initialTemperature, type Law, type OneOmitted, solveForOmitted } from './law.ts'

/** The density of an ideal gas, and what makes it. */
export interface IdealGasDensity {
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  readonly molarMass: MolarMass
  readonly density: Density
}

const law: Law<IdealGasDensity> = {
  pressure: initialPressure,
  temperature: initialTemperature,
  molarMass: [1, { above: 0, atMost: 1e6, unit: gramPerMole, hint: 'Check the unit.' }],
  density: [-1, { above: 0, atMost: 1e5, unit: kilogramPerCubicMetre, hint: 'Check the unit.' }],
}

/**
 * Density of an ideal gas, p M = ρ R T; or its molar mass from a weighed density. Finds the quantity that is left out.
 *
 * Gas at depth is near enough to ideal (0.5 % at 60 m); gas in a cylinder is not: `gasState` gives its density.
 *
 * @param knowns - three of the four. Pressure absolute, Pa, above 0 and at most 10 000 bar; temperature K, above 0 and at
 *   most 10 000 K; molar mass kg/mol, above 0 and at most 1e6 g/mol; density, above 0 and at most 1e5 kg/m³
 * @returns all four, the one left out filled in
 * @throws LitrebarError `range` for a quantity, given or found, that is not finite or out of range;
 *   `input` if not exactly one is left out (from untyped code only)
 * @source openstax-chemistry-2e, section 9.3; molar gas constant codata-2018
 * @example
 * const { density } = idealGasDensity({
 *   pressure: absolute(4, bar),
 *   temperature: temperatureOf(20, celsius),
 *   molarMass: molarMass(dryAir),
 * })
 * inUnit(density, gramPerLitre).toFixed(2) // => '4.75'
 */
export function idealGasDensity(knowns: OneOmitted<IdealGasDensity>): IdealGasDensity {
  return solveForOmitted(law, knowns, molarGasConstant)
}
