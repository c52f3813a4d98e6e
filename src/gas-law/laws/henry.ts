import { molePerLitre } from '../../units/molar.ts'
import type { AbsolutePressure, MolarDensity } from '../../units/quantity.ts'
import { finalPressure, initialPressure, type Law, type OneOmitted, solveForOmitted } from './law.ts'

/** One gas dissolved in one liquid at one temperature, at two partial pressures. */
export interface HenryStates {
  readonly initialPartialPressure: AbsolutePressure
  readonly initialConcentration: MolarDensity
  readonly finalPartialPressure: AbsolutePressure
  readonly finalConcentration: MolarDensity
}

const law: Law<HenryStates> = {
  initialPartialPressure: initialPressure,
  initialConcentration: [-1, { above: 0, atMost: 1000, unit: molePerLitre, hint: 'Check the unit.' }],
  finalPartialPressure: finalPressure,
  finalConcentration: [1, { above: 0, atMost: 1000, unit: molePerLitre, hint: 'Check the unit.' }],
}

/**
 * Henry's law: at one temperature, what a liquid holds of a gas in equilibrium is proportional to the partial pressure of
 * that gas. Finds the quantity that is left out.
 *
 * For dilute solutions of gases that do not react with the liquid. It says nothing of how fast a liquid takes a gas up.
 *
 * @param knowns - three of the four. Partial pressures absolute, Pa, above 0 and at most 10 000 bar;
 *   concentrations mol/m³, above 0 and at most 1000 mol/L
 * @returns all four, the one left out filled in
 * @throws LitrebarError `range` for a quantity, given or found, that is not finite or out of range;
 *   `input` if not exactly one is left out (from untyped code only)
 * @source openstax-chemistry-2e, section 11.3
 * @example
 * const { finalConcentration } = henry({
 *   initialPartialPressure: absolute(0.79, bar),
 *   initialConcentration: measure(0.5, molePerCubicMetre),
 *   finalPartialPressure: absolute(3.16, bar),
 * })
 * inUnit(finalConcentration, molePerCubicMetre).toFixed(3) // => '2.000'
 */
export function henry(knowns: OneOmitted<HenryStates>): HenryStates {
  return solveForOmitted(law, knowns)
}
