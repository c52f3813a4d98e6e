// Measures the sizes that docs/measured/speed-and-size.md states, and writes them there.
// Usage: npm run script -- size-claims           compares, and fails where the page is off by more than 2 %
//        npm run script -- size-claims --write   renews the page
import { readFileSync, writeFileSync } from 'node:fs'
import { bundleSize } from './bundle-size.ts'

const page = 'docs/measured/speed-and-size.md'
const allowed = 0.02

const rows: readonly (readonly [label: string, code: string])[] = [
  ['one conversion, `inUnit` with `psi`', `import { inUnit, psi } from 'litrebar'; show(inUnit(pressure, psi))`],
  ['`pressureAtDepth`', `export { pressureAtDepth } from 'litrebar'`],
  ['the five ideal gas laws', `export { boyle, charles, combinedGasLaw, gayLussac, idealGasLaw } from 'litrebar'`],
  ['`workOfBreathing`', `export { workOfBreathing } from 'litrebar'`],
  ['`workedSolution` with one card', `export { workedSolution, pressureAtDepthCard } from 'litrebar/course'`],
  ['`freeGas`, real gas', `export { freeGas } from 'litrebar'`],
  ['`gasState`', `export { gasState } from 'litrebar'`],
  ['`turnPressures`', `export { turnPressures } from 'litrebar'`],
  ['`readStamp`', `export { readStamp } from 'litrebar'`],
  ['`assessFilling`', `export { assessFilling } from 'litrebar'`],
  ['`quantitySchema`, with its validator', `export { quantitySchema } from 'litrebar/schemas'`],
  ['every core room together', `export * from 'litrebar'`],
]

const measured = await Promise.all(rows.map(async ([label, code]) => ({ label, bytes: await bundleSize(code) })))
const text = readFileSync(page, 'utf8')
const block = /<!-- sizes -->[\s\S]*?<!-- end -->/
const stated = block.exec(text)?.[0]
if (stated === undefined) throw new Error(`${page} has no place for the sizes`)

if (process.argv.includes('--write')) {
  const lines = measured.map(({ label, bytes }) => `| ${label} | ${grouped(bytes)} |`)
  const table = ['| Import | Bytes |', '| :--- | ---: |', ...lines].join('\n')
  writeFileSync(
    page,
    text.replace(block, () => `<!-- sizes -->\n\n${table}\n\n<!-- end -->`),
  )
  console.log(`${measured.length} sizes written`)
} else {
  const off = measured.filter(({ label, bytes }) => {
    const line = stated.split('\n').find((each) => each.startsWith(`| ${label} |`))
    const claimed = Number(line?.split('|')[2]?.replaceAll(/\s/g, ''))
    return !(Math.abs(claimed / bytes - 1) <= allowed)
  })
  for (const { label, bytes } of off)
    console.error(`${page} is off for ${label}: ${grouped(bytes)} B; run: npm run script -- size-claims --write`)
  if (off.length > 0) process.exitCode = 1
  else console.log(`${measured.length} sizes are as the page states them`)
}

function grouped(bytes: number): string {
  return String(bytes).replaceAll(/\B(?=(\d{3})+$)/g, ' ')
}
