import { type ErrorFacts, isLitrebarError } from '../../errors/index.ts'
import type { PlainNumber } from '../../units/index.ts'
import { type CalendarDate, readStamp } from '../marking/index.ts'
import {
  nextRequalification,
  type Requalification,
  type RequalificationHistory,
  type RequalificationOptions,
  requireRuleSet,
} from './next-requalification.ts'

/** One cylinder of a register: its stamp as text or as read, and what governs it. */
export interface RegisterRow extends Omit<RequalificationOptions, 'asOf'> {
  readonly id: string
  readonly stamp: string | RequalificationHistory
}

/** What a row of the register comes to. A row that cannot be judged stays a row, with the reason. */
export interface DueRow {
  readonly id: string
  readonly state: 'due' | 'overdue' | 'later' | 'undetermined' | 'error'
  readonly requalification?: Requalification
  readonly error?: ErrorFacts & { readonly message: string }
}

/**
 * What of a register is overdue, or falls due within a number of days. Every row comes back, in the order given:
 * a stamp that cannot be read, or an unknown rule set, makes a row with its error and stops nothing.
 *
 * @param register - one row per cylinder
 * @param options - the day, and how many days ahead count, 0 or more
 * @returns one row per row of the register
 * @throws LitrebarError `input` for a day that the calendar does not have
 * @source common-practice, month arithmetic; intervals as the rule of each row says
 * @example
 * const rows = dueWithin(
 *   [
 *     { id: 'A1', ruleSet: 'us-180.209', stamp: 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n12 A902 21' },
 *     { id: 'A2', ruleSet: 'us-180.209', stamp: 'unreadable' },
 *   ],
 *   { asOf: '2026-11-25', days: 60 },
 * )
 * rows.map(({ id, state }) => `${id} ${state}`).join(', ') // => 'A1 due, A2 error'
 */
export function dueWithin(
  register: readonly RegisterRow[],
  options: { readonly asOf: CalendarDate; readonly days: PlainNumber },
): readonly DueRow[] {
  return register.map((row) => dueRow(row, options))
}

function dueRow(row: RegisterRow, { asOf, days }: { readonly asOf: CalendarDate; readonly days: number }): DueRow {
  const { id, stamp, ...rules } = row
  try {
    requireRuleSet('ruleSet', row.ruleSet)
    const cylinder = typeof stamp === 'string' ? readStamp(stamp, { asOf }) : stamp
    const requalification = nextRequalification(cylinder, { ...rules, asOf })
    return { id, state: stateOf(requalification, days), requalification }
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    return { id, state: 'error', error: thrown.toJSON() }
  }
}

function stateOf({ verdict, margin }: Requalification, days: number): DueRow['state'] {
  if (verdict === 'undetermined' || margin === undefined) return 'undetermined'
  if (verdict === 'beyond') return 'overdue'
  return margin <= days ? 'due' : 'later'
}
