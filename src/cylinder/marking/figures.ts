import { isDigitCode } from './words.ts'

/** A number read off a word: its value and where it ends. */
export interface Figures {
  readonly value: number
  readonly end: number
  /** Decimal signs met: more than one is no number. */
  readonly points: number
  /** Whether an O was read as 0 or an I as 1. */
  readonly isRepaired: boolean
  /** The value if a comma before three figures groups thousands: `3,000` is 3 as a decimal and 3000 grouped. */
  readonly grouped?: number
}

/** The number that starts at an offset: figures, a point or comma between them, and O or I among them for 0 or 1. */
export function figuresAt(text: string, from: number): Figures | undefined {
  let end = from
  let points = 0
  let decimals = 0
  let whole = 0
  let isRepaired = false
  let hasFigure = false
  for (; end < text.length; end++) {
    const code = text.charCodeAt(end)
    let figure = code - 48
    if (figure >= 0 && figure <= 9) hasFigure = true
    else if (isLookAlikeFigure(code) && (hasFigure || isDigitCode(text.charCodeAt(end + 1)))) {
      isRepaired = true
      figure = code === 79 ? 0 : 1
    } else if ((code === 46 || code === 44) && hasFigure && isFigureLike(text, end + 1)) {
      points++
      continue
    } else break
    whole = whole * 10 + figure
    if (points > 0) decimals++
  }
  if (!hasFigure) return undefined
  // Up to 15 figures and 22 decimals a quotient by a power of ten is the nearest double to what is written.
  const value =
    points > 1 || whole > Number.MAX_SAFE_INTEGER || decimals > 15 ? Number.NaN : whole / (tens[decimals] as number)
  const isGrouped = points === 1 && decimals === 3 && text.charCodeAt(end - 4) === 44 && whole >= 1000
  return isGrouped ? { value, end, points, isRepaired, grouped: whole } : { value, end, points, isRepaired }
}

const tens: readonly number[] = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15]

/**
 * A number all of whose signs are figures or look like them, S for 5, B for 8, Z for 2 and L for 1 among them, to the end of the word.
 * Only where at least two true figures stand.
 */
export function lookAlikeFigures(text: string, from: number): number | undefined {
  let value = 0
  let figures = 0
  for (let at = from; at < text.length; at++) {
    const code = text.charCodeAt(at)
    const figure = isDigitCode(code) ? code - 48 : lettersForFigures[text.charAt(at)]
    if (figure === undefined) return undefined
    if (isDigitCode(code)) figures++
    value = value * 10 + figure
  }
  const length = text.length - from
  return figures >= 2 && length >= 3 && length <= 5 ? value : undefined
}

const lettersForFigures: Readonly<Record<string, number>> = { O: 0, I: 1, L: 1, S: 5, B: 8, Z: 2 }

/** Whole figures only, exactly `count` of them. */
export function wholeAt(text: string, from: number, count: number): number | undefined {
  let value = 0
  let hasFigure = false
  for (let at = from; at < from + count; at++) {
    const code = text.charCodeAt(at)
    const figure = isDigitCode(code) ? code - 48 : code === 79 ? 0 : code === 73 ? 1 : -1
    if (figure < 0) return undefined
    hasFigure ||= isDigitCode(code)
    value = value * 10 + figure
  }
  return hasFigure ? value : undefined
}

export function hasLookAlike(text: string, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (isLookAlikeFigure(text.charCodeAt(at))) return true
  return false
}

/** Whether a word spells a text, with 0 for O and 1 for I let through. */
export function spells(text: string, from: number, literal: string): boolean {
  if (text.length < from + literal.length) return false
  for (let at = 0; at < literal.length; at++) {
    const code = text.charCodeAt(from + at)
    const wanted = literal.charCodeAt(at)
    if (code !== wanted && !(code === 48 && wanted === 79) && !(code === 49 && wanted === 73)) return false
  }
  return true
}

function isFigureLike(text: string, at: number): boolean {
  const code = text.charCodeAt(at)
  return isDigitCode(code) || isLookAlikeFigure(code)
}

function isLookAlikeFigure(code: number): boolean {
  return code === 79 || code === 73
}

/** Whether four figures can be the year of a cylinder: in 0599-06 and 9/0412 they are not. */
export function isStampedYear(figures: number): boolean {
  return figures >= 1900 && figures <= 2099
}
