// Every exported function meets every hostile value in every parameter: it refuses with our error, or gives a finite result.
import { expect, test } from 'vitest'
import { entries } from '../../scripts/entries.ts'
import { isLitrebarError } from '../../src/errors/index.ts'
import { validCalls } from '../fixtures/valid-calls.ts'
import { fingerprint, frozenCopy, notFiniteIn, ofTheCaller, spoiltFormsOf } from './hostile.ts'

type Callable = (...args: readonly unknown[]) => unknown

const slowestCall = 2000 // ms

interface Exported {
  readonly entry: string
  readonly name: string
  readonly call: Callable
}

async function exportedFunctions(): Promise<readonly Exported[]> {
  const found = new Map<string, Exported>()
  for (const [entry, source] of Object.entries(entries())) {
    if (entry === 'index') continue
    const names = (await import(/* @vite-ignore */ `../../${source}`)) as Record<string, unknown>
    for (const [name, value] of Object.entries(names)) {
      if (typeof value === 'function' && !found.has(name)) found.set(name, { entry, name, call: value as Callable })
    }
  }
  return [...found.values()]
}

const functions = await exportedFunctions()

/** What a call with hostile arguments did wrong, if anything. */
function faultOf({ name, call }: Exported, args: readonly unknown[], mustBeRefused: boolean): string | undefined {
  const before = name.endsWith('Into') ? '' : fingerprint(args)
  const started = performance.now()
  let fault: string | undefined
  try {
    const result = call(...args)
    if (mustBeRefused) fault = 'was taken'
    else fault = notFiniteIn(result)
  } catch (thrown) {
    if (thrown === ofTheCaller) fault = undefined
    else if (!isLitrebarError(thrown)) fault = `threw ${String(thrown).slice(0, 100)}`
    else if (/\bundefined\b|\[object /.test(thrown.message)) fault = `said "${thrown.message.slice(0, 100)}"`
  }
  if (performance.now() - started > slowestCall) fault ??= 'took too long'
  if (!name.endsWith('Into') && fingerprint(args) !== before) fault ??= 'changed its arguments'
  if ('polluted' in {}) {
    delete (Object.prototype as { polluted?: unknown }).polluted
    fault ??= 'polluted every object'
  }
  return fault
}
const report: string[] = []
test.each(
  functions
    .filter((f) => !process.env['ROOM'] || f.entry === process.env['ROOM'])
    .map((f) => [`${f.entry} ${f.name}`, f] as const),
)('%s', (_, exported) => {
  const calls = validCalls[exported.name]
  if (!calls) {
    report.push(`${exported.entry} ${exported.name}: no call`)
    return
  }
  const faults: string[] = []
  for (const call of calls) {
    const t = performance.now()
    try {
      const n = notFiniteIn(exported.call(...call()))
      if (n) faults.push(`valid: ${n}`)
    } catch (e) {
      faults.push(`valid: ${String(e)}`)
      continue
    }
    if (fingerprint(1) !== '1') throw new Error()
    try {
      exported.call(...frozenCopy(call()))
    } catch (e) {
      faults.push(`frozen: ${String(e)}`)
    }
    for (const { what, args, mustBeRefused } of spoiltFormsOf(call())) {
      if (performance.now() - t > 8000) {
        faults.push('BUDGET')
        break
      }
      const fault = faultOf(exported, args, mustBeRefused)
      if (fault !== undefined) faults.push(`${what}: ${fault}`)
    }
  }
  if (faults.length)
    report.push(`${exported.entry} ${exported.name}: ${faults.length} ${faults.slice(0, 6).join(' | ')}`)
})
test('report', async () => {
  const { writeFileSync } = await import('node:fs')
  writeFileSync('/tmp/x/report.txt', report.join('\n'))
  expect(1).toBe(1)
})
