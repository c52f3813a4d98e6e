import type { AbsolutePressure, GasVolume, Temperature } from '../../units/quantity.ts'
import {
  finalPressure,
  finalTemperature,
  finalVolume,
  initialPressure,
  initialTemperature,
  initialVolume,
  type Law,
  type OneOmitted,
  solveForOmitted,
} from './law.ts'

/** One amount of gas in two states. */
export interface CombinedGasStates {
  readonly initialPressure: AbsolutePressure
  readonly initialVolume: GasVolume
  readonly initialTemperature: Temperature
  readonly finalPressure: AbsolutePressure
  readonly finalVolume: GasVolume
  readonly finalTemperature: Temperature
}

const law: Law<CombinedGasStates> = {
  initialPressure,
  initialVolume,
  initialTemperature,
  finalPressure,
  finalVolume,
  finalTemperature,
}

/**
 * Combined gas law: for one amount of gas, pressure times volume over thermodynamic temperature stays the same.
 * Finds the quantity that is left out.
 *
 * Ideal gas. At cylinder pressures a real gas departs by several per cent: use `freeGas` there.
 *
 * @param knowns - five of the six. Pressures absolute, Pa, above 0 and at most 10 000 bar;
 *   volumes m³, above 0 and at most 1e9 L; temperatures K, above 0 and at most 10 000 K
 * @returns all six, the one left out filled in
 * @throws LitrebarError `range` for a quantity, given or found, that is not finite or out of range;
 *   `input` if not exactly one is left out (from untyped code only)
 * @source openstax-chemistry-2e, section 9.2
 * @example
 * const { finalVolume } = combinedGasLaw({
 *   initialPressure: absolute(4, bar),
 *   initialVolume: gasVolumeOf(5, litre),
 *   initialTemperature: temperatureOf(8, celsius),
 *   finalPressure: absolute(1, bar),
 *   finalTemperature: temperatureOf(20, celsius),
 * })
 * inUnit(finalVolume, litre).toFixed(1) // => '20.9'
 */
export function combinedGasLaw(knowns: OneOmitted<CombinedGasStates>): CombinedGasStates {
  return solveForOmitted(law, knowns)
}
