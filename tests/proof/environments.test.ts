import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { probe } from '../../scripts/environments/probe.ts'

// Bundlers, browsers, other engines and compilers: `npm run script -- environments`, on the packed package.
let folder = ''
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'litrebar-probe-'))
  await build({
    stdin: {
      contents: `import { probe } from './scripts/environments/probe.ts'; console.log(JSON.stringify(probe()))`,
      resolveDir: process.cwd(),
      loader: 'ts',
    },
    bundle: true,
    format: 'esm',
    platform: 'node',
    outfile: join(folder, 'probe.mjs'),
  })
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

test.each([
  ['America/St_Johns', 'de_DE.UTF-8'],
  ['Asia/Kathmandu', 'ar_EG.UTF-8'],
  ['Pacific/Apia', 'tr_TR.UTF-8'],
])('time zone %s and language %s change no number and no text', (zone, language) => {
  const env = { ...process.env, TZ: zone, LANG: language, LC_ALL: language }
  const printed = execFileSync(process.execPath, [join(folder, 'probe.mjs')], { encoding: 'utf8', env })
  expect(JSON.parse(printed)).toEqual(JSON.parse(JSON.stringify(probe())))
})
