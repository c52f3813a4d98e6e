import type { Unit } from './unit.ts'

// Area units.

/** Square metre, the SI unit. */
export const squareMetre: Unit<'area'> = {
  symbol: 'm²',
  quantity: 'area',
  factor: 1,
  definition: '1',
  spellings: ['square metre', 'square metres'],
}

/** Square centimetre. */
export const squareCentimetre: Unit<'area'> = {
  symbol: 'cm²',
  quantity: 'area',
  factor: 0.0001,
  definition: '1e-4',
}

/** Square millimetre. */
export const squareMillimetre: Unit<'area'> = {
  symbol: 'mm²',
  quantity: 'area',
  factor: 1e-6,
  definition: '1e-6',
}

/** Square inch. */
export const squareInch: Unit<'area'> = {
  symbol: 'in²',
  quantity: 'area',
  factor: 0.00064516,
  definition: '0.0254^2',
  spellings: ['sq in'],
}

/** Square foot. */
export const squareFoot: Unit<'area'> = {
  symbol: 'ft²',
  quantity: 'area',
  factor: 0.09290304,
  definition: '0.3048^2',
  spellings: ['sq ft'],
}
