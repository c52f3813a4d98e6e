// Builds dist/ in three forms from one source:
//   modules/   every module by itself, for bundlers: they drop unused modules whole, and keep what they cannot prove idle of joined ones
//   *.js, *.cjs  one file a room, and one for the lowest, for Node and plain browsers: a few files load in a fifth of the time of some hundred
//   *.d.ts, *.d.cts  one file of types a room
import { execFileSync } from 'node:child_process'
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { build, transform } from 'esbuild'
import { rollup } from 'rollup'
import { dts } from 'rollup-plugin-dts'
import { liveScriptDefinitions } from './live-script.mjs'

const work = '.cache/build'
const { dependencies = {}, peerDependencies = {}, exports } = JSON.parse(readFileSync('package.json', 'utf8'))
const packages = [...Object.keys(dependencies), ...Object.keys(peerDependencies)]
const isExternal = (id) => id.startsWith('node:') || packages.some((name) => id === name || id.startsWith(`${name}/`))
const names = Object.keys(exports)
  .filter((subpath) => subpath !== './package.json')
  .map((subpath) => (subpath === '.' ? 'index' : subpath.slice(2)))
const pathsOf = (folder, suffix) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith(suffix))
    .map((path) => path.replaceAll('\\', '/'))
const isRoom = new Set(pathsOf('src', '/index.ts').map((path) => dirname(path)))
/** An entry point is a room's index or a module of its own. */
const moduleOf = (name) => (name === 'index' ? 'index' : isRoom.has(name) ? `${name}/index` : name)
const fileOf = (name) => (isRoom.has(name) ? `${name}/index` : name)

async function buildModules() {
  // what runs in live pages is joined into one text, which litrebar/live gives
  const sources = pathsOf('src', '.ts')
    .filter((path) => !path.startsWith('live/page/'))
    .map((path) => `src/${path}`)
  await build({
    entryPoints: sources,
    outdir: 'dist/modules',
    outbase: 'src',
    bundle: false,
    define: await liveScriptDefinitions(),
    format: 'esm',
    target: 'es2022',
    logLevel: 'error',
  })
  for (const path of pathsOf('dist/modules', '.js')) {
    const file = join('dist/modules', path)
    writeFileSync(
      file,
      readFileSync(file, 'utf8').replace(/((?:from |import |import\()"\.{1,2}\/[^"]*)\.ts"/g, '$1.js"'),
    )
  }
}

/** Small rooms on which nearly all others rest: files of their own would cost a program more at its start than their contents do. */
const lowest = new Set(['errors', 'units', 'references', 'uncertainty', 'environment'])

/** One chunk for each room, so that what two entries share is loaded once and the class of the errors exists once. */
function chunkOf(root) {
  return (id) => {
    const [room] = relative(root, id).split('/')
    if (id.includes('/units/exact.')) return 'units-exact'
    if (lowest.has(room)) return 'lowest'
    return room.includes('.') ? undefined : room
  }
}

function onwarn(warning) {
  throw new Error(`${warning.code}: ${warning.message}`)
}

/** Without blanks and comments the joined rooms load faster; names stay, for stack traces. The modules stay as written. */
const compact = {
  name: 'compact',
  async renderChunk(code) {
    const { code: compacted } = await transform(code, { minifyWhitespace: true, minifySyntax: true, target: 'es2022' })
    // patterns are left as written; one sign beyond Latin 1 doubles what an engine keeps of the whole file
    const escaped = (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`
    return { code: compacted.replaceAll(/[^\0-\x7f]/g, escaped), map: null }
  },
}

async function joinRooms() {
  const input = Object.fromEntries(names.map((name) => [fileOf(name), `dist/modules/${moduleOf(name)}.js`]))
  const bundle = await rollup({ input, external: isExternal, onwarn, treeshake: { moduleSideEffects: false } })
  for (const [format, suffix] of [
    ['es', 'js'],
    ['cjs', 'cjs'],
  ]) {
    await bundle.write({
      dir: 'dist',
      format,
      exports: 'named',
      manualChunks: chunkOf('dist/modules'),
      entryFileNames: `[name].${suffix}`,
      chunkFileNames: `rooms/[name].${suffix}`,
      hoistTransitiveImports: false,
      minifyInternalExports: false,
      plugins: [compact],
    })
  }
  await bundle.close()
}

async function joinTypes() {
  execFileSync(
    process.execPath,
    ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.build.json', '--outDir', `${work}/types`],
    { stdio: 'inherit' },
  )
  // a specifier of the source is taken to the declaration beside it
  for (const path of pathsOf(`${work}/types`, '.d.ts')) {
    const file = join(work, 'types', path)
    writeFileSync(
      file,
      readFileSync(file, 'utf8').replace(/((?:from |import\()(['"])\.{1,2}\/[^'"]*)\.ts\2/g, '$1.d.ts$2'),
    )
  }
  const input = Object.fromEntries(names.map((name) => [fileOf(name), `${work}/types/${moduleOf(name)}.d.ts`]))
  const bundle = await rollup({ input, external: isExternal, onwarn, plugins: [dts()] })
  for (const suffix of ['ts', 'cts']) {
    await bundle.write({
      dir: 'dist',
      format: 'es',
      manualChunks: chunkOf(`${work}/types`),
      onlyExplicitManualChunks: true,
      entryFileNames: `[name].d.${suffix}`,
      chunkFileNames: `rooms/[name].d.${suffix}`,
      minifyInternalExports: false,
    })
  }
  await bundle.close()
}

rmSync('dist', { recursive: true, force: true })
rmSync(work, { recursive: true, force: true })
mkdirSync(work, { recursive: true })
await buildModules()
await joinRooms()
if (!process.argv.includes('--no-types')) await joinTypes()
