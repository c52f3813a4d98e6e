import type { ReadFrom } from './row-format.ts'

/** A piece of a text file that ends with a whole record. */
export interface TextPiece {
  /** UTF-8, ending with a line feed or the file. */
  readonly bytes: Buffer
  /** Bytes from the start of the file to the end of this piece. */
  readonly next: number
}

const lineFeed = 10
const carriageReturn = 13
const quote = 34
const pieceSize = 1 << 20

/**
 * Cuts a stream of bytes into pieces that end with a whole record. Positions are counted in bytes, so that a later run can go on from
 * one of them. Where a piece ends depends on where it begins and on the text alone, not on how the bytes arrive: a run that goes on has the
 * pieces, and with them the blocks, of one that was never stopped. A line feed within quotes ends no record.
 *
 * @param bytes - the file, from the position on
 * @param options - position of the first byte; whether quotes hide line feeds, as in CSV; size of a piece, a mebibyte unless given
 * @returns pieces of that size, or of one record where that is longer
 */
export async function* textPieces(
  bytes: AsyncIterable<Uint8Array>,
  options: { readonly from: ReadFrom['position']; readonly isQuoted: boolean; readonly size?: number },
): AsyncGenerator<TextPiece> {
  const { isQuoted, size = pieceSize } = options
  let held: Uint8Array[] = []
  let heldLength = 0
  let position = options.from
  let reach = size
  for await (const chunk of bytes) {
    held.push(chunk)
    heldLength += chunk.length
    while (heldLength >= reach) {
      const joined = Buffer.concat(held, heldLength)
      const within = joined.subarray(0, reach)
      const end = isQuoted ? endOfRecords(within) : within.lastIndexOf(lineFeed) + 1
      if (end > 0) {
        position += end
        yield { bytes: joined.subarray(0, end), next: position }
      }
      held = [joined.subarray(end)]
      heldLength = joined.length - end
      reach = end > 0 ? size : reach + size
    }
  }
  if (heldLength > 0) {
    position += heldLength
    yield { bytes: Buffer.concat(held, heldLength), next: position }
  }
}

/** The place after the last line feed that stands outside quotes: a record may hold line feeds of its own. */
function endOfRecords(bytes: Buffer): number {
  let isInside = false
  let from = 0
  let end = 0
  for (let at = bytes.indexOf(quote); at >= 0; at = bytes.indexOf(quote, from)) {
    if (!isInside) {
      const last = bytes.subarray(from, at).lastIndexOf(lineFeed)
      if (last >= 0) end = from + last + 1
    }
    isInside = !isInside
    from = at + 1
  }
  if (isInside) return end
  const last = bytes.subarray(from).lastIndexOf(lineFeed)
  return last >= 0 ? from + last + 1 : end
}

/** The lines of a piece: where each starts and ends in its bytes, without line feed and carriage return. */
export function linesOf(bytes: Buffer, from: number): { readonly starts: Int32Array; readonly ends: Int32Array } {
  let starts = new Int32Array(startLines)
  let ends = new Int32Array(startLines)
  let count = 0
  for (let start = from; start < bytes.length; count++) {
    if (count === starts.length) {
      starts = doubled(starts)
      ends = doubled(ends)
    }
    const found = bytes.indexOf(lineFeed, start)
    const end = found < 0 ? bytes.length : found
    starts[count] = start
    ends[count] = withoutReturn(bytes, start, end)
    start = end + 1
  }
  return { starts: starts.subarray(0, count), ends: ends.subarray(0, count) }
}

const startLines = 1 << 15

/** A column of twice the length that begins as the given one. */
export function doubled(column: Int32Array): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(2 * column.length)
  larger.set(column)
  return larger
}

/** The end of a line without the carriage return before it. */
export function withoutReturn(bytes: Buffer, start: number, end: number): number {
  return end > start && bytes[end - 1] === carriageReturn ? end - 1 : end
}
