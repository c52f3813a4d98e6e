import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { hostileTexts } from './hostile-texts.ts'
import { browserWriters, csvOf, latexOf, markdownOf, type TextWriter, type Written } from './written-texts.ts'

/** How many texts went through a parser, and those that did not come back, or brought an element with them. */
export interface Trial {
  readonly texts: number
  readonly faults: readonly string[]
}

function take(texts: Generator<string>, count: number): string[] {
  return Array.from({ length: count }, () => texts.next().value as string)
}

/**
 * Texts through a writer and the parser of a browser: each must come back as it was, and the elements must be those of the same
 * document with harmless texts.
 */
export async function browserTrial(
  page: Page,
  name: keyof typeof browserWriters,
  count: number,
  seed: number,
): Promise<Trial> {
  const { takes, type, write }: TextWriter = browserWriters[name]
  const texts = hostileTexts(seed, true)
  const harmless = write(Array.from({ length: takes }, () => 'x'))
  const faults: string[] = []
  const perCall = Math.max(1, Math.floor(4000 / takes))
  let done = 0
  while (done < count) {
    const written = Array.from({ length: perCall }, () => write(take(texts, takes)))
    done += perCall * takes
    const parsed = await page.evaluate(readBack, {
      type,
      documents: [harmless, ...written].map(({ document, places }) => ({
        document,
        places: places.map(({ selector, attribute = null }) => ({ selector, attribute })),
      })),
    })
    const elements = parsed[0]?.elements
    written.forEach(({ places }: Written, at) => {
      const read = parsed[at + 1]
      if (read?.elements !== elements) faults.push(`${name}: other elements, ${read?.elements.slice(0, 200) ?? ''}`)
      places.forEach(({ selector, texts: given }, place) => {
        if (given.length !== read?.texts[place]?.length) faults.push(`${name}: ${selector} not found`)
        given.forEach((text, i) => {
          const back = read?.texts[place]?.[i]
          if (back !== text)
            faults.push(`${name} ${selector}: ${JSON.stringify(text)} came back ${JSON.stringify(back)}`)
        })
      })
    })
  }
  return { texts: done, faults }
}

interface Question {
  readonly type: TextWriter['type']
  readonly documents: readonly {
    readonly document: string
    readonly places: readonly { readonly selector: string; readonly attribute: string | null }[]
  }[]
}

/** Runs in the browser: no name from outside. */
function readBack({ type, documents }: Question): { texts: (string | null)[][]; elements: string }[] {
  const parser = new DOMParser()
  return documents.map(({ document, places }) => {
    const parsed = parser.parseFromString(document, type)
    const counts = new Map<string, number>()
    for (const element of parsed.querySelectorAll('*')) {
      const names = element.getAttributeNames().filter((name) => name !== 'class')
      const kind = [element.localName, ...names].join(' ')
      counts.set(kind, (counts.get(kind) ?? 0) + 1)
    }
    return {
      texts: places.map(({ selector, attribute }) =>
        Array.from(parsed.querySelectorAll(selector), (element) =>
          attribute === null ? element.textContent : element.getAttribute(attribute),
        ),
      ),
      elements: JSON.stringify([...counts].sort()),
    }
  })
}

/** White space of a text is free in Markdown and LaTeX. */
const bare = (text: string): string =>
  text
    .normalize('NFC')
    .replaceAll(/[\s\u00a0\u2028]+/g, ' ')
    .trim()

type Node = { readonly t: string; readonly c?: unknown }

/** Texts through Markdown and pandoc: paragraphs and cells come back as text and spaces, nothing else. */
export function pandocTrial(format: string, count: number, seed: number): Trial {
  const given = take(hostileTexts(seed, true), count)
  const document = markdownOf(given)
  const parsed = JSON.parse(
    execFileSync('pandoc', ['-f', format, '-t', 'json'], { input: document, encoding: 'utf8', maxBuffer: 2 ** 30 }),
  ) as { blocks: Node[] }
  const faults: string[] = []
  const inlines = (nodes: readonly Node[]): string =>
    nodes
      .map(({ t, c }) => {
        if (t === 'Str') return c as string
        if (t === 'Space' || t === 'SoftBreak') return ' '
        return `<${t}>`
      })
      .join('')
  const blocks = parsed.blocks
  const table = blocks.find(({ t }) => t === 'Table')
  const [paragraphs, cells] = [given.filter((_, at) => at % 2 === 0), given.filter((_, at) => at % 2 === 1)]
  // heading, lead, heading; the caption; the closing line
  const read = blocks
    .slice(3, blocks.indexOf(table as Node))
    .map(({ t, c }) => (t === 'Para' ? inlines(c as Node[]) : `<${t}>${JSON.stringify(c).slice(0, 80)}`))
  const visible = paragraphs.map(bare).filter((text) => text !== '')
  compare('paragraph', visible, read.slice(0, visible.length), faults)
  if (table === undefined) faults.push(`${format}: no table`)
  else {
    const bodies = (table.c as unknown[])[4] as unknown[][]
    const rows = (bodies[0]?.[3] ?? []) as [unknown, [unknown, unknown, unknown, unknown, Node[]][]][]
    const back = rows.map(([, row]) =>
      row
        .map(([, , , , content]) =>
          content.map(({ t, c }) => (t === 'Plain' || t === 'Para' ? inlines(c as Node[]) : `<${t}>`)).join(''),
        )
        .join('<cell>'),
    )
    compare('cell', cells.map(bare), back, faults)
  }
  return { texts: count, faults }
}

function compare(what: string, given: readonly string[], read: readonly string[], faults: string[]): void {
  if (given.length !== read.length)
    faults.push(`${what}: ${String(given.length)} went in, ${String(read.length)} came back`)
  given.forEach((text, at) => {
    if (bare(read[at] ?? '') !== text && faults.length < 40)
      faults.push(`${what}: ${JSON.stringify(text)} came back ${JSON.stringify(read[at])}`)
  })
}

/** Texts through LaTeX and back out of the printed page, between marks of their own. */
export function latexTrial(count: number, seed: number): Trial {
  const given = take(hostileTexts(seed, false), count)
  const marked = given.map((text, at) => `${text} Q${String(at)}Q`)
  const folder = mkdtempSync(join(tmpdir(), 'escaping-'))
  try {
    // a page so wide that no line breaks within a word
    const wide =
      '\\pdfpagewidth=5000mm\\paperwidth=5000mm\\textwidth=4900mm\\hoffset=-20mm\\LTleft=0pt\\hyphenpenalty=10000\\exhyphenpenalty=10000'
    writeFileSync(join(folder, 'a.tex'), latexOf(marked).replace('\\begin{document}', `${wide}\\begin{document}`))
    const run = { cwd: folder, encoding: 'utf8', stdio: 'pipe', maxBuffer: 2 ** 30 } as const
    execFileSync('pdflatex', ['-interaction=nonstopmode', '-halt-on-error', '-no-shell-escape', 'a.tex'], run)
    execFileSync('pdftotext', ['-raw', '-enc', 'UTF-8', 'a.pdf', 'a.txt'], run)
    // an underscore is printed as a rule, which no reader of the page calls a character
    const solid = (text: string): string => text.replaceAll(/[\s_]+/g, '')
    const printed = solid(readFileSync(join(folder, 'a.txt'), 'utf8'))
      .replaceAll('’', "'")
      .replaceAll('‘', '`')
      .replaceAll('”', '"')
      .replaceAll('ˆ', '^')
      .replaceAll('˜', '~')
    const faults = given.flatMap((text, at) => {
      const wanted = `${solid(text)}Q${String(at)}Q`
      if (printed.includes(wanted)) return []
      const end = printed.indexOf(`Q${String(at)}Q`)
      return [`${JSON.stringify(text)} came back ${JSON.stringify(printed.slice(Math.max(0, end - 60), end))}`]
    })
    return { texts: count, faults }
  } catch (error) {
    const said = (error as { stdout?: string }).stdout ?? String(error)
    return { texts: count, faults: [said.slice(said.search(/^!/m)).slice(0, 600)] }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Texts through CSV and a spreadsheet: no cell becomes a formula, each cell of text holds its text. */
export function spreadsheetTrial(count: number, seed: number): Trial {
  const given = take(hostileTexts(seed, true), count).filter((text) => text.trim() !== '')
  const folder = mkdtempSync(join(tmpdir(), 'escaping-'))
  try {
    writeFileSync(join(folder, 'a.csv'), csvOf(given.map((text, at) => `${text}Q${String(at)}Q`)))
    const home = `-env:UserInstallation=file://${folder}/profile`
    const call = [home, '--headless', '--infilter=CSV:44,34,76,1', '--convert-to', 'fods', '--outdir', folder]
    execFileSync('soffice', [...call, join(folder, 'a.csv')], { stdio: 'ignore', timeout: 400_000 })
    const sheet = readFileSync(join(folder, 'a.fods'), 'utf8')
    const faults = sheet.includes('table:formula') ? ['a cell became a formula'] : []
    const cells = [...sheet.matchAll(/<table:table-cell[^>]*>(.*?)<\/table:table-cell>/gs)].slice(1)
    if (cells.length !== given.length)
      faults.push(`${String(given.length)} cells went in, ${String(cells.length)} came back`)
    cells.forEach(([, content = ''], at) => {
      // the spreadsheet keeps no tabs in a cell of several lines, and has one line end for each of its spellings
      const text = textOf(content).replaceAll('\t', '')
      const wanted = `${given[at] ?? ''}Q${String(at)}Q`.replaceAll(/\r\n?|\n\r/g, '\n').replaceAll('\t', '')
      if (text !== wanted && text !== `'${wanted}` && faults.length < 40)
        faults.push(`${JSON.stringify(wanted)} came back ${JSON.stringify(text)}`)
    })
    return { texts: given.length, faults }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The text of a cell of a flat OpenDocument file. */
function textOf(content: string): string {
  return content
    .trim()
    .replaceAll(/<text:p\/>/g, '<text:p></text:p>')
    .replaceAll(/<\/text:p>\s*<text:p[^>]*>/g, '\n')
    .replaceAll(/<text:s text:c="(\d+)"\/>/g, (_, count: string) => ' '.repeat(Number(count)))
    .replaceAll('<text:s/>', ' ')
    .replaceAll('<text:tab/>', '\t')
    .replaceAll('<text:line-break/>', '\n')
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&')
}
