// Runs and threads meet every hostile value in every option. They answer later, and write files, so they are not among the calls of
// the hostile test.
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'
import { columnWorkers, runRows } from '../../src/batch/index.ts'
import { isLitrebarError } from '../../src/errors/index.ts'
import { fingerprint, frozenCopy, notFiniteIn, ofTheCaller, spoiltFormsOf } from '../package/hostile.ts'

vi.setConfig({ testTimeout: 60_000 })

let folder: string

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'litrebar-spoilt-'))
  writeFileSync(join(folder, 'in.csv'), 'p,T,gas\n200,15,air\n,15,air\n')
})
afterAll(() => rmSync(folder, { recursive: true }))

const plan = {
  compute: ['freeGas', 'density'],
  reference: '15 °C, 1.01325 bar, dry',
  inputs: {
    pressure: { column: 'p', unit: 'bar' },
    temperature: { column: 'T', unit: '°C' },
    internalVolume: { value: '12 L' },
  },
  mixture: { column: 'gas' },
} as const

async function faultOf(
  call: () => Promise<unknown>,
  args: readonly unknown[],
  mustBeRefused: boolean,
): Promise<string | undefined> {
  const before = fingerprint(args)
  try {
    const result = await call()
    if (mustBeRefused) return 'was taken'
    return notFiniteIn(result) ?? (fingerprint(args) === before ? undefined : 'changed its arguments')
  } catch (thrown) {
    if (thrown === ofTheCaller) return undefined
    if (!isLitrebarError(thrown)) return `threw ${String(thrown)}`
    return /\bundefined\b|\[object /.test(thrown.message) ? `said "${thrown.message}"` : undefined
  }
}

test('a run refuses what is hostile, and takes what is valid, frozen or not', async () => {
  const options = (): Parameters<typeof runRows>[0] => ({
    input: join(folder, 'in.csv'),
    output: join(folder, 'out.csv'),
    plan,
    resume: false,
    overwrite: true,
    onProgress: () => undefined,
  })
  expect((await runRows(options())).rows).toBe(2)
  expect((await runRows(frozenCopy(options()))).rows).toBe(2)
  const faults: string[] = []
  for (const { what, args, mustBeRefused } of spoiltFormsOf([options()])) {
    const fault = await faultOf(async () => runRows(args[0] as Parameters<typeof runRows>[0]), args, mustBeRefused)
    if (fault !== undefined) faults.push(`${what}: ${fault}`)
  }
  expect(faults).toEqual([])
  expect(readdirSync(folder).sort()).toEqual(['in.csv', 'out.csv', 'out.csv.provenance.json'])
})

test.each([
  ['input', { input: 7 }],
  ['plan', { plan: 'no-such-plan.json' }],
  ['resume', { resume: 'yes' }],
  ['outputFormat', { outputFormat: 'cvs' }],
  ['onProgress', { onProgress: 'bar' }],
])('a wrong %s of a run is refused by its name', async (name, wrong) => {
  const options = { input: join(folder, 'in.csv'), output: join(folder, 'none.csv'), plan, ...wrong }
  await expect(runRows(options as never)).rejects.toMatchObject({ code: 'input', argument: `options.${name}` })
})

test('a plan that is no JSON is refused', async () => {
  const options = { input: join(folder, 'in.csv'), output: join(folder, 'none.csv'), plan: join(folder, 'in.csv') }
  await expect(runRows(options)).rejects.toMatchObject({ code: 'input', argument: 'options.plan' })
})

test('threads are not started for options that are none', async () => {
  const faults: string[] = []
  for (const { what, args, mustBeRefused } of spoiltFormsOf([{ threads: 1, chunk: 1000 }])) {
    // what is as good as left out starts threads
    if (/= undefined$|= empty object$|without /.test(what)) continue
    const fault = await faultOf(
      async () => columnWorkers(args[0] as Parameters<typeof columnWorkers>[0]),
      args,
      mustBeRefused,
    )
    faults.push(`${what}: ${fault ?? 'refused'}`)
  }
  expect(faults.filter((fault) => !fault.endsWith(': refused'))).toEqual([])
})
