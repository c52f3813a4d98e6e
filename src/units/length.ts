import type { Unit } from './unit.ts'

// Length units. Whether a length is a depth, an altitude or neither is said by the constructor.

/** Metre, the SI unit. */
export const metre: Unit<'length'> = {
  symbol: 'm',
  quantity: 'length',
  factor: 1,
  definition: '1',
  spellings: ['metre', 'metres', 'meter', 'meters'],
}

/** Kilometre. */
export const kilometre: Unit<'length'> = {
  symbol: 'km',
  quantity: 'length',
  factor: 1000,
  definition: '1000',
  spellings: ['kilometre', 'kilometres', 'kilometer', 'kilometers'],
}

/** Centimetre. */
export const centimetre: Unit<'length'> = {
  symbol: 'cm',
  quantity: 'length',
  factor: 0.01,
  definition: '0.01',
  spellings: ['centimetre', 'centimetres', 'centimeter', 'centimeters'],
}

/** Millimetre. */
export const millimetre: Unit<'length'> = {
  symbol: 'mm',
  quantity: 'length',
  factor: 0.001,
  definition: '1e-3',
  spellings: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
}

/** Micrometre. */
export const micrometre: Unit<'length'> = {
  symbol: 'µm',
  quantity: 'length',
  factor: 1e-6,
  definition: '1e-6',
  spellings: ['um', 'micrometre', 'micrometres'],
}

/** International foot. */
export const foot: Unit<'length'> = {
  symbol: 'ft',
  quantity: 'length',
  factor: 0.3048,
  definition: '0.3048',
  spellings: ['foot', 'feet'],
}

/** International inch. */
export const inch: Unit<'length'> = {
  symbol: 'in',
  quantity: 'length',
  factor: 0.0254,
  definition: '0.0254',
  spellings: ['inch', 'inches'],
}

/** International yard. */
export const yard: Unit<'length'> = {
  symbol: 'yd',
  quantity: 'length',
  factor: 0.9144,
  definition: '0.9144',
  spellings: ['yard', 'yards'],
}

/** Fathom: six international feet. */
export const fathom: Unit<'length'> = {
  symbol: 'fathom',
  quantity: 'length',
  factor: 1.8288,
  definition: '1.8288',
  spellings: ['fathoms'],
}

/** International nautical mile. */
export const nauticalMile: Unit<'length'> = {
  symbol: 'nmi',
  quantity: 'length',
  factor: 1852,
  definition: '1852',
  spellings: ['nautical mile', 'nautical miles', 'NM'],
}
