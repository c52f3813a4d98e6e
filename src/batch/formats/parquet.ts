import { type BlockColumn, textsOf } from '../rows/row-block.ts'
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
 * Rows of a Parquet file, a row group a block.
 *
 * @param path - of the file
 * @param options - where reading starts, counted in row groups
 * @returns blocks as large as the row groups of the file
 */
export async function* parquetBlocks(
  path: string,
  options: { readonly from?: ReadFrom } = {},
): AsyncGenerator<ReadBlock> {
  const { asyncBufferFromFile, parquetMetadataAsync, parquetRead, parquetSchema } = await import('hyparquet')
  const file = await asyncBufferFromFile(path)
  const metadata = await parquetMetadataAsync(file)
  const required = new Set(
    parquetSchema(metadata).children.flatMap(({ element, children }) =>
      element.repetition_type === 'REQUIRED' && children.length === 0 ? [element.name] : [],
    ),
  )
  let row = options.from?.row ?? 0
  const groups = metadata.row_groups.slice(options.from?.position ?? 0)
  let position = options.from?.position ?? 0
  for (const group of groups) {
    const count = Number(group.num_rows)
    const parts = new Map<string, { readonly start: number; readonly data: ArrayLike<unknown> }[]>()
    await parquetRead({
      file,
      metadata,
      rowStart: row,
      rowEnd: row + count,
      onChunk: ({ columnName, columnData, rowStart }) => {
        const list = parts.get(columnName) ?? []
        list.push({ start: rowStart - row, data: columnData })
        parts.set(columnName, list)
      },
    })
    position++
    const columns = Object.fromEntries([...parts].map(([name, list]) => [name, joined(list, count)]))
    yield { from: row, count, columns, required, faults: new Map(), next: position }
    row += count
  }
}

/** One column of a group: numbers where the first value that is there is one, texts otherwise. */
function joined(
  parts: readonly { readonly start: number; readonly data: ArrayLike<unknown> }[],
  count: number,
): BlockColumn {
  const [only] = parts
  if (parts.length === 1 && only?.start === 0 && only.data.length === count) {
    if (only.data instanceof Float64Array) return only.data
    if (isAllText(only.data)) return only.data
  }
  const first = firstValue(parts)
  if (typeof first === 'number' || typeof first === 'bigint') {
    const numbers = new Float64Array(count).fill(Number.NaN)
    for (const { start, data } of parts) {
      if (data instanceof Float64Array) numbers.set(data, start)
      else for (let i = 0; i < data.length; i++) numbers[start + i] = numberOf(data[i])
    }
    return numbers
  }
  const texts = new Array<string>(count).fill('')
  for (const { start, data } of parts) for (let i = 0; i < data.length; i++) texts[start + i] = textOf(data[i])
  return texts
}

function isAllText(data: ArrayLike<unknown>): data is readonly string[] {
  for (let i = 0; i < data.length; i++) if (typeof data[i] !== 'string') return false
  return Array.isArray(data)
}

function firstValue(parts: readonly { readonly data: ArrayLike<unknown> }[]): unknown {
  for (const { data } of parts) {
    for (let i = 0; i < data.length; i++) if (data[i] !== null && data[i] !== undefined) return data[i]
  }
  return Number.NaN
}

function numberOf(value: unknown): number {
  return value === null || value === undefined ? Number.NaN : Number(value)
}

function textOf(value: unknown): string {
  if (value === null || value === undefined) return ''
  return typeof value === 'string' ? value : JSON.stringify(value)
}

/**
 * Writes rows as Parquet: the columns as read, then the results, null where the row is bad, `code` and `error`. A block becomes a row
 * group. Numbers stand as they are: packing them and noting their limits would take several times as long as computing them.
 *
 * @param results - names and units of the results
 * @returns the writer
 */
export async function parquetWriter(results: readonly ResultHeading[]): Promise<RowWriter> {
  const { ByteWriter, ParquetWriter, schemaFromColumnData } = await import('hyparquet-writer')
  const bytes = new ByteWriter()
  let writer: InstanceType<typeof ParquetWriter> | undefined
  let noWords: null[] = []
  const wordsOf = (count: number, texts: ReadonlyMap<number, string>): (string | null)[] => {
    if (texts.size === 0) {
      if (noWords.length !== count) noWords = new Array<null>(count).fill(null)
      return noWords
    }
    const words = new Array<string | null>(count).fill(null)
    for (const [row, text] of texts) words[row] = text
    return words
  }
  return {
    start: (first) => {
      requireOwnNames(first, results)
      const columnData = [
        ...sourceColumns(first),
        ...results.map((heading) => result(heading, heading.isText === true ? [] : new Float64Array(0))),
      ]
      columnData.push(codes([]), errors([]))
      writer = new ParquetWriter({
        writer: bytes,
        schema: schemaFromColumnData({ columnData }),
        codec: 'UNCOMPRESSED',
        statistics: false,
        createdBy: 'litrebar',
      })
      return bytes.getBytes()
    },
    block: async (rows, made) => {
      const columnData = sourceColumns(rows)
      for (const heading of results) columnData.push(result(heading, resultColumn(made, heading)))
      columnData.push(codes(new Int32Array(made.code)), errors(wordsOf(rows.count, made.errors)))
      // one page a column: finding where pages end takes as long as writing them
      bytes.index = 0
      await writer?.write({ columnData, rowGroupSize: Math.max(1, rows.count), pageSize: 0 })
      return bytes.getBytes()
    },
    end: async () => {
      bytes.index = 0
      await writer?.finish()
      return bytes.getBytes()
    },
  }
}

/** The columns as read. What stands in every row of the source does so here: a value that may be missing costs three times as much. */
function sourceColumns({ columns, required }: ReadBlock): WrittenColumn[] {
  return Object.entries(columns).map(([name, given]) => {
    const nullable = required?.has(name) !== true
    if (given instanceof Float64Array)
      return nullable ? numbers(name, given) : { name, data: given, type: 'DOUBLE', nullable, encoding: 'PLAIN' }
    const texts = textsOf(given)
    return { name, data: nullable ? texts.map((text) => (text === '' ? null : text)) : texts, type: 'STRING', nullable }
  })
}

interface WrittenColumn {
  readonly name: string
  readonly data: (string | number | null)[] | Float64Array | Int32Array
  readonly type: 'DOUBLE' | 'STRING' | 'INT32'
  readonly nullable: boolean
  readonly encoding?: 'PLAIN' | 'RLE_DICTIONARY' | 'DELTA_BINARY_PACKED'
}

function result(heading: ResultHeading, column: Float64Array | readonly string[]): WrittenColumn {
  const name = headingOf(heading)
  if (column instanceof Float64Array) return numbers(name, column)
  return { ...errors(column.map((text) => (text === '' ? null : text))), name }
}

function numbers(name: string, values: Float64Array): WrittenColumn {
  return { name, data: withNulls(values), type: 'DOUBLE', nullable: true, encoding: 'PLAIN' }
}

function codes(data: Int32Array | number[]): WrittenColumn {
  return { name: 'code', data, type: 'INT32', nullable: false, encoding: 'DELTA_BINARY_PACKED' }
}

function errors(data: (string | null)[]): WrittenColumn {
  return { name: 'error', data, type: 'STRING', nullable: true, encoding: 'RLE_DICTIONARY' }
}

/** NaN is no number in a file: null says that nothing is there. */
function withNulls(values: Float64Array): WrittenColumn['data'] {
  for (let row = 0; row < values.length; row++)
    if (Number.isNaN(values[row])) return Array.from(values, (value) => (Number.isNaN(value) ? null : value))
  return values
}
