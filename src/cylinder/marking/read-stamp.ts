import { LitrebarError, requireKeys, shown } from '../../errors/index.ts'
import { type CalendarDate, type CalendarMonth, monthNumber } from './calendar-month.ts'
import { checkConsistency } from './consistency.ts'
import type { Finding } from './finding.ts'
import { hasInvisible, moveBack, withoutInvisible } from './invisible.ts'
import { hasPhrases, joinWords, splitMarks } from './joined-words.ts'
import { isCondemnation, readLabelledDates } from './labelled-dates.ts'
import { gasAt, isMegapascalMark, isMetricDate, isMetricUnit, readMetricMarks } from './metric-marks.ts'
import { type Draft, emptyDraft, found, type Reading, within } from './reading.ts'
import { specificationOf } from './specification.table.ts'
import type { MarkingFamily, Stamp } from './stamp.ts'
import { threadAt } from './thread.ts'
import { familyOfStandard, isStandardWord, isUnSymbol, readUnMarks, startsStandard } from './un-marks.ts'
import { isRin } from './us-date.ts'
import { isBareSpecification, isSpacedSpecification, prefixAt, readUsMarks } from './us-marks.ts'
import { type Scan, scanWords, type Word } from './words.ts'

/** What a stamp cannot say of itself. */
export interface ReadStampOptions {
  /**
   * The day that two-digit years are counted back from. Without it 00 to 49 are read as 20.., 50 to 99 as 19..,
   * a finding says so, and dates in the future go unnoticed.
   */
  readonly asOf?: CalendarMonth | CalendarDate
}

/**
 * The marks of a cylinder shoulder: specification or standard, pressures, capacity, masses, names, dates, and everything
 * that was found about them.
 *
 * Reads US and Canadian, UN, ISO/EN with and without the pi mark, and older European shoulders, on one line or several.
 * Spacing, separators, small letters and look-alikes (O for 0, I for 1) are repaired, and each repair is a finding.
 * What breaks a rule is a finding too, never an exception: a stamp full of errors is still read as far as it goes.
 * A stamp does not say which interval of inspection holds: see `nextRequalification`.
 *
 * @param text - what is stamped, top to bottom
 * @param options - the day to count two-digit years from
 * @returns the marks, the place of each, and the findings in the order of the text
 * @throws LitrebarError `stamp`, with line and offsets, for a text in which no mark of any family is found;
 *   `input` for an `asOf` that is no date
 * @source cfr-49-178-35, paragraph (f); un-model-regulations-17, 6.2.2.7; older European layouts: memory
 * @example
 * const stamp = readStamp('DOT-3AL3000\nP4711 BRISKA\n07 V 08', { asOf: '2026-11' })
 * stamp.specification // => '3AL'
 * inUnit(stamp.servicePressure ?? gauge(0, psi), psi) // => 3000
 * stamp.firstTest // => '2008-07'
 */
export function readStamp(text: string, options: ReadStampOptions = {}): Stamp {
  if (typeof text !== 'string') {
    throw new LitrebarError({
      code: 'input',
      argument: 'text',
      value: shown(text),
      expected: 'the text of a shoulder',
      hint: 'Type the shoulder line by line, as stamped.',
    })
  }
  requireKeys('options', options, { asOf: false })
  const asOf = options.asOf === undefined ? undefined : monthNumber('options.asOf', options.asOf)
  if (!hasInvisible(text)) return readVisible(text, asOf)
  const visible = withoutInvisible(text)
  const marks = readVisible(visible.text, asOf)
  moveBack(text, visible, marks)
  return marks
}

function readVisible(text: string, asOf: number | undefined): Draft {
  const plain = scanWords(text, false)
  const hasSlash = text.includes('/')
  const words = hasSlash || text.includes('-') ? splitMarks(plain.words) : plain.words
  const family = familyOf(words)
  if (family === undefined) throw nothingReadable(plain)
  const scan = family.system === 'US' && hasSlash ? scanWords(text, true) : plain
  const reading = newReading(scan, scan === plain ? words : scan.words, family.system, asOf)
  noteRepairs(reading)
  if (family.other !== undefined) found(reading, 'two-families', within(family.other, 0, family.other.text.length))
  if (hasPhrases(reading.words, family.system)) {
    reading.words = joinWords(reading.words, family.system)
    reading.words = readLabelledDates(reading)
  }
  if (family.system === 'US') readUsMarks(reading)
  else if (family.system === 'METRIC-OLD') readMetricMarks(reading)
  else {
    readUnMarks(reading)
    reading.marks.system = familyOfStandard(reading)
  }
  const { marks } = reading
  const row = marks.specification === undefined ? undefined : specificationOf(marks.specification)
  if (row !== undefined) marks.material = row.material
  if (marks.system !== 'US' && marks.material === 'steel') marks.hydrogenCompatible ??= false
  checkConsistency(reading, row)
  if (reading.centuryPlace !== undefined) found(reading, 'century-assumed', reading.centuryPlace)
  inOrder(marks.findings)
  return marks
}

// Written out: spreading an object would cost more than all the reading.
function newReading(scan: Scan, words: readonly Word[], system: MarkingFamily, asOf: number | undefined): Reading {
  return {
    lines: scan.lines,
    words,
    separators: scan.separators,
    at: 0,
    marks: emptyDraft(system),
    asOf,
    sharedPrefix: undefined,
    isCertificationOpen: false,
    dates: [],
    firstTest: undefined,
    retests: [],
    suffixPlaces: [],
    centuryPlace: undefined,
  }
}

/** In the order of the text: by insertion, since most are in place already. */
function inOrder(findings: Finding[]): void {
  if (findings.length > 50) findings.sort((a, b) => a.line - b.line || a.start - b.start)
  else {
    for (let index = 1; index < findings.length; index++) {
      const finding = findings[index] as Finding
      let at = index - 1
      for (; at >= 0 && isAfter(findings[at] as Finding, finding); at--) findings[at + 1] = findings[at] as Finding
      findings[at + 1] = finding
    }
  }
}

function isAfter(a: Finding, b: Finding): boolean {
  return a.line > b.line || (a.line === b.line && a.start > b.start)
}

function noteRepairs(reading: Reading): void {
  for (const word of reading.words) {
    if (word.repair !== undefined) found(reading, word.repair, within(word, 0, word.text.length), { readAs: word.text })
  }
  for (const separator of reading.separators) found(reading, 'separator', separator)
}

/** The family by its surest mark; a mark of another family as well is reported, not resolved. */
function familyOf(words: readonly Word[]): { readonly system: MarkingFamily; readonly other?: Word } | undefined {
  let us: Word | undefined
  let standard: Word | undefined
  let pressure: Word | undefined
  let gas: Word | undefined
  let metric: Word | undefined
  let requalifier: Word | undefined
  for (let index = 0; index < words.length; index++) {
    const word = words[index] as Word
    const { text } = word
    const following = words[index + 1]?.text ?? ''
    if (us === undefined && isUsMark(text, following)) us = word
    else if (standard === undefined && isStandardMark(text, following)) standard = word
    // What tells the other families apart is of no use once one of the first two is found.
    else if (us !== undefined || standard !== undefined) continue
    else if (pressure === undefined && isLabelledPressure(text, following)) pressure = word
    else if (gas === undefined && gasAt(text)) gas = word
    else if (metric === undefined && isMetricMark(text, following)) metric = word
    else if (requalifier === undefined && isRin(text)) requalifier = word
  }
  if (us !== undefined) return standard === undefined ? { system: 'US' } : { system: 'US', other: standard }
  if (standard !== undefined) return { system: 'ADR' }
  // PW and PH belong to the newer shoulders; with the word for a gas beside them the shoulder is an older one.
  if (pressure !== undefined && gas === undefined) return { system: 'ADR' }
  if (metric !== undefined || gas !== undefined || pressure !== undefined) return { system: 'METRIC-OLD' }
  if (requalifier !== undefined) return { system: 'US' }
  return words.some(({ text }, index) => isAnyMark(text, words[index + 1]?.text)) ? { system: 'METRIC-OLD' } : undefined
}

/** A mark that no family owns: a date, a thread, the word that condemns. */
function isAnyMark(text: string, following: string | undefined): boolean {
  return isMetricDate(text) || threadAt(text, following) !== undefined || isCondemnation(text)
}

function isUsMark(text: string, following: string): boolean {
  if (!mayBeginUsMark(text.charCodeAt(0))) return false
  const slash = text.indexOf('/')
  const head = slash < 0 ? text : text.slice(0, slash)
  const next = slash < 0 ? following : text.slice(slash + 1)
  const prefix = prefixAt(head)
  if (prefix !== undefined) {
    const isFollowed = startsWithFigure(following) || prefixAt(next) !== undefined
    return head.length > prefix.length || isFollowed || prefix === 'DOT'
  }
  return isBareSpecification(head) || isSpacedSpecification(head, next)
}

/** DOT, ICC (its I read as 1), CTC, CRC, BTC, TC, and the figures that types begin with. */
function mayBeginUsMark(code: number): boolean {
  if (code < 65) return code === 51 || code === 52 || code === 49 || code === 56
  return code === 68 || code === 84 || code === 67 || code === 73 || code === 66
}

function isStandardMark(text: string, following: string): boolean {
  const code = text.charCodeAt(0)
  // ISO (its I read as 1), EN, BS, UN in its spellings.
  if (code !== 73 && code !== 85 && code !== 69 && code !== 66 && code !== 49) return false
  return startsStandard(text, following) || (isUnSymbol(text) && isStandardWord(following))
}

function isLabelledPressure(text: string, following: string): boolean {
  if (text.charCodeAt(0) !== 80 || (text.charCodeAt(1) !== 87 && text.charCodeAt(1) !== 72)) return false
  return startsWithFigure(text.length === 2 ? following : text.slice(2))
}

function isMetricMark(text: string, following: string): boolean {
  if (!startsWithFigure(text)) return isMegapascalMark(text, following)
  let end = 0
  while (end < text.length && isFigureOrPoint(text.charCodeAt(end))) end++
  return end === text.length ? isMetricUnit(following, 0) : isMetricUnit(text, end)
}

function isFigureOrPoint(code: number): boolean {
  return (code >= 48 && code <= 57) || code === 44 || code === 46
}

function startsWithFigure(text: string): boolean {
  const code = text.charCodeAt(0)
  return code >= 48 && code <= 57
}

function nothingReadable({ lines, words }: Scan): LitrebarError {
  const first = words[0]
  const position =
    first === undefined ? { line: 0, start: 0, end: 0 } : { line: first.line, start: first.start, end: first.end }
  return new LitrebarError({
    code: 'stamp',
    argument: 'text',
    value: first === undefined ? 'without any word' : JSON.stringify(lines[first.line]?.slice(0, 60)),
    expected: 'a specification (DOT-3AL3000), a design standard (UN ISO 7866), or a pressure with its unit (200 BAR)',
    hint: 'Type the shoulder line by line, as stamped.',
    position,
  })
}
