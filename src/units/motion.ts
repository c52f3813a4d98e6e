import type { Unit } from './unit.ts'

// Speed and acceleration.

/** Metre per second, the SI unit. */
export const metrePerSecond: Unit<'speed'> = {
  symbol: 'm/s',
  quantity: 'speed',
  factor: 1,
  definition: '1',
}

/** Metre per minute: rate of ascent or descent. */
export const metrePerMinute: Unit<'speed'> = {
  symbol: 'm/min',
  quantity: 'speed',
  factor: 0.016666666666666666,
  definition: '1/60',
}

/** Foot per minute. */
export const footPerMinute: Unit<'speed'> = {
  symbol: 'ft/min',
  quantity: 'speed',
  factor: 0.00508,
  definition: '0.3048/60',
}

/** Knot: one nautical mile per hour. */
export const knot: Unit<'speed'> = {
  symbol: 'kn',
  quantity: 'speed',
  factor: 0.5144444444444445,
  definition: '1852/3600',
  spellings: ['knot', 'knots'],
}

/** Metre per second squared. */
export const metrePerSecondSquared: Unit<'acceleration'> = {
  symbol: 'm/s²',
  quantity: 'acceleration',
  factor: 1,
  definition: '1',
}
