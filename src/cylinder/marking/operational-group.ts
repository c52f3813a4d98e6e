import { bar, gauge, internalVolumeOf, kilogram, litre, measure, millimetre, psi } from '../../units/index.ts'
import { type Figures, figuresAt, spells } from './figures.ts'
import { fieldAt, found, type Place, type Reading, within } from './reading.ts'
import { stampedWaterVolume } from './water-capacity.ts'
import { isDigitCode, isLetterCode, type Word } from './words.ts'

// PW200 PH300BAR 62.1KG 50L 5.8MM: what may be done with the receptacle.

// PS and PT are what many European shoulders have for them; the others are typed for them.
type Key = keyof typeof keys
const keys = {
  PW: 'working',
  PS: 'working',
  WP: 'working',
  FP: 'working',
  PH: 'test',
  PT: 'test',
  PE: 'test',
  TP: 'test',
} as const
const keyNames = Object.keys(keys) as readonly Key[]
type UnitWord = 'BAR' | 'MPA' | 'PSI' | 'KG' | 'L' | 'MM'

/** Reads one operational mark at the current word, if one stands there. */
export function readOperationalMark(reading: Reading): boolean {
  const { words } = reading
  const first = words[reading.at] as Word
  const key = keyOf(first.text)
  let index = reading.at
  let offset = 0
  if (key !== undefined) {
    offset = key.length
    if (offset === first.text.length) {
      const following = words[index + 1]
      if (following === undefined || figuresAt(following.text, 0) === undefined) return false
      index++
      offset = 0
    }
  }
  const word = words[index] as Word
  const figures = figuresAt(word.text, offset)
  if (figures === undefined) return false
  let unit = unitAt(word.text, figures.end)
  let end = figures.end + (unit === undefined ? 0 : unit.length)
  if (end !== word.text.length) return false
  let last = word
  if (unit === undefined) {
    const following = words[index + 1]
    const spelled = following && unitAt(following.text, 0)
    if (following !== undefined && spelled !== undefined && spelled.length === following.text.length) {
      unit = spelled
      index++
      last = following
      end = spelled.length
    }
  }
  if (key === undefined && unit === undefined) return false
  reading.at = index + 1
  keep(reading, { key, unit, figures, first, word, last, offset })
  return true
}

const waterLabels: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'WC',
  'W.C.',
  'V',
  'V.',
  'VOL',
  'VOL.',
  'VOLUME',
  'CAP',
  'CAP.',
  'CAPACITY',
])

/** `WC 12.2 KG`, `VOL 12 L`: a capacity with its label, as a volume or as the mass of the water. */
export function readWaterCapacity(reading: Reading): boolean {
  const { words, marks } = reading
  const label = words[reading.at] as Word
  const initial = label.text.charCodeAt(0)
  if (initial !== 87 && initial !== 86 && initial !== 67) return false // W, V, C
  const word = words[reading.at + 1]
  if (word?.line !== label.line || !isDigitCode(word.text.charCodeAt(0)) || !waterLabels.has(label.text)) return false
  const figures = figuresAt(word.text, 0)
  if (figures === undefined || marks.waterCapacity !== undefined || !(figures.value > 0)) return false
  const isSpaced = figures.end === word.text.length
  const following = words[reading.at + 2]
  const unit = isSpaced ? (following?.line === word.line ? following.text : '') : word.text.slice(figures.end)
  if (unit !== 'KG' && unit !== 'L') return false
  const capacity =
    unit === 'L' ? internalVolumeOf(figures.value, litre) : stampedWaterVolume(measure(figures.value, kilogram))
  if (capacity === undefined) return false
  marks.waterCapacity = capacity
  const last = isSpaced ? (following as Word) : word
  fieldAt(reading, 'waterCapacity', { line: label.line, start: label.start, end: last.end })
  reading.at += isSpaced ? 3 : 2
  return true
}

function keyOf(text: string): Key | undefined {
  const first = text.charCodeAt(0)
  if (first !== 80 && first !== 87 && first !== 84 && first !== 70) return undefined // P, W, T, F
  if (text.length > 2 && figuresAt(text, 2) === undefined) return undefined
  for (const key of keyNames) if (text.startsWith(key)) return key
  return undefined
}

const pieces = /(?:P[WHSTE]|WP|TP|FP)?\d+(?:[.,]\d+)?(?:BAR|MPA|KG|MM|L)?/uy

/** Whether figures follow letters twice: PW200PH300BAR. */
function isJoinedMarks({ text, start, end }: Word): boolean {
  if (text.length < 8 || end - start !== text.length) return false
  let changes = 0
  for (let at = 1; at < text.length; at++) {
    if (isDigitCode(text.charCodeAt(at)) && isLetterCode(text.charCodeAt(at - 1))) changes++
  }
  return changes > 1 || (changes === 1 && isDigitCode(text.charCodeAt(0)))
}

/** Marks typed without a space between them, taken apart: `PW200PH300BAR62.1KG50L5.8MM`. */
export function splitOperational(words: readonly Word[]): readonly Word[] {
  if (!words.some(isJoinedMarks)) return words
  return words.flatMap((word) => {
    if (!isJoinedMarks(word)) return [word]
    const parts: Word[] = []
    let at = 0
    while (at < word.text.length) {
      pieces.lastIndex = at
      const piece = pieces.exec(word.text)?.[0]
      if (piece === undefined || !/[A-Z]/u.test(piece)) return [word]
      const start = word.start + at
      parts.push({ ...word, text: piece, start, end: start + piece.length, isJoined: at > 0, repair: undefined })
      at += piece.length
    }
    return parts.length < 2 ? [word] : parts
  })
}

function unitAt(text: string, from: number): UnitWord | undefined {
  if (from >= text.length) return undefined
  const initial = text.charAt(from)
  const unit = initial === 'M' && text.charAt(from + 1) === 'P' ? 'MPA' : unitByInitial[initial]
  return unit !== undefined && text.length === from + unit.length && spells(text, from, unit) ? unit : undefined
}

const unitByInitial: Readonly<Record<string, UnitWord>> = { B: 'BAR', K: 'KG', M: 'MM', L: 'L', P: 'PSI' }

function keep(
  reading: Reading,
  mark: {
    readonly key: Key | undefined
    readonly unit: UnitWord | undefined
    readonly figures: Figures
    readonly first: Word
    readonly word: Word
    readonly last: Word
    readonly offset: number
  },
): void {
  const { key, unit, figures, first, word, last } = mark
  const { marks } = reading
  const isOneLine = first.line === last.line
  const place = { line: first.line, start: first.start, end: isOneLine ? last.end : first.end }
  if (first !== last) found(reading, isOneLine ? 'spacing' : 'line-break', place)
  if (figures.points > 1) {
    found(reading, 'invalid-number', within(word, mark.offset, word.text.length))
    return
  }
  if (figures.isRepaired) {
    found(reading, 'look-alike', within(word, mark.offset, figures.end), { readAs: String(figures.value) })
  }
  const { value } = figures
  if (!(value > 0)) {
    found(reading, 'invalid-number', place)
    return
  }
  if (key === 'PH' && unit !== 'BAR' && unit !== 'MPA')
    found(reading, 'missing-unit', within(word, figures.end, figures.end), { unit: 'BAR' })
  const stated = slotOf(key, unit)
  // Two pressures without a label: the lower one is the working pressure.
  const isSecond = stated === 'testPressure' && key === undefined && marks.testPressure !== undefined
  const slot = isSecond && marks.workingPressure === undefined ? 'workingPressure' : stated
  const isPressure = slot === 'workingPressure' || slot === 'testPressure'
  if (marks[slot] !== undefined) {
    found(reading, isPressure ? 'unread-figure' : 'unread-text', place)
    return
  }
  const amount = isPressure ? inBar(figures, unit) : value
  const [lowest, highest] = plausible[slot]
  if (amount < lowest || amount > highest) {
    found(reading, isPressure ? 'pressure-withheld' : 'implausible-number', place, { field: slot, value })
    if (isPressure) return
  }
  if (slot === 'workingPressure') marks.workingPressure = gauge(amount, bar)
  else if (slot === 'testPressure') marks.testPressure = gauge(amount, bar)
  else if (slot === 'emptyMass') marks.emptyMass = measure(value, kilogram)
  else if (slot === 'waterCapacity') marks.waterCapacity = internalVolumeOf(value, litre)
  else marks.minimumWall = measure(value, millimetre)
  fieldAt(reading, slot, place)
  if (isSecond) sortUnlabelled(reading, place)
}

function sortUnlabelled(reading: Reading, place: Place): void {
  const { marks } = reading
  const { workingPressure, testPressure } = marks
  found(reading, 'pressure-not-labelled', place)
  if (workingPressure === undefined || testPressure === undefined || workingPressure <= testPressure) return
  marks.workingPressure = testPressure
  marks.testPressure = workingPressure
}

function inBar({ value, grouped }: Figures, unit: UnitWord | undefined): number {
  if (unit === 'MPA') return value * 10
  return unit === 'PSI' ? gauge(grouped ?? value, psi) / 1e5 : value
}

type Slot = 'workingPressure' | 'testPressure' | 'emptyMass' | 'waterCapacity' | 'minimumWall'

function slotOf(key: Key | undefined, unit: UnitWord | undefined): Slot {
  if (key !== undefined) return keys[key] === 'working' ? 'workingPressure' : 'testPressure'
  return slots[unit ?? 'MM']
}

const slots = {
  BAR: 'testPressure',
  MPA: 'testPressure',
  PSI: 'testPressure',
  KG: 'emptyMass',
  L: 'waterCapacity',
  MM: 'minimumWall',
} as const

// In bar, kg, L and mm. The limits are ours: outside lies a slip of the unit or of a decimal sign. 450 L is the widest scope of ISO 9809.
const plausible = {
  workingPressure: [10, 1100],
  testPressure: [15, 1650],
  emptyMass: [0.1, 600],
  waterCapacity: [0.1, 450],
  minimumWall: [0.5, 60],
} as const
