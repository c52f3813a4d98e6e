import type { RecordBatch, Vector } from 'apache-arrow'
import type { BlockColumn, ResultBlock, RowBlock } from '../rows/row-block.ts'
import { headingOf, type ReadBlock, type ReadFrom, type ResultHeading, type RowWriter } from './row-format.ts'

/**
 * Rows of an Arrow IPC stream or file, a record batch a block.
 *
 * @param bytes - the whole of it
 * @param options - where reading starts, counted in batches
 * @returns blocks as large as the batches of the stream
 */
export async function* arrowBlocks(
  bytes: AsyncIterable<Uint8Array>,
  options: { readonly from?: ReadFrom } = {},
): AsyncGenerator<ReadBlock> {
  const { RecordBatchReader } = await import('apache-arrow')
  const { from = { position: 0, row: 0 } } = options
  const reader = await RecordBatchReader.from(bytes)
  let row = from.row
  let position = 0
  for await (const batch of reader) {
    position++
    if (position <= from.position) continue
    const columns = Object.fromEntries(
      batch.schema.fields.map(({ name }, place) => [name, columnOf(batch.getChildAt(place), batch.numRows)]),
    )
    yield { from: row, count: batch.numRows, columns, faults: new Map(), next: position }
    row += batch.numRows
  }
}

function columnOf(vector: Vector | null, count: number): BlockColumn {
  if (vector === null) return new Float64Array(count).fill(Number.NaN)
  const isNumeric = isNumber(vector, count)
  if (isNumeric && vector.nullCount === 0) {
    const values: unknown = vector.toArray()
    if (values instanceof Float64Array) return values
  }
  if (!isNumeric) return Array.from({ length: count }, (_, row) => textOf(vector.get(row)))
  return Float64Array.from({ length: count }, (_, row) => {
    const value: unknown = vector.get(row)
    return value === null ? Number.NaN : Number(value)
  })
}

function isNumber(vector: Vector, count: number): boolean {
  for (let row = 0; row < count; row++) {
    const value: unknown = vector.get(row)
    if (value !== null) return typeof value === 'number' || typeof value === 'bigint'
  }
  return true
}

function textOf(value: unknown): string {
  if (value === null || value === undefined) return ''
  return typeof value === 'string' ? value : JSON.stringify(value)
}

/**
 * Writes rows as an Arrow IPC stream: the columns as read, then the results, null where the row is bad, `code` and `error`.
 *
 * @param results - names and units of the results
 * @returns the writer; its bytes can be cut after any block and gone on with, since the stream has no index
 */
export async function arrowWriter(results: readonly ResultHeading[]): Promise<RowWriter> {
  const arrow = await import('apache-arrow')
  const columnsOf = (rows: RowBlock, made?: ResultBlock): Record<string, Vector> => ({
    ...Object.fromEntries(Object.entries(rows.columns).map(([name, given]) => [name, vectorOf(given)])),
    ...Object.fromEntries(
      results.map((heading) => [headingOf(heading), vectorOf(made?.values[heading.name] ?? new Float64Array(0))]),
    ),
    code: codeVector(made?.code ?? new Uint8Array(0)),
    error: textVector(
      Array.from({ length: made === undefined ? 0 : rows.count }, (_, row) => made?.errors.get(row) ?? null),
    ),
  })
  const codeVector = (code: Uint8Array): Vector =>
    arrow.makeVector(arrow.makeData({ type: new arrow.Uint8(), data: code, length: code.length }))
  const textVector = (texts: readonly (string | null)[]): Vector => arrow.vectorFromArray(texts, new arrow.Utf8())
  const vectorOf = (given: BlockColumn): Vector => {
    if (!(given instanceof Float64Array)) return textVector(given.map((text) => (text === '' ? null : text)))
    if (!given.some((value) => Number.isNaN(value))) {
      const data = arrow.makeData({ type: new arrow.Float64(), data: given, length: given.length })
      return arrow.makeVector(data)
    }
    return arrow.vectorFromArray(
      Array.from(given, (value) => (Number.isNaN(value) ? null : value)),
      new arrow.Float64(),
    )
  }
  const batchOf = (vectors: Record<string, Vector>, count: number): RecordBatch => {
    const fields = Object.entries(vectors).map(([name, vector]) => new arrow.Field(name, vector.type, true))
    const schema = new arrow.Schema(fields)
    const data = arrow.makeData({
      type: new arrow.Struct(fields),
      length: count,
      nullCount: 0,
      children: Object.values(vectors).map((vector) => vector.data[0] as never),
    })
    return new arrow.RecordBatch(schema, data)
  }
  let isStarted = false
  const write = (batch: RecordBatch): Uint8Array => {
    const writer = new arrow.RecordBatchStreamWriter()
    writer.write(batch)
    writer.finish()
    const stream = writer.toUint8Array(true)
    const end = stream.length - endOfStream
    const begin = isStarted ? schemaLength(batch) : 0
    isStarted = true
    return stream.subarray(begin, end)
  }
  const schemaLengths = new Map<string, number>()
  const schemaLength = (batch: RecordBatch): number => {
    const key = batch.schema.toString()
    let length = schemaLengths.get(key)
    if (length === undefined) {
      const empty = new arrow.RecordBatchStreamWriter()
      empty.reset(undefined, batch.schema)
      empty.finish()
      length = empty.toUint8Array(true).length - endOfStream
      schemaLengths.set(key, length)
    }
    return length
  }
  return {
    start: (first) => {
      const vectors = columnsOf({ ...first, columns: emptied(first.columns) })
      const batch = batchOf(vectors, 0)
      const length = schemaLength(batch)
      isStarted = true
      const writer = new arrow.RecordBatchStreamWriter()
      writer.reset(undefined, batch.schema)
      writer.finish()
      return writer.toUint8Array(true).subarray(0, length)
    },
    block: (rows, made) => {
      isStarted = true
      return write(batchOf(columnsOf(rows, made), rows.count))
    },
    end: () => Uint8Array.of(0xff, 0xff, 0xff, 0xff, 0, 0, 0, 0),
  }
}

/** Continuation mark and a length of nothing. */
const endOfStream = 8

function emptied(columns: RowBlock['columns']): RowBlock['columns'] {
  return Object.fromEntries(
    Object.entries(columns).map(([name, given]) => [name, given instanceof Float64Array ? new Float64Array(0) : []]),
  )
}
