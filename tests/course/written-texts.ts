import {
  type Block,
  type Chapter,
  chapterHtml,
  chapterLatex,
  chapterMarkdown,
  chartSvg,
  type ExerciseItem,
  equationOf,
  mathmlNotation,
  moodleXml,
  qtiItem,
  tableCsv,
} from '../../src/course/index.ts'

/** A document with given texts in it, and where a reader finds them again. */
export interface Written {
  readonly document: string
  readonly places: readonly Place[]
}

/** Texts that stand in all elements of a selector, or in one of their attributes, in order. */
export interface Place {
  readonly selector: string
  readonly attribute?: string
  readonly texts: readonly string[]
}

/** A writer: how many texts a document of it takes, and the document. */
export interface TextWriter {
  readonly takes: number
  readonly type: 'text/html' | 'image/svg+xml' | 'application/xml'
  readonly write: (texts: readonly string[]) => Written
}

const chapterOf = (title: string, lead: string, blocks: readonly Block[]): Chapter => ({
  title,
  lead,
  language: 'en',
  sections: [{ id: 's', title, blocks }],
})

const share = (texts: readonly string[], parts: number): string[][] =>
  Array.from({ length: parts }, (_, part) => texts.filter((_, at) => at % parts === part))

const tableOf = (cells: readonly string[]): Block => ({
  kind: 'table',
  table: { caption: 'c', columns: [{ heading: 'h', align: 'text' }], rows: cells.map((cell) => [cell]), notes: [] },
})

function html(texts: readonly string[]): Written {
  const [title = '', ...others] = texts
  const [paragraphs = [], items = [], cells = [], codes = [], pictures = [], links = [], headings = []] = share(
    others,
    7,
  )
  const text = (of: string) => [{ kind: 'text' as const, text: of }]
  const document = chapterHtml(
    chapterOf(title, title, [
      ...paragraphs.map((of) => ({ kind: 'paragraph' as const, text: text(of) })),
      { kind: 'list', ordered: false, items: items.map((of) => [{ kind: 'heading' as const, text: text(of) }]) },
      tableOf(cells),
      ...codes.map((of) => ({ kind: 'code' as const, text: of })),
      ...pictures.map((alternative) => ({
        kind: 'answer' as const,
        text: [{ kind: 'image' as const, address: 'a.png', alternative }],
      })),
      ...links.map((of) => ({
        kind: 'quote' as const,
        blocks: [
          {
            kind: 'answer' as const,
            text: [{ kind: 'link' as const, address: 'https://a.example', content: text(of) }],
          },
        ],
      })),
      ...headings.map((of) => ({ kind: 'heading' as const, text: text(of) })),
    ]),
  )
  return {
    document,
    places: [
      { selector: 'title, h1, p.lead, h2', texts: [title, title, title, title] },
      { selector: 'section > p:not(.answer)', texts: paragraphs },
      { selector: 'section > h3', texts: headings },
      { selector: 'li h3', texts: items },
      { selector: 'tbody > tr > *', texts: cells },
      { selector: 'pre code', texts: codes },
      { selector: 'img', attribute: 'alt', texts: pictures },
      { selector: 'blockquote a', texts: links },
    ],
  }
}

function svg([title = '', description = '', x = '', y = '']: readonly string[]): Written {
  const document = chartSvg({
    id: 'c',
    title,
    description,
    x: { label: x, unit: '' },
    y: { label: y, unit: '' },
    series: [{ name: 'n', x: [0, 1], y: [0, 1] }],
  })
  return {
    document,
    places: [
      { selector: 'title', texts: [title] },
      { selector: 'desc', texts: [description] },
      { selector: 'text[transform]', texts: [y] },
      { selector: 'text[y="380"]', texts: [x] },
    ],
  }
}

function mathml(texts: readonly string[]): Written {
  const equations = texts.map((letter) => equationOf('a', 'b', { b: { letter } }, mathmlNotation))
  return {
    document: `<math xmlns="http://www.w3.org/1998/Math/MathML">${equations.map((e) => `<mrow class="e">${e}</mrow>`).join('')}</math>`,
    places: [{ selector: 'mrow.e mi:last-child', texts }],
  }
}

function itemOf([text = '', line = '', right = '', wrong = '', working = '']: readonly string[]): ExerciseItem {
  return {
    exercise: 'strange',
    subject: 'gas',
    level: 1,
    seed: 1,
    kind: 'judgement',
    text,
    exhibit: [line],
    choices: [
      { id: 'A', text: right, right: true },
      { id: 'B', text: wrong, right: false },
    ],
    working: [working],
    cautions: [],
    sources: [],
  }
}

function moodle(texts: readonly string[]): Written {
  const item = itemOf(texts)
  return {
    document: moodleXml([item]),
    places: [
      { selector: 'questiontext > text', texts: [[item.text, ...(item.exhibit ?? [])].join('\n')] },
      { selector: 'answer > text', texts: texts.slice(2, 4) },
      { selector: 'generalfeedback > text', texts: texts.slice(4) },
    ],
  }
}

function qti(texts: readonly string[]): Written {
  return {
    document: qtiItem(itemOf(texts), '3.0'),
    places: [
      { selector: 'qti-item-body > p', texts: texts.slice(0, 1) },
      { selector: 'pre', texts: texts.slice(1, 2) },
      { selector: 'qti-simple-choice', texts: texts.slice(2, 4) },
    ],
  }
}

/** What a browser parses. */
export const browserWriters: Readonly<Record<'html' | 'svg' | 'mathml' | 'moodle' | 'qti', TextWriter>> = {
  html: { takes: 701, type: 'text/html', write: html },
  svg: { takes: 4, type: 'image/svg+xml', write: svg },
  mathml: { takes: 500, type: 'application/xml', write: mathml },
  moodle: { takes: 5, type: 'application/xml', write: moodle },
  qti: { takes: 4, type: 'application/xml', write: qti },
}

/** Each text as a paragraph and as the only cell of a row, between marks. */
export function asBlocks(texts: readonly string[]): Block[] {
  const [paragraphs = [], cells = []] = share(texts, 2)
  return [...paragraphs.map((of) => ({ kind: 'paragraph' as const, text: of })), tableOf(cells)]
}

export const markdownOf = (texts: readonly string[]): string => chapterMarkdown(chapterOf('t', 'l', asBlocks(texts)))

export const latexOf = (texts: readonly string[]): string => chapterLatex(chapterOf('t', 'l', asBlocks(texts)))

export const csvOf = (texts: readonly string[]): string =>
  tableCsv({
    caption: '',
    columns: [{ heading: 'h', align: 'text' }],
    rows: texts.map((text) => [text]),
    notes: [],
  })
