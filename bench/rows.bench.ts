// What a row costs from file to file, in CPU time, since other work may share the machine: free gas, density and viscosity of three gases.
// Usage: npm run bench rows [thousands of rows]
import { appendFileSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type RowFormatName, type RowPlan, runRows } from '../src/batch/index.ts'
import { isoStandard } from '../src/gas-law/index.ts'

const rows = Number(process.argv[2] ?? 1000) * 1000
const folder = mkdtempSync(join(tmpdir(), 'litrebar-bench-'))
process.on('exit', () => rmSync(folder, { recursive: true, force: true }))
const path = (name: string): string => join(folder, name)
const plan: RowPlan = {
  compute: ['freeGas', 'density', 'viscosity'],
  reference: isoStandard.name,
  inputs: {
    pressure: { column: 'p', unit: 'bar' },
    temperature: { column: 'T', unit: '°C' },
    internalVolume: { value: '12 L' },
  },
  mixture: { column: 'gas' },
}
const gases = ['air', 'nitrox 32', '18/45']
const lineOf = (row: number): string => {
  const pressure = (1 + 230 * ((row * 0.618034) % 1)).toFixed(3)
  return `${pressure},${(5 + 30 * ((row * 0.414214) % 1)).toFixed(2)},${gases[row % 3] ?? ''}\n`
}
writeFileSync(path('in.csv'), 'p,T,gas\n')
for (let row = 0; row < rows; row += 1000) {
  appendFileSync(path('in.csv'), Array.from({ length: Math.min(1000, rows - row) }, (_, i) => lineOf(row + i)).join(''))
}

const cpuSeconds = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

async function measure(from: string, to: string, planned: RowPlan = plan): Promise<void> {
  const before = cpuSeconds()
  let first = 0
  const done = await runRows({
    input: path(from),
    output: path(to),
    plan: planned,
    overwrite: true,
    onProgress: () => {
      first ||= cpuSeconds() - before
    },
  })
  const all = cpuSeconds() - before
  console.log(
    `${from.padEnd(12)} to ${to.padEnd(14)} ${all.toFixed(2).padStart(6)} s CPU in all, first block ${first.toFixed(2)} s, ${(done.rows / all / 1000).toFixed(0)} k rows/s, ${(statSync(path(to)).size / done.rows).toFixed(0)} bytes a row`,
  )
}

const copied: RowPlan = { ...plan, compute: ['density'] }
await measure('in.csv', 'out.csv')
for (const format of ['ndjson', 'arrow', 'parquet'] satisfies RowFormatName[]) {
  await measure('in.csv', `in.${format}`, copied)
  await measure(`in.${format}`, `out.${format}`)
}
