import { cautionOf } from '../references/index.ts'
import type { NumberStyle } from '../units/index.ts'
import type { Block, Chapter } from './chapter.ts'
import { chartTable } from './chapter-markdown.ts'
import { chapterStyle } from './chapter-style.ts'
import { chartSvg } from './chart.ts'
import { citation, sortedSources } from './citation.ts'
import { escaped, mathmlLines } from './mathml.ts'
import type { Table } from './table.ts'
import type { WorkedSolution } from './worked-solution.ts'

/**
 * A chapter as one self-contained HTML page: MathML, SVG, one style sheet, no script. Opens from disk and prints.
 *
 * @param chapter - the chapter as data
 * @param style - decimal sign and grouping
 * @returns the document
 */
export function chapterHtml(chapter: Chapter, style: NumberStyle = {}): string {
  const blocks = chapter.sections.flatMap((section) => section.blocks)
  const sources = sortedSources(
    blocks.flatMap((block) =>
      block.kind === 'sources' ? block.sources : block.kind === 'solution' ? block.solution.sources : [],
    ),
  )
  return `<!DOCTYPE html>
<html lang="${escaped(chapter.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escaped(chapter.title)}</title>
<style>${chapterStyle}</style>
</head>
<body>
<main>
<h1>${escaped(chapter.title)}</h1>
<p class="lead">${escaped(chapter.lead)}</p>
${chapter.sections
  .map(
    (section) => `<section id="${escaped(section.id)}" aria-labelledby="${escaped(section.id)}-title">
<h2 id="${escaped(section.id)}-title">${escaped(section.title)}</h2>
${section.blocks.map((block) => blockHtml(block, style)).join('\n')}
</section>`,
  )
  .join('\n')}
<footer>
<h2>Sources</h2>
<ul>${sources.map((id) => `<li>${escaped(citation(id))}</li>`).join('')}</ul>
<p>${escaped(cautionOf('always').text)}</p>
</footer>
</main>
</body>
</html>
`
}

function blockHtml(block: Block, style: NumberStyle): string {
  switch (block.kind) {
    case 'answer':
      return `<p class="answer">${escaped(block.text)}</p>`
    case 'paragraph':
      return `<p>${escaped(block.text)}</p>`
    case 'chart':
      return `<figure>
<figcaption>${escaped(block.chart.title)}</figcaption>
${chartSvg(block.chart, style)}
<details><summary>Data of this chart</summary>${tableHtml(chartTable(block.chart, style))}</details>
</figure>`
    case 'table':
      return tableHtml(block.table)
    case 'solution':
      return solutionHtml(block.solution, style)
    case 'cautions':
      return `<aside class="caution">${block.cautions.map((id) => `<p><span class="word">Caution.</span> ${escaped(cautionOf(id).text)}</p>`).join('')}</aside>`
    case 'sources':
      return `<aside>${block.sources.map((id) => `<p>${escaped(citation(id))}</p>`).join('')}</aside>`
  }
}

/** Cells up to so many characters, such as a month or a mark, are not broken. */
const longestWhole = 14

function tableHtml(table: Table): string {
  const classOf = (at: number): string => (table.columns[at]?.align === 'number' ? ' class="number"' : '')
  const head = table.columns
    .map(
      ({ heading, unit }, at) =>
        `<th scope="col"${classOf(at)}>${escaped(heading)}${unit ? `<span class="unit">${escaped(unit)}</span>` : ''}</th>`,
    )
    .join('')
  const cellClass = (cell: string, at: number): string =>
    classOf(at) || (cell.length <= longestWhole ? ' class="short"' : '')
  const rows = table.rows.map(
    (row) => `<tr>${row.map((cell, at) => `<td${cellClass(cell, at)}>${escaped(cell)}</td>`).join('')}</tr>`,
  )
  return `<div class="scroll" role="region" aria-label="${escaped(table.caption)}" tabindex="0"><table>
<caption>${escaped(table.caption)}</caption>
<thead><tr>${head}</tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table></div>${table.notes.map((note) => `<p class="notes">${escaped(note)}</p>`).join('')}`
}

function solutionHtml(solution: WorkedSolution, style: NumberStyle): string {
  const lines = mathmlLines(solution, style).map(
    ({ kind, text, note }) =>
      `<li class="${kind}">${text}${note === undefined ? '' : `<span class="note">${escaped(note)}</span>`}</li>`,
  )
  return `<div class="solution">
<h3>${escaped(solution.title)}</h3>
<ol>
${lines.join('\n')}
</ol>
<p class="notes">Holds for: ${escaped(solution.conditions.join('; '))}.</p>
</div>`
}
