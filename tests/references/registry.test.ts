import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { cautions, type SourceId, sourceOf, sources } from '../../src/references/index.ts'

const folder = new URL('../../src/', import.meta.url)
const files = readdirSync(folder, { recursive: true })
  .map(String)
  .filter((file) => file.endsWith('.ts') && !file.startsWith('references/sources'))
const texts = files.map((file) => ({ file, text: readFileSync(new URL(file, folder), 'utf8') }))

test('every source says title, edition, how places are named, publisher and kind', () => {
  for (const id of Object.keys(sources) as SourceId[]) {
    for (const [field, text] of Object.entries(sourceOf(id))) expect(text, `${id}.${field}`).not.toBe('')
  }
})

test('every caution is a sentence with a source, and none promises that something is harmless', () => {
  for (const [id, caution] of Object.entries(cautions)) {
    expect(caution.text, id).toMatch(/\.$/)
    expect(sources, id).toHaveProperty([caution.source])
    expect(caution.text, id).not.toMatch(/\bsafe(ly)?\b/i)
  }
})

test('the sources and doc comments cite only ids of the registry', () => {
  const cited = texts.flatMap(({ file, text }) =>
    [...text.matchAll(/@source +([a-z0-9][a-z0-9.-]*[a-z0-9])/g)].map(([, id = '']) => ({ file, id })),
  )
  expect(cited.length).toBeGreaterThan(0)
  expect(cited.filter(({ id }) => !(id in sources))).toEqual([])
})

test('no source of the registry is without a reader', () => {
  const everything = texts.map(({ text }) => text).join('\n')
  const tests = readdirSync(new URL('../', import.meta.url), { recursive: true })
    .map(String)
    .filter((file) => file.endsWith('.ts') || file.endsWith('.json'))
    .map((file) => `${file}\n${readFileSync(new URL(`../${file}`, import.meta.url), 'utf8')}`)
    .join('\n')
  const unread = Object.keys(sources).filter((id) => !everything.includes(id) && !tests.includes(id))
  expect(unread).toEqual([])
})

/** A table is an array or record of object literals; a numeric row is one that carries a number. */
test('every numeric row of a table names its source', () => {
  const tables = texts.filter(({ file }) => file.endsWith('.table.ts'))
  expect(tables.length).toBeGreaterThan(0)
  for (const { file, text } of tables) {
    expect(text, `${file} holds figures and names no source`).toMatch(/\bsource: '/)
  }
})
