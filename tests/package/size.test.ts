// What an app pays for what it imports, minified and compressed. Measures src; with LITREBAR_SIZE_OF=dist, the build.
import { gzipSync } from 'node:zlib'
import { build, type Metafile } from 'esbuild'
import { expect, test } from 'vitest'
import layers from '../../layers.json' with { type: 'json' }
import { builtFile, entries } from '../../scripts/entries.ts'

const kB = 1000
const isBuilt = process.env['LITREBAR_SIZE_OF'] === 'dist'
const modules = Object.entries(entries()).map(([name, source]): [string, string] => [
  name === 'index' ? 'litrebar' : `litrebar/${name}`,
  `./${isBuilt ? builtFile(source, '.js').replace('dist/', 'dist/modules/') : source}`,
])

interface Bundle {
  readonly text: string
  readonly bytes: number
  readonly metafile: Metafile
}

async function bundle(code: string): Promise<Bundle> {
  const { outputFiles, metafile } = await build({
    stdin: { contents: code, resolveDir: process.cwd(), loader: 'ts' },
    // The longest first: an alias also stands for what is below it.
    alias: Object.fromEntries(modules.toSorted(([a], [b]) => b.length - a.length)),
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    write: false,
    metafile: true,
    logLevel: 'silent',
  })
  const [file] = outputFiles
  if (file === undefined) throw new Error('the bundler wrote nothing')
  return { text: file.text, bytes: gzipSync(file.contents, { level: 9 }).length, metafile }
}

/** The files that a bundle is made of, largest first, as a failure message shows them. */
function culprits({ metafile }: Bundle): string {
  const shares = Object.values(metafile.outputs).flatMap((output) => Object.entries(output.inputs))
  return shares
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .sort(([, a], [, b]) => b.bytesInOutput - a.bytesInOutput)
    .slice(0, 12)
    .map(([path, { bytesInOutput }]) => `  ${bytesInOutput} B before compression from ${path}`)
    .join('\n')
}

/** Who imports a file, so that a failure message can name the line to remove. */
function importers({ metafile }: Bundle, path: string): string {
  const found = Object.entries(metafile.inputs).filter(([, input]) => input.imports.some((each) => each.path === path))
  return found.map(([importer]) => importer).join(', ')
}

function expectWithin(name: string, made: Bundle, limit: number): void {
  expect(made.bytes, `${name} takes ${made.bytes} B, ${limit} B are allowed:\n${culprits(made)}`).toBeLessThan(limit)
}

interface Share {
  readonly code: string
  /** Text that only the wanted code has: an empty bundle is small, too. */
  readonly contains: readonly string[]
  readonly limit: number
}

const shares: Readonly<Record<string, Share>> = {
  'one conversion': {
    // A whole script; among the pressures, psi has the longest definition.
    code: `import { inUnit, psi } from 'litrebar'; show(inUnit(pressure, psi))`,
    contains: ['6894.757293168', 'offset'],
    limit: 200,
  },
  'a pressure at a depth': {
    // Keys, ranges and their words are most of it, and are paid once by an app.
    code: `export { pressureAtDepth } from 'litrebar'`,
    contains: ['pressureAtDepth', 'Did you mean', '9.80665'],
    limit: 1.7 * kB,
  },
  'the ideal gas laws': {
    code: `export { boyle, charles, combinedGasLaw, gayLussac, idealGasLaw } from 'litrebar'`,
    contains: ['boyle', 'charles', 'combinedGasLaw', 'gayLussac', 'idealGasLaw', 'all but one of', '8.314'],
    limit: 1.7 * kB,
  },
  'the work of one loop': {
    // Without the analysis of whole logs.
    code: `export { workOfBreathing } from 'litrebar'`,
    contains: ['workOfBreathing', 'crossing'],
    limit: 4.8 * kB,
  },
}

for (const [name, { code, contains, limit }] of Object.entries(shares)) {
  test(`${name}, imported alone, takes less than ${limit} B`, async () => {
    const made = await bundle(code)
    for (const text of contains) expect(made.text, `${name}: the wanted code is not in the bundle`).toContain(text)
    expectWithin(name, made, limit)
  })
}

// A room with all that it needs of the rooms below it.
const budgets: Readonly<Record<string, number>> = {
  errors: 1.7 * kB,
  units: 16.5 * kB, // with the tables that a record of numbers is held against
  references: 12 * kB,
  uncertainty: 12.4 * kB,
  environment: 10 * kB,
  'gas-law': 42 * kB,
  cylinder: 130 * kB,
  'regulator-performance': 95 * kB,
  consumption: 60 * kB,
  charging: 60 * kB,
  gauges: 40 * kB,
  buoyancy: 29 * kB,
}

const coreRooms = layers.core.flat().filter((room) => modules.some(([name]) => name === `litrebar/${room}`))

/** What no core bundle may hold, as the beginning of a path in the bundle. */
const forbidden = [
  'node_modules/',
  'src/course/',
  'src/schemas/',
  'src/batch/',
  'dist/modules/course',
  'dist/modules/schemas',
  'dist/modules/batch',
]
const registry = [
  'src/references/sources',
  'src/references/cautions',
  'dist/modules/references/sources',
  'dist/modules/references/cautions',
]

for (const room of coreRooms) {
  test(`everything of ${room} stays within its budget and holds no package`, async () => {
    const everything = await bundle(`export * from 'litrebar/${room}'`)
    const names = Object.keys((await import(/* @vite-ignore */ `../../src/${room}/index.ts`)) as object)
    for (const name of names)
      expect(everything.text, `${name} is not in the bundle`).toMatch(new RegExp(`\\b${name}\\b`))
    const limit = budgets[room]
    if (limit === undefined) throw new Error(`give ${room} a budget in this file`)
    expectWithin(room, everything, limit)
    const unwanted = room === 'references' ? forbidden : [...forbidden, ...registry]
    for (const path of Object.keys(everything.metafile.inputs)) {
      const isForbidden = unwanted.some((beginning) => path.startsWith(beginning))
      expect(isForbidden, `${path} is bundled with ${room}, imported by ${importers(everything, path)}`).toBe(false)
    }
  })
}

// Nobody ships it all; the figure shows how the whole grows.
test('all core rooms together, registry and real gas included, stay within 300 kB', async () => {
  const everything = await bundle(`export * from 'litrebar'`)
  expectWithin('the root entry', everything, 300 * kB)
})
