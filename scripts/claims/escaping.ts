import { execFileSync } from 'node:child_process'
import { hasBrowser, openBrowser } from '../../tests/browser.ts'
import {
  browserTrial,
  latexTrial,
  pandocTrial,
  spreadsheetTrial,
  type Trial,
} from '../../tests/course/escaping-trials.ts'
import { type Block, type Figures, grouped } from './block.ts'

const has = (command: string): boolean => {
  try {
    execFileSync('which', [command], { stdio: 'ignore' })
    return true
  } catch {
    console.error(`NOTICE: ${command} is not installed; what it reads is left out`)
    return false
  }
}

/** So many texts in documents of a size that the parser takes at once. */
const inParts = (all: number, part: number, seed: number, trial: (count: number, seed: number) => Trial): Trial => {
  const parts = Array.from({ length: Math.ceil(all / part) }, (_, at) => trial(Math.min(part, all), seed + at))
  return { texts: parts.reduce((sum, { texts }) => sum + texts, 0), faults: parts.flatMap(({ faults }) => faults) }
}

/** The trials that can be made here: what is not installed is said to be left out. */
export async function escapingTrials(count: number, seed: number): Promise<Readonly<Record<string, Trial>>> {
  const results: Record<string, Trial> = {}
  if (hasBrowser('escaping')) {
    const browser = await openBrowser()
    const page = await browser.newPage()
    const shares = { html: 0.4, svg: 0.08, mathml: 0.2, moodle: 0.12, qti: 0.1 } as const
    for (const [name, share] of Object.entries(shares) as [keyof typeof shares, number][])
      results[`${name}, Chromium`] = await browserTrial(page, name, share * count, seed)
    await browser.close()
  }
  if (has('pandoc')) {
    results['Markdown, pandoc'] = inParts(0.02 * count, 5000, seed, (n, s) => pandocTrial('markdown-smart', n, s))
    results['Markdown, commonmark with tables'] = inParts(0.01 * count, 5000, seed + 1000, (n, s) =>
      pandocTrial('gfm', n, s),
    )
  }
  if (has('pdflatex') && has('pdftotext')) results['LaTeX'] = inParts(0.01 * count, 2000, seed, latexTrial)
  if (has('soffice')) results['CSV, spreadsheet'] = inParts(0.08 * count, 40_000, seed, spreadsheetTrial)
  return results
}

/** Whether hostile texts come back from the parsers that read what is written. */
export const escaping: Block = {
  page: 'docs/measured/escaping.md',
  name: 'escaping',
  kind: 'long',
  band: 1.000001,
  measure: async (): Promise<Figures> =>
    Object.fromEntries(
      Object.entries(await escapingTrials(1_000_000, 1)).flatMap(([name, { texts, faults }]) => [
        [`${name}: texts`, texts],
        [`${name}: faults`, faults.length],
      ]),
    ),
  table: (figures) => {
    const names = Object.keys(figures).flatMap((what) => (what.endsWith(': texts') ? [what.slice(0, -7)] : []))
    const total = names.reduce((sum, name) => sum + (figures[`${name}: texts`] ?? 0), 0)
    return [
      '| Written, read by | Texts | Not as they were |',
      '| :--- | ---: | ---: |',
      ...names.map(
        (name) => `| ${name} | ${grouped(figures[`${name}: texts`] ?? 0)} | ${figures[`${name}: faults`]} |`,
      ),
      '',
      `All together ${grouped(total)} texts.`,
    ]
  },
}
