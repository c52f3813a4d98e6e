import type { Unit } from './unit.ts'

// Quantities per mole.

/** Mole per cubic metre, the SI unit of molar density. */
export const molePerCubicMetre: Unit<'molar density'> = {
  symbol: 'mol/m³',
  quantity: 'molar density',
  factor: 1,
  definition: '1',
}

/** Mole per litre. */
export const molePerLitre: Unit<'molar density'> = {
  symbol: 'mol/L',
  quantity: 'molar density',
  factor: 1000,
  definition: '1000',
  spellings: ['mol/l'],
}

/** Kilogram per mole, the SI unit of molar mass. */
export const kilogramPerMole: Unit<'molar mass'> = {
  symbol: 'kg/mol',
  quantity: 'molar mass',
  factor: 1,
  definition: '1',
}

/** Gram per mole. */
export const gramPerMole: Unit<'molar mass'> = {
  symbol: 'g/mol',
  quantity: 'molar mass',
  factor: 0.001,
  definition: '1e-3',
}

/** Joule per mole. */
export const joulePerMole: Unit<'molar energy'> = {
  symbol: 'J/mol',
  quantity: 'molar energy',
  factor: 1,
  definition: '1',
}

/** Joule per mole and kelvin. */
export const joulePerMoleKelvin: Unit<'molar heat capacity'> = {
  symbol: 'J/(mol·K)',
  quantity: 'molar heat capacity',
  factor: 1,
  definition: '1',
  spellings: ['J/mol/K', 'J/(mol K)'],
}
