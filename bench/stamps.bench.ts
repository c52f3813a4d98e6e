// Stamps read per second of processor time: every stamp of the collections in turn, so that all families and all faults take part.
import { readFileSync } from 'node:fs'
import { readStamp } from '../src/cylinder/index.ts'

const runs = 7
const rounds = 1_000
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
  const began = process.cpuUsage()
  for (let round = 0; round < rounds; round++) {
    for (const text of texts) sink += readStamp(text, { asOf: '2026-11' }).findings.length
  }
  const { user, system } = process.cpuUsage(began)
  return (1e6 * rounds * texts.length) / (user + system)
}).sort((a, b) => a - b)
console.log(
  `${texts.length} stamps in turn: median ${rates[runs >> 1]?.toFixed(0)} stamps per second of processor time, ` +
    `slowest run ${rates[0]?.toFixed(0)}, fastest ${rates.at(-1)?.toFixed(0)}`,
)
console.log(sink > 0 ? '' : 'nothing was found')
