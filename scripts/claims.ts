// Every measured figure of README.md and docs/measured: measured again, compared, written.
// Usage: npm run claims             sizes, pages of figures, and speeds by processor time (minutes)
//        npm run claims -- --quick  without speeds: what the checks run
//        npm run claims -- --all    with the trials that take longer
//        … --write                  stores what was measured and renews the tables
// A number of those pages that neither stands in a measured table nor is accounted for in claims/stated.ts is a fault.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import type { Block, Figures } from './claims/block.ts'
import { coverage } from './claims/coverage.ts'
import { divesBlock } from './claims/dives.ts'
import { errors } from './claims/errors.ts'
import { escaping } from './claims/escaping.ts'
import { idealOrRealFigures } from './claims/ideal-or-real.ts'
import { logs } from './claims/logs.ts'
import { realGas } from './claims/real-gas.ts'
import { sizes } from './claims/sizes.ts'
import { slips } from './claims/slips.ts'
import { isRate, speeds, yardstick, yardstickNow } from './claims/speeds.ts'
import { unaccounted } from './claims/unaccounted.ts'

const store = 'docs/measured/claims.json'
const options = process.argv.slice(2)
const writes = options.includes('--write')
const kinds: readonly Block['kind'][] = options.includes('--quick')
  ? ['quick']
  : options.includes('--all')
    ? ['quick', 'speed', 'long']
    : ['quick', 'speed']
const only = options.filter((option) => !option.startsWith('--'))

const blocks: readonly Block[] = [sizes, realGas, errors, ...speeds, coverage, logs, divesBlock, slips, escaping]
const stored = (existsSync(store) ? JSON.parse(readFileSync(store, 'utf8')) : {}) as Record<string, Figures>
const faults: string[] = []

for (const block of blocks) {
  const chosen = kinds.includes(block.kind) && (only.length === 0 || only.includes(block.name))
  const stated = stored[block.name]
  if (chosen) {
    const measured = await block.measure()
    if (writes) {
      stored[block.name] = measured
      writeFileSync(store, `${JSON.stringify(stored, undefined, 1)}\n`)
    } else faults.push(...differing(block, stated ?? {}, measured))
  }
  // The page must show what is stored, whether or not it was measured again.
  const now = stored[block.name]
  if (now === undefined) {
    faults.push(`${block.page}: "${block.name}" was never measured; run: npm run claims -- --all --write`)
    continue
  }
  const table = block.table(now)
  setBlock(block.page, block.name, table.join('\n'))
}
const { tables, charts } = idealOrRealFigures()
for (const [name, table] of Object.entries(tables))
  setBlock('docs/explanation/how-far-is-ideal-from-real.md', name, table)
for (const [name, svg] of Object.entries(charts)) setFile(`docs/explanation/figures/${name}.svg`, `${svg}\n`)

faults.push(...unaccounted())
for (const fault of faults) console.error(fault)
if (faults.length > 0) process.exitCode = 1
else console.log(writes ? 'stored and written' : `every figure holds (${kinds.join(', ')})`)

function differing({ page, name, band, kind }: Block, stated: Figures, measured: Figures): string[] {
  // Speeds are compared in yardsticks, so that a slower machine or a busy hour does not count against them.
  const pace = kind === 'speed' ? yardstickNow() / (stated[yardstick] ?? Number.NaN) : 1
  return Object.entries(measured).flatMap(([label, value]) => {
    if (label === yardstick) return []
    const expected = (stated[label] ?? Number.NaN) * (kind !== 'speed' ? 1 : isRate(label) ? pace : 1 / pace)
    const ratio = value / expected
    const fits = (ratio >= 1 / band && ratio <= band) || value === expected
    const line = `${page}, ${name}: ${label} is ${value.toPrecision(4)}, stated ${(stated[label] ?? Number.NaN).toPrecision(4)}`
    if (kind === 'speed') console.log(`${fits ? '' : 'OFF '}${line}, ${ratio.toFixed(2)} of it in yardsticks`)
    return fits ? [] : [`${line}; allowed is a factor of ${band}`]
  })
}

function setBlock(page: string, name: string, content: string): void {
  const text = readFileSync(page, 'utf8')
  const from = text.indexOf(`<!-- ${name} -->`)
  const to = text.indexOf('<!-- end -->', from)
  if (from < 0 || to < 0) {
    faults.push(`${page} has no place for "${name}"`)
    return
  }
  setFile(page, `${text.slice(0, from)}<!-- ${name} -->\n\n${content}\n\n${text.slice(to)}`)
}

function setFile(path: string, content: string): void {
  if (existsSync(path) && readFileSync(path, 'utf8') === content) return
  if (writes) writeFileSync(path, content)
  else faults.push(`${path} does not show what is stored or computed; run: npm run claims -- --quick --write`)
}
