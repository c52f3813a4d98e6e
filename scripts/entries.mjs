// The one list of public entry points is `exports` in package.json; all tools take theirs from here.
import { existsSync, readFileSync } from 'node:fs'

const root = new URL('..', import.meta.url)

/**
 * Public entry points, `{ 'gas-law': 'src/gas-law/index.ts', 'units/exact': 'src/units/exact.ts', index: 'src/index.ts' }`.
 * Throws when one has no source file.
 *
 * @returns {Record<string, string>} name of the built file to its source
 */
export function entries() {
  const { exports } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8'))
  const found = {}
  for (const subpath of Object.keys(exports)) {
    if (subpath === './package.json') continue
    const name = subpath === '.' ? 'index' : subpath.slice(2)
    const candidates = name === 'index' ? ['src/index.ts'] : [`src/${name}/index.ts`, `src/${name}.ts`]
    const source = candidates.find((path) => existsSync(new URL(path, root)))
    if (source === undefined)
      throw new Error(`package.json exports ${subpath}, but there is no ${candidates.join(' or ')}`)
    found[name] = source
  }
  return found
}
