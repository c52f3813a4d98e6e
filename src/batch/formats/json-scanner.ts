// Parsing every line into an object costs more than all the rest of a row. Lines without nesting and escapes, which most are, can be
// checked and cut into fields where they stand; what this does not take, `JSON.parse` does.

/** Where the fields of the wanted names stand in lines of flat objects. Valid until the next piece is scanned. */
export interface JsonFields {
  readonly fieldStarts: readonly Int32Array[]
  readonly fieldEnds: readonly Int32Array[]
}

const quote = 34
const comma = 44
const minus = 45
const point = 46
const zero = 48
const nine = 57
const colon = 58
const backslash = 92
const openingBrace = 123
const closingBrace = 125
const words = ['true', 'false', 'null'].map((word) => Buffer.from(word))

/** Reads lines that hold one flat JSON object each: texts without escapes, numbers, true, false and null. */
export class JsonScanner {
  readonly #names: readonly Buffer[]
  #starts: Int32Array[] = []
  #ends: Int32Array[] = []
  #bytes: Buffer = Buffer.alloc(0)
  #end = 0
  // start and end of the text or value that was read last
  #from = 0
  #to = 0

  constructor(names: readonly string[]) {
    this.#names = names.map((name) => Buffer.from(name))
  }

  /**
   * Finds the fields of lines. A name that a line does not have, and null, are empty fields; of a name that stands twice the last counts.
   *
   * @param bytes - a piece of text
   * @param lines - where its lines start and end
   * @returns the fields; undefined where some line is no flat object, be it sound JSON or not
   */
  scan(bytes: Buffer, lines: { readonly starts: Int32Array; readonly ends: Int32Array }): JsonFields | undefined {
    const { starts, ends } = lines
    const count = starts.length
    if ((this.#starts[0]?.length ?? 0) < count) {
      this.#starts = this.#names.map(() => new Int32Array(2 * count))
      this.#ends = this.#names.map(() => new Int32Array(2 * count))
    }
    this.#bytes = bytes
    for (const column of this.#starts) column.fill(0, 0, count)
    for (const column of this.#ends) column.fill(0, 0, count)
    for (let row = 0; row < count; row++) {
      this.#end = ends[row] as number
      if (!this.#object(starts[row] as number, row)) return undefined
    }
    return {
      fieldStarts: this.#starts.map((column) => column.subarray(0, count)),
      fieldEnds: this.#ends.map((column) => column.subarray(0, count)),
    }
  }

  #object(start: number, row: number): boolean {
    const bytes = this.#bytes
    let at = this.#blanks(start)
    if (bytes[at] !== openingBrace) return false
    at = this.#blanks(at + 1)
    if (at < this.#end && bytes[at] === closingBrace) return this.#blanks(at + 1) === this.#end
    for (let place = 0; ; place++) {
      at = this.#text(at)
      if (at < 0) return false
      const column = this.#named(place)
      at = this.#blanks(at)
      if (at >= this.#end || bytes[at] !== colon) return false
      at = this.#value(this.#blanks(at + 1))
      if (at < 0) return false
      if (column >= 0) {
        ;(this.#starts[column] as Int32Array)[row] = this.#from
        ;(this.#ends[column] as Int32Array)[row] = this.#to
      }
      at = this.#blanks(at)
      if (at >= this.#end) return false
      if (bytes[at] === closingBrace) return this.#blanks(at + 1) === this.#end
      if (bytes[at] !== comma) return false
      at = this.#blanks(at + 1)
    }
  }

  /** Which of the names was read last; those of a line mostly stand in the order of the plan. */
  #named(place: number): number {
    const names = this.#names
    if (place < names.length && this.#isText(names[place] as Buffer)) return place
    return names.findIndex((name) => this.#isText(name))
  }

  #isText(name: Buffer): boolean {
    const from = this.#from
    if (this.#to - from !== name.length) return false
    for (let i = 0; i < name.length; i++) if (name[i] !== this.#bytes[from + i]) return false
    return true
  }

  #value(start: number): number {
    if (start >= this.#end) return -1
    const byte = this.#bytes[start] as number
    if (byte === quote) return this.#text(start)
    if (byte === minus || (byte >= zero && byte <= nine)) return this.#number(start)
    for (const word of words) {
      this.#from = start
      this.#to = Math.min(start + word.length, this.#end)
      if (!this.#isText(word)) continue
      if (word.length === 4 && byte === 110) this.#from = this.#to // null: nothing stands there
      return start + word.length
    }
    return -1
  }

  /** A text in quotes without escapes; the place behind it, or -1. */
  #text(start: number): number {
    const bytes = this.#bytes
    if (start >= this.#end || bytes[start] !== quote) return -1
    for (let at = start + 1; at < this.#end; at++) {
      const byte = bytes[at] as number
      if (byte === quote) {
        this.#from = start + 1
        this.#to = at
        return at + 1
      }
      if (byte === backslash || byte < 32) return -1
    }
    return -1
  }

  /** A number as JSON writes it; the place behind it, or -1. */
  #number(start: number): number {
    const bytes = this.#bytes
    const first = bytes[start] === minus ? start + 1 : start
    let at = this.#digits(first)
    if (at === first || (bytes[first] === zero && at > first + 1)) return -1
    if (at < this.#end && bytes[at] === point) {
      const behind = this.#digits(at + 1)
      if (behind === at + 1) return -1
      at = behind
    }
    if (at < this.#end && ((bytes[at] as number) | 32) === 101) {
      let power = at + 1
      if (power < this.#end && (bytes[power] === minus || bytes[power] === 43)) power++
      const behind = this.#digits(power)
      if (behind === power) return -1
      at = behind
    }
    this.#from = start
    this.#to = at
    return at
  }

  #digits(start: number): number {
    let at = start
    while (at < this.#end && (this.#bytes[at] as number) >= zero && (this.#bytes[at] as number) <= nine) at++
    return at
  }

  #blanks(start: number): number {
    let at = start
    while (at < this.#end && (this.#bytes[at] === 32 || this.#bytes[at] === 9 || this.#bytes[at] === 13)) at++
    return at
  }
}
