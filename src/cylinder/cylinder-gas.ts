import { requireKeys, requireWord } from '../errors/index.ts'
import {
  type GasModel,
  type GasModelOption,
  gerg2008GasConstant,
  type Mixture,
  molarDensityBy,
  pressureAtDensity,
} from '../gas-law/index.ts'
import type { AbsolutePressure, MolarDensity, Temperature } from '../units/index.ts'

// The seam between a cylinder and the gas in it: plain numbers in SI, one model or the other.

/** Molar density, mol/m³. */
export function densityBy(gas: GasModel, mixture: Mixture, pressure: number, temperature: number): number {
  return molarDensityBy(gas, mixture, pressure as AbsolutePressure, temperature as Temperature)
}

/** Absolute pressure, Pa. */
export function pressureBy(gas: GasModel, mixture: Mixture, density: number, temperature: number): number {
  if (gas === 'ideal') return density * gerg2008GasConstant * temperature
  return pressureAtDensity(mixture, { molarDensity: density as MolarDensity, temperature: temperature as Temperature })
}

/**
 * The gas model that the options ask for: real, unless they say otherwise.
 *
 * @param options - what the caller gave
 * @param others - further keys that the function reads, as for `requireKeys`
 * @returns the model
 * @throws LitrebarError `input` for an unknown key or word
 */
export function gasModelOf(options: GasModelOption, others: Readonly<Record<string, boolean>> = {}): GasModel {
  requireKeys('options', options, { gas: false, ...others })
  const { gas = 'real' } = options
  requireWord('options.gas', gas, ['real', 'ideal'])
  return gas
}
