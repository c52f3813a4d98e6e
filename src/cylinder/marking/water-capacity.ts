import type { Density, InternalVolume, Mass } from '../../units/index.ts'

/**
 * Density of the water that a capacity stamped as a mass refers to, unless told otherwise: 998.2 kg/m³, at 20 °C.
 *
 * @source iapws-r6-95, 20 °C and 1 atm
 */
export const waterDensityForCapacity = 998.2 as Density

/**
 * Water capacity from the mass of water that fills the cylinder.
 *
 * @param mass - of the water, kg, above 0
 * @param density - of the water at the temperature of weighing, kg/m³; 998.2 unless given (999.1 at 15 °C)
 * @returns internal volume, m³
 * @source litrebar-derivation
 * @example
 * inUnit(waterVolume(measure(26.4, pound)), litre).toFixed(3) // => '11.996'
 */
export function waterVolume(mass: Mass, density: Density = waterDensityForCapacity): InternalVolume {
  return (mass / density) as InternalVolume
}
