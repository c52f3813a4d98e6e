import type { Unit } from './unit.ts'

// Force and weight.

/** Newton, the SI unit. */
export const newton: Unit<'force'> = {
  symbol: 'N',
  quantity: 'force',
  factor: 1,
  definition: '1',
  spellings: ['newton', 'newtons'],
}

/** Kilonewton. */
export const kilonewton: Unit<'force'> = {
  symbol: 'kN',
  quantity: 'force',
  factor: 1000,
  definition: '1000',
  spellings: ['kilonewton', 'kilonewtons'],
}

/** Kilogram-force: the weight of one kilogram under standard gravity; the trade states buoyancy in it. */
export const kilogramForce: Unit<'force'> = {
  symbol: 'kgf',
  quantity: 'force',
  factor: 9.80665,
  definition: '9.80665',
  spellings: ['kp'],
}

/** Pound-force. */
export const poundForce: Unit<'force'> = {
  symbol: 'lbf',
  quantity: 'force',
  factor: 4.4482216152605,
  definition: '0.45359237*9.80665',
  spellings: ['pound-force'],
}

/** Newton per metre, the SI unit of the rate of a spring. */
export const newtonPerMetre: Unit<'spring rate'> = {
  symbol: 'N/m',
  quantity: 'spring rate',
  factor: 1,
  definition: '1',
}

/** Newton per millimetre. */
export const newtonPerMillimetre: Unit<'spring rate'> = {
  symbol: 'N/mm',
  quantity: 'spring rate',
  factor: 1000,
  definition: '1000',
}
