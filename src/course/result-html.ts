import type { Chart } from './chart-kinds.ts'
import { dataOfChart } from './chart-table.ts'
import { escaped } from './escape.ts'
import { mathLines } from './mathml.ts'
import { linesOf, type Notation } from './notation.ts'
import { plainNotation } from './plain.ts'
import { headGroups, type Table } from './table.ts'
import { valueText } from './value-text.ts'
import type { WorkedSolution } from './worked-solution.ts'
import type { Page } from './written-chapter.ts'

/** Cells up to so many characters, such as a month or a mark, are not broken. */
const longestWhole = 14

/** A table with its notes. */
export function tableHtml(table: Table): string {
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

/** What the lines of a solution need of its page. */
type Words = Pick<Page, 'style' | 'texts'>

/** Of a fraction the wider part alone, so that the text is about as wide as the formula is set. */
const widestRows: Notation = {
  ...plainNotation,
  fraction: (over, under) => (over.length > under.length ? over : under),
  fractionHasLevels: true,
}

/** Browsers break no formula: one that would pass the end of its line is set smaller. */
function sizeOf(width: number): string {
  return width > 78 ? ' longer' : width > 62 ? ' long' : ''
}

/** The inside of a worked solution: title, lines, conditions, common errors. */
export function solutionHtml(solution: WorkedSolution, { style, texts }: Words): string {
  const widths = linesOf(solution, widestRows, style).map(({ text }) => text.length)
  const lines = mathLines(solution, style).map(
    ({ kind, text, note }, at) =>
      `<li class="${kind}${sizeOf(widths[at] ?? 0)}">${text}${note === undefined ? '' : `<span class="note">${escaped(note)}</span>`}</li>`,
  )
  const errors = (solution.commonErrors ?? []).map(
    ({ text, answer }) => `<li>${escaped(text)}: ${escaped(texts.comesOut)} ${escaped(valueText(answer, style))}.</li>`,
  )
  return `<h3>${escaped(solution.title)}</h3>
<ol>
${lines.join('\n')}
</ol>
<p class="notes">${escaped(texts.holdsFor)} ${escaped(solution.conditions.join('; '))}.</p>
${errors.length === 0 ? '' : `<p class="notes word">${escaped(texts.commonErrors)}</p><ul class="notes">${errors.join('')}</ul>`}`
}

/** The data of a chart as they stand below it, to be opened. */
export function chartDataHtml(chart: Chart, { style, texts }: Words): string {
  return `<summary>${escaped(texts.chartData)}</summary>${tableHtml(dataOfChart(chart, style, texts))}`
}
