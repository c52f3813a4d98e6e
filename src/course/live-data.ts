import { LitrebarError } from '../errors/index.ts'
import type { Card } from './card.ts'
import type { Block, Section } from './chapter.ts'
import { type PageTexts, pageTexts } from './page-text.table.ts'
import type { Recipe } from './recipe.ts'
import type { RoundingWords } from './rounding-text.table.ts'
import type { Page } from './written-chapter.ts'

/** A script as it stands in a page, with the hash by which the content policy of the page lets it in. */
export interface LiveScript {
  readonly text: string
  /** `sha256-` and the hash of the text in base 64. */
  readonly hash: string
}

/** A script, as far as its shape tells. */
export const liveScriptShape = { fields: { text: 'text', hash: 'text' } } as const

/** What the script of a live page is told, as JSON. Each recipe names its card by id. */
export interface LiveData {
  readonly decimal: 'point' | 'comma'
  /** The texts that are not as in English. */
  readonly texts: Partial<PageTexts>
  readonly roundings?: RoundingWords
  readonly cards: Readonly<Record<string, Card>>
  readonly sections: readonly {
    readonly id: string
    readonly blocks: readonly { readonly target: string; readonly recipe: Recipe }[]
  }[]
}

/** A section with a working that readers may change, and its blocks that follow. */
export interface LiveSection {
  readonly id: string
  readonly blocks: readonly { readonly block: Block; readonly target: string; readonly recipe: Recipe }[]
}

/**
 * The sections of a chapter that hold a live working.
 *
 * @param sections - the sections as written
 * @returns their blocks with recipes, each with an id of the page
 */
export function liveSectionsOf(sections: readonly Section[]): readonly LiveSection[] {
  let count = 0
  return sections.flatMap(({ id, blocks }): LiveSection[] => {
    const made = blocks.flatMap((block) => {
      const recipe: Recipe | undefined = 'recipe' in block ? block.recipe : undefined
      return recipe === undefined ? [] : [{ block, recipe }]
    })
    if (!made.some(({ recipe }) => recipe.kind === 'solution' && recipe.live.length > 0)) return []
    return [{ id, blocks: made.map((row) => ({ ...row, target: `live-${String(++count)}` })) }]
  })
}

/** What only a reader of documentation or an exact conversion needs. */
const leftOut = new Set(['definition', 'spellings', 'documents', 'parameter', 'core', 'besides', 'calls'])

/**
 * The data of a live page, fit to stand inside a script element.
 *
 * @param sections - the live sections
 * @param page - the words of the page
 * @returns JSON without a character that could end the element
 */
export function liveDataText(sections: readonly LiveSection[], page: Page): string {
  const asks = sections.flatMap(({ blocks }) => blocks.flatMap(({ recipe }) => recipe.asks))
  const cards = Object.fromEntries(asks.map(({ card }) => [card.id, card]))
  const texts = Object.entries(page.texts).filter(([id, text]) => pageTexts[id as keyof PageTexts] !== text)
  const data = {
    decimal: page.style.decimal ?? 'point',
    texts: Object.fromEntries(texts),
    ...(page.roundings !== undefined && { roundings: page.roundings }),
    cards,
    sections: sections.map(({ id, blocks }) => ({
      id,
      blocks: blocks.map(({ target, recipe }) => ({ target, recipe })),
    })),
  }
  const text = JSON.stringify(data, (key, value: unknown) => {
    if (leftOut.has(key)) return undefined
    return key === 'card' ? (value as Card).id : value
  })
  // "<" begins every mark that a script element could end or be changed by
  return text.replaceAll('<', '\\u003c')
}

/**
 * Refuses a script that would end its own element or that no policy could name.
 *
 * @param script - text and hash
 * @throws LitrebarError `input` for either
 */
export function requireScript({ text, hash }: LiveScript): void {
  if (typeof hash !== 'string' || !/^sha256-[A-Za-z0-9+/]{43}=$/.test(hash))
    refuse('live.hash', typeof hash === 'string' ? JSON.stringify(hash.slice(0, 60)) : typeof hash, 'sha256-…=')
  // a carriage return would be read as a line feed, and the hash would no longer fit
  if (typeof text !== 'string' || text === '' || /<\/script|<!--|\r/i.test(text))
    refuse('live.text', typeof text === 'string' ? 'a text that a page cannot hold' : typeof text, 'a script')
}

function refuse(argument: string, value: string, expected: string): never {
  throw new LitrebarError({ code: 'input', argument, value, expected, hint: 'Take liveScript of litrebar/live.' })
}
