import { hasLookAlike, isStampedYear, spells, wholeAt } from './figures.ts'
import { readOperationalMark, readWaterCapacity, splitOperational } from './operational-group.ts'
import {
  assignDates,
  fieldAt,
  found,
  fullYear,
  monthsOf,
  type Place,
  type Reading,
  spanning,
  within,
} from './reading.ts'
import { type DesignStandard, designStandards, specificationOf } from './specification.table.ts'
import type { MarkingFamily } from './stamp.ts'
import { suffixBehind, suffixesFrom, suffixOf } from './suffix.ts'
import { threadAt } from './thread.ts'
import { isRin, readUsDate } from './us-date.ts'
import { hasFigure, hasLetter, isAllFigures, isMakerNumber } from './us-names.ts'
import { isDigitCode, type Word } from './words.ts'

// Three groups: manufacturing (thread, country, maker, serial, H), operational (PW, PH, mass, capacity, wall),
// certification (UN, standard, country, body, YYYY/MM). Marks are told apart by their form, so that one line will do.

/** In which order the groups stand: where the first of each is, and which comes last. */
interface Order {
  last: 'manufacturing' | 'operational' | 'certification' | undefined
  certification: Place | undefined
  manufacturing: Place | undefined
  isOperationalFirst: boolean
}

/** Reads the marks of ISO, UN, EU and ADR receptacles. */
export function readUnMarks(reading: Reading): void {
  const order: Order = {
    last: undefined,
    certification: undefined,
    manufacturing: undefined,
    isOperationalFirst: false,
  }
  let hasOperational = false
  let pending: Word[] = []
  const closeManufacturing = (): void => {
    const first = pending[0]
    const last = pending.at(-1)
    if (first === undefined || last === undefined) return
    readManufacturing(reading, pending)
    if (order.manufacturing === undefined) {
      order.manufacturing = spanning(first, last)
      order.isOperationalFirst = hasOperational
    }
    order.last = 'manufacturing'
    pending = []
  }
  reading.words = splitOperational(reading.words)
  while (reading.at < reading.words.length) {
    const word = reading.words[reading.at] as Word
    if (readOperationalMark(reading) || readWaterCapacity(reading)) {
      closeManufacturing()
      order.last = 'operational'
      hasOperational = true
      continue
    }
    if (startsCertification(reading)) {
      closeManufacturing()
      const place = readCertification(reading)
      order.certification ??= place
      order.last = 'certification'
      continue
    }
    if (isDirective(word.text)) {
      found(reading, 'unread-text', within(word, 0, word.text.length))
      reading.at++
    } else if (word.text === 'UW') {
      reading.marks.underwater = true
      fieldAt(reading, 'underwater', within(word, 0, 2))
      reading.at++
    } else if (readNotifiedBody(reading)) {
      // kept
    } else if (readRetest(reading, pending)) {
      pending = []
    } else {
      if (threadAt(word.text, undefined) !== undefined && pending.length > 0) closeManufacturing()
      pending.push(word)
      reading.at++
    }
  }
  closeManufacturing()
  assignDates(reading)
  checkOrder(reading, order)
}

// 98/23/EC: a directive, neither a date nor a serial number.
function isDirective(text: string): boolean {
  return text.charCodeAt(text.length - 1) === 67 && isDigitCode(text.charCodeAt(0)) && directive.test(text)
}

const directive = /^\d{2,4}\/\d{1,3}\/[A-Z]{2,3}$/u

/** The family: by the UN symbol, else by the pi mark, else an ADR receptacle with neither. */
export function familyOfStandard(reading: Reading): MarkingFamily {
  if (reading.marks.fields.some(({ name }) => name === 'unSymbol')) return 'UN'
  return reading.marks.notifiedBody === undefined ? 'ADR' : 'EU-pi'
}

function checkOrder(reading: Reading, { last, certification, manufacturing, isOperationalFirst }: Order): void {
  if (certification !== undefined && last !== 'certification') {
    found(reading, 'group-order', certification, { field: 'certification' })
  } else if (manufacturing !== undefined && isOperationalFirst) {
    found(reading, 'group-order', manufacturing, { field: 'manufacturing' })
  }
}

/** Whether a word begins a design standard: `ISO`, `EN`, `BS`, alone or with its number. */
export function isStandardWord(text: string): boolean {
  return standardLetters(text) !== undefined
}

/** Whether a standard begins here: its letters with a number of four figures or more, or those of the body that adopted it. */
export function startsStandard(text: string, following: string | undefined): boolean {
  if (text.length < 2) return false
  const letters = standardLetters(text) ?? (text.length <= 3 && adopting.has(text) ? text : undefined)
  if (letters === undefined) return false
  if (text.length > letters.length) return hasFourFigures(text, letters.length)
  return following !== undefined && (hasFourFigures(following, 0) || isStandardWord(following))
}

// DIN EN ISO 9809-1: what adopted the standard stands before it.
const adopting: ReadonlySet<string> = /* @__PURE__ */ new Set(['DIN', 'BS', 'NF', 'UNE', 'UNI', 'SS', 'NEN', 'EN'])

function hasFourFigures(text: string, from: number): boolean {
  return text.length >= from + 4 && wholeAt(text, from, 4) !== undefined
}

function standardLetters(text: string): 'ISO' | 'EN' | 'BS' | undefined {
  const initial = text.charCodeAt(0)
  const letters = initial === 73 || initial === 49 ? 'ISO' : initial === 69 ? 'EN' : initial === 66 ? 'BS' : undefined // I or 1, E, B
  if (letters === undefined || !spells(text, 0, letters)) return undefined
  return text.length === letters.length || isDigitCode(text.charCodeAt(letters.length)) ? letters : undefined
}

/** The ways in which the packaging symbol is typed. */
export function isUnSymbol(text: string): boolean {
  return text === 'UN' || text === 'U/N'
}

function startsCertification(reading: Reading): boolean {
  if (reading.marks.specification !== undefined) return false
  const word = reading.words[reading.at] as Word
  const following = reading.words[reading.at + 1]
  if (startsStandard(word.text, following?.text)) return true
  if (isUnSymbol(word.text)) return following !== undefined && isStandardWord(following.text)
  const third = reading.words[reading.at + 2]
  return word.text === 'U' && following?.text === 'N' && third !== undefined && isStandardWord(third.text)
}

function readCertification(reading: Reading): Place {
  const { words } = reading
  const first = words[reading.at] as Word
  if (!startsStandard(first.text, words[reading.at + 1]?.text)) {
    const symbolWords = first.text === 'U' ? 2 : 1
    fieldAt(reading, 'unSymbol', spanning(first, words[reading.at + symbolWords - 1] as Word))
    reading.at += symbolWords
  }
  readStandard(reading)
  // Country, body and date; no more than a few words, and only up to the date.
  const between: Word[] = []
  let last = words[reading.at - 1] as Word
  const { line } = last
  for (let count = 0; count < 4; count++) {
    const word = words[reading.at]
    // Beyond the line of the standard only what leads to the date.
    if (word !== undefined && word.line !== line && !isDateNear(words, reading.at, 4 - count)) break
    if (word === undefined || threadAt(word.text, undefined) !== undefined || word.text.startsWith('PW')) break
    if (symbolic.has(word.text)) break
    const spaced = spacedDate(reading, word)
    if (spaced !== undefined) {
      last = words[reading.at + 1] as Word
      reading.at += 2
      addFirst(reading, spaced)
      break
    }
    const date = certificationDate(reading, word)
    if (date === undefined && (wordIsDated(word.text) || isDigitCode(word.text.charCodeAt(0)))) break
    last = word
    reading.at++
    if (date !== undefined) {
      addFirst(reading, date)
      break
    }
    between.push(word)
  }
  const hasFirst = reading.dates.some(({ role }) => role === 'first')
  reading.isCertificationOpen = !hasFirst && between.length === 0
  if (!hasFirst && !reading.isCertificationOpen) {
    const end = last.text.length
    found(reading, 'missing-field', within(last, end, end), { field: 'firstTest' })
  }
  const a = between[0]
  const b = between[1]
  if (a !== undefined && b === undefined && !isCountrySign(a.text)) keepName(reading, 'inspector', a)
  else {
    if (a !== undefined) keepName(reading, 'countryOfApproval', a)
    if (b !== undefined) keepName(reading, 'inspector', b)
  }
  for (const word of between.slice(2)) found(reading, 'unread-text', within(word, 0, word.text.length))
  return spanning(first, last)
}

function isDateNear(words: readonly Word[], from: number, count: number): boolean {
  for (let at = from; at < from + count && at < words.length; at++) {
    const { text } = words[at] as Word
    if (wordIsDated(text) || isYear(text)) return true
  }
  return false
}

function addFirst(reading: Reading, { year, month, place, hasShortYear }: FoundDate): void {
  reading.dates.push({
    number: monthsOf(year, month),
    body: undefined,
    country: undefined,
    suffixes: [],
    place,
    hasShortYear,
    kind: undefined,
    role: 'first',
  })
}

// What ends the group even where its date is missing.
const symbolic: ReadonlySet<string> = /* @__PURE__ */ new Set(['UW', 'H'])

/** `2004 02`: year and month as two words. */
function spacedDate(reading: Reading, word: Word): FoundDate | undefined {
  const following = reading.words[reading.at + 1]
  if (!isYear(word.text) || following?.line !== word.line || following.text.length !== 2) return undefined
  const month = wholeAt(following.text, 0, 2)
  if (month === undefined || month < 1 || month > 12) return undefined
  const place = spanning(word, following)
  found(reading, 'spacing', place)
  return { year: wholeAt(word.text, 0, 4) as number, month, place, hasShortYear: false }
}

function wordIsDated(text: string): boolean {
  return dateAt(text) !== undefined
}

function readStandard(reading: Reading): void {
  const { words } = reading
  const start = words[reading.at] as Word
  // EN ISO 9809-1 is ISO 9809-1, adopted.
  while (adopting.has((words[reading.at] as Word).text) && isStandardWord(words[reading.at + 1]?.text ?? ''))
    reading.at++
  const word = words[reading.at] as Word
  const letters = standardLetters(word.text)
  if (letters === undefined) {
    found(reading, 'unknown-specification', within(word, 0, word.text.length))
    reading.at++
    return
  }
  if (!word.text.startsWith(letters)) found(reading, 'look-alike', within(word, 0, letters.length), { readAs: letters })
  const isJoined = word.text.length > letters.length
  const numberWord = isJoined ? word : words[reading.at + 1]
  reading.at += 1
  if (numberWord === undefined || (!isJoined && !hasFigure(numberWord.text))) {
    const end = word.text.length
    found(reading, 'unknown-specification', within(word, end, end))
    return
  }
  if (!isJoined) reading.at += 1
  else found(reading, 'spacing', within(word, 0, word.text.length))
  const from = isJoined ? letters.length : 0
  const written = numberWord.text.slice(from)
  const number = written.includes('/') ? written.replace(slashedPart, '$1-$2') : written
  const cleaned = hasLookAlike(number, 0, number.length) ? number.replaceAll('O', '0').replaceAll('I', '1') : number
  const name = `${letters} ${withoutEdition(cleaned)}`
  // The edition behind a colon: ISO 7866:2012.
  const edition = words[reading.at]
  if (edition?.isJoined === true && edition.line === numberWord.line && isYear(edition.text)) reading.at++
  const last = words[reading.at - 1] as Word
  if (!isDesignStandard(name)) {
    found(reading, 'unknown-specification', within(numberWord, from, numberWord.text.length))
    return
  }
  if (cleaned !== number)
    found(reading, 'look-alike', within(numberWord, from, numberWord.text.length), { readAs: cleaned })
  reading.marks.specification = name
  fieldAt(
    reading,
    'specification',
    last === numberWord && isJoined && start === word ? within(word, 0, word.text.length) : spanning(start, last),
  )
}

// BS 5045/1/CM/S: the part behind a slash, then the kind of steel.
const slashedPart = /^(\d{4})\/(\d)(?:\/.*)?$/u

function withoutEdition(number: string): string {
  const dash = number.lastIndexOf('-')
  return dash > 0 && isYear(number.slice(dash + 1)) ? number.slice(0, dash) : number
}

function isYear(text: string): boolean {
  const year = text.length === 4 ? wholeAt(text, 0, 4) : undefined
  return year !== undefined && year >= 1950 && year <= 2099
}

function isDesignStandard(name: string): name is DesignStandard {
  return Object.hasOwn(designStandards, name)
}

interface FoundDate {
  readonly year: number
  readonly hasShortYear: boolean
  readonly month: number
  readonly place: Place
}

/** YYYY/MM; also YYYY where the month may be left out, and MM/YYYY, which is an error of order. */
function certificationDate(reading: Reading, word: Word): FoundDate | undefined {
  const date = dateAt(word.text)
  const whole = within(word, 0, word.text.length)
  if (date === undefined) {
    const year = word.text.length === 4 ? wholeAt(word.text, 0, 4) : undefined
    if (year === undefined || !isStampedYear(year) || !isAllFigures(word.text, 0)) return undefined
    found(reading, 'month-left-out', whole)
    return undefined
  }
  if (date.order === 'MM/YYYY' || date.order === 'MM/YY') found(reading, 'invalid-date-order', whole)
  return complete(reading, word, date)
}

function complete(reading: Reading, word: Word, date: StampedDate): FoundDate | undefined {
  const whole = within(word, 0, word.text.length)
  if (hasLookAlike(word.text, 0, word.text.length)) found(reading, 'look-alike', whole)
  if (date.separator !== '/') found(reading, 'separator', within(word, date.separatorAt, date.separatorAt + 1))
  if (date.month < 1 || date.month > 12) {
    found(
      reading,
      'invalid-month',
      within(word, date.monthAt, date.monthAt < date.separatorAt ? date.separatorAt : word.text.length),
    )
    return undefined
  }
  const year = date.isFourFigures ? date.year : fullYear(reading, date.year, whole)
  return { year, month: date.month, place: whole, hasShortYear: !date.isFourFigures }
}

interface StampedDate {
  readonly order: 'YYYY/MM' | 'YY/MM' | 'MM/YY' | 'MM/YYYY'
  readonly year: number
  readonly isFourFigures: boolean
  readonly month: number
  readonly monthAt: number
  readonly separator: string
  readonly separatorAt: number
}

/** `2016/03`, `21/04`, `07/5`, `3/01`, `03/2016`. */
function dateAt(text: string): StampedDate | undefined {
  if (text.length < 4 || text.length > 7) return undefined
  let separatorAt = 1
  while (separatorAt < 5 && !isDateSign(text.charAt(separatorAt))) separatorAt++
  const tailLength = text.length - separatorAt - 1
  const form = separatorAt * 10 + tailLength
  const order = dateForms[form]
  const isDecimal = form === 21 && text.charAt(separatorAt) === '.' // 11.0 is a figure, 07/5 a date
  if (order === undefined || isDecimal) return undefined
  const head = wholeAt(text, 0, separatorAt)
  const tail = wholeAt(text, separatorAt + 1, tailLength)
  if (head === undefined || tail === undefined) return undefined
  const shape = { separator: text.charAt(separatorAt), separatorAt }
  const isMonthFirst = order === 'MM/YYYY' || form === 12 || (form === 22 && tail > 12 && head <= 12)
  const isFourFigures = order !== 'YY/MM'
  const year = isMonthFirst ? tail : head
  if (isFourFigures && !isStampedYear(year)) return undefined
  if (isMonthFirst) {
    return { order: isFourFigures ? 'MM/YYYY' : 'MM/YY', year, isFourFigures, month: head, monthAt: 0, ...shape }
  }
  return { order, year, isFourFigures, month: tail, monthAt: separatorAt + 1, ...shape }
}

// By the lengths of the two groups of figures.
const dateForms: Readonly<Record<number, 'YYYY/MM' | 'YY/MM' | 'MM/YYYY'>> = {
  42: 'YYYY/MM',
  41: 'YYYY/MM',
  22: 'YY/MM',
  21: 'YY/MM',
  12: 'YY/MM',
  24: 'MM/YYYY',
  14: 'MM/YYYY',
}

function isDateSign(character: string): boolean {
  return character === '/' || character === '-' || character === '.'
}

/** A periodic inspection: country sign if another state's, body, YY/MM; or the US form, which some retesters stamp. */
function readRetest(reading: Reading, pending: readonly Word[]): boolean {
  const { words } = reading
  const word = words[reading.at] as Word
  if (!mayBeginDate(word.text.charCodeAt(0))) return false
  if (isUsRetest(reading) && readUsDate(reading, true)) {
    found(reading, 'us-retest-on-un', within(word, 0, word.text.length))
    returnUnread(reading, pending)
    return true
  }
  if (readSpacedVisual(reading)) {
    returnUnread(reading, pending)
    return true
  }
  const spaced = spacedDate(reading, word)
  // V4/02: the V of a visual inspection before the month.
  const isVisual = word.text.startsWith('V') && word.text.length > 1
  const glued = suffixBehind(word.text)
  const plain = stripped(word, isVisual ? 1 : 0, glued?.length ?? 0)
  const date = spaced === undefined ? dateAt(plain.text) : undefined
  if (spaced === undefined && date === undefined) return false
  reading.at += spaced === undefined ? 1 : 2
  const tested = spaced ?? (date && complete(reading, plain, date))
  const isPlain = !isVisual && glued === undefined && pending.at(-1)?.text !== 'V'
  if (reading.isCertificationOpen && tested !== undefined && isPlain && mayCertify(reading, tested)) {
    closeCertification(reading, tested, pending)
    return true
  }
  if (date?.order === 'MM/YYYY' || date?.order === 'MM/YY')
    found(reading, 'month-first', within(word, 0, word.text.length))
  const before = pending.at(-1)
  const hasVisualBefore = before?.text === 'V'
  const names = hasVisualBefore ? pending.slice(0, -1) : pending
  let bodyWord = names.at(-1)
  const countryWord = names.at(-2)
  const hasCountry = countryWord !== undefined && isCountrySign(countryWord.text)
  const startWord = hasCountry ? countryWord : (bodyWord ?? before ?? word)
  if (bodyWord === undefined) {
    bodyWord = bodyBehind(reading, word)
    if (bodyWord !== undefined) reading.at++
  }
  const following = suffixesFrom(words, reading.at, word.line)
  reading.at += following.length
  const behind = glued === undefined ? following : [glued, ...following]
  const suffixes = hasVisualBefore || isVisual ? (['V', ...behind] as const) : behind
  if (tested !== undefined) {
    reading.dates.push({
      number: monthsOf(tested.year, tested.month),
      body: bodyWord && withoutPi(bodyWord.text),
      country: hasCountry ? countryWord.text : undefined,
      suffixes,
      place: spanning(startWord, words[reading.at - 1] as Word),
      hasShortYear: tested.hasShortYear,
      kind: undefined,
      role: 'retest',
    })
  }
  returnUnread(reading, names.slice(0, hasCountry ? -2 : -1))
  return true
}

/** A figure, what looks like one, and the V of a visual inspection. */
function mayBeginDate(code: number): boolean {
  return isDigitCode(code) || code === 86 || code === 79 || code === 73
}

/**
 * Whether a date away from its standard is that of the certification: four figures are. Two are on a metal cylinder; the life of
 * a composite counts from there, so that on one a later inspection must never be taken for it.
 */
function mayCertify({ marks }: Reading, { hasShortYear }: FoundDate): boolean {
  if (!hasShortYear) return true
  return marks.specification !== undefined && specificationOf(marks.specification)?.material !== 'composite'
}

function stripped(word: Word, before: number, behind: number): Word {
  if (before === 0 && behind === 0) return word
  const text = word.text.slice(before, word.text.length - behind)
  return { ...word, text, start: word.start + before, end: word.end - behind }
}

/** Country, body and date that follow somewhere behind the standard. */
function closeCertification(reading: Reading, date: FoundDate, pending: readonly Word[]): void {
  reading.isCertificationOpen = false
  addFirst(reading, date)
  const before = pending.slice(-2)
  const isOwnGroup =
    before.length === 2 &&
    before.every(({ line }) => line === date.place.line) &&
    isCountrySign((before[0] as Word).text)
  const names = isOwnGroup ? pending.slice(-2) : []
  const others = isOwnGroup ? pending.slice(0, -2) : pending
  if (others.length > 0) readManufacturing(reading, others)
  const [country, body] = names
  if (country !== undefined) keepName(reading, 'countryOfApproval', country)
  if (body !== undefined) keepName(reading, 'inspector', body)
}

/** `V4 K11 23`: a visual inspection, its body between month and year. */
function readSpacedVisual(reading: Reading): boolean {
  const { words, at } = reading
  const month = words[at] as Word
  if (month.text.charCodeAt(0) !== 86) return false // V
  const body = words[at + 1]
  const year = words[at + 2]
  if (body === undefined || year?.line !== month.line) return false
  const value = month.text.startsWith('V') && month.text.length <= 3 ? wholeAt(month.text, 1, month.text.length - 1) : 0
  const isYearShort = year.text.length === 2 && isAllFigures(year.text, 0)
  if (value === undefined || value < 1 || value > 12 || !isYearShort || !hasLetter(body.text) || body.text.length > 5)
    return false
  const place = spanning(month, year)
  reading.at += 3
  reading.dates.push({
    number: monthsOf(fullYear(reading, Number(year.text), place), value),
    body: body.text,
    country: undefined,
    suffixes: ['V'],
    place,
    hasShortYear: true,
    kind: undefined,
    role: 'retest',
  })
  return true
}

/** The body behind its date, where none stands before it: a short mark, at the end of the line or before a sign. */
function bodyBehind(reading: Reading, date: Word): Word | undefined {
  const word = reading.words[reading.at]
  if (word === undefined || word.line !== date.line || word.text.length > 6 || suffixOf(word.text) !== undefined)
    return undefined
  const following = reading.words[reading.at + 1]
  const isLast = following === undefined || following.line !== word.line || suffixOf(following.text) !== undefined
  const isMark = !wordIsDated(word.text) && threadAt(word.text, undefined) === undefined && readsAsMark(word.text)
  return isLast && isMark ? word : undefined
}

function readsAsMark(text: string): boolean {
  const plain = withoutPi(text)
  return hasLetter(plain) || (plain.length === 4 && isAllFigures(plain, 0))
}

function isUsRetest(reading: Reading): boolean {
  const following = reading.words[reading.at + 1]
  const word = reading.words[reading.at] as Word
  return word.text.length <= 2 && isAllFigures(word.text, 0) && following !== undefined && isRin(following.text)
}

function returnUnread(reading: Reading, words: readonly Word[]): void {
  for (const word of words) found(reading, 'unread-text', within(word, 0, word.text.length))
}

function withoutPi(text: string): string {
  return text.startsWith('π') ? text.slice(1) : text
}

/** The pi mark with its four figures, where no date follows it: the body of the first inspection. */
function readNotifiedBody(reading: Reading): boolean {
  const { words, marks } = reading
  const word = words[reading.at] as Word
  if (!word.text.startsWith('π') || marks.notifiedBody !== undefined) return false
  const isSpaced = word.text.length === 1
  const numberWord = isSpaced ? words[reading.at + 1] : word
  const from = isSpaced ? 0 : 1
  if (numberWord?.text.length !== from + 4 || !isAllFigures(numberWord.text, from)) return false
  const after = words[reading.at + (isSpaced ? 2 : 1)]
  if (after !== undefined && wordIsDated(after.text)) return false
  marks.notifiedBody = numberWord.text.slice(from)
  fieldAt(reading, 'notifiedBody', spanning(word, numberWord))
  reading.at += isSpaced ? 2 : 1
  return true
}

/** Thread, country, maker, serial, H: from the words before the operational group, or those that begin with a thread. */
function readManufacturing(reading: Reading, words: readonly Word[]): void {
  const { marks } = reading
  if (marks.maker !== undefined || marks.serial !== undefined) {
    returnUnread(reading, words)
    return
  }
  let at = 0
  const first = words[0] as Word
  const thread = threadAt(first.text, words[1]?.text)
  if (thread !== undefined) {
    marks.thread = thread.thread
    fieldAt(reading, 'thread', spanning(first, words[thread.words - 1] as Word))
    at = thread.words
    if (words[at]?.text === 'ISO') at++
  }
  const names: Word[] = []
  const numbers: Word[] = []
  for (const word of words.slice(at)) {
    const slash = word.text.indexOf('/')
    if (slash > 0 && marks.countryOfManufacture === undefined) {
      // USA/M9903: country and registered number of the maker.
      marks.countryOfManufacture = word.text.slice(0, slash)
      fieldAt(reading, 'countryOfManufacture', within(word, 0, slash))
      if (slash + 1 < word.text.length) {
        marks.makerNumber = word.text.slice(slash + 1)
        fieldAt(reading, 'makerNumber', within(word, slash + 1, word.text.length))
      }
    } else if (word.text === 'H' && (numbers.length > 0 || names.length > 1)) {
      marks.hydrogenCompatible = true
      fieldAt(reading, 'hydrogenCompatible', within(word, 0, 1))
    } else if (hasFigure(word.text)) numbers.push(word)
    else if (hasLetter(word.text)) names.push(word)
    else found(reading, 'unread-text', within(word, 0, word.text.length))
  }
  const country = names[0]
  if (
    country !== undefined &&
    names.length > 1 &&
    isCountrySign(country.text) &&
    marks.countryOfManufacture === undefined
  ) {
    keepName(reading, 'countryOfManufacture', country)
    names.shift()
  }
  const maker = names[0]
  if (maker !== undefined) {
    const lastName = names.at(-1) as Word
    marks.maker = names.map(({ text }) => text).join(' ')
    fieldAt(reading, 'maker', spanning(maker, lastName))
  }
  const serial = numbers.find(({ text }) => !isMakerNumber(text)) ?? numbers[0]
  for (const word of numbers) {
    if (word === serial) keepName(reading, 'serial', word)
    else if (isMakerNumber(word.text) && marks.makerNumber === undefined) keepName(reading, 'makerNumber', word)
    else found(reading, 'unread-text', within(word, 0, word.text.length))
  }
}

/** One to three letters, the distinguishing sign of a state in road traffic. */
function isCountrySign(text: string): boolean {
  return text.length <= 3 && hasLetter(text) && !hasFigure(text)
}

function keepName(
  reading: Reading,
  name: 'serial' | 'maker' | 'makerNumber' | 'inspector' | 'countryOfApproval' | 'countryOfManufacture',
  word: Word,
): void {
  reading.marks[name] = word.text
  fieldAt(reading, name, within(word, 0, word.text.length))
}
