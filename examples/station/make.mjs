// The demo: makes the station's winter course, a linked set of pages, from the text files in course/, and judges its register of cylinders.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { coursePages, readChapter, tableCsv, tableText } from 'litrebar/course'
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
for (const { file, line, message } of parts.flatMap(({ problems }) => problems)) {
  console.error(`${file}:${line}  ${message}`)
  process.exitCode = 1
}

const out = new URL('../../out/', import.meta.url)
mkdirSync(out, { recursive: true })
const pages = coursePages('Gear room, winter course', parts, { live: liveScript })
for (const [name, page] of pages) writeFileSync(new URL(name, out), page)
const register = registerTable('2026-11-25', 90)
writeFileSync(new URL('register.csv', out), tableCsv(register))

console.log('Gear room, winter course\n')
for (const { name, chapter } of parts)
  console.log(`  out/${name}.html  ${chapter.title}: ${chapter.sections.map(({ title }) => title).join('; ')}`)
console.log(`\n${tableText(register)}\n`)
console.log(
  `${pages.size} pages and register.csv written to out/ in ${((performance.now() - started) / 1000).toFixed(2)} s. Begin with out/index.html.`,
)
