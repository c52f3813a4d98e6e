/// <reference lib="dom" />
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import axe from 'axe-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import { chapterHtml, readChapter } from '../../src/course/index.ts'
import { liveScript } from '../../src/live/index.ts'
import { hasBrowser, openBrowser } from '../browser.ts'

const inBrowser = hasBrowser('live pages')
const folder = mkdtempSync(join(tmpdir(), 'litrebar-live-'))
const names = ['01-gas-and-water', '10-compressors', '11-consumption']
const addressOf = (name: string): string => pathToFileURL(join(folder, `${name}.html`)).href
let browser: Browser
let page: Page
const problems: string[] = []

for (const name of names) {
  const file = new URL(`../../examples/station/course/${name}.md`, import.meta.url)
  const { chapter, style, problems: found } = readChapter(readFileSync(file, 'utf8'), { file: name })
  if (found.length > 0) throw new Error(JSON.stringify(found))
  writeFileSync(join(folder, `${name}.html`), chapterHtml(chapter, { ...style, live: liveScript }))
}

async function openPage(javaScriptEnabled = true): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1200, height: 900 }, javaScriptEnabled })
  const opened = await context.newPage()
  opened.on('pageerror', (error) => problems.push(error.message))
  opened.on('console', (message) => problems.push(message.text()))
  opened.on('request', (request) => {
    if (!request.url().startsWith('file:')) problems.push(request.url())
  })
  // a violation of the policy is reported to the document, whether the console says so or not
  await opened.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => console.log(`policy: ${event.violatedDirective}`))
  })
  return opened
}

beforeAll(async () => {
  if (!inBrowser) return
  browser = await openBrowser()
  page = await openPage()
})
beforeEach(() => {
  problems.length = 0
})
afterAll(async () => {
  if (inBrowser) await browser.close()
  rmSync(folder, { recursive: true })
})

const raft = '#what-the-pressure-is-at-the-raft'
const depth = (of: Page = page): ReturnType<Page['getByLabel']> =>
  of.locator(raft).getByLabel('depth', { exact: false }).first()
const answers = (of: Page = page): Promise<string[]> =>
  of
    .locator(`${raft} .solution .result math`)
    .evaluateAll((all) => all.map((each) => (each.getAttribute('alttext') ?? '').replaceAll('\u202f', ' ')))

const test_ = test.skipIf(!inBrowser)

test_('a changed depth changes both workings, the table and the chart that share what is changed', async () => {
  await page.goto(addressOf('01-gas-and-water'))
  expect(await answers()).toEqual(['p = 326 860 Pa = 3.27 bar', 'p = 326 860 Pa = 47.4 psi'])
  await depth().fill('30')
  expect(await answers()).toEqual(['p = 385 700 Pa = 3.86 bar', 'p = 385 700 Pa = 55.9 psi'])
  const cells = (): Promise<string[]> => page.locator(`${raft} > div table tbody tr:first-child td`).allTextContents()
  const line = (): Promise<string | null> => page.locator(`${raft} svg path`).nth(1).getAttribute('d')
  const [before, drawn] = [await cells(), await line()]
  await page.locator(raft).getByLabel('absolute pressure at the surface', { exact: false }).first().fill('700')
  await page.waitForTimeout(60)
  const after = await cells()
  expect(after.slice(2, 4)).toEqual(['0.70', '10.2'])
  expect([...after.slice(0, 2), ...after.slice(4)]).toEqual([...before.slice(0, 2), ...before.slice(4)])
  expect(await line()).not.toBe(drawn)
  expect(problems).toEqual([])
})

test_(
  'what cannot be read is said at once and to the field; the last good working stays, and the next good one follows',
  async () => {
    await page.goto(addressOf('01-gas-and-water'))
    await depth().fill('30')
    for (const text of ['', '3o', '30 kg', '1e999']) {
      await depth().fill(text)
      expect(await answers()).toEqual(['p = 385 700 Pa = 3.86 bar', 'p = 385 700 Pa = 55.9 psi'])
      const status = page.locator(`${raft} [role=status]`)
      expect(await status.textContent()).toContain(
        `Depth: “${text}” cannot be read. Write a number, such as 24\u202fm.`,
      )
      expect(await depth().getAttribute('aria-invalid')).toBe('true')
      const described = (await depth().getAttribute('aria-describedby'))?.split(' ') ?? []
      expect(described).toContain(await status.getAttribute('id'))
    }
    await depth().fill('80 ft')
    expect((await answers())[0]).toBe('p = 330 630 Pa = 3.31 bar')
    expect(await depth().getAttribute('aria-invalid')).toBeNull()
    await page.waitForTimeout(500)
    expect(await page.locator(`${raft} [role=status]`).textContent()).toBe(
      'Absolute pressure at the depth: 3.31\u202fbar.',
    )
    expect(problems).toEqual([])
  },
)

test_(
  'numbers outside the range of the card are computed and said to be; those the formula refuses are refused',
  async () => {
    await page.goto(addressOf('10-compressors'))
    const section = page.locator('#what-goes-in-for-what-comes-out')
    const pressure = section.getByLabel('absolute pressure', { exact: false }).first()
    const result = (): Promise<string | null> => section.locator('.result math').first().getAttribute('alttext')
    await pressure.fill('450')
    await page.waitForTimeout(500)
    expect(await section.locator('[role=status]').textContent()).toMatch(
      /is outside [\d.]+\u202fbar to [\d.]+\u202fbar/,
    )
    const before = await result()
    await pressure.fill('90000')
    expect(await section.locator('[role=status]').textContent()).toMatch(
      /^One of the numbers comes to .*the formula accepts .*at most/,
    )
    expect(await result()).toBe(before)
    expect(problems).toEqual([])
  },
)

test_('the state is in the address: a link carries it, and the button gives the printed numbers back', async () => {
  await page.goto(addressOf('01-gas-and-water'))
  await depth().fill('30')
  await page.waitForTimeout(400)
  const address = page.url()
  expect(address).toMatch(/#what-the-pressure-is-at-the-raft\?d=30$/)
  const other = await openPage()
  await other.goto(address)
  expect((await answers(other))[0]).toBe('p = 385 700 Pa = 3.86 bar')
  expect(await depth(other).inputValue()).toBe('30')
  expect(await other.locator(`${raft} .live-note`).isVisible()).toBe(true)
  await other.locator(raft).getByRole('button').click()
  expect((await answers(other))[0]).toBe('p = 326 860 Pa = 3.27 bar')
  expect(await other.locator(`${raft} .live-note`).isVisible()).toBe(false)
  await other.waitForTimeout(400)
  expect(other.url()).toBe(addressOf('01-gas-and-water'))
  await other.context().close()
  expect(problems).toEqual([])
})

test_('everything is done by keyboard alone', async () => {
  await page.goto(addressOf('01-gas-and-water'))
  await page.evaluate(() => document.querySelector<HTMLElement>('.live input')?.focus())
  const focused = (): Promise<string> =>
    page.evaluate(
      () => `${document.activeElement?.tagName ?? ''} ${document.activeElement?.getAttribute('type') ?? ''}`,
    )
  const seen = [await focused()]
  for (let press = 0; press < 8; press++) {
    await page.keyboard.press('Tab')
    seen.push(await focused())
  }
  const pair = ['INPUT text', 'INPUT range']
  expect(seen).toEqual([...pair, ...pair, ...pair, ...pair, 'BUTTON button'])
  await page.keyboard.press('Shift+Tab')
  await page.keyboard.press('End')
  expect(await depth().inputValue()).toBe('300')
  expect((await answers())[0]).toMatch(/= 30\.3 bar$/)
  await page.keyboard.press('ArrowLeft')
  expect(Number(await depth().inputValue())).toBeLessThan(300)
  await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  expect(await depth().inputValue()).toBe('24')
  expect(problems).toEqual([])
})

test_.each(names)(
  '%s passes axe-core after a change, scrolls sideways at no width, and breaks no policy',
  async (name) => {
    await page.goto(addressOf(name))
    for (const field of await page.locator('.live input[type=text]').all())
      await field.fill(`${await field.inputValue()}1`)
    await page.waitForTimeout(100)
    expect(await page.locator('.live').count()).toBeGreaterThan(1)
    const states = await page
      .locator('.live-note')
      .evaluateAll((notes) => notes.map((note) => (note as HTMLElement).hidden))
    expect(states).toContain(false)
    expect(problems).toEqual([])
    // the checker is run from outside the page's own policy
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
)

test_('what is printed is the state shown, without fields, and says that numbers were changed', async () => {
  await page.goto(addressOf('01-gas-and-water'))
  await depth().fill('30')
  await page.emulateMedia({ media: 'print' })
  expect(await page.locator(`${raft} .live`).isVisible()).toBe(false)
  expect(await page.locator(`${raft} .live-note`).isVisible()).toBe(true)
  expect((await answers())[0]).toContain('3.86 bar')
  await page.emulateMedia({ media: 'screen' })
})

test_(
  'without script the page reads as it does today, and the script changes nothing before the reader does',
  async () => {
    const still = await openPage(false)
    await still.goto(addressOf('01-gas-and-water'))
    await page.goto(addressOf('01-gas-and-water'))
    expect(await still.locator('.live').count()).toBe(0)
    const inner = (of: Page): Promise<string[]> =>
      of.locator('.solution, figure, table').evaluateAll((all) => all.map((each) => each.innerHTML))
    expect(await inner(still)).toEqual(await inner(page))
    await still.context().close()
  },
)
