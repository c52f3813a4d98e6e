import { LitrebarError, requireWord } from '../errors/index.ts'
import { type Caution, cautions, type Source, sources } from '../references/index.ts'
import type { NumberStyle } from '../units/index.ts'
import type { Block, Chapter, Inline, Section, Text } from './chapter.ts'
import { chapterShape } from './chapter-shape.table.ts'
import { citationOf } from './citation.ts'
import type { CautionName, CitedSource, SourceName } from './cited.ts'
import type { CourseLanguage } from './language.ts'
import { pageStyleFields } from './language-shape.table.ts'
import { type PageTexts, pageTexts } from './page-text.table.ts'
import { type Fields, requireShape } from './require-shape.ts'
import type { RoundingWords } from './rounding-text.table.ts'

/** How numbers and fixed texts of a page are written. */
export interface PageStyle extends NumberStyle {
  /** Fixed texts in another language or other words; what is left out stays English. */
  readonly texts?: Partial<PageTexts>
  /** The language of the page, with its decimal sign; English without it. */
  readonly language?: CourseLanguage
}

/** What the writers of blocks may look up. */
export interface Page {
  readonly style: NumberStyle
  readonly texts: PageTexts
  /** The sentence of a caution. */
  readonly cautionText: (id: CautionName) => string
  /** A source as a reader looks it up. */
  readonly citation: (source: SourceName | CitedSource) => string
  /** The caution that belongs to every page. */
  readonly always: string
  readonly roundings?: RoundingWords
  /** The ids of blocks that a script may make again. */
  readonly targets?: ReadonlyMap<Block, string>
}

/** One way of writing a chapter: a function for every kind of block and of running text. */
export interface Writer {
  readonly block: { readonly [Kind in Block['kind']]: (block: Extract<Block, { kind: Kind }>, page: Page) => string }
  readonly inline: { readonly [Kind in Inline['kind']]: (piece: Extract<Inline, { kind: Kind }>, page: Page) => string }
}

/**
 * What a page of a chapter looks up: its own sources and cautions beside those of the library.
 *
 * @param chapter - the chapter as data
 * @param style - decimal sign, grouping, fixed texts
 * @returns the look-ups
 */
export function pageOf(chapter: Chapter, style: PageStyle): Page {
  const { texts, language, ...numbers } = style
  const knownCautions: Readonly<Record<string, Caution>> = { ...cautions, ...chapter.ownCautions }
  const knownSources: Readonly<Record<string, Source>> = { ...sources, ...chapter.ownSources }
  const cautionText = (id: CautionName): string => {
    requireWord('caution', id, Object.keys(knownCautions))
    const translated: Readonly<Record<string, string>> = language?.cautions ?? {}
    return translated[id] ?? (knownCautions[id] as Caution).text
  }
  return {
    style: { ...(language !== undefined && { decimal: language.decimal }), ...numbers },
    texts: { ...pageTexts, ...language?.page, ...texts },
    cautionText,
    always: cautionText('always'),
    ...(language !== undefined && { roundings: language.roundings }),
    citation: (source) => {
      const { id, place } = typeof source === 'string' ? { id: source, place: undefined } : source
      requireWord('source', id, Object.keys(knownSources))
      return citationIn(language, id, knownSources[id] as Source, place)
    },
  }
}

/** A source as one line; what is no publication has its title in the language of the page. */
export function citationIn(
  language: Pick<CourseLanguage, 'sources'> | undefined,
  id: SourceName,
  source: Source,
  place?: string,
): string {
  const titles: Readonly<Record<string, string>> = language?.sources ?? {}
  return citationOf({ ...source, title: titles[id] ?? source.title }, place)
}

/** Blocks in a writing. Unknown kinds are refused, with their place. */
export function writtenBlocks(blocks: readonly Block[], writer: Writer, page: Page, at: string): string[] {
  return blocks.map((block, index) => {
    requireWord(`${at}[${String(index)}].kind`, block.kind, Object.keys(writer.block) as Block['kind'][])
    const write = writer.block[block.kind] as (block: Block, page: Page) => string
    return write(block, page)
  })
}

/** Running text in a writing. */
export function writtenText(text: Text, writer: Writer, page: Page): string {
  const pieces: readonly Inline[] = typeof text === 'string' ? [{ kind: 'text', text }] : text
  return pieces
    .map((piece) => {
      requireWord('text piece', piece.kind, Object.keys(writer.inline) as Inline['kind'][])
      return (writer.inline[piece.kind] as (piece: Inline, page: Page) => string)(piece, page)
    })
    .join('')
}

/** What a block carries of its own: results keep their cautions and sources wherever they are shown. */
function carried(block: Block): {
  readonly cautions: readonly CautionName[]
  readonly sources: readonly (SourceName | CitedSource)[]
} {
  switch (block.kind) {
    case 'solution':
      return { cautions: block.solution.cautions, sources: block.solution.citations ?? block.solution.sources }
    case 'table':
      return { cautions: block.table.cautions ?? [], sources: block.table.sources ?? [] }
    case 'chart':
      return { cautions: block.chart.cautions ?? [], sources: block.chart.sources ?? [] }
    case 'cautions':
      return { cautions: block.cautions, sources: [] }
    case 'sources':
      return { cautions: [], sources: block.sources }
    default:
      return { cautions: [], sources: [] }
  }
}

function idOf(source: SourceName | CitedSource): SourceName {
  return typeof source === 'string' ? source : source.id
}

/**
 * A section in which every result has its cautions and sources beside it: those that the author states stay where they stand,
 * the others come before the first block that carries them.
 *
 * @param section - the section as written
 * @returns the same with the missing blocks put in
 */
export function completedSection(section: Section): Section {
  const shown = new Set<string>(
    section.blocks.flatMap((block) => (block.kind === 'cautions' || block.kind === 'sources' ? idsOf(block) : [])),
  )
  const blocks = section.blocks.flatMap((block): Block[] => {
    if (block.kind === 'cautions' || block.kind === 'sources') return [block]
    const missing = carried(block)
    const newCautions = missing.cautions.filter((id) => !shown.has(`caution ${id}`))
    const newSources = missing.sources.filter((source) => !shown.has(`source ${idOf(source)}`))
    for (const id of newCautions) shown.add(`caution ${id}`)
    for (const source of newSources) shown.add(`source ${idOf(source)}`)
    return [
      ...(newCautions.length > 0 ? [{ kind: 'cautions' as const, cautions: newCautions }] : []),
      ...(newSources.length > 0 ? [{ kind: 'sources' as const, sources: newSources }] : []),
      block,
    ]
  })
  return { ...section, blocks }
}

function idsOf(block: Block): string[] {
  const { cautions: ids, sources: cited } = carried(block)
  return [...ids.map((id) => `caution ${id}`), ...cited.map((source) => `source ${idOf(source)}`)]
}

/**
 * The sources of a chapter, each once, in the order of the alphabet.
 *
 * @param chapter - the chapter
 * @returns ids
 * @throws LitrebarError `input` for what is no chapter
 * @example
 * sourcesOf({ title: 'Depth', lead: '', language: 'en', sections: [{ id: 'a', title: 'A', blocks: [{ kind: 'sources', sources: ['nist-sp-811'] }] }] }) // => ['nist-sp-811']
 */
export function sourcesOf(chapter: Chapter): SourceName[] {
  requireChapter(chapter)
  return sourcesIn(chapter)
}

/** The sources of what is known to be a chapter. */
export function sourcesIn(chapter: Chapter): SourceName[] {
  const all = chapter.sections.flatMap(({ blocks }) => blocks.flatMap((block) => carried(block).sources.map(idOf)))
  return [...new Set(all)].sort()
}

/**
 * Refuses a chapter that no writer can write.
 *
 * @param chapter - the chapter as data, perhaps from a file
 * @throws LitrebarError `input` for a missing text, a doubled or unfit id, an own id that does not begin with `own-`
 */
export function requireChapter(chapter: Chapter): void {
  requireShape('chapter', chapter, chapterShape)
  if (!/^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(chapter.language))
    refuse('chapter.language', JSON.stringify(chapter.language), 'a language tag such as en or de', 'Use a BCP 47 tag.')
  const ids = new Set<string>()
  chapter.sections.forEach(({ id, blocks }, index) => {
    const inside = blocks.flatMap((block) => (block.kind === 'chart' ? [block.chart.id] : []))
    for (const one of [id, ...inside]) {
      if (ids.has(one))
        refuse(`chapter.sections[${String(index)}]`, `the id ${one} again`, 'every id once', 'Rename one of the two.')
      ids.add(one)
    }
  })
  for (const own of [...Object.keys(chapter.ownSources ?? {}), ...Object.keys(chapter.ownCautions ?? {})]) {
    if (!own.startsWith('own-')) refuse('chapter', own, 'an id that begins with own-', `Call it own-${own}.`)
  }
}

/** Refuses a style with what no writer reads; `more` is what one of them reads besides. */
export function requireStyle(style: PageStyle, more: Fields = {}): void {
  requireShape('style', style, { fields: { ...pageStyleFields(), ...more } })
}

function refuse(argument: string, value: string, expected: string, hint: string): never {
  throw new LitrebarError({ code: 'input', argument, value, expected, hint })
}

/** A link may lead to a page, a mail address or a place in the page; anything else could run when it is followed. */
export function requireAddress(address: string): string {
  const scheme = /^\s*([a-z][a-z0-9+.-]*):/i.exec(address)?.[1]?.toLowerCase()
  if (scheme === undefined || ['http', 'https', 'mailto'].includes(scheme)) return address
  return refuse('link', JSON.stringify(address.slice(0, 60)), 'http, https, mailto or a path', 'Link to a page.')
}
