import type { Unit } from './unit.ts'

// Units of time and of rate per time.

/** Second, the SI unit. */
export const second: Unit<'duration'> = {
  symbol: 's',
  quantity: 'duration',
  factor: 1,
  definition: '1',
  spellings: ['sec', 'second', 'seconds'],
}

/** Millisecond. */
export const millisecond: Unit<'duration'> = {
  symbol: 'ms',
  quantity: 'duration',
  factor: 0.001,
  definition: '1e-3',
  spellings: ['millisecond', 'milliseconds'],
}

/** Minute. */
export const minute: Unit<'duration'> = {
  symbol: 'min',
  quantity: 'duration',
  factor: 60,
  definition: '60',
  spellings: ['minute', 'minutes', 'mins'],
}

/** Hour. */
export const hour: Unit<'duration'> = {
  symbol: 'h',
  quantity: 'duration',
  factor: 3600,
  definition: '3600',
  spellings: ['hr', 'hour', 'hours'],
}

/** Day of 24 hours. */
export const day: Unit<'duration'> = {
  symbol: 'd',
  quantity: 'duration',
  factor: 86_400,
  definition: '86400',
  spellings: ['day', 'days'],
}
