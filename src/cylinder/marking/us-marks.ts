import type { Unit } from '../../units/index.ts'
import { bar, gauge, internalVolumeOf, kilogram, litre, measure, millilitre, pound, psi } from '../../units/index.ts'
import { designatedServicePressures } from '../filling/fill-limit.table.ts'
import { figuresAt, spells } from './figures.ts'
import { fieldAt, found, type Place, type Reading, within } from './reading.ts'
import { type UsSpecification, usSpecifications } from './specification.table.ts'
import type { DualMark, UsPrefix } from './stamp.ts'
import { readUsDate } from './us-date.ts'
import { assignNames } from './us-names.ts'
import { waterVolume } from './water-capacity.ts'
import { isDigitCode, isLetterCode, type Word } from './words.ts'

/** Reads the marks of the US and Canadian rules, whatever their order. */
export function readUsMarks(reading: Reading): void {
  const free: Word[] = []
  let firstDate: Word | undefined
  while (reading.at < reading.words.length) {
    const word = reading.words[reading.at] as Word
    if (readSpecificationMark(reading)) continue
    if (readUsDate(reading)) firstDate ??= word
    else if (!readKeyword(reading)) {
      free.push(word)
      reading.at++
    }
  }
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
  for (const prefix of prefixes.get(text.charCodeAt(0)) ?? none) {
    if (!spells(text, 0, prefix)) continue
    const after = text.charCodeAt(prefix.length)
    if (text.length === prefix.length || !isLetterCode(after) || permitLetters(text, prefix.length) !== undefined) {
      return prefix
    }
  }
  return undefined
}

const none: readonly UsPrefix[] = []

const names = (Object.keys(usSpecifications) as UsSpecification[]).sort((a, b) => b.length - a.length)

/** Whether a word is a US type with its pressure but without the letters of an authority: `3AA2265`. */
export function isBareSpecification(text: string): boolean {
  const type = typeAt(text, 0)
  if (type === undefined || type.length < 2) return false
  const figures = figuresAt(text, type.length)
  return figures !== undefined && figures.end === text.length && text.length - type.length >= 3
}

function readSpecificationMark(reading: Reading): boolean {
  const { words } = reading
  const first = words[reading.at] as Word
  const prefix = prefixAt(first.text)
  if (prefix === undefined) {
    if (!isBareSpecification(first.text) || reading.marks.specification !== undefined) return false
    found(reading, 'missing-prefix', within(first, 0, 0), { field: 'prefix' })
    readType(reading, undefined, { index: reading.at, offset: 0, isSpaced: false })
    return true
  }
  if (!first.text.startsWith(prefix)) found(reading, 'look-alike', within(first, 0, prefix.length), { readAs: prefix })
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
  const typeEnd = end
  const isMetric = word.text.charAt(end) === 'M'
  if (isMetric) end++
  const type = specification === undefined ? word.text.slice(at.offset, typeEnd) : (permit ?? specification)

  const pressureAt = goOn(reading, { index: at.index, offset: end, isSpaced: at.isSpaced }, startsPressure)
  const pressureWord = pressureAt && (words[pressureAt.index] as Word)
  const figures = pressureAt && pressureWord && figuresAt(pressureWord.text, pressureAt.offset)
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
  const unitText = rest < pressureWord.text.length ? unitSpelled(pressureWord.text, rest) : undefined
  if (unitText !== undefined) rest += unitText.length
  const unit: Unit<'pressure'> = isMetric || unitText === 'BAR' ? bar : psi
  keepPressure(reading, {
    prefix,
    type,
    isMetric,
    isMain,
    value: figures.value,
    unit,
    place: pressurePlace,
    whole: upTo(first, pressureWord, rest),
  })
  leftover(reading, pressureWord, rest)
  reading.at = pressureAt.index + 1
}

function unitSpelled(text: string, from: number): string | undefined {
  return ['PSIG', 'PSI', 'BAR'].find((spelling) => text.startsWith(spelling, from))
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
  if (pressure < lowestServicePressure || pressure > maximumPressure) {
    found(reading, 'implausible-number', mark.place, {
      field: 'servicePressure',
      value: mark.value,
      unit: mark.unit.symbol,
    })
  }
  if (mark.isMain) {
    reading.marks.servicePressure = pressure
    fieldAt(reading, 'servicePressure', mark.place)
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
  for (const name of names) {
    if (!text.startsWith(name, from)) continue
    const end = from + name.length
    const after = text.charCodeAt(end)
    if (end === text.length || after === 45) return name
    const isMetric = after === 77 && figuresAt(text, end + 1) !== undefined
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
  const isWhole = figures.end === word.text.length && word.text.length >= 3 && word.text.length <= 5
  return isWhole && (!isNewLine || (figures.value % 5 === 0 && figures.value >= 150 && figures.value <= 10_000))
}

function leftover(reading: Reading, word: Word, from: number): void {
  if (from < word.text.length) found(reading, 'unread-text', within(word, from, word.text.length))
}

/** Marks that name themselves: closure, rejection elastic expansion, weights, and those of a condemned cylinder. */
function readKeyword(reading: Reading): boolean {
  const word = reading.words[reading.at] as Word
  const { text } = word
  if (!keywordInitials.includes(text.charAt(0))) return false
  if (text === 'SPUN' || text === 'PLUG') {
    reading.marks.closure = text
    fieldAt(reading, 'closure', within(word, 0, text.length))
    reading.at++
    return true
  }
  if (isCondemned(text)) {
    found(reading, 'condemned', within(word, 0, text.length))
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
  if (text.startsWith('WC'))
    return readMeasured(reading, 2, ['LBS', 'LB', 'KG', 'L'], (value, unit) => {
      reading.marks.waterCapacity =
        unit === 'L' ? internalVolumeOf(value, litre) : waterVolume(measure(value, unit === 'KG' ? kilogram : pound))
      return 'waterCapacity'
    })
  return false
}

// SPUN, PLUG, CONDEMNED, X…, REE, TW, WC
const keywordInitials = 'SPCXRTW'

export function isCondemned(text: string): boolean {
  if (text === 'CONDEMNED') return true
  for (let at = 0; at < text.length; at++) if (text.charAt(at) !== 'X') return false
  return text.length >= 3
}

function readMeasured(
  reading: Reading,
  keyLength: number,
  units: readonly string[],
  keep: (value: number, unit: string | undefined) => 'rejectionElasticExpansion' | 'emptyMass' | 'waterCapacity',
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
  if (figures.value > 0) fieldAt(reading, keep(figures.value, unit), place)
  else found(reading, 'invalid-number', place)
  reading.at = index + 1
  return true
}
