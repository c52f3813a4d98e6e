/** One memory for the pieces of an output, block after block: new megabytes for each would keep the garbage collector busy. */
export class GatheredBytes {
  #bytes = new Uint8Array(0)

  /** All pieces one after another; theirs until the next call. */
  async all(pieces: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
    let length = 0
    for await (const piece of pieces) {
      if (length + piece.length > this.#bytes.length) {
        const larger = new Uint8Array(Math.max(2 * this.#bytes.length, length + piece.length))
        larger.set(this.#bytes.subarray(0, length))
        this.#bytes = larger
      }
      this.#bytes.set(piece, length)
      length += piece.length
    }
    return this.#bytes.subarray(0, length)
  }
}
