import type { RecordBatch, Vector } from 'apache-arrow'
import { FieldColumn } from '../rows/field-column.ts'
import { type BlockColumn, type ResultBlock, type RowBlock, textsOf } from '../rows/row-block.ts'
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
  const [chunk] = vector.data
  if (chunk !== undefined && vector.data.length === 1) {
    const { values, valueOffsets } = chunk as { readonly values: unknown; readonly valueOffsets?: unknown }
    if (vector.nullCount === 0 && values instanceof Float64Array) return values
    if (vector.nullCount === 0 && values instanceof Uint8Array && valueOffsets instanceof Int32Array && isText(vector))
      return new FieldColumn(values, valueOffsets.subarray(0, count), valueOffsets.subarray(1, count + 1))
  }
  if (!isNumber(vector, count)) return Array.from({ length: count }, (_, row) => textOf(vector.get(row)))
  return Float64Array.from({ length: count }, (_, row) => {
    const value: unknown = vector.get(row)
    return value === null ? Number.NaN : Number(value)
  })
}

function isText(vector: Vector): boolean {
  return (vector.type as { readonly typeId: number }).typeId === utf8
}

// `Type.Utf8`, a number in every Arrow file
const utf8 = 5

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
    error: errorVector(made === undefined ? 0 : rows.count, made?.errors ?? new Map()),
  })
  const codeVector = (code: Uint8Array): Vector =>
    arrow.makeVector(arrow.makeData({ type: new arrow.Uint8(), data: code, length: code.length }))
  const textVector = (column: FieldColumn | readonly (string | number)[]): Vector => {
    const { bytes, offsets } = column instanceof FieldColumn ? joinedFields(column) : joinedTexts(textsOf(column))
    return utf8Vector(bytes, offsets, (row) => offsets[row] !== offsets[row + 1])
  }
  const errorVector = (count: number, errors: ReadonlyMap<number, string>): Vector => {
    if (errors.size === 0) return utf8Vector(new Uint8Array(0), new Int32Array(count + 1), () => false)
    const texts = Array.from({ length: count }, (_, row) => errors.get(row) ?? '')
    const joined = joinedTexts(texts)
    return utf8Vector(joined.bytes, joined.offsets, (row) => errors.has(row))
  }
  const utf8Vector = (bytes: Uint8Array, offsets: Int32Array, isThere: (row: number) => boolean): Vector => {
    const length = offsets.length - 1
    const { nullBitmap, nullCount } = nullsOf(length, isThere)
    const nulls = nullCount === 0 ? {} : { nullBitmap }
    const data = { type: new arrow.Utf8(), length, nullCount, ...nulls, valueOffsets: offsets, data: bytes }
    return arrow.makeVector(arrow.makeData(data))
  }
  const vectorOf = (given: BlockColumn): Vector => {
    if (!(given instanceof Float64Array)) return textVector(given)
    const { length } = given
    const { nullBitmap, nullCount } = nullsOf(length, (row) => !Number.isNaN(given[row]))
    const nulls = nullCount === 0 ? {} : { nullBitmap }
    return arrow.makeVector(arrow.makeData({ type: new arrow.Float64(), data: given, length, nullCount, ...nulls }))
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

/** A bit for every row, set where something is there. */
function nullsOf(
  length: number,
  isThere: (row: number) => boolean,
): { readonly nullBitmap: Uint8Array; readonly nullCount: number } {
  const nullBitmap = new Uint8Array((length + 7) >> 3)
  let nullCount = 0
  for (let row = 0; row < length; row++) {
    if (isThere(row)) nullBitmap[row >> 3] = (nullBitmap[row >> 3] as number) | (1 << (row & 7))
    else nullCount++
  }
  return { nullBitmap, nullCount }
}

interface JoinedTexts {
  readonly bytes: Uint8Array
  /** Where each text starts, and the end of the last. */
  readonly offsets: Int32Array
}

function joinedFields({ bytes, starts, ends, length }: FieldColumn): JoinedTexts {
  const offsets = new Int32Array(length + 1)
  for (let row = 0; row < length; row++)
    offsets[row + 1] = (offsets[row] as number) + (ends[row] as number) - (starts[row] as number)
  const joined = new Uint8Array(offsets[length] as number)
  for (let row = 0; row < length; row++) {
    let to = offsets[row] as number
    for (let at = starts[row] as number; at < (ends[row] as number); at++) joined[to++] = bytes[at] as number
  }
  return { bytes: joined, offsets }
}

function joinedTexts(texts: readonly string[]): JoinedTexts {
  const offsets = new Int32Array(texts.length + 1)
  for (let row = 0; row < texts.length; row++)
    offsets[row + 1] = (offsets[row] as number) + Buffer.byteLength(texts[row] as string)
  return { bytes: Buffer.from(texts.join('')), offsets }
}

/** Continuation mark and a length of nothing. */
const endOfStream = 8

function emptied(columns: RowBlock['columns']): RowBlock['columns'] {
  return Object.fromEntries(
    Object.entries(columns).map(([name, given]) => [name, given instanceof Float64Array ? new Float64Array(0) : []]),
  )
}
