import { type ChildProcess, spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { once } from 'node:events'
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { build } from 'esbuild'
import type { RowPlan } from '../../src/batch/index.ts'

/** A program that runs rows in a process of its own, so that it can be killed. */
export interface RowProgram {
  readonly path: string
  readonly remove: () => void
}

/** Bundles the program inside the package, so that packages resolve. */
export async function rowProgram(): Promise<RowProgram> {
  const path = resolve('.cache', 'killed', `rows-${process.pid}.mjs`)
  const contents = `import { runRows } from './src/batch/index.ts'
    const [input, output, plan] = process.argv.slice(2)
    await runRows({ input, output, plan, resume: true, onProgress: ({ rows }) => console.log(rows) })`
  await build({
    stdin: { contents, resolveDir: resolve('.'), loader: 'ts' },
    outfile: path,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'error',
  })
  return { path, remove: () => rmSync(path, { force: true }) }
}

/** What a row program is given. */
export interface KilledRun {
  readonly program: RowProgram
  readonly input: string
  readonly output: string
  readonly plan: string
}

/** A file of rows, and the plan beside it. */
export function writeRows(
  folder: string,
  rows: number,
  plan: RowPlan,
): { readonly input: string; readonly plan: string } {
  const lines = Array.from({ length: rows }, (_, row) => {
    const pressure = row % 997 === 0 ? 'none' : (1 + 230 * ((row * 0.618034) % 1)).toFixed(3)
    return `r${row},${pressure},${(5 + 30 * ((row * 0.414214) % 1)).toFixed(2)}`
  })
  const input = join(folder, 'rows.csv')
  writeFileSync(input, `id,p,T\n${lines.join('\n')}\n`)
  const planned = join(folder, 'plan.json')
  writeFileSync(planned, JSON.stringify(plan))
  return { input, plan: planned }
}

function start({ program, input, output, plan }: KilledRun): ChildProcess {
  return spawn(process.execPath, [program.path, input, output, plan], { stdio: ['ignore', 'pipe', 'inherit'] })
}

/**
 * Runs rows and kills the process without warning so many times, each time some milliseconds after a block of its own has been
 * reported; then lets it end.
 *
 * @returns how many of the kills met a running process
 */
export async function runKilled(run: KilledRun, kills: number, random: () => number): Promise<number> {
  let met = 0
  for (let kill = 0; kill < kills; kill++) {
    const child = start(run)
    const ended = once(child, 'exit')
    const wait = Math.floor(random() * 25)
    child.stdout?.once('data', () => setTimeout(() => child.kill('SIGKILL'), wait))
    const [, signal] = (await ended) as [number | null, string | null]
    if (signal === 'SIGKILL') met++
    else break // it was done first
  }
  const [code] = (await once(start(run), 'exit')) as [number | null]
  if (code !== 0 && met === kills) throw new Error(`the last run ended with ${code}`)
  return met
}

export function hashOf(path: string): string {
  return createHash('sha256').update(readFileSync(path)).digest('hex')
}
