import { isDigitCode } from './words.ts'

/** A number read off a word: its value and where it ends. */
export interface Figures {
  readonly value: number
  readonly end: number
  /** Decimal signs met: more than one is no number. */
  readonly points: number
  /** Whether an O was read as 0 or an I as 1. */
  readonly isRepaired: boolean
}

/** The number that starts at an offset: figures, a point or comma between them, and O or I among them for 0 or 1. */
export function figuresAt(text: string, from: number): Figures | undefined {
  let end = from
  let points = 0
  let isRepaired = false
  let hasFigure = false
  for (; end < text.length; end++) {
    const code = text.charCodeAt(end)
    if (isDigitCode(code)) hasFigure = true
    else if (isLookAlikeFigure(code) && (hasFigure || isDigitCode(text.charCodeAt(end + 1)))) isRepaired = true
    else if ((code === 46 || code === 44) && hasFigure && isFigureLike(text, end + 1)) points++
    else break
  }
  if (!hasFigure) return undefined
  const value = points > 1 ? Number.NaN : Number(plain(text.slice(from, end)))
  return { value, end, points, isRepaired }
}

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

function plain(figures: string): string {
  let text = ''
  for (const character of figures) {
    text += character === 'O' ? '0' : character === 'I' ? '1' : character === ',' ? '.' : character
  }
  return text
}
