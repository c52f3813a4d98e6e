import type { Block, Chapter } from './chapter.ts'
import { chapterStyle, chapterStyleHash } from './chapter-style.ts'
import { chartSvg } from './chart.ts'
import { escaped } from './escape.ts'
import { type LiveScript, liveDataText, liveScriptShape, liveSectionsOf, requireScript } from './live-data.ts'
import { mathElement, mathmlNotation } from './mathml.ts'
import { equationOf } from './notation.ts'
import { plainNotation } from './plain.ts'
import { requireShape } from './require-shape.ts'
import { chartDataHtml, solutionHtml, tableHtml } from './result-html.ts'
import { valueText } from './value-text.ts'
import {
  completedSection,
  type Page,
  type PageStyle,
  pageOf,
  requireAddress,
  requireChapter,
  requireStyle,
  sourcesIn,
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

const linkShape = { fields: { address: 'text', title: 'text' } } as const

/** How a page is written, and the script that makes its workings live. */
export interface HtmlStyle extends PageStyle {
  /** The script of `litrebar/live`. Without it, or where nothing may be changed, the page holds no script. */
  readonly live?: LiveScript
}

/**
 * A chapter as one self-contained HTML page: MathML, SVG, one style sheet. Opens from disk and prints.
 * Every result shows its cautions and sources: those the section states stay where they stand, the others are put beside the result.
 * Given the script of `litrebar/live`, readers may change the numbers of the workings that the chapter declares live; everything is
 * still printed in the page, so that it reads without the script as well.
 *
 * @param chapter - the chapter as data
 * @param style - decimal sign, grouping, fixed texts, the script of live pages
 * @param links - the pages before, after and above
 * @returns the document
 * @throws LitrebarError `input` for a kind of block, a caution or a source that is not known, an id that cannot be linked to, or a
 * script that cannot stand in a page
 */
export function chapterHtml(chapter: Chapter, style: HtmlStyle = {}, links: PageLinks = {}): string {
  requireChapter(chapter)
  requireStyle(style, { 'live?': liveScriptShape })
  requireShape('links', links, { fields: { 'contents?': linkShape, 'previous?': linkShape, 'next?': linkShape } })
  const { live, ...written } = style
  const completed = chapter.sections.map(completedSection)
  const liveSections = live === undefined ? [] : liveSectionsOf(completed)
  const targets = new Map(liveSections.flatMap(({ blocks }) => blocks.map(({ block, target }) => [block, target])))
  const page: Page = { ...pageOf(chapter, written), targets }
  const sections = completed.map((section, index) => {
    const { id, title, blocks } = section
    return `<section id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${escaped(title)}</h2>
${writtenBlocks(blocks, htmlWriter, page, `chapter.sections[${String(index)}].blocks`).join('\n')}
</section>`
  })
  const sources = sourcesIn(chapter).map((id) => `<li>${escaped(page.citation(id))}</li>`)
  return documentHtml(
    chapter,
    `<h1>${escaped(chapter.title)}</h1>
<p class="lead">${escaped(chapter.lead)}</p>
${sections.join('\n')}
<footer>
${sources.length === 0 ? '' : `<h2>${escaped(page.texts.sources)}</h2>\n<ul>${sources.join('')}</ul>`}
<p>${escaped(page.always)}</p>
${navigation(links, page)}
</footer>`,
    live === undefined || liveSections.length === 0 ? undefined : { live, data: liveDataText(liveSections, page) },
  )
}

/**
 * A page of the same look and policy around any content.
 *
 * @param head - title and language
 * @param body - markup of the main part, escaped by the caller
 * @param script - a script with its data, let in by the hash of its text
 * @returns the document
 * @throws LitrebarError `input` for a script that would end its own element, or a hash that is none
 */
export function documentHtml(
  head: { readonly title: string; readonly language: string },
  body: string,
  script?: { readonly live: LiveScript; readonly data: string },
): string {
  if (script !== undefined) requireScript(script.live)
  const scripts = script === undefined ? '' : `; script-src '${script.live.hash}'`
  const images = body.includes('<img ') ? `; img-src data:` : ''
  return `<!DOCTYPE html>
<html lang="${escaped(head.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '${chapterStyleHash}'${scripts}${images}">
<title>${escaped(head.title)}</title>
<style>${chapterStyle}</style>
</head>
<body>
<main>
${body}
</main>
${script === undefined ? '' : `<script type="application/json" id="live-data">${script.data}</script>\n<script>${script.live.text}</script>\n`}</body>
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

/** The id by which a script finds a block that it may make again. */
function idOf(block: Block, { targets }: Page): string {
  const target = targets?.get(block)
  return target === undefined ? '' : ` id="${target}"`
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
    chart: (block, page) => `<figure${idOf(block, page)}>
<figcaption>${escaped(block.chart.title)}</figcaption>
${chartSvg(block.chart, page.style)}
<details>${chartDataHtml(block.chart, page)}</details>
</figure>`,
    table: (block, page) => {
      const id = idOf(block, page)
      return id === '' ? tableHtml(block.table) : `<div${id}>${tableHtml(block.table)}</div>`
    },
    solution: (block, page) => `<div class="solution"${idOf(block, page)}>
${solutionHtml(block.solution, page)}
</div>`,
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
