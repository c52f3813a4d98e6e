import type { Unit } from './unit.ts'

// Mass flow.

/** Kilogram per second, the SI unit. */
export const kilogramPerSecond: Unit<'mass flow'> = {
  symbol: 'kg/s',
  quantity: 'mass flow',
  factor: 1,
  definition: '1',
}

/** Gram per second. */
export const gramPerSecond: Unit<'mass flow'> = {
  symbol: 'g/s',
  quantity: 'mass flow',
  factor: 0.001,
  definition: '1e-3',
}

/** Gram per hour: the load of a filter. */
export const gramPerHour: Unit<'mass flow'> = {
  symbol: 'g/h',
  quantity: 'mass flow',
  factor: 2.7777777777777776e-7,
  definition: '1e-3/3600',
}

/** Kilogram per hour. */
export const kilogramPerHour: Unit<'mass flow'> = {
  symbol: 'kg/h',
  quantity: 'mass flow',
  factor: 0.0002777777777777778,
  definition: '1/3600',
}

/** Pound per hour. */
export const poundPerHour: Unit<'mass flow'> = {
  symbol: 'lb/h',
  quantity: 'mass flow',
  factor: 0.00012599788055555556,
  definition: '0.45359237/3600',
  spellings: ['lb/hr'],
}
