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

const tables = await Promise.all(
  files
    .filter((file) => file.endsWith('.table.ts'))
    .map(async (file) => ({
      file,
      exported: (await import(new URL(file, folder).pathname)) as Readonly<Record<string, unknown>>,
    })),
)

/** Whether a value is a number, or holds one somewhere. */
function holdsNumber(value: unknown): boolean {
  if (typeof value === 'number') return true
  return typeof value === 'object' && value !== null && Object.values(value).some(holdsNumber)
}

/** Whether a row, or each of its parts that holds numbers, names a source of the registry. */
function namesSource(row: object): boolean {
  const { source, sources: several } = row as { source?: unknown; sources?: unknown }
  const named = [source, ...(Array.isArray(several) ? several : [])].filter((id) => id !== undefined)
  if (named.length > 0) return named.every((id) => typeof id === 'string' && id in sources)
  const parts = Object.values(row).filter(
    (part) => typeof part === 'object' && part !== null && holdsNumber(part),
  ) as object[]
  return parts.length > 0 && !Object.values(row).some((part) => typeof part === 'number') && parts.every(namesSource)
}

test('every numeric row of a table names a source of the registry, or its table does in the comment above it', () => {
  expect(tables.length).toBeGreaterThan(20)
  const without: string[] = []
  for (const { file, exported } of tables) {
    const text = readFileSync(new URL(file, folder), 'utf8')
    for (const [name, table] of Object.entries(exported)) {
      if (typeof table !== 'object' || table === null || !holdsNumber(table)) continue
      const comment = new RegExp(`/\\*\\*((?:(?!\\*/)[^])*)\\*/\\s*export const ${name}\\b`).exec(text)?.[1] ?? ''
      const cited = /@source +([a-z0-9.-]+)/.exec(comment)?.[1]
      if ((cited !== undefined && cited in sources) || (!Array.isArray(table) && namesSource(table))) continue
      Object.entries(table).forEach(([key, row]: [string, unknown]) => {
        if (holdsNumber(row) && !(typeof row === 'object' && row !== null && namesSource(row)))
          without.push(`${file}: ${name}[${key}]`)
      })
    }
  }
  expect(without).toEqual([])
})
