import type { Unit } from './unit.ts'

// Power.

/** Watt, the SI unit. */
export const watt: Unit<'power'> = {
  symbol: 'W',
  quantity: 'power',
  factor: 1,
  definition: '1',
  spellings: ['watt', 'watts'],
}

/** Kilowatt. */
export const kilowatt: Unit<'power'> = {
  symbol: 'kW',
  quantity: 'power',
  factor: 1000,
  definition: '1000',
  spellings: ['kilowatt', 'kilowatts'],
}

/** Mechanical horsepower: 550 foot pound-force per second. */
export const horsepower: Unit<'power'> = {
  symbol: 'hp',
  quantity: 'power',
  factor: 745.6998715822702,
  definition: '550*0.3048*0.45359237*9.80665',
  spellings: ['horsepower'],
}
