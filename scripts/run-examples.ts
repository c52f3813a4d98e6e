// Packs the package, installs the tarball in an empty folder and runs examples/*.mjs there, as a user would;
// each must print what its .expected.txt says.
// Usage: npm run examples (after npm run build), npm run examples -- --write to renew the expected texts
import { execFileSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { filesIn } from './files-in.ts'

const isWriting = process.argv.includes('--write')
const examples = filesIn('examples', '.mjs').filter((path) => dirname(path) === 'examples')

function expectedOf(path: string): string {
  return path.replace(/\.mjs$/, '.expected.txt')
}

function run(command: string, args: readonly string[], cwd: string): string {
  return execFileSync(command, args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] })
}

/** Installs without a registry: the tarball is unpacked, what it depends on is linked from this checkout. */
function installPacked(consumer: string): void {
  const [packed] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', consumer], '.')) as {
    filename: string
  }[]
  if (packed === undefined) throw new Error('npm pack wrote nothing')
  const installed = join(consumer, 'node_modules', 'litrebar')
  mkdirSync(installed, { recursive: true })
  run('tar', ['-xzf', join(consumer, packed.filename), '-C', installed, '--strip-components=1'], '.')
  const { dependencies } = JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>
  }
  for (const name of Object.keys(dependencies)) {
    symlinkSync(resolve('node_modules', name), join(consumer, 'node_modules', name), 'dir')
  }
  writeFileSync(join(consumer, 'package.json'), '{ "private": true, "type": "module" }\n')
}

const consumer = mkdtempSync(join(tmpdir(), 'litrebar-consumer-'))
const faults: string[] = []
try {
  installPacked(consumer)
  if (existsSync('examples')) cpSync('examples', join(consumer, 'examples'), { recursive: true })
  for (const path of examples) {
    const printed = run(process.execPath, [path], consumer)
    if (isWriting) writeFileSync(expectedOf(path), printed)
    else if (!existsSync(expectedOf(path))) faults.push(`${path} has no ${expectedOf(path)}`)
    else if (printed !== readFileSync(expectedOf(path), 'utf8')) faults.push(difference(path, printed))
  }
  for (const kind of ['import', 'require']) faults.push(...entryPointFaults(kind))
} finally {
  rmSync(consumer, { recursive: true, force: true })
}

function difference(path: string, printed: string): string {
  const expected = readFileSync(expectedOf(path), 'utf8').split('\n')
  const lines = printed.split('\n')
  const at = lines.findIndex((line, index) => line !== expected[index])
  const line = at < 0 ? lines.length : at
  return `${path} differs from ${expectedOf(path)} in line ${line + 1}:\n  expected ${expected[line] ?? 'the end'}\n  printed  ${lines[line] ?? 'the end'}`
}

/** Loads every entry point of the installed package, and says which do not load or give nothing. */
function entryPointFaults(kind: string): string[] {
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> }
  const names = Object.keys(exports).filter((subpath) => subpath !== './package.json')
  const code =
    kind === 'import'
      ? names.map(
          (name) => `n(${JSON.stringify(name)}, await import(${JSON.stringify(name.replace('.', 'litrebar'))}))`,
        )
      : names.map((name) => `n(${JSON.stringify(name)}, require(${JSON.stringify(name.replace('.', 'litrebar'))}))`)
  const file = join(consumer, kind === 'import' ? 'load.mjs' : 'load.cjs')
  const note = 'const n = (name, module) => { if (Object.keys(module).length === 0) console.log(name) }'
  writeFileSync(file, [note, ...code].join('\n'))
  const empty = run(process.execPath, [file], consumer).trim()
  return empty === '' ? [] : [`by ${kind}, these entry points give nothing: ${empty.split('\n').join(', ')}`]
}

for (const fault of faults) console.error(fault)
console.log(`Packed package: ${examples.length} examples run, ${faults.length} faults.`)
if (faults.length > 0) process.exitCode = 1
