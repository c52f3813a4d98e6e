// Long fuzz of readStamp: random texts and damaged stamps, seeded. Each must give a stamp or a typed error with its place.
// Usage: npm run script -- stamp-fuzz [count] [seed]
import { readFileSync } from 'node:fs'
import { fuzzStamps } from '../tests/cylinder/marking/stamp-fuzz.ts'

const count = Number(process.argv[2] ?? 1_000_000)
const seed = Number(process.argv[3] ?? 1)
const fixture = JSON.parse(readFileSync('tests/fixtures/stamps.json', 'utf8')) as {
  valid: { lines: string[] }[]
  malformed: { lines: string[] }[]
}
const seeds = [...fixture.valid, ...fixture.malformed].map(({ lines }) => lines.join('\n'))
const began = performance.now()
const { read, refused, slowest } = fuzzStamps({ count, seed, seeds })
const seconds = (performance.now() - began) / 1000
console.log(
  `${count} texts, seed ${seed}: ${read} read, ${refused} refused, none crashed; ${seconds.toFixed(1)} s; ` +
    `slowest ${slowest.milliseconds.toFixed(1)} ms for ${slowest.length} characters`,
)
