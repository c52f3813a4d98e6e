import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import layers from '../../layers.json' with { type: 'json' }
import { builtFile, entries } from '../../scripts/entries.ts'

const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> }
const rooms = readdirSync('src').filter((name) => existsSync(`src/${name}/index.ts`))

test('every room on disk has its own entry point, and every entry point its source', () => {
  const expected = ['index', 'units/exact', ...rooms].sort()
  expect(Object.keys(entries()).sort()).toEqual(expected)
})

test('every entry point gives types first, modules to bundlers, joined rooms to everybody else, ESM and CJS', () => {
  for (const [subpath, conditions] of Object.entries(manifest.exports)) {
    if (subpath === './package.json') continue
    const source = entries()[subpath === '.' ? 'index' : subpath.slice(2)] ?? ''
    const built = (suffix: '.js' | '.cjs' | '.d.ts' | '.d.cts'): string => `./${builtFile(source, suffix)}`
    expect(JSON.stringify(conditions), subpath).toBe(
      JSON.stringify({
        import: {
          types: built('.d.ts'),
          module: built('.js').replace('dist/', 'dist/modules/'),
          default: built('.js'),
        },
        require: { types: built('.d.cts'), default: built('.cjs') },
      }),
    )
  }
})

test('no entry point is a pattern', () => {
  expect(Object.keys(manifest.exports).filter((subpath) => subpath.includes('*'))).toEqual([])
})

test('the root gives what the core rooms give, no more and no less', async () => {
  const core = layers.core.flat().filter((room) => rooms.includes(room))
  const given = await Promise.all(
    core.map(async (room) => Object.keys((await import(`../../src/${room}/index.ts`)) as object)),
  )
  const root = Object.keys(await import('../../src/index.ts'))
  expect(root.sort()).toEqual(given.flat().sort())
})
