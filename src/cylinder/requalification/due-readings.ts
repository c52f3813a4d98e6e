import { type CalendarMonth, monthNumber, monthText } from '../marking/calendar-month.ts'
import type { RequalificationOptions } from './requalification-options.ts'
import type { RequalificationRule } from './requalification-rule.table.ts'
import {
  fullTestStarts,
  lastEddyCurrent,
  lastInspectionOf,
  type RequalificationHistory,
  type StartReading,
  type TestRecord,
} from './stamped-tests.ts'

/** One reading of the dates of a stamp, and when it makes the next one due. */
export interface DueReading {
  readonly due: CalendarMonth
  /** The month that the interval counts from; absent where the stamp itself names the date. */
  readonly last?: CalendarMonth
  /** Why the dates may be read so, where it is not the plain reading. */
  readonly because?: string
}

/**
 * When a rule falls due, by each reading of the dates, earliest first. Empty where no date is known; undefined where the rule asks for
 * nothing.
 */
export function dueOf(
  rule: RequalificationRule,
  record: TestRecord,
  options: RequalificationOptions,
  cylinder: RequalificationHistory,
): readonly DueReading[] | undefined {
  if (rule.endsIn !== undefined) return [{ due: rule.endsIn }]
  const readings = startsOf(rule, record, options).map((start) => dueFrom(rule, start, record, options))
  if (rule.steps !== undefined && readings.every((reading) => reading === undefined)) return undefined
  const known = readings.filter((reading) => reading !== undefined)
  const named = nextDateReading(rule, record, options, cylinder)
  if (named !== undefined && known.every(({ due }) => due !== named.due)) known.push(named)
  return known.sort((a, b) => (a.due < b.due ? -1 : 1))
}

function dueFrom(
  rule: RequalificationRule,
  { month, because }: StartReading,
  record: TestRecord,
  options: RequalificationOptions,
): DueReading | undefined {
  const isFirst = record.tests.length === 0 && month === startOfCount(rule, record, options)
  const months =
    rule.steps === undefined
      ? ((isFirst ? rule.firstMonths : undefined) ?? rule.months)
      : nextStep(rule, month, record, options)
  if (months === undefined) return undefined
  const shift = rule.countsFrom === 'month before the stamp' ? -1 : 0
  const due = monthText(month + months + shift)
  return { due, last: monthText(month), ...(because === undefined ? {} : { because }) }
}

function startOfCount(
  rule: RequalificationRule,
  { first }: TestRecord,
  { putIntoService }: RequalificationOptions,
): number | undefined {
  if (rule.countsFrom !== 'putting into service' || putIntoService === undefined) return first
  return monthNumber('options.putIntoService', putIntoService)
}

function startsOf(
  rule: RequalificationRule,
  record: TestRecord,
  options: RequalificationOptions,
): readonly StartReading[] {
  const one = (month: number | undefined): readonly StartReading[] => (month === undefined ? [] : [{ month }])
  const counted = { ...record, first: startOfCount(rule, record, options) }
  switch (rule.kind) {
    case 'end of service life':
      return one(record.made)
    case 'eddy current':
      return one(lastEddyCurrent(record))
    case 'requalification':
      return fullTestStarts(counted, fullOnlyAfter(rule))
    default: {
      if (rule.steps !== undefined) return fullTestStarts(counted, rule.months)
      const stated = statedInspection(options)
      const last = lastInspectionOf(counted, rule.kind === 'external inspection')
      return one(stated !== undefined && (last === undefined || stated > last) ? stated : last)
    }
  }
}

// Under a rule longer than five years a mark after five may still be the full test of another rule; ten years in Austria have
// inspections between, so there only the full interval will do.
function fullOnlyAfter({ months, ruleSet }: RequalificationRule): number {
  return ruleSet === 'austrian-diving' ? months : Math.min(months, 60)
}

/** An inspection after the day of the question has not been. */
function statedInspection({ lastInspection, asOf }: RequalificationOptions): number | undefined {
  if (lastInspection === undefined) return undefined
  const month = monthNumber('options.lastInspection', lastInspection)
  return month > monthNumber('options.asOf', asOf) ? undefined : month
}

/** The next fixed age at which an inspection is asked for: one in the year before that age has done it. */
function nextStep(
  { steps = [] }: RequalificationRule,
  start: number,
  record: TestRecord,
  options: RequalificationOptions,
): number | undefined {
  const last = Math.max(lastInspectionOf(record, false) ?? start, statedInspection(options) ?? start)
  return steps.find((step) => last - start <= step - 12)
}

/**
 * The last date of an unknown kind may be the date of the next inspection and not of the last one: German shoulders carry it, older ones
 * alone. Not where another date already is the next one.
 */
function nextDateReading(
  rule: RequalificationRule,
  { first, tests }: TestRecord,
  { ruleSet }: RequalificationOptions,
  { system, findings, deadlines, firstTest }: RequalificationHistory,
): DueReading | undefined {
  if (rule.kind === 'end of service life' || rule.kind === 'eddy current' || system === 'US') return undefined
  const isGerman = ruleSet === 'german-diving' || ruleSet === 'german-diving-before-2003'
  const isSuspected = system === 'METRIC-OLD' && findings?.some(({ code }) => code === 'date-may-be-expiry') === true
  if (!isGerman && !isSuspected) return undefined
  if (deadlines?.some(({ kind }) => kind !== 'end of life') === true) return undefined
  const last = tests.at(-1)
  const isOnlyDate = last === undefined && system === 'METRIC-OLD' && firstTest !== undefined
  const month = isOnlyDate ? first : last?.kind === 'unknown' ? last.month : undefined
  if (month === undefined) return undefined
  const due = monthText(month)
  return { due, because: `if ${due} is the next due date, as German shoulders show it` }
}
