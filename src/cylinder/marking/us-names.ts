import { fieldAt, found, type Reading, spanning, within } from './reading.ts'
import { isDigitCode, isLetterCode, type Word } from './words.ts'

// A US shoulder does not label serial number, maker and inspector: letters alone are a name, anything with figures a number.

/** Gives the words that no mark has claimed their meaning. */
export function assignNames(reading: Reading, free: readonly Word[], firstDate: Word | undefined): void {
  const { marks } = reading
  const numbers: Word[] = []
  const nameGroups: Word[][] = []
  let before: Word | undefined
  for (const word of free) {
    const isName = !hasFigure(word.text) && hasLetter(word.text)
    if (hasFigure(word.text)) numbers.push(word)
    else if (!isName) found(reading, 'unread-text', within(word, 0, word.text.length))
    else if (before !== undefined && before.line === word.line && isNeighbour(reading, before, word)) {
      nameGroups.at(-1)?.push(word)
    } else nameGroups.push([word])
    before = isName ? word : undefined
  }
  const serial = serialOf(numbers)
  for (const word of numbers) {
    const whole = within(word, 0, word.text.length)
    if (word === serial) {
      marks.serial = word.text
      fieldAt(reading, 'serial', whole)
    } else if (isMakerNumber(word.text) && marks.makerNumber === undefined) {
      marks.makerNumber = word.text
      fieldAt(reading, 'makerNumber', whole)
    } else if (isInspectorNumber(word.text) && marks.inspector === undefined) {
      marks.inspector = word.text
      fieldAt(reading, 'inspector', whole)
    } else if (isTradeSize(word.text) && marks.nominal === undefined) {
      marks.nominal = { identifier: word.text, cubicFeet: Number(word.text.slice(lettersBefore(word.text))) }
      fieldAt(reading, 'nominal', whole)
    } else {
      found(reading, 'unread-text', whole)
    }
  }
  const inspector = inspectorAmong(reading, nameGroups, firstDate)
  for (const group of nameGroups) {
    const name = group.map((word) => word.text).join(' ')
    const place = spanning(group[0] as Word, group.at(-1) as Word)
    if (group === inspector) {
      marks.inspector = name
      fieldAt(reading, 'inspector', place)
    } else if (name.startsWith(madeIn) && marks.countryOfManufacture === undefined) {
      marks.countryOfManufacture = name.slice(madeIn.length)
      fieldAt(reading, 'countryOfManufacture', place)
    } else if (marks.maker === undefined) {
      marks.maker = name
      fieldAt(reading, 'maker', place)
    } else {
      found(reading, 'unread-text', place)
    }
  }
}

const madeIn = 'MADE IN '

/** `AB 5-95`: up to three letters right before the first date, where the date itself names nobody. */
function inspectorAmong(
  { marks }: Reading,
  groups: readonly (readonly Word[])[],
  firstDate: Word | undefined,
): readonly Word[] | undefined {
  if (firstDate === undefined || marks.firstTest === undefined || marks.inspector !== undefined) return undefined
  const before = groups.filter(([word]) => word?.line === firstDate.line && word.start < firstDate.start).at(-1)
  return before?.length === 1 && (before[0]?.text.length ?? 4) <= 3 ? before : undefined
}

/** The serial number is what is left when a maker's number, an inspector's and a trade size are taken out. */
function serialOf(numbers: readonly Word[]): Word | undefined {
  if (numbers.length === 1) return numbers[0]
  const others = numbers.filter(({ text }) => !isMakerNumber(text) && !isInspectorNumber(text) && !isTradeSize(text))
  return others[0] ?? numbers.find(({ text }) => !isInspectorNumber(text)) ?? numbers[0]
}

/** `M9901`. */
export function isMakerNumber(text: string): boolean {
  return text.startsWith('M') && text.length >= 4 && text.length <= 6 && isAllFigures(text, 1)
}

function isInspectorNumber(text: string): boolean {
  return text.startsWith('IA') && text.length >= 4 && isAllFigures(text, 2)
}

/** `K80`, `AL80`: one or two letters and two or three figures. */
function isTradeSize(text: string): boolean {
  const letters = lettersBefore(text)
  const figures = text.length - letters
  if (letters < 1 || letters > 2 || (figures !== 2 && figures !== 3) || !isAllFigures(text, letters)) return false
  // C208 has the form of a requalifier's number, and no cylinder of the trade holds 208 ft³.
  return figures === 2 || Number(text.slice(letters)) <= largestTradeSize
}

const largestTradeSize = 150

function lettersBefore(text: string): number {
  let at = 0
  while (at < text.length && isLetterCode(text.charCodeAt(at))) at++
  return at
}

export function isAllFigures(text: string, from: number): boolean {
  for (let at = from; at < text.length; at++) if (!isDigitCode(text.charCodeAt(at))) return false
  return text.length > from
}

export function hasFigure(text: string): boolean {
  for (let at = 0; at < text.length; at++) if (isDigitCode(text.charCodeAt(at))) return true
  return false
}

export function hasLetter(text: string): boolean {
  for (let at = 0; at < text.length; at++) if (isLetterCode(text.charCodeAt(at))) return true
  return false
}

/** Whether nothing stands between two words of one line but space. */
function isNeighbour(reading: Reading, before: Word, word: Word): boolean {
  if (word.start - before.end > 3) return false
  const between = reading.lines[word.line]?.slice(before.end, word.start) ?? ''
  return between.trim() === ''
}
