import type { Finding } from './finding.ts'
import type { StampField } from './stamp.ts'

// Zero-width characters, soft hyphens and accents typed as characters of their own: nothing of them can be seen, so nothing of them is
// stamped. They are taken out before anything is read, and the places are counted back afterwards.

const invisible = /\p{Mn}|[\u00ad\u200b-\u200d\u2060\ufeff]/u

/** Whether a text holds characters that cannot be seen. */
export function hasInvisible(text: string): boolean {
  // The lowest of them is the soft hyphen: most shoulders never come to the expression.
  for (let at = 0; at < text.length; at++) if (text.charCodeAt(at) >= 0xad) return invisible.test(text)
  return false
}

/** A text without them, and where each of its characters stood. */
export interface Visible {
  readonly text: string
  readonly places: readonly number[]
}

/** Takes them out; an accent joins the letter before it. */
export function withoutInvisible(text: string): Visible {
  let visible = ''
  const places: number[] = []
  for (let at = 0; at < text.length; at++) {
    const character = text.charAt(at)
    if (!invisible.test(character)) {
      visible += character
      places.push(at)
      continue
    }
    const joined = (visible.at(-1) ?? '') + character
    const composed = joined.normalize('NFC')
    if (visible !== '' && composed.length === 1) visible = visible.slice(0, -1) + composed
  }
  places.push(text.length)
  return { text: visible, places }
}

/** Moves the places of findings and fields back to the text as it was given. */
export function moveBack(
  given: string,
  { text, places }: Visible,
  marks: { fields: StampField[]; findings: Finding[] },
): void {
  const from = linesOf(text)
  const to = linesOf(given)
  const move = <
    Placed extends { readonly line: number; readonly start: number; readonly end: number; readonly text: string },
  >(
    placed: Placed,
  ): Placed => {
    const lineStart = from[placed.line]?.start ?? 0
    const target = to[placed.line] ?? { start: 0, end: given.length }
    const start = Math.max(0, (places[lineStart + placed.start] ?? given.length) - target.start)
    const last =
      placed.end === placed.start ? start : (places[lineStart + placed.end - 1] ?? given.length - 1) - target.start + 1
    const end = Math.min(Math.max(start, last), target.end - target.start)
    const inside = Math.min(start, target.end - target.start)
    return {
      ...placed,
      start: inside,
      end: Math.max(inside, end),
      text: given.slice(target.start + inside, target.start + Math.max(inside, end)),
    }
  }
  marks.fields.forEach((field, index) => {
    marks.fields[index] = move(field)
  })
  marks.findings.forEach((finding, index) => {
    marks.findings[index] = move(finding)
  })
}

function linesOf(text: string): { readonly start: number; readonly end: number }[] {
  const lines: { start: number; end: number }[] = []
  let start = 0
  for (const match of text.matchAll(/\r\n|[\n\r\u2028\u2029]/gu)) {
    lines.push({ start, end: match.index })
    start = match.index + match[0].length
  }
  lines.push({ start, end: text.length })
  return lines
}
