import type { GasVolume, Temperature } from '../../units/quantity.ts'
import {
  finalTemperature,
  finalVolume,
  initialTemperature,
  initialVolume,
  type Law,
  type OneOmitted,
  solveForOmitted,
} from './law.ts'

/** One amount of gas before and after a change at constant pressure. */
export interface CharlesStates {
  readonly initialVolume: GasVolume
  readonly initialTemperature: Temperature
  readonly finalVolume: GasVolume
  readonly finalTemperature: Temperature
}

const law: Law<CharlesStates> = { initialVolume, initialTemperature, finalVolume, finalTemperature }

/**
 * Charles's law: at constant pressure and amount, volume is proportional to thermodynamic temperature.
 * Finds the quantity that is left out.
 *
 * Ideal gas. A cylinder holds its volume, not its pressure: use `gayLussac` there.
 *
 * @param knowns - three of the four. Volumes m³, above 0 and at most 1e9 L; temperatures K, above 0 and at most 10 000 K
 * @returns all four, the one left out filled in
 * @throws LitrebarError `range` for a quantity, given or found, that is not finite or out of range;
 *   `input` if not exactly one is left out (from untyped code only)
 * @source openstax-chemistry-2e, section 9.2
 * @example
 * const { finalVolume } = charles({
 *   initialVolume: gasVolumeOf(10, litre),
 *   initialTemperature: temperatureOf(27, celsius),
 *   finalTemperature: temperatureOf(7, celsius),
 * })
 * inUnit(finalVolume, litre).toFixed(2) // => '9.33'
 */
export function charles(knowns: OneOmitted<CharlesStates>): CharlesStates {
  return solveForOmitted(law, knowns)
}
