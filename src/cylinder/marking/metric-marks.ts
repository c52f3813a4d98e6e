import {
  bar,
  gauge,
  internalVolumeOf,
  kilogram,
  kilogramForcePerSquareCentimetre,
  litre,
  measure,
  millimetre,
} from '../../units/index.ts'
import { figuresAt, hasLookAlike, wholeAt } from './figures.ts'
import { addDate, fieldAt, found, fullYear, type Place, type Reading, spanning, within } from './reading.ts'
import { threadAt } from './thread.ts'
import { isCondemned } from './us-marks.ts'
import { hasFigure, hasLetter } from './us-names.ts'
import type { Word } from './words.ts'

// Older European shoulders: trade custom, differing by country, none of it from a document (source: memory).

/** Reads the marks of an older European cylinder. */
export function readMetricMarks(reading: Reading): void {
  const names: Word[] = []
  const dates: { readonly word: Word; readonly body: Word | undefined }[] = []
  let role: 'test' | 'working' | undefined
  while (reading.at < reading.words.length) {
    const { words } = reading
    const word = words[reading.at] as Word
    const following = words[reading.at + 1]
    const label = roleOf(word.text)
    if (label !== undefined) {
      role = label
      reading.at++
    } else if (gasAt(word.text)) {
      keepGas(reading, word)
    } else if (serialLabels.has(word.text) && following !== undefined && hasFigure(following.text)) {
      reading.marks.serial ??= following.text
      fieldAt(reading, 'serial', within(following, 0, following.text.length))
      reading.at += 2
    } else if (readQuantity(reading, role)) {
      role = undefined
    } else if (dateAt(word.text) !== undefined) {
      const hasBody = following?.line === word.line && isBody(following.text)
      dates.push({ word, body: hasBody ? following : undefined })
      reading.at += hasBody ? 2 : 1
    } else if (isCondemned(word.text)) {
      found(reading, 'condemned', within(word, 0, word.text.length))
      reading.at++
    } else {
      const thread = threadAt(word.text, following?.text)
      if (thread !== undefined && reading.marks.thread === undefined) {
        reading.marks.thread = thread.thread
        fieldAt(reading, 'thread', spanning(word, words[reading.at + thread.words - 1] as Word))
        reading.at += thread.words
      } else {
        names.push(word)
        reading.at++
      }
    }
  }
  readDates(reading, dates)
  assign(reading, names)
}

const testLabels = ['PRUEF', 'PRÜF', 'PRUF', 'PRUEFDRUCK', 'PRÜFDRUCK', 'PE', 'PH', 'PT', 'TP', 'T', 'EP', 'EPR']
const workingLabels = ['PS', 'PW', 'WP', 'FUELL', 'FÜLL', 'FUELLDRUCK', 'FÜLLDRUCK', 'BETRIEB', 'PN']
const roles: ReadonlyMap<string, 'test' | 'working'> = new Map([
  ...testLabels.map((label): [string, 'test'] => [label, 'test']),
  ...workingLabels.map((label): [string, 'working'] => [label, 'working']),
])

function roleOf(text: string): 'test' | 'working' | undefined {
  return roles.get(text.endsWith('.') ? text.slice(0, -1) : text)
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

const gasInitials = 'DPALTSO'

/** Whether a word is one of those for the gas that such shoulders carry. */
export function gasAt(text: string): boolean {
  return gasInitials.includes(text.charAt(0)) && gasWords.has(text)
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

const serialLabels: ReadonlySet<string> = new Set(['NR', 'NR.', 'NO', 'NO.', 'N°', 'Nº', 'FABR.NR.', 'FABR.NR'])

type UnitWord = 'BAR' | 'ATÜ' | 'ATU' | 'KP/CM2' | 'KG/CM2' | 'KG' | 'L' | 'LTR' | 'LT' | 'MM'
const unitWords: readonly UnitWord[] = ['KP/CM2', 'KG/CM2', 'BAR', 'ATÜ', 'ATU', 'KG', 'LTR', 'LT', 'MM', 'L']

/** Whether a word is, or from an offset on is, a unit that such a shoulder would carry behind a figure. */
export function isMetricUnit(text: string, from: number): boolean {
  return unitAt(text, from) !== undefined
}

function unitAt(text: string, from: number): UnitWord | undefined {
  if (!unitInitials.includes(text.charAt(from))) return undefined
  return unitWords.find((unit) => text.length === from + unit.length && text.startsWith(unit, from))
}

const unitInitials = 'BAKLM'

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
    if (following !== undefined) unit = unitAt(following.text, 0)
    if (unit !== undefined && following !== undefined) last = following
  }
  const meaning = role ?? (label === undefined ? undefined : roleOf(label))
  if (unit === undefined && meaning === undefined) return false
  reading.at += last === first ? 1 : 2
  const place = spanning(first, last)
  if (figures.isRepaired) found(reading, 'look-alike', place, { readAs: String(figures.value) })
  if (figures.points > 1 || !(figures.value > 0)) {
    found(reading, 'invalid-number', place)
    return true
  }
  if (unit === undefined) found(reading, 'missing-unit', within(first, figures.end, figures.end), { unit: 'BAR' })
  keep(reading, figures.value, unit ?? 'BAR', meaning, place)
  return true
}

function labelBefore(text: string): string | undefined {
  const first = text.charCodeAt(0)
  if (first !== 80 && first !== 84) return undefined // every label begins with P or T
  for (const label of ['PS', 'PE', 'PH', 'PW', 'PT', 'TP', 'T', 'PN']) {
    if (text.startsWith(label) && figuresAt(text, label.length) !== undefined) return label
  }
  return undefined
}

type Slot = 'emptyMass' | 'waterCapacity' | 'minimumWall' | 'workingPressure' | 'testPressure'
const slots: Readonly<Partial<Record<UnitWord, Slot>>> = {
  KG: 'emptyMass',
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
  const slot = slots[unit] ?? pressureSlot(reading, role)
  if (slot === undefined || marks[slot] !== undefined) {
    found(reading, 'unread-text', place)
    return
  }
  fieldAt(reading, slot, place)
  if (slot === 'waterCapacity') marks.waterCapacity = internalVolumeOf(value, litre)
  else if (slot === 'emptyMass') marks.emptyMass = measure(value, kilogram)
  else if (slot === 'minimumWall') marks.minimumWall = measure(value, millimetre)
  else {
    // Atmospheres above ambient and kilogram-force per square centimetre are one unit.
    marks[slot] = gauge(value, unit === 'BAR' ? bar : kilogramForcePerSquareCentimetre)
    if (role === undefined && slot === 'testPressure') sortUnlabelled(reading, place)
  }
}

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

/** `05.86`, `89-03`, `1986/05`: two groups of figures with a sign between. */
function dateAt(text: string): TwoParts | undefined {
  if (text.length < 4 || text.length > 7) return undefined
  let sign = -1
  for (let at = 0; at < text.length; at++) {
    const character = text.charAt(at)
    if (character !== '.' && character !== '-' && character !== '/') continue
    if (sign >= 0) return undefined
    sign = at
  }
  const firstLength = sign
  const secondLength = text.length - sign - 1
  const isYearFirst = firstLength === 4 && secondLength === 2
  const isMonthFirst = (firstLength === 1 || firstLength === 2) && (secondLength === 2 || secondLength === 4)
  if (!isYearFirst && !isMonthFirst) return undefined
  const first = wholeAt(text, 0, firstLength)
  const second = wholeAt(text, sign + 1, secondLength)
  return first === undefined || second === undefined ? undefined : { first, second, firstLength, secondLength }
}

function isBody(text: string): boolean {
  return text.length <= 5 && hasLetter(text) && dateAt(text) === undefined && roleOf(text) === undefined && !gasAt(text)
}

/** Month first or year first is decided by the dates that leave no choice; all dates of a shoulder follow one order. */
function readDates(reading: Reading, dates: readonly { readonly word: Word; readonly body: Word | undefined }[]): void {
  const orders = dates.map(({ word }) => orderOf(dateAt(word.text) as TwoParts))
  const isYearFirstSomewhere = orders.includes('year first')
  const isMonthFirstSomewhere = orders.includes('month first')
  for (const [index, { word, body }] of dates.entries()) {
    const parts = dateAt(word.text) as TwoParts
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
    const place = body === undefined ? whole : spanning(word, body)
    addDate(reading, {
      year: yearLength === 4 ? year : fullYear(reading, year, whole),
      month,
      body: body?.text,
      country: undefined,
      suffixes: [],
      place,
      isRetest: false,
    })
  }
}

function orderOf({ first, second, firstLength, secondLength }: TwoParts): 'year first' | 'month first' | 'either' {
  if (firstLength === 4) return 'year first'
  if (secondLength === 4 || firstLength === 1) return 'month first'
  if (first > 12 || first === 0) return 'year first'
  return second > 12 || second === 0 ? 'month first' : 'either'
}

function assign(reading: Reading, names: readonly Word[]): void {
  const { marks } = reading
  for (const word of names) {
    const place = within(word, 0, word.text.length)
    const isNumber = hasFigure(word.text)
    if (isNumber && marks.serial === undefined) {
      marks.serial = word.text
      fieldAt(reading, 'serial', place)
    } else if (!isNumber && hasLetter(word.text) && marks.maker === undefined) {
      marks.maker = word.text
      fieldAt(reading, 'maker', place)
    } else {
      found(reading, 'unread-text', place)
    }
  }
}
