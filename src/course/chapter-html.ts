import { requireKeys } from '../errors/index.ts'
import { cautionOf } from '../references/index.ts'
import type { Chapter } from './chapter.ts'
import { chapterStyle, chapterStyleHash } from './chapter-style.ts'
import { chartSvg } from './chart.ts'
import { chartTable } from './chart-table.ts'
import { escaped } from './escape.ts'
import { mathElement, mathmlLines, mathmlNotation } from './mathml.ts'
import { equationOf } from './notation.ts'
import { plainNotation } from './plain.ts'
import { headGroups, type Table } from './table.ts'
import type { WorkedSolution } from './worked-solution.ts'
import {
  completedSection,
  type Page,
  type PageStyle,
  pageOf,
  requireAddress,
  requireChapter,
  sourcesOf,
  valueText,
  type Writer,
  writtenBlocks,
  writtenText,
} from './written-chapter.ts'

/** Where a page stands among others. Addresses are relative: the set works from disk. */
export interface PageLinks {
  readonly contents?: { readonly address: string; readonly title: string }
  readonly previous?: { readonly address: string; readonly title: string }
  readonly next?: { readonly address: string; readonly title: string }
}

/**
 * A chapter as one self-contained HTML page: MathML, SVG, one style sheet, no script. Opens from disk and prints.
 * Every result shows its cautions and sources: those the section states stay where they stand, the others are put beside the result.
 *
 * @param chapter - the chapter as data
 * @param style - decimal sign, grouping, fixed texts
 * @param links - the pages before, after and above
 * @returns the document
 * @throws LitrebarError `input` for a kind of block, a caution or a source that is not known, or an id that cannot be linked to
 */
export function chapterHtml(chapter: Chapter, style: PageStyle = {}, links: PageLinks = {}): string {
  requireChapter(chapter)
  requireKeys('links', links, { contents: false, previous: false, next: false })
  const page = pageOf(chapter, style)
  const sections = chapter.sections.map((section, index) => {
    const { id, title, blocks } = completedSection(section)
    return `<section id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${escaped(title)}</h2>
${writtenBlocks(blocks, htmlWriter, page, `chapter.sections[${String(index)}].blocks`).join('\n')}
</section>`
  })
  const sources = sourcesOf(chapter).map((id) => `<li>${escaped(page.citation(id))}</li>`)
  return documentHtml(
    chapter,
    `<h1>${escaped(chapter.title)}</h1>
<p class="lead">${escaped(chapter.lead)}</p>
${sections.join('\n')}
<footer>
${sources.length === 0 ? '' : `<h2>${escaped(page.texts.sources)}</h2>\n<ul>${sources.join('')}</ul>`}
<p>${escaped(cautionOf('always').text)}</p>
${navigation(links, page)}
</footer>`,
  )
}

/**
 * A page of the same look and policy around any content.
 *
 * @param head - title and language
 * @param body - markup of the main part, escaped by the caller
 * @returns the document
 */
export function documentHtml(head: { readonly title: string; readonly language: string }, body: string): string {
  const images = body.includes('<img ') ? `; img-src data:` : ''
  return `<!DOCTYPE html>
<html lang="${escaped(head.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '${chapterStyleHash}'${images}">
<title>${escaped(head.title)}</title>
<style>${chapterStyle}</style>
</head>
<body>
<main>
${body}
</main>
</body>
</html>
`
}

function navigation({ contents, previous, next }: PageLinks, { texts }: Page): string {
  const link = (word: string, to: { readonly address: string; readonly title: string } | undefined): string[] =>
    to === undefined
      ? []
      : [`<span>${escaped(word)} <a href="${escaped(requireAddress(to.address))}">${escaped(to.title)}</a></span>`]
  const all = [...link(texts.previous, previous), ...link('', contents), ...link(texts.next, next)]
  return all.length === 0 ? '' : `<nav aria-label="${escaped(texts.contents)}">${all.join(' ')}</nav>`
}

const htmlWriter: Writer = {
  block: {
    answer: ({ text }, page) => `<p class="answer">${writtenText(text, htmlWriter, page)}</p>`,
    paragraph: ({ text }, page) => `<p>${writtenText(text, htmlWriter, page)}</p>`,
    heading: ({ text }, page) => `<h3>${writtenText(text, htmlWriter, page)}</h3>`,
    list: ({ ordered, items }, page) => {
      const tag = ordered ? 'ol' : 'ul'
      const rows = items.map((blocks) => {
        const [only] = blocks
        const inner =
          blocks.length === 1 && only?.kind === 'paragraph'
            ? writtenText(only.text, htmlWriter, page)
            : writtenBlocks(blocks, htmlWriter, page, 'list').join('\n')
        return `<li>${inner}</li>`
      })
      return `<${tag}>${rows.join('\n')}</${tag}>`
    },
    quote: ({ blocks }, page) =>
      `<blockquote>${writtenBlocks(blocks, htmlWriter, page, 'quote').join('\n')}</blockquote>`,
    code: ({ text }) => `<pre tabindex="0"><code>${escaped(text)}</code></pre>`,
    chart: ({ chart }, { style, texts }) => `<figure>
<figcaption>${escaped(chart.title)}</figcaption>
${chartSvg(chart, style)}
<details><summary>${escaped(texts.chartData)}</summary>${tableHtml(chartTable(chart, style))}</details>
</figure>`,
    table: ({ table }) => tableHtml(table),
    solution: ({ solution }, page) => solutionHtml(solution, page),
    cautions: ({ cautions }, { texts, cautionText }) =>
      `<aside class="caution">${cautions.map((id) => `<p><span class="word">${escaped(texts.caution)}</span> ${escaped(cautionText(id))}</p>`).join('')}</aside>`,
    sources: ({ sources }, { citation }) =>
      `<aside>${sources.map((source) => `<p>${escaped(citation(source))}</p>`).join('')}</aside>`,
    footnotes: ({ notes }, page) =>
      `<div class="footnotes">${notes
        .map(
          ({ number, text }) =>
            `<p id="note-${String(number)}"><a href="#mark-${String(number)}" aria-label="${escaped(page.texts.backToText)}">${String(number)}</a> ${writtenText(text, htmlWriter, page)}</p>`,
        )
        .join('\n')}</div>`,
  },
  inline: {
    text: ({ text }) => escaped(text),
    emphasis: ({ content }, page) => `<em>${writtenText(content, htmlWriter, page)}</em>`,
    strong: ({ content }, page) => `<strong>${writtenText(content, htmlWriter, page)}</strong>`,
    code: ({ text }) => `<code>${escaped(text)}</code>`,
    link: ({ address, content }, page) =>
      `<a href="${escaped(requireAddress(address))}">${writtenText(content, htmlWriter, page)}</a>`,
    image: ({ address, alternative, data }) =>
      `<img src="${escaped(data ?? requireAddress(address))}" alt="${escaped(alternative)}">`,
    value: (value, { style }) => `<span class="value">${escaped(valueText(value, style))}</span>`,
    formula: ({ find, expression, symbols }) =>
      mathElement(
        equationOf(find, expression, symbols, mathmlNotation),
        equationOf(find, expression, symbols, plainNotation),
        'inline',
      ),
    note: ({ number }) =>
      `<sup><a id="mark-${String(number)}" href="#note-${String(number)}">${String(number)}</a></sup>`,
    break: () => '<br>',
  },
}

/** Cells up to so many characters, such as a month or a mark, are not broken. */
const longestWhole = 14

function tableHtml(table: Table): string {
  const classOf = (at: number): string => (table.columns[at]?.align === 'number' ? ' class="number"' : '')
  const groups = headGroups(table)
  const paired = groups.some(({ columns }) => columns.length > 1)
  const unitOf = (unit: string | undefined): string =>
    unit === undefined || unit === '' ? '' : `<span class="unit">${escaped(unit)}</span>`
  const head = paired
    ? `<tr>${groups
        .map(({ heading, columns, first }) =>
          columns.length > 1
            ? `<th scope="colgroup" colspan="${String(columns.length)}" class="pair">${escaped(heading)}</th>`
            : `<th scope="col" rowspan="2"${classOf(first)}>${escaped(heading)}${unitOf(columns[0]?.unit)}</th>`,
        )
        .join('')}</tr><tr>${groups
        .flatMap(({ columns, first }) =>
          columns.length > 1
            ? columns.map(({ unit }, at) => `<th scope="col"${classOf(first + at)}>${unitOf(unit)}</th>`)
            : [],
        )
        .join('')}</tr>`
    : `<tr>${table.columns.map(({ heading, unit }, at) => `<th scope="col"${classOf(at)}>${escaped(heading)}${unitOf(unit)}</th>`).join('')}</tr>`
  const cellClass = (cell: string, at: number): string =>
    classOf(at) || (cell.length <= longestWhole ? ' class="short"' : '')
  const rows = table.rows.map(
    (row) => `<tr>${row.map((cell, at) => `<td${cellClass(cell, at)}>${escaped(cell)}</td>`).join('')}</tr>`,
  )
  return `<div class="scroll${table.columns.length > 5 ? ' wide' : ''}" role="group" aria-label="${escaped(table.caption)}" tabindex="0"><table>
<caption>${escaped(table.caption)}</caption>
<thead>${head}</thead>
<tbody>
${rows.join('\n')}
</tbody>
</table></div>${table.notes.map((note) => `<p class="notes">${escaped(note)}</p>`).join('')}`
}

function solutionHtml(solution: WorkedSolution, { style, texts }: Page): string {
  const lines = mathmlLines(solution, style).map(
    ({ kind, text, note }) =>
      `<li class="${kind}">${text}${note === undefined ? '' : `<span class="note">${escaped(note)}</span>`}</li>`,
  )
  const errors = (solution.commonErrors ?? []).map(
    ({ text, answer }) => `<li>${escaped(text)}: ${escaped(texts.comesOut)} ${escaped(valueText(answer, style))}.</li>`,
  )
  return `<div class="solution">
<h3>${escaped(solution.title)}</h3>
<ol>
${lines.join('\n')}
</ol>
<p class="notes">${escaped(texts.holdsFor)} ${escaped(solution.conditions.join('; '))}.</p>
${errors.length === 0 ? '' : `<p class="notes word">${escaped(texts.commonErrors)}</p><ul class="notes">${errors.join('')}</ul>`}
</div>`
}
