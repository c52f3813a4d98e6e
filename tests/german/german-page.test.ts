/// <reference lib="dom" />
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import axe from 'axe-core'
import { afterAll, expect, test } from 'vitest'
import {
  chapterHtml,
  chapterLatex,
  chapterMarkdown,
  chapterText,
  coursePages,
  readChapter,
} from '../../src/course/index.ts'
import { german } from '../../src/german/index.ts'
import { liveScript } from '../../src/live/index.ts'
import { hasBrowser, openBrowser } from '../browser.ts'

const file = 'verbrauch-und-reserve.md'
const text = readFileSync(new URL(`../../examples/station/kurs/${file}`, import.meta.url), 'utf8')
const read = readChapter(text, { file, languages: [german] })
const folder = mkdtempSync(join(tmpdir(), 'litrebar-german-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** Titles of publications stay in the language that they have. */
const publications = /OpenStax [^<\n]*|ISO [^<\n]*|The GERG-2008[^<\n]*|Kunz[^<\n]*/g
const english =
  /\b(the|and|with|from|which|is|are|comes|rounded|Caution|Source|Sources|Holds|Data of|section|equation)\b/

test('the chapter has no problem, its decimal sign comes with its language, a region of it too', () => {
  expect(read.problems).toEqual([])
  expect(read.style.decimal).toBe('comma')
  const swiss = readChapter(text.replace('language: de', 'language: de-CH'), { file, languages: [german] })
  expect(swiss.style.language).toBe(german)
  const without = readChapter('---\nlanguage: den\n---\n\n# T\n\nL.\n\n## S\n\nA.\n', { file, languages: [german] })
  expect(without.style.language).toBeUndefined()
})

test.each([
  ['HTML', chapterHtml],
  ['Markdown', chapterMarkdown],
  ['LaTeX', chapterLatex],
  ['text', chapterText],
] as const)('as %s it holds no English word and no decimal point in a number', (_, write) => {
  const written = write(read.chapter, read.style)
    .replaceAll(/<head>[\s\S]*?<\/head>|<svg[\s\S]*?<\/svg>|<[^>]*>|\\[a-z]+(?:\[[^\]]*\])?/g, ' ')
    .replaceAll(publications, '')
  expect(written.match(english)).toBeNull()
  const numbers = written.replaceAll(/Abschnitt \d+\.\d+|\d+\.\d+\.\d+|geprüft, 0\.1/g, '')
  if (write !== chapterLatex) expect(numbers.match(/\d\.\d/)).toBeNull()
})

test('the pages around German chapters are German', () => {
  const pages = coursePages('Kurs', [{ name: 'a', ...read }], { language: german })
  for (const name of ['index.html', 'formulas.html', 'sources.html']) {
    const page = pages.get(name) ?? ''
    expect(page).toContain('<html lang="de">')
    const body = page.replaceAll(/<head>[\s\S]*?<\/head>|<[^>]*>/g, ' ').replaceAll(publications, '')
    expect(body.match(english), name).toBeNull()
  }
})

test('targets of links keep their letters without marks', () => {
  expect(read.chapter.sections.map(({ id }) => id)[0]).toBe('was-am-floss-auf-den-taucher-druckt')
})

test.skipIf(!hasBrowser('the German page'))(
  'in a browser it is live in German, passes axe-core, and scrolls sideways at no width',
  async () => {
    const path = join(folder, 'seite.html')
    writeFileSync(path, chapterHtml(read.chapter, { ...read.style, live: liveScript }))
    const browser = await openBrowser()
    try {
      const page = await browser.newPage({ viewport: { width: 1200, height: 900 } })
      const problems: string[] = []
      page.on('pageerror', (error) => problems.push(error.message))
      page.on('console', (message) => problems.push(message.text()))
      await page.goto(pathToFileURL(path).href)
      const section = page.locator('section').first()
      const depth = section.locator('.live input[type=text]').last()
      await depth.fill('30,5')
      const result = section.locator('.solution .result math').first()
      expect(await result.getAttribute('alttext')).toMatch(/= 3,91\sbar$/)
      expect(await section.locator('.solution .result .note').first().textContent()).toContain('gerundet auf 3')
      await depth.fill('30,5x')
      expect(await section.locator('[role=status]').textContent()).toMatch(
        /^Tiefe: „30,5x“ ist nicht lesbar\..*Rechenweg/,
      )
      await depth.fill('700')
      await page.waitForTimeout(500)
      expect(await section.locator('[role=status]').textContent()).toMatch(
        /^Absolutdruck in der Tiefe: 69,6\sbar\. Tiefe: außerhalb von/,
      )
      expect(problems).toEqual([])
      await page.evaluate(axe.source)
      const violations = await page.evaluate(async () => {
        const { axe: checker } = window as unknown as { axe: { run: () => Promise<{ violations: { id: string }[] }> } }
        return (await checker.run()).violations.map(({ id }) => id)
      })
      expect(violations).toEqual([])
      for (const width of [320, 390, 701, 900, 1024, 1200]) {
        await page.setViewportSize({ width, height: 900 })
        const whole = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
        expect(whole, `${String(width)} px`).toBeLessThanOrEqual(0)
      }
    } finally {
      await browser.close()
    }
  },
  60_000,
)
