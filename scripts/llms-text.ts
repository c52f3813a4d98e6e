// Writes docs/llms.txt: every public function of the core in one line, out of its doc comment, for readers that are programs.
// Usage: npm run script -- llms-text          compares
//        npm run script -- llms-text --write  writes it
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import ts from 'typescript'
import { entries } from './entries.ts'

const file = 'docs/llms.txt'
const program = ts.createProgram(Object.values(entries()), {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.NodeNext,
  strict: true,
  allowImportingTsExtensions: true,
  noEmit: true,
})
const checker = program.getTypeChecker()

function linesOf(source: string): string[] {
  const root = program.getSourceFile(source)
  const module = root === undefined ? undefined : checker.getSymbolAtLocation(root)
  if (module === undefined) throw new Error(`${source} exports nothing`)
  return checker
    .getExportsOfModule(module)
    .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
    .filter((symbol) => (symbol.flags & ts.SymbolFlags.Function) !== 0)
    .map((symbol) => {
      const said = ts.displayPartsToString(symbol.getDocumentationComment(checker)).replaceAll(/\s+/g, ' ').trim()
      // the first sentence; a point inside a number or an abbreviation ends none
      const [first = said] = said.split(/(?<=[a-zé)\]`’]\.) (?=[A-Z`])/)
      const parameters = checker
        .getTypeOfSymbol(symbol)
        .getCallSignatures()[0]
        ?.getParameters()
        .map(({ name }) => name)
      return `- ${symbol.name}(${(parameters ?? []).join(', ')}): ${first}`
    })
    .sort()
}

const text = [
  '# litrebar',
  '',
  '> Diving equipment and gas physics in TypeScript: typed inputs in SI, real gases, working shown, sources named. No decompression planning.',
  '',
  'Quantities are branded numbers in SI, made by constructors such as absolute(1, bar), gauge(232, bar), depthOf(30, metre), temperatureOf(15, celsius).',
  'Every function throws LitrebarError with a code, the argument, its value, what is expected and a hint. Results that can hurt someone carry caution ids.',
  'Import from "litrebar" (all core rooms) or from "litrebar/<room>".',
  ...Object.entries(entries())
    .filter(([name]) => name !== 'index')
    .flatMap(([name, source]) => ['', `## litrebar/${name}`, '', ...linesOf(source)]),
  '',
].join('\n')

if (process.argv.includes('--write')) {
  writeFileSync(file, text)
  console.log(`${file} written`)
} else if (!existsSync(file) || readFileSync(file, 'utf8') !== text) {
  console.error(`${file} differs from the doc comments; run: npm run script -- llms-text --write`)
  process.exitCode = 1
} else console.log(`${file} is as the doc comments say`)
