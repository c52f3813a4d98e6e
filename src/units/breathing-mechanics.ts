import type { Unit } from './unit.ts'

// Pressure against volume, flow and its change: what a breathing apparatus, or a chest, puts against a breath.

/** Pascal per cubic metre, the SI unit of elastance. */
export const pascalPerCubicMetre: Unit<'elastance'> = {
  symbol: 'Pa/m³',
  quantity: 'elastance',
  factor: 1,
  definition: '1',
  spellings: ['Pa/m3'],
}

/** Kilopascal per litre. */
export const kilopascalPerLitre: Unit<'elastance'> = {
  symbol: 'kPa/L',
  quantity: 'elastance',
  factor: 1_000_000,
  definition: '1e6',
  spellings: ['kPa/l'],
}

/** Centimetre of water per litre, the older unit. */
export const centimetreOfWaterPerLitre: Unit<'elastance'> = {
  symbol: 'cmH2O/L',
  quantity: 'elastance',
  factor: 98066.5,
  definition: '98.0665*1000',
  spellings: ['cmH2O/l', 'cmH₂O/L'],
}

/** Pascal second per cubic metre, the SI unit of flow resistance. */
export const pascalSecondPerCubicMetre: Unit<'flow resistance'> = {
  symbol: 'Pa·s/m³',
  quantity: 'flow resistance',
  factor: 1,
  definition: '1',
  spellings: ['Pa s/m3', 'Pa·s/m3'],
}

/** Kilopascal second per litre. */
export const kilopascalSecondPerLitre: Unit<'flow resistance'> = {
  symbol: 'kPa·s/L',
  quantity: 'flow resistance',
  factor: 1_000_000,
  definition: '1e6',
  spellings: ['kPa s/L', 'kPa·s/l'],
}

/** Pascal second squared per cubic metre, the SI unit of inertance. */
export const pascalSecondSquaredPerCubicMetre: Unit<'inertance'> = {
  symbol: 'Pa·s²/m³',
  quantity: 'inertance',
  factor: 1,
  definition: '1',
  spellings: ['Pa s2/m3'],
}

/** Kilopascal second squared per litre. */
export const kilopascalSecondSquaredPerLitre: Unit<'inertance'> = {
  symbol: 'kPa·s²/L',
  quantity: 'inertance',
  factor: 1_000_000,
  definition: '1e6',
  spellings: ['kPa s2/L', 'kPa s²/L'],
}

/** Pascal second squared per metre to the sixth, the SI unit of the resistance that grows with the square of flow. */
export const pascalSecondSquaredPerMetreToTheSixth: Unit<'quadratic flow resistance'> = {
  symbol: 'Pa·s²/m⁶',
  quantity: 'quadratic flow resistance',
  factor: 1,
  definition: '1',
  spellings: ['Pa s2/m6'],
}

/** Kilopascal second squared per litre squared. */
export const kilopascalSecondSquaredPerLitreSquared: Unit<'quadratic flow resistance'> = {
  symbol: 'kPa·s²/L²',
  quantity: 'quadratic flow resistance',
  factor: 1_000_000_000,
  definition: '1e9',
  spellings: ['kPa s2/L2', 'kPa s²/L²'],
}
