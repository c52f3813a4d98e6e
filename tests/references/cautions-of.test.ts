import { expect, test } from 'vitest'
import { entries } from '../../scripts/entries.ts'
import { isLitrebarError } from '../../src/errors/index.ts'
import { cautions, cautionsOf } from '../../src/references/index.ts'
import { validCalls } from '../fixtures/valid-calls.ts'

type Callable = (...args: readonly unknown[]) => unknown

const rooms = [
  'environment',
  'gas-law',
  'cylinder',
  'regulator-performance',
  'consumption',
  'buoyancy',
  'gauges',
  'charging',
]
const exported: Record<string, unknown> = {}
for (const [entry, source] of Object.entries(entries())) {
  if (rooms.includes(entry)) Object.assign(exported, await import(/* @vite-ignore */ `../../${source}`))
}

/** What a function gives for a call that is in order; undefined where the table of calls has none or an old one: the hostile test asks for those. */
function resultOf(name: string): unknown {
  const args = validCalls[name]?.[0]?.()
  try {
    return args === undefined ? undefined : (exported[name] as Callable)(...args)
  } catch (error) {
    if (isLitrebarError(error)) return undefined
    throw error
  }
}

test.each(Object.entries(cautionsOf))(
  '%s gives a result without ids of its own, and its cautions are in the table',
  (name, ids) => {
    expect(exported[name]).toBeTypeOf('function')
    const result = resultOf(name)
    expect(result).toBeDefined()
    expect(typeof result === 'object' && result !== null && 'cautions' in result).toBe(false)
    expect(ids).not.toHaveLength(0)
    for (const id of ids) expect(cautions).toHaveProperty([id])
  },
)

test('every record that a function gives carries ids of the table under cautions, if it has any', () => {
  let carrying = 0
  for (const name of Object.keys(exported)) {
    if (typeof exported[name] !== 'function' || Object.hasOwn(cautionsOf, name)) continue
    const result = resultOf(name) as { readonly cautions?: readonly string[] } | null | undefined
    if (typeof result !== 'object' || !Array.isArray(result?.cautions)) continue
    carrying++
    for (const id of result.cautions) expect(cautions, `${name}: ${id}`).toHaveProperty([id])
  }
  expect(carrying).toBeGreaterThan(20)
})
