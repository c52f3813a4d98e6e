import { requireKeys } from '../errors/index.ts'
import type { CautionId, SourceId } from '../references/index.ts'
import type { Card } from './card.ts'
import type { DrawnWords } from './exercises/drawn/drawn-text.table.ts'
import type { ExerciseTexts } from './exercises/exercise-text.table.ts'
import type { FigureTexts } from './figures/figure-text.table.ts'
import { cardTextsShape } from './language-shape.table.ts'
import type { PageTexts } from './page-text.table.ts'
import type { ReasonTexts } from './reason-in.ts'
import { requireCard } from './require-card.ts'
import { requireShape } from './require-shape.ts'
import type { RoundingWords } from './rounding-text.table.ts'

/** The texts of one formula card, each at the place that it has on the card. */
export interface CardTexts {
  readonly title: string
  /** The meaning of each symbol, constants and calls included. */
  readonly symbols: Readonly<Record<string, string>>
  readonly conditions: readonly string[]
  /** The common errors, in the order of the card. */
  readonly errors?: readonly string[]
  /** The place in the source, where the card names one. */
  readonly place?: string
}

/** Everything that a page in one language needs: an overlay of the English texts, by their ids. */
export interface CourseLanguage {
  /** BCP 47 tag, as it stands in the head of a chapter. */
  readonly tag: string
  readonly decimal: 'point' | 'comma'
  readonly page: PageTexts
  readonly roundings: RoundingWords
  readonly cards: Readonly<Record<string, CardTexts>>
  readonly cautions: Readonly<Record<CautionId, string>>
  /** Titles of sources that are no publications, such as common practice. */
  readonly sources: Readonly<Partial<Record<SourceId, string>>>
  readonly exercises: ExerciseTexts
  /** Questions that are drawn, with the findings of stamps. */
  readonly drawn: DrawnWords
  /** Reasons of verdicts and findings about logs. */
  readonly reasons: ReasonTexts
  /** Texts of ready-made charts, for their option `texts`. */
  readonly figures: FigureTexts
}

/**
 * A card with its texts in another language. What the language lacks stays as it is.
 *
 * @param card - the card
 * @param language - the overlay
 * @returns a card of the same formula
 * @throws LitrebarError `input` for what is no card, a language without cards or with a key that it cannot have, or texts of this card
 *   that are none
 */
export function cardIn<Symbol extends string>(
  card: Card<Symbol>,
  language: Pick<CourseLanguage, 'cards'>,
): Card<Symbol> {
  requireCard('card', card)
  requireKeys('language', language, languageKeys)
  requireShape('language.cards', language.cards, { each: 'any' })
  if (Object.hasOwn(language.cards, card.id))
    requireShape(`language.cards.${card.id}`, language.cards[card.id], cardTextsShape)
  return translatedCard(card, language)
}

const languageKeys: Readonly<Record<keyof CourseLanguage, boolean>> = {
  tag: false,
  decimal: false,
  page: false,
  roundings: false,
  cards: true,
  cautions: false,
  sources: false,
  exercises: false,
  drawn: false,
  reasons: false,
  figures: false,
}

/** The same of a card and a language that have been checked. */
export function translatedCard<Symbol extends string>(
  card: Card<Symbol>,
  language: Pick<CourseLanguage, 'cards'>,
): Card<Symbol> {
  const texts = Object.hasOwn(language.cards, card.id) ? language.cards[card.id] : undefined
  if (texts === undefined) return card
  const translated = <Row extends { readonly meaning: string }>(rows: Readonly<Record<string, Row>>): object =>
    Object.fromEntries(
      Object.entries(rows).map(([name, row]) => [name, { ...row, meaning: texts.symbols[name] ?? row.meaning }]),
    )
  return {
    ...card,
    title: texts.title,
    symbols: translated(card.symbols) as Card<Symbol>['symbols'],
    ...(card.callSymbols !== undefined && {
      callSymbols: translated(card.callSymbols) as NonNullable<Card['callSymbols']>,
    }),
    conditions: card.conditions.map((condition, at) => texts.conditions[at] ?? condition),
    ...(card.commonErrors !== undefined && {
      commonErrors: card.commonErrors.map((error, at) => ({ ...error, text: texts.errors?.[at] ?? error.text })),
    }),
    ...(card.place !== undefined && { place: texts.place ?? card.place }),
  }
}
