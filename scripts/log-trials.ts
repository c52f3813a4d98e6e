// Logs with the faults of real channels and real breaths: how far the work is off, which findings are raised, and how often the stated
// interval holds where there is none. Usage: npm run script -- log-trials [trials] [seed] [kind]
import { type FaultTrial, faults, faultTrial, moreFaults } from '../tests/regulator-performance/faulty-log.ts'

const trials = Number(process.argv[2] ?? 1000)
const seed = Number(process.argv[3] ?? 1)
const only = process.argv[4]

const results = Array.from({ length: trials }, (_, index) => faultTrial(seed, index, { ...faults, ...moreFaults }))
const kinds = [...new Set(results.map(({ kind }) => kind))]
const percent = (share: number): string => `${(100 * share).toFixed(2)} %`
const count = (rows: readonly FaultTrial[], test: (row: FaultTrial) => boolean): number => rows.filter(test).length

for (const kind of kinds) {
  const rows = results.filter((row) => row.kind === kind)
  const plain = rows.filter(({ warned }) => !warned)
  const worst = Math.max(0, ...plain.map(({ relativeError }) => Math.abs(relativeError)))
  console.log(
    `${kind.padEnd(32)} ${rows.length} logs, ${rows.length - plain.length} warned; without: worst ${percent(worst)}, covered ${count(plain, ({ within }) => within)} of ${plain.length}, worst rate ${percent(Math.max(0, ...rows.map(({ rateError }) => Math.abs(rateError))))}`,
  )
  console.log(`  ${[...new Set(rows.flatMap(({ findings }) => findings))].join(', ')}`)
  if (kind === only) for (const row of rows) console.log(JSON.stringify(row))
}
const plain = results.filter(({ warned }) => !warned)
const missed = plain.filter(({ relativeError }) => Math.abs(relativeError) > 0.02)
console.log(`${missed.length} logs off by more than 2 % without a finding: ${JSON.stringify(missed.slice(0, 5))}`)
console.log(
  `covered ${percent(count(plain, ({ within }) => within) / plain.length)} of ${plain.length} logs without a finding`,
)
