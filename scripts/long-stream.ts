// What a row costs in small and in very large runs, and how much memory it takes: files as a stream to a process of its own, which
// computes the rows and sends them back, so that no file holds them; columns block by block. And what follows for many more rows on paper.
// Usage: npm run script -- long-stream csv [gigabytes] | arrow [largest power of ten] | columns [largest power of ten] [--write]
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { rmSync } from 'node:fs'
import { resolve } from 'node:path'
import { RecordBatchStreamWriter, tableFromArrays } from 'apache-arrow'
import { build } from 'esbuild'
import { cpuSeconds, machine, markdownTable, numbersGiven, storeResult } from '../bench/stored-result.ts'
import type { RowPlan } from '../src/batch/index.ts'
import { compileMixture, isoStandard, molarDensityInto, nitrox } from '../src/gas-law/index.ts'
import { absolute, bar, kelvin, temperatureOf } from '../src/units/index.ts'

const [size] = numbersGiven()
const program = resolve('.cache', `stream-${process.pid}.mjs`)
process.on('exit', () => rmSync(program, { force: true }))
await build({
  stdin: {
    contents: `import { runRows } from './src/batch/index.ts'
      const [format, plan] = process.argv.slice(2)
      const used = () => {
        const { userCPUTime, systemCPUTime } = process.resourceUsage()
        return (userCPUTime + systemCPUTime) / 1e6
      }
      let first
      await runRows({
        input: '-',
        output: '-',
        inputFormat: format,
        outputFormat: format,
        plan: JSON.parse(plan),
        onProgress: ({ rows }) => {
          first ??= { rows, seconds: used() }
        },
      })
      process.stderr.write(JSON.stringify({ seconds: used(), first, maxRSS: process.resourceUsage().maxRSS * 1024 }))`,
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
const barAt = (row: number): number => Number((1 + 230 * ((row * 0.618034) % 1)).toFixed(3))
const celsiusAt = (row: number): number => Number((5 + 30 * ((row * 0.414214) % 1)).toFixed(2))
const gases = ['air', 'nitrox 32', '18/45']
// as a log might carry, so that ten million rows are two gigabytes
const note = 'a remark of the watch keeper that goes through as it is; '.repeat(3)
const blockRows = 50_000

/** What stands before the rows, a block of rows that is sent again and again, and what stands behind them. */
const pieces = {
  csv: (): readonly [Buffer, Buffer, Buffer] => {
    const lines = Array.from(
      { length: blockRows },
      (_, row) => `${barAt(row)},${celsiusAt(row)},${gases[row % 3] ?? ''},${note}`,
    )
    return [Buffer.from('p,T,gas,note\n'), Buffer.from(`${lines.join('\n')}\n`), Buffer.alloc(0)]
  },
  arrow: (): readonly [Buffer, Buffer, Buffer] => {
    const table = tableFromArrays({
      p: Float64Array.from({ length: blockRows }, (_, row) => barAt(row)),
      T: Float64Array.from({ length: blockRows }, (_, row) => celsiusAt(row)),
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
  /** What had been done and used with the first block. */
  readonly first: { readonly rows: number; readonly seconds: number }
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
  const { seconds, first, maxRSS } = JSON.parse(said) as Pick<Run, 'seconds' | 'first' | 'maxRSS'>
  return { format, rows, seconds, first, maxRSS, bytesIn, bytesOut, clock: (performance.now() - began) / 1000 }
}

const names = { csv: 'CSV, three results, gas by name', arrow: 'Arrow, density, one gas' }
const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(0)
const two = (value: number): string => String(Number(value.toPrecision(2)))
const counted = (rows: number): string => {
  const power = Math.floor(Math.log10(rows) + 1e-9)
  return rows === 10 ** power ? `10^${power}` : `${two(rows / 10 ** power)} × 10^${power}`
}
const furtherRow = ({ rows, seconds, first }: Run): number => (seconds - first.seconds) / (rows - first.rows)

/** Runs that rise, their table, and on paper what many more rows would cost at the price of a further row of the largest. */
async function streams(format: 'csv' | 'arrow', sizes: readonly number[]): Promise<void> {
  const runs: Run[] = []
  for (const rows of sizes) {
    runs.push(await stream(format, rows))
    console.log(runs.at(-1))
  }
  const measured = markdownTable(
    [
      names[format],
      'processor time a row, µs',
      'a row after the first block, µs',
      'clock, s',
      'MB in',
      'MB out',
      'most memory, MB',
    ],
    runs.map((run) => [
      counted(run.rows),
      ((run.seconds / run.rows) * 1e6).toFixed(3),
      (furtherRow(run) * 1e6).toFixed(3),
      run.clock.toFixed(1),
      megabytes(run.bytesIn),
      megabytes(run.bytesOut),
      megabytes(run.maxRSS),
    ]),
  )
  const last = runs.at(-1)
  if (last === undefined) return
  const bytes = (last.bytesIn + last.bytesOut) / last.rows
  const paper = markdownTable(
    ['on paper, rows', 'processor time', 'on 16 processors', 'on 1000', 'in and out'],
    [6, 9, 12].map((exponent) => {
      const seconds = furtherRow(last) * 10 ** exponent
      const times = [1, 16, 1000].map((processors) => duration(seconds / processors))
      return [`10^${exponent}`, ...times, amountOf(bytes * 10 ** exponent)]
    }),
  )
  storeResult('docs/measured/batch.md', `stream ${format}`, `${machine()}.\n\n${measured}\n\n${paper}`)
}

/** Densities of ever more rows from columns, a block at a time: filled, computed, summed up. */
function columns(largest: number): void {
  const block = 65_536
  const given = { pressurePascal: new Float64Array(block), temperatureKelvin: new Float64Array(block) }
  const out = { molarDensityMolePerCubicMetre: new Float64Array(block), code: new Uint8Array(block) }
  const compiled = compileMixture(nitrox(0.32), {
    temperature: [temperatureOf(250, kelvin), temperatureOf(330, kelvin)],
    pressure: [absolute(0.5, bar), absolute(320, bar)],
    tolerance: 1e-7,
  })
  let sum = 0
  let bad = 0
  const compute = (rows: number): void => {
    for (let done = 0; done < rows; done += block) {
      const count = Math.min(block, rows - done)
      for (let row = 0; row < count; row++) {
        given.pressurePascal[row] = 1e5 + 2.9e7 * (((done + row) * 0.618034) % 1)
        given.temperatureKelvin[row] = 275 + 35 * (((done + row) * 0.414214) % 1)
      }
      molarDensityInto(out, given, { compiled }, 0, count)
      for (let row = 0; row < count; row++) {
        sum += out.molarDensityMolePerCubicMetre[row] as number
        bad += out.code[row] as number
      }
    }
  }
  compute(1e6) // until the engine has translated it
  const runs: string[][] = []
  for (let power = 5; power <= largest; power++) {
    const rows = 10 ** power
    const repeats = Math.max(1, 10 ** (7 - power)) // a clock of processor time is coarse
    const before = cpuSeconds()
    for (let repeat = 0; repeat < repeats; repeat++) compute(rows)
    const nanoseconds = ((cpuSeconds() - before) / repeats / rows) * 1e9
    runs.push([`10^${power}`, nanoseconds.toFixed(1), megabytes(process.memoryUsage().rss)])
    console.log(runs.at(-1)?.join('  '))
  }
  if (!(sum > 0) || bad > 0) throw new Error('a row failed')
  const table = markdownTable(['density from columns, rows', 'processor time a row, ns', 'memory, MB'], runs)
  storeResult('docs/measured/batch.md', 'stream columns', `${machine()}.\n\n${table}`)
}

function duration(seconds: number): string {
  if (seconds < 120) return `${two(seconds)} s`
  if (seconds < 7200) return `${two(seconds / 60)} min`
  return seconds < 172_800 ? `${two(seconds / 3600)} h` : `${two(seconds / 86_400)} days`
}

function amountOf(bytes: number): string {
  return bytes < 1e12 ? `${two(bytes / 1e9)} GB` : `${two(bytes / 1e12)} TB`
}

/** Powers of ten from 10^5. */
const powersTo = (largest: number): number[] => Array.from({ length: largest - 4 }, (_, at) => 10 ** (at + 5))

if (process.argv.includes('csv')) {
  const bytesOfRow = pieces.csv()[1].length / blockRows
  const whole = Math.ceil(((size ?? 10) * 1e9) / bytesOfRow / blockRows) * blockRows
  await streams('csv', [...powersTo(7).filter((rows) => rows < whole), whole])
} else if (process.argv.includes('arrow')) await streams('arrow', powersTo(size ?? 9))
else columns(size ?? 9)
