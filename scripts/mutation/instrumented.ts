// Stryker's own instrumenter and mutators, without its test runners: every fault of a file stands in it, behind a switch.

import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import type { Mutant } from './mutant.ts'
import { sentences } from './sentences.ts'

/** What is used of an injector of Stryker. */
interface Injector {
  readonly provideValue: (token: string, value: unknown) => Injector
}

interface ApiMutant {
  readonly id: string
  readonly fileName: string
  readonly mutatorName: string
  readonly replacement: string
  readonly status?: string
  readonly location: Readonly<Record<'start' | 'end', { readonly line: number; readonly column: number }>>
}

interface Instrumenter {
  readonly instrument: (
    files: readonly { readonly name: string; readonly content: string; readonly mutate: true }[],
    options: object,
  ) => Promise<{
    readonly files: readonly { readonly name: string; readonly content: string }[]
    readonly mutants: readonly ApiMutant[]
  }>
}

/** Files with all their faults in them, and the list of those. */
export interface Instrumented {
  readonly contents: ReadonlyMap<string, string>
  readonly mutants: readonly Mutant[]
}

// They come with Stryker and are no dependencies of this project.
const fromStryker = createRequire(createRequire(import.meta.url).resolve('@stryker-mutator/core'))
const load = async <Module>(name: string): Promise<Module> =>
  (await import(pathToFileURL(fromStryker.resolve(name)).href)) as Module

/**
 * Puts every fault of Stryker into files.
 *
 * @param paths - of the files, from the root of the project
 * @returns the new texts of the files, and the faults
 */
export async function instrumented(paths: readonly string[]): Promise<Instrumented> {
  const { createInstrumenter } = await load<{ createInstrumenter: (injector: Injector) => Instrumenter }>(
    '@stryker-mutator/instrumenter',
  )
  const { createInjector } = await load<{ createInjector: () => Injector }>('typed-inject')
  const { commonTokens } = await load<{ commonTokens: Readonly<Record<'logger' | 'injector', string>> }>(
    '@stryker-mutator/api/plugin',
  )
  const silent = new Proxy({}, { get: () => () => false })
  const injector = createInjector().provideValue(commonTokens.logger, silent)
  const instrumenter = createInstrumenter(injector.provideValue(commonTokens.injector, injector))
  const files = paths.map((name) => ({ name, content: readFileSync(name, 'utf8'), mutate: true as const }))
  const { files: changed, mutants } = await instrumenter.instrument(files, {
    plugins: null,
    excludedMutations: [],
    ignorers: [sentences],
    noHeader: false,
  })
  const place = ({ line, column }: { line: number; column: number }) => ({ line: line + 1, column: column + 1 })
  return {
    contents: new Map(changed.map(({ name, content }) => [name, content])),
    mutants: mutants.map(({ id, fileName, mutatorName, replacement, status, location }) => ({
      id,
      file: fileName,
      mutatorName,
      replacement,
      status: status === 'Ignored' ? 'Ignored' : 'Pending',
      location: { start: place(location.start), end: place(location.end) },
    })),
  }
}
