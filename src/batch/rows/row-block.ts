/** One column of a block: numbers, or texts where the file has texts. An empty field of text is a missing value. */
export type BlockColumn = Float64Array | readonly string[]

/** Some consecutive rows of a file, by columns. */
export interface RowBlock {
  /** Number of the first row in the whole input, from 0. */
  readonly from: number
  readonly count: number
  readonly columns: Readonly<Record<string, BlockColumn>>
  /** The rows whose shape the reader could not take, with the reason: a row with too many fields, a line that is no JSON. */
  readonly faults: ReadonlyMap<number, string>
}

/** The results of a block: one column each, NaN where the row is bad; a code and the words for it. */
export interface ResultBlock {
  readonly values: Readonly<Record<string, Float64Array>>
  /** As in `rowCodes`. */
  readonly code: Uint8Array
  /** What is wrong, for the bad rows only. */
  readonly errors: ReadonlyMap<number, string>
}
