// Packs the package, installs the tarball in an empty folder and runs examples/*.mjs there, as a user would;
// each must print what its .expected.txt says.
// Usage: npm run examples (after npm run build), npm run examples -- --write to renew the expected texts
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { filesIn } from './files-in.ts'
import { installPacked, run } from './installed-package.ts'

const isWriting = process.argv.includes('--write')
const examples = filesIn('examples', '.mjs').filter((path) => dirname(path) === 'examples')

function expectedOf(path: string): string {
  return path.replace(/\.mjs$/, '.expected.txt')
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
