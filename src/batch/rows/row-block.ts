import type { DictionaryColumn } from './dictionary-column.ts'
import type { FieldColumn } from './field-column.ts'
import { isTextColumn } from './text-column.ts'

/**
 * One column of a block: numbers; fields of text as they stand in the file; few words, each of which stands once; or texts and numbers mixed. An empty text is a missing
 * value, and so is NaN.
 */
export type BlockColumn = Float64Array | FieldColumn | DictionaryColumn | readonly (string | number)[]

/** Some consecutive rows of a file, by columns. */
export interface RowBlock {
  /** Number of the first row in the whole input, from 0. */
  readonly from: number
  readonly count: number
  readonly columns: Readonly<Record<string, BlockColumn>>
  /** The rows whose shape the reader could not take, with the reason: a row with too many fields, a line that is not JSON. */
  readonly faults: ReadonlyMap<number, string>
}

/** The results of a block: one column each, NaN where the row is bad; a code and the words for it. */
export interface ResultBlock {
  readonly values: Readonly<Record<string, Float64Array>>
  /** Results that are words, empty where the row is bad or has no such thing. */
  readonly texts: Readonly<Record<string, readonly string[]>>
  /** As in `rowCodes`. */
  readonly code: Uint8Array
  /** What is wrong, for the bad rows only. */
  readonly errors: ReadonlyMap<number, string>
}

/** What stands in a row of a column: an empty text or NaN where nothing does. */
export function fieldOf(column: BlockColumn, row: number): string | number {
  return isTextColumn(column) ? column.text(row) : (column[row] ?? '')
}

/** The fields of a column as texts, an empty one where nothing stands. */
export function textsOf(column: BlockColumn): string[] {
  if (Array.isArray(column) && column.every((field) => typeof field === 'string')) return column
  return Array.from({ length: column.length }, (_, row) => {
    const field = fieldOf(column, row)
    if (typeof field === 'string') return field
    return Number.isNaN(field) ? '' : String(field)
  })
}
