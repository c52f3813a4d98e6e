import { inputError } from '../../errors/index.ts'
import type { ResultBlock, RowBlock } from '../rows/row-block.ts'

/** A block of rows as a reader gives it. */
export interface ReadBlock extends RowBlock {
  /** Where reading goes on after this block: bytes of a text, or batches of a binary file. A resumed run starts here. */
  readonly next: number
  /** The rows as they stand in a file of text, for a writer of the same form: it copies a row and adds to it. */
  readonly lines?: RowLines
  /** Columns of a file that states that a value stands in every row of them. */
  readonly required?: ReadonlySet<string>
}

/** Rows as they stand in a file of text. */
export interface RowLines {
  /** What is between their fields; `json` for objects. */
  readonly form: ',' | ';' | '\t' | 'json'
  readonly bytes: Buffer
  readonly starts: Int32Array
  readonly ends: Int32Array
}

/** How numbers are written where a format writes them as text. */
export interface WritingOptions {
  /** Significant figures of a result, 1 to 17. */
  readonly figures: number
}

/** Where reading starts. */
export interface ReadFrom {
  /** Bytes or batches, as in `next`; 0 at the start. */
  readonly position: number
  /** Number of the first row to come. */
  readonly row: number
}

/** A name and unit of a result, as a heading shows them. */
export interface ResultHeading {
  readonly name: string
  readonly unit: string
  /** Whether it is words. */
  readonly isText?: boolean
}

/** Turns blocks into the bytes of a file. */
export interface RowWriter {
  /** What stands before the first row. */
  readonly start: (first: ReadBlock) => Promise<Uint8Array> | Uint8Array
  /** The bytes of a block. The same memory may serve the next one. */
  readonly block: (rows: ReadBlock, results: ResultBlock) => Promise<Uint8Array> | Uint8Array
  /** What stands after the last row. */
  readonly end: () => Promise<Uint8Array> | Uint8Array
}

/** Heading of a result column: `density (kg/m³)`. */
export function headingOf({ name, unit }: ResultHeading): string {
  return unit === '' ? name : `${name} (${unit})`
}

/** The column of a result, numbers or words. */
export function resultColumn(
  { values, texts }: ResultBlock,
  { name }: ResultHeading,
): Float64Array | readonly string[] {
  return values[name] ?? texts[name] ?? []
}

/**
 * Refuses a file with a column that is named like one of the results: in a file of columns one would take the place of the other.
 *
 * @throws LitrebarError `input`, with the names
 */
export function requireOwnNames({ columns }: RowBlock, results: readonly ResultHeading[]): void {
  const taken = [...results.map(headingOf), 'code', 'error'].filter((name) => Object.hasOwn(columns, name))
  if (taken.length === 0) return
  const hint = 'Name these columns otherwise, or write CSV.'
  throw inputError('input', taken.join(', '), 'columns with other names than the results', hint)
}
