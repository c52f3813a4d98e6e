import { rmSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'
import type { columnWorkers } from '../../src/batch/index.ts'

/** Threads run JavaScript files: the two modules as the package has them. */
export interface BuiltWorkers {
  readonly columnWorkers: typeof columnWorkers
  readonly remove: () => void
}

/** Builds the modules of the workers inside the package, so that packages resolve. */
export async function builtWorkers(): Promise<BuiltWorkers> {
  const folder = resolve('.cache', `workers-${process.pid}`)
  await build({
    entryPoints: ['src/batch/columns/column-workers.ts', 'src/batch/columns/column-worker.ts'],
    outdir: folder,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'error',
  })
  const module = (await import(pathToFileURL(resolve(folder, 'column-workers.js')).href)) as Omit<
    BuiltWorkers,
    'remove'
  >
  return { columnWorkers: module.columnWorkers, remove: () => rmSync(folder, { recursive: true, force: true }) }
}
