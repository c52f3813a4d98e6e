import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { open } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { fileBytes, hashed } from '../../src/batch/run/file-bytes.ts'

const folder = mkdtempSync(join(tmpdir(), 'litrebar-bytes-'))
const mebibyte = 1 << 20
const content = Buffer.from(
  Uint32Array.from({ length: (9 * mebibyte) / 4 + 3 }, (_, i) => (i * 2_654_435_761) >>> 0).buffer,
)
const path = join(folder, 'numbers')
writeFileSync(path, content)
const file = await open(path)
afterAll(async () => {
  await file.close()
  rmSync(folder, { recursive: true })
})

test.each([0, 1, mebibyte + 5, content.length - 1, content.length])('a file is whole from byte %d on', async (from) => {
  const pieces: Uint8Array[] = []
  for await (const piece of fileBytes(file, from)) pieces.push(piece)
  expect(Buffer.concat(pieces).equals(content.subarray(from))).toBe(true)
})

test('pieces of one stretch follow one another in memory', async () => {
  const pieces: Uint8Array[] = []
  for await (const piece of fileBytes(file, 0)) pieces.push(piece)
  const isNext = pieces.map((piece, place) => {
    const before = pieces[place - 1]
    return piece.buffer === before?.buffer && piece.byteOffset === before.byteOffset + before.length
  })
  expect(isNext).toEqual([false, true, true, true, true, true, true, true, false, true])
})

test('bytes that pass have the hash and the length of their file', async () => {
  const passing = { hash: createHash('sha256'), bytes: 0 }
  for await (const _ of hashed(fileBytes(file, 0), passing));
  expect(passing.bytes).toBe(content.length)
  expect(passing.hash.digest('hex')).toBe(createHash('sha256').update(content).digest('hex'))
})
