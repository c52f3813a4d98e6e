import type { Hash } from 'node:crypto'
import type { FileHandle } from 'node:fs/promises'

const pieceSize = 1 << 20
const stretchSize = 8 * pieceSize

/**
 * The bytes of a file. Pieces that follow one another lie so in memory, a stretch of several at a time: whoever joins them to a larger
 * whole, such as the columns of a batch, copies nothing, and there is less to collect than if each had memory of its own.
 *
 * @param file - stays open: a reader that has what it needs may leave the rest, and never come back
 * @param position - first byte
 * @returns pieces of up to a mebibyte
 */
export async function* fileBytes(file: FileHandle, position: number): AsyncGenerator<Uint8Array> {
  let stretch = Buffer.allocUnsafeSlow(stretchSize)
  let used = 0
  for (let at = position; ; ) {
    if (used === stretchSize) {
      stretch = Buffer.allocUnsafeSlow(stretchSize)
      used = 0
    }
    const { bytesRead } = await file.read(stretch, used, Math.min(pieceSize, stretchSize - used), at)
    if (bytesRead === 0) return
    yield stretch.subarray(used, used + bytesRead)
    used += bytesRead
    at += bytesRead
  }
}

/** A hash of bytes as they pass, and how many have passed. */
export interface PassingHash {
  readonly hash: Hash
  bytes: number
}

/** The same bytes, hashed as they pass. */
export async function* hashed(source: AsyncIterable<Uint8Array>, passing: PassingHash): AsyncGenerator<Uint8Array> {
  for await (const piece of source) {
    passing.hash.update(piece)
    passing.bytes += piece.length
    yield piece
  }
}
