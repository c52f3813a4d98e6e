// The filter inside engines that are installed here; the others are not run, and the page on them says so.
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, expect, test, vi } from 'vitest'

vi.setConfig({ testTimeout: 120_000, hookTimeout: 60_000 })

const isThere = (command: string, ...args: readonly string[]): boolean => {
  const found = spawnSync(command, args).status === 0
  if (!found) console.warn(`${[command, ...args].join(' ')} fails: the example is not run`)
  return found
}
const hasParallel = isThere('parallel', '--version')
// the system's own, where another stands before it on the path
const python = ['python3', '/usr/bin/python3'].find((each) => isThere(each, '-c', 'import dask, distributed, pandas'))
const folder = mkdtempSync(join(tmpdir(), 'litrebar-engines-'))
const program = resolve('.cache', 'command', `engines-${process.pid}.mjs`)
afterAll(() => {
  rmSync(folder, { recursive: true })
  rmSync(program, { force: true })
})
const path = (name: string): string => join(folder, name)
const env = { ...process.env, LITREBAR: `${process.execPath} ${program}` }

beforeAll(async () => {
  await build({
    stdin: {
      contents: `import { rowsCommand } from './src/command/rows.ts'
        process.exitCode = await rowsCommand(process.argv.slice(3), {
          out: (text) => process.stdout.write(text), say: () => undefined, bold: (text) => text,
        })`,
      resolveDir: resolve('.'),
      loader: 'ts',
    },
    outfile: program,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'error',
  })
  writeFileSync(
    path('plan.json'),
    JSON.stringify({
      compute: ['density'],
      inputs: { pressure: { column: 'p', unit: 'bar' }, temperature: { column: 'T', unit: '°C' } },
      mixture: { value: 'air' },
    }),
  )
})

test.skipIf(!hasParallel)('GNU parallel gives the bytes of one process, bad rows in their places', () => {
  const rows = Array.from({ length: 60_000 }, (_, row) =>
    row % 1009 === 5 ? '{"p":null,"T":20}' : JSON.stringify({ id: row, p: 1 + (row % 230), T: 5 + (row % 30) }),
  )
  writeFileSync(path('in.ndjson'), `${rows.join('\n')}\n`)
  const words = [path('in.ndjson'), path('parallel.ndjson'), path('plan.json'), '2', '500k']
  execFileSync('examples/engines/parallel/run.sh', words, { env })
  const alone = spawnSync(process.execPath, [
    program,
    'rows',
    path('in.ndjson'),
    path('alone.ndjson'),
    '--plan',
    path('plan.json'),
  ])
  expect(alone.status).toBe(3)
  const made = readFileSync(path('parallel.ndjson'), 'utf8')
  expect(made.split('\n')).toHaveLength(rows.length + 1)
  expect(made).toContain('"code":"missing"')
  expect(made === readFileSync(path('alone.ndjson'), 'utf8')).toBe(true)
})

test.skipIf(python === undefined)('Dask gives the numbers of one process, also where a worker is killed', () => {
  for (const more of [[], ['--kill']]) {
    const words = ['examples/engines/dask/run.py', path('plan.json'), '120000', '6', ...more]
    const printed = execFileSync(python ?? '', words, { env, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] })
    expect(printed).toContain('120000 rows in 6 partitions; the same as from one process')
  }
})
