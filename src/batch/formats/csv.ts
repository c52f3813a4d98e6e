import { LitrebarError, rowCodes } from '../../errors/index.ts'
import { FieldColumn } from '../rows/field-column.ts'
import { fieldOf, type RowBlock } from '../rows/row-block.ts'
import { codeNames } from './code-names.ts'
import { FieldScanner, type ScannedFields } from './field-scanner.ts'
import { textPieces, withoutReturn } from './lines.ts'
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

/** How a CSV file is written. */
export interface CsvOptions {
  /** Between fields: `,` unless given. */
  readonly delimiter?: ',' | ';' | '\t' | undefined
}

/**
 * Rows of a CSV file, block by block: heading, RFC 4180 quotes, LF or CRLF, a byte order mark or none. A row with too many or too few
 * fields keeps its place and carries its fault.
 *
 * @param bytes - the whole file, or from the position on
 * @param options - delimiter; where reading starts; the headings of a file that is entered in the middle
 * @returns blocks of some ten thousand rows
 * @throws LitrebarError `input` for a file without a heading, or with one name twice
 */
export async function* csvBlocks(
  bytes: AsyncIterable<Uint8Array>,
  options: CsvOptions & { readonly from?: ReadFrom; readonly headings?: readonly string[] } = {},
): AsyncGenerator<ReadBlock> {
  const { from = { position: 0, row: 0 }, delimiter = ',' } = options
  let headings = options.headings
  let row = from.row
  let scanner: FieldScanner | undefined
  for await (const { bytes: piece, next } of textPieces(bytes, { from: from.position, isQuoted: true })) {
    const start = piece[0] === 0xef && piece[1] === 0xbb && piece[2] === 0xbf ? 3 : 0
    const isPlain = !piece.includes(quote)
    const records = isPlain ? undefined : await quotedRecords(piece.toString('utf8', start), delimiter)
    let at = start
    if (headings === undefined) {
      const end = lineEnd(piece, start)
      headings = checkedHeadings(
        records?.shift() ?? piece.toString('utf8', start, withoutReturn(piece, start, end)).split(delimiter),
      )
      at = end + 1
    }
    scanner ??= new FieldScanner(headings.length, delimiter.charCodeAt(0))
    const block =
      records === undefined
        ? plainBlock(headings, scanner.scan(piece, at), piece, row, delimiter)
        : quotedBlock(headings, records, row)
    if (block.count === 0 && row > from.row) continue
    yield { ...block, next }
    row += block.count
  }
  if (headings === undefined) throw emptyFile()
}

const quote = 34

async function quotedRecords(text: string, delimiter: string): Promise<string[][]> {
  const { default: Papa } = await import('papaparse') // most files have no quotes, and start without it
  const { data } = Papa.parse<string[]>(text, { delimiter, newline: newlineOf(text) })
  if (text.endsWith('\n')) data.pop() // what follows the last line feed is no row
  return data
}

function newlineOf(text: string): '\r\n' | '\n' {
  const at = text.indexOf('\n')
  return at > 0 && text[at - 1] === '\r' ? '\r\n' : '\n'
}

function quotedBlock(headings: readonly string[], data: readonly string[][], from: number): RowBlock {
  const faults = new Map<number, string>()
  const columns: Record<string, string[]> = {}
  const lists = headings.map((heading) => {
    const list = new Array<string>(data.length)
    columns[heading] = list
    return list
  })
  for (let row = 0; row < data.length; row++) {
    const fields = data[row] as string[]
    if (fields.length !== headings.length) faults.set(row, wrongCount(fields.length, headings))
    for (let place = 0; place < lists.length; place++) (lists[place] as string[])[row] = fields[place] ?? ''
  }
  return { from, count: data.length, columns, faults }
}

function lineEnd(bytes: Buffer, from: number): number {
  const found = bytes.indexOf(lineFeed, from)
  return found < 0 ? bytes.length : found
}

/** A block without quotes: fields stay bytes of the piece. */
function plainBlock(
  headings: readonly string[],
  { starts, ends, fieldStarts, fieldEnds, faults }: ScannedFields,
  bytes: Buffer,
  from: number,
  delimiter: ',' | ';' | '\t',
): Omit<ReadBlock, 'next'> {
  const columns = Object.fromEntries(
    headings.map((heading, place) => [
      heading,
      new FieldColumn(bytes, fieldStarts[place] as Int32Array, fieldEnds[place] as Int32Array),
    ]),
  )
  const wrong = new Map([...faults].map(([row, count]) => [row, wrongCount(count, headings)]))
  return { from, count: starts.length, columns, faults: wrong, lines: { form: delimiter, bytes, starts, ends } }
}

function wrongCount(count: number, headings: readonly string[]): string {
  return `${count} fields, expected ${headings.length}`
}

function checkedHeadings(fields: readonly string[]): readonly string[] {
  if (fields.length === 0 || fields.every((field) => field === '')) throw emptyFile()
  const twice = fields.find((field, place) => fields.indexOf(field) !== place)
  if (twice === undefined) return fields
  throw new LitrebarError({
    code: 'input',
    argument: 'heading',
    value: `'${twice}' twice`,
    expected: 'every name once',
    hint: 'Rename one of the columns.',
  })
}

function emptyFile(): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'file',
    value: 'empty',
    expected: 'a heading, then rows',
    hint: 'Put the names of the columns into the first line.',
  })
}

const lineFeed = 10

/**
 * Writes rows as CSV: the columns as read, then the results, then `code` and `error`. Bad rows have empty results. Lines end with LF.
 *
 * @param results - names and units of the results
 * @param options - delimiter; significant figures of the results
 * @returns the writer
 */
export function csvWriter(results: readonly ResultHeading[], options: CsvOptions & WritingOptions): RowWriter {
  const { delimiter = ',', figures } = options
  const needsQuotes = new RegExp(`["\\r\\n${delimiter}]`)
  const field = (text: string): string => (needsQuotes.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  const separator = delimiter.charCodeAt(0)
  const codes = codeNames.map((name) => Buffer.from(name))
  const text = new TextBytes()
  const writeField = (given: string | number): void => {
    if (typeof given === 'string') text.text(field(given))
    else if (given - given === 0) text.exact(given)
    text.byte(separator)
  }
  return {
    start: (first) => {
      text.text([...Object.keys(first.columns), ...results.map(headingOf), 'code', 'error'].map(field).join(delimiter))
      text.byte(lineFeed)
      return text.take()
    },
    block: (rows, made) => {
      const kept = Object.values(rows.columns)
      const columns = results.map((heading) => resultColumn(made, heading))
      const lines = rows.lines?.form === delimiter ? rows.lines : undefined
      for (let row = 0; row < rows.count; row++) {
        if (lines !== undefined && !rows.faults.has(row)) {
          text.copy(lines.bytes, lines.starts[row] as number, lines.ends[row] as number)
          text.byte(separator)
        } else for (const column of kept) writeField(fieldOf(column, row))
        for (const column of columns) {
          const value = column[row]
          if (typeof value === 'string') text.text(field(value))
          else if (value !== undefined && value - value === 0) text.number(value, figures)
          text.byte(separator)
        }
        const code = made.code[row] as number
        const name = codes[code] as Buffer
        text.copy(name, 0, name.length)
        text.byte(separator)
        if (code !== rowCodes.good) text.text(field(made.errors.get(row) ?? ''))
        text.byte(lineFeed)
      }
      return text.take()
    },
    end: () => new Uint8Array(0),
  }
}
