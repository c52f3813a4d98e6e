import { type ChildProcessWithoutNullStreams, spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { liveScriptDefinitions } from '../../scripts/live-script.mjs'

const folder = mkdtempSync(join(tmpdir(), 'litrebar-terminal-'))
const program = resolve('.cache', 'command', 'terminal', `litrebar-${process.pid}.mjs`)

beforeAll(async () => {
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
}, 60_000)
afterAll(() => {
  rmSync(folder, { recursive: true })
  rmSync(program, { force: true })
})

const chapter = (title: string): string => `# ${title}\n\nWhat it is about.\n\n## A section\n\nText.\n`

/** Waits until something holds; false when it did not within the time. */
async function until(holds: () => boolean, seconds = 20): Promise<boolean> {
  for (const end = performance.now() + seconds * 1000; performance.now() < end; ) {
    if (holds()) return true
    await new Promise((done) => setTimeout(done, 50))
  }
  return holds()
}

interface Watching {
  readonly child: ChildProcessWithoutNullStreams
  readonly said: () => string
}

async function watching(...args: string[]): Promise<Watching> {
  const child = spawn(process.execPath, [program, 'chapter', ...args, '--watch'])
  let said = ''
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk.toString()
  })
  await until(() => said.includes('Watching.'))
  return { child, said: () => said }
}

async function stopped({ child }: Watching): Promise<number> {
  child.kill('SIGINT')
  const [code] = (await once(child, 'close')) as [number]
  return code
}

test('a chapter is made again when an editor puts a new file in its place, and after a mistake', {
  timeout: 90_000,
}, async () => {
  const file = join(folder, 'lake.md')
  const page = join(folder, 'lake.html')
  const save = (text: string): void => {
    writeFileSync(`${file}.new`, text)
    renameSync(`${file}.new`, file) // as most editors save
  }
  save(chapter('First'))
  const run = await watching(file)
  expect(readFileSync(page, 'utf8')).toContain('First')
  save(chapter('Second'))
  expect(await until(() => readFileSync(page, 'utf8').includes('Second'))).toBe(true)
  save('# Broken\n')
  expect(await until(() => run.said().includes('nothing was written'))).toBe(true)
  save(chapter('Third'))
  expect(await until(() => readFileSync(page, 'utf8').includes('Third'))).toBe(true)
  expect(await stopped(run)).toBe(0)
})

test('a course is not made again by its own pages', { timeout: 60_000 }, async () => {
  const course = join(folder, 'course')
  mkdirSync(course)
  writeFileSync(join(course, '1.md'), chapter('One'))
  const run = await watching(course)
  writeFileSync(join(course, '1.md'), chapter('Two'))
  expect(await until(() => readFileSync(join(course, '1.html'), 'utf8').includes('Two'))).toBe(true)
  await new Promise((done) => setTimeout(done, 1500))
  expect(run.said().split('1 chapter made').length - 1).toBe(2)
  expect(await stopped(run)).toBe(0)
})

test('a course that ends with a mistake ends with 1', { timeout: 60_000 }, async () => {
  const file = join(folder, 'end.md')
  writeFileSync(file, chapter('Good'))
  const run = await watching(file)
  writeFileSync(file, '# Bad\n')
  expect(await until(() => run.said().includes('nothing was written'))).toBe(true)
  expect(await stopped(run)).toBe(1)
})

const bold = '\u001b[1m'

// `script` gives a program a terminal of its own
const hasScript = spawnSync('script', ['--version']).status === 0
if (!hasScript) console.warn('NOTICE: bold text on a terminal is NOT tested here, for want of script.')

test.runIf(hasScript)('bold text is for terminals that want it', { timeout: 60_000 }, () => {
  const onTerminal = (env: Readonly<Record<string, string>>): string =>
    spawnSync('script', ['-qec', `"${process.execPath}" "${program}" list units volume`, '/dev/null'], {
      env: { PATH: process.env['PATH'], TERM: 'xterm', ...env },
      encoding: 'utf8',
    }).stdout
  expect(onTerminal({})).toContain(bold)
  expect(onTerminal({ NO_COLOR: '' })).toContain(bold) // empty counts as not set
  expect(onTerminal({ NO_COLOR: '1' })).toContain('ft³')
  expect(onTerminal({ NO_COLOR: '1' })).not.toContain('\u001b')
  expect(onTerminal({ TERM: 'dumb' })).not.toContain('\u001b')
})

test('a pipe gets plain text, and may close before the end', { timeout: 60_000 }, () => {
  const whole = spawnSync(process.execPath, [program, 'list', 'formulas'], { encoding: 'utf8' })
  expect(whole.stdout.split('\n').length).toBeGreaterThan(100)
  expect(whole.stdout).not.toContain('\u001b')
  const shell = (line: string): ReturnType<typeof spawnSync> => spawnSync('bash', ['-c', `set -o pipefail; ${line}`])
  const head = shell(`"${process.execPath}" "${program}" list sources | head -1`)
  expect([head.status, String(head.stderr)]).toEqual([0, ''])
  const shut = shell(
    `"${process.execPath}" "${program}" list formulas >&-; "${process.execPath}" "${program}" chapter gone.md 2>&-`,
  )
  expect(String(shut.stderr)).not.toContain('at ') // no trace of a stack
})

test('nothing that is there is written over, and the files are left as they were', { timeout: 60_000 }, () => {
  const file = join(folder, 'kept.md')
  writeFileSync(file, chapter('Kept'))
  writeFileSync(join(folder, 'kept.html'), 'mine')
  const before = statSync(join(folder, 'kept.html')).mtimeMs
  const { status, stderr } = spawnSync(process.execPath, [program, 'chapter', file], { encoding: 'utf8' })
  expect([
    status,
    statSync(join(folder, 'kept.html')).mtimeMs,
    readFileSync(join(folder, 'kept.html'), 'utf8'),
  ]).toEqual([1, before, 'mine'])
  expect(stderr).toContain('--replace')
})
