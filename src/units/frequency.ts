import type { Unit } from './unit.ts'

// Units of frequency.

/** Hertz, the SI unit. */
export const hertz: Unit<'frequency'> = {
  symbol: 'Hz',
  quantity: 'frequency',
  factor: 1,
  definition: '1',
  spellings: ['hertz'],
}

/** Per minute: breaths, strokes or turns in one minute. */
export const perMinute: Unit<'frequency'> = {
  symbol: '/min',
  quantity: 'frequency',
  factor: 0.016666666666666666,
  definition: '1/60',
  spellings: ['per minute', 'breaths/min', 'rpm'],
}
