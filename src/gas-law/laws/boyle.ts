import type { AbsolutePressure, GasVolume } from '../../units/quantity.ts'
import {
  finalPressure,
  finalVolume,
  initialPressure,
  initialVolume,
  type Law,
  type OneOmitted,
  solveForOmitted,
} from './law.ts'

/** One amount of gas before and after a change at constant temperature. */
export interface BoyleStates {
  readonly initialPressure: AbsolutePressure
  readonly initialVolume: GasVolume
  readonly finalPressure: AbsolutePressure
  readonly finalVolume: GasVolume
}

const law: Law<BoyleStates> = { initialPressure, initialVolume, finalPressure, finalVolume }

/**
 * Boyle's law: at constant temperature and amount, pressure times volume stays the same.
 * Finds the quantity that is left out.
 *
 * Ideal gas. At cylinder pressures a real gas departs by several per cent: use `freeGas` there.
 *
 * @param knowns - three of the four. Pressures absolute, Pa, above 0 and at most 10 000 bar;
 *   volumes m³, above 0 and at most 1e9 L
 * @returns all four, the one left out filled in
 * @throws LitrebarError `range` for a quantity, given or found, that is not finite or out of range;
 *   `input` if not exactly one is left out (from untyped code only)
 * @source openstax-chemistry-2e, section 9.2
 * @example
 * const surface = { initialPressure: absolute(1, bar), initialVolume: gasVolumeOf(6, litre) }
 * inUnit(boyle({ ...surface, finalPressure: absolute(4, bar) }).finalVolume, litre) // => 1.5
 */
export function boyle(knowns: OneOmitted<BoyleStates>): BoyleStates {
  return solveForOmitted(law, knowns)
}
