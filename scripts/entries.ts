// The one list of public entry points is `exports` in package.json; every tool takes its own from here.
import { existsSync, readFileSync } from 'node:fs'

/** Name of an entry point to its source, `{ 'gas-law': 'src/gas-law/index.ts', index: 'src/index.ts', … }`. */
export type Entries = Record<string, string>

/**
 * The public entry points. Paths are relative to the working directory, which is the top of the package.
 *
 * @throws Error when package.json exports something that has no source
 */
export function entries(): Entries {
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> }
  const found: Entries = {}
  for (const subpath of Object.keys(exports)) {
    if (subpath === './package.json') continue
    const name = subpath === '.' ? 'index' : subpath.slice(2)
    const candidates = name === 'index' ? ['src/index.ts'] : [`src/${name}/index.ts`, `src/${name}.ts`]
    const source = candidates.find((path) => existsSync(path))
    if (source === undefined) {
      throw new Error(`package.json exports ${subpath}, but there is no ${candidates.join(' and no ')}`)
    }
    found[name] = source
  }
  return found
}

/** Where a source is built to: `src/units/exact.ts` to `dist/units/exact.d.ts`. */
export function builtFile(source: string, suffix: '.js' | '.cjs' | '.d.ts' | '.d.cts'): string {
  return source.replace(/^src\//, 'dist/').replace(/\.ts$/, suffix)
}
