import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const rows = readFileSync('docs/trade-index.md', 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| ') && line.includes('`'))
  .map((line) => {
    const [words = '', functions = '', room = ''] = line.slice(2, -2).split(' | ')
    return { words, names: [...functions.matchAll(/`(\w+)`/g)].map(([, name = '']) => name), room }
  })

test('the index has rows, each with a function', () => {
  expect(rows.length).toBeGreaterThan(50)
  expect(rows.filter(({ names }) => names.length === 0)).toEqual([])
})

test.each([...new Set(rows.map(({ room }) => room))])('what the trade index names in %s is there', async (room) => {
  const given = (await import(`../../src/${room}/index.ts`)) as Record<string, unknown>
  const named = rows.filter((row) => row.room === room).flatMap(({ names }) => names)
  expect(named.filter((name) => typeof given[name] !== 'function')).toEqual([])
})

test('no words stand twice', () => {
  const words = rows.map((row) => row.words)
  expect(words.filter((word, index) => words.indexOf(word) !== index)).toEqual([])
})
