import { requireKeys } from '../errors/index.ts'
import { verdictFrom } from '../references/assessment.ts'
import type { Assessment } from '../references/index.ts'
import { type Accepted, one, requireWithin } from '../units/index.ts'
import { anyValue } from './accepted.ts'
import type { Spread, Stated } from './distribution.ts'

/** A value with its expanded uncertainty, as a certificate or a comparison states it. */
export interface StatedResult<Q extends number> {
  readonly value: Q
  /** Half width of its 95 % interval, above 0. */
  readonly expandedUncertainty: Spread<Stated<Q>>
}

const positive: Accepted = { above: 0, unit: one, hint: 'State the expanded uncertainty of both.' }

/**
 * Whether two results agree within their stated uncertainties: their distance over the root of the sum of squares (E_n),
 * judged against 1. Agreement proves neither right.
 *
 * @param first - value and expanded uncertainty (95 %)
 * @param second - of the same quantity, measured independently
 * @returns an assessment of E_n against 1
 * @throws LitrebarError `range`
 * @source common-practice (interlaboratory comparison)
 * @example
 * assessAgreement({ value: 30.4, expandedUncertainty: 0.5 }, { value: 29.9, expandedUncertainty: 0.6 }).verdict // => 'within'
 */
export function assessAgreement<Q extends number>(first: StatedResult<Q>, second: StatedResult<Q>): Assessment {
  requireKeys('first', first, { value: true, expandedUncertainty: true })
  requireKeys('second', second, { value: true, expandedUncertainty: true })
  requireWithin('first.value', first.value, anyValue)
  requireWithin('second.value', second.value, anyValue)
  requireWithin('first.expandedUncertainty', first.expandedUncertainty, positive)
  requireWithin('second.expandedUncertainty', second.expandedUncertainty, positive)
  const value = Math.abs(first.value - second.value) / Math.hypot(first.expandedUncertainty, second.expandedUncertainty)
  const within = value <= 1
  return {
    value,
    limit: 1,
    margin: 1 - value,
    ...verdictFrom(
      within
        ? {
            against: [],
            doubts: [],
            notes: [
              {
                code: 'intervals-meet',
                text: 'The two results differ by no more than their uncertainties allow.',
              },
            ],
          }
        : {
            against: [
              {
                code: 'intervals-apart',
                text: 'The two results differ by more than their uncertainties allow: one is wrong or its uncertainty too small.',
              },
            ],
            doubts: [],
          },
    ),
    cautions: ['instrument'],
    sources: ['common-practice'],
  }
}
