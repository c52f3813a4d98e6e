// Compiles and runs the code in README.md, DEVELOPERS.md, docs/ and the doc comments of src, against the built package.
// Usage: npm run doc-tests (after npm run build)
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { build } from 'esbuild'
import ts from 'typescript'
import { type Block, exampleBlocks, markdownBlocks } from './doc-tests/blocks.ts'
import { checkingModule, type PublicName } from './doc-tests/module.ts'
import { builtFile, entries } from './entries.ts'
import { filesIn } from './files-in.ts'

// Inside the package, so that its own name resolves to what is built, as it does for a consumer.
const folder = '.cache/doc-tests'

function documentedBlocks(): Block[] {
  const pages = filesIn('docs', '.md').filter((path) => !path.startsWith('docs/reference/'))
  return [
    ...['README.md', 'DEVELOPERS.md', ...pages].flatMap((path) => markdownBlocks(path, readFileSync(path, 'utf8'))),
    ...filesIn('src', '.ts').flatMap((path) => exampleBlocks(path, readFileSync(path, 'utf8'))),
  ].filter((block) => block.mark !== 'fragment')
}

/** Public names by entry point, as the built declarations give them. */
function publicNames(): Map<string, Map<string, PublicName>> {
  const files = Object.entries(entries()).map(([name, source]) => ({ name, path: builtFile(source, '.d.ts') }))
  const program = ts.createProgram(
    files.map(({ path }) => path),
    compilerOptions,
  )
  const checker = program.getTypeChecker()
  return new Map(
    files.map(({ name, path }) => {
      const file = program.getSourceFile(path)
      const module = file === undefined ? undefined : checker.getSymbolAtLocation(file)
      if (module === undefined) throw new Error(`${path} is missing: run npm run build first`)
      const from = name === 'index' ? 'litrebar' : `litrebar/${name}`
      const names = checker.getExportsOfModule(module).map((symbol): [string, PublicName] => {
        const { flags } = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol
        return [symbol.name, { from, isType: (flags & ts.SymbolFlags.Value) === 0 }]
      })
      return [name, new Map(names)]
    }),
  )
}

const { options: compilerOptions } = ts.parseJsonConfigFileContent(
  {
    extends: './tsconfig.test.json',
    compilerOptions: { noUnusedLocals: false, noUnusedParameters: false },
    files: [],
  },
  ts.sys,
  process.cwd(),
)

const blocks = documentedBlocks()
const names = publicNames()
rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })

const problems: string[] = []
const written = blocks.flatMap((block, index) => {
  const room = /^src\/([^/]+)\//.exec(block.file)?.[1] ?? 'index'
  // Later ones win: the root before the room of the file before any other.
  const visible = new Map(
    [...[...names.values()].reverse(), names.get(room), names.get('index')].flatMap((each) => [...(each ?? [])]),
  )
  const path = `${folder}/${String(index).padStart(4, '0')}.ts`
  try {
    const module = checkingModule(block, visible, '../../scripts/doc-tests/check.ts')
    writeFileSync(path, module.text)
    return [{ path, block, offset: module.offset }]
  } catch (error) {
    problems.push((error as Error).message)
    return []
  }
})

const program = ts.createProgram(
  written.map(({ path }) => path),
  compilerOptions,
)
for (const { path, block, offset } of written) {
  const file = program.getSourceFile(path)
  const found = [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)]
  for (const { start = 0, messageText } of found) {
    const line = (file?.getLineAndCharacterOfPosition(start).line ?? 0) + 1
    const place = `${block.file}:${Math.max(line + offset, block.line)}`
    problems.push(`${place} ${ts.flattenDiagnosticMessageText(messageText, '\n  ')}`)
  }
}
for (const problem of problems) console.error(problem)
if (problems.length > 0) {
  console.error(`Documentation: ${blocks.length} blocks, ${problems.length} of their lines do not compile.`)
  process.exit(1)
}

const all = `${folder}/all.ts`
const imports = written.map(({ path }) => `await import('./${path.slice(folder.length + 1)}')`)
writeFileSync(all, [`import { finish } from '../../scripts/doc-tests/check.ts'`, ...imports, 'finish()'].join('\n'))
const outfile = `${folder}/all.mjs`
await build({
  entryPoints: [all],
  outfile,
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node20',
  logLevel: 'error',
})
process.exitCode = spawnSync(process.execPath, [outfile], { stdio: 'inherit' }).status ?? 1
