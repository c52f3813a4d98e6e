import type { Chapter, Text } from './chapter.ts'
import { dataOfChart } from './chart-table.ts'
import { escapedMarkdown } from './escape.ts'
import { latexNotation } from './latex.ts'
import { equationOf, linesOf } from './notation.ts'
import { tableMarkdown } from './table.ts'
import { valueText } from './value-text.ts'
import type { WorkedSolution } from './worked-solution.ts'
import {
  completedSection,
  type Page,
  type PageStyle,
  pageOf,
  requireAddress,
  requireChapter,
  requireStyle,
  type Writer,
  writtenBlocks,
  writtenText,
} from './written-chapter.ts'

/**
 * A chapter as Markdown with LaTeX formulas, as pandoc and most renderers read it. Charts become their data table, with the
 * description. Cautions and sources stand where the page has them.
 *
 * @param chapter - the chapter as data
 * @param style - decimal sign, grouping, fixed texts
 * @returns the document
 * @throws LitrebarError `input` for a kind of block, a caution, a source or a style that is not known
 */
export function chapterMarkdown(chapter: Chapter, style: PageStyle = {}): string {
  requireChapter(chapter)
  requireStyle(style)
  const page = pageOf(chapter, style)
  const sections = chapter.sections.map((section, index) => {
    const { title, blocks } = completedSection(section)
    return [
      `## ${escapedMarkdown(title)}`,
      ...writtenBlocks(blocks, markdownWriter, page, `chapter.sections[${String(index)}].blocks`),
    ].join('\n\n')
  })
  return `${[`# ${escapedMarkdown(chapter.title)}`, escapedMarkdown(chapter.lead), ...sections, escapedMarkdown(page.always)].join('\n\n')}\n`
}

const written = (text: Text, page: Page): string => writtenText(text, markdownWriter, page)

/** Every line after the first moved in, so that it stays part of a list item or a quotation. */
function indented(text: string, first: string, rest: string): string {
  return text
    .split('\n')
    .map((line, index) => (line === '' && rest.trim() === '' ? '' : `${index === 0 ? first : rest}${line}`))
    .join('\n')
}

const markdownWriter: Writer = {
  block: {
    answer: ({ text }, page) => `**${written(text, page)}**`,
    paragraph: ({ text }, page) => written(text, page),
    heading: ({ text }, page) => `### ${written(text, page)}`,
    list: ({ ordered, items }, page) =>
      items
        .map((blocks, index) => {
          const mark = ordered ? `${String(index + 1)}. ` : '- '
          return indented(
            writtenBlocks(blocks, markdownWriter, page, 'list').join('\n\n'),
            mark,
            ' '.repeat(mark.length),
          )
        })
        .join('\n'),
    quote: ({ blocks }, page) =>
      indented(writtenBlocks(blocks, markdownWriter, page, 'quote').join('\n\n'), '> ', '> '),
    code: ({ text }) => indented(text, '    ', '    '),
    chart: ({ chart }, { style, texts }) =>
      `${escapedMarkdown(chart.description)}\n\n${tableMarkdown(dataOfChart(chart, style, texts))}`,
    table: ({ table }) => tableMarkdown(table),
    solution: ({ solution }, page) => solutionMarkdown(solution, page),
    cautions: ({ cautions }, { texts, cautionText }) =>
      cautions.map((id) => `> **${escapedMarkdown(texts.caution)}** ${escapedMarkdown(cautionText(id))}`).join('\n>\n'),
    sources: ({ sources }, { texts, citation }) =>
      sources.map((source) => `${escapedMarkdown(texts.source)} ${escapedMarkdown(citation(source))}`).join('  \n'),
    footnotes: ({ notes }, page) =>
      notes.map(({ number, text }) => `[^${String(number)}]: ${written(text, page)}`).join('\n'),
  },
  inline: {
    text: ({ text }) => escapedMarkdown(text),
    emphasis: ({ content }, page) => `*${written(content, page)}*`,
    strong: ({ content }, page) => `**${written(content, page)}**`,
    code: ({ text }) => `\`${text.replaceAll('`', "'")}\``,
    link: ({ address, content }, page) => `[${written(content, page)}](${markdownAddress(address)})`,
    image: ({ address, alternative }) => `![${escapedMarkdown(alternative)}](${markdownAddress(address)})`,
    value: (value, { style }) => escapedMarkdown(valueText(value, style)),
    formula: ({ find, expression, symbols }) => `$${equationOf(find, expression, symbols, latexNotation)}$`,
    note: ({ number }) => `[^${String(number)}]`,
    break: () => '  \n',
  },
}

function markdownAddress(address: string): string {
  return requireAddress(address).replaceAll(/[\s()<>]/g, (character) =>
    encodeURIComponent(character).replace(/[()]/, (bracket) => (bracket === '(' ? '%28' : '%29')),
  )
}

function solutionMarkdown(solution: WorkedSolution, { style, texts }: Page): string {
  const lines = linesOf(solution, latexNotation, style).map(
    ({ text, note }) => `$$${text}$$${note === undefined ? '' : `\n\n${escapedMarkdown(note)}`}`,
  )
  const errors = (solution.commonErrors ?? []).map(
    ({ text, answer }) => `- ${escapedMarkdown(`${text}: ${texts.comesOut} ${valueText(answer, style)}.`)}`,
  )
  return [
    `### ${escapedMarkdown(solution.title)}`,
    ...lines,
    escapedMarkdown(`${texts.holdsFor} ${solution.conditions.join('; ')}.`),
    ...(errors.length === 0 ? [] : [`*${escapedMarkdown(texts.commonErrors)}*`, errors.join('\n')]),
  ].join('\n\n')
}
