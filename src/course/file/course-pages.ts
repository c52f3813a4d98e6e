import { inputError, shown } from '../../errors/index.ts'
import { type Source, sourceOf, sources } from '../../references/index.ts'
import type { Card } from '../card.ts'
import { allCards } from '../cards/all-cards.ts'
import type { Chapter } from '../chapter.ts'
import { chapterHtml, documentHtml } from '../chapter-html.ts'
import type { SourceName } from '../cited.ts'
import { escaped } from '../escape.ts'
import { type CourseLanguage, translatedCard } from '../language.ts'
import { languageShape, pageStyleFields, pageTextsShape } from '../language-shape.table.ts'
import { type LiveScript, liveScriptShape } from '../live-data.ts'
import { mathElement, mathmlNotation } from '../mathml.ts'
import { equationOf } from '../notation.ts'
import { type PageTexts, pageTexts } from '../page-text.table.ts'
import { plainNotation } from '../plain.ts'
import { requireCard } from '../require-card.ts'
import { type Fields, requireShape } from '../require-shape.ts'
import { citationIn, completedSection, requireChapter, sourcesIn } from '../written-chapter.ts'
import type { ChapterFile } from './read-chapter.ts'

/** A chapter of a course with the name of its page, without suffix. */
export interface CoursePart extends Pick<ChapterFile, 'chapter' | 'style' | 'formulas'> {
  readonly name: string
}

/** What a course may be told. */
export interface CourseOptions {
  /** Cards of the author’s own. */
  readonly cards?: readonly Card[]
  /** Fixed texts in other words. */
  readonly texts?: Partial<PageTexts>
  /** The language of the pages; English without it. */
  readonly language?: CourseLanguage
  /** The script of `litrebar/live`, for chapters that let readers change numbers. */
  readonly live?: LiveScript
}

/**
 * A course as one linked set of pages: contents, chapters with what comes before and after, an index of formulas and one of sources.
 *
 * @param title - title of the course
 * @param parts - the chapters in their order
 * @param options - cards of the author’s own, language and fixed texts, the script of live pages
 * @returns the pages by file name
 * @throws LitrebarError `input` for what is no chapter, a name that stands twice, or options that are not known; as `chapterHtml`
 */
export function coursePages(
  title: string,
  parts: readonly CoursePart[],
  options: CourseOptions = {},
): ReadonlyMap<string, string> {
  requireShape('title', title, 'text')
  requireShape('parts', parts, [{ fields: partFields() }])
  requireShape('options', options, { fields: optionFields })
  requireNames(parts)
  for (const [at, card] of (options.cards ?? []).entries()) requireCard(`options.cards[${String(at)}]`, card)
  const { cards: _, ...style } = options
  const texts = { ...pageTexts, ...style.language?.page, ...style.texts }
  const language = parts[0]?.chapter.language ?? 'en'
  const pages = new Map<string, string>()
  const file = ({ name }: CoursePart): string => `${name}.html`
  const link = (part: CoursePart, section?: string): string =>
    `<a href="${escaped(file(part))}${section === undefined ? '' : `#${section}`}">${escaped(part.chapter.title)}</a>`
  const to = (part: CoursePart | undefined): object =>
    part === undefined ? {} : { address: file(part), title: part.chapter.title }
  parts.forEach((part, at) => {
    const [previous, next] = [parts[at - 1], parts[at + 1]]
    pages.set(
      file(part),
      chapterHtml(
        part.chapter,
        { ...style, ...part.style },
        {
          contents: { address: 'index.html', title: texts.contents },
          ...(previous !== undefined && { previous: to(previous) as { address: string; title: string } }),
          ...(next !== undefined && { next: to(next) as { address: string; title: string } }),
        },
      ),
    )
  })
  const contents = parts.map(
    (part) => `<li>${link(part)}<p>${escaped(part.chapter.lead)}</p>
<ul>${part.chapter.sections.map(({ id, title: name }) => `<li><a href="${escaped(file(part))}#${id}">${escaped(name)}</a></li>`).join('')}</ul></li>`,
  )
  pages.set(
    'index.html',
    documentHtml(
      { title, language },
      `<h1>${escaped(title)}</h1>
<nav aria-label="${escaped(texts.contents)}" class="contents"><ol>${contents.join('\n')}</ol></nav>
<p><a href="formulas.html">${escaped(texts.formulas)}</a> · <a href="sources.html">${escaped(texts.sources)}</a></p>`,
    ),
  )
  pages.set(
    'formulas.html',
    documentHtml({ title: texts.formulas, language }, formulaIndex(parts, indexedCards(options), texts, link)),
  )
  pages.set(
    'sources.html',
    documentHtml({ title: texts.sources, language }, sourceIndex(parts, texts, link, style.language)),
  )
  return pages
}

const optionFields: Fields = {
  'cards?': ['any'], // with their own check
  'texts?': pageTextsShape,
  'language?': languageShape,
  'live?': liveScriptShape,
}

function partFields(): Fields {
  const read = { 'problems?': 'any', 'claims?': 'any' } as const // of a chapter as it was read
  return { name: 'text', chapter: 'any', style: { fields: pageStyleFields() }, formulas: ['text'], ...read }
}

function requireNames(parts: readonly CoursePart[]): void {
  const names = new Set(['index', 'formulas', 'sources'])
  for (const { name, chapter } of parts) {
    requireChapter(chapter)
    if (name === '' || names.has(name))
      throw inputError('parts.name', shown(name), 'a name for every page, each once', 'Rename this chapter.')
    names.add(name)
  }
}

function indexedCards({ cards = [], language }: CourseOptions): readonly Card[] {
  const all = [...allCards(), ...cards]
  return language === undefined ? all : all.map((card) => translatedCard(card, language))
}

type Texts = PageTexts
type Link = (part: CoursePart) => string

function formulaIndex(parts: readonly CoursePart[], cards: readonly Card[], texts: Texts, link: Link): string {
  const rows = cards.flatMap((card) => {
    const users = parts.filter(({ formulas }) => formulas.includes(card.id))
    const expression = card.forms[card.result]
    if (users.length === 0 || expression === undefined) return []
    const symbols = { ...card.symbols, ...card.callSymbols }
    const alternative = equationOf(card.result, expression, symbols, plainNotation)
    return [
      `<section id="${escaped(card.id)}"><h2>${escaped(card.title)}</h2>
${mathElement(equationOf(card.result, expression, symbols, mathmlNotation), alternative)}
<p class="notes">${Object.values(card.symbols)
        .map(
          ({ letter, subscript, meaning }) =>
            `<i>${escaped(letter)}</i>${subscript === undefined ? '' : `<sub>${escaped(subscript)}</sub>`} ${escaped(meaning)}`,
        )
        .join('; ')}.</p>
<p>${escaped(texts.usedIn)} ${users.map((part) => link(part)).join(', ')}</p></section>`,
    ]
  })
  return `<h1>${escaped(texts.formulas)}</h1>\n${rows.join('\n')}\n<p><a href="index.html">${escaped(texts.contents)}</a></p>`
}

function sourceIndex(parts: readonly CoursePart[], texts: Texts, link: Link, language?: CourseLanguage): string {
  const users = new Map<SourceName, CoursePart[]>()
  for (const part of parts) {
    const whole: Chapter = { ...part.chapter, sections: part.chapter.sections.map(completedSection) }
    for (const id of sourcesIn(whole)) users.set(id, [...(users.get(id) ?? []), part])
  }
  const row = (id: SourceName): Source =>
    Object.hasOwn(sources, id)
      ? sourceOf(id as keyof typeof sources)
      : (users.get(id)?.flatMap(({ chapter }) => chapter.ownSources?.[id as `own-${string}`] ?? [])[0] as Source)
  const lines = [...users.keys()]
    .map((id) => ({ text: citationIn(language, id, row(id)), id }))
    .sort((a, b) => (a.text < b.text ? -1 : 1))
    .map(
      ({ text, id }) =>
        `<li>${escaped(text)} ${escaped(texts.usedIn)} ${(users.get(id) ?? []).map((part) => link(part)).join(', ')}</li>`,
    )
  return `<h1>${escaped(texts.sources)}</h1>\n<ul>${lines.join('\n')}</ul>\n<p><a href="index.html">${escaped(texts.contents)}</a></p>`
}
