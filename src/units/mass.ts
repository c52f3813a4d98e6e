import type { Unit } from './unit.ts'

// Mass units.

/** Kilogram, the SI unit. */
export const kilogram: Unit<'mass'> = {
  symbol: 'kg',
  quantity: 'mass',
  factor: 1,
  definition: '1',
  spellings: ['kilogram', 'kilograms'],
}

/** Gram. */
export const gram: Unit<'mass'> = {
  symbol: 'g',
  quantity: 'mass',
  factor: 0.001,
  definition: '1e-3',
  spellings: ['gram', 'grams'],
}

/** Milligram. */
export const milligram: Unit<'mass'> = {
  symbol: 'mg',
  quantity: 'mass',
  factor: 1e-6,
  definition: '1e-6',
  spellings: ['milligram', 'milligrams'],
}

/** Tonne: 1000 kg. */
export const tonne: Unit<'mass'> = {
  symbol: 't',
  quantity: 'mass',
  factor: 1000,
  definition: '1000',
  spellings: ['tonne', 'tonnes'],
}

/** Avoirdupois pound. */
export const pound: Unit<'mass'> = {
  symbol: 'lb',
  quantity: 'mass',
  factor: 0.45359237,
  definition: '0.45359237',
  spellings: ['lbs', 'pound', 'pounds', 'lbm'],
}

/** Avoirdupois ounce. */
export const ounce: Unit<'mass'> = {
  symbol: 'oz',
  quantity: 'mass',
  factor: 0.028349523125,
  definition: '0.45359237/16',
  spellings: ['ounce', 'ounces'],
}

/** Grain: 1/7000 pound. */
export const grain: Unit<'mass'> = {
  symbol: 'gr',
  quantity: 'mass',
  factor: 6.479891e-5,
  definition: '6.479891e-5',
  spellings: ['grain', 'grains'],
}
