// Sends rows through a pipe to a process of its own, which computes them and sends them back, in runs of ten times as many rows each: what a
// row costs the process, how much memory it takes, and what follows for many more rows on paper. No file holds the rows.
// Usage: npm run script -- long-stream [largest power of ten for CSV] [for Arrow] [--write]
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { rmSync } from 'node:fs'
import { resolve } from 'node:path'
import { RecordBatchStreamWriter, tableFromArrays } from 'apache-arrow'
import { build } from 'esbuild'
import { machine, markdownTable, numbersGiven, storeResult } from '../bench/stored-result.ts'
import type { RowPlan } from '../src/batch/index.ts'
import { isoStandard } from '../src/gas-law/index.ts'

const [csvPower = 7, arrowPower = 8] = numbersGiven()
const program = resolve('.cache', `stream-${process.pid}.mjs`)
process.on('exit', () => rmSync(program, { force: true }))
await build({
  stdin: {
    contents: `import { runRows } from './src/batch/index.ts'
      const [format, plan] = process.argv.slice(2)
      await runRows({ input: '-', output: '-', inputFormat: format, outputFormat: format, plan: JSON.parse(plan) })
      const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage()
      process.stderr.write(JSON.stringify({ seconds: (userCPUTime + systemCPUTime) / 1e6, maxRSS: maxRSS * 1024 }))`,
    resolveDir: resolve('.'),
    loader: 'ts',
  },
  outfile: program,
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node20',
  logLevel: 'error',
})

const inputs = { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: '°C' } }
const plans: Readonly<Record<'csv' | 'arrow', RowPlan>> = {
  csv: {
    compute: ['freeGas', 'density', 'viscosity'],
    reference: isoStandard.name,
    inputs: { ...inputs, internalVolume: { value: '12 L' } },
    mixture: { column: 'gas' },
  },
  arrow: { compute: ['density'], inputs, mixture: { value: 'nitrox 32' } },
}
const pressureOf = (row: number): number => Number((1 + 230 * ((row * 0.618034) % 1)).toFixed(3))
const temperatureOf = (row: number): number => Number((5 + 30 * ((row * 0.414214) % 1)).toFixed(2))
const gases = ['air', 'nitrox 32', '18/45']
// as a log might carry, so that ten million rows are two gigabytes
const note = 'a remark of the watch keeper that goes through as it is; '.repeat(3)
const blockRows = 50_000

/** What stands before the rows, a block of rows that is sent again and again, and what stands behind them. */
const pieces = {
  csv: (): readonly [Buffer, Buffer, Buffer] => {
    const lines = Array.from(
      { length: blockRows },
      (_, row) => `${pressureOf(row)},${temperatureOf(row)},${gases[row % 3] ?? ''},${note}`,
    )
    return [Buffer.from('p,T,gas,note\n'), Buffer.from(`${lines.join('\n')}\n`), Buffer.alloc(0)]
  },
  arrow: (): readonly [Buffer, Buffer, Buffer] => {
    const table = tableFromArrays({
      p: Float64Array.from({ length: blockRows }, (_, row) => pressureOf(row)),
      T: Float64Array.from({ length: blockRows }, (_, row) => temperatureOf(row)),
    })
    const streamOf = (isEmpty: boolean): Buffer => {
      const writer = new RecordBatchStreamWriter()
      writer.reset(undefined, table.schema)
      if (!isEmpty) for (const batch of table.batches) writer.write(batch)
      writer.finish()
      return Buffer.from(writer.toUint8Array(true))
    }
    const endLength = 8
    const head = streamOf(true).subarray(0, -endLength)
    const whole = streamOf(false)
    return [head, whole.subarray(head.length, -endLength), whole.subarray(-endLength)]
  },
}

interface Run {
  readonly format: 'csv' | 'arrow'
  readonly rows: number
  readonly seconds: number
  readonly clock: number
  readonly maxRSS: number
  readonly bytesIn: number
  readonly bytesOut: number
}

async function stream(format: 'csv' | 'arrow', rows: number): Promise<Run> {
  const [head, block, tail] = pieces[format]()
  const began = performance.now()
  const child = spawn(process.execPath, [program, format, JSON.stringify(plans[format])])
  let bytesOut = 0
  let said = ''
  child.stdout.on('data', (chunk: Buffer) => {
    bytesOut += chunk.length
  })
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk.toString()
  })
  const ended = once(child, 'close')
  let bytesIn = 0
  const send = async (bytes: Buffer): Promise<void> => {
    bytesIn += bytes.length
    if (!child.stdin.write(bytes)) await once(child.stdin, 'drain')
  }
  await send(head)
  for (let row = 0; row < rows; row += blockRows) await send(block)
  await send(tail)
  child.stdin.end()
  await ended
  const { seconds, maxRSS } = JSON.parse(said) as { seconds: number; maxRSS: number }
  return { format, rows, seconds, maxRSS, bytesIn, bytesOut, clock: (performance.now() - began) / 1000 }
}

const runs: Run[] = []
for (const [format, power] of [
  ['csv', csvPower],
  ['arrow', arrowPower],
] as const) {
  for (let exponent = 5; exponent <= power; exponent++) {
    runs.push(await stream(format, 10 ** exponent))
    console.log(runs.at(-1))
  }
}
const names = { csv: 'CSV, three results, gas by name', arrow: 'Arrow, density, one gas' }
const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(0)
const measured = markdownTable(
  ['through a pipe', 'rows', 'processor time a row, µs', 'clock, s', 'MB in', 'MB out', 'most memory, MB'],
  runs.map(({ format, rows, seconds, clock, bytesIn, bytesOut, maxRSS }) => [
    names[format],
    `10^${Math.log10(rows)}`,
    ((seconds / rows) * 1e6).toFixed(2),
    clock.toFixed(1),
    megabytes(bytesIn),
    megabytes(bytesOut),
    megabytes(maxRSS),
  ]),
)
storeResult('docs/measured/batch.md', 'stream', `${machine()}.\n\n${measured}`)

/** From the two largest runs: what a further row costs, free of the start and the tables. */
const perRow = (format: 'csv' | 'arrow'): number => {
  const [small, large] = runs.filter((run) => run.format === format).slice(-2)
  if (small === undefined || large === undefined) return Number.NaN
  return (large.seconds - small.seconds) / (large.rows - small.rows)
}
const two = (value: number): string => String(Number(value.toPrecision(2)))
const duration = (seconds: number): string => {
  if (seconds < 120) return `${two(seconds)} s`
  if (seconds < 7200) return `${two(seconds / 60)} min`
  return seconds < 172_800 ? `${two(seconds / 3600)} h` : `${two(seconds / 86_400)} days`
}
const size = (bytes: number): string => (bytes < 1e12 ? `${two(bytes / 1e9)} GB` : `${two(bytes / 1e12)} TB`)
const paper = markdownTable(
  ['on paper', 'rows', 'processor time', 'on 16 processors', 'in and out'],
  (['csv', 'arrow'] as const).flatMap((format) => {
    const last = runs.filter((run) => run.format === format).at(-1)
    const bytes = last === undefined ? Number.NaN : (last.bytesIn + last.bytesOut) / last.rows
    return [6, 9, 12].map((exponent) => {
      const seconds = perRow(format) * 10 ** exponent
      return [names[format], `10^${exponent}`, duration(seconds), duration(seconds / 16), size(bytes * 10 ** exponent)]
    })
  }),
)
storeResult('docs/measured/batch.md', 'sizes', paper)
