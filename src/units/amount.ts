import type { Unit } from './unit.ts'

// Amount of substance.

/** Mole, the SI unit. */
export const mole: Unit<'amount of substance'> = {
  symbol: 'mol',
  quantity: 'amount of substance',
  factor: 1,
  definition: '1',
  spellings: ['mole', 'moles'],
}

/** Kilomole. */
export const kilomole: Unit<'amount of substance'> = {
  symbol: 'kmol',
  quantity: 'amount of substance',
  factor: 1000,
  definition: '1000',
  spellings: ['kilomole', 'kilomoles'],
}
