import type { Unit } from './unit.ts'

// Voltage.

/** Volt, the SI unit. */
export const volt: Unit<'voltage'> = {
  symbol: 'V',
  quantity: 'voltage',
  factor: 1,
  definition: '1',
  spellings: ['volt', 'volts'],
}

/** Millivolt: the output of an oxygen cell. */
export const millivolt: Unit<'voltage'> = {
  symbol: 'mV',
  quantity: 'voltage',
  factor: 0.001,
  definition: '1e-3',
  spellings: ['millivolt', 'millivolts'],
}
