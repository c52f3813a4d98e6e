import { LitrebarError } from '../../errors/index.ts'
import type { Assessment, Reason } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import {
  type CalendarDate,
  type CalendarMonth,
  daysBetween,
  lastDayOf,
  monthNumber,
  monthsLater,
} from '../marking/calendar-month.ts'
import { type Stamp, type StampMarks, specificationOf } from '../marking/index.ts'
import {
  type CylinderService,
  type RequalificationRule,
  type RuleSetId,
  requalificationRules,
} from './requalification-rule.table.ts'

/** What of a stamp decides when it is due: a `Stamp` as read, or the dates by hand. */
export type RequalificationHistory = Pick<StampMarks, 'retests'> &
  Partial<Pick<Stamp, 'system' | 'specification' | 'firstTest' | 'material' | 'alloyHint'>>

/** What decides a due date beside the stamp: rules, day, use. */
export interface RequalificationOptions {
  /** The rules that govern the cylinder where it is used. There is no default: the stamp cannot say. */
  readonly ruleSet: RuleSetId
  /** The day, or the month, for which the question is asked. */
  readonly asOf: CalendarMonth | CalendarDate
  /** What the cylinder is used for, where an interval depends on it. */
  readonly service?: CylinderService
  /** The alloy, where it is known; without it what the stamp points to is used. */
  readonly alloy?: '6351-T6'
  /** Month of the last visual or internal inspection, which no stamp shows. */
  readonly lastInspection?: CalendarMonth | CalendarDate
  /** Whether the owner holds the documented risk assessment that some intervals ask for. */
  readonly hasRiskAssessment?: boolean
}

/** When something falls due, judged for one day. `value` is that day, `limit` the last day before it is overdue, `margin` the days between. */
export interface Requalification extends Assessment<CalendarMonth | CalendarDate> {
  /** The rule with its edition; absent where none speaks of this cylinder. */
  readonly rule?: RequalificationRule
  /** The month that the interval counts from. */
  readonly last?: CalendarMonth
  /** The month in which it falls due. It counts as valid through the last day of that month. */
  readonly due?: CalendarMonth
}

/**
 * What falls due first, and when, under a rule set that the caller names.
 *
 * The interval counts in whole months from the month of the last test, and what is due in a month is valid through its
 * last day. A test that came late moves the next one; it does not shorten it.
 *
 * @param cylinder - a stamp as read, or its dates
 * @param options - the rule set, the day, and what the stamp cannot say
 * @returns an assessment: `beyond` when overdue, `undetermined` when no date or no rule is known
 * @throws LitrebarError `input` for a date that the calendar does not have
 * @source common-practice, month arithmetic; intervals as the rule of the result says
 * @example
 * const stamp = readStamp('DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23', { asOf: '2026-11' })
 * const next = nextRequalification(stamp, { ruleSet: 'us-180.209', asOf: '2026-11-25' })
 * next.due // => '2028-10'
 * next.verdict // => 'within'
 * next.rule?.edition // => '2008'
 */
export function nextRequalification(
  cylinder: RequalificationHistory,
  options: RequalificationOptions,
): Requalification {
  return requalifications(cylinder, options)[0] as Requalification
}

/**
 * Everything that falls due under a rule set, earliest first: the full test, inspections between, an end of service life.
 * Where an interval depends on a use that is not stated, both appear, each with its reason.
 *
 * @param cylinder - a stamp as read, or its dates
 * @param options - the rule set, the day, and what the stamp cannot say
 * @returns at least one; a single `undetermined` one when no date or no rule is known
 * @throws LitrebarError `input` for a date that the calendar does not have
 * @source common-practice, month arithmetic; intervals as the rule of each result says
 * @example
 * const stamp = readStamp('DRUCKLUFT 10 L 200 BAR PRUEF 300 BAR\n05.2016\n06.2024', { asOf: '2026-11' })
 * requalifications(stamp, { ruleSet: 'uk-diving', asOf: '2026-11' }).map(({ due }) => due).join(' ') // => '2026-12 2029-06'
 */
export function requalifications(
  cylinder: RequalificationHistory,
  options: RequalificationOptions,
): readonly Requalification[] {
  const { asOf } = options
  const today = monthNumber('options.asOf', asOf)
  const rules = rulesFor(cylinder, options)
  if (rules.length === 0) return [undetermined(asOf, noRule(cylinder, options))]
  const test = lastTest(cylinder)
  if (test === undefined) return [undetermined(asOf, [noDate])]
  const results = rules.flatMap((rule) => {
    const last = countedFrom(rule, cylinder, options, test)
    return last === undefined ? [] : [judged(rule, last, today, options, rules)]
  })
  return results.sort((a, b) => ((a.due ?? '') < (b.due ?? '') ? -1 : 1))
}

function judged(
  rule: RequalificationRule,
  last: CalendarMonth,
  today: number,
  { asOf, service }: RequalificationOptions,
  rules: readonly RequalificationRule[],
): Requalification {
  const due = monthsLater(last, rule.months)
  const limit = lastDayOf(due)
  const isOverdue = today > monthNumber('due', due)
  const because: Reason[] = [
    isOverdue
      ? { code: 'overdue', text: `was due in ${due}; not to be filled before ${rule.kind}`, source: rule.source }
      : { code: 'due', text: `due in ${due}, valid through ${limit}`, source: rule.source },
  ]
  const alternative = rules.find(({ replaces }) => replaces === rule.id)
  if (service === undefined && (rule.service !== undefined || alternative !== undefined)) {
    because.push({
      code: 'interval-depends-on-service',
      text: 'two intervals are possible; the use of the cylinder decides, and the stamp does not show it',
    })
  }
  if (isOverdue && rule.ruleSet === 'carriage-p200') {
    because.push({
      code: 'filled-before-due',
      text: 'filled before the due date, it may stay in use until it is empty',
      source: 'cfr-49-180-207',
    })
  }
  if (rule.kind === 'end of service life' && isOverdue) {
    because.push({
      code: 'service-life-ended',
      text: 'no requalification after the end of service life',
      source: rule.source,
    })
  }
  return {
    value: asOf,
    limit,
    margin: daysBetween(asOf, limit),
    verdict: isOverdue ? 'beyond' : 'within',
    because,
    cautions,
    sources: [rule.source],
    rule,
    last,
    due,
  }
}

const cautions: readonly CautionId[] = ['requalification']

/** The rules of the set that speak of this cylinder, less those that another one stands in for. */
function rulesFor(cylinder: RequalificationHistory, options: RequalificationOptions): readonly RequalificationRule[] {
  const material = cylinder.material ?? (cylinder.specification && specificationOf(cylinder.specification)?.material)
  const alloy = options.alloy ?? cylinder.alloyHint
  const marks = latest(cylinder)?.suffixes ?? []
  const holding = requalificationRules.filter(
    (rule) =>
      rule.ruleSet === options.ruleSet &&
      allows(rule.specifications, cylinder.specification) &&
      allows(rule.systems, cylinder.system) &&
      allows(rule.materials, material) &&
      (rule.mark === undefined || marks.includes(rule.mark)) &&
      (rule.alloy === undefined || rule.alloy === alloy) &&
      (rule.service === undefined || isPossible(rule, options)) &&
      (rule.needsRiskAssessment !== true || options.hasRiskAssessment === true),
  )
  // A rule that holds for one use stands in for the other only where that use is stated.
  const replaced = holding
    .filter(({ service }) => service === undefined || service === options.service)
    .map(({ replaces }) => replaces)
  return holding.filter(({ id }) => !replaced.includes(id))
}

/** A rule for one use holds where that use is stated; unstated, only if its mark on the cylinder points to it. */
function isPossible(rule: RequalificationRule, { service }: RequalificationOptions): boolean {
  return service === undefined ? rule.mark !== undefined : rule.service === service
}

function allows<Value>(accepted: readonly Value[] | undefined, value: Value | undefined): boolean {
  return accepted === undefined || (value !== undefined && accepted.includes(value))
}

function latest({ retests }: RequalificationHistory): RequalificationHistory['retests'][number] | undefined {
  let found = retests[0]
  for (const retest of retests) if (found !== undefined && retest.date >= found.date) found = retest
  return found
}

function lastTest(cylinder: RequalificationHistory): CalendarMonth | undefined {
  return latest(cylinder)?.date ?? cylinder.firstTest
}

/** The full test contains the inspections, so the later of the two starts their interval. */
function countedFrom(
  rule: RequalificationRule,
  cylinder: RequalificationHistory,
  { lastInspection }: RequalificationOptions,
  test: CalendarMonth,
): CalendarMonth | undefined {
  if (rule.kind === 'end of service life') return cylinder.firstTest
  if (rule.kind === 'requalification' || rule.kind === 'eddy current' || lastInspection === undefined) return test
  const inspected = monthsLater(lastInspection, 0)
  return inspected > test ? inspected : test
}

const noDate: Reason = { code: 'no-date', text: 'no test date could be read: an inspector has to find or renew it' }

function noRule({ specification }: RequalificationHistory, { ruleSet }: RequalificationOptions): readonly Reason[] {
  if (specification === 'special permit') {
    return [{ code: 'permit-decides', text: 'a special permit sets its own interval: read the permit' }]
  }
  const what = specification ?? 'a cylinder without a specification'
  return [{ code: 'no-rule', text: `rule set ${ruleSet} has no interval for ${what}` }]
}

function undetermined(asOf: CalendarMonth | CalendarDate, because: readonly Reason[]): Requalification {
  return { value: asOf, verdict: 'undetermined', because, cautions, sources: [] }
}

/** Refuses a name that is no rule set, for input that the compiler has not seen. */
export function requireRuleSet(argument: string, name: string): asserts name is RuleSetId {
  if (requalificationRules.some(({ ruleSet }) => ruleSet === name)) return
  const known = [...new Set(requalificationRules.map(({ ruleSet }) => ruleSet))]
  throw new LitrebarError({
    code: 'input',
    argument,
    value: JSON.stringify(name),
    expected: `one of ${known.join(', ')}`,
    hint: 'Name the rule set that governs the cylinder where it is used.',
  })
}
