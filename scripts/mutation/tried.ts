// Runs in a process of its own: all tests once, to learn which of them reach which fault, then every fault against the tests that reach it.
// It reports each step to the process that started it, which ends it where a fault makes a loop that never ends.
import { type CollectedTest, collected } from './collected-tests.ts'

/** The switch that Stryker's instrumenter writes into the files. */
interface Switch {
  activeMutant?: string | undefined
  currentTestId?: string | undefined
  hitCount?: number | undefined
  hitLimit?: number | undefined
  mutantCoverage?: {
    readonly static: Readonly<Record<string, number>>
    readonly perTest: Readonly<Record<string, Readonly<Record<string, number>>>>
  }
}

/** What is told to the process that started this one. */
export type Step =
  | { readonly step: 'ready'; readonly tests: number; readonly failing: readonly string[]; readonly seconds: number }
  | { readonly step: 'trying'; readonly id: string; readonly longest: number }
  | { readonly step: 'tried'; readonly id: string; readonly status: 'Killed' | 'Survived' | 'NoCoverage' | 'Ignored' }
  | { readonly step: 'done' }

const say = (step: Step): void => void process.send?.(step)

/** A fault that is met this many times as often as the code without it is in a loop that does not end. */
const hitFactor = 100

export async function tryAll(ids: readonly string[], ns: Switch): Promise<void> {
  const failing: string[] = []
  const unfit = new Set<number>()
  const times: number[] = []
  for (const [index, each] of collected.entries()) {
    ns.currentTestId = String(index)
    const began = performance.now()
    const failure = await failureOf(each)
    times.push(performance.now() - began)
    if (failure !== undefined) {
      failing.push(`${each.name}: ${failure}`)
      unfit.add(index)
    }
  }
  ns.currentTestId = undefined
  say({ step: 'ready', tests: collected.length, failing, seconds: times.reduce((sum, time) => sum + time, 0) / 1000 })
  const coverage = ns.mutantCoverage ?? { static: {}, perTest: {} }
  const hits = new Map<string, number>()
  const reaching = new Map<string, number[]>()
  for (const [index, counts] of Object.entries(coverage.perTest)) {
    if (unfit.has(Number(index))) continue
    for (const [id, count] of Object.entries(counts)) {
      hits.set(id, Math.max(hits.get(id) ?? 0, count))
      reaching.set(id, [...(reaching.get(id) ?? []), Number(index)])
    }
  }
  for (const id of ids) {
    const isStatic = coverage.static[id] !== undefined
    // What ran at loading cannot be run again in this process; where tests reach it too, those decide.
    const tests = reaching.get(id)
    if (tests === undefined) {
      say({ step: 'tried', id, status: isStatic ? 'Ignored' : 'NoCoverage' })
      continue
    }
    // The quick ones first: most faults are noticed by many.
    const order = tests.toSorted((a, b) => (times[a] ?? 0) - (times[b] ?? 0))
    say({ step: 'trying', id, longest: order.reduce((sum, index) => sum + (times[index] ?? 0), 0) })
    const limit = hitFactor * ((hits.get(id) ?? 0) + 10)
    const isNoticed = await anyFails(order, id, limit, ns)
    say({ step: 'tried', id, status: isNoticed ? 'Killed' : 'Survived' })
  }
  say({ step: 'done' })
}

async function anyFails(tests: readonly number[], id: string, limit: number, ns: Switch): Promise<boolean> {
  ns.activeMutant = id
  ns.hitLimit = limit
  try {
    for (const index of tests) {
      ns.hitCount = 0
      if ((await failureOf(collected[index] as CollectedTest)) !== undefined) return true
    }
    return false
  } finally {
    ns.activeMutant = undefined
  }
}

async function failureOf({ run }: CollectedTest): Promise<string | undefined> {
  try {
    await run()
    return undefined
  } catch (thrown) {
    return String(thrown instanceof Error ? thrown.message : thrown).slice(0, 300)
  }
}
