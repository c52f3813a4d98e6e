import { rowCodes } from '../../errors/index.ts'
import { FieldColumn } from '../rows/field-column.ts'
import { fieldOf, type RowBlock } from '../rows/row-block.ts'
import { codeNames } from './code-names.ts'
import { type JsonFields, JsonScanner } from './json-scanner.ts'
import { linesOf, textPieces } from './lines.ts'
import {
  headingOf,
  type ReadBlock,
  type ReadFrom,
  type ResultHeading,
  type RowWriter,
  resultColumn,
  type WritingOptions,
} from './row-format.ts'
import { TextBytes } from './text-bytes.ts'

/**
 * Rows of a file with one JSON object a line. Numbers are read as numbers, everything else as text; a line that is not an object keeps its
 * place and carries its fault. Empty lines at the end are no rows.
 *
 * @param bytes - the whole file, or from the position on
 * @param options - where reading starts; the names of the columns that matter, since a line may leave some out
 * @returns blocks of some ten thousand rows
 */
export async function* ndjsonBlocks(
  bytes: AsyncIterable<Uint8Array>,
  options: { readonly columns: readonly string[]; readonly from?: ReadFrom },
): AsyncGenerator<ReadBlock> {
  const { from = { position: 0, row: 0 }, columns } = options
  const scanner = new JsonScanner(columns)
  let row = from.row
  for await (const { bytes: piece, next } of textPieces(bytes, { from: from.position, isQuoted: false })) {
    const lines = linesOf(piece, 0)
    const count = lines.starts.length
    const flat = scanner.scan(piece, lines)
    const faults = new Map<number, string>()
    const named = flat === undefined ? parsedColumns(columns, piece, lines, faults) : fieldColumns(columns, piece, flat)
    yield { from: row, count, columns: named, faults, lines: { form: 'json', bytes: piece, ...lines }, next }
    row += count
  }
}

function fieldColumns(
  columns: readonly string[],
  piece: Buffer,
  { fieldStarts, fieldEnds }: JsonFields,
): RowBlock['columns'] {
  return Object.fromEntries(
    columns.map((name, place) => [
      name,
      new FieldColumn(piece, fieldStarts[place] as Int32Array, fieldEnds[place] as Int32Array),
    ]),
  )
}

/** For pieces with nested values, escapes or lines that are no objects. */
function parsedColumns(
  columns: readonly string[],
  piece: Buffer,
  { starts, ends }: { readonly starts: Int32Array; readonly ends: Int32Array },
  faults: Map<number, string>,
): RowBlock['columns'] {
  const lists = columns.map(() => new Array<string | number>(starts.length).fill(''))
  for (let index = 0; index < starts.length; index++) {
    const given = objectOf(piece.toString('utf8', starts[index], ends[index]))
    if (given === undefined) {
      faults.set(index, 'the line is no JSON object')
      continue
    }
    for (let place = 0; place < columns.length; place++) {
      const name = columns[place] as string
      ;(lists[place] as (string | number)[])[index] = Object.hasOwn(given, name) ? fieldFrom(given[name]) : ''
    }
  }
  return Object.fromEntries(columns.map((name, place) => [name, lists[place] as (string | number)[]]))
}

function fieldFrom(value: unknown): string | number {
  if (typeof value === 'number' || typeof value === 'string') return value
  return value === undefined || value === null ? '' : JSON.stringify(value)
}

function objectOf(line: string): Record<string, unknown> | undefined {
  try {
    const given = JSON.parse(line) as unknown
    return typeof given === 'object' && given !== null && !Array.isArray(given)
      ? (given as Record<string, unknown>)
      : undefined
  } catch {
    return undefined // a fault of the row, said by the caller
  }
}

/**
 * Writes rows as one JSON object a line: the fields as read, then the results, null where the row is bad, `code` and `error`. A line
 * that was no object comes back as the text of a field `line`.
 *
 * @param results - names and units of the results
 * @param options - significant figures of the results
 * @returns the writer
 */
export function ndjsonWriter(results: readonly ResultHeading[], { figures }: WritingOptions): RowWriter {
  const keys = results.map((heading) => Buffer.from(`,${JSON.stringify(headingOf(heading))}:`))
  const none = Buffer.from('null')
  const codes = codeNames.map((name) => Buffer.from(`,"code":"${name}"`))
  const text = new TextBytes()
  const copy = (bytes: Buffer): void => text.copy(bytes, 0, bytes.length)
  return {
    start: () => new Uint8Array(0),
    block: (rows, made) => {
      const columns = results.map((heading) => resultColumn(made, heading))
      for (let row = 0; row < rows.count; row++) {
        startRow(text, rows, row)
        for (let place = 0; place < columns.length; place++) {
          const value = (columns[place] as Float64Array | readonly string[])[row]
          copy(keys[place] as Buffer)
          if (typeof value === 'string' && value !== '') text.text(JSON.stringify(value))
          else if (typeof value === 'number' && value - value === 0) text.number(value, figures)
          else copy(none)
        }
        const code = made.code[row] as number
        copy(codes[code] as Buffer)
        if (code !== rowCodes.good) text.text(`,"error":${JSON.stringify(made.errors.get(row) ?? '')}`)
        text.byte(closingBrace)
        text.byte(lineFeed)
      }
      return text.take()
    },
    end: () => new Uint8Array(0),
  }
}

const lineFeed = 10
const openingBrace = 123
const closingBrace = 125

/** The row as it stood, open at its end for what is added. */
function startRow(text: TextBytes, rows: ReadBlock, row: number): void {
  const { lines } = rows
  if (lines?.form !== 'json') {
    const fields = Object.entries(rows.columns).map(([name, column]) => [name, jsonValue(fieldOf(column, row))])
    text.text(`{"row":${rows.from + row},${JSON.stringify(Object.fromEntries(fields)).slice(1, -1)}`)
    return
  }
  const { bytes } = lines
  const start = lines.starts[row] as number
  const end = lines.ends[row] as number
  if (rows.faults.has(row)) {
    text.text(`{"line":${JSON.stringify(bytes.toString('utf8', start, end))}`)
    return
  }
  const body = endOfText(bytes, start, endOfText(bytes, start, end) - 1)
  if (body === start + 1 || bytes[body - 1] === openingBrace) text.text(`{"row":${rows.from + row}`)
  else text.copy(bytes, start, body)
}

/** The end without the blanks before it. */
function endOfText(bytes: Buffer, start: number, end: number): number {
  let at = end
  while (at > start && (bytes[at - 1] as number) <= blank) at--
  return at
}

const blank = 32

function jsonValue(given: string | number): string | number | null {
  if (typeof given === 'number') return given - given === 0 ? given : null
  return given
}
