import { type DateRole, dateWords, outOfUsePhrases } from './date-label.table.ts'
import { hasLookAlike, isStampedYear, spells, wholeAt } from './figures.ts'
import { type DatedMark, found, fullYear, monthsOf, type Place, type Reading, spanning, within } from './reading.ts'
import type { RetestSuffix } from './stamp.ts'
import { suffixesFrom, suffixOf } from './suffix.ts'
import { isRin } from './us-date.ts'
import { isDigitCode, isLetterCode, type Word } from './words.ts'

// Dates that words name: what comes next, until when, the end, which kind of test. They are read and taken out before the family is
// read, since a date is a test only where nothing says otherwise.

/** Reads the dates that words stand beside, and the words of a condemned cylinder; gives the words that are left. */
export function readLabelledDates(reading: Reading): readonly Word[] {
  const { words } = reading
  let left: Word[] | undefined
  for (let index = 0; index < words.length; index++) {
    const word = words[index] as Word
    const role = roleOf(word.text)
    const taken = condemnedWords(reading, index, role) || (isDated(role) ? labelledDate(reading, index, role) : 0)
    if (taken > 0) {
      left ??= words.slice(0, index)
      index += taken - 1
    } else left?.push(word)
  }
  return left ?? words
}

/** Words that a phrase beside a date, or one that takes a cylinder out of use, begins with. */
export const wordsThatBegin: readonly string[] = /* @__PURE__ */ (Object.keys(dateWords) as DateRole[])
  .flatMap((role) => (role === 'filler' ? [] : dateWords[role].split(' ')))
  .concat(outOfUsePhrases.map((phrase) => phrase.split(' ')[0] as string))

/** What a word beside a date makes of it. */
export function roleOf(text: string): DateRole | undefined {
  // Most words of a shoulder begin or end in a figure; no such word has one anywhere.
  if (!isLetterCode(text.charCodeAt(0)) || isDigitCode(text.charCodeAt(text.length - 1))) return undefined
  let isPlain = true
  for (let at = 1; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (isDigitCode(code)) return undefined
    if (code < 65 || code > 90) isPlain = false
  }
  if (isPlain && text.charCodeAt(0) <= 90) return roles.get(text)
  return roles.get(text) ?? roles.get(withoutAccents(text))
}

function isDated(role: DateRole | undefined): role is Exclude<DateRole, 'filler' | 'condemned'> {
  return role !== undefined && role !== 'filler' && role !== 'condemned'
}

/** A word without accents, and without the point of an abbreviation. */
export function withoutAccents(text: string): string {
  // Most have none: looking costs less than replacing.
  const plain = beyondAscii.test(text)
    ? text.replaceAll('Ø', 'O').replaceAll('Æ', 'AE').replaceAll('Ł', 'L').normalize('NFD').replaceAll(/\p{M}/gu, '')
    : text
  return plain.endsWith('.') ? plain.slice(0, -1) : plain
}

const beyondAscii = /[^\0-\x7f]/u

const roles: ReadonlyMap<string, DateRole> = /* @__PURE__ */ new Map(
  (Object.keys(dateWords) as DateRole[]).flatMap((role) =>
    dateWords[role].split(' ').map((word): [string, DateRole] => [word, role]),
  ),
)

/** `CONDEMNED`, its like in other languages, a row of X over the marks, spaced or not. Gives how many words say so and nothing else. */
function condemnedWords(reading: Reading, index: number, role: DateRole | undefined): number {
  const word = reading.words[index] as Word
  const { text } = word
  let count = 0
  if (text === 'X') {
    while (reading.words[index + count]?.text === 'X') count++
    if (count < 3) return 0
  } else if (text.includes('XXX')) {
    count = isOnlyX(text) ? 1 : 0
  } else if (isLetterCode(text.charCodeAt(0)) && outOfUse.has(text)) {
    count = phraseLength(reading.words, index)
  } else if (role === 'condemned' || (text.length === 9 && spells(text, 0, 'CONDEMNED'))) {
    count = 1
  } else return 0
  if (count === 0) return text.includes('XXX') ? foundCondemned(reading, word, word, 0) : 0
  return foundCondemned(reading, word, reading.words[index + count - 1] as Word, count)
}

function foundCondemned(reading: Reading, first: Word, last: Word, count: number): number {
  found(reading, 'condemned', spanning(first, last))
  return count
}

/** How many words from one on say that a cylinder is out of use: `DO NOT FILL`, `HORS SERVICE`. */
function phraseLength(words: readonly Word[], index: number): number {
  for (const phrase of outOfUse.get((words[index] as Word).text) ?? []) {
    if (phrase.every((part, at) => words[index + at]?.text === part)) return phrase.length
  }
  return 0
}

const outOfUse: ReadonlyMap<string, readonly (readonly string[])[]> = /* @__PURE__ */ phrasesByFirst(outOfUsePhrases)

function phrasesByFirst(phrases: readonly string[]): ReadonlyMap<string, readonly (readonly string[])[]> {
  const byFirst = new Map<string, (readonly string[])[]>()
  for (const phrase of phrases) {
    const parts = phrase.split(' ')
    const first = parts[0] as string
    byFirst.set(first, [...(byFirst.get(first) ?? []), parts])
  }
  return byFirst
}

/** Whether a word alone says that the cylinder is condemned. */
export function isCondemnation(text: string): boolean {
  return roleOf(text) === 'condemned' || (text.length >= 3 && isOnlyX(text))
}

function isOnlyX(text: string): boolean {
  for (let at = 0; at < text.length; at++) if (text.charCodeAt(at) !== 88) return false
  return true
}

// The weightiest word of a phrase decides: NÄCHSTE PRÜFUNG is what comes next, FIN DE VIE the end.
const weights: readonly DateRole[] = [
  'end of life',
  'expiry',
  'next due',
  'manufacture',
  'first test',
  'visual',
  'ultrasonic',
  'acoustic emission',
  'eddy current',
  'hydraulic',
  'test',
]

/** A phrase of such words and the date behind it. Gives how many words they are. */
function labelledDate(reading: Reading, index: number, firstRole: Exclude<DateRole, 'filler' | 'condemned'>): number {
  const { words } = reading
  const first = words[index] as Word
  let role: DateRole = firstRole
  if (first.text === 'FIN' && isAfterStandard(words, index)) return 0
  let at = index + 1
  for (; at < words.length && at < index + 7; at++) {
    const word = words[at] as Word
    const next = roleOf(word.text)
    // A word of another language behind one that says what lies ahead: NÄSTA PROVNING. FIN may be the sign of a country.
    if (next === undefined && isAhead(role) && first.text !== 'FIN' && word.line === first.line && isLetters(word.text))
      continue
    if (next === undefined || next === 'condemned') break
    if (next !== 'filler' && weights.indexOf(next) < weights.indexOf(role)) role = next
  }
  const date = dateAt(reading, at)
  if (date === undefined) return 0
  const last = words[at + date.words - 1] as Word
  const isTest = weights.indexOf(role) >= weights.indexOf('first test')
  const body = isTest && date.body === undefined ? bodyBehind(reading, last, at + date.words) : undefined
  const end = at + date.words + (body === undefined ? 0 : 1)
  const suffixes = isTest ? suffixesFrom(reading.words, end, last.line) : []
  const lastWord = reading.words[end + suffixes.length - 1] as Word
  keep(reading, role, { ...date, body: date.body ?? body?.text, suffixes }, spanning(first, lastWord))
  return end + suffixes.length - index
}

/** Who tested: a short mark right behind the date, on the same line. US marks have theirs between month and year, or a number behind. */
function bodyBehind(reading: Reading, last: Word, index: number): Word | undefined {
  const word = reading.words[index]
  if (word === undefined || word.line !== last.line || word.text.length > 5) return undefined
  if (reading.marks.system === 'US') return isRin(word.text) ? word : undefined
  if (isNotifiedBody(word.text)) return reading.marks.system === 'METRIC-OLD' ? undefined : word
  return isLetterCode(word.text.charCodeAt(0)) && suffixOf(word.text) === undefined && roleOf(word.text) === undefined
    ? word
    : undefined
}

/** Four figures that are no year. */
function isNotifiedBody(text: string): boolean {
  return text.length === 4 && wholeAt(text, 0, 4) !== undefined && !text.startsWith('19') && !text.startsWith('20')
}

/** FIN is the sign of Finland where it stands right behind a design standard. */
function isAfterStandard(words: readonly Word[], index: number): boolean {
  const letters = words[index - 2]?.text
  const number = words[index - 1]?.text ?? ''
  return letters === 'ISO' || letters === 'EN' || number.startsWith('ISO') || number.startsWith('EN')
}

function isAhead(role: DateRole): role is 'end of life' | 'expiry' | 'next due' {
  return role === 'end of life' || role === 'expiry' || role === 'next due'
}

function isLetters(text: string): boolean {
  for (let at = 0; at < text.length; at++) if (isDigitCode(text.charCodeAt(at))) return false
  return isLetterCode(text.charCodeAt(0))
}

interface NamedDate {
  readonly year: number
  readonly yearLength: number
  readonly month: number
  readonly body: string | undefined
  readonly words: number
  readonly suffixes?: readonly RetestSuffix[]
}

/** A date in any of the forms that stand behind a word: `09.27`, `2027/09`, `09 2027`, `06 D114 13`, `30.09.2027`. */
function dateAt(reading: Reading, index: number): NamedDate | undefined {
  const { words } = reading
  const word = words[index]
  if (word === undefined || !isDigitCode(word.text.charCodeAt(0))) return undefined
  const parts = partsOf(word.text)
  const isUsOrder = reading.marks.system === 'US'
  if (parts !== undefined && parts.length > 1) return ordered(reading, parts, word, undefined, 1)
  if (parts === undefined) return undefined
  const second = words[index + 1]
  if (second === undefined || second.line !== word.line) return undefined
  const secondParts = partsOf(second.text)
  if (secondParts?.length === 1)
    return ordered(reading, [parts[0] as string, secondParts[0] as string], word, undefined, 2)
  const third = words[index + 2]
  if (
    !isUsOrder ||
    third === undefined ||
    third.line !== word.line ||
    (parts[0]?.length ?? 3) > 2 ||
    second.text.length > 5
  )
    return undefined
  const year = partsOf(third.text)
  if (year?.length !== 1 || secondParts !== undefined) return undefined
  return ordered(reading, [parts[0] as string, year[0] as string], word, second.text, 3)
}

/** Groups of one, two or four figures between signs; nothing where anything else stands. */
function partsOf(text: string): string[] | undefined {
  const parts = text.split(/[./-]/u)
  if (parts.length > 3) return undefined
  return parts.every(
    (part) => part.length > 0 && part.length !== 3 && part.length <= 4 && wholeAt(part, 0, part.length) !== undefined,
  )
    ? parts
    : undefined
}

function ordered(
  reading: Reading,
  parts: readonly string[],
  word: Word,
  body: string | undefined,
  words: number,
): NamedDate | undefined {
  // A day before the month is left out: 30.09.2027.
  const [a, b] = (
    parts.length === 3 ? ((parts[0]?.length ?? 0) === 4 ? parts.slice(0, 2) : parts.slice(1)) : parts
  ) as [string, string]
  const first = wholeAt(a, 0, a.length) as number
  const second = wholeAt(b, 0, b.length) as number
  const isYearFirst = a.length === 4 || (b.length !== 4 && (first > 12 || first === 0))
  const isEither = a.length <= 2 && b.length <= 2 && first >= 1 && first <= 12 && second >= 1 && second <= 12
  const isUn = reading.marks.system !== 'US' && reading.marks.system !== 'METRIC-OLD'
  const takesYearFirst = isYearFirst || (isEither && isUn)
  if (isEither && reading.marks.system === 'METRIC-OLD')
    found(reading, 'ambiguous-date', within(word, 0, word.text.length), { readAs: 'month first' })
  const month = takesYearFirst ? second : first
  const year = takesYearFirst ? first : second
  const yearLength = takesYearFirst ? a.length : b.length
  if (yearLength !== 2 && yearLength !== 4) return undefined
  if (yearLength === 4 && !isStampedYear(year)) return undefined
  if (month < 1 || month > 12) return undefined
  if (hasLookAlike(word.text, 0, word.text.length)) found(reading, 'look-alike', within(word, 0, word.text.length))
  return { year, yearLength, month, body, words }
}

// No cylinder is stamped with a date further ahead than this.
const longestAhead = 40

/** The full year of a date that may lie ahead. */
function yearAhead(reading: Reading, year: number): number {
  const today = reading.asOf === undefined ? 2049 - longestAhead : Math.floor(reading.asOf / 12)
  return 2000 + year <= today + longestAhead ? 2000 + year : 1900 + year
}

function keep(reading: Reading, role: DateRole, date: NamedDate, place: Place): void {
  const liesAhead = isAhead(role)
  const year =
    date.yearLength === 4 ? date.year : liesAhead ? yearAhead(reading, date.year) : fullYear(reading, date.year, place)
  if (liesAhead && date.yearLength === 2 && reading.asOf === undefined) reading.centuryPlace ??= place
  const isOwnRole = liesAhead || role === 'manufacture'
  reading.dates.push({
    number: monthsOf(year, date.month),
    body: date.body,
    country: undefined,
    suffixes: date.suffixes ?? [],
    place,
    hasShortYear: date.yearLength === 2 && !liesAhead,
    kind: isOwnRole || role === 'first test' || role === 'test' ? undefined : (role as DatedMark['kind']),
    role: isOwnRole ? role : role === 'first test' ? 'first' : 'retest',
  })
}
