// Stamps read per second: every stamp of the collection in turn, so that all families and all faults take part.
import { readFileSync } from 'node:fs'
import { readStamp } from '../src/cylinder/index.ts'

const runs = 7
const rounds = 2_000
const fixture = JSON.parse(readFileSync('tests/fixtures/stamps.json', 'utf8')) as Record<
  'valid' | 'malformed',
  { lines: string[] }[]
>
const texts = [...fixture.valid, ...fixture.malformed].map(({ lines }) => lines.join('\n'))

let sink = 0
for (let round = 0; round < rounds; round++) {
  for (const text of texts) sink += readStamp(text, { asOf: '2026-11' }).findings.length // warm-up
}
const rates = Array.from({ length: runs }, () => {
  const began = performance.now()
  for (let round = 0; round < rounds; round++) {
    for (const text of texts) sink += readStamp(text, { asOf: '2026-11' }).findings.length
  }
  return (1000 * rounds * texts.length) / (performance.now() - began)
}).sort((a, b) => a - b)
console.log(
  `${texts.length} stamps in turn: median ${rates[runs >> 1]?.toFixed(0)} stamps/s, ` +
    `slowest run ${rates[0]?.toFixed(0)}, fastest ${rates.at(-1)?.toFixed(0)}`,
)
console.log(sink > 0 ? '' : 'nothing was found')
