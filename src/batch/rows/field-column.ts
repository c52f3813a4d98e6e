/**
 * A column of text as it stands in the bytes of a file: a field is decoded only where its words are needed, and a plain number never.
 * An empty field is a missing value.
 */
export class FieldColumn {
  readonly length: number
  /** UTF-8. */
  readonly bytes: Buffer
  /** First byte of each field. */
  readonly starts: Int32Array
  /** Byte after the last of each field. */
  readonly ends: Int32Array

  constructor(bytes: Uint8Array, starts: Int32Array, ends: Int32Array) {
    this.bytes = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
    this.starts = starts
    this.ends = ends
    this.length = starts.length
  }

  /** The words of a field. */
  text(row: number): string {
    return this.bytes.toString('utf8', this.starts[row], this.ends[row])
  }

  /** The number of a field, as `Number` reads it; NaN for an empty field and for one that is none. */
  number(row: number): number {
    const { bytes } = this
    const end = this.ends[row] as number
    let at = this.starts[row] as number
    const isNegative = bytes[at] === minus
    if (isNegative) at++
    let mantissa = 0
    let digits = 0
    let pointAt = end
    for (; at < end; at++) {
      const digit = (bytes[at] as number) - zero
      if (digit >= 0 && digit <= 9) {
        mantissa = mantissa * 10 + digit
        digits++
      } else if (digit === point && pointAt === end) pointAt = at
      else return otherNumber(this.text(row))
    }
    if (digits === 0 || digits > exactDigits) return otherNumber(this.text(row))
    // both exact, so that the quotient is the double nearest to the decimal number
    const size = pointAt >= end - 1 ? mantissa : mantissa / (powersOfTen[end - 1 - pointAt] as number)
    return isNegative ? -size : size
  }

  /**
   * The place of each row's words among those that are met, each looked up once.
   *
   * @param placeOf - asked for the words of a row
   * @returns the places by row
   */
  places(placeOf: (text: string, row: number) => number): Int32Array {
    const out = new Int32Array(this.length)
    const first = new Map<number, number>()
    for (let row = 0; row < this.length; row++) {
      const hash = this.#hash(row)
      const met = first.get(hash)
      if (met !== undefined && this.#isSame(met, row) && (out[met] as number) >= 0) {
        out[row] = out[met] as number
        continue
      }
      out[row] = placeOf(this.text(row), row)
      if (met === undefined) first.set(hash, row)
    }
    return out
  }

  // FNV-1a over the bytes
  #hash(row: number): number {
    const { bytes } = this
    const end = this.ends[row] as number
    let hash = 0x811c9dc5 | 0
    for (let at = this.starts[row] as number; at < end; at++)
      hash = Math.imul(hash ^ (bytes[at] as number), 0x01000193) | 0
    return hash
  }

  #isSame(a: number, b: number): boolean {
    const { bytes, starts, ends } = this
    const from = starts[a] as number
    const length = (ends[a] as number) - from
    const other = starts[b] as number
    if ((ends[b] as number) - other !== length) return false
    for (let at = 0; at < length; at++) if (bytes[from + at] !== bytes[other + at]) return false
    return true
  }
}

const minus = 45
const zero = 48
const point = 46 - zero
// So many digits make a whole number that a double holds exactly.
const exactDigits = 15
const powersOfTen = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15]

function otherNumber(text: string): number {
  return text === '' ? Number.NaN : Number(text)
}
