import { execFileSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { escaped, escapedLatex, escapedMarkdown } from '../../src/course/escape.ts'
import { element, xmlDocument } from '../../src/course/exercises/exchange/xml.ts'
import { tableMarkdown } from '../../src/course/index.ts'
import { hasBrowser, openBrowser } from '../browser.ts'
import { browserTrial, latexTrial, pandocTrial } from './escaping-trials.ts'
import { browserWriters } from './written-texts.ts'

// The short form of scripts/escaping.ts.

function has(command: string): boolean {
  try {
    execFileSync('which', [command], { stdio: 'ignore' })
    return true
  } catch {
    console.warn(`NOTICE: what ${command} reads is NOT tested here: it is not installed.`)
    return false
  }
}

test.runIf(hasBrowser('what a browser reads of hostile texts'))(
  'a browser reads each hostile text back from HTML, SVG, MathML, Moodle XML and QTI, and no element is born',
  async () => {
    const browser = await openBrowser()
    try {
      const page = await browser.newPage()
      for (const name of Object.keys(browserWriters) as (keyof typeof browserWriters)[]) {
        const { texts, faults } = await browserTrial(page, name, 3000, 20)
        expect(faults).toEqual([])
        expect(texts).toBeGreaterThanOrEqual(3000)
      }
    } finally {
      await browser.close()
    }
  },
  60_000,
)

test.runIf(has('pandoc'))(
  'pandoc reads each hostile text back from Markdown as words and spaces alone',
  () => {
    for (const format of ['markdown-smart', 'gfm']) expect(pandocTrial(format, 600, 21).faults).toEqual([])
  },
  60_000,
)

test.runIf(has('pdflatex') && has('pdftotext'))(
  'LaTeX prints each hostile text as it is',
  () => {
    expect(latexTrial(150, 22).faults).toEqual([])
  },
  60_000,
)

test('a carriage return is kept by its number, for parsers read a bare one as a line feed', () => {
  expect(escaped('a\r\nb')).toBe('a&#13;\nb')
})

test('line ends and tabs of an XML attribute are kept by their numbers, those of a text stand', () => {
  expect(xmlDocument(element('a', { b: '\t\n' }, '\t\n'))).toContain('<a b="&#9;&#10;">\t\n</a>')
})

test.each([
  ['~~a~~ ^b^', '\\~\\~a\\~\\~ \\^b\\^'],
  ['@a a@b.c', '\\@a a\\@b.c'],
  ['a {.b}', 'a \\{.b\\}'],
  [':smile: http://a', '\\:smile: http\\://a'],
  ['_www.a', '\\_www\\.a'],
  [': a', '\\: a'],
  ['    a', ' a'],
  ['1.', '1\\.'],
  ['(a) b', '(a\\) b'],
  ['a #', 'a \\#'],
  ['a \n\n b', 'a b'],
])('Markdown: %j becomes %j', (text, written) => {
  expect(escapedMarkdown(text)).toBe(written)
})

test.each([
  ['[x] *', '{[}x{]} {*}'],
  ['--', '-{}-'],
  ['"\'', "{''}'"],
  ["''", "'{}'"],
  ['?` !` ,,', '?{}` !{}` ,{},'],
  ['a\n\nb', 'a b'],
  ['semi-closed', 'semi-closed'],
])('LaTeX: %j becomes %j', (text, written) => {
  expect(escapedLatex(text)).toBe(written)
})

test('white space without end is written in linear time', () => {
  const long = ' '.repeat(200_000)
  const start = performance.now()
  escapedMarkdown(`a${long}b`)
  escapedLatex(`a${long}b`)
  expect(performance.now() - start).toBeLessThan(2000) // quadratic: about a minute
})

test('the second row of a Markdown table says how its columns stand', () => {
  const columns = [
    { heading: 'h', align: 'text' as const },
    { heading: 'n', align: 'number' as const },
  ]
  expect(tableMarkdown({ caption: 'c', columns, rows: [], notes: [] }).split('\n')[3]).toBe('| :--- | ---: |')
})
