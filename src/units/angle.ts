import type { Unit } from './unit.ts'

// Units of plane angle.

/** Radian, the SI unit. */
export const radian: Unit<'angle'> = {
  symbol: 'rad',
  quantity: 'angle',
  factor: 1,
  definition: '1',
  spellings: ['radian', 'radians'],
}

/** Degree of arc: the unit of latitude. */
export const degree: Unit<'angle'> = {
  symbol: '°',
  quantity: 'angle',
  factor: 0.017453292519943295,
  definition: '3.14159265358979323846264338327950288419716939937510/180',
  spellings: ['deg', 'degree', 'degrees'],
}
