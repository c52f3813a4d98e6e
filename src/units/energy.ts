import type { Unit } from './unit.ts'

// Energy. Energy per volume is a pressure: see `joulePerLitre`.

/** Joule, the SI unit. */
export const joule: Unit<'energy'> = {
  symbol: 'J',
  quantity: 'energy',
  factor: 1,
  definition: '1',
  spellings: ['joule', 'joules'],
}

/** Kilojoule. */
export const kilojoule: Unit<'energy'> = {
  symbol: 'kJ',
  quantity: 'energy',
  factor: 1000,
  definition: '1000',
  spellings: ['kilojoule', 'kilojoules'],
}

/** Kilowatt-hour. */
export const kilowattHour: Unit<'energy'> = {
  symbol: 'kWh',
  quantity: 'energy',
  factor: 3_600_000,
  definition: '3.6e6',
  spellings: ['kilowatt-hour'],
}

/** Thermochemical kilocalorie. */
export const kilocalorie: Unit<'energy'> = {
  symbol: 'kcal',
  quantity: 'energy',
  factor: 4184,
  definition: '4184',
  spellings: ['kilocalorie', 'kilocalories'],
}

/** Foot pound-force, as an energy. */
export const footPoundForce: Unit<'energy'> = {
  symbol: 'ft·lbf',
  quantity: 'energy',
  factor: 1.3558179483314003,
  definition: '0.3048*0.45359237*9.80665',
  spellings: ['ft lbf', 'ft-lbf'],
}

/** Kilogram-force metre, as an energy. */
export const kilogramForceMetre: Unit<'energy'> = {
  symbol: 'kgf·m',
  quantity: 'energy',
  factor: 9.80665,
  definition: '9.80665',
  spellings: ['kgf m', 'kpm'],
}
