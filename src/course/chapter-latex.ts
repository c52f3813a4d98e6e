import type { Chapter, Text } from './chapter.ts'
import { dataOfChart } from './chart-table.ts'
import { escapedLatex } from './escape.ts'
import { latexNotation } from './latex.ts'
import { equationOf, linesOf } from './notation.ts'
import { headText, type Table } from './table.ts'
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
 * A chapter as a LaTeX document that needs no package beyond a plain installation. Charts become their data table, with the description.
 *
 * @param chapter - the chapter as data
 * @param style - decimal sign, grouping, fixed texts
 * @returns the document
 * @throws LitrebarError `input` for a kind of block, a caution, a source or a style that is not known
 */
export function chapterLatex(chapter: Chapter, style: PageStyle = {}): string {
  requireChapter(chapter)
  requireStyle(style)
  const page = pageOf(chapter, style)
  const sections = chapter.sections.map((section, index) => {
    const { title, blocks } = completedSection(section)
    return [
      `\\section*{${escapedLatex(title)}}`,
      ...writtenBlocks(blocks, latexWriter, page, `chapter.sections[${String(index)}].blocks`),
    ].join('\n\n')
  })
  return `${[
    preamble,
    `\\title{${escapedLatex(chapter.title)}}\n\\author{}\n\\date{}\n\\begin{document}\n\\maketitle`,
    escapedLatex(chapter.lead),
    ...sections,
    `{\\small ${escapedLatex(page.always)}}`,
    '\\end{document}',
  ].join('\n\n')}\n`
}

const preamble = `\\documentclass[11pt,a4paper]{article}
\\usepackage[utf8]{inputenc}
\\usepackage{amsmath}
\\usepackage{graphicx}
\\usepackage{longtable}
\\usepackage[hidelinks]{hyperref}
\\setlength{\\parindent}{0pt}
\\setlength{\\parskip}{6pt}`

const written = (text: Text, page: Page): string => writtenText(text, latexWriter, page)

const latexWriter: Writer = {
  block: {
    answer: ({ text }, page) => `\\textbf{${written(text, page)}}`,
    paragraph: ({ text }, page) => written(text, page),
    heading: ({ text }, page) => `\\subsection*{${written(text, page)}}`,
    list: ({ ordered, items }, page) => {
      const kind = ordered ? 'enumerate' : 'itemize'
      const rows = items.map((blocks) => `\\item ${writtenBlocks(blocks, latexWriter, page, 'list').join('\n\n')}`)
      return `\\begin{${kind}}\n${rows.join('\n')}\n\\end{${kind}}`
    },
    quote: ({ blocks }, page) =>
      `\\begin{quote}\n${writtenBlocks(blocks, latexWriter, page, 'quote').join('\n\n')}\n\\end{quote}`,
    code: ({ text }) =>
      `\\begin{quote}\\ttfamily\n${text
        .split('\n')
        .map((line) => escapedLatex(line).replaceAll(' ', '~') || '~')
        .join('\\\\\n')}\n\\end{quote}`,
    chart: ({ chart }, { style, texts }) =>
      `${escapedLatex(chart.description)}\n\n${tableLatex(dataOfChart(chart, style, texts))}`,
    table: ({ table }) => tableLatex(table),
    solution: ({ solution }, page) => solutionLatex(solution, page),
    cautions: ({ cautions }, { texts, cautionText }) =>
      cautions
        .map(
          (id) =>
            `\\begin{quote}\\small\\textbf{${escapedLatex(texts.caution)}} ${escapedLatex(cautionText(id))}\\end{quote}`,
        )
        .join('\n'),
    sources: ({ sources }, { texts, citation }) =>
      sources.map((source) => `{\\small ${escapedLatex(`${texts.source} ${citation(source)}`)}}`).join('\n\n'),
    footnotes: ({ notes }, page) =>
      notes.map(({ number, text }) => `\\footnotetext[${String(number)}]{${written(text, page)}}`).join('\n'),
  },
  inline: {
    text: ({ text }) => escapedLatex(text),
    emphasis: ({ content }, page) => `\\emph{${written(content, page)}}`,
    strong: ({ content }, page) => `\\textbf{${written(content, page)}}`,
    code: ({ text }) => `\\texttt{${escapedLatex(text)}}`,
    link: ({ address, content }, page) =>
      `\\href{${requireAddress(address).replaceAll(/[\\{}%#]/g, (character) => (character === '#' || character === '%' ? `\\${character}` : ''))}}{${written(content, page)}}`,
    // only kinds of picture that LaTeX reads; the others by their description
    image: ({ address, alternative }) =>
      /^[A-Za-z0-9_./-]+\.(png|jpe?g|pdf)$/.test(address)
        ? `\\includegraphics[width=0.8\\linewidth]{${address}}`
        : `[${escapedLatex(alternative)}]`,
    value: (value, { style }) => escapedLatex(valueText(value, style)),
    formula: ({ find, expression, symbols }) => `$${equationOf(find, expression, symbols, latexNotation)}$`,
    note: ({ number }) => `\\footnotemark[${String(number)}]`,
    break: () => '\\\\\n',
  },
}

/** Columns of text share what the page leaves; columns of numbers take what they need. */
function tableLatex(table: Table): string {
  const longest = (at: number): number => Math.max(...table.rows.map((row) => (row[at] ?? '').length), 0)
  const long = table.columns.filter((column, at) => column.align === 'text' && longest(at) > 18).length
  const width = (0.62 / Math.max(1, long)).toFixed(2)
  const kinds = table.columns.map((column, at) =>
    column.align === 'number' ? 'r' : longest(at) > 18 ? `p{${width}\\linewidth}` : 'l',
  )
  const row = (cells: readonly string[]): string => `${cells.map(escapedLatex).join(' & ')} \\\\`
  const size = table.columns.length > 5 ? '\\footnotesize' : '\\small'
  return `{${size}
\\begin{longtable}{${kinds.join('')}}
\\multicolumn{${String(table.columns.length)}}{l}{\\textit{${escapedLatex(table.caption)}}} \\\\
\\hline
${row(table.columns.map(headText))}
\\hline
\\endhead
${table.rows.map(row).join('\n')}
\\hline
\\end{longtable}
${table.notes.map((note) => `${escapedLatex(note)}\n`).join('\n')}}`
}

function solutionLatex(solution: WorkedSolution, { style, texts }: Page): string {
  const lines = linesOf(solution, latexNotation, style).map(
    ({ text, note }) =>
      `\\item $\\displaystyle ${text}$${note === undefined ? '' : `\\\\{\\footnotesize ${escapedLatex(note)}}`}`,
  )
  const errors = (solution.commonErrors ?? []).map(({ text, answer }) =>
    escapedLatex(`${text}: ${texts.comesOut} ${valueText(answer, style)}.`),
  )
  return `\\subsection*{${escapedLatex(solution.title)}}
\\begin{itemize}
\\renewcommand{\\labelitemi}{}
${lines.join('\n')}
\\end{itemize}
{\\small ${[escapedLatex(`${texts.holdsFor} ${solution.conditions.join('; ')}.`), ...errors].join(' ')}}`
}
