import type { Unit } from './unit.ts'

// Volume flow. A flow of free gas carries its reference condition in the constructor, not in the unit.

/** Cubic metre per second, the SI unit. */
export const cubicMetrePerSecond: Unit<'volume flow'> = {
  symbol: 'm³/s',
  quantity: 'volume flow',
  factor: 1,
  definition: '1',
}

/** Litre per second. */
export const litrePerSecond: Unit<'volume flow'> = {
  symbol: 'L/s',
  quantity: 'volume flow',
  factor: 0.001,
  definition: '1e-3',
  spellings: ['l/s'],
}

/** Litre per minute. */
export const litrePerMinute: Unit<'volume flow'> = {
  symbol: 'L/min',
  quantity: 'volume flow',
  factor: 1.6666666666666667e-5,
  definition: '1e-3/60',
  spellings: ['l/min', 'lpm', 'litre per minute', 'litres per minute'],
}

/** Cubic metre per hour, the rating of compressors. */
export const cubicMetrePerHour: Unit<'volume flow'> = {
  symbol: 'm³/h',
  quantity: 'volume flow',
  factor: 0.0002777777777777778,
  definition: '1/3600',
}

/** Cubic foot per minute. */
export const cubicFootPerMinute: Unit<'volume flow'> = {
  symbol: 'ft³/min',
  quantity: 'volume flow',
  factor: 0.0004719474432,
  definition: '0.3048^3/60',
  spellings: ['cfm', 'cu ft/min'],
}

/** Cubic metre of reference gas per second and pascal: the SI unit of sonic conductance. */
export const cubicMetrePerSecondPascal: Unit<'sonic conductance'> = {
  symbol: 'm³/(s·Pa)',
  quantity: 'sonic conductance',
  factor: 1,
  definition: '1',
}

/** Litre of reference gas per second and bar, the usual unit of sonic conductance. */
export const litrePerSecondBar: Unit<'sonic conductance'> = {
  symbol: 'L/(s·bar)',
  quantity: 'sonic conductance',
  factor: 1e-8,
  definition: '1e-3/1e5',
}
