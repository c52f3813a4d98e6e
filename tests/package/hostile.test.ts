// Every exported function meets every hostile value in every parameter: it refuses with our error, or gives a finite result.
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { entries } from '../../scripts/entries.ts'
import { isLitrebarError } from '../../src/errors/index.ts'
import { validCalls } from '../fixtures/valid-calls.ts'
import { documentedExceptions, spoiltElsewhere } from './documented-exceptions.ts'
import { fingerprint, frozenCopy, notFiniteIn, ofTheCaller, spoiltFormsOf } from './hostile.ts'

type Callable = (...args: readonly unknown[]) => unknown

interface Exported {
  readonly entry: string
  readonly name: string
  readonly call: Callable
}

const slowestCall = 2000 // ms

/** Entries that take what the library itself hands in: words, names and codes written in its source. */
const machinery: readonly string[] = ['errors']

async function exportedFunctions(): Promise<readonly Exported[]> {
  const found = new Map<string, Exported>()
  for (const [entry, source] of Object.entries(entries())) {
    if (entry === 'index' || machinery.includes(entry)) continue
    const names = (await import(/* @vite-ignore */ `../../${source}`)) as Record<string, unknown>
    for (const [name, value] of Object.entries(names)) {
      if (typeof value === 'function') found.set(name, { entry, name, call: value as Callable })
    }
  }
  return [...found.values()]
}

const functions = await exportedFunctions()
const spoiltHere = functions.filter(({ name }) => !Object.hasOwn(spoiltElsewhere, name))

test('the lists of what is documented and of what is spoilt elsewhere name functions and tests that there are', () => {
  const names = functions.map(({ name }) => name)
  expect(Object.keys({ ...spoiltElsewhere, ...documentedExceptions }).filter((name) => !names.includes(name))).toEqual(
    [],
  )
  for (const [name, path] of Object.entries(spoiltElsewhere)) expect(readFileSync(path, 'utf8')).toContain(`${name}(`)
})

/** What a call with hostile arguments did wrong, if anything. */
function faultOf({ name, call }: Exported, args: readonly unknown[], mustBeRefused: boolean): string | undefined {
  const writes = name.endsWith('Into') // into its first argument, with NaN in bad rows
  const before = fingerprint(writes ? args.slice(1) : args)
  const started = performance.now()
  let fault: string | undefined
  try {
    const result = call(...args)
    fault = mustBeRefused ? 'was taken' : notFiniteIn(result)
  } catch (thrown) {
    if (thrown === ofTheCaller) fault = undefined
    else if (!isLitrebarError(thrown)) fault = `threw ${String(thrown).slice(0, 100)}`
    else if (/\bundefined\b|\[object /.test(thrown.message)) fault = `said "${thrown.message.slice(0, 100)}"`
  }
  if (performance.now() - started > slowestCall) fault ??= 'took too long'
  if (fingerprint(writes ? args.slice(1) : args) !== before) fault ??= 'changed its arguments'
  if ('polluted' in {}) {
    Reflect.deleteProperty(Object.prototype, 'polluted')
    fault ??= 'polluted every object'
  }
  return fault
}

test.each(spoiltHere.map((exported) => [`${exported.entry} ${exported.name}`, exported] as const))(
  '%s refuses what is hostile, and takes what is valid, frozen or not',
  (_, exported) => {
    const calls = validCalls[exported.name]
    expect(calls, 'give it a valid call in tests/fixtures/valid-calls.ts').toBeDefined()
    const faults: string[] = []
    for (const call of calls ?? []) {
      expect(notFiniteIn(exported.call(...call()))).toBeUndefined()
      expect(() => exported.call(...frozenCopy(call()))).not.toThrow()
      for (const { what, args, mustBeRefused } of spoiltFormsOf(call())) {
        const fault = faultOf(exported, args, mustBeRefused)
        if (fault !== undefined) faults.push(`${what}: ${fault}`)
      }
    }
    const exceptions = documentedExceptions[exported.name] ?? []
    expect(faults.filter((fault) => !exceptions.some(({ at }) => at.test(fault)))).toEqual([])
    const idle = exceptions.filter(({ at }) => !faults.some((fault) => at.test(fault)))
    expect(idle, 'documented exceptions that cover nothing').toEqual([])
  },
)
