import {
  bar,
  gauge,
  internalVolumeOf,
  kilogram,
  kilogramForcePerSquareCentimetre,
  litre,
  measure,
  megapascal,
  millimetre,
  psi,
  type Unit,
} from '../../units/index.ts'
import { figuresAt, hasLookAlike, isStampedYear, wholeAt } from './figures.ts'
import { roleOf as dateRoleOf, withoutAccents } from './labelled-dates.ts'
import { readWaterCapacity } from './operational-group.ts'
import { plainWords } from './plain-word.table.ts'
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
import type { RetestSuffix } from './stamp.ts'
import { suffixBehind, suffixesFrom, suffixOf } from './suffix.ts'
import { threadAt } from './thread.ts'
import { hasFigure, hasLetter, isAllFigures } from './us-names.ts'
import { isDigitCode, type Word } from './words.ts'

// Older European shoulders: trade custom, differing by country, none of it from a document (source: memory).

/** Reads the marks of an older European cylinder. */
export function readMetricMarks(reading: Reading): void {
  const names: Word[] = []
  const dates: MetricDate[] = []
  let role: 'test' | 'working' | undefined
  const isJapanese = reading.words.some(({ text }, index) => isMegapascalMark(text, reading.words[index + 1]?.text))
  while (reading.at < reading.words.length) {
    const { words } = reading
    const word = words[reading.at] as Word
    const following = words[reading.at + 1]
    const label = roleOf(word.text)
    const temperature = referenceTemperature(words, reading.at)
    if (temperature > 0) {
      // C à 15 stands before the pressure of charge at 15 °C.
      if (word.text === 'C') role = 'working'
      reading.at += temperature
    } else if (readWaterCapacity(reading)) {
      role = undefined
    } else if (isJapanese && readJapaneseMark(reading)) {
      role = undefined
    } else if (label !== undefined) {
      role = label
      reading.at++
    } else if (gasAt(word.text)) {
      keepGas(reading, word)
    } else if (serialLabels.has(word.text) && following !== undefined && hasFigure(following.text)) {
      reading.marks.serial ??= following.text
      fieldAt(reading, 'serial', within(following, 0, following.text.length))
      reading.at += 2
    } else if (readQuantity(reading, role) || readUnitFirst(reading, role)) {
      role = undefined
    } else if (readDate(reading, dates)) {
      role = undefined
    } else {
      const thread = threadAt(word.text, following?.text)
      if (thread !== undefined && reading.marks.thread === undefined) {
        reading.marks.thread = thread.thread
        fieldAt(reading, 'thread', spanning(word, words[reading.at + thread.words - 1] as Word))
        reading.at += thread.words
        if (words[reading.at]?.text === 'ISO') reading.at++
      } else {
        names.push(word)
        reading.at++
      }
    }
  }
  sortAmbiguous(reading)
  readDates(reading, dates)
  assignDates(reading)
  assign(reading, names)
}

/** PE is the test pressure in French and the working pressure in Italian: the lower one is never the test pressure. */
function sortAmbiguous(reading: Reading): void {
  const { marks, words } = reading
  const { workingPressure, testPressure } = marks
  if (workingPressure === undefined || testPressure === undefined || workingPressure <= testPressure) return
  const label = words.find(({ text }) => text === 'P.E.' || text === 'PE' || /^PE\d/u.test(text))
  if (label !== undefined) sortUnlabelled(reading, within(label, 0, label.text.length))
}

/** `À 15°C`, `C à 15`: the temperature that the pressure before it holds at. Gives how many words say so. */
function referenceTemperature(words: readonly Word[], index: number): number {
  const first = (words[index] as Word).text
  if (first !== 'C' && first !== 'À' && first !== 'A' && first !== 'BEI') return 0
  const at = first === 'C' ? index + 1 : index
  const preposition = words[at]
  const degrees = words[at + 1]
  if (preposition?.text !== 'À' && preposition?.text !== 'A' && preposition?.text !== 'BEI') return 0
  return degrees?.line === preposition.line && /^15 ?(?:°C?|C)?$/u.test(degrees.text) ? at + 2 - index : 0
}

const testLabels = ['PRUEF', 'PRÜF', 'PRUF', 'PRUEFDRUCK', 'PRÜFDRUCK', 'PE', 'PH', 'PT', 'TP', 'T', 'EP', 'EPR']
const workingLabels = ['PS', 'PW', 'WP', 'FUELL', 'FÜLL', 'FUELLDRUCK', 'FÜLLDRUCK', 'BETRIEB', 'PN', 'FP']
const roles: ReadonlyMap<string, 'test' | 'working'> = new Map([
  ...testLabels.map((label): [string, 'test'] => [label, 'test']),
  ...workingLabels.map((label): [string, 'working'] => [label, 'working']),
])

function roleOf(text: string): 'test' | 'working' | undefined {
  if (isDigitCode(text.charCodeAt(0)) || isDigitCode(text.charCodeAt(text.length - 1))) return undefined
  return roles.get(text.includes('.') ? text.replaceAll('.', '') : text)
}

const gasWords: ReadonlySet<string> = new Set([
  'DRUCKLUFT',
  'DRUCKLUFT-TG',
  'PRESSLUFT',
  'ATEMLUFT',
  'LUFT',
  'AIR',
  'ARIA',
  'AIRE',
  'PERSLUCHT',
  'TRYKLUFT',
  'TRYKKLUFT',
  'SAUERSTOFF',
  'OXYGENE',
  'OXYGEN',
])

/** Whether a word is one of those for the gas that such shoulders carry. */
export function gasAt(text: string): boolean {
  // Only letters, and no word of fewer than three: nothing else is looked up.
  const last = text.charCodeAt(text.length - 1)
  return text.length > 2 && last >= 65 && last <= 90 && text.charCodeAt(0) >= 65 && gasWords.has(text)
}

function keepGas(reading: Reading, word: Word): void {
  reading.at++
  if (reading.marks.gas === undefined) {
    reading.marks.gas = word.text
    fieldAt(reading, 'gas', within(word, 0, word.text.length))
  } else {
    found(reading, 'unread-text', within(word, 0, word.text.length))
  }
}

const serialLabels: ReadonlySet<string> = /* @__PURE__ */ new Set(
  'NR NR. NO NO. N° Nº N.º S/N SN SN. FABR.NR. FABR.NR SERIENNUMMER SERIENNR SERIENNR. FABRIKNUMMER FABRIKNR FABRIKNR. SERIAL SERIE SÉRIE MATRICOLA MATRICULE MATRICULA NUMMER NUMERO NÚMERO NUMÉRO NUMBER'.split(
    ' ',
  ),
)

type UnitWord =
  | 'BAR'
  | 'BARS'
  | 'LITRES'
  | 'LITRE'
  | 'LITER'
  | 'LITERS'
  | 'LITRI'
  | 'LITRO'
  | 'LITROS'
  | 'KGS'
  | 'MPA'
  | 'PSIG'
  | 'PSI'
  | 'ATÜ'
  | 'ATU'
  | 'KP/CM2'
  | 'KG/CM2'
  | 'KGF/CM2'
  | 'KG'
  | 'L'
  | 'LTR'
  | 'LT'
  | 'MM'
const unitWords: readonly UnitWord[] = [
  'KP/CM2',
  'KG/CM2',
  'KGF/CM2',
  'BAR',
  'MPA',
  'PSIG',
  'PSI',
  'ATÜ',
  'ATU',
  'KG',
  'LITRES',
  'LITRE',
  'LITER',
  'LITERS',
  'LITRI',
  'LITRO',
  'LITROS',
  'BARS',
  'KGS',
  'LTR',
  'LT',
  'MM',
  'L',
]

/** Whether a word is, or from an offset on is, a unit that such a shoulder would carry behind a figure. */
export function isMetricUnit(text: string, from: number): boolean {
  return unitAt(text, from) !== undefined
}

function unitAt(text: string, from: number): UnitWord | undefined {
  const length = text.length - from - (text.endsWith('.') ? 1 : 0) // LTR. with the point of an abbreviation
  // No unit is longer than KGF/CM2, and each begins with a letter.
  if (length < 1 || length > 7 || text.charCodeAt(from) < 65) return undefined
  for (const unit of unitWords) if (unit.length === length && text.startsWith(unit, from)) return unit
  return undefined
}

/** A figure with its unit, in one word or two, with the label of a pressure before it. */
function readQuantity(reading: Reading, role: 'test' | 'working' | undefined): boolean {
  const { words } = reading
  const first = words[reading.at] as Word
  const label = labelBefore(first.text)
  const figures = figuresAt(first.text, label?.length ?? 0)
  if (figures === undefined) return false
  const following = words[reading.at + 1]
  let unit = unitAt(first.text, figures.end)
  let last = first
  if (unit === undefined) {
    if (figures.end !== first.text.length) return false
    if (following?.isJoined === false) unit = unitAt(following.text, 0)
    if (unit !== undefined && following !== undefined) last = following
  }
  const meaning = role ?? (label === undefined ? undefined : roleOf(label))
  if (unit === undefined && meaning === undefined) return false
  reading.at += last === first ? 1 : 2
  const place = spanning(first, last)
  if (figures.isRepaired) found(reading, 'look-alike', place, { readAs: String(figures.value) })
  const isPsi = unit === 'PSI' || unit === 'PSIG'
  const value = isPsi ? (figures.grouped ?? figures.value) : figures.value
  if (figures.points > 1 || !(figures.value > 0)) {
    found(reading, 'invalid-number', place)
    return true
  }
  if (unit === undefined) found(reading, 'missing-unit', within(first, figures.end, figures.end), { unit: 'BAR' })
  keep(reading, value, unit ?? 'BAR', meaning, place)
  return true
}

/** `LT 10`, `KG 12,4`: the unit before its figure, where none stands behind it. */
function readUnitFirst(reading: Reading, role: 'test' | 'working' | undefined): boolean {
  const { words } = reading
  const first = words[reading.at] as Word
  const word = words[reading.at + 1]
  const unit = unitAt(first.text, 0)
  if (unit === undefined || word?.line !== first.line || word.isJoined) return false
  const figures = figuresAt(word.text, 0)
  if (figures?.end !== word.text.length || figures.points > 1 || !(figures.value > 0)) return false
  if (isUnitOfFigure(words, reading.at + 2)) return false
  reading.at += 2
  keep(reading, figures.value, unit, role, spanning(first, word))
  return true
}

/** Whether a unit belongs to the figure before it, not to one behind it: BAR in `2X10 L 200 BAR PT 300 BAR`, but not L in `KG 12,4 L 10`. */
function isUnitOfFigure(words: readonly Word[], index: number): boolean {
  const word = words[index]
  if (word === undefined || word.line !== words[index - 1]?.line || unitAt(word.text, 0) === undefined) return false
  const following = words[index + 1]
  return following?.line !== word.line || !isDigitCode(following.text.charCodeAt(0))
}

/** `FP14.7M`, `TP24.5M`: filling and test pressure in megapascals, as Japanese shoulders have them (memory). */
export function isMegapascalMark(text: string, following: string | undefined): boolean {
  const first = text.charCodeAt(0)
  if (first !== 84 && first !== 70) return false
  if (text.endsWith('M')) return japaneseMark.test(text)
  return (text === 'TP' || text === 'FP') && following?.endsWith('M') === true && japaneseMark.test(text + following)
}

const japaneseMark = /^(V|W|TP|FP)(\d+(?:[.,]\d+)?)(M|L|KG)?$/u
const japaneseMeanings = {
  V: { unit: 'L', role: undefined },
  W: { unit: 'KG', role: undefined },
  TP: { unit: 'MPA', role: 'test' },
  FP: { unit: 'MPA', role: 'working' },
} as const

/** `V10.0 W12.4 TP24.5M FP14.7M`: the letter says what it is, and mostly in which unit. */
function readJapaneseMark(reading: Reading): boolean {
  const { words } = reading
  const word = words[reading.at] as Word
  const following = words[reading.at + 1]
  const isAlone = Object.hasOwn(japaneseMeanings, word.text) && following?.line === word.line
  const mark = japaneseMark.exec(isAlone ? word.text + following.text : word.text)
  if (mark === null) return false
  const [, letters = '', figures = '', unit] = mark
  const meaning = japaneseMeanings[letters as keyof typeof japaneseMeanings]
  if (unit !== undefined && unit !== meaning.unit && !(unit === 'M' && meaning.unit === 'MPA')) return false
  const value = Number(figures.replace(',', '.'))
  reading.at += isAlone ? 2 : 1
  const place = spanning(word, isAlone ? following : word)
  if (value > 0) keep(reading, value, meaning.unit, meaning.role, place)
  else found(reading, 'invalid-number', place)
  return true
}

function labelBefore(text: string): string | undefined {
  const first = text.charCodeAt(0)
  if (first !== 80 && first !== 84 && first !== 87 && first !== 70) return undefined // every label begins with P, T, W or F
  for (const label of ['PS', 'PE', 'PH', 'PW', 'PT', 'TP', 'T', 'PN', 'WP', 'FP']) {
    if (text.startsWith(label) && figuresAt(text, label.length) !== undefined) return label
  }
  return undefined
}

type Slot = 'emptyMass' | 'waterCapacity' | 'minimumWall' | 'workingPressure' | 'testPressure'
const slots: Readonly<Partial<Record<UnitWord, Slot>>> = {
  KG: 'emptyMass',
  KGS: 'emptyMass',
  LITRES: 'waterCapacity',
  LITRE: 'waterCapacity',
  LITER: 'waterCapacity',
  LITERS: 'waterCapacity',
  LITRI: 'waterCapacity',
  LITRO: 'waterCapacity',
  LITROS: 'waterCapacity',
  L: 'waterCapacity',
  LTR: 'waterCapacity',
  LT: 'waterCapacity',
  MM: 'minimumWall',
}

function keep(
  reading: Reading,
  value: number,
  unit: UnitWord,
  role: 'test' | 'working' | undefined,
  place: Place,
): void {
  const { marks } = reading
  const stated = slots[unit] ?? pressureSlot(reading, role)
  // PT and PP of one shoulder: the first is the working pressure in Spanish, and a test pressure elsewhere.
  const isSecondTest =
    stated === 'testPressure' && marks.testPressure !== undefined && marks.workingPressure === undefined
  const slot = isSecondTest ? 'workingPressure' : stated
  if (slot === undefined || marks[slot] !== undefined) {
    found(reading, slots[unit] === undefined ? 'unread-figure' : 'unread-text', place)
    return
  }
  const isPressure = slot === 'workingPressure' || slot === 'testPressure'
  const pressure = gauge(value, pressureUnits[unit] ?? kilogramForcePerSquareCentimetre)
  if (isPressure && (pressure < lowestPressure || pressure > highestPressure)) {
    found(reading, 'pressure-withheld', place, { field: slot, value, unit })
    return
  }
  fieldAt(reading, slot, place)
  if (slot === 'waterCapacity') marks.waterCapacity = internalVolumeOf(value, litre)
  else if (slot === 'emptyMass') marks.emptyMass = measure(value, kilogram)
  else if (slot === 'minimumWall') marks.minimumWall = measure(value, millimetre)
  else {
    marks[slot] = pressure
    if (isSecondTest || (role === undefined && slot === 'testPressure')) sortUnlabelled(reading, place)
  }
}

// Atmospheres above ambient and kilogram-force per square centimetre are one unit: what is not named here.
const pressureUnits: Readonly<Partial<Record<UnitWord, Unit<'pressure'>>>> = {
  BAR: bar,
  BARS: bar,
  MPA: megapascal,
  PSI: psi,
  PSIG: psi,
}

// 10 to 1650 bar: what such cylinders ever had, and were tested at.
const lowestPressure = 1e6
const highestPressure = 1.65e8

function pressureSlot({ marks }: Reading, role: 'test' | 'working' | undefined): Slot | undefined {
  if (role !== undefined) return role === 'test' ? 'testPressure' : 'workingPressure'
  if (marks.workingPressure === undefined) return 'workingPressure'
  return marks.testPressure === undefined ? 'testPressure' : undefined
}

/** Two pressures without a label: the higher one is the test pressure. */
function sortUnlabelled(reading: Reading, place: Place): void {
  const { marks } = reading
  const { workingPressure, testPressure } = marks
  found(reading, 'pressure-not-labelled', place)
  if (workingPressure === undefined || testPressure === undefined || workingPressure <= testPressure) return
  marks.workingPressure = testPressure
  marks.testPressure = workingPressure
}

interface TwoParts {
  readonly first: number
  readonly second: number
  readonly firstLength: number
  readonly secondLength: number
}

/** A date with what belongs to it, before the order of month and year is known. */
interface MetricDate {
  readonly parts: TwoParts
  readonly word: Word
  readonly last: Word
  readonly body: Word | undefined
  readonly suffixes: readonly RetestSuffix[]
}

/** A date, with the V of a visual inspection before it, the body and the signs behind it. */
function readDate(reading: Reading, dates: MetricDate[]): boolean {
  const { words } = reading
  const first = words[reading.at] as Word
  const isVisual = first.text.startsWith('V') && first.text.length <= 8
  const isAlone = isVisual && first.text.length === 1
  const at = isAlone ? reading.at + 1 : reading.at
  const word = words[at]
  if (word === undefined || word.line !== first.line) return false
  const glued = isVisual || isDigitCode(word.text.charCodeAt(0)) ? suffixBehind(word.text) : undefined
  const text = word.text.slice(isVisual && !isAlone ? 1 : 0, word.text.length - (glued?.length ?? 0))
  let parts = dateAt(text)
  let next = at + 1
  let body: Word | undefined
  if (parts === undefined) {
    const spaced = spacedDate(words, text, at, isVisual)
    if (spaced === undefined) return false
    ;({ parts, next, body } = spaced)
  }
  const following = words[next]
  if (body === undefined && following?.line === word.line && isBody(following.text)) {
    body = following
    next++
  }
  const signs = suffixesFrom(words, next, word.line)
  next += signs.length
  const behind = glued === undefined ? signs : [glued, ...signs]
  const suffixes: readonly RetestSuffix[] = isVisual ? ['V', ...behind] : behind
  dates.push({ parts, word, last: words[next - 1] as Word, body, suffixes })
  reading.at = next
  return true
}

/** `2004 02`, `V4 T7 02`, and two groups of two figures that have a line to themselves. */
function spacedDate(
  words: readonly Word[],
  text: string,
  at: number,
  isVisual: boolean,
): { readonly parts: TwoParts; readonly next: number; readonly body: Word | undefined } | undefined {
  const word = words[at] as Word
  const second = words[at + 1]
  const firstLength = text.length
  if (
    second?.line !== word.line ||
    firstLength === 0 ||
    firstLength === 3 ||
    firstLength > 4 ||
    !isAllFigures(text, 0)
  ) {
    return undefined
  }
  const first = wholeAt(text, 0, firstLength) as number
  const secondLength = second.text.length
  if (isAllFigures(second.text, 0) && (secondLength === 2 || secondLength === 4)) {
    const isYearFirst = firstLength === 4 && isStampedYear(first) && secondLength === 2
    const isOwnLine = words[at - 1]?.line !== word.line && words[at + 2]?.line !== word.line
    const isMonthFirst = firstLength <= 2 && first <= 12 && first > 0 && (isOwnLine || isVisual || secondLength === 4)
    const behind = wholeAt(second.text, 0, secondLength) as number
    if ((!isYearFirst && !isMonthFirst) || (secondLength === 4 && !isStampedYear(behind))) return undefined
    const parts = { first, second: behind, firstLength, secondLength }
    return { parts, next: at + 2, body: undefined }
  }
  const third = words[at + 2]
  if (!isVisual || firstLength > 2 || !isBody(second.text) || third?.line !== word.line) return undefined
  if (!isAllFigures(third.text, 0) || third.text.length !== 2) return undefined
  const parts = { first, second: wholeAt(third.text, 0, 2) as number, firstLength: 1, secondLength: 2 }
  return { parts, next: at + 3, body: second }
}

/** Whether a word is a date by itself. */
export function isMetricDate(text: string): boolean {
  return dateAt(text) !== undefined
}

/** `05.86`, `89-03`, `1986/05`, `07/5`, `12.05.1986`: two groups of figures with a sign between; a day is left out. */
function dateAt(text: string): TwoParts | undefined {
  if (text.length < 4 || text.length > 10 || !isDigitCode(text.charCodeAt(text.length - 1))) return undefined
  let from = 0
  let sign = -1
  for (let at = 0; at < text.length; at++) {
    const character = text.charAt(at)
    if (character !== '.' && character !== '-' && character !== '/') continue
    if (sign < 0) sign = at
    else if (from === 0 && sign <= 2) {
      from = sign + 1
      sign = at
    } else return undefined
  }
  const firstLength = sign - from
  const secondLength = text.length - sign - 1
  const isShort = firstLength === 1 || firstLength === 2
  // 07/5 is a date, 10.3 a figure with a decimal.
  const isYearFirst =
    (firstLength === 4 && secondLength >= 1 && secondLength <= 2) ||
    (firstLength === 2 && secondLength === 1 && text.charAt(sign) !== '.')
  const isMonthFirst = isShort && (secondLength === 2 || secondLength === 4)
  if (sign < 0 || (!isYearFirst && !isMonthFirst) || (from > 0 && !isMonthFirst)) return undefined
  const first = wholeAt(text, from, firstLength)
  const second = wholeAt(text, sign + 1, secondLength)
  if (first === undefined || second === undefined) return undefined
  const year = firstLength === 4 ? first : secondLength === 4 ? second : undefined
  return year === undefined || isStampedYear(year) ? { first, second, firstLength, secondLength } : undefined
}

function isBody(text: string): boolean {
  const isMark = text.length <= 5 && hasLetter(text) && suffixOf(text) === undefined
  return (
    isMark &&
    dateAt(text) === undefined &&
    roleOf(text) === undefined &&
    dateRoleOf(text) === undefined &&
    !gasAt(text) &&
    !isPlainWord(text)
  )
}

/** Month first or year first is decided by the dates that leave no choice; all dates of a shoulder follow one order. */
function readDates(reading: Reading, dates: readonly MetricDate[]): void {
  const orders = dates.map(({ parts }) => orderOf(parts))
  const isYearFirstSomewhere = orders.includes('year first')
  const isMonthFirstSomewhere = orders.includes('month first')
  for (const [index, { word, last, body, parts, suffixes }] of dates.entries()) {
    const whole = within(word, 0, word.text.length)
    let order = orders[index]
    if (order === 'either') {
      if (isYearFirstSomewhere !== isMonthFirstSomewhere) order = isYearFirstSomewhere ? 'year first' : 'month first'
      else {
        order = 'month first'
        found(reading, 'ambiguous-date', whole, { readAs: 'month first' })
      }
    }
    const month = order === 'year first' ? parts.second : parts.first
    const year = order === 'year first' ? parts.first : parts.second
    const yearLength = order === 'year first' ? parts.firstLength : parts.secondLength
    if (hasLookAlike(word.text, 0, word.text.length)) found(reading, 'look-alike', whole)
    if (month < 1 || month > 12) {
      found(reading, 'invalid-month', whole)
      continue
    }
    reading.dates.push({
      number: monthsOf(yearLength === 4 ? year : fullYear(reading, year, whole), month),
      body: body?.text,
      country: undefined,
      suffixes,
      place: spanning(word, last),
      hasShortYear: yearLength !== 4,
      kind: undefined,
      role: suffixes.includes('V') ? 'retest' : 'any',
    })
  }
}

/** AS 1777: a standard that no row is held of. */
function isForeignStandard(letters: string, number: string | undefined): boolean {
  return letters === 'AS' && number !== undefined && /^\d{4}$/u.test(number)
}

function orderOf({ first, second, firstLength, secondLength }: TwoParts): 'year first' | 'month first' | 'either' {
  if (firstLength === 4 || secondLength === 1) return 'year first'
  if (secondLength === 4 || firstLength === 1) return 'month first'
  if (first > 12 || first === 0) return 'year first'
  return second > 12 || second === 0 ? 'month first' : 'either'
}

function assign(reading: Reading, given: readonly Word[]): void {
  const { marks } = reading
  const names = given.filter((word, index) => {
    const isStandard =
      isForeignStandard(word.text, given[index + 1]?.text) || isForeignStandard(given[index - 1]?.text ?? '', word.text)
    if (isStandard) found(reading, 'unread-text', within(word, 0, word.text.length))
    return !isStandard
  })
  for (const word of names) {
    const place = within(word, 0, word.text.length)
    const isNumber = hasFigure(word.text)
    if (decimal.test(word.text)) {
      found(reading, 'unread-figure', place)
    } else if (isNumber && marks.serial === undefined) {
      marks.serial = word.text
      fieldAt(reading, 'serial', place)
    } else if (!isNumber && marks.maker === undefined && isName(word.text)) {
      marks.maker = word.text
      fieldAt(reading, 'maker', place)
    } else {
      found(reading, 'unread-text', place)
    }
  }
}

const decimal = /^\d+[.,]\d$/u

function isName(text: string): boolean {
  return text.length > 1 && hasLetter(text) && !isPlainWord(text)
}

const plain: ReadonlySet<string> = /* @__PURE__ */ new Set(plainWords.split(' '))

/** Whether a word names neither a maker nor who tested. */
function isPlainWord(text: string): boolean {
  return plain.has(text) || plain.has(withoutAccents(text))
}
