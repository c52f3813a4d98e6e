import {
  type GasModel,
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
