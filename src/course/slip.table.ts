/** One slip: what it makes of a number in SI. */
export interface Slip {
  /** The number as it enters the formula by mistake. */
  readonly of: (value: number) => number
}

const atmosphere = 101_325

/** The slips that people make with one number, by id. All numbers in SI. */
export const slips = {
  'gauge-for-absolute': { of: (value: number) => value - atmosphere },
  'absolute-for-gauge': { of: (value: number) => value + atmosphere },
  'celsius-for-kelvin': { of: (value: number) => value - 273.15 },
  'percent-for-fraction': { of: (value: number) => value * 100 },
  'diameter-for-radius': { of: (value: number) => value * 2 },
  'minutes-for-seconds': { of: (value: number) => value * 60 },
  'sea-water-for-fresh': { of: () => 1025 },
  'fresh-water-for-sea': { of: () => 1000 },
} as const satisfies Readonly<Record<string, Slip>>

/** The id of a slip. */
export type SlipId = keyof typeof slips
