import { LitrebarError, nearestOf } from '../../errors/index.ts'
import { arrowBlocks, arrowWriter } from './arrow.ts'
import { csvBlocks, csvWriter } from './csv.ts'
import { ndjsonBlocks, ndjsonWriter } from './ndjson.ts'
import { parquetBlocks, parquetWriter } from './parquet.ts'
import type { ReadBlock, ReadFrom, ResultHeading, RowWriter, WritingOptions } from './row-format.ts'

/** Where rows come from: a path, or bytes as they arrive. */
export interface RowSource {
  readonly path: string | undefined
  /** The bytes from a position on. */
  readonly bytes: (position: number) => AsyncIterable<Uint8Array>
}

/** What is known before reading starts. */
export interface ReadingOptions {
  /** Columns that the plan reads. */
  readonly columns: readonly string[]
  readonly from: ReadFrom
  /** Headings of a file that is entered in the middle. */
  readonly headings: readonly string[] | undefined
}

/** One form of file. */
export interface RowFormat {
  /** Endings of file names. */
  readonly endings: readonly string[]
  readonly blocks: (source: RowSource, options: ReadingOptions) => AsyncIterable<ReadBlock>
  readonly writer: (results: readonly ResultHeading[], options: WritingOptions) => Promise<RowWriter> | RowWriter
  /** Whether an output can be cut after a block and gone on with. */
  readonly canGoOn: boolean
}

/** Name of a form of file. */
export type RowFormatName = 'csv' | 'tsv' | 'ndjson' | 'arrow' | 'parquet'

/** The forms of files that rows come in. A function, so that an import alone costs nothing. */
export const rowFormats = (): Readonly<Record<RowFormatName, RowFormat>> => ({
  csv: separated(',', ['.csv']),
  tsv: separated('\t', ['.tsv']),
  ndjson: {
    endings: ['.ndjson', '.jsonl'],
    blocks: ({ bytes }, { columns, from }) => ndjsonBlocks(bytes(from.position), { columns, from }),
    writer: ndjsonWriter,
    canGoOn: true,
  },
  arrow: {
    endings: ['.arrow', '.arrows', '.feather'],
    blocks: ({ bytes }, { from }) => arrowBlocks(bytes(0), { from }),
    writer: arrowWriter,
    canGoOn: true,
  },
  parquet: {
    endings: ['.parquet'],
    blocks: ({ path }, { from }) => {
      if (path === undefined) throw needsFile()
      return parquetBlocks(path, { from })
    },
    writer: parquetWriter,
    canGoOn: false, // its index stands at the end and names every block
  },
})

function separated(delimiter: ',' | '\t', endings: readonly string[]): RowFormat {
  return {
    endings,
    blocks: ({ bytes }, { from, headings }) =>
      csvBlocks(bytes(from.position), { delimiter, from, ...(headings === undefined ? {} : { headings }) }),
    writer: (results, options) => csvWriter(results, { delimiter, ...options }),
    canGoOn: true,
  }
}

function needsFile(): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'input',
    value: 'a stream of Parquet',
    expected: 'a file',
    hint: 'Parquet is read from its end: name the file, or pipe Arrow.',
  })
}

/**
 * The form of a file by the ending of its name.
 *
 * @param path - name of the file
 * @returns the name of the form
 * @throws LitrebarError `input` for an ending that is none of them
 */
export function formatOfPath(path: string): RowFormatName {
  const entries = Object.entries(rowFormats()) as [RowFormatName, RowFormat][]
  const found = entries.find(([, { endings }]) => endings.some((ending) => path.toLowerCase().endsWith(ending)))
  if (found !== undefined) return found[0]
  const endings = entries.flatMap(([, format]) => format.endings)
  const near = nearestOf(path.slice(path.lastIndexOf('.')), endings)
  throw new LitrebarError({
    code: 'input',
    argument: 'path',
    value: `'${path}'`,
    expected: `a name that ends with ${endings.join(', ')}`,
    hint: near === undefined ? 'State the format.' : `Did you mean ${near}?`,
  })
}
