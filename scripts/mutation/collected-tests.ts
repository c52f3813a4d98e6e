// Stands in for `vitest` where tests are run thousands of times in one process: the same `expect`, and `test` and its kin as a list.
// What of vitest the sets do not use is not here, so that a test which needs it fails when it is loaded.
import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import type { ExpectStatic } from 'vitest'

/** One test, ready to run. */
export interface CollectedTest {
  readonly name: string
  readonly run: () => unknown
}

type Body = (...args: never[]) => unknown
type Cases = readonly unknown[]

const root = createRequire(import.meta.url)
const fromVitest = createRequire(root.resolve('vitest'))
const load = async (name: string, from = fromVitest): Promise<Record<string, unknown>> =>
  (await import(pathToFileURL(from.resolve(name)).href)) as Record<string, unknown>

const matchers = await load('@vitest/expect')
const chai = (await load('chai', createRequire(fromVitest.resolve('@vitest/expect')))) as unknown as {
  readonly use: (plugin: unknown) => void
  readonly expect: ((value: unknown, message?: string) => unknown) & Record<string, unknown>
}
for (const plugin of ['JestExtend', 'JestChaiExpect', 'JestAsymmetricMatchers']) chai.use(matchers[plugin])
const ours = (value: unknown, message?: string): unknown => chai.expect(value, message)
Object.assign(ours, chai.expect, { hasAssertions: () => undefined }) // whether a test asserts is asked elsewhere
for (const each of [chai.expect, ours])
  (matchers['setState'] as (state: object, expect: unknown) => void)(
    { assertionCalls: 0, isExpectingAssertions: false, environment: 'node', testPath: '', currentTestName: '' },
    each,
  )
;(globalThis as unknown as Record<PropertyKey, unknown>)[matchers['GLOBAL_EXPECT'] as symbol] = ours
export const expect = ours as unknown as ExpectStatic

/** Every test of the files that were loaded, in their order. */
export const collected: CollectedTest[] = []
let prefix = ''

function add(name: string, body: Body, args: Cases = []): void {
  collected.push({ name: prefix + name, run: () => (body as (...args: Cases) => unknown)(...args) })
}

/** Whether a test takes the rest of its arguments from a row, or the row itself. */
const argumentsOf = (row: unknown): Cases => (Array.isArray(row) ? row : [row])
const bodyAmong = (parts: Cases): Body => parts.find((part) => typeof part === 'function') as Body

interface Test {
  (name: string, ...parts: Cases): void
  each: (rows: Cases) => (name: string, ...parts: Cases) => void
  skip: () => void
  todo: () => void
  skipIf: (isSkipped: boolean) => Test
  runIf: (isRun: boolean) => Test
}

function testThat(isRun: boolean): Test {
  const one = (name: string, ...parts: Cases): void => {
    if (isRun) add(name, bodyAmong(parts))
  }
  return Object.assign(one, {
    each:
      (rows: Cases) =>
      (name: string, ...parts: Cases): void => {
        if (!isRun) return
        for (const [index, row] of rows.entries()) add(`${name} ${String(index)}`, bodyAmong(parts), argumentsOf(row))
      },
    skip: () => undefined,
    todo: () => undefined,
    skipIf: (isSkipped: boolean) => testThat(isRun && !isSkipped),
    runIf: (runs: boolean) => testThat(isRun && runs),
  })
}

export const test = testThat(true)

export function describe(name: string, body: () => void): void {
  const outer = prefix
  prefix = `${outer}${name} > `
  body()
  prefix = outer
}
describe.each =
  (rows: Cases) =>
  (name: string, body: Body): void => {
    for (const [index, row] of rows.entries())
      describe(`${name} ${String(index)}`, () => (body as (...args: Cases) => void)(...argumentsOf(row)))
  }

/** Types are the compiler's business; here their checks do nothing. */
export const expectTypeOf = (): unknown => {
  const nothing: unknown = new Proxy(() => undefined, { get: () => nothing, apply: () => nothing })
  return nothing
}

export const vi = { setConfig: (): void => undefined }
