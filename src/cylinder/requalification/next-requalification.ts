import { requireKeys, requireList, requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import type { CautionId } from '../../references/cautions.ts'
import type { SourceId } from '../../references/sources.ts'
import { alloySign } from '../marking/alloy.ts'
import {
  type CalendarDate,
  type CalendarMonth,
  daysBetween,
  lastDayOf,
  monthNumber,
} from '../marking/calendar-month.ts'
import { evidenceOf } from '../marking/finding-evidence.ts'
import type { Deadline, Finding } from '../marking/index.ts'
import { requireStamp } from '../marking/require-stamp.ts'
import { type DueReading, dueOf } from './due-readings.ts'
import { permitInForce, requirePermits, requirePermitTimes } from './permit-table.ts'
import type { RequalificationOptions } from './requalification-options.ts'
import { cylinderServices, type RequalificationRule, type RuleSetId, ruleSetIds } from './requalification-rule.table.ts'
import { type AlloyKnowledge, materialOf, rulesFor } from './rules-for.ts'
import { type RequalificationHistory, type TestRecord, testRecord } from './stamped-tests.ts'
import { type TestTrigger, testTriggers } from './test-trigger.table.ts'

/** When something falls due, judged for one day. `value` is that day, `limit` the last day before it is overdue, `margin` the days between. */
export interface Requalification extends Assessment<CalendarMonth | CalendarDate> {
  /** The rule with its edition; absent where none covers this cylinder, or where the stamp itself names the date. */
  readonly rule?: RequalificationRule
  /** The month that the interval counts from. */
  readonly last?: CalendarMonth
  /** The month in which it falls due, by the earliest reading of the dates. It counts as valid through the last day of that month. */
  readonly due?: CalendarMonth
  /** Every reading of the dates, where the stamp leaves more than one: the earliest counts. */
  readonly readings?: readonly DueReading[]
  /** Everything that was found about the stamp. */
  readonly findings: readonly Finding[]
}

/**
 * What falls due first, and when, under a rule set that the caller names. Whatever is overdue comes before everything else.
 *
 * The interval counts in whole months from the month of the last test, and what is due in a month is valid through its
 * last day. A test that came late moves the next one; it does not shorten it. Where the stamp does not say what a date is,
 * each reading is worked out and the earliest counts.
 *
 * @param cylinder - a stamp as read, or its dates
 * @param options - the rule set, the day, and what the stamp cannot say
 * @returns an assessment: `beyond` when overdue, condemned, or at the end of its life; `undetermined` when a date, a kind or a rule is
 *   not known, or an error or an unread figure stands on the shoulder
 * @throws LitrebarError `input` for a date that the calendar does not have, an unknown rule set, use or option
 * @source common-practice, month arithmetic; intervals as the rule of the result says
 * @example
 * const stamp = readStamp('DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23', { asOf: '2026-11' })
 * const next = nextRequalification(stamp, { ruleSet: 'us-180.209', asOf: '2026-11-25' })
 * next.due // => '2028-10'
 * next.verdict // => 'within'
 * next.rule?.status // => 'read'
 */
export function nextRequalification(
  cylinder: RequalificationHistory,
  options: RequalificationOptions,
): Requalification {
  return requalifications(cylinder, options)[0] as Requalification
}

/**
 * Everything that falls due under a rule set: what is overdue, then what cannot be determined, then the rest, earliest first.
 * The full test, inspections between, dates that the stamp itself names, an end of service life.
 * Where an interval depends on a use that is not stated, both appear, each with its reason.
 *
 * @param cylinder - a stamp as read, or its dates
 * @param options - the rule set, the day, and what the stamp cannot say
 * @returns at least one; a single `undetermined` one when no rule is known
 * @throws LitrebarError `input` for a date that the calendar does not have, an unknown rule set, use or option
 * @source common-practice, month arithmetic; intervals as the rule of each result says
 * @example
 * const stamp = readStamp('DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23', { asOf: '2026-11' })
 * requalifications(stamp, { ruleSet: 'south-african-diving', asOf: '2026-11' }).map(({ due }) => due).join(' ') // => '2025-10 2027-10'
 */
export function requalifications(
  cylinder: RequalificationHistory,
  options: RequalificationOptions,
): readonly Requalification[] {
  requireStamp('cylinder', cylinder, ['retests'])
  requireOptions(options)
  return everythingDue(cylinder, options)
}

/** The same of a stamp and options that have been checked. */
export function everythingDue(
  cylinder: RequalificationHistory,
  options: RequalificationOptions,
): readonly Requalification[] {
  const today = monthNumber('options.asOf', options.asOf)
  const record = testRecord(cylinder, options.ruleSet, today)
  const alloy = alloyOf(cylinder, options)
  const rules = rulesFor(cylinder, options, record, alloy)
  const common = commonEvidence(cylinder, options, record, today)
  const situation: Situation = { cylinder, options, record, today, alloy, rules, common }
  const ofPermit = permitRules(cylinder, options)
  const rows = [...rules, ...ofPermit].flatMap((rule) => judged(rule, situation))
  for (const { date, kind } of liveDeadlines(cylinder, record)) rows.push(stamped(date, kind, situation))
  // An examination of the neck alone is no answer to when the cylinder is due.
  if (rules.every(({ kind }) => kind === 'eddy current') && ofPermit.length === 0)
    rows.push(row(situation, { doubts: [noRule(cylinder, options)] }))
  return rows.sort((a, b) => rank(a) - rank(b) || (a.due ?? undated).localeCompare(b.due ?? undated))
}

// Behind every date: what is overdue by its date comes before what is against it without one.
const undated = '9999-12'

function rank({ verdict, due }: Requalification): number {
  return verdict === 'beyond' ? 0 : due === undefined ? 1 : 2
}

interface Situation {
  readonly cylinder: RequalificationHistory
  readonly options: RequalificationOptions
  readonly record: TestRecord
  readonly today: number
  readonly alloy: AlloyKnowledge
  readonly rules: readonly RequalificationRule[]
  readonly common: { readonly against: readonly Reason[]; readonly doubts: readonly Reason[] }
}

function alloyOf(cylinder: RequalificationHistory, { alloy }: RequalificationOptions): AlloyKnowledge {
  if (alloy !== undefined) return alloy === '6351-T6' ? 'known' : 'no'
  if (cylinder.alloyHint !== undefined) return 'presumed'
  const sign = alloySign(cylinder)
  return sign === 'presumed' || sign === 'examined' ? 'presumed' : 'no'
}

/** What holds for every row: the findings, an ended life, damage, dates that are no tests. */
function commonEvidence(
  cylinder: RequalificationHistory,
  { triggers = [], service, permit, permits, asOf }: RequalificationOptions,
  record: TestRecord,
  today: number,
): Situation['common'] {
  const found = evidenceOf(cylinder.findings ?? [])
  const against = [...found.against, ...record.against]
  const doubts = [...found.doubts, ...record.doubts]
  const isOver = (cylinder.deadlines ?? []).some(
    ({ kind, date }) => kind === 'end of life' && today > monthNumber('cylinder.deadlines', date),
  )
  if (isOver) against.push(lifeEnded)
  if (cylinder.specification === 'special permit' && permit === undefined && permits !== undefined) {
    const inForce = permitInForce(cylinder.permit, permits, asOf)
    against.push(...inForce.against)
    doubts.push(...inForce.doubts)
  }
  for (const trigger of triggers) against.push({ code: trigger, ...testTriggers[trigger] })
  const isUnderwater = service === undefined || service === 'diving'
  const isComposite = materialOf(cylinder) === 'composite'
  if (isUnderwater && isComposite && cylinder.system === 'UN' && cylinder.underwater !== true) {
    doubts.push({
      code: 'composite-without-uw',
      text: 'a composite for underwater use must be marked UW; this one is not',
      source: 'cfr-49-178-71',
    })
  }
  return { against, doubts }
}

const lifeEnded: Reason = {
  code: 'life-ended',
  text: 'the service life is over: the cylinder cannot be requalified and must be condemned',
  source: 'phmsa-24-0033r',
}

/** One rule applied: when it falls due by each reading of the dates, and what speaks for and against. */
function judged(rule: RequalificationRule, situation: Situation): readonly Requalification[] {
  const { options, today, alloy } = situation
  const readings = dueOf(rule, situation.record, options, situation.cylinder)
  if (readings === undefined) return []
  const doubts = [...doubtsOf(rule, situation)]
  const against: Reason[] = []
  const notes: Reason[] = []
  const isPresumed = rule.alloy !== undefined && alloy === 'presumed'
  const earliest = readings[0]
  if (earliest === undefined) {
    if (rule.kind === 'eddy current') (isPresumed ? doubts : against).push(neverExamined(isPresumed))
    else doubts.push(noDate)
    return [row(situation, { against, doubts, notes, rule })]
  }
  const overdue = readings.filter(({ due }) => today > monthNumber('due', due))
  const isSurelyOverdue = overdue.length === readings.length
  const { due } = earliest
  if (isSurelyOverdue) {
    const isOpen = rule.countsFrom === 'putting into service' && countsFromStamp(situation)
    if (isOpen)
      doubts.push({
        code: 'counts-from-putting-into-service',
        text: `counted from the stamp it was due in ${due}, but the interval starts when it is put into service: state putIntoService`,
        source: rule.source,
      })
    else if (isForUnknownMetal(rule, situation))
      doubts.push({
        code: 'overdue-if-of-this-metal',
        text: `was due in ${due} if it is ${rule.materials?.join(' or ') ?? 'this metal'}`,
        source: rule.source,
      })
    else if (isPresumed && rule.kind === 'end of service life')
      doubts.push({
        code: 'presumed-6351',
        text: `ended in ${due} if it is alloy 6351-T6, as its age or origin suggests`,
        source: rule.source,
      })
    else {
      against.push({
        code: 'overdue',
        text: `was due in ${due}; not to be filled before ${rule.kind}`,
        source: rule.source,
      })
      if (rule.kind === 'end of service life') against.push(lifeEnded)
      else notes.push(filledBefore)
    }
  } else if (overdue.length > 0) {
    doubts.push({
      code: 'overdue-by-one-reading',
      text: `was due in ${due}, ${earliest.because ?? 'by one reading of the dates'}`,
      source: rule.source,
    })
  } else {
    notes.push({ code: 'due', text: `due in ${due}, valid through ${lastDayOf(due)}`, source: rule.source })
    if (readings.length > 1)
      notes.push({
        code: 'earliest-of-readings',
        text: `the earliest of ${String(readings.length)} readings of the dates: ${earliest.because ?? ''}`,
      })
  }
  return [row(situation, { against, doubts, notes: [...notes, ...notesOf(rule, situation)], rule, readings })]
}

/** Doubts about the rule itself: how well it is known, and what it requires that nobody has stated. */
function doubtsOf(rule: RequalificationRule, { options, cylinder }: Situation): readonly Reason[] {
  const doubts: Reason[] = []
  const { status, source } = rule
  if (status === 'memory')
    doubts.push({ code: 'from-memory', text: 'the interval is from memory; its text was not read', source })
  if (status === 'superseded')
    doubts.push({
      code: 'superseded',
      text: `the interval was read in an edition that has since been replaced (${rule.edition})`,
      source,
    })
  if (isForUnknownMetal(rule, { cylinder })) {
    doubts.push({
      code: 'material-not-stated',
      text: `the rule is for ${rule.materials?.join(' or ') ?? ''}, but nothing says what the cylinder is made of`,
    })
  }
  if (rule.conditions !== undefined && options[rule.conditions] !== true) {
    doubts.push({
      code: 'conditions-not-stated',
      text: 'the star requires at most 125 lb of water, only listed dry gases since, a hammer test before each refill, and no use under water: state that these are met',
      source,
    })
  }
  return doubts
}

function notesOf(rule: RequalificationRule, { options, rules }: Situation): readonly Reason[] {
  const notes: Reason[] = []
  const alternative = rules.find(({ replaces }) => replaces === rule.id)
  if (
    options.service === undefined &&
    ((rule.replaces !== undefined && rule.services !== undefined) || alternative !== undefined)
  ) {
    notes.push({
      code: 'interval-depends-on-service',
      text: 'two intervals are possible; which applies depends on the use of the cylinder, which the stamp does not show',
    })
  }
  if (rule.status === 'secondary')
    notes.push({
      code: 'secondary-source',
      text: `the interval is second-hand; the text itself was not read (${rule.edition})`,
      source: rule.source,
    })
  if (rule.status === 'practice')
    notes.push({
      code: 'common-practice',
      text: 'the interval is customary; there is no rule behind it',
      source: rule.source,
    })
  if (rule.remark !== undefined) notes.push(rule.remark)
  return notes
}

/** Whether a rule is one for a metal, and nothing says what the cylinder is made of. */
function isForUnknownMetal({ materials }: RequalificationRule, { cylinder }: Pick<Situation, 'cylinder'>): boolean {
  return materials !== undefined && materialOf(cylinder) === undefined
}

function countsFromStamp({ record, options }: Situation): boolean {
  return record.tests.length === 0 && options.putIntoService === undefined
}

/**
 * The stamped dates that still stand. One for which a test came, no sooner than a year before it, and behind which a later one is
 * stamped, has been answered: a shoulder keeps them all.
 */
function liveDeadlines({ deadlines = [] }: RequalificationHistory, { tests }: TestRecord): readonly Deadline[] {
  return deadlines.filter(({ date, kind }) => {
    if (kind === 'end of life') return true
    const month = monthNumber('cylinder.deadlines', date)
    const isAnswered = tests.some((test) => test.month >= month - 12)
    const isFollowed = deadlines.some((other) => other.kind !== 'end of life' && other.date > date)
    return !(isAnswered && isFollowed)
  })
}

/** A date that the stamp itself names. */
function stamped(
  date: CalendarMonth,
  kind: 'next due' | 'expiry' | 'end of life',
  situation: Situation,
): Requalification {
  const isOver = situation.today > monthNumber('cylinder.deadlines', date)
  const against: Reason[] = isOver
    ? [kind === 'end of life' ? lifeEnded : { code: 'overdue', text: `the stamp names ${date} for what comes next` }]
    : []
  const code = kind === 'end of life' ? 'life-ends' : 'due'
  const notes: Reason[] = isOver
    ? []
    : [{ code, text: `the stamp names ${date} (${kind}), valid through ${lastDayOf(date)}` }]
  return row(situation, { against, notes, readings: [{ due: date }] })
}

function row(
  { options: { asOf }, common, cylinder }: Situation,
  own: {
    readonly against?: readonly Reason[]
    readonly doubts?: readonly Reason[]
    readonly notes?: readonly Reason[]
    readonly rule?: RequalificationRule
    readonly readings?: readonly DueReading[]
  },
): Requalification {
  const { against = [], doubts = [], notes = [], rule, readings = [] } = own
  const earliest = readings[0]
  const limit = earliest && lastDayOf(earliest.due)
  return {
    value: asOf,
    ...(limit === undefined ? {} : { limit, margin: daysBetween(asOf, limit) }),
    ...verdictFrom({
      against: withoutDoubles([...common.against, ...against]),
      doubts: withoutDoubles([...common.doubts, ...doubts]),
      notes,
    }),
    cautions,
    sources: sourcesOf(rule, [...common.against, ...against, ...doubts]),
    ...(rule === undefined ? {} : { rule }),
    ...(earliest === undefined
      ? {}
      : { due: earliest.due, ...(earliest.last === undefined ? {} : { last: earliest.last }) }),
    ...(readings.length > 1 ? { readings } : {}),
    findings: cylinder.findings ?? [],
  }
}

function withoutDoubles(reasons: readonly Reason[]): readonly Reason[] {
  return reasons.filter(({ code }, index) => reasons.findIndex((reason) => reason.code === code) === index)
}

function sourcesOf(rule: RequalificationRule | undefined, reasons: readonly Reason[]): readonly SourceId[] {
  const ids = reasons.flatMap(({ source }) => (source === undefined ? [] : [source]))
  return [...new Set(rule === undefined ? ids : [rule.source, ...ids])]
}

const cautions: readonly CautionId[] = ['requalification']

const noDate: Reason = { code: 'no-date', text: 'no test date could be read: an inspector must establish it or retest' }

const filledBefore: Reason = {
  code: 'filled-before-due',
  text: 'if filled before the due date, it may stay in service until empty; it may not be refilled before the test',
  source: 'cfr-49-180-205',
}

function neverExamined(isPresumed: boolean): Reason {
  return {
    code: isPresumed ? 'presumed-6351' : 'never-examined',
    text: isPresumed
      ? 'by its age or origin it is presumed to be alloy 6351-T6 until shown otherwise, and no eddy-current examination is stamped'
      : 'no eddy-current examination is stamped, and this alloy has needed one with every test since 2007',
    source: isPresumed ? 'notice-94-7' : 'cfr-49-180-205',
  }
}

function noRule({ specification }: RequalificationHistory, { ruleSet }: RequalificationOptions): Reason {
  if (specification === 'special permit') {
    return {
      code: 'permit-decides',
      text: 'a special permit sets its own interval and, for composites, the service life: read the permit and state its terms',
    }
  }
  return {
    code: 'no-rule',
    text: `rule set ${ruleSet} has no interval for ${specification ?? 'a cylinder without a specification'}`,
  }
}

/** The terms of a permit as rules of their own. */
function permitRules(
  { specification, permit: stamped }: RequalificationHistory,
  { permit: stated, permits, ruleSet, asOf }: RequalificationOptions,
): readonly RequalificationRule[] {
  if (specification !== 'special permit') return []
  const permit = stated ?? (permits === undefined ? undefined : permitInForce(stamped, permits, asOf).row)
  if (permit === undefined) return []
  const common = {
    ruleSet,
    status: 'read',
    source: 'cfr-49-180-205',
    place: 'paragraph (c): the terms of the permit',
    edition: 'as the caller read it',
  } as const
  const test = {
    id: 'permit',
    title: 'special permit: interval set by the permit',
    kind: 'requalification',
    months: permit.months,
    ...common,
  } as const
  if (permit.lifeMonths === undefined) return [test]
  return [
    test,
    {
      id: 'permit-life',
      title: 'special permit: service life set by the permit',
      kind: 'end of service life',
      months: permit.lifeMonths,
      ...common,
    },
  ]
}

/** Refuses options that are unknown or out of range. */
export function requireOptions(options: RequalificationOptions): void {
  requireKeys('options', options, {
    ruleSet: true,
    asOf: true,
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
  })
  if (options.permits !== undefined) requirePermits('options.permits', options.permits)
  requireRuleSet('options.ruleSet', options.ruleSet)
  if (options.service !== undefined) requireWord('options.service', options.service, cylinderServices)
  if (options.alloy !== undefined) requireWord('options.alloy', options.alloy, ['6351-T6', 'other'])
  for (const name of ['lastInspection', 'putIntoService'] as const)
    if (options[name] !== undefined) monthNumber(`options.${name}`, options[name])
  for (const name of ['hasRiskAssessment', 'isInspectedYearly', 'meetsStarConditions'] as const)
    if (options[name] !== undefined) requireWord(`options.${name}`, options[name], [true, false])
  if (options.triggers !== undefined) requireTriggers(options.triggers)
  if (options.permit !== undefined) requirePermitTimes('options.permit', options.permit)
}

function requireTriggers(triggers: readonly TestTrigger[]): void {
  requireList('options.triggers', triggers, 0, 'List what has happened to the cylinder.')
  for (const [k, trigger] of triggers.entries())
    requireWord(`options.triggers[${String(k)}]`, trigger, Object.keys(testTriggers) as TestTrigger[])
}

/** Refuses a name that is no rule set, for input that the compiler has not seen. */
export function requireRuleSet(argument: string, name: string): asserts name is RuleSetId {
  requireWord(argument, name, ruleSetIds)
}
