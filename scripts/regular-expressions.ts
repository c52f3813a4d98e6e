// How long every regular expression of the library may take, by `recheck`: linear, or what degree, and what that means in practice.
// Usage: npm run script -- regular-expressions          prints
//        npm run script -- regular-expressions --write  stores docs/measured/regular-expressions.json, which a test holds against src
import { writeFileSync } from 'node:fs'
import { checkSync } from 'recheck'
import { shippedPatterns } from './shipped-patterns.ts'

interface Row {
  readonly pattern: string
  readonly files: readonly string[]
  /** `safe (fuzz)`: too large for the proof, and nothing found by searching. */
  readonly complexity: string
  /** On the worst text that the tool found, pumped to 1000 characters. */
  readonly millisecondsAt1000?: number
}

const { patterns, built } = shippedPatterns()
const rows = patterns.map(({ source, flags, files }): Row => {
  const pattern = `/${source}/${flags}`
  const found = checkSync(source, flags, { timeout: 60_000 })
  if (found.status === 'unknown') return { pattern, files, complexity: 'unknown' }
  const row = { pattern, files, complexity: found.complexity.summary }
  if (found.status === 'safe') return row
  const { pumps, suffix } = found.attack
  const times = Math.ceil(1000 / pumps.reduce((sum, { pump }) => sum + pump.length, 0))
  const text = pumps.map(({ prefix, pump }) => prefix + pump.repeat(times)).join('') + suffix
  // a worse one would not come back
  return row.complexity === 'exponential'
    ? row
    : { ...row, millisecondsAt1000: millisecondsOf(new RegExp(source, flags), text) }
})
for (const { complexity, millisecondsAt1000, pattern, files } of rows) {
  if (complexity !== 'linear' && !complexity.startsWith('safe'))
    console.log(`${complexity}, ${millisecondsAt1000} ms at 1000 characters: ${pattern} in ${files.join(', ')}`)
}
const safe = rows.filter(({ complexity }) => complexity === 'linear' || complexity.startsWith('safe'))
console.log(`${rows.length} patterns: ${safe.length} linear; ${built.length} put together at run time`)
if (process.argv.includes('--write'))
  writeFileSync(
    'docs/measured/regular-expressions.json',
    `${JSON.stringify({ patterns: rows, built }, undefined, 1)}\n`,
  )

function millisecondsOf(pattern: RegExp, text: string): number {
  const { user: before } = process.cpuUsage()
  text.search(pattern)
  return Math.round((process.cpuUsage().user - before) / 100) / 10
}
