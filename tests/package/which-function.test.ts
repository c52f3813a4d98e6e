import { existsSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const page = readFileSync('docs/which-function.md', 'utf8')
const rows = page
  .split('\n')
  .filter((line) => line.startsWith('| ') && line.includes('`'))
  .map((line) => {
    const [, functions = '', room = ''] = line.slice(2, -2).split(' | ')
    return { names: [...functions.matchAll(/`(\w+)`/g)].map(([, name = '']) => name), room }
  })

test('each question has a function', () => {
  expect(rows.length).toBeGreaterThan(35)
  expect(rows.filter(({ names }) => names.length === 0)).toEqual([])
})

test.each([...new Set(rows.map(({ room }) => room))])('what the questions lead to in %s is there', async (room) => {
  const given = (await import(`../../src/${room}/index.ts`)) as Record<string, unknown>
  const named = rows.filter((row) => row.room === room).flatMap(({ names }) => names)
  expect(named.filter((name) => typeof given[name] !== 'function')).toEqual([])
})

test('every how-to page that it leads to is there', () => {
  const linked = [...page.matchAll(/\((how-to\/[\w-]+\.md)\)/g)].map(([, path = '']) => path)
  expect(linked.length).toBeGreaterThan(15)
  expect(linked.filter((path) => !existsSync(`docs/${path}`))).toEqual([])
})
