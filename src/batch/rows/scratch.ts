/**
 * Columns for what lives no longer than a block. The same memory serves block after block: new megabytes for each would keep the
 * garbage collector busier than the gas keeps the processor.
 */
export class Scratch {
  readonly #columns: Float64Array[] = []
  #used = 0

  /** How many columns are out. */
  get used(): number {
    return this.#used
  }

  /** Takes every column back that was given after so many. */
  reset(kept = 0): void {
    this.#used = kept
  }

  /** A column of so many numbers, whatever stood there before. */
  column(length: number): Float64Array {
    const place = this.#used++
    let column = this.#columns[place]
    if (column === undefined || column.length < length) {
      column = new Float64Array(length)
      this.#columns[place] = column
    }
    return column.subarray(0, length)
  }
}
