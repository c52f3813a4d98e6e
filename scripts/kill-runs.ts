// Kills runs of rows at random moments and compares every output with that of a run left alone.
// Usage: npm run script kill-runs [runs] [seed]
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type RowPlan, runRows } from '../src/batch/index.ts'
import { seededRandom } from '../src/uncertainty/random.ts'
import { hashOf, rowProgram, runKilled, writeRows } from '../tests/batch/killed-run.ts'

const runs = Number(process.argv[2] ?? 10)
const random = seededRandom(Number(process.argv[3] ?? 1), 0)
const folder = mkdtempSync(join(tmpdir(), 'litrebar-kill-'))
process.on('exit', () => rmSync(folder, { recursive: true, force: true }))
const plan: RowPlan = {
  compute: ['density'],
  inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: '°C' } },
  mixture: { value: 'air' },
}
const files = writeRows(folder, 400_000, plan)
const program = await rowProgram()
process.on('exit', program.remove)
let kills = 0
let different = 0
for (const format of ['csv', 'ndjson', 'arrow']) {
  const whole = join(folder, `whole.${format}`)
  await runRows({ ...files, output: whole })
  for (let run = 0; run < runs; run++) {
    const output = join(folder, `killed-${run}.${format}`)
    kills += await runKilled({ program, ...files, output }, 1 + Math.floor(random() * 4), random)
    if (hashOf(output) !== hashOf(whole)) different++
    rmSync(output)
  }
}
console.log(`${kills} kills in ${3 * runs} runs, ${different} outputs differ`)
if (different > 0) process.exitCode = 1
