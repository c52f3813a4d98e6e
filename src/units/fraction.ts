import type { Unit } from './unit.ts'

// Fractions and counts without a dimension. Mole, volume and mass fraction are told apart by the constructor.

/** The number one: a plain fraction. */
export const one: Unit<'fraction'> = {
  symbol: '',
  quantity: 'fraction',
  factor: 1,
  definition: '1',
}

/** Per cent. */
export const percent: Unit<'fraction'> = {
  symbol: '%',
  quantity: 'fraction',
  factor: 0.01,
  definition: '0.01',
  spellings: ['percent', 'per cent'],
}

/** Part per million. */
export const partPerMillion: Unit<'fraction'> = {
  symbol: 'ppm',
  quantity: 'fraction',
  factor: 1e-6,
  definition: '1e-6',
  spellings: ['parts per million'],
}

/** Gram per kilogram: absolute salinity, moisture per mass of dry air. */
export const gramPerKilogram: Unit<'fraction'> = {
  symbol: 'g/kg',
  quantity: 'fraction',
  factor: 0.001,
  definition: '0.001',
}

/** Part per thousand million. */
export const partPerBillion: Unit<'fraction'> = {
  symbol: 'ppb',
  quantity: 'fraction',
  factor: 1e-9,
  definition: '1e-9',
}
