import {
  type Accepted,
  type Density,
  type InternalVolume,
  isWithin,
  kilogram,
  kilogramPerCubicMetre,
  type Mass,
  requireWithin,
} from '../../units/index.ts'

/**
 * Density of the water that a capacity stamped as a mass refers to, unless told otherwise: 998.2 kg/m³, at 20 °C.
 *
 * @source iapws-r6-95, 20 °C and 1 atm
 */
export const waterDensityForCapacity = 998.2 as Density

const waterMass: Accepted = { atLeast: 0, atMost: 5000, unit: kilogram, hint: 'Give the mass of the water.' }

/**
 * Water capacity from the mass of water that fills the cylinder.
 *
 * @param mass - of the water, kg, 0 to 5000
 * @param density - of the water at the temperature of weighing, kg/m³, 900 to 1100; 998.2 unless given (999.1 at 15 °C)
 * @returns internal volume, m³
 * @throws LitrebarError `range`, naming the field, if one is out of range or not finite; `input` for what is not a number
 * @source litrebar-derivation
 * @example
 * inUnit(waterVolume(measure(26.4, pound)), litre).toFixed(3) // => '11.996'
 */
export function waterVolume(mass: Mass, density: Density = waterDensityForCapacity): InternalVolume {
  requireWithin('mass', mass, waterMass)
  requireWithin('density', density, {
    atLeast: 900,
    atMost: 1100,
    unit: kilogramPerCubicMetre,
    hint: 'Water is about 1000 kg/m³.',
  })
  return (mass / density) as InternalVolume
}

/** A capacity stamped as a mass of water; nothing where no cylinder holds as much. */
export function stampedWaterVolume(mass: Mass): InternalVolume | undefined {
  return isWithin(mass, waterMass) ? waterVolume(mass) : undefined
}
