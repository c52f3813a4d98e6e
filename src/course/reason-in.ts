import { reasonsShape } from './language-shape.table.ts'
import { requireShape } from './require-shape.ts'
import { numberStyleFields } from './shapes.table.ts'

/** A sentence of another language with the English one that it stands for; `{a}` is a place that is filled in, the same in both. */
export type TranslatedReason = readonly [english: string, translated: string]

/** What reasons are put into another language with. */
export interface ReasonTexts {
  readonly sentences: readonly TranslatedReason[]
  /** Words that stand in the places. */
  readonly parts: Readonly<Record<string, string>>
}

/** The part of a language that reasons need. */
export interface ReasonLanguage {
  readonly reasons: ReasonTexts
  readonly decimal: 'point' | 'comma'
}

/**
 * A reason of a verdict, or a finding about a log, in another language. Its code and its source stay as they are.
 *
 * @param reason - as the verdict gives it
 * @param language - the overlay
 * @returns the text; what the language lacks stays English
 * @throws LitrebarError `input` for a reason whose text is none
 * @example
 * reasonIn({ text: 'Odour: none.' }, { decimal: 'comma', reasons: { sentences: [['Odour: {a}.', 'Geruch: {a}.']], parts: { none: 'keiner' } } }) // => 'Geruch: keiner.'
 */
export function reasonIn(reason: { readonly text: string }, language: ReasonLanguage): string {
  requireShape('reason', reason, { fields: { 'code?': 'text', text: 'text', 'source?': 'text' } })
  const { decimal, reasons } = Object(language) as Partial<ReasonLanguage>
  requireShape('language.decimal', decimal, numberStyleFields['decimal?'])
  requireShape('language.reasons', reasons, reasonsShape)
  return translated(reason.text, language) ?? ofOnePoint(reason.text, language) ?? reason.text
}

/** `70 bar: …`: in a plan of tests the name of the point stands before the reason. */
function ofOnePoint(text: string, language: ReasonLanguage): string | undefined {
  const at = text.indexOf(': ')
  const rest = at < 0 ? undefined : translated(text.slice(at + 2), language)
  return rest === undefined ? undefined : `${text.slice(0, at)}: ${rest}`
}

function translated(text: string, language: ReasonLanguage): string | undefined {
  let best: { readonly into: string; readonly places: readonly string[]; readonly literals: number } | undefined
  for (const [english = '', into = ''] of language.reasons.sentences) {
    const pieces = english.split(/\{\w+\}/)
    const places = placesOf(text, pieces)
    // Of several that fit, the one that says most itself.
    const literals = pieces.join('').length
    if (places !== undefined && literals > (best?.literals ?? 0)) best = { into, places, literals }
  }
  if (best === undefined) return undefined
  const { into, places } = best
  return into.replaceAll(/\{(\w)\}/g, (whole, name: string) => {
    const place = places[name.charCodeAt(0) - 97]
    return place === undefined ? whole : partIn(place, language)
  })
}

/** What stands in the places between the pieces; nothing where the pieces do not fit. */
function placesOf(text: string, pieces: readonly string[]): readonly string[] | undefined {
  const [first = '', ...others] = pieces
  if (others.length === 0) return text === first ? [] : undefined
  if (!text.startsWith(first)) return undefined
  const places: string[] = []
  let at = first.length
  for (const [index, piece] of others.entries()) {
    const isLast = index === others.length - 1
    const end = isLast ? text.length - piece.length : text.indexOf(piece, at + 1)
    if (end <= at || (isLast && !text.endsWith(piece))) return undefined
    places.push(text.slice(at, end))
    at = end + piece.length
  }
  return places
}

const figure = /^[−-]?\d+(?:\.\d+)?(?: \S+)*$/

function partIn(part: string, language: ReasonLanguage): string {
  const { reasons, decimal } = language
  if (Object.hasOwn(reasons.parts, part)) return reasons.parts[part] as string
  const phrase = part.includes(' ') ? translated(part, language) : undefined
  if (phrase !== undefined) return phrase
  return decimal === 'comma' && figure.test(part) ? part.replaceAll(/(\d)\.(\d)/g, '$1,$2') : part
}
