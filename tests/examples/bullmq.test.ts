import { execFileSync, spawnSync } from 'node:child_process'
import { rmSync } from 'node:fs'
import { resolve } from 'node:path'
import { build } from 'esbuild'
import { afterAll, expect, test } from 'vitest'

const hasRedis = spawnSync('redis-server', ['--version']).status === 0
if (!hasRedis) console.warn('redis-server is missing: the rows on a queue are not run')
const folder = resolve('.cache', `queue-${process.pid}`)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

test.skipIf(!hasRedis)(
  'rows on a queue: a worker is killed, and the bytes are those of one process',
  { timeout: 120_000 },
  async () => {
    await build({
      entryPoints: ['examples/engines/bullmq/run.mjs', 'examples/engines/bullmq/work.mjs'],
      outdir: folder,
      outExtension: { '.js': '.mjs' },
      alias: { 'litrebar/batch': resolve('src/batch/index.ts') },
      bundle: true,
      packages: 'external',
      platform: 'node',
      format: 'esm',
      target: 'node20',
      logLevel: 'error',
    })
    const printed = execFileSync(process.execPath, [resolve(folder, 'run.mjs'), '20000', '8'], { encoding: 'utf8' })
    expect(printed).toContain('160000 rows in 8 parts; one of two workers killed')
    expect(printed).toContain('parts taken over: yes; same bytes as one process')
  },
)
