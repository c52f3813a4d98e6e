import type { Unit } from './unit.ts'

// Pressure times volume: the trade counts gas in bar·litres. It is not free gas, which needs a reference condition.

/** Pascal cubic metre, the SI unit. */
export const pascalCubicMetre: Unit<'pressure volume'> = {
  symbol: 'Pa·m³',
  quantity: 'pressure volume',
  factor: 1,
  definition: '1',
  spellings: ['Pa m3'],
}

/** Bar litre: the gas of one litre at one bar. */
export const barLitre: Unit<'pressure volume'> = {
  symbol: 'bar·L',
  quantity: 'pressure volume',
  factor: 100,
  definition: '100',
  spellings: ['bar L', 'bar l', 'bar·l', 'bar litre', 'bar litres'],
}

/** Psi cubic foot. */
export const psiCubicFoot: Unit<'pressure volume'> = {
  symbol: 'psi·ft³',
  quantity: 'pressure volume',
  factor: 195.23778455972166,
  definition: '0.45359237*9.80665/0.0254^2*0.3048^3',
  spellings: ['psi ft3', 'psi cu ft'],
}

/** Pascal cubic metre per second, the SI unit. */
export const pascalCubicMetrePerSecond: Unit<'pressure volume flow'> = {
  symbol: 'Pa·m³/s',
  quantity: 'pressure volume flow',
  factor: 1,
  definition: '1',
  spellings: ['Pa m3/s', 'Pa m³/s'],
}

/** Bar litre per minute: what the gas in a cylinder falls by. Not a volume flow: it grows with depth. */
export const barLitrePerMinute: Unit<'pressure volume flow'> = {
  symbol: 'bar·L/min',
  quantity: 'pressure volume flow',
  factor: 1.6666666666666667,
  definition: '100/60',
  spellings: ['bar L/min', 'bar l/min', 'bar·l/min', 'bar litres per minute'],
}
