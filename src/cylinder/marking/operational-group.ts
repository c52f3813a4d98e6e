import { bar, gauge, internalVolumeOf, kilogram, litre, measure, millimetre } from '../../units/index.ts'
import { type Figures, figuresAt, spells } from './figures.ts'
import { fieldAt, found, type Place, type Reading, within } from './reading.ts'
import type { Word } from './words.ts'

// PW200 PH300BAR 62.1KG 50L 5.8MM: what may be done with the receptacle.

type Key = 'PW' | 'PH'
type UnitWord = 'BAR' | 'KG' | 'L' | 'MM'

/** Reads one operational mark at the current word; the group's place grows with it. */
export function readOperationalMark(reading: Reading): Place | undefined {
  const { words } = reading
  const first = words[reading.at] as Word
  const key = keyOf(first.text)
  let index = reading.at
  let offset = 0
  if (key !== undefined) {
    offset = key.length
    if (offset === first.text.length) {
      const following = words[index + 1]
      if (following === undefined || figuresAt(following.text, 0) === undefined) return undefined
      index++
      offset = 0
    }
  }
  const word = words[index] as Word
  const figures = figuresAt(word.text, offset)
  if (figures === undefined) return undefined
  let unit = unitAt(word.text, figures.end)
  let end = figures.end + (unit === undefined ? 0 : unit.length)
  if (end !== word.text.length) return undefined
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
  if (key === undefined && unit === undefined) return undefined
  reading.at = index + 1
  keep(reading, { key, unit, figures, first, word, last, offset })
  return { line: first.line, start: first.start, end: last.line === first.line ? last.end : first.end }
}

function keyOf(text: string): Key | undefined {
  if (text.charCodeAt(0) !== 80) return undefined
  const second = text.charCodeAt(1)
  return second === 87 ? 'PW' : second === 72 ? 'PH' : undefined
}

function unitAt(text: string, from: number): UnitWord | undefined {
  const unit = unitByInitial[text.charAt(from)]
  return unit !== undefined && text.length === from + unit.length && spells(text, from, unit) ? unit : undefined
}

const unitByInitial: Readonly<Record<string, UnitWord>> = { B: 'BAR', K: 'KG', M: 'MM', L: 'L' }

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
  if (key === 'PH' && unit !== 'BAR')
    found(reading, 'missing-unit', within(word, figures.end, figures.end), { unit: 'BAR' })
  const slot = key === 'PW' ? 'workingPressure' : key === 'PH' || unit === 'BAR' ? 'testPressure' : slots[unit ?? 'MM']
  if (marks[slot] !== undefined) {
    found(reading, 'unread-text', place)
    return
  }
  const [lowest, highest] = plausible[slot]
  if (value < lowest || value > highest) found(reading, 'implausible-number', place, { field: slot, value })
  if (slot === 'workingPressure') marks.workingPressure = gauge(value, bar)
  else if (slot === 'testPressure') marks.testPressure = gauge(value, bar)
  else if (slot === 'emptyMass') marks.emptyMass = measure(value, kilogram)
  else if (slot === 'waterCapacity') marks.waterCapacity = internalVolumeOf(value, litre)
  else marks.minimumWall = measure(value, millimetre)
  fieldAt(reading, slot, place)
}

const slots = { BAR: 'testPressure', KG: 'emptyMass', L: 'waterCapacity', MM: 'minimumWall' } as const

// In bar, kg, L and mm. The limits are ours: outside lies a slip of the unit or of a decimal sign. 450 L is the widest scope of ISO 9809.
const plausible = {
  workingPressure: [10, 1100],
  testPressure: [15, 1650],
  emptyMass: [0.1, 600],
  waterCapacity: [0.1, 450],
  minimumWall: [0.5, 60],
} as const
