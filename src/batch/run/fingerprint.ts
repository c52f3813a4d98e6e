import { createHash } from 'node:crypto'
import { closeSync, createReadStream, fstatSync, openSync, readSync } from 'node:fs'

const markSize = 1 << 16

/** A mark of a file that changes when it is another one: size and hash of its beginning. Cheap, also for a file of many gigabytes. */
export function fileMark(path: string): string {
  const file = openSync(path, 'r')
  try {
    const { size } = fstatSync(file)
    const start = Buffer.alloc(Math.min(markSize, size))
    readSync(file, start, 0, start.length, 0)
    return `${size}-${createHash('sha256').update(start).digest('hex').slice(0, 16)}`
  } finally {
    closeSync(file)
  }
}

/** SHA-256 of a whole file, in hexadecimal. */
export async function fileHash(path: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(path, { highWaterMark: 1 << 20 })) hash.update(chunk as Buffer)
  return hash.digest('hex')
}

/** SHA-256 of plain data, in hexadecimal. */
export function dataHash(data: unknown): string {
  return createHash('sha256').update(JSON.stringify(data)).digest('hex')
}
