// The demo: writes the station's chapter, its tables and the judged register to out/, and says in short what came of it.
import { mkdirSync, writeFileSync } from 'node:fs'
import { chapterHtml, chapterMarkdown, tableCsv } from 'litrebar/course'
import { stationChapter } from './station.mjs'

const started = performance.now()
const { chapter, style, made } = stationChapter()

const out = new URL('../../out/', import.meta.url)
mkdirSync(out, { recursive: true })
const write = (name, text) => {
  writeFileSync(new URL(name, out), text)
  return `  out/${name}  ${(Buffer.byteLength(text) / 1000).toFixed(1)} kB`
}
const files = [
  write('chapter.html', chapterHtml(chapter, style)),
  write('chapter.md', chapterMarkdown(chapter, style)),
  ...made.flatMap(({ tables = {} }) =>
    Object.entries(tables).map(([name, table]) => write(`${name}.csv`, tableCsv(table))),
  ),
  write(
    'solutions.json',
    `${JSON.stringify(
      made.flatMap(({ solutions = [] }) => solutions),
      null,
      1,
    )}\n`,
  ),
]

console.log(`${chapter.title}\n`)
for (const { section, summary } of made) console.log(`  ${section.title}\n    ${summary}\n`)
console.log(`Written in ${((performance.now() - started) / 1000).toFixed(2)} s:`)
console.log(files.join('\n'))
