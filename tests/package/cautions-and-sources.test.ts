// What cautions and sources come with the result of every call of the table. A change of either is a decision, and shows here.
// UPDATE_CAUTIONS=1 writes the record anew.
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import * as core from '../../src/index.ts'
import { validCalls } from '../fixtures/valid-calls.ts'

type Lists = Readonly<Record<string, readonly (readonly string[])[]>>

const file = 'tests/fixtures/cautions-and-sources.json'

/** Lists named `cautions` and `sources` anywhere in a result, each once. */
function listsIn(value: unknown, found: Set<string>, depth = 0): void {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value) || depth > 4) return
  for (const [name, part] of Object.entries(value)) {
    if ((name === 'cautions' || name === 'sources') && Array.isArray(part)) found.add(`${name}: ${part.join(', ')}`)
    else listsIn(part, found, depth + 1)
  }
}

const functions = Object.entries(core as unknown as Record<string, unknown>).filter(
  (entry): entry is [string, (...args: readonly unknown[]) => unknown] =>
    typeof entry[1] === 'function' && Object.hasOwn(validCalls, entry[0]),
)

function recordOf([name, call]: (typeof functions)[number]): readonly (readonly string[])[] {
  return (validCalls[name] ?? []).map((args) => {
    const found = new Set<string>()
    listsIn(call(...args()), found)
    return [...found].toSorted()
  })
}

const now = (): Lists =>
  Object.fromEntries(
    functions
      .map((entry) => [entry[0], recordOf(entry)] as const)
      .filter(([, calls]) => calls.some((lists) => lists.length > 0))
      .toSorted(([a], [b]) => (a < b ? -1 : 1)),
  )

if (process.env['UPDATE_CAUTIONS'] === '1') writeFileSync(file, `${JSON.stringify(now(), undefined, 1)}\n`)
const stored = JSON.parse(existsSync(file) ? readFileSync(file, 'utf8') : '{}') as Lists

test('the record names the functions that give cautions or sources, and no others', () => {
  expect(Object.keys(stored)).toEqual(Object.keys(now()))
  expect(Object.keys(stored).length).toBeGreaterThan(80)
})

test.each(functions.filter(([name]) => Object.hasOwn(stored, name)))(
  '%s gives the cautions and sources of the record',
  (name, call) => {
    expect(recordOf([name, call])).toEqual(stored[name])
  },
)
