import type { SourceId } from '../references/index.ts'

/** What a shown number is used for, with the side to which it may err. */
export interface RoundingUse {
  readonly side: 'up' | 'down' | 'nearest'
  readonly because: string
  readonly source: SourceId
}

/**
 * The cautious side of a rounding, by use. A table, because it can not be told from the number: a maximum rounds down, a need rounds up.
 * The reasoning is common practice; that a limit is rounded inwards also stands in ISO 80000-1 annex B.
 */
export const roundingUses = {
  'fill limit': { side: 'down', because: 'a maximum', source: 'iso-80000-1' },
  'maximum pressure': { side: 'down', because: 'a maximum', source: 'iso-80000-1' },
  'maximum depth': { side: 'down', because: 'a maximum', source: 'iso-80000-1' },
  'maximum oxygen fraction': { side: 'down', because: 'a maximum', source: 'iso-80000-1' },
  'gas available': { side: 'down', because: 'an amount relied on', source: 'common-practice' },
  endurance: { side: 'down', because: 'an amount relied on', source: 'common-practice' },
  'time to requalification': { side: 'down', because: 'an amount relied on', source: 'common-practice' },
  'lift of a device': { side: 'down', because: 'an amount relied on', source: 'common-practice' },
  'gas required': { side: 'up', because: 'an amount needed', source: 'common-practice' },
  reserve: { side: 'up', because: 'an amount needed', source: 'common-practice' },
  'turn pressure': { side: 'up', because: 'an amount needed', source: 'common-practice' },
  ballast: { side: 'up', because: 'an amount needed', source: 'common-practice' },
  'minimum storage': { side: 'up', because: 'an amount needed', source: 'common-practice' },
  'oxygen partial pressure': { side: 'up', because: 'has an upper limit', source: 'common-practice' },
  'gas density': { side: 'up', because: 'has an upper limit', source: 'common-practice' },
  'work of breathing': { side: 'up', because: 'has an upper limit', source: 'common-practice' },
  moisture: { side: 'up', because: 'has an upper limit', source: 'common-practice' },
  contaminant: { side: 'up', because: 'has an upper limit', source: 'common-practice' },
  'minimum oxygen depth': {
    side: 'up',
    because: 'a lower limit: deeper is further from it',
    source: 'common-practice',
  },
  measurement: { side: 'nearest', because: 'neither side is the cautious one', source: 'common-practice' },
} as const

/** A use that has a row in the table. */
export type RoundingUseId = keyof typeof roundingUses
