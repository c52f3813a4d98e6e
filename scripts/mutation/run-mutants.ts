import { fork } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { relative, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build, type Plugin } from 'esbuild'
import { entries } from '../entries.ts'
import { filesIn } from '../files-in.ts'
import { type Instrumented, instrumented } from './instrumented.ts'
import type { Mutant } from './mutant.ts'
import type { Step } from './tried.ts'

/** An import by a path that is worked out when it runs. */
const computedImport = /\bimport\((?!['"])/g

const registry = 'modules-by-path'

/** Beyond what its tests take without a fault, a fault may take this long before its process is ended. */
const patience = { factor: 20, milliseconds: 10_000 }

/**
 * Tries every fault of files against tests: files and tests become one program, so that a fault costs no more than the tests that
 * reach it. A fault that stops the program from going on counts as noticed, `Timeout`.
 *
 * @param files - to put faults into, from the root of the project
 * @param tests - files of tests
 * @returns the faults with what the tests made of them
 */
export async function runMutants(files: readonly string[], tests: readonly string[]): Promise<readonly Mutant[]> {
  const { contents, mutants } = await instrumented(files)
  const folder = `.cache/mutation/${String(process.pid)}`
  mkdirSync(folder, { recursive: true })
  const program = resolve(folder, 'program.mjs')
  try {
    await joined({ contents, tests, program })
    const left = new Map(mutants.filter(({ status }) => status === 'Pending').map((mutant) => [mutant.id, mutant]))
    const total = left.size
    while (left.size > 0) await tryLeft(program, left, total)
    return mutants
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The entries of the package and the rows of verdicts, by the paths that tests work out for them. */
function modulesByPath(): string {
  const modules = [
    ...Object.values(entries()).map((source) => ({ source, path: `../../${source}` })),
    ...filesIn('tests/package/verdict-rows', '.ts').map((source) => ({ source, path: resolve(source) })),
  ]
  return [
    ...modules.map(({ source }, index) => `import * as module${String(index)} from './${source}'`),
    `const all = { ${modules.map(({ path }, index) => `'${path}': module${String(index)}`).join(', ')} }`,
    'globalThis.moduleAt = (path) => all[path]',
  ].join('\n')
}

/** Tests, what they test, and the trial as one program. */
async function joined(parts: {
  readonly contents: Instrumented['contents']
  readonly tests: readonly string[]
  readonly program: string
}): Promise<void> {
  const changed: Plugin = {
    name: 'faults',
    setup(joining) {
      joining.onResolve({ filter: /^vitest$/ }, () => ({ path: resolve('scripts/mutation/collected-tests.ts') }))
      joining.onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => {
        const contents = parts.contents.get(relative(process.cwd(), path))
        return contents === undefined ? undefined : { contents, loader: 'ts' as const }
      })
      joining.onResolve({ filter: new RegExp(registry) }, () => ({ path: registry, namespace: registry }))
      joining.onLoad({ filter: /./, namespace: registry }, () => ({
        contents: modulesByPath(),
        resolveDir: process.cwd(),
      }))
      // What tests import by a path that they work out is part of the program already.
      joining.onLoad({ filter: /\/tests\/.*\.ts$/ }, ({ path }) => ({
        contents: readFileSync(path, 'utf8')
          .replaceAll(computedImport, 'globalThis.moduleAt(')
          .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)),
        loader: 'ts',
      }))
    },
  }
  const imports = ['tests/property-seed.ts', ...parts.tests].map((file) => `import './${file}'`)
  await build({
    stdin: {
      contents: [
        `import '${registry}'`,
        ...imports,
        `import { tryAll } from './scripts/mutation/tried.ts'`,
        `const ids = JSON.parse(process.argv[2])`,
        `await tryAll(ids, globalThis.__stryker__ ??= {})`,
        `process.disconnect()`,
      ].join('\n'),
      resolveDir: process.cwd(),
      loader: 'ts',
    },
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    outfile: parts.program,
    plugins: [changed],
    logLevel: 'error',
    logLimit: 5,
    ignoreAnnotations: true, // tests are imported for what they do
    define: { LIVE_PAGE_TEXT: '""', LIVE_PAGE_HASH: '""' }, // no set reads the script of live pages
  })
}

/** One process, until it is done with what is left or stands still. */
async function tryLeft(program: string, left: Map<string, Mutant>, total: number): Promise<void> {
  const ids = JSON.stringify([...left.keys()])
  const child = fork(program, [ids], { env: { ...process.env, CI: 'true' } }) // the same drawn inputs at every fault
  const before = left.size
  let trying: string | undefined
  let watch: NodeJS.Timeout | undefined
  child.on('message', (step: Step) => {
    clearTimeout(watch)
    if (step.step === 'ready') {
      if (before === total) {
        console.log(`${step.tests} tests, ${step.seconds.toFixed(1)} s; ${before} faults`)
        for (const name of step.failing) console.log(`  fails in this program without any fault, left out: ${name}`)
      }
    } else if (step.step === 'trying') {
      trying = step.id
      watch = setTimeout(() => child.kill('SIGKILL'), patience.factor * step.longest + patience.milliseconds)
    } else if (step.step === 'tried') {
      trying = undefined
      settle(left, step.id, step.status)
    }
  })
  await new Promise((ended) => child.once('exit', ended))
  clearTimeout(watch)
  if (trying !== undefined) settle(left, trying, 'Timeout')
  else if (left.size === before) throw new Error('the program ended without a word')
}

function settle(left: Map<string, Mutant>, id: string, status: Mutant['status']): void {
  const mutant = left.get(id)
  if (mutant !== undefined) mutant.status = status
  left.delete(id)
}
