/** One slip: what it makes of a number in SI. */
export interface Slip {
  /** The number as it enters the formula by mistake. */
  readonly of: (value: number) => number
}

const atmosphere = 101_325

/** The id of a slip. */
export type SlipId =
  | 'gauge-for-absolute'
  | 'absolute-for-gauge'
  | 'celsius-for-kelvin'
  | 'percent-for-fraction'
  | 'diameter-for-radius'
  | 'minutes-for-seconds'
  | 'sea-water-for-fresh'
  | 'fresh-water-for-sea'

/** The slips that people make with one number, by id. All numbers in SI. */
export const slips: Readonly<Record<SlipId, Slip>> = {
  'gauge-for-absolute': { of: (value) => value - atmosphere },
  'absolute-for-gauge': { of: (value) => value + atmosphere },
  'celsius-for-kelvin': { of: (value) => value - 273.15 },
  'percent-for-fraction': { of: (value) => value * 100 },
  'diameter-for-radius': { of: (value) => value * 2 },
  'minutes-for-seconds': { of: (value) => value * 60 },
  'sea-water-for-fresh': { of: () => 1025 },
  'fresh-water-for-sea': { of: () => 1000 },
}
