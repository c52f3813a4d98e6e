import { LitrebarError, requireKeys, shown } from '../../errors/index.ts'
import { mole } from '../../units/amount.ts'
import type { AbsolutePressure, Amount, GasVolume, PlainNumber, Temperature } from '../../units/quantity.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import {
  initialPressure,
  initialTemperature,
  initialVolume,
  type Law,
  type OneOmitted,
  solveForOmitted,
} from './law.ts'

/** The state of an amount of gas. */
export interface IdealGasState {
  readonly pressure: AbsolutePressure
  readonly volume: GasVolume
  readonly amount: Amount
  readonly temperature: Temperature
}

const law: Law<IdealGasState> = {
  pressure: initialPressure,
  volume: initialVolume,
  amount: [-1, { above: 0, atMost: 1e9, unit: mole, hint: 'Check the unit.' }],
  temperature: initialTemperature,
}

/**
 * Molar gas constant, J/(mol·K), exact since 2019. The equation of state carries an older one, `gerg2008GasConstant`, for its own densities.
 *
 * @source codata-2018
 */
export const molarGasConstant: number = 8.31446261815324

/**
 * Ideal gas law, p V = n R T. Finds the quantity that is left out.
 *
 * It overstates what a cylinder holds: air at 300 bar by about 10 %. Use `freeGas` and `amountOfGas` there.
 *
 * @param knowns - three of the four. Pressure absolute, Pa, above 0 and at most 10 000 bar; volume m³, above 0 and at
 *   most 1e9 L; amount above 0 and at most 1e9 mol; temperature K, above 0 and at most 10 000 K
 * @param options - `gasConstant: gerg2008GasConstant`, J/(mol·K), where the result stands beside one of `amountOfGas` or `gasState`:
 *   the equation of state was fitted with a constant 1.1 millionths larger, and `gas: 'ideal'` takes that one everywhere. Left out: the exact one
 * @returns all four, the one left out filled in
 * @throws LitrebarError `range` for a quantity, given or found, that is not finite or out of range;
 *   `input` if not exactly one is left out (from untyped code only), or for another gas constant
 * @source openstax-chemistry-2e, section 9.2; molar gas constant codata-2018
 * @example
 * const { volume } = idealGasLaw({
 *   pressure: absolute(1, atmosphere),
 *   amount: measure(1, mole),
 *   temperature: temperatureOf(0, celsius),
 * })
 * inUnit(volume, litre).toFixed(3) // => '22.414'
 */
export function idealGasLaw(
  knowns: OneOmitted<IdealGasState>,
  options: { readonly gasConstant?: PlainNumber } = {},
): IdealGasState {
  requireKeys('options', options, { gasConstant: false })
  const { gasConstant = molarGasConstant } = options
  if (gasConstant !== molarGasConstant && gasConstant !== gerg2008GasConstant) {
    throw new LitrebarError({
      code: 'input',
      argument: 'options.gasConstant',
      value: shown(gasConstant),
      expected: 'molarGasConstant or gerg2008GasConstant, J/(mol·K)',
      hint: 'Leave it out, or pass gerg2008GasConstant to compare with real gas.',
    })
  }
  return solveForOmitted(law, knowns, gasConstant)
}
