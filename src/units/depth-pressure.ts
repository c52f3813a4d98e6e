import type { Unit } from './unit.ts'

// Units of pressure that are named after a depth of sea water. Published definitions differ by up to 0.3 %, so each is a unit of its
// own and none is called simply "metre" or "foot of sea water". They are pressures, not depths: `depthAtPressure` of the environment room turns one
// into a depth of water.

/** Metre of sea water as one tenth of a bar: the convention of naval tables and of depth displays. */
export const metreOfSeaWaterTenKilopascal: Unit<'pressure'> = {
  symbol: 'msw (10 kPa)',
  quantity: 'pressure',
  factor: 10_000,
  definition: '1e4',
  spellings: ['msw (0.1 bar)'],
}

/** Foot of sea water of density 64 pound per cubic foot: 3.0643 kPa. */
export const footOfSeaWaterSixtyFourPound: Unit<'pressure'> = {
  symbol: 'fsw (64 lb/ft³)',
  quantity: 'pressure',
  factor: 3064.336574741494,
  definition: '64*0.45359237*9.80665/0.3048^2',
}

/** Foot of sea water as 1/33 of a standard atmosphere: the arithmetic convention of diving rules. */
export const footOfSeaWaterThirtyThree: Unit<'pressure'> = {
  symbol: 'fsw (1/33 atm)',
  quantity: 'pressure',
  factor: 3070.4545454545455,
  definition: '101325/33',
  spellings: ['fsw (1/33)'],
}

/** Foot of sea water as 1/33.08 of a standard atmosphere. */
export const footOfSeaWaterThirtyThreePointZeroEight: Unit<'pressure'> = {
  symbol: 'fsw (1/33.08 atm)',
  quantity: 'pressure',
  factor: 3063.0290205562274,
  definition: '101325/33.08',
  spellings: ['fsw (1/33.08)'],
}

/** Foot of sea water as 1/33.066 of a standard atmosphere. */
export const footOfSeaWaterThirtyThreePointZeroSixSix: Unit<'pressure'> = {
  symbol: 'fsw (1/33.066 atm)',
  quantity: 'pressure',
  factor: 3064.325893667211,
  definition: '101325/33.066',
  spellings: ['fsw (1/33.066)'],
}
