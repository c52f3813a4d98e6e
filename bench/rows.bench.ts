// What a row costs from file to file, in processor time, since other work may share the machine.
// Usage: npm run bench rows [thousands of rows] [words that the names of cases hold] [--write]
import { once } from 'node:events'
import {
  appendFileSync,
  createReadStream,
  createWriteStream,
  mkdtempSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import {
  Dictionary,
  Field,
  Int32,
  makeData,
  makeVector,
  RecordBatch,
  RecordBatchReader,
  RecordBatchStreamWriter,
  Schema,
  Struct,
  Table,
  tableFromArrays,
  Utf8,
  vectorFromArray,
} from 'apache-arrow'
import { asyncBufferFromFile, parquetMetadataAsync, parquetRead } from 'hyparquet'
import { ByteWriter, ParquetWriter, parquetWriteBuffer, schemaFromColumnData } from 'hyparquet-writer'
import { type RowPlan, runRows } from '../src/batch/index.ts'
import { isoStandard } from '../src/gas-law/index.ts'
import { cpuSeconds, machine, markdownTable, numbersGiven, storeResult } from './stored-result.ts'

const [thousands = 4000] = numbersGiven()
const rows = thousands * 1000
const wanted = process.argv.slice(2).find((word) => /^[a-z]/.test(word)) ?? ''
const folder = mkdtempSync(join(tmpdir(), 'litrebar-bench-'))
process.on('exit', () => rmSync(folder, { recursive: true, force: true }))
const path = (name: string): string => join(folder, name)

const gases = ['air', 'nitrox 32', '18/45']
const pressureOf = (row: number): number => Number((1 + 230 * ((row * 0.618034) % 1)).toFixed(3))
const temperatureOf = (row: number): number => Number((5 + 30 * ((row * 0.414214) % 1)).toFixed(2))
const batch = 65_536

const inputs: Readonly<Record<string, () => void>> = {
  'in.csv': () =>
    writeLines('in.csv', 'p,T,gas\n', (row) => `${pressureOf(row)},${temperatureOf(row)},${gases[row % 3] ?? ''}\n`),
  'in.ndjson': () =>
    writeLines(
      'in.ndjson',
      '',
      (row) => `{"p":${pressureOf(row)},"T":${temperatureOf(row)},"gas":"${gases[row % 3] ?? ''}"}\n`,
    ),
  'in.arrow': () => {
    const whole = tableFromArrays({
      p: Float64Array.from({ length: rows }, (_, row) => pressureOf(row)),
      T: Float64Array.from({ length: rows }, (_, row) => temperatureOf(row)),
    }).assign(
      new Table({
        gas: makeVector({
          type: new Dictionary(new Utf8(), new Int32()),
          dictionary: vectorFromArray(gases, new Utf8()),
          data: Int32Array.from({ length: rows }, (_, row) => row % 3),
          length: rows,
          nullCount: 0,
        }),
      }),
    )
    const writer = new RecordBatchStreamWriter()
    for (let from = 0; from < rows; from += batch)
      for (const each of whole.slice(from, from + batch).batches) writer.write(each)
    writer.finish()
    writeFileSync(path('in.arrow'), writer.toUint8Array(true))
  },
  'in.parquet': () => {
    const bytes = parquetWriteBuffer({
      columnData: [
        {
          name: 'p',
          data: Float64Array.from({ length: rows }, (_, row) => pressureOf(row)),
          type: 'DOUBLE',
          nullable: false,
        },
        {
          name: 'T',
          data: Float64Array.from({ length: rows }, (_, row) => temperatureOf(row)),
          type: 'DOUBLE',
          nullable: false,
        },
        {
          name: 'gas',
          data: Array.from({ length: rows }, (_, row) => gases[row % 3] ?? ''),
          type: 'STRING',
          nullable: false,
        },
      ],
      rowGroupSize: batch,
    })
    appendFileSync(path('in.parquet'), new Uint8Array(bytes))
  },
}

function writeLines(name: string, heading: string, lineOf: (row: number) => string): void {
  appendFileSync(path(name), heading)
  for (let row = 0; row < rows; row += 1000) {
    appendFileSync(path(name), Array.from({ length: Math.min(1000, rows - row) }, (_, i) => lineOf(row + i)).join(''))
  }
}

const byMixture: RowPlan = {
  compute: ['freeGas', 'density', 'viscosity'],
  reference: isoStandard.name,
  inputs: {
    pressure: { column: 'p', unit: 'bar' },
    temperature: { column: 'T', unit: '°C' },
    internalVolume: { value: '12 L' },
  },
  mixture: { column: 'gas' },
}
const ofOne: RowPlan = { ...byMixture, mixture: { value: 'nitrox 32' } }
const density: RowPlan = { ...ofOne, compute: ['density'] }

async function measure(name: string, from: string, to: string, plan: RowPlan): Promise<string[]> {
  const before = cpuSeconds()
  let first = 0
  let firstRows = 0
  const done = await runRows({
    input: path(from),
    output: path(to),
    plan,
    overwrite: true,
    onProgress: ({ rows: ready }) => {
      if (first > 0) return
      first = cpuSeconds() - before
      firstRows = ready
    },
  })
  const all = cpuSeconds() - before
  const further = (done.rows - firstRows) / (all - first)
  const size = statSync(path(to)).size / done.rows
  const figures = [all.toFixed(2), (done.rows / all / 1e6).toFixed(2), (further / 1e6).toFixed(2), size.toFixed(0)]
  console.log([name.padEnd(42), ...figures].join('  '))
  return [name, ...figures]
}

/** A floor: the packages alone, without a computation, a hash or a code of a row. */
async function floor(name: string, run: () => Promise<void>): Promise<string[]> {
  const before = cpuSeconds()
  await run()
  const all = cpuSeconds() - before
  console.log([name.padEnd(42), all.toFixed(2), (rows / all / 1e6).toFixed(2)].join('  '))
  return [name, all.toFixed(2), (rows / all / 1e6).toFixed(2), '', '']
}

/** Batches read, and written again with a column of numbers and one of codes. */
async function arrowFloor(): Promise<void> {
  const writer = new RecordBatchStreamWriter()
  const sink = createWriteStream(path('floor.arrow'))
  writer.toNodeStream({}).pipe(sink)
  for await (const batch of await RecordBatchReader.from(
    createReadStream(path('in.arrow'), { highWaterMark: 1 << 20 }),
  )) {
    const added = [makeVector(new Float64Array(batch.numRows)), makeVector(new Uint8Array(batch.numRows))]
    const fields = [
      ...batch.schema.fields,
      ...added.map((column, place) => new Field(['density', 'code'][place] ?? '', column.type, true)),
    ]
    const children = [...batch.data.children, ...added.map((column) => column.data[0])] as never[]
    const data = makeData({ type: new Struct(fields), length: batch.numRows, nullCount: 0, children })
    writer.write(new RecordBatch(new Schema(fields), data))
    await new Promise((resolve) => setImmediate(resolve)) // so that the stream drains
  }
  writer.finish()
  await once(sink, 'close')
}

/** Row groups read, and written again with a column of numbers, one of codes and one of no words, as a run without bad rows has them. */
async function parquetFloor(): Promise<void> {
  const bytes = new ByteWriter()
  const columnsOf = (p: Float64Array, T: Float64Array, gas: string[], codes: Int32Array) =>
    [
      { name: 'p', data: p, type: 'DOUBLE', nullable: false, encoding: 'PLAIN' },
      { name: 'T', data: T, type: 'DOUBLE', nullable: false, encoding: 'PLAIN' },
      { name: 'gas', data: gas, type: 'STRING', nullable: false },
      { name: 'density', data: p, type: 'DOUBLE', nullable: true, encoding: 'PLAIN' },
      { name: 'code', data: codes, type: 'INT32', nullable: false, encoding: 'DELTA_BINARY_PACKED' },
      { name: 'error', data: gas.map(() => null), type: 'STRING', nullable: true, encoding: 'RLE_DICTIONARY' },
    ] as const
  const none = new Float64Array(0)
  const schema = schemaFromColumnData({ columnData: [...columnsOf(none, none, [], new Int32Array(0))] })
  const writer = new ParquetWriter({ writer: bytes, schema, codec: 'UNCOMPRESSED', statistics: false })
  const file = await asyncBufferFromFile(path('in.parquet'))
  const metadata = await parquetMetadataAsync(file)
  let row = 0
  for (const group of metadata.row_groups) {
    const count = Number(group.num_rows)
    const read = new Map<string, unknown>()
    const onChunk = (chunk: { columnName: string; columnData: unknown }): void => {
      read.set(chunk.columnName, chunk.columnData)
    }
    await parquetRead({ file, metadata, rowStart: row, rowEnd: row + count, onChunk })
    const [p, T, gas] = ['p', 'T', 'gas'].map((name) => read.get(name))
    const columnData = columnsOf(p as Float64Array, T as Float64Array, gas as string[], new Int32Array(count))
    await writer.write({ columnData: [...columnData], rowGroupSize: count, pageSize: 0 })
    appendFileSync(path('floor.parquet'), bytes.getBytes())
    bytes.index = 0
    row += count
  }
  await writer.finish()
}

const cases = (['csv', 'ndjson', 'arrow', 'parquet'] as const).flatMap((format) => [
  { name: `${format}, three results, gas by name`, format, plan: byMixture },
  { name: `${format}, three results, one gas`, format, plan: ofOne },
  { name: `${format}, density, one gas`, format, plan: density },
])
const results: string[][] = []
for (const { name, format, plan } of cases.filter((each) => each.name.includes(wanted))) {
  const input = `in.${format}`
  if (statSync(path(input), { throwIfNoEntry: false }) === undefined) inputs[input]?.()
  results.push(await measure(name, input, `out.${format}`, plan))
}
const floors = { arrow: arrowFloor, parquet: parquetFloor }
for (const format of ['arrow', 'parquet'] as const) {
  const name = `${format}, read and written by its packages alone`
  if (name.includes(wanted)) results.push(await floor(name, floors[format]))
}
const headings = [
  'from file to file',
  'processor time, s',
  'million rows a second of it',
  'the same without the first block',
  'bytes a row',
]
if (wanted === '')
  storeResult(
    'docs/measured/batch.md',
    'rows',
    `${machine()}; ${thousands} thousand rows, one process, tables and hashes of both files included.\n\n${markdownTable(headings, results)}`,
  )
