/// <reference lib="dom" />
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import axe from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import {
  chapterHtml,
  chapterLatex,
  chapterMarkdown,
  chapterText,
  coursePages,
  readChapter,
  type Table,
} from '../../src/course/index.ts'
import { hasBrowser, openBrowser } from '../browser.ts'

const folder = new URL('../../examples/station/course/', import.meta.url)
const started = performance.now()
const parts = readdirSync(folder)
  .sort()
  .map((file) => ({
    name: file.replace('.md', ''),
    ...readChapter(readFileSync(new URL(file, folder), 'utf8'), { file }),
  }))
const pages = coursePages('Winter course', parts)
const seconds = (performance.now() - started) / 1000

test('the course has a chapter for each subject, without a problem, made in far less than ten seconds', () => {
  expect(parts.flatMap(({ problems }) => problems)).toEqual([])
  expect(parts.length).toBeGreaterThanOrEqual(11)
  expect([...pages.keys()]).toEqual([
    ...parts.map(({ name }) => `${name}.html`),
    'index.html',
    'formulas.html',
    'sources.html',
  ])
  expect(seconds).toBeLessThan(10)
})

test.each(parts)('$name has an answer, workings in both systems, a table and a chart', ({ chapter }) => {
  const blocks = chapter.sections.flatMap((section) => section.blocks)
  const kinds = blocks.map(({ kind }) => kind)
  for (const kind of ['answer', 'solution', 'table', 'chart']) expect(kinds).toContain(kind)
  const titles = blocks.flatMap((block) => (block.kind === 'solution' ? [block.solution.title] : []))
  expect(
    titles.some((title) => /US units/.test(title)),
    titles.join('; '),
  ).toBe(true)
})

test.each(parts)('$name says nothing of undefined, NaN or safe in any form', ({ chapter, style }) => {
  for (const write of [chapterHtml, chapterMarkdown, chapterLatex, chapterText])
    expect(write(chapter, style)).not.toMatch(/\bundefined\b|\bNaN\b|\[object|\bsafe(ly)?\b/i)
})

test('every link between the pages has its target', () => {
  for (const [name, page] of pages) {
    for (const [, file = '', target] of page.matchAll(/href="([a-z0-9-]+\.html)(?:#([^"]+))?"/g)) {
      expect(pages.has(file), `${name}: ${file}`).toBe(true)
      if (target !== undefined) expect(pages.get(file), `${name}: ${file}#${target}`).toContain(`id="${target}"`)
    }
  }
})

test('every page keeps its policy: no script, nothing from elsewhere, under 300 kB', () => {
  for (const page of pages.values()) {
    expect(page).toContain(`default-src 'none'; style-src 'sha256-`)
    expect(page).not.toMatch(/<script|<link|src=| style="/)
    expect(Buffer.byteLength(page)).toBeLessThan(300_000)
  }
})

test('the program of the station is short', () => {
  const station = new URL('../../examples/station/', import.meta.url)
  const lines = ['make.mjs', 'register.mjs', 'breathing-log.mjs'].map(
    (file) => readFileSync(new URL(file, station), 'utf8').split('\n').length,
  )
  expect(lines.reduce((sum, count) => sum + count)).toBeLessThanOrEqual(150)
})

test('every row of the register comes back, the bad ones with their reason', async () => {
  // the example is plain JavaScript, as a reader would write it: its type is stated here
  const example = '../../examples/station/register.mjs'
  const { registerTable } = (await import(example)) as { registerTable: (asOf: string, days: number) => Table }
  const { rows } = registerTable('2026-11-25', 90)
  expect(rows).toHaveLength(18)
  const bad = rows.filter(([id]) => id?.startsWith('B-'))
  expect(bad.map(([id, , state]) => [id, state])).toEqual([
    ['B-01', 'undetermined'],
    ['B-02', 'error'],
    ['B-03', 'error'],
  ])
  for (const row of bad) expect(row.at(-1)).not.toBe('')
})

const inBrowser = hasBrowser('the pages of the course')
let browser: Browser
let page: Page
const problems: string[] = []
const written = mkdtempSync(join(tmpdir(), 'litrebar-course-'))

beforeAll(async () => {
  if (!inBrowser) return
  for (const [name, text] of pages) writeFileSync(join(written, name), text)
  browser = await openBrowser()
  page = await browser.newPage({ viewport: { width: 1200, height: 900 } })
  page.on('pageerror', (error) => problems.push(error.message))
  page.on('console', (message) => problems.push(message.text()))
})

afterAll(async () => {
  if (inBrowser) await browser.close()
  rmSync(written, { recursive: true })
})

test.skipIf(!inBrowser).each([...pages.keys()])(
  '%s opens from disk, passes axe-core, and scrolls sideways at no width',
  async (name) => {
    problems.length = 0
    await page.setViewportSize({ width: 1200, height: 900 })
    await page.goto(pathToFileURL(join(written, name)).href)
    expect(problems).toEqual([])
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
    for (const width of [320, 390, 701, 900, 1024, 1200]) {
      await page.setViewportSize({ width, height: 900 })
      const whole = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      expect(whole, `${String(width)} px`).toBeLessThanOrEqual(0)
    }
  },
  60_000,
)

test.skipIf(!inBrowser)('letters of a chart are at least 9 px high on a telephone', async () => {
  await page.setViewportSize({ width: 390, height: 900 })
  await page.goto(pathToFileURL(join(written, `${parts[0]?.name ?? ''}.html`)).href)
  const size = await page.evaluate(() => {
    const svg = document.querySelector('svg[role=img]') as SVGSVGElement
    return (15 * svg.getBoundingClientRect().width) / svg.viewBox.baseVal.width
  })
  expect(size).toBeGreaterThanOrEqual(9)
})
