import { LitrebarError, requireKeys, requireList, shown } from '../../errors/index.ts'
import type { Reason } from '../../references/assessment.ts'
import { type Accepted, one, requireWithin } from '../../units/index.ts'
import {
  type CalendarDate,
  type CalendarMonth,
  daysBetween,
  lastDayOf,
  monthNumber,
} from '../marking/calendar-month.ts'

/** What the caller read in a special permit, or in what takes its place. */
export interface PermitRow {
  /** Its number with letters as stamped: `SP9144`, `E9144`, `SU9102`. Letters of an exemption and of the permit that it became count as one. */
  readonly permit: string
  /** Interval between requalifications. */
  readonly months: number
  /** Service life from manufacture, where it has an end. */
  readonly lifeMonths?: number
  /** Last day on which it is in force. Left out, the caller does not know. */
  readonly validUntil?: CalendarMonth | CalendarDate
}

/** The terms of a permit, as an interval needs them. */
export type PermitTimes = Pick<PermitRow, 'months' | 'lifeMonths'>

const monthsRange: Accepted = { above: 0, atMost: 600, unit: one, hint: 'Give whole months: 5 years are 60.' }

/** Refuses terms out of range. */
export function requirePermitTimes(argument: string, terms: PermitTimes): void {
  requireKeys(argument, terms, { months: true, lifeMonths: false })
  requireTimes(argument, terms)
}

function requireTimes(argument: string, { months, lifeMonths }: PermitTimes): void {
  requireWithin(`${argument}.months`, months, monthsRange)
  if (lifeMonths !== undefined) requireWithin(`${argument}.lifeMonths`, lifeMonths, monthsRange)
}

/** Refuses a table with a row out of range or a permit twice. */
export function requirePermits(argument: string, permits: readonly PermitRow[]): void {
  requireList(argument, permits, 0, 'List the permits that you read: number, interval, service life and expiry.')
  const seen = new Set<string>()
  for (const [k, row] of permits.entries()) {
    const path = `${argument}[${String(k)}]`
    requireKeys(path, row, { permit: true, months: true, lifeMonths: false, validUntil: false })
    const number = numberIn(row.permit)
    if (number === undefined) throw noNumber(`${path}.permit`, row.permit)
    requireTimes(path, row)
    if (row.validUntil !== undefined) monthNumber(`${path}.validUntil`, row.validUntil)
    if (seen.has(number)) throw twice(`${path}.permit`, row.permit)
    seen.add(number)
  }
}

/** The row of a stamped permit, and whether it is in force on the day; nothing for a shoulder without a permit. */
export function permitInForce(
  stamped: string | undefined,
  permits: readonly PermitRow[],
  asOf: CalendarMonth | CalendarDate,
): { readonly row?: PermitRow; readonly against: readonly Reason[]; readonly doubts: readonly Reason[] } {
  const number = numberIn(stamped)
  const row = number === undefined ? undefined : permits.find(({ permit }) => numberIn(permit) === number)
  if (row === undefined) return { against: [], doubts: [unknownPermit(stamped)] }
  if (row.validUntil === undefined) {
    const text = `the expiry of ${row.permit} is not stated: the authority publishes it`
    return { row, against: [], doubts: [{ code: 'permit-validity-unknown', text }] }
  }
  const last = row.validUntil.length === 7 ? lastDayOf(row.validUntil) : row.validUntil
  if (daysBetween(asOf, last) >= 0) return { row, against: [], doubts: [] }
  const text = `${row.permit} was valid until ${row.validUntil}, as stated: unless it has been renewed, nothing may be filled under it`
  return { row, against: [{ code: 'permit-expired', text }], doubts: [] }
}

function unknownPermit(stamped: string | undefined): Reason {
  return {
    code: 'permit-unknown',
    text:
      stamped === undefined
        ? 'no permit number was read from the shoulder'
        : `${stamped} is not in the given table of permits: read the permit`,
  }
}

/** SP9144, SP-9144, E 9144 and DOT-E9144 are one number; the Canadian SU numbers are a series of their own. */
function numberIn(permit: unknown): string | undefined {
  const match = typeof permit === 'string' ? numberForm.exec(permit.toUpperCase()) : null
  return match === null ? undefined : `${match[1] === 'SU' ? 'SU' : 'SP'}${match[2] ?? ''}`
}

const numberForm = /^(?:DOT-?|TC-?)?(SP|SU|E)[ -]?0*(\d{1,6})$/u

function noNumber(argument: string, permit: unknown): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value: shown(permit),
    expected: 'letters and number of a permit',
    hint: 'Write it as stamped: SP9144, E9144, SU9102.',
  })
}

function twice(argument: string, permit: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value: permit,
    expected: 'each permit once',
    hint: 'An exemption and the permit that replaced it are one: keep the row in force.',
  })
}
