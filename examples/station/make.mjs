// The demo: makes the station's winter course, a linked set of pages, from the text files in course/, and judges its register of cylinders.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { chapterHtml, coursePages, readChapter, tableCsv, tableText } from 'litrebar/course'
import { german } from 'litrebar/german'
import { liveScript } from 'litrebar/live'
import { registerTable } from './register.mjs'

const started = performance.now()
const folder = new URL('course/', import.meta.url)
const parts = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .sort()
  .map((name) => ({
    name: name.replace('.md', ''),
    ...readChapter(readFileSync(new URL(name, folder), 'utf8'), { file: name }),
  }))
const name = 'verbrauch-und-reserve'
const inGerman = readChapter(readFileSync(new URL(`kurs/${name}.md`, import.meta.url), 'utf8'), {
  file: `${name}.md`,
  languages: [german],
})
for (const { file, line, message } of [...parts, inGerman].flatMap(({ problems }) => problems)) {
  console.error(`${file}:${line}  ${message}`)
  process.exitCode = 1
}

const out = new URL('../../out/', import.meta.url)
mkdirSync(out, { recursive: true })
const pages = coursePages('Gear room, winter course', parts, { live: liveScript })
for (const [name, page] of pages) writeFileSync(new URL(name, out), page)
writeFileSync(new URL(`${name}.html`, out), chapterHtml(inGerman.chapter, { ...inGerman.style, live: liveScript }))
const register = registerTable('2026-11-25', 90)
writeFileSync(new URL('register.csv', out), tableCsv(register))

console.log('Gear room, winter course\n')
for (const { name, chapter } of parts)
  console.log(`  out/${name}.html  ${chapter.title}: ${chapter.sections.map(({ title }) => title).join('; ')}`)
console.log(`  out/${name}.html  ${inGerman.chapter.title}, in German`)
console.log(`\n${tableText(register)}\n`)
console.log(
  `${pages.size + 1} pages and register.csv written to out/ in ${((performance.now() - started) / 1000).toFixed(2)} s. Begin with out/index.html.`,
)
