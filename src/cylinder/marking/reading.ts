import { monthText } from './calendar-month.ts'
import { type Finding, type FindingCode, type FindingDetail, findingSeverity } from './finding.ts'
import type {
  Deadline,
  MarkingFamily,
  Retest,
  RetestSuffix,
  Stamp,
  StampField,
  StampFieldName,
  StampMarks,
  TestKind,
  UsPrefix,
} from './stamp.ts'
import { kindByMarks } from './test-kind.ts'
import type { Separator, Word } from './words.ts'

/** The stamp while it is being read: every name is there, in one order, so that all stamps are of one shape. */
export type Draft = { -readonly [Name in keyof Stamp]-?: Stamp[Name] } & {
  retests: Retest[]
  deadlines: Deadline[]
  fields: StampField[]
  findings: Finding[]
}

export function emptyDraft(system: MarkingFamily): Draft {
  return {
    system,
    prefix: undefined,
    specification: undefined,
    permit: undefined,
    dual: undefined,
    servicePressure: undefined,
    workingPressure: undefined,
    testPressure: undefined,
    waterCapacity: undefined,
    emptyMass: undefined,
    minimumWall: undefined,
    thread: undefined,
    material: undefined,
    serial: undefined,
    maker: undefined,
    makerNumber: undefined,
    countryOfManufacture: undefined,
    countryOfApproval: undefined,
    inspector: undefined,
    notifiedBody: undefined,
    manufactured: undefined,
    firstTest: undefined,
    firstTestSuffixes: undefined,
    retests: [],
    deadlines: [],
    hydrogenCompatible: undefined,
    underwater: undefined,
    gas: undefined,
    nominal: undefined,
    rejectionElasticExpansion: undefined,
    closure: undefined,
    alloyHint: undefined,
    fields: [],
    findings: [],
  }
}

/** The names of the marks in their order, without the family. */
export const markNames: readonly (keyof StampMarks)[] = [
  'prefix',
  'specification',
  'permit',
  'dual',
  'servicePressure',
  'workingPressure',
  'testPressure',
  'waterCapacity',
  'emptyMass',
  'minimumWall',
  'thread',
  'material',
  'serial',
  'maker',
  'makerNumber',
  'countryOfManufacture',
  'countryOfApproval',
  'inspector',
  'notifiedBody',
  'manufactured',
  'firstTest',
  'firstTestSuffixes',
  'retests',
  'deadlines',
  'hydrogenCompatible',
  'underwater',
  'gas',
  'nominal',
  'rejectionElasticExpansion',
  'closure',
]

/** Where something stands in the text. */
export interface Place {
  readonly line: number
  readonly start: number
  readonly end: number
}

/** What the readers of the families share: the words, how far they are read, and what has come of it. */
export interface Reading {
  readonly lines: readonly string[]
  words: readonly Word[]
  readonly separators: readonly Separator[]
  /** Index of the word to read next. */
  at: number
  readonly marks: Draft
  /** Months since year 0 of the day that the reader counts from, if one was given. */
  readonly asOf: number | undefined
  /** A second authority whose letters stand before those of the first, over one mark. */
  sharedPrefix: UsPrefix | undefined
  /** Whether country, body and date of the certification did not stand behind the standard: they may follow elsewhere. */
  isCertificationOpen: boolean
  /** Every date met so far. */
  readonly dates: DatedMark[]
  /** The mark of the first test, and those of the retests in the order of `marks.retests`. */
  firstTest: DatedMark | undefined
  readonly retests: DatedMark[]
  readonly suffixPlaces: { readonly suffix: RetestSuffix; readonly place: Place }[]
  /** The first two-digit year that had to be given a century without a day to count from. */
  centuryPlace: Place | undefined
}

export function found(reading: Reading, given: FindingCode, place: Place, detail?: FindingDetail): void {
  const { line, start, end } = place
  const text = reading.lines[line]?.slice(start, end) ?? ''
  const code = given === 'unread-text' && isFigure(text) ? 'unread-figure' : given
  const severity = findingSeverity[code]
  reading.marks.findings.push(
    detail === undefined
      ? { code, severity, line, start, end, text }
      : { code, severity, line, start, end, text, detail },
  )
}

/** Whether a text that was not read looks like a date or a pressure, or like a part of one. */
function isFigure(text: string): boolean {
  return text.length <= 14 && figureForms.some((form) => form.test(text))
}

const figureForms = [
  /^\d{1,4}[./*-]\d{1,4}(?:[./*-]\d{2,4})?$/u, // 05.23, 2023/05, 12.05.2023
  /^\d{2}$/u, // a month or a year that has lost the rest
  /^(?:19|20)\d{2}$/u,
  /^(?:0?[1-9]|1[0-2])[A-Z]{1,3}\d{2}$/u, // 05A08
  /^(?:P[SWHTE]|TP|WP|FP)?\d{2,5}(?:[.,]\d+)? ?(?:PSIG?|BAR|MPA|AT[ÜU]|K[GP]\/CM2)$/iu,
  /^(?:P[SWHTE]|TP|WP|FP)\d{2,5}$/u,
  /^[1-6]\d0$|^23[02]$/u, // 200, 232, 300: what pressures are made of
]

export function fieldAt(reading: Reading, name: StampFieldName, place: Place): void {
  const { line, start, end } = place
  reading.marks.fields.push({ name, text: reading.lines[line]?.slice(start, end) ?? '', line, start, end })
}

/** Part of a word, by offsets into it. */
export function within(word: Word, from: number, to: number): Place {
  return { line: word.line, start: word.start + from, end: word.start + to }
}

/** From one word to another; where they stand on different lines, the rest of the first line. */
export function spanning(first: Word, last: Word): Place {
  return { line: first.line, start: first.start, end: last.line === first.line ? last.end : first.end }
}

/** The full year of two stamped figures: the latest that is not after the day counted from. */
export function fullYear(reading: Reading, twoFigures: number, place: Place): number {
  if (reading.asOf === undefined) {
    reading.centuryPlace ??= place
    return twoFigures < pivot ? 2000 + twoFigures : 1900 + twoFigures
  }
  const recent = 2000 + twoFigures
  return recent <= Math.floor(reading.asOf / 12) ? recent : 1900 + twoFigures
}

// Without a day to count from, 49 is 2049 and 50 is 1950; the finding says so.
const pivot = 50

/** A date as it was found, before all of them are known. */
export interface DatedMark {
  /** Months since year 0. */
  readonly number: number
  readonly body: string | undefined
  readonly country: string | undefined
  readonly suffixes: readonly RetestSuffix[]
  readonly place: Place
  /** Whether its year was stamped with two figures. */
  readonly hasShortYear: boolean
  readonly kind: TestKind | undefined
  /** `any`: the first test or a later one, as its place among the others tells. */
  readonly role: 'any' | 'first' | 'retest' | 'manufacture' | Deadline['kind']
}

/** Months since year 0, as `DatedMark` counts them. */
export function monthsOf(year: number, month: number): number {
  return year * 12 + month - 1
}

/** Puts every date in its place: the first test, later ones, what lies ahead. */
export function assignDates(reading: Reading): void {
  const { marks, dates } = reading
  if (dates.length === 0) return
  takeDatesAhead(reading)
  if (!isInOrder(dates)) dates.sort((a, b) => a.place.line - b.place.line || a.place.start - b.place.start)
  const first = firstTestAmong(reading)
  const tested = monthsBeforeNext(reading, first)
  for (const date of dates) {
    const { number, body, suffixes, place, role } = date
    const month = monthText(number)
    if (date === first) {
      marks.firstTest = month
      reading.firstTest = date
      if (body !== undefined) marks.inspector ??= body
      if (suffixes.length > 0) marks.firstTestSuffixes = suffixes
      fieldAt(reading, 'firstTest', place)
    } else if (role === 'manufacture') {
      marks.manufactured ??= month
      fieldAt(reading, 'manufactured', place)
    } else if (role === 'next due' || role === 'expiry' || role === 'end of life') {
      marks.deadlines.push({ date: month, kind: role })
      fieldAt(reading, 'deadline', place)
    } else {
      const kind = date.kind ?? kindByMarks(suffixes, marks.system)
      if (kind === 'unknown' && tested !== undefined && isNextDue(reading, number, tested)) {
        marks.deadlines.push({ date: month, kind: 'next due' })
        fieldAt(reading, 'deadline', place)
        found(reading, 'date-is-next-due', place)
        continue
      }
      marks.retests.push({ date: month, kind, body, country: date.country, suffixes })
      reading.retests.push(date)
      fieldAt(reading, 'retest', place)
    }
  }
}

// Intervals of the countries whose shoulders carry the next date beside the last one: 2, 2.5, 3, 4, 5, 6 and 10 years.
const stampedIntervals = [24, 30, 36, 48, 60, 72, 120]

/**
 * Outside the US a date ahead by one interval of a stamped test is the date of the next inspection: German law has both
 * stamped. Any other date ahead is left as it stands, with its warning.
 */
function isNextDue({ asOf = Infinity }: Reading, month: number, tested: ReadonlySet<number>): boolean {
  return month > asOf && stampedIntervals.some((interval) => tested.has(month - interval))
}

/** The months of tests that a next date can count from; none where no date lies ahead, nor on US shoulders. */
function monthsBeforeNext(
  { marks, dates, asOf }: Reading,
  first: DatedMark | undefined,
): ReadonlySet<number> | undefined {
  if (asOf === undefined || marks.system === 'US' || !dates.some(({ number }) => number > asOf)) return undefined
  const tested = new Set<number>()
  for (const date of dates) {
    const isTest = date.role === 'any' || date.role === 'retest' || date.role === 'first'
    if (date === first || (isTest && date.number <= asOf)) tested.add(date.number)
  }
  return tested
}

// How far ahead a date of two figures may lie, in months: what lies further back than 90 years is none of a cylinder in use.
const nearlyAhead = 120

/**
 * 27 among dates of this century is 2027, which lies ahead, and not 1927. Old US shoulders keep theirs: cylinders of the thirties are in
 * use, but neither the letters DOT nor the number of a requalifier stood on one.
 */
function takeDatesAhead({ marks, dates, asOf }: Reading): void {
  if (asOf === undefined) return
  let latest = 0
  for (const { number } of dates) latest = Math.max(latest, number)
  const isOldUs = marks.system === 'US' && marks.prefix !== 'DOT' && marks.prefix !== 'TC'
  for (let index = 0; index < dates.length; index++) {
    const date = dates[index] as DatedMark
    const ahead = date.number + 1200
    if (!date.hasShortYear || ahead <= asOf || ahead > asOf + nearlyAhead) continue
    if (isOldUs && date.role === 'any') continue
    if (latest > date.number) dates[index] = { ...date, number: ahead }
  }
}

function isInOrder(dates: readonly DatedMark[]): boolean {
  for (let index = 1; index < dates.length; index++) {
    const { line, start } = (dates[index] as DatedMark).place
    const before = (dates[index - 1] as DatedMark).place
    if (line < before.line || (line === before.line && start < before.start)) return false
  }
  return true
}

/** The first that could be one; the last, where a shoulder was typed with the newest date on top. */
function firstTestAmong({ dates }: Reading): DatedMark | undefined {
  let first: DatedMark | undefined
  let last: DatedMark | undefined
  let tests = 0
  let neverRises = true
  for (const date of dates) {
    if (date.role === 'first') return date
    if (date.role !== 'any' && date.role !== 'retest') continue
    if (last !== undefined && date.number > last.number) neverRises = false
    if (date.role === 'any') first ??= date
    last = date
    tests++
  }
  return tests > 1 && neverRises && last?.role === 'any' ? last : first
}
