import { hasLookAlike, isStampedYear, wholeAt } from './figures.ts'
import { found, fullYear, monthsOf, type Place, type Reading, spanning, within } from './reading.ts'
import type { RetestSuffix } from './stamp.ts'
import { suffixesFrom } from './suffix.ts'
import { isDigitCode, isLetterCode, type Word } from './words.ts'

// Month, mark of who tested, two figures of the year: `05 A417 02 +`, `05A08`, `9-62 +`.
// Nothing here looks further ahead than a handful of words.

interface DatePattern {
  readonly month: number
  readonly monthLength: number
  readonly middle: string | undefined
  /** The number of a requalifier whose square stands apart or was typed with a slash. */
  readonly rin?: string
  readonly year: number
  readonly yearLength: number
  /** Word and offset behind the year. */
  readonly endWord: number
  readonly endOffset: number
}

/** Reads a date of the US form at the current word, with its suffixes and the second row of a square RIN. */
export function readUsDate(reading: Reading, alwaysRetest = false): boolean {
  const before = alwaysRetest ? undefined : requalifierBefore(reading)
  if (before !== undefined) reading.at += before.words
  const pattern = patternAt(reading.words, reading.at) ?? spacedPattern(reading.words, reading.at)
  if (pattern === undefined) return false
  const { words } = reading
  const first = words[reading.at] as Word
  const startIndex = reading.at
  reading.at = pattern.endWord + 1
  const who = pattern.middle === undefined ? requalifierBehind(reading, pattern) : undefined
  const suffixes = readSuffixes(reading, pattern)
  const lastIndex = reading.at - 1
  const place = spanning(first, words[lastIndex] as Word)
  const body = before?.rin ?? pattern.rin ?? who ?? wholeRin(reading, pattern.middle, place)

  noteRepairs(reading, startIndex, pattern)
  if (pattern.month < 1 || pattern.month > 12) {
    found(reading, 'invalid-month', within(first, 0, pattern.monthLength))
    return true
  }
  const year = pattern.yearLength === 4 ? pattern.year : fullYear(reading, pattern.year, place)
  const role = alwaysRetest || isRin(body) ? 'retest' : 'any'
  const number = monthsOf(year, pattern.month)
  const hasShortYear = pattern.yearLength === 2
  reading.dates.push({ number, body, country: undefined, suffixes, place, hasShortYear, kind: undefined, role })
  return true
}

function noteRepairs(
  reading: Reading,
  from: number,
  { monthLength, middle, yearLength, endWord, endOffset }: DatePattern,
): void {
  for (let index = from; index <= endWord; index++) {
    const word = reading.words[index] as Word
    const before = reading.words[index - 1]
    if (index > from && word.line !== before?.line) found(reading, 'line-break', within(word, 0, 0))
    if (index === from && hasLookAlike(word.text, 0, monthLength))
      found(reading, 'look-alike', within(word, 0, monthLength))
    if (index === endWord && hasLookAlike(word.text, endOffset - yearLength, endOffset)) {
      found(reading, 'look-alike', within(word, endOffset - yearLength, endOffset))
    }
    if (middle === undefined) continue // 9-62: the old dates without a mark have their hyphen by custom
    for (let at = 0; at < word.text.length; at++) {
      if (isDateSeparator(word.text.charCodeAt(at))) found(reading, 'separator', within(word, at, at + 1))
    }
  }
}

/** `06/23 C208`: the number of the requalifier behind the year. */
function requalifierBehind(reading: Reading, { endWord, endOffset }: DatePattern): string | undefined {
  const word = reading.words[endWord] as Word
  const following = reading.words[endWord + 1]
  if (endOffset < word.text.length || following?.line !== word.line || !isRin(following.text)) return undefined
  if (isBeforeItsDate(reading.words, endWord + 1)) return undefined
  reading.at++
  return following.text
}

/** `C208 07/22`: the number before its date, with or without the letters RIN. */
function requalifierBefore({ words, at }: Reading): { readonly rin: string; readonly words: number } | undefined {
  const first = words[at] as Word
  const { length } = first.text
  if (length !== 3 && length !== 4) return undefined
  if (!isLetterCode(first.text.charCodeAt(0))) return undefined
  const isLabelled = first.text === 'RIN'
  const number = isLabelled ? words[at + 1] : first
  if (number?.line !== first.line || !isRin(number.text)) return undefined
  const count = isLabelled ? 2 : 1
  return isBeforeItsDate(words, at + count - 1) ? { rin: number.text, words: count } : undefined
}

/** Whether a bare date follows a number of a requalifier, and no other number behind that date. */
function isBeforeItsDate(words: readonly Word[], index: number): boolean {
  const number = words[index] as Word
  if (words[index + 1]?.line !== number.line) return false
  const date = patternAt(words, index + 1)
  if (date === undefined || date.middle !== undefined || !isSameLine(words, index, date.endWord)) return false
  const behind = words[date.endWord + 1]
  return behind?.line !== number.line || !isRin(behind.text)
}

/** Whether a text has the form of a requalifier's number: a letter and three figures. */
export function isRin(text: string | undefined): boolean {
  return (
    text !== undefined && text.length === 4 && isLetterCode(text.charCodeAt(0)) && wholeAt(text, 1, 3) !== undefined
  )
}

function patternAt(words: readonly Word[], index: number): DatePattern | undefined {
  const first = words[index] as Word
  const monthLength = lengthOfMonth(first.text)
  if (monthLength === 0) return undefined
  const month = wholeAt(first.text, 0, monthLength) as number
  const afterMonth = next(words, index, monthLength)
  if (afterMonth === undefined) return undefined
  const { text } = words[afterMonth.word] as Word

  const yearLength = lengthOfYear(text, afterMonth.offset)
  if (yearLength > 0) {
    if (!afterMonth.isSeparated || !isSameLine(words, index, afterMonth.word)) return undefined
    return finished(words, month, monthLength, undefined, afterMonth, yearLength)
  }
  if (!isLetterCode(text.charCodeAt(afterMonth.offset))) return undefined

  let end = afterMonth.offset
  while (end < text.length && (isLetterCode(text.charCodeAt(end)) || isDigitCode(text.charCodeAt(end)))) end++
  const run = text.slice(afterMonth.offset, end)
  const afterRun = next(words, afterMonth.word, end)
  const square = afterRun === undefined ? undefined : slashedSquare(words, index, run, afterRun, month, monthLength)
  if (square !== undefined) return square
  const isGlued = afterRun?.word !== afterMonth.word && afterMonth.word === index && afterRun?.offset === 0
  if (isGlued && endsInYear(run) && isSameLine(words, index, afterRun.word) && patternAt(words, afterRun.word)) {
    // 06A12 07 C208 22: what follows is a date of its own.
    const glued = gluedYear(words, index, month, monthLength, run, afterMonth)
    if (glued !== undefined) return glued
  }
  if (afterRun !== undefined && (isMarkOfTester(run) || isRin(run))) {
    const length = lengthOfYear((words[afterRun.word] as Word).text, afterRun.offset)
    const isNear = isSameLine(words, index, afterRun.word) || (run.length <= 2 && !endsInYear(run)) || isRin(run)
    if (length > 0 && isNear) return finished(words, month, monthLength, run, afterRun, length)
  }
  return gluedYear(words, index, month, monthLength, run, afterMonth)
}

/** 05A08 and 05A41702, 07C20822VE: the year is joined to the mark. */
function gluedYear(
  words: readonly Word[],
  index: number,
  month: number,
  monthLength: number,
  run: string,
  at: { readonly word: number; readonly offset: number },
): DatePattern | undefined {
  const signs = endsInYear(run) ? '' : (suffixesAtEnd.exec(run)?.[0] ?? '')
  const dated = run.slice(0, run.length - signs.length)
  if (!endsInYear(dated) || !isMarkOfTester(dated.slice(0, -2)) || !isSameLine(words, index, at.word)) return undefined
  const offset = at.offset + dated.length - 2
  return finished(words, month, monthLength, dated.slice(0, -2), { word: at.word, offset }, 2)
}

const suffixesAtEnd = /(?:[UA]E|FS|[ESRV])+$/u

/** `05 12`: month and year with nothing between them, alone on their line or behind the mark of an inspector. */
function spacedPattern(words: readonly Word[], index: number): DatePattern | undefined {
  const month = words[index] as Word
  if (month.text.length > 2 || !isDigitCode(month.text.charCodeAt(0))) return undefined
  const year = words[index + 1]
  if (year?.line !== month.line || words[index + 2]?.line === month.line) return undefined
  const before = words[index - 1]
  const isFirst = before?.line !== month.line || (words[index - 2]?.line !== month.line && isInspectorMark(before.text))
  const length = lengthOfYear(year.text, 0)
  if (!isFirst || length !== year.text.length) return undefined
  if (!isAllDigits(month.text) || !isAllDigits(year.text)) return undefined
  const value = Number(month.text)
  if (value < 1 || value > 12) return undefined
  return finished(words, value, month.text.length, undefined, { word: index + 1, offset: 0 }, length)
}

function isInspectorMark(text: string): boolean {
  return text.length <= 5 && isMarkOfTester(text)
}

/** `05 A4/71 22`: the square of a requalifier typed as a fraction. */
function slashedSquare(
  words: readonly Word[],
  index: number,
  run: string,
  below: { readonly word: number; readonly offset: number },
  month: number,
  monthLength: number,
): DatePattern | undefined {
  if (!isUpperRow(run)) return undefined
  const lower = words[below.word] as Word
  const year = words[below.word + 1]
  const isBelow = lower.isJoined && below.offset === 0 && lower.text.length === 2 && isAllDigits(lower.text)
  if (!isBelow || year === undefined || !isSameLine(words, index, below.word + 1)) return undefined
  const length = lengthOfYear(year.text, 0)
  if (length === 0) return undefined
  const rin = run + lower.text.charAt(1) + lower.text.charAt(0)
  return { ...finished(words, month, monthLength, run, { word: below.word + 1, offset: 0 }, length), rin }
}

/** A letter and a figure: the upper row of a requalifier's square. */
function isUpperRow(text: string): boolean {
  return text.length === 2 && isLetterCode(text.charCodeAt(0)) && isDigitCode(text.charCodeAt(1))
}

function isAllDigits(text: string): boolean {
  for (let at = 0; at < text.length; at++) if (!isDigitCode(text.charCodeAt(at))) return false
  return text.length > 0
}

/** A requalifier's square on three lines: its upper row, month and year, its lower row. */
export function readSquare(reading: Reading): boolean {
  const { words } = reading
  const upper = words[reading.at]
  if (upper === undefined || !isUpperRow(upper.text)) return false
  const month = words[reading.at + 1]
  const year = words[reading.at + 2]
  if (month === undefined || year === undefined) return false
  const behind = suffixesFrom(words, reading.at + 3, year.line)
  const lowerAt = reading.at + 3 + behind.length
  const lower = words[lowerAt]
  if (lower === undefined) return false
  const isLayout = month.line > upper.line && year.line === month.line && lower.line > year.line
  const endsLine = words[lowerAt + 1]?.line !== lower.line && words[reading.at - 1]?.line !== upper.line
  if (!isLayout || !endsLine || lower.text.length !== 2 || !isAllDigits(lower.text)) return false
  const length = lengthOfYear(year.text, 0)
  const value = month.text.length <= 2 && isAllDigits(month.text) ? Number(month.text) : 0
  if (length === 0 || value < 1 || value > 12) return false
  reading.at = lowerAt + 1
  found(reading, 'square-rin', within(upper, 0, 2))
  const place = spanning(month, year)
  const figures = wholeAt(year.text, 0, length) as number
  const glued = year.text.slice(length) === '+' ? (['+'] as const) : []
  const suffixes = [...glued, ...behind]
  for (const suffix of glued) reading.suffixPlaces.push({ suffix, place: within(year, length, length + 1) })
  for (const [index, suffix] of behind.entries()) {
    const sign = words[lowerAt - behind.length + index] as Word
    reading.suffixPlaces.push({ suffix, place: within(sign, 0, sign.text.length) })
  }
  reading.dates.push({
    number: monthsOf(length === 4 ? figures : fullYear(reading, figures, place), value),
    body: upper.text + lower.text.charAt(1) + lower.text.charAt(0),
    country: undefined,
    suffixes,
    place,
    hasShortYear: length === 2,
    kind: undefined,
    role: 'retest',
  })
  return true
}

function finished(
  words: readonly Word[],
  month: number,
  monthLength: number,
  middle: string | undefined,
  year: { readonly word: number; readonly offset: number },
  yearLength: number,
): DatePattern {
  const { text } = words[year.word] as Word
  return {
    month,
    monthLength,
    middle,
    year: wholeAt(text, year.offset, yearLength) as number,
    yearLength,
    endWord: year.word,
    endOffset: year.offset + yearLength,
  }
}

/** Figures of a month at the start of a word: none, one or two; an O or I counts where the other one is a figure. */
function lengthOfMonth(text: string): number {
  const a = text.charCodeAt(0)
  const b = text.charCodeAt(1)
  if (isDigitCode(a)) {
    if (isDigitCode(b)) return isDigitCode(text.charCodeAt(2)) ? 0 : 2
    if (isFigureLetter(b) && endsMonth(text, 2)) return 2
    return 1
  }
  return (a === 79 || a === 73) && isDigitCode(b) && endsMonth(text, 2) ? 2 : 0
}

function endsMonth(text: string, at: number): boolean {
  return at === text.length || isDateSeparator(text.charCodeAt(at))
}

/** Figures of a year at an offset: none, two or four, with nothing but a suffix behind them. */
function lengthOfYear(text: string, from: number): number {
  let end = from
  while (end < text.length && (isDigitCode(text.charCodeAt(end)) || isFigureLetter(text.charCodeAt(end)))) end++
  const length = end - from
  if (length !== 2 && length !== 4) return 0
  const value = wholeAt(text, from, length)
  if (value === undefined || (length === 4 && !isStampedYear(value))) return 0
  return end === text.length || isAllSuffixes(text, end) ? length : 0
}

function isFigureLetter(code: number): boolean {
  return code === 79 || code === 73
}

function endsInYear(run: string): boolean {
  return run.length > 2 && isDigitCode(run.charCodeAt(run.length - 1)) && isDigitCode(run.charCodeAt(run.length - 2))
}

/** Up to four letters; or one or two letters, up to four figures and up to two letters. */
function isMarkOfTester(run: string): boolean {
  let at = 0
  while (at < run.length && isLetterCode(run.charCodeAt(at))) at++
  const letters = at
  while (at < run.length && isDigitCode(run.charCodeAt(at))) at++
  const figures = at - letters
  while (at < run.length && isLetterCode(run.charCodeAt(at))) at++
  if (at !== run.length || letters === 0) return false
  return figures === 0 ? letters <= 4 : letters <= 2 && figures <= 4 && at - letters - figures <= 2
}

function next(
  words: readonly Word[],
  word: number,
  from: number,
): { readonly word: number; readonly offset: number; readonly isSeparated: boolean } | undefined {
  const { text } = words[word] as Word
  let offset = from
  while (offset < text.length && isDateSeparator(text.charCodeAt(offset))) offset++
  if (offset < text.length) return { word, offset, isSeparated: offset > from }
  const following = words[word + 1]
  if (following === undefined) return undefined
  // A sign before the next figures: 06 D114 .23
  let start = 0
  while (start < following.text.length - 1 && isDateSeparator(following.text.charCodeAt(start))) start++
  return { word: word + 1, offset: start, isSeparated: offset > from || following.isJoined || start > 0 }
}

function isDateSeparator(code: number): boolean {
  return code === 45 || code === 46 || code === 47
}

function isSameLine(words: readonly Word[], a: number, b: number): boolean {
  return (words[a] as Word).line === (words[b] as Word).line
}

/** A letter counts as a suffix only where a date stands before it. */
function suffixAt(text: string, from: number): RetestSuffix | undefined {
  switch (text.charCodeAt(from)) {
    case 43:
      return '+'
    case 0x2605:
      return '★'
    case 86: // V
      return text.charCodeAt(from + 1) === 69 ? 'VE' : 'V'
    case 65: // A
      return text.charCodeAt(from + 1) === 69 ? 'AE' : undefined
    case 70: // F
      return text.charCodeAt(from + 1) === 83 ? 'FS' : undefined
    case 85: // U
      return text.charCodeAt(from + 1) === 69 ? 'UE' : undefined
    case 69:
      return 'E'
    case 83:
      return 'S'
    case 82:
      return text.charCodeAt(from + 1) === 82 ? 'RR' : 'R'
    default:
      return undefined
  }
}

function readSuffixes(reading: Reading, pattern: DatePattern): RetestSuffix[] {
  const { words } = reading
  const suffixes: RetestSuffix[] = []
  const isBehindRequalifier = reading.at > pattern.endWord + 1
  let index = isBehindRequalifier ? reading.at : pattern.endWord
  let offset = isBehindRequalifier ? 0 : pattern.endOffset
  for (;;) {
    const word = words[index]
    if (word === undefined) break
    const suffix = suffixAt(word.text, offset)
    const isWhole = index === pattern.endWord || isAllSuffixes(word.text, 0)
    const isNear = word.line === (words[pattern.endWord] as Word).line || word.text === '+' || word.text === '★'
    if (suffix !== undefined && isWhole && isNear) {
      const place = within(word, offset, offset + suffix.length)
      if (word.line !== (words[pattern.endWord] as Word).line) found(reading, 'line-break', place)
      suffixes.push(suffix)
      reading.suffixPlaces.push({ suffix, place })
      offset += suffix.length
      reading.at = index + 1
    } else if (offset < word.text.length) {
      if (offset > 0) found(reading, 'unread-text', within(word, offset, word.text.length))
      break
    }
    if (offset >= word.text.length) {
      index++
      offset = 0
    }
  }
  return suffixes
}

function isAllSuffixes(text: string, from: number): boolean {
  let at = from
  while (at < text.length) {
    const suffix = suffixAt(text, at)
    if (suffix === undefined) return false
    at += suffix.length
  }
  return true
}

/** A RIN in a square has its last two characters on the row below, to be read clockwise: A4 over 71 is A417. */
function wholeRin(reading: Reading, middle: string | undefined, place: Place): string | undefined {
  if (middle !== undefined && isRin(middle)) return inFigures(reading, middle, place)
  if (middle?.length !== 2 || !isLetterCode(middle.charCodeAt(0)) || !isDigitCode(middle.charCodeAt(1))) return middle
  const below = reading.words[reading.at]
  if (below !== undefined && below.text.length === 2 && isDigitCode(below.text.charCodeAt(0))) {
    if (isDigitCode(below.text.charCodeAt(1)) && endsItsLine(reading, below)) {
      reading.at++
      found(reading, 'square-rin', within(below, 0, 2))
      return middle + below.text.charAt(1) + below.text.charAt(0)
    }
  }
  found(reading, 'incomplete-rin', place)
  return middle
}

/** A9O2 is A902: behind its letter a requalifier's number has only figures. */
function inFigures(reading: Reading, rin: string, place: Place): string {
  if (!hasLookAlike(rin, 1, rin.length)) return rin
  const readAs = rin.charAt(0) + rin.slice(1).replaceAll('O', '0').replaceAll('I', '1')
  found(reading, 'look-alike', place, { readAs })
  return readAs
}

/** Whether the row below a date belongs to it: nothing else stands on that line, or it is a text on one line. */
function endsItsLine(reading: Reading, word: Word): boolean {
  const after = reading.words[reading.at + 1]
  if (after === undefined || after.line !== word.line) return true
  return reading.lines.length === 1 && lengthOfYear(after.text, 0) === 0 && lengthOfMonth(after.text) > 0
}
