import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { tableFromArrays, tableFromIPC, tableToIPC } from 'apache-arrow'
import { build } from 'esbuild'
import { afterAll, expect, test } from 'vitest'
import { liveScriptDefinitions } from '../../scripts/live-script.mjs'
import { runCommand } from '../../src/command/run-command.ts'
import { dryAir, molarDensity, molarMass } from '../../src/gas-law/index.ts'
import { absolute, bar, celsius, temperatureOf } from '../../src/units/index.ts'

const folder = mkdtempSync(join(tmpdir(), 'litrebar-command-'))
const program = resolve('.cache', 'command', 'rows', `litrebar-${process.pid}.mjs`)
afterAll(() => {
  rmSync(folder, { recursive: true })
  rmSync(program, { force: true })
})
const path = (name: string): string => join(folder, name)

writeFileSync(
  path('plan.json'),
  JSON.stringify({
    compute: ['density'],
    inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: '°C' } },
    mixture: { value: 'air' },
  }),
)
writeFileSync(path('log.csv'), 'p,T\n200,20\n100,15\n')
writeFileSync(path('bad.csv'), 'p,T\n200,20\n,15\nx,15\n')

async function run(...args: string[]): Promise<{ code: number; out: string; said: string }> {
  let out = ''
  let said = ''
  const code = await runCommand(args, {
    version: '0',
    out: (text) => {
      out += text
    },
    say: (text) => {
      said += `${text}\n`
    },
    bold: (text) => text,
  })
  return { code, out, said }
}

const densityOf = (p: number, t: number): number =>
  molarDensity(dryAir, absolute(p, bar), temperatureOf(t, celsius)) * molarMass(dryAir)

test('a file comes out as a file; 3 tells that some rows have no result', async () => {
  const good = await run('rows', path('log.csv'), path('out.csv'), '--plan', path('plan.json'))
  expect(good).toMatchObject({ code: 0, out: '' })
  expect(good.said).toMatch(/^2 rows in \d+\.\d s\n$/)
  const [heading, first] = readFileSync(path('out.csv'), 'utf8').split('\n')
  expect(heading).toBe('p,T,density (kg/m³),code,error')
  expect(Number(first?.split(',')[2]) / densityOf(200, 20)).toBeCloseTo(1, 6)
  const bad = await run('rows', path('bad.csv'), path('bad-out.csv'), '--plan', path('plan.json'))
  expect(bad.code).toBe(3)
  expect(bad.said).toContain('3 rows')
  expect(bad.said).toContain('2 without a result: 1 missing, 1 input')
})

test.each([
  [['rows', 'a.csv'], 2, 'one input and one output'],
  [['rows', 'a.csv', 'b.csv'], 2, '--plan'],
  [['rows', 'a.csv', 'b.csv', '--plann', 'x'], 2, '--plann'],
  [['rows', '-', '-', '--plan', path('plan.json')], 1, 'path'],
  [['rows', path('log.csv'), path('no.csv'), '--plan', path('none.json')], 1, 'none.json'],
  [['rows', path('log.csv'), path('plan.json'), '--plan', path('plan.json'), '--write-as', 'csv'], 1, 'which is there'],
  [['rows', path('log.csv'), path('x.csv'), '--plan', path('plan.json'), '--write-as', 'cvs'], 1, 'csv'],
])('what cannot be done is said, with its own exit code: %#', async (args, code, words) => {
  const found = await run(...args)
  expect(found.code).toBe(code)
  expect(found.said).toContain(words)
  expect(existsSync('b.csv')).toBe(false)
})

test('the schema of a plan is printed', async () => {
  const { code, out } = await run('rows', '--schema')
  expect(code).toBe(0)
  const schema = JSON.parse(out) as { required: string[]; properties: Record<string, unknown> }
  expect(schema.required).toEqual(['compute', 'inputs'])
  expect(Object.keys(schema.properties)).toContain('figures')
})

test('Arrow goes in and out by a pipe, as job arrays and engines with a pipe run it', { timeout: 60_000 }, async () => {
  await build({
    entryPoints: ['src/command/litrebar.ts'],
    outfile: program,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'error',
    define: await liveScriptDefinitions(),
  })
  const rows = 10_000
  const p = Float64Array.from({ length: rows }, (_, row) => 1 + (row % 300))
  const T = Float64Array.from({ length: rows }, (_, row) => row % 35)
  const args = [program, 'rows', '-', '-', '--plan', path('plan.json'), '--read-as', 'arrow', '--write-as', 'arrow']
  const child = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'pipe'] })
  const chunks: Buffer[] = []
  let said = ''
  child.stdout.on('data', (chunk: Buffer) => chunks.push(chunk))
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk.toString()
  })
  child.stdin.end(tableToIPC(tableFromArrays({ p, T }), 'stream'))
  const [code] = (await once(child, 'close')) as [number]
  expect(said).toContain('10000 rows')
  expect(code).toBe(0)
  const table = tableFromIPC(Buffer.concat(chunks))
  expect(table.numRows).toBe(rows)
  const found: unknown = table.getChild('density (kg/m³)')?.get(299)
  expect(Number(found) / densityOf(300, 299 % 35)).toBeCloseTo(1, 6)
})
