/** A column of few different words: each stands once, and a row says which is its own. */
export class DictionaryColumn {
  readonly length: number
  readonly words: readonly string[]
  /** Place of each row's word; negative where nothing stands. */
  readonly indices: Int32Array

  constructor(words: readonly string[], indices: Int32Array) {
    this.words = words
    this.indices = indices
    this.length = indices.length
  }

  /** The word of a row, empty where nothing stands. */
  text(row: number): string {
    return this.words[this.indices[row] as number] ?? ''
  }

  /** The number of a word, as `Number` reads it; NaN for an empty word and for one that is none. */
  number(row: number): number {
    const text = this.text(row)
    return text === '' ? Number.NaN : Number(text)
  }

  /**
   * The place of each row's word among those that are met, each looked up once.
   *
   * @param placeOf - asked for the word of a row; for one without a place, at every row that has it
   * @returns the places by row
   */
  places(placeOf: (text: string, row: number) => number): Int32Array {
    const { words, indices } = this
    const known = new Int32Array(words.length).fill(-1)
    const out = new Int32Array(indices.length)
    for (let row = 0; row < indices.length; row++) {
      const index = indices[row] as number
      let place = index < 0 ? -1 : (known[index] as number)
      if (place < 0) {
        place = placeOf(this.text(row), row)
        if (index >= 0) known[index] = place
      }
      out[row] = place
    }
    return out
  }
}
