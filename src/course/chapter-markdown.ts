import { cautionOf } from '../references/index.ts'
import { type NumberStyle, roundNumber, withNumberStyle } from '../units/index.ts'
import type { Block, Chapter } from './chapter.ts'
import type { Chart } from './chart.ts'
import { citation } from './citation.ts'
import { latexLines } from './latex.ts'
import { type Table, tableMarkdown } from './table.ts'
import type { WorkedSolution } from './worked-solution.ts'

/**
 * A chapter as Markdown with LaTeX formulas. Charts become their data table, with the description.
 *
 * @param chapter - the chapter as data
 * @param style - decimal sign and grouping
 * @returns the document
 */
export function chapterMarkdown(chapter: Chapter, style: NumberStyle = {}): string {
  const sections = chapter.sections.map((section) =>
    [`## ${section.title}`, ...section.blocks.map((block) => blockMarkdown(block, style))].join('\n\n'),
  )
  return `${[`# ${chapter.title}`, chapter.lead, ...sections].join('\n\n')}\n`
}

function blockMarkdown(block: Block, style: NumberStyle): string {
  switch (block.kind) {
    case 'answer':
      return `**${block.text}**`
    case 'paragraph':
      return block.text
    case 'chart':
      return `${block.chart.description}\n\n${tableMarkdown(chartTable(block.chart, style))}`
    case 'table':
      return tableMarkdown(block.table)
    case 'solution':
      return solutionMarkdown(block.solution, style)
    case 'cautions':
      return block.cautions.map((id) => `> **Caution.** ${cautionOf(id).text}`).join('\n>\n')
    case 'sources':
      return block.sources.map((id) => `Source: ${citation(id)}`).join('  \n')
  }
}

function solutionMarkdown(solution: WorkedSolution, style: NumberStyle): string {
  const lines = latexLines(solution, style).map(
    ({ text, note }) => `$$${text}$$${note === undefined ? '' : `\n\n${note}`}`,
  )
  return [`### ${solution.title}`, ...lines].join('\n\n')
}

/** At most so many rows of a chart's data are printed; the chart itself has them all. */
const printedRows = 25

/**
 * The data of a chart as a table, thinned to about 25 rows where there are more.
 *
 * @param chart - the chart as data
 * @param style - decimal sign and grouping
 * @returns one row for each point of the longest line; lines with other abscissas follow each other
 */
export function chartTable(chart: Chart, style: NumberStyle = {}): Table {
  const { x, y, series } = chart
  const first = series[0]
  const shared = series.every(
    (other) => other.x.length === first?.x.length && other.x.every((value, at) => value === first.x[at]),
  )
  const across = columnOf(
    series.flatMap((line) => line.x),
    style,
  )
  const up = columnOf(
    series.flatMap((line) => line.y),
    style,
  )
  const thin = <Row>(rows: readonly Row[]): Row[] => {
    const every = Math.ceil(rows.length / printedRows)
    return rows.filter((_, at) => at % every === 0 || at === rows.length - 1)
  }
  const shown = (points: number): string[] =>
    points > printedRows
      ? [`${String(thin(Array.from({ length: points })).length)} of ${String(points)} points, evenly spread.`]
      : []
  if (shared && first !== undefined) {
    return {
      caption: chart.title,
      columns: [
        { heading: x.label, unit: x.unit, align: 'number' },
        ...series.map((line) => ({ heading: line.name, unit: y.unit, align: 'number' as const })),
      ],
      rows: thin(first.x.map((value, at) => [across(value), ...series.map((line) => up(line.y[at]))])),
      notes: shown(first.x.length),
    }
  }
  return {
    caption: chart.title,
    columns: [
      { heading: 'Line', align: 'text' },
      { heading: x.label, unit: x.unit, align: 'number' },
      { heading: y.label, unit: y.unit, align: 'number' },
    ],
    rows: series.flatMap((line) => thin(line.x.map((value, at) => [line.name, across(value), up(line.y[at])]))),
    notes: [...new Set(series.flatMap((line) => shown(line.x.length)))],
  }
}

/** Numbers of one column with the same decimals, so that their signs stand in line: four figures of the largest, or fewer where all are round. */
function columnOf(values: readonly number[], style: NumberStyle): (n: number | undefined) => string {
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  const most = largest > 0 ? Math.max(0, 3 - Math.floor(Math.log10(largest))) : 0
  const to = (value: number, decimals: number): number => roundNumber(value, { decimals }).value
  const enough = (decimals: number): boolean => values.every((value) => to(value, decimals) === to(value, most))
  const decimals = Array.from({ length: most }, (_, n) => n).find(enough) ?? most
  return (n) => (n === undefined ? '' : withNumberStyle(roundNumber(n, { decimals }).text, style))
}
