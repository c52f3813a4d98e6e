import type { Unit } from './unit.ts'

// Torque. The same dimension as energy and never the same quantity.

/** Newton metre, the SI unit. */
export const newtonMetre: Unit<'torque'> = {
  symbol: 'N·m',
  quantity: 'torque',
  factor: 1,
  definition: '1',
  spellings: ['N m', 'Nm'],
}

/** Pound-force foot. */
export const poundForceFoot: Unit<'torque'> = {
  symbol: 'lbf·ft',
  quantity: 'torque',
  factor: 1.3558179483314003,
  definition: '0.45359237*9.80665*0.3048',
  spellings: ['lbf ft', 'lb ft'],
}

/** Pound-force inch. */
export const poundForceInch: Unit<'torque'> = {
  symbol: 'lbf·in',
  quantity: 'torque',
  factor: 0.1129848290276167,
  definition: '0.45359237*9.80665*0.0254',
  spellings: ['lbf in', 'lb in'],
}

/** Kilogram-force centimetre. */
export const kilogramForceCentimetre: Unit<'torque'> = {
  symbol: 'kgf·cm',
  quantity: 'torque',
  factor: 0.0980665,
  definition: '9.80665*0.01',
  spellings: ['kgf cm'],
}
