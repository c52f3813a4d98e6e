import type { RecordBatch, Schema, Utf8, Vector } from 'apache-arrow'
import { DictionaryColumn } from '../rows/dictionary-column.ts'
import { FieldColumn } from '../rows/field-column.ts'
import { type BlockColumn, type ResultBlock, type RowBlock, textsOf } from '../rows/row-block.ts'
import { GatheredBytes } from './gathered-bytes.ts'
import {
  headingOf,
  type ReadBlock,
  type ReadFrom,
  type ResultHeading,
  type RowWriter,
  requireOwnNames,
  resultColumn,
} from './row-format.ts'

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
    const { values, valueOffsets, nullBitmap } = chunk as ArrowValues
    const { typeId } = vector.type as { readonly typeId: number }
    const nulls = vector.nullCount === 0 ? undefined : nullBitmap
    if (typeId === arrowType.float && values instanceof Float64Array) return withoutNulls(values, count, nulls)
    if (isPlainNumbers(typeId, values)) return withoutNulls(new Float64Array(values), count, nulls)
    if (typeId === arrowType.dictionary && isPlainNumbers(arrowType.int, values)) {
      const words = (chunk as { readonly dictionary?: Vector }).dictionary
      if (words !== undefined && (words.type as { readonly typeId: number }).typeId === arrowType.text)
        return dictionaryOf(words, new Int32Array(values), nulls)
    }
    const isText = typeId === arrowType.text && nulls === undefined
    if (isText && values instanceof Uint8Array && valueOffsets instanceof Int32Array)
      return new FieldColumn(values, valueOffsets.subarray(0, count), valueOffsets.subarray(1, count + 1))
  }
  if (!isNumber(vector, count)) return Array.from({ length: count }, (_, row) => textOf(vector.get(row)))
  return Float64Array.from({ length: count }, (_, row) => {
    const value: unknown = vector.get(row)
    return value === null ? Number.NaN : Number(value)
  })
}

/** The buffers of a column that lies in one piece. */
interface ArrowValues {
  readonly values: unknown
  readonly valueOffsets?: unknown
  readonly nullBitmap?: Uint8Array
}

// Numbers of `Type`, the same in every Arrow file
const arrowType = { int: 2, float: 3, text: 5, dictionary: -1 } as const

/** Whether values are numbers that a double holds exactly: 64 bits are not among them, nor are halves, which come as their bits. */
function isPlainNumbers(
  typeId: number,
  values: unknown,
): values is Float32Array | Int8Array | Int16Array | Int32Array | Uint8Array | Uint16Array | Uint32Array {
  if (typeId === arrowType.float) return values instanceof Float32Array
  if (typeId !== arrowType.int || !ArrayBuffer.isView(values)) return false
  return !(values instanceof BigInt64Array || values instanceof BigUint64Array)
}

/** Numbers with NaN where nothing stands. */
function withoutNulls(values: Float64Array, count: number, nulls: Uint8Array | undefined): Float64Array {
  if (nulls === undefined) return values.subarray(0, count)
  const own = values.slice(0, count)
  for (let row = 0; row < count; row++) if (!isSet(nulls, row)) own[row] = Number.NaN
  return own
}

function dictionaryOf(words: Vector, indices: Int32Array, nulls: Uint8Array | undefined): DictionaryColumn {
  if (nulls !== undefined) for (let row = 0; row < indices.length; row++) if (!isSet(nulls, row)) indices[row] = -1
  return new DictionaryColumn(
    Array.from({ length: words.length }, (_, place) => textOf(words.get(place))),
    indices,
  )
}

function isSet(bits: Uint8Array, row: number): boolean {
  return ((bits[row >> 3] as number) & (1 << (row & 7))) !== 0
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
    ...Object.fromEntries(Object.entries(rows.columns).map(([name, given], place) => [name, vectorOf(given, place)])),
    ...Object.fromEntries(
      results.map((heading) => [
        headingOf(heading),
        vectorOf(made === undefined ? emptyResult(heading) : resultColumn(made, heading), 0),
      ]),
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
    if (errors.size === 0) {
      if (noErrors === undefined || noErrors.length !== count) noErrors = emptyTexts(count)
      return noErrors
    }
    const texts = Array.from({ length: count }, (_, row) => errors.get(row) ?? '')
    const joined = joinedTexts(texts)
    return utf8Vector(joined.bytes, joined.offsets, (row) => errors.has(row))
  }
  let noErrors: Vector | undefined
  const emptyTexts = (length: number): Vector => {
    const nullBitmap = new Uint8Array((length + 7) >> 3)
    const valueOffsets = new Int32Array(length + 1)
    const type = new arrow.Utf8()
    return arrow.makeVector(
      arrow.makeData({ type, length, nullCount: length, nullBitmap, valueOffsets, data: noBytes }),
    )
  }
  const utf8Vector = (bytes: Uint8Array, offsets: Int32Array, isThere: (row: number) => boolean): Vector => {
    const length = offsets.length - 1
    const data = { type: new arrow.Utf8(), length, ...nullsOf(length, isThere), valueOffsets: offsets, data: bytes }
    return arrow.makeVector(arrow.makeData(data))
  }
  // Every block carries the words of its own dictionary, so that the stream can be cut after any of them.
  const dictionaryVector = ({ words, indices }: DictionaryColumn, place: number): Vector => {
    const { length } = indices
    const type = new arrow.Dictionary(new arrow.Utf8(), new arrow.Int32(), place)
    const { bytes, offsets } = joinedTexts(words)
    const dictionary = utf8Vector(bytes, offsets, () => true) as Vector<Utf8>
    const nulls = hasNegative(indices) ? nullsOf(length, (row) => (indices[row] as number) >= 0) : {}
    return arrow.makeVector(arrow.makeData({ type, dictionary, data: indices, length, nullCount: 0, ...nulls }))
  }
  const vectorOf = (given: BlockColumn, place: number): Vector => {
    if (given instanceof DictionaryColumn) return dictionaryVector(given, place)
    if (!(given instanceof Float64Array)) return textVector(given)
    const { length } = given
    const nulls = hasNaN(given) ? nullsOf(length, (row) => !Number.isNaN(given[row])) : {}
    return arrow.makeVector(arrow.makeData({ type: new arrow.Float64(), data: given, length, nullCount: 0, ...nulls }))
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
  const gathered = new GatheredBytes()
  const streamOf = async (schema: Schema, batch?: RecordBatch): Promise<Uint8Array> => {
    const writer = new arrow.RecordBatchStreamWriter()
    writer.reset(undefined, schema)
    if (batch !== undefined) writer.write(batch)
    writer.finish()
    const stream = await gathered.all(writer)
    return stream.subarray(0, stream.length - endOfStream)
  }
  let schemaLength: number | undefined
  return {
    start: (first) => {
      requireOwnNames(first, results)
      return streamOf(batchOf(columnsOf({ ...first, columns: emptied(first.columns) }), 0).schema)
    },
    block: async (rows, made) => {
      const batch = batchOf(columnsOf(rows, made), rows.count)
      schemaLength ??= (await streamOf(batch.schema)).length
      return (await streamOf(batch.schema, batch)).subarray(schemaLength)
    },
    end: () => Uint8Array.of(0xff, 0xff, 0xff, 0xff, 0, 0, 0, 0),
  }
}

const noBytes = new Uint8Array(0)

function hasNegative(indices: Int32Array): boolean {
  for (let row = 0; row < indices.length; row++) if ((indices[row] as number) < 0) return true
  return false
}

function hasNaN(values: Float64Array): boolean {
  for (let row = 0; row < values.length; row++) if (Number.isNaN(values[row])) return true
  return false
}

/** A bit for every row, set where something is there; nothing where every row has something. */
function nullsOf(
  length: number,
  isThere: (row: number) => boolean,
): { readonly nullBitmap?: Uint8Array; readonly nullCount: number } {
  const nullBitmap = new Uint8Array((length + 7) >> 3)
  let nullCount = 0
  for (let row = 0; row < length; row++) {
    if (isThere(row)) nullBitmap[row >> 3] = (nullBitmap[row >> 3] as number) | (1 << (row & 7))
    else nullCount++
  }
  return nullCount === 0 ? { nullCount } : { nullBitmap, nullCount }
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
  return Object.fromEntries(Object.entries(columns).map(([name, given]) => [name, emptyLike(given)]))
}

function emptyLike(given: BlockColumn): BlockColumn {
  if (given instanceof Float64Array) return new Float64Array(0)
  return given instanceof DictionaryColumn ? new DictionaryColumn([], new Int32Array(0)) : []
}

function emptyResult({ isText = false }: ResultHeading): BlockColumn {
  return isText ? [] : new Float64Array(0)
}
