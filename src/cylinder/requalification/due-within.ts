import { type ErrorFacts, isLitrebarError, requireKeys, requireList, requireText } from '../../errors/index.ts'
import { type Accepted, one, type PlainNumber, requireWithin } from '../../units/index.ts'
import { monthNumber } from '../marking/calendar-month.ts'
import { type CalendarDate, type Finding, readStamp } from '../marking/index.ts'
import { requireStamp } from '../marking/require-stamp.ts'
import { everythingDue, type Requalification, requireOptions, requireRuleSet } from './next-requalification.ts'
import type { RequalificationOptions } from './requalification-options.ts'
import type { RequalificationHistory } from './stamped-tests.ts'

/** One cylinder of a register: its stamp as text or as read, and what governs it. */
export interface RegisterRow extends Omit<RequalificationOptions, 'asOf'> {
  readonly id: string
  readonly stamp: string | RequalificationHistory
}

/** What a row of the register comes to. A row that cannot be judged stays a row, with the reason. */
export interface DueRow {
  readonly id: string
  readonly state: 'due' | 'overdue' | 'later' | 'undetermined' | 'error'
  /** What decides the state: whatever is overdue, else what cannot be determined, else what falls due first. */
  readonly requalification?: Requalification
  /** Everything that was found about the stamp, so that the row shows why it is not to be trusted. */
  readonly findings: readonly Finding[]
  readonly error?: ErrorFacts & { readonly message: string }
}

/**
 * What of a register is overdue, or falls due within a number of days. Every row comes back, in the order given:
 * a stamp that cannot be read, or an unknown rule set, makes a row with its error and stops nothing.
 *
 * @param register - one row per cylinder
 * @param options - the day, and how many days ahead count, 0 or more
 * @returns one row per row of the register
 * @throws LitrebarError `input` for a day that the calendar does not have, an unknown option, or a row without an id that is a text;
 *   `range` for days below 0
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
  requireKeys('options', options, { asOf: true, days: true })
  const { asOf, days } = options
  monthNumber('options.asOf', asOf)
  requireWithin('options.days', days, daysAhead)
  requireList('register', register, 0, 'List the cylinders, one row each.')
  for (const [k, row] of register.entries())
    requireText(`register[${String(k)}].id`, (Object(row) as Partial<RegisterRow>).id)
  return register.map((row) => dueRow(row, options))
}

const daysAhead: Accepted = { atLeast: 0, unit: one, hint: 'Give the number of days ahead that count as due.' }

const rowKeys = {
  id: true,
  stamp: true,
  ruleSet: true,
  service: false,
  alloy: false,
  lastInspection: false,
  putIntoService: false,
  hasRiskAssessment: false,
  isInspectedYearly: false,
  meetsStarConditions: false,
  triggers: false,
  permit: false,
  permits: false,
} as const

function dueRow(row: RegisterRow, { asOf, days }: { readonly asOf: CalendarDate; readonly days: number }): DueRow {
  let findings: readonly Finding[] = []
  try {
    requireKeys('row', row, rowKeys)
    requireRuleSet('ruleSet', row.ruleSet)
    const { id, stamp, ...rules } = row
    if (typeof stamp !== 'string') requireStamp('row.stamp', stamp, ['retests'])
    const cylinder = typeof stamp === 'string' ? readStamp(stamp, { asOf }) : stamp
    findings = cylinder.findings ?? []
    const given = { ...rules, asOf }
    requireOptions(given)
    const requalification = decisive(everythingDue(cylinder, given))
    return { id, state: stateOf(requalification, days), requalification, findings }
  } catch (thrown) {
    if (!isLitrebarError(thrown)) throw thrown
    return { id: row.id, state: 'error', findings, error: thrown.toJSON() }
  }
}

/** What is overdue decides; then what cannot be determined; then what falls due first. */
function decisive(rows: readonly Requalification[]): Requalification {
  return (rows.find(({ verdict }) => verdict === 'beyond') ??
    rows.find(({ verdict }) => verdict === 'undetermined') ??
    rows[0]) as Requalification
}

function stateOf({ verdict, margin }: Requalification, days: number): DueRow['state'] {
  if (verdict === 'beyond') return 'overdue'
  if (verdict === 'undetermined' || margin === undefined) return 'undetermined'
  return margin <= days ? 'due' : 'later'
}
