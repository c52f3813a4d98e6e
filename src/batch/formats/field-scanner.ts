import { doubled, withoutReturn } from './lines.ts'

/** Where lines and their fields stand in a piece of text. Valid until the next piece is scanned. */
export interface ScannedFields {
  readonly starts: Int32Array
  /** Without line feed and carriage return. */
  readonly ends: Int32Array
  /** By column. */
  readonly fieldStarts: readonly Int32Array[]
  readonly fieldEnds: readonly Int32Array[]
  /** Rows with another number of fields, and that number. */
  readonly faults: ReadonlyMap<number, number>
}

const lineFeed = 10
const startRows = 1 << 15

/** Finds lines and fields of text without quotes in one pass over its bytes, into memory that serves piece after piece. */
export class FieldScanner {
  readonly #width: number
  readonly #separator: number
  #starts = new Int32Array(startRows)
  #ends = new Int32Array(startRows)
  #fieldStarts: Int32Array[]
  #fieldEnds: Int32Array[]

  constructor(width: number, separator: number) {
    this.#width = width
    this.#separator = separator
    this.#fieldStarts = Array.from({ length: width }, () => new Int32Array(startRows))
    this.#fieldEnds = Array.from({ length: width }, () => new Int32Array(startRows))
  }

  scan(bytes: Buffer, from: number): ScannedFields {
    const faults = new Map<number, number>()
    const width = this.#width
    let row = 0
    for (let start = from; start < bytes.length; row++) {
      if (row === this.#starts.length) this.#grow()
      let place = 0
      let field = start
      let at = start
      for (; at < bytes.length; at++) {
        const byte = bytes[at] as number
        if (byte !== this.#separator) {
          if (byte === lineFeed) break
          continue
        }
        if (place < width) this.#field(place, row, field, at)
        place++
        field = at + 1
      }
      const end = withoutReturn(bytes, start, at)
      if (place < width) this.#field(place, row, field, end)
      if (place + 1 !== width) faults.set(row, place + 1)
      for (let missing = place + 1; missing < width; missing++) this.#field(missing, row, end, end)
      this.#starts[row] = start
      this.#ends[row] = end
      start = at + 1
    }
    return {
      starts: this.#starts.subarray(0, row),
      ends: this.#ends.subarray(0, row),
      fieldStarts: this.#fieldStarts.map((column) => column.subarray(0, row)),
      fieldEnds: this.#fieldEnds.map((column) => column.subarray(0, row)),
      faults,
    }
  }

  #field(place: number, row: number, start: number, end: number): void {
    ;(this.#fieldStarts[place] as Int32Array)[row] = start
    ;(this.#fieldEnds[place] as Int32Array)[row] = end
  }

  #grow(): void {
    this.#starts = doubled(this.#starts)
    this.#ends = doubled(this.#ends)
    this.#fieldStarts = this.#fieldStarts.map(doubled)
    this.#fieldEnds = this.#fieldEnds.map(doubled)
  }
}
