import type { Unit } from '../../units/index.ts'
import {
  bar,
  gauge,
  internalVolumeOf,
  kilogram,
  litre,
  measure,
  megapascal,
  millilitre,
  pound,
  psi,
} from '../../units/index.ts'
import { designatedServicePressures } from '../filling/fill-limit.table.ts'
import { type Figures, figuresAt, lookAlikeFigures, spells } from './figures.ts'
import { assignDates, fieldAt, found, type Place, type Reading, spanning, within } from './reading.ts'
import { type UsSpecification, usSpecifications } from './specification.table.ts'
import type { DualMark, StampFieldName, UsPrefix } from './stamp.ts'
import { threadAt } from './thread.ts'
import { readSquare, readUsDate } from './us-date.ts'
import { assignNames } from './us-names.ts'
import { stampedWaterVolume } from './water-capacity.ts'
import { isDigitCode, isLetterCode, type Word } from './words.ts'

/** Reads the marks of the US and Canadian rules, whatever their order. */
export function readUsMarks(reading: Reading): void {
  const free: Word[] = []
  let firstDate: Word | undefined
  while (reading.at < reading.words.length) {
    const word = reading.words[reading.at] as Word
    if (readThread(reading)) continue
    if (readSpecificationMark(reading)) continue
    if (readSquare(reading) || readUsDate(reading)) firstDate ??= word
    else if (!readKeyword(reading)) {
      free.push(word)
      reading.at++
    }
  }
  assignDates(reading)
  assignNames(reading, free, firstDate)
}

// By first letter, or a 1 that may stand for I.
const prefixes: ReadonlyMap<number, readonly UsPrefix[]> = new Map([
  [68, ['DOT']],
  [73, ['ICC']],
  [49, ['ICC']],
  [67, ['CTC', 'CRC']],
  [66, ['BTC']],
  [84, ['TC']],
])
const canadian: readonly UsPrefix[] = ['TC', 'CTC', 'CRC', 'BTC']

/** Whether a word begins with the letters of one of the two authorities, followed by what a mark goes on with. */
export function prefixAt(text: string): UsPrefix | undefined {
  const candidates = prefixes.get(text.charCodeAt(0))
  if (candidates === undefined) return undefined
  for (const prefix of candidates) {
    if (!spells(text, 0, prefix)) continue
    const after = text.charCodeAt(prefix.length)
    if (text.length === prefix.length || !isLetterCode(after) || permitLetters(text, prefix.length) !== undefined) {
      return prefix
    }
  }
  return undefined
}

const names = (Object.keys(usSpecifications) as UsSpecification[]).sort((a, b) => b.length - a.length)

/** Whether a word is a US type with its pressure but without the letters of an authority: `3AA2265`. */
export function isBareSpecification(text: string): boolean {
  if (text.length < 5) return false
  const type = typeAt(text, 0)
  if (type === undefined || type.length < 2 || isDigitCode(type.charCodeAt(1))) return false
  const figures = pressureFigures(text, type.length)
  if (figures === undefined || figures.end - type.length < 3) return false
  return figures.end === text.length || (figures.end === text.length - 1 && text.endsWith('+'))
}

/** Whether a word is a US type by itself with its pressure in the next one: `3AL 3000 PSI`. */
export function isSpacedSpecification(text: string, following: string | undefined): boolean {
  // A type of figures alone, 39, needs its letters before it: it would be a month or a year.
  if (text.length < 2 || text.length > 4 || isDigitCode(text.charCodeAt(1)) || following === undefined) return false
  if (typeAt(text, 0) !== text) return false
  const figures = figuresAt(following, 0)
  return figures !== undefined && figures.end >= 3
}

/** A neck thread: `3/4-14 NPSM`, of which the slash made two words, `.750-16 UNF`, `M25x2`. */
function readThread(reading: Reading): boolean {
  const { words, marks } = reading
  const word = words[reading.at] as Word
  const second = words[reading.at + 1]
  const isSplit = second?.isJoined === true && second.text.includes('-') && word.text.length <= 2
  const text = isSplit ? `${word.text}/${second.text}` : word.text
  const start = text.charCodeAt(0)
  if (start !== 77 && start !== 46 && !isDigitCode(start)) return false
  const thread = threadAt(text, words[reading.at + (isSplit ? 2 : 1)]?.text)
  if (thread === undefined || marks.thread !== undefined) return false
  const count = thread.words + (isSplit ? 1 : 0)
  marks.thread = thread.thread
  fieldAt(reading, 'thread', spanning(word, words[reading.at + count - 1] as Word))
  reading.at += count
  return true
}

function readSpecificationMark(reading: Reading): boolean {
  const { words } = reading
  const first = words[reading.at] as Word
  const prefix = prefixAt(first.text)
  if (prefix === undefined) {
    const isBare = isBareSpecification(first.text) || isSpacedSpecification(first.text, words[reading.at + 1]?.text)
    if (!isBare || reading.marks.specification !== undefined) return false
    found(reading, 'missing-prefix', within(first, 0, 0), { field: 'prefix' })
    readType(reading, undefined, { index: reading.at, offset: 0, isSpaced: false })
    return true
  }
  if (!first.text.startsWith(prefix)) found(reading, 'look-alike', within(first, 0, prefix.length), { readAs: prefix })
  const second = words[reading.at + 1]
  if (first.text.length === prefix.length && second?.isJoined === true && prefixAt(second.text) !== undefined) {
    // CTC/DOT-3AL3000: both authorities on one mark.
    reading.sharedPrefix = prefix
    reading.at++
    return true
  }
  const at = goOn(reading, { index: reading.at, offset: prefix.length, isSpaced: false }, startsType)
  if (at === undefined) {
    found(reading, 'unknown-specification', within(first, prefix.length, prefix.length))
    reading.at++
    return true
  }
  readType(reading, prefix, at)
  return true
}

/** A place between two characters, and whether a space was stepped over to come there. */
interface Cursor {
  readonly index: number
  readonly offset: number
  readonly isSpaced: boolean
}

function readType(reading: Reading, prefix: UsPrefix | undefined, at: Cursor): void {
  const { words } = reading
  const word = words[at.index] as Word
  const letters = permitLetters(word.text, at.offset)
  let end = at.offset
  let specification: UsSpecification | 'special permit' | undefined
  let permit: string | undefined
  if (letters !== undefined) {
    const dashed = at.offset + letters.length
    const number = figuresAt(word.text, word.text.charAt(dashed) === '-' ? dashed + 1 : dashed)
    specification = 'special permit'
    permit = letters + String(number?.value ?? '')
    end = number?.end ?? dashed
  } else {
    specification = typeAt(word.text, at.offset)
    end = specification === undefined ? endOfType(word.text, at.offset) : at.offset + specification.length
    if (specification === undefined) found(reading, 'unknown-specification', within(word, at.offset, end))
  }
  let typeEnd = end
  const isMarkedMetric = word.text.charAt(end) === 'M'
  if (isMarkedMetric) end++
  let pressureAt = goOn(reading, { index: at.index, offset: end, isSpaced: at.isSpaced }, startsPressure)
  const metricAt = pressureAt === undefined ? metricPressure(reading, at.index, end) : undefined
  pressureAt ??= metricAt
  const isMetric = isMarkedMetric || metricAt !== undefined
  const pressureWord = pressureAt && (words[pressureAt.index] as Word)
  let figures = pressureAt && pressureWord && pressureFigures(pressureWord.text, pressureAt.offset)
  const aluminium =
    specification === '3A' && figures !== undefined && pressureWord === word
      ? aluminiumFor3A(word.text, at.offset, figures.value)
      : undefined
  if (aluminium !== undefined) {
    // 3A with 13,000 psi never was: 3AL with 3000.
    specification = '3AL'
    typeEnd = at.offset + 3
    figures = aluminium
    found(reading, 'look-alike', within(word, at.offset, typeEnd), { readAs: '3AL' })
  } else if (specification === '3AL' && !word.text.startsWith('3AL', at.offset)) {
    found(reading, 'look-alike', within(word, at.offset, typeEnd), { readAs: '3AL' })
  }
  const type = specification === undefined ? word.text.slice(at.offset, typeEnd) : (permit ?? specification)
  const first = words[reading.at] as Word
  const place = within(word, word === first ? 0 : at.offset, typeEnd)
  const isMain = isMainMark(reading, prefix)
  if (isMain && specification !== undefined) {
    reading.marks.specification = specification
    if (permit !== undefined) reading.marks.permit = permit
    if (prefix !== undefined) reading.marks.prefix = prefix
    fieldAt(reading, 'specification', place)
  }
  if (pressureAt === undefined || pressureWord === undefined || figures === undefined) {
    const isOptional = specification !== undefined && designated.has(specification)
    if (!isOptional) found(reading, 'missing-service-pressure', within(word, end, end))
    leftover(reading, word, end)
    reading.at = at.index + 1
    return
  }
  if (pressureAt.isSpaced && pressureWord.line === first.line)
    found(reading, 'spacing', { line: first.line, start: first.start, end: first.end })
  if (pressureWord.line !== first.line) found(reading, 'line-break', within(pressureWord, 0, 0))
  const pressurePlace = within(pressureWord, pressureAt.offset, figures.end)
  if (figures.isRepaired) found(reading, 'look-alike', pressurePlace, { readAs: String(figures.value) })
  let rest = figures.end
  let unitText = rest < pressureWord.text.length ? unitSpelled(pressureWord.text, rest) : undefined
  if (unitText !== undefined) rest += unitText.length
  reading.at = pressureAt.index + 1
  const unitWord = words[reading.at]
  if (unitText === undefined && rest === pressureWord.text.length && unitWord?.line === pressureWord.line) {
    unitText = pressureUnitNames.find((name) => name === unitWord.text)
    if (unitText !== undefined) reading.at++
  }
  // A Canadian TC mark is in bar, whether or not the M stands there; the older Canadian letters are in psi like the US ones.
  const usual = isMetric || (prefix === 'TC' && reading.sharedPrefix === undefined) ? bar : psi
  const unit = unitText === undefined ? usual : pressureUnits[unitText]
  keepPressure(reading, {
    prefix,
    type,
    isMetric,
    isMain,
    value: unit === psi ? (figures.grouped ?? figures.value) : figures.value,
    unit,
    place: pressurePlace,
    whole: upTo(first, pressureWord, rest),
  })
  leftover(reading, pressureWord, rest)
}

/** `TC-3AA M-184`: the M of a metric mark in a word of its own. */
function metricPressure(reading: Reading, index: number, end: number): Cursor | undefined {
  const word = reading.words[index] as Word
  const letter = reading.words[index + 1]
  if (end < word.text.length || letter?.line !== word.line || !letter.text.startsWith('M')) return undefined
  const isAlone = letter.text.length === 1
  const at = isAlone ? index + 2 : index + 1
  const following = reading.words[at]
  if (following?.line !== word.line) return undefined
  const offset = isAlone ? 0 : following.text.charCodeAt(1) === 45 ? 2 : 1
  const figures = figuresAt(following.text, offset)
  if (figures?.end !== following.text.length || figures.value < 10 || figures.value > 700) return undefined
  return { index: at, offset, isSpaced: true }
}

/** The figures of a pressure; letters that look like figures count where the word is nothing else. */
function pressureFigures(text: string, from: number): Figures | undefined {
  const figures = figuresAt(text, from)
  if (figures === undefined || figures.end === text.length) return figures
  const value = lookAlikeFigures(text, from)
  if (value === undefined || value % 5 !== 0 || value < 500 || value > 6000) return figures
  return { value, end: text.length, points: 0, isRepaired: true }
}

function aluminiumFor3A(text: string, from: number, value: number): Figures | undefined {
  if (value <= highestPsi || !'I1L'.includes(text.charAt(from + 2))) return undefined
  const figures = figuresAt(text, from + 3)
  return figures !== undefined && figures.end === text.length && figures.value >= 500 && figures.value <= 6000
    ? figures
    : undefined
}

const pressureUnitNames = ['PSIG', 'PSI', 'BAR', 'MPA'] as const
const pressureUnits = { PSIG: psi, PSI: psi, BAR: bar, MPA: megapascal } as const

function unitSpelled(text: string, from: number): (typeof pressureUnitNames)[number] | undefined {
  return pressureUnitNames.find((spelling) => text.startsWith(spelling, from))
}

/** From the start of one word to an offset into another, or to the end of the first where they stand on two lines. */
function upTo(first: Word, last: Word, offset: number): Place {
  return { line: first.line, start: first.start, end: first.line === last.line ? last.start + offset : first.end }
}

// Types whose pressure a rule designates where none is stamped.
const designated: ReadonlySet<string> = new Set(designatedServicePressures.map(({ specification }) => specification))

function keepPressure(
  reading: Reading,
  mark: {
    readonly prefix: UsPrefix | undefined
    readonly type: string
    readonly isMetric: boolean
    readonly isMain: boolean
    readonly value: number
    readonly unit: Unit<'pressure'>
    readonly place: Place
    readonly whole: Place
  },
): void {
  if (!Number.isFinite(mark.value) || mark.value <= 0) {
    found(reading, 'invalid-number', mark.place)
    return
  }
  const pressure = gauge(mark.value, mark.unit)
  const lowest = mark.type === '3AL' ? gauge(lowest3AlPsi, psi) : lowestServicePressure
  if (pressure < lowest || pressure > maximumPressure) {
    found(reading, 'pressure-withheld', mark.place, {
      field: 'servicePressure',
      value: mark.value,
      unit: mark.unit.symbol,
    })
    return
  }
  if (mark.isMain) {
    reading.marks.servicePressure = pressure
    fieldAt(reading, 'servicePressure', mark.place)
    if (reading.sharedPrefix !== undefined) {
      reading.marks.dual = { prefix: reading.sharedPrefix, specification: mark.type, servicePressure: pressure }
      fieldAt(reading, 'dual', mark.whole)
    }
  } else if (reading.marks.dual === undefined && mark.prefix !== undefined) {
    const specification = mark.isMetric ? `${mark.type}M` : mark.type
    reading.marks.dual = { prefix: mark.prefix, specification, servicePressure: pressure } satisfies DualMark
    fieldAt(reading, 'dual', mark.whole)
  } else {
    found(reading, 'unread-text', mark.whole)
  }
}

// 10 to 700 bar: a slip of the unit or a missing figure lies outside.
const lowestServicePressure = 1e6
const maximumPressure = 7e7
const highestPsi = 10_000
const sameWithin = 0.01

// From memory: no 3AL was made for less, so a smaller figure is a slip of the unit (207 bar on a US mark).
const lowest3AlPsi = 400

/** The US mark leads; a Canadian one leads only where no US mark stands anywhere on the shoulder. */
function isMainMark(reading: Reading, prefix: UsPrefix | undefined): boolean {
  if (reading.marks.specification !== undefined) return false
  if (prefix === undefined || !canadian.includes(prefix)) return true
  for (let index = reading.at + 1; index < reading.words.length && index < reading.at + 8; index++) {
    const other = prefixAt((reading.words[index] as Word).text)
    if (other === 'DOT' || other === 'ICC') return false
  }
  return true
}

function typeAt(text: string, from: number): UsSpecification | undefined {
  const first = text.charCodeAt(from)
  if (first !== 51 && first !== 52 && first !== 56) return undefined // every type begins with 3, 4 or 8
  // 3AI and 3A1 for 3AL, where nothing but the end or a dash follows.
  if (text.length >= from + 3 && (text.startsWith('3AI', from) || text.startsWith('3A1', from))) {
    if (text.length === from + 3 || text.charCodeAt(from + 3) === 45) return '3AL'
  }
  for (const name of names) {
    if (name.charCodeAt(0) !== first || !text.startsWith(name, from)) continue
    const end = from + name.length
    const after = text.charCodeAt(end)
    if (end === text.length || after === 45) return name
    const isMetric = after === 77 && (end + 1 === text.length || figuresAt(text, end + 1) !== undefined)
    const isClosed = isLetterCode(name.charCodeAt(name.length - 1))
    if (isMetric || (isClosed && figuresAt(text, end) !== undefined)) return name
  }
  return undefined
}

function endOfType(text: string, from: number): number {
  let end = from
  while (end < text.length && isDigitCode(text.charCodeAt(end))) end++
  while (end < text.length && isLetterCode(text.charCodeAt(end))) end++
  return end
}

function permitLetters(text: string, from: number): 'SP' | 'SU' | 'E' | undefined {
  const initial = text.charCodeAt(from)
  if (initial !== 83 && initial !== 69) return undefined
  for (const letters of ['SP', 'SU', 'E'] as const) {
    if (!text.startsWith(letters, from)) continue
    const after = from + letters.length
    const number = text.charCodeAt(after) === 45 ? after + 1 : after
    if (isDigitCode(text.charCodeAt(number))) return letters
  }
  return undefined
}

/** Steps over dashes, and over one space where the next word is what is wanted. */
function goOn(
  reading: Reading,
  from: Cursor,
  isWanted: (word: Word, offset: number, isNewLine: boolean) => boolean,
): Cursor | undefined {
  const word = reading.words[from.index] as Word
  let { offset } = from
  while (word.text.charCodeAt(offset) === 45) offset++
  if (offset < word.text.length) return isWanted(word, offset, false) ? { ...from, offset } : undefined
  const following = reading.words[from.index + 1]
  if (following === undefined || !isWanted(following, 0, following.line !== word.line)) return undefined
  return { index: from.index + 1, offset: 0, isSpaced: true }
}

function startsType(word: Word, offset: number): boolean {
  return isDigitCode(word.text.charCodeAt(offset)) || permitLetters(word.text, offset) !== undefined || offset > 0
}

function startsPressure(word: Word, offset: number, isNewLine: boolean): boolean {
  const figures = figuresAt(word.text, offset)
  if (figures === undefined) return false
  if (offset > 0) return true
  // A word of its own is the pressure only if it is nothing but a plausible one: it could be the serial number.
  const end = word.text.endsWith('+') ? word.text.length - 1 : word.text.length
  const isWhole = figures.end === end && end >= 3 && end <= 5
  return isWhole && (!isNewLine || (figures.value % 5 === 0 && figures.value >= 150 && figures.value <= 10_000))
}

function leftover(reading: Reading, word: Word, from: number): void {
  if (from < word.text.length) found(reading, 'unread-text', within(word, from, word.text.length))
}

/** Marks that name themselves: closure, rejection elastic expansion, weights. */
function readKeyword(reading: Reading): boolean {
  const word = reading.words[reading.at] as Word
  const { text } = word
  if (isDigitCode(text.charCodeAt(0))) return readBarePressure(reading)
  if (!mayBeginKeyword(text.charCodeAt(0))) return false
  if (text === 'SPUN' || text === 'PLUG') {
    reading.marks.closure = text
    fieldAt(reading, 'closure', within(word, 0, text.length))
    reading.at++
    return true
  }
  if (text.startsWith('REE'))
    return readMeasured(reading, 3, ['CC', 'CM3', 'ML'], (value) => {
      reading.marks.rejectionElasticExpansion = measure(value, millilitre)
      return 'rejectionElasticExpansion'
    })
  if (text.startsWith('TW'))
    return readMeasured(reading, 2, ['LBS', 'LB', 'KG'], (value, unit) => {
      reading.marks.emptyMass = measure(value, unit === 'KG' ? kilogram : pound)
      return 'emptyMass'
    })
  if (text.startsWith('TP') || text.startsWith('PT')) return readPressure(reading, 'testPressure')
  if (text.startsWith('WP')) return readPressure(reading, 'servicePressure')
  if (text.startsWith('WC'))
    return readMeasured(reading, 2, ['LBS', 'LB', 'KG', 'L'], (value, unit) => {
      const mass = measure(value, unit === 'KG' ? kilogram : pound)
      const capacity = unit === 'L' ? internalVolumeOf(value, litre) : stampedWaterVolume(mass)
      if (capacity === undefined) return undefined
      reading.marks.waterCapacity = capacity
      return 'waterCapacity'
    })
  return false
}

/** `(207 bar)` behind 3000 psi: the pressure once more. Another one without a label is not read. */
function readBarePressure(reading: Reading): boolean {
  const { words, marks } = reading
  const word = words[reading.at] as Word
  const figures = figuresAt(word.text, 0)
  if (figures === undefined) return false
  const isWhole = figures.end === word.text.length
  const following = words[reading.at + 1]
  const spelled = isWhole ? (following?.line === word.line ? following.text : '') : word.text.slice(figures.end)
  const unit = pressureUnitNames.find((name) => name === spelled)
  if (unit === undefined) return false
  const pressure = gauge(figures.grouped ?? figures.value, pressureUnits[unit])
  const known = [marks.servicePressure, marks.testPressure].find(
    (mark) => mark !== undefined && Math.abs(pressure - mark) <= sameWithin * mark,
  )
  const last = isWhole ? (following as Word) : word
  if (known === undefined) found(reading, 'unread-figure', spanning(word, last))
  reading.at += isWhole ? 2 : 1
  return true
}

/** SPUN, PLUG, PT, REE, TW, TP, WC, WP. */
function mayBeginKeyword(code: number): boolean {
  return code === 83 || code === 80 || code === 82 || code === 84 || code === 87
}

/** `TP 5000 PSI`: a pressure with its label; psi where no unit stands. */
function readPressure(reading: Reading, name: 'testPressure' | 'servicePressure'): boolean {
  return readMeasured(reading, 2, pressureUnitNames, (value, unit, grouped) => {
    const isPsi = unit === undefined || unit === 'PSI' || unit === 'PSIG'
    const pressure = isPsi ? gauge(grouped ?? value, psi) : gauge(value, unit === 'BAR' ? bar : megapascal)
    const known = reading.marks[name]
    // The same pressure once more, in another unit, is no second one.
    if (known !== undefined) return Math.abs(pressure - known) <= sameWithin * known ? name : undefined
    if (pressure < lowestServicePressure || pressure > 2 * maximumPressure) return undefined
    reading.marks[name] = pressure
    return name
  })
}

function readMeasured(
  reading: Reading,
  keyLength: number,
  units: readonly string[],
  keep: (value: number, unit: string | undefined, grouped: number | undefined) => StampFieldName | undefined,
): boolean {
  const { words } = reading
  const key = words[reading.at] as Word
  const isSpaced = key.text.length === keyLength
  const word = isSpaced ? words[reading.at + 1] : key
  if (word === undefined || word.line !== key.line) return false
  const from = isSpaced ? 0 : keyLength
  const figures = figuresAt(word.text, from)
  if (figures === undefined || Number.isNaN(figures.value)) return false
  let last = word
  let unit = units.find((spelling) => word.text.slice(figures.end) === spelling)
  if (unit === undefined && figures.end !== word.text.length) return false
  let index = isSpaced ? reading.at + 1 : reading.at
  if (unit === undefined) {
    const following = words[index + 1]
    if (following !== undefined && following.line === key.line)
      unit = units.find((spelling) => following.text === spelling)
    if (unit !== undefined) last = words[++index] as Word
  }
  const place = { line: key.line, start: key.start, end: last.end }
  if (!(figures.value > 0)) found(reading, 'invalid-number', place)
  else {
    const name = keep(figures.value, unit, figures.grouped)
    if (name === undefined) found(reading, 'unread-figure', place)
    else fieldAt(reading, name, place)
  }
  reading.at = index + 1
  return true
}
