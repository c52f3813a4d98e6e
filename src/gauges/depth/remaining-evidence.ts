import { requireKeys, requireList, requireText, requireWord } from '../../errors/index.ts'
import type { CautionId } from '../../references/cautions.ts'

/** What an instrument can show. */
export const shownQuantities = [
  'depth',
  'time',
  'cylinder pressure',
  'oxygen partial pressure',
  'heading',
  'temperature',
] as const

/** One of them. */
export type ShownQuantity = (typeof shownQuantities)[number]

/** One value on one display. */
export interface Display {
  readonly quantity: ShownQuantity
  /** What measures it. Two displays of one sensor are one piece of evidence. */
  readonly sensor: string
  readonly works: boolean
}

/** What is left of one quantity. */
export interface RemainingEvidence {
  readonly quantity: ShownQuantity
  /** Sensors that still show it. */
  readonly sensors: readonly string[]
  /** `confirmed`: two sensors or more can be compared. `single`: one is left, and nothing tells when it errs. `lost`: none. */
  readonly evidence: 'confirmed' | 'single' | 'lost'
}

/** What several instruments still support. */
export interface InstrumentEvidence {
  readonly remaining: readonly RemainingEvidence[]
  readonly cautions: readonly CautionId[]
}

/**
 * What a set of instruments still tells when some have failed: which quantities can be compared, which rest on a single sensor, which are lost.
 * Evidence only: what to do then belongs to training and to the procedures of the dive.
 *
 * @param displays - every value on every display, with its sensor and whether it works
 * @returns a row for each quantity that was displayed, in the order of `shownQuantities`
 * @throws LitrebarError `input` for an empty list, an unknown key or quantity
 * @source common-practice
 * @example
 * const left = remainingEvidence([
 *   { quantity: 'depth', sensor: 'wrist computer', works: false },
 *   { quantity: 'depth', sensor: 'mechanical gauge', works: true },
 *   { quantity: 'time', sensor: 'wrist computer', works: false },
 * ])
 * left.remaining.map(({ quantity, evidence }) => `${quantity}: ${evidence}`) // => ['depth: single', 'time: lost']
 */
export function remainingEvidence(displays: readonly Display[]): InstrumentEvidence {
  requireList('displays', displays, 1, 'List every value that was displayed, with its sensor.')
  displays.forEach((display: Display, i) => {
    requireKeys(`displays[${i}]`, display, { quantity: true, sensor: true, works: true })
    requireWord(`displays[${i}].quantity`, display.quantity, shownQuantities)
    requireText(`displays[${i}].sensor`, display.sensor, 'Name the sensor.')
    requireWord(`displays[${i}].works`, display.works, [true, false])
  })
  const remaining = shownQuantities
    .filter((quantity) => displays.some((display: Display) => display.quantity === quantity))
    .map((quantity): RemainingEvidence => {
      const working = displays.filter((display: Display) => display.quantity === quantity && display.works)
      const sensors = [...new Set(working.map(({ sensor }: Display) => sensor))]
      return {
        quantity,
        sensors,
        evidence: sensors.length > 1 ? 'confirmed' : sensors.length === 1 ? 'single' : 'lost',
      }
    })
  return { remaining, cautions: ['instrument', 'no-decompression-planning'] }
}
