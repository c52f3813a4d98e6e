import type { AbsolutePressure, Temperature } from '../../units/quantity.ts'
import {
  finalPressure,
  finalTemperature,
  initialPressure,
  initialTemperature,
  type Law,
  type OneOmitted,
  solveForOmitted,
} from './law.ts'

/** One amount of gas before and after a change at constant volume. */
export interface GayLussacStates {
  readonly initialPressure: AbsolutePressure
  readonly initialTemperature: Temperature
  readonly finalPressure: AbsolutePressure
  readonly finalTemperature: Temperature
}

const law: Law<GayLussacStates> = { initialPressure, initialTemperature, finalPressure, finalTemperature }

/**
 * Gay-Lussac's law, also called Amontons's: at constant volume and amount, pressure is proportional to
 * thermodynamic temperature. Finds the quantity that is left out.
 *
 * Ideal gas. Air at 200 bar changes by about 0.98 bar per kelvin, not by the 0.68 of this law: a filled cylinder
 * needs the real gas. A gauge pressure is not proportional to anything: add the ambient pressure first.
 *
 * @param knowns - three of the four. Pressures absolute, Pa, above 0 and at most 10 000 bar;
 *   temperatures K, above 0 and at most 10 000 K
 * @returns all four, the one left out filled in
 * @throws LitrebarError `range` for a quantity, given or found, that is not finite or out of range;
 *   `input` if not exactly one is left out (from untyped code only)
 * @source openstax-chemistry-2e, section 9.2
 * @example
 * const { finalPressure } = gayLussac({
 *   initialPressure: absolute(10, bar),
 *   initialTemperature: temperatureOf(45, celsius),
 *   finalTemperature: temperatureOf(15, celsius),
 * })
 * inUnit(finalPressure, bar).toFixed(2) // => '9.06'
 */
export function gayLussac(knowns: OneOmitted<GayLussacStates>): GayLussacStates {
  return solveForOmitted(law, knowns)
}
