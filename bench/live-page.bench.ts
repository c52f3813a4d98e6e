/// <reference lib="dom" />
// A live page in Chromium: how long a changed number takes to be a new working, and until tables and charts have followed.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { joinedLiveScript } from '../scripts/live-script.mjs'
import { chapterHtml, readChapter } from '../src/course/index.ts'
import { openBrowser } from '../tests/browser.ts'

const live = await joinedLiveScript()
const folder = mkdtempSync(join(tmpdir(), 'litrebar-live-'))
const browser = await openBrowser()
try {
  for (const name of ['01-gas-and-water', '10-compressors', '11-consumption']) {
    const { chapter, style } = readChapter(readFileSync(`examples/station/course/${name}.md`, 'utf8'), { file: name })
    const path = join(folder, `${name}.html`)
    writeFileSync(path, chapterHtml(chapter, { ...style, live }))
    const page = await browser.newPage()
    await page.goto(pathToFileURL(path).href)
    const rows = await page.evaluate(async () => {
      const frame = (): Promise<void> => new Promise((resolve) => requestAnimationFrame(() => resolve()))
      // the page has asked for this frame first: what it draws, and the layout after it, lie between the start of the frame and here
      const drawing = (): Promise<number> =>
        new Promise((resolve) => {
          requestAnimationFrame((start) => {
            document.body.getBoundingClientRect()
            resolve(performance.now() - start)
          })
        })
      const quantile = (values: number[], share: number): number =>
        values.toSorted((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? Number.NaN
      const found = []
      for (const box of document.querySelectorAll('.live')) {
        const slider = box.querySelector<HTMLInputElement>('input[type=range]')
        if (slider === null) continue
        const working: number[] = []
        const followed: number[] = []
        const [low, high] = [Number(slider.min), Number(slider.max)]
        for (let step = 0; step < 120; step++) {
          await frame()
          slider.value = String(low + ((high - low) * ((step * 37) % 101)) / 100)
          const began = performance.now()
          slider.dispatchEvent(new Event('input', { bubbles: true }))
          working.push(performance.now() - began)
          followed.push(await drawing())
        }
        found.push({
          section: box.closest('section')?.id,
          working: quantile(working.slice(20), 0.5),
          slowest: quantile(working.slice(20), 1),
          drawn: quantile(followed.slice(20), 0.5),
        })
      }
      return found
    })
    for (const { section, working, slowest, drawn } of rows)
      console.log(
        `${section ?? ''}: new working median ${working.toFixed(1)} ms, slowest ${slowest.toFixed(1)} ms; table and chart drawn in ${drawn.toFixed(1)} ms of the next frame`,
      )
    await page.close()
  }
} finally {
  await browser.close()
  rmSync(folder, { recursive: true })
}
