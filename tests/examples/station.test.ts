/// <reference lib="dom" />
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import axe from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import {
  type Chapter,
  chapterHtml,
  chapterMarkdown,
  type Table,
  tableCsv,
  type WorkedSolution,
} from '../../src/course/index.ts'
import type { NumberStyle } from '../../src/units/index.ts'
import { hasBrowser, openBrowser } from '../browser.ts'

interface Made {
  readonly section: Chapter['sections'][number]
  readonly summary: string
  readonly tables?: Readonly<Record<string, Table>>
  readonly solutions?: readonly WorkedSolution[]
}

// The example is plain JavaScript, as a reader would write it: its types are stated here.
const example = '../../examples/station/station.mjs'
const { stationChapter } = (await import(example)) as {
  stationChapter: () => { chapter: Chapter; style: NumberStyle; made: readonly Made[] }
}
const { chapter, style, made } = stationChapter()
const html = chapterHtml(chapter, style)

test('the chapter has a section for each request, with answer, working or table, sources and cautions', () => {
  expect(chapter.sections).toHaveLength(6)
  for (const { blocks, title } of chapter.sections) {
    const kinds = blocks.map((block) => block.kind)
    for (const kind of ['answer', 'table', 'sources', 'cautions'] as const) expect(kinds, title).toContain(kind)
  }
  const kinds = chapter.sections.flatMap((section) => section.blocks.map((block) => block.kind))
  expect(kinds.filter((kind) => kind === 'chart')).toHaveLength(6)
  expect(kinds.filter((kind) => kind === 'solution').length).toBeGreaterThanOrEqual(6)
})

test('every row of the register comes back, the bad ones with their reason', () => {
  const register = made.find(({ tables }) => tables?.['register'])?.tables?.['register']
  expect(register?.rows).toHaveLength(18)
  const bad = register?.rows.filter(([id]) => id?.startsWith('B-')) ?? []
  expect(bad.map(([id, ...cells]) => [id, cells.at(-2)])).toEqual([
    ['B-01', 'undetermined'],
    ['B-02', 'error'],
    ['B-03', 'error'],
  ])
  for (const row of bad) expect(row.at(-1)).not.toBe('')
  expect(tableCsv(register as Table).split('\r\n')).toHaveLength(18 + 2)
})

test('no text of the page says undefined, NaN or safe', () => {
  for (const text of [html, chapterMarkdown(chapter, style)])
    expect(text).not.toMatch(/\bundefined\b|\bNaN\b|\[object|\bsafe(ly)?\b/i)
})

test('the page keeps its policy: no script, nothing from elsewhere, under 300 kB', () => {
  expect(html).toContain(`default-src 'none'`)
  expect(html).not.toMatch(/<script|<link|src=|url\(| style="/)
  expect(Buffer.byteLength(html)).toBeLessThan(300_000)
})

const inBrowser = hasBrowser('the chapter of the demo')
let browser: Browser
let page: Page
const problems: string[] = []
const folder = mkdtempSync(join(tmpdir(), 'litrebar-chapter-'))

beforeAll(async () => {
  if (!inBrowser) return
  const file = join(folder, 'chapter.html')
  writeFileSync(file, html)
  browser = await openBrowser()
  page = await browser.newPage({ viewport: { width: 1200, height: 900 } })
  page.on('pageerror', (error) => problems.push(error.message))
  page.on('console', (message) => problems.push(message.text()))
  await page.goto(pathToFileURL(file).href)
})

afterAll(async () => {
  if (inBrowser) await browser.close()
  rmSync(folder, { recursive: true })
})

test.skipIf(!inBrowser)('opens from disk with its charts and formulas drawn, and nothing to complain of', async () => {
  const drawn = await page.evaluate(() => {
    const areas = (selector: string): number[] =>
      [...document.querySelectorAll(selector)].map((element) => {
        const { width, height } = element.getBoundingClientRect()
        return width * height
      })
    return { charts: areas('svg[role=img]'), formulas: areas('math'), paths: areas('svg path[fill=none]') }
  })
  expect(drawn.charts).toHaveLength(6)
  expect(drawn.formulas.length).toBeGreaterThan(30)
  for (const area of [...drawn.charts, ...drawn.formulas, ...drawn.paths]) expect(area).toBeGreaterThan(0)
  expect(problems).toEqual([])
})

test.skipIf(!inBrowser)('passes the rules of axe-core', async () => {
  // scripts are off by the page's own policy; the checker is run from outside it
  await page.evaluate(axe.source)
  const violations = await page.evaluate(async () => {
    const { axe: checker } = window as unknown as {
      axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> }
    }
    const { violations: found } = await checker.run()
    return found.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 90)).join(' | ')}`)
  })
  expect(violations).toEqual([])
})

test.skipIf(!inBrowser).each([320, 600, 1200])(
  '%s px wide: nothing scrolls sideways but wide tables',
  async (width) => {
    await page.setViewportSize({ width, height: 900 })
    const { page: whole, window: seen } = await page.evaluate(() => ({
      page: document.documentElement.scrollWidth,
      window: window.innerWidth,
    }))
    expect(whole).toBeLessThanOrEqual(seen)
  },
)
