import type { Unit } from './unit.ts'

// Mass per volume: densities, and concentrations such as moisture. A concentration of moisture or oil needs the state of the cubic metre beside it.

/** Kilogram per cubic metre, the SI unit; equals one gram per litre. */
export const kilogramPerCubicMetre: Unit<'density'> = {
  symbol: 'kg/m³',
  quantity: 'density',
  factor: 1,
  definition: '1',
}

/** Gram per litre, the trade unit of gas density. */
export const gramPerLitre: Unit<'density'> = {
  symbol: 'g/L',
  quantity: 'density',
  factor: 1,
  definition: '1',
  spellings: ['g/l'],
}

/** Gram per cubic metre. */
export const gramPerCubicMetre: Unit<'density'> = {
  symbol: 'g/m³',
  quantity: 'density',
  factor: 0.001,
  definition: '1e-3',
}

/** Milligram per cubic metre, the unit of moisture and oil limits. */
export const milligramPerCubicMetre: Unit<'density'> = {
  symbol: 'mg/m³',
  quantity: 'density',
  factor: 1e-6,
  definition: '1e-6',
}

/** Gram per cubic centimetre. */
export const gramPerCubicCentimetre: Unit<'density'> = {
  symbol: 'g/cm³',
  quantity: 'density',
  factor: 1000,
  definition: '1000',
  spellings: ['kg/L', 'kg/l'],
}

/** Pound per cubic foot. */
export const poundPerCubicFoot: Unit<'density'> = {
  symbol: 'lb/ft³',
  quantity: 'density',
  factor: 16.018463373960138,
  definition: '0.45359237/0.3048^3',
  spellings: ['lb/cu ft'],
}
