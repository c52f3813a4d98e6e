import { rowCodes } from '../../errors/index.ts'
import type { ResultBlock } from '../rows/row-block.ts'
import { textPieces } from './lines.ts'
import { headingOf, type ReadBlock, type ReadFrom, type ResultHeading, type RowWriter } from './row-format.ts'

/**
 * Rows of a file with one JSON object a line. Numbers are read as numbers, everything else as text; a line that is no object keeps its
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
  let row = from.row
  for await (const { text, next } of textPieces(bytes, { from: from.position, isQuoted: false })) {
    const texts = text.split('\n')
    if (texts.at(-1) === '') texts.pop()
    const faults = new Map<number, string>()
    const lists = columns.map(() => new Array<string>(texts.length).fill(''))
    texts.forEach((line, index) => {
      const given = objectOf(line)
      if (given === undefined) {
        faults.set(index, 'the line is no JSON object')
        return
      }
      columns.forEach((name, place) => {
        const value = Object.hasOwn(given, name) ? given[name] : undefined
        const list = lists[place] as string[]
        list[index] =
          value === undefined || value === null ? '' : typeof value === 'string' ? value : JSON.stringify(value)
      })
    })
    const named = Object.fromEntries(columns.map((name, place) => [name, lists[place] as string[]]))
    yield { from: row, count: texts.length, columns: named, faults, texts, next }
    row += texts.length
  }
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

const codeNames = Object.keys(rowCodes)

/**
 * Writes rows as one JSON object a line: the fields as read, then the results, null where the row is bad, `code` and `error`. A line
 * that was no object comes back as the text of a field `line`.
 *
 * @param results - names and units of the results
 * @returns the writer
 */
export function ndjsonWriter(results: readonly ResultHeading[]): RowWriter {
  const encoder = new TextEncoder()
  const keys = results.map((heading) => JSON.stringify(headingOf(heading)))
  return {
    start: () => new Uint8Array(0),
    block: (rows, made) => encoder.encode(blockText(rows, made, results, keys)),
    end: () => new Uint8Array(0),
  }
}

function blockText(
  rows: ReadBlock,
  made: ResultBlock,
  results: readonly ResultHeading[],
  keys: readonly string[],
): string {
  const values = results.map(({ name }) => made.values[name] as Float64Array)
  let text = ''
  for (let row = 0; row < rows.count; row++) {
    text += startOf(rows, row)
    for (let place = 0; place < values.length; place++) {
      const value = (values[place] as Float64Array)[row] as number
      text += `,${keys[place] ?? ''}:${value - value === 0 ? value : 'null'}`
    }
    const code = made.code[row] as number
    text += `,"code":"${codeNames[code] ?? ''}"`
    if (code !== rowCodes.good) text += `,"error":${JSON.stringify(made.errors.get(row) ?? '')}`
    text += '}\n'
  }
  return text
}

/** The row as it stood, open at its end for what is added. */
function startOf(rows: ReadBlock, row: number): string {
  const line = rows.texts?.[row]
  if (line === undefined) {
    const fields = Object.entries(rows.columns).map(([name, column]) => [name, jsonValue(column[row])])
    return `{"row":${rows.from + row},${JSON.stringify(Object.fromEntries(fields)).slice(1, -1)}`
  }
  if (rows.faults.has(row)) return `{"line":${JSON.stringify(line)}`
  const body = line.trimEnd().slice(0, -1).trimEnd()
  return body === '{' ? `{"row":${rows.from + row}` : body
}

function jsonValue(given: string | number | undefined): string | number | null {
  if (typeof given === 'number') return given - given === 0 ? given : null
  return given ?? null
}
