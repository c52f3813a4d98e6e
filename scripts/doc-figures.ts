// Writes the tables and charts of docs/explanation/how-far-is-ideal-from-real.md with the library itself.
// Usage: npm run script -- doc-figures          compares, and fails where a page differs from what the library says
//        npm run script -- doc-figures --write  renews the page and its figures
import { readFileSync, writeFileSync } from 'node:fs'
import { idealOrRealFigures } from './ideal-or-real.ts'

const page = 'docs/explanation/how-far-is-ideal-from-real.md'
const { tables, charts } = idealOrRealFigures()

let text = readFileSync(page, 'utf8')
for (const [name, table] of Object.entries(tables)) {
  const block = new RegExp(`<!-- ${name} -->[^]*?<!-- end -->`)
  if (!block.test(text)) throw new Error(`${page} has no place for the table "${name}"`)
  text = text.replace(block, () => `<!-- ${name} -->\n\n${table}\n\n<!-- end -->`)
}
const files = {
  [page]: text,
  ...Object.fromEntries(
    Object.entries(charts).map(([name, svg]) => [`docs/explanation/figures/${name}.svg`, `${svg}\n`]),
  ),
}

if (process.argv.includes('--write')) {
  for (const [file, content] of Object.entries(files)) writeFileSync(file, content)
  console.log(`${Object.keys(files).length} files written`)
} else {
  const differing = Object.entries(files).filter(([file, content]) => readFileSync(file, 'utf8') !== content)
  for (const [file] of differing)
    console.error(`${file} differs from what the library computes; run: npm run script -- doc-figures --write`)
  if (differing.length > 0) process.exitCode = 1
  else console.log(`${Object.keys(files).length} files are as the library computes them`)
}
