import { requireWord } from '../../errors/index.ts'
import type { AbsolutePressure, MolarDensity, Temperature } from '../../units/quantity.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import { requireStateRange } from '../equation/state-range.ts'
import { type Mixture, requireMixture } from '../mixture/mixture.ts'
import { molarDensity } from './molar-density.ts'

/** How gas amounts are computed: by the equation of state, or by the ideal law to show the difference. */
export type GasModel = 'real' | 'ideal'

/**
 * The gas model that the options ask for: real, unless they say otherwise.
 *
 * @param options - what the caller gave, its keys checked
 * @returns the model
 * @throws LitrebarError `input` for a word that is not a model: `'Ideal'` is neither
 */
export function modelOf({ gas = 'real' }: { readonly gas?: GasModel }): GasModel {
  requireWord('options.gas', gas, ['real', 'ideal'])
  return gas
}

/**
 * Molar density by the model asked for. The ideal one takes the gas constant of the equation of state, so that the
 * difference between the two is the gas and not the constant.
 *
 * @param model - `real` or `ideal`
 * @param mixture - the gas
 * @param pressure - absolute, Pa
 * @param temperature - K
 * @returns molar density, mol/m³
 * @throws LitrebarError as `molarDensity`, for real gas; `input` for a word that is not a model
 * @source gerg-2008
 * @example
 * const state = [dryAir, absolute(200, bar), temperatureOf(15, celsius)] as const
 * const ratio = molarDensityBy('ideal', ...state) / molarDensityBy('real', ...state)
 * ratio.toFixed(3) // => '1.022'
 */
export function molarDensityBy(
  model: GasModel,
  mixture: Mixture,
  pressure: AbsolutePressure,
  temperature: Temperature,
): MolarDensity {
  if (model === 'real') return molarDensity(mixture, pressure, temperature)
  requireWord('model', model, ['real', 'ideal'])
  requireMixture('mixture', mixture)
  requireStateRange(pressure, temperature)
  return (pressure / (gerg2008GasConstant * temperature)) as MolarDensity
}
