import type { NumberStyle } from '../units/index.ts'
import type { Chapter, Text } from './chapter.ts'
import { dataOfChart } from './chart-table.ts'
import { pageTextsShape } from './language-shape.table.ts'
import { equationOf, linesOf } from './notation.ts'
import { type PageTexts, pageTexts } from './page-text.table.ts'
import { plainNotation } from './plain.ts'
import { requireShape } from './require-shape.ts'
import { requireSolution } from './require-solution.ts'
import { tableShape } from './shapes.table.ts'
import { cautionLines, headText, type Table } from './table.ts'
import { valueText } from './value-text.ts'
import type { WorkedSolution } from './worked-solution.ts'
import {
  completedSection,
  type Page,
  type PageStyle,
  pageOf,
  requireChapter,
  requireStyle,
  type Writer,
  writtenBlocks,
  writtenText,
} from './written-chapter.ts'

/**
 * A chapter as plain text in lines of at most 78 characters, for a terminal, a mail or a reader for the blind.
 *
 * @param chapter - the chapter as data
 * @param style - decimal sign, grouping, fixed texts
 * @returns the text
 * @throws LitrebarError `input` for a kind of block, a caution, a source or a style that is not known
 */
export function chapterText(chapter: Chapter, style: PageStyle = {}): string {
  requireChapter(chapter)
  requireStyle(style)
  const page = pageOf(chapter, style)
  const sections = chapter.sections.map((section, index) => {
    const { title, blocks } = completedSection(section)
    return [
      underlined(title, '-'),
      ...writtenBlocks(blocks, textWriter, page, `chapter.sections[${String(index)}].blocks`),
    ].join('\n\n')
  })
  return `${[underlined(chapter.title, '='), filled(chapter.lead), ...sections, filled(page.always)].join('\n\n')}\n`
}

const written = (text: Text, page: Page): string => filled(writtenText(text, textWriter, page))

const textWriter: Writer = {
  block: {
    answer: ({ text }, page) => written(text, page),
    paragraph: ({ text }, page) => written(text, page),
    heading: ({ text }, page) => writtenText(text, textWriter, page),
    list: ({ ordered, items }, page) =>
      items
        .map((blocks, index) => {
          const mark = ordered ? `${String(index + 1)}. ` : '- '
          const text = writtenBlocks(blocks, textWriter, page, 'list').join('\n\n')
          return text
            .split('\n')
            .map((line, at) => `${at === 0 ? mark : ' '.repeat(mark.length)}${line}`.trimEnd())
            .join('\n')
        })
        .join('\n'),
    quote: ({ blocks }, page) => indented(writtenBlocks(blocks, textWriter, page, 'quote').join('\n\n')),
    code: ({ text }) => indented(text),
    chart: ({ chart }, { style, texts }) =>
      `${filled(chart.description)}\n\n${tableLines(dataOfChart(chart, style, texts)).join('\n')}`,
    table: ({ table }) => tableLines(table).join('\n'),
    solution: ({ solution }, { style, texts }) => writtenSolution(solution, style, texts),
    cautions: ({ cautions }, { texts, cautionText }) =>
      cautions.map((id) => filled(`${texts.caution} ${cautionText(id)}`)).join('\n'),
    sources: ({ sources }, { texts, citation }) =>
      sources.map((source) => filled(`${texts.source} ${citation(source)}`)).join('\n'),
    footnotes: ({ notes }, page) =>
      notes.map(({ number, text }) => filled(`[${String(number)}] ${writtenText(text, textWriter, page)}`)).join('\n'),
  },
  inline: {
    text: ({ text }) => text,
    emphasis: ({ content }, page) => writtenText(content, textWriter, page),
    strong: ({ content }, page) => writtenText(content, textWriter, page),
    code: ({ text }) => text,
    link: ({ address, content }, page) => `${writtenText(content, textWriter, page)} (${address})`,
    image: ({ alternative }) => `[${alternative}]`,
    value: (value, { style }) => valueText(value, style),
    formula: ({ find, expression, symbols }) => equationOf(find, expression, symbols, plainNotation),
    note: ({ number }) => ` [${String(number)}]`,
    break: () => '\n',
  },
}

const longestLine = 78

/** Words in lines; a narrow no-break space never ends one. */
function filled(text: string): string {
  return text
    .split('\n')
    .map((paragraph) => {
      const lines: string[] = []
      for (const word of paragraph.split(/[ \t]+/)) {
        const last = lines.at(-1)
        if (last !== undefined && last.length + word.length < longestLine) lines[lines.length - 1] = `${last} ${word}`
        else lines.push(word)
      }
      return lines.join('\n')
    })
    .join('\n')
}

function underlined(text: string, mark: string): string {
  return `${text}\n${mark.repeat(text.length)}`
}

function indented(text: string): string {
  return text
    .split('\n')
    .map((line) => `    ${line}`.trimEnd())
    .join('\n')
}

/**
 * A table as plain text, its columns lined up.
 *
 * @param table - the table
 * @returns caption, heads, rows, notes, and the table's own cautions
 * @throws LitrebarError `input` for a caution that is not known
 */
export function tableText(table: Table): string {
  requireShape('table', table, tableShape)
  return [...tableLines(table), ...cautionLines(table).map(filled)].join('\n')
}

/** Without its cautions: a chapter prints those once for a section, behind the table. */
function tableLines(table: Table): string[] {
  const heads = table.columns.map(headText)
  const widths = heads.map((head, at) => Math.max(head.length, ...table.rows.map((row) => (row[at] ?? '').length)))
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, at) =>
        table.columns[at]?.align === 'number' ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0),
      )
      .join('  ')
      .trimEnd()
  return [
    filled(table.caption),
    '',
    line(heads),
    line(widths.map((width) => '-'.repeat(width))),
    ...table.rows.map(line),
    ...table.notes.map(filled),
  ]
}

/**
 * A worked solution as plain text: what is given, the formula, the numbers put in, the answer, what it holds for.
 *
 * @param solution - the worked solution
 * @param style - decimal sign and grouping
 * @param texts - fixed texts in other words; what is left out stays English
 * @returns the text
 * @throws LitrebarError `input` for what is no worked solution, no style or no texts
 * @example
 * const solution = workedSolution(pressureAtDepthCard, { p0: 101325, rho: 1025, g: 9.80665, d: 30 }, { units: { p: bar, p0: bar }, figures: 3 })
 * solutionText(solution).split('\n')[0] // => 'Absolute pressure at a depth'
 */
export function solutionText(solution: WorkedSolution, style: NumberStyle = {}, texts: PageTexts = pageTexts): string {
  requireSolution(solution, style)
  requireShape('texts', texts, pageTextsShape)
  return writtenSolution(solution, style, { ...pageTexts, ...texts })
}

function writtenSolution(solution: WorkedSolution, style: NumberStyle, texts: PageTexts): string {
  const lines = linesOf(solution, plainNotation, style)
  const width = Math.min(52, Math.max(...lines.map(({ text }) => text.length)))
  return [
    solution.title,
    ...lines.map(({ text, note = '' }) => `  ${text.padEnd(width)}  ${note}`.trimEnd()),
    filled(`${texts.holdsFor} ${solution.conditions.join('; ')}.`),
    ...(solution.commonErrors ?? []).map(({ text, answer }) =>
      filled(`${text}: ${texts.comesOut} ${valueText(answer, style)}.`),
    ),
  ].join('\n')
}
