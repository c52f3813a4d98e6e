import Papa from 'papaparse'
import { LitrebarError, rowCodes } from '../../errors/index.ts'
import type { ResultBlock, RowBlock } from '../rows/row-block.ts'
import { textPieces } from './lines.ts'
import { headingOf, type ReadBlock, type ReadFrom, type ResultHeading, type RowWriter } from './row-format.ts'

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
  for await (const { text, next } of textPieces(bytes, { from: from.position, isQuoted: true })) {
    const plain = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text
    const { data } = Papa.parse<string[]>(plain, { delimiter, newline: newlineOf(plain) })
    if (plain.endsWith('\n')) data.pop() // what follows the last line feed is no row
    if (headings === undefined) headings = checkedHeadings(data.shift() ?? [])
    if (data.length === 0 && row > from.row) continue
    yield { ...blockOf(headings, data, row), next }
    row += data.length
  }
  if (headings === undefined) throw emptyFile()
}

function newlineOf(text: string): '\r\n' | '\n' {
  const at = text.indexOf('\n')
  return at > 0 && text[at - 1] === '\r' ? '\r\n' : '\n'
}

function blockOf(headings: readonly string[], data: readonly string[][], from: number): RowBlock {
  const faults = new Map<number, string>()
  const columns: Record<string, string[]> = {}
  const lists = headings.map((heading) => {
    const list = new Array<string>(data.length)
    columns[heading] = list
    return list
  })
  for (let row = 0; row < data.length; row++) {
    const fields = data[row] as string[]
    if (fields.length !== headings.length) faults.set(row, `${fields.length} fields, expected ${headings.length}`)
    for (let place = 0; place < lists.length; place++) (lists[place] as string[])[row] = fields[place] ?? ''
  }
  return { from, count: data.length, columns, faults }
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

const codeNames = Object.entries(rowCodes).map(([name]) => name)

/**
 * Writes rows as CSV: the columns as read, then the results, then `code` and `error`. Bad rows have empty results. Lines end with LF.
 *
 * @param results - names and units of the results
 * @param options - delimiter
 * @returns the writer
 */
export function csvWriter(results: readonly ResultHeading[], options: CsvOptions = {}): RowWriter {
  const { delimiter = ',' } = options
  const needsQuotes = new RegExp(`["\\r\\n${delimiter}]`)
  const field = (text: string): string => (needsQuotes.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
  const encoder = new TextEncoder()
  return {
    start: (first) =>
      encoder.encode(
        `${[...Object.keys(first.columns), ...results.map(headingOf), 'code', 'error'].map(field).join(delimiter)}\n`,
      ),
    block: (rows, made) => encoder.encode(blockText(rows, made, results, delimiter, field)),
    end: () => new Uint8Array(0),
  }
}

function blockText(
  rows: RowBlock,
  made: ResultBlock,
  results: readonly ResultHeading[],
  delimiter: string,
  field: (text: string) => string,
): string {
  const kept = Object.values(rows.columns)
  const values = results.map(({ name }) => made.values[name] as Float64Array)
  let text = ''
  for (let row = 0; row < rows.count; row++) {
    for (const column of kept) {
      const given = column[row]
      text += (typeof given === 'string' ? field(given) : numberText(given ?? Number.NaN)) + delimiter
    }
    for (const column of values) text += numberText(column[row] as number) + delimiter
    const code = made.code[row] as number
    text +=
      code === rowCodes.good
        ? `${codeNames[0] ?? ''}${delimiter}\n`
        : `${codeNames[code] ?? ''}${delimiter}${field(made.errors.get(row) ?? '')}\n`
  }
  return text
}

/** The shortest text that reads back as the same number; nothing for a value that is missing. */
function numberText(value: number): string {
  return value - value === 0 ? String(value) : ''
}
