// Writes docs/evidence.md: what is known to be right, function by function, and how.
// Usage: npm run script -- evidence            compares the page with what the code and the stored counts say
//        npm run script -- evidence --write    writes it
//        npm run script -- evidence --count    runs the published tests, counts what they hold against print, stores and writes
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, normalize, relative } from 'node:path'
import ts from 'typescript'
import { startVitest } from 'vitest/node'
import { allCards } from '../src/course/index.ts'
import { type SourceId, sources } from '../src/references/sources.ts'
import { misprints } from '../tests/fixtures/misprints.ts'
import { filesIn } from './files-in.ts'

const page = 'docs/evidence.md'
const store = 'docs/measured/published.json'
const options = process.argv.slice(2)

/** Numbers held against published figures, by test file. */
type Counts = Readonly<Record<string, number>>

if (options.includes('--count')) writeFileSync(store, `${JSON.stringify(await counted(), undefined, 1)}\n`)
const counts = JSON.parse(existsSync(store) ? readFileSync(store, 'utf8') : '{}') as Counts
const text = written()
if (options.includes('--write') || options.includes('--count')) {
  writeFileSync(page, text)
  console.log(`${page} written`)
} else if (!existsSync(page) || readFileSync(page, 'utf8') !== text) {
  console.error(`${page} differs from what the code says; run: npm run script -- evidence --write`)
  process.exitCode = 1
} else console.log(`${page} is as the code says`)

/** Tests whose expected numbers stand in print: everything under published, and the files of the rooms that read such fixtures. */
function publishedTests(): string[] {
  const elsewhere = filesIn('tests', '.test.ts').filter((file) => /standards-facts|rules-answered/.test(file))
  return [...filesIn('tests/published', '.test.ts'), ...elsewhere]
}

async function counted(): Promise<Counts> {
  const files = publishedTests()
  const run = await startVitest('test', files, {
    watch: false,
    reporters: [{}],
    setupFiles: ['tests/property-seed.ts', 'scripts/evidence/counted.ts'],
  })
  const found: Record<string, number> = {}
  for (const module of run.state.getTestModules()) {
    const file = relative(process.cwd(), module.moduleId).replaceAll('\\', '/')
    for (const test of module.children.allTests()) {
      if (test.result().state !== 'passed') throw new Error(`${test.fullName} did not pass`)
      found[file] = (found[file] ?? 0) + ((test.meta() as { compared?: number }).compared ?? 0)
    }
  }
  await run.close()
  return Object.fromEntries(Object.entries(found).sort(([a], [b]) => (a < b ? -1 : 1)))
}

/** The text of a test with that of the helpers and fixtures that it reads. */
function withItsFixtures(file: string, seen = new Set<string>()): string {
  if (seen.has(file) || !existsSync(file) || !statSync(file).isFile()) return ''
  seen.add(file)
  const text = readFileSync(file, 'utf8')
  const read = [...text.matchAll(/(?:from|URL\() ?'(\.[^']+)'/g)].map(([, path = '']) =>
    normalize(join(dirname(file), path)),
  )
  return [text, ...read.filter((path) => path.startsWith('tests/')).map((path) => withItsFixtures(path, seen))].join(
    '\n',
  )
}

interface Export {
  readonly name: string
  readonly room: string
  readonly sources: readonly string[]
  readonly returnsNumbers: boolean
}

function exportsOfCore(): Export[] {
  const config = ts.readConfigFile('tsconfig.json', (path) => ts.sys.readFile(path)).config as object
  const { options: compilerOptions } = ts.parseJsonConfigFileContent(config, ts.sys, process.cwd())
  const program = ts.createProgram(['src/index.ts'], { ...compilerOptions, noEmit: true })
  const checker = program.getTypeChecker()
  const root = program.getSourceFile('src/index.ts')
  const module = root === undefined ? undefined : checker.getSymbolAtLocation(root)
  if (module === undefined) throw new Error('src/index.ts exports nothing')
  return checker
    .getExportsOfModule(module)
    .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
    .flatMap((symbol): Export[] => {
      const declaration = symbol.declarations?.find(ts.isFunctionDeclaration)
      if (declaration === undefined) return []
      const signatures = checker.getTypeOfSymbol(symbol).getCallSignatures()
      const tags = symbol.getJsDocTags(checker).filter(({ name }) => name === 'source')
      return [
        {
          name: symbol.name,
          room: /src\/([^/]+)\//.exec(declaration.getSourceFile().fileName)?.[1] ?? '',
          sources: tags.map(({ text = [] }) =>
            text
              .map((part) => part.text)
              .join('')
              .replaceAll(/\s+/g, ' ')
              .trim(),
          ),
          returnsNumbers: signatures.some((signature) => holdsNumber(checker, signature.getReturnType(), 2)),
        },
      ]
    })
    .sort((a, b) => (a.room === b.room ? (a.name < b.name ? -1 : 1) : a.room < b.room ? -1 : 1))
}

function holdsNumber(checker: ts.TypeChecker, type: ts.Type, depth: number): boolean {
  if (depth < 0) return false
  if (checker.isTypeAssignableTo(type, checker.getNumberType()) && !(type.flags & ts.TypeFlags.Never)) return true
  if (type.isUnion()) return type.types.some((each) => holdsNumber(checker, each, depth))
  if (!(type.flags & ts.TypeFlags.Object) || type.getCallSignatures().length > 0) return false
  return type.getProperties().some((property) => holdsNumber(checker, checker.getTypeOfSymbol(property), depth - 1))
}

function written(): string {
  const tests = filesIn('tests', '.test.ts')
  const published = publishedTests()
  const textOf = new Map(tests.map((file) => [file, withItsFixtures(file)]))
  const verdicts = filesIn('tests/package/verdict-rows', '.ts')
    .map((file) => readFileSync(file, 'utf8'))
    .join('\n')
  const errors = (JSON.parse(readFileSync('docs/measured/claims.json', 'utf8')) as { errors?: Record<string, number> })
    .errors
  const cards = grouped()
  const all = exportsOfCore()
  const names = (file: string, name: string): boolean => new RegExp(`\\b${name}\\b`).test(textOf.get(file) ?? '')

  const rows = all
    .filter(({ returnsNumbers }) => returnsNumbers)
    .map((each) => {
      const inPrint = published.filter((file) => names(file, each.name))
      const others = tests.filter(
        (file) => !published.includes(file) && !file.startsWith('tests/package/') && names(file, each.name),
      )
      const largest = Object.entries(errors ?? {})
        .filter(([form]) => form.startsWith(`${each.name}:`) && form.endsWith(': largest'))
        .map(([, ulp]) => ulp)
      return { ...each, inPrint, others, ulp: largest.length === 0 ? undefined : Math.max(...largest) }
    })
  const without = rows.filter(({ inPrint }) => inPrint.length === 0)
  const reasonOf = ({ name, others, ulp }: (typeof rows)[number]): string => {
    if (name.endsWith('Into')) return 'a column form, held against its scalar form row by row'
    if (new RegExp(`^  ${name}: `, 'm').test(verdicts)) return 'a verdict, held against a decision table'
    if (ulp !== undefined) return 'a formula, held against 40 digits'
    return others.length > 0 ? 'properties, identities and other routes alone' : 'nothing but the hostile test'
  }
  const byReason = new Map<string, string[]>()
  for (const row of without) byReason.set(reasonOf(row), [...(byReason.get(reasonOf(row)) ?? []), row.name])

  const values = Object.values(counts).reduce((sum, count) => sum + count, 0)
  const documents = documentsOf(published.map((file) => textOf.get(file) ?? '').join('\n'))
  const inAnyTest = documentsOf(tests.map((file) => textOf.get(file) ?? '').join('\n'))
  const short = (file: string): string =>
    file.replace('tests/published/', '').replace('tests/', '').replace('.test.ts', '')
  const cited = citations()

  return [
    '<!-- Written by `npm run script -- evidence --write`; do not edit. -->',
    '# Evidence',
    '',
    `${values} numbers are held against published figures and check values, from ${documents.length} documents; ${inAnyTest.length} documents are named in a test of any kind.`,
    `Of ${rows.length} public functions of the core that give numbers, ${rows.length - without.length} are held against at least one; the others are listed below with what they rest on`,
    'instead. A number counts once for each comparison that a published test makes, a document if its id stands in such a test or its fixtures.',
    'The tolerance stands beside each check.',
    '',
    '- [Errors of the closed forms](measured/errors.md) in the last place',
    '- [What the tests would notice](measured/mutation.md)',
    '- [Slips in records](measured/slips.md)',
    '- Identities: `tests/proof/identities.ts`, 60 000 checks over mixtures and states',
    '',
    '## Function by function',
    '',
    'Sources as the function names them; the card that prints its formula; published tests that call it; the number of other test files that do; the',
    'largest error of its formula in units of the last place.',
    ...[...new Set(rows.map(({ room }) => room))].flatMap((room) => [
      '',
      `### ${room}`,
      '',
      '| Function | Card | Sources | In print | Other tests | ulp |',
      '| :--- | :--- | :--- | :--- | ---: | ---: |',
      ...rows
        .filter((row) => row.room === room)
        .map(
          ({ name, sources: given, inPrint, others, ulp }) =>
            `| \`${name}\` | ${(cards.get(name) ?? []).join(', ')} | ${given.join('; ').replaceAll('|', '\\|')} | ${inPrint.map(short).join(', ')} | ${others.length} | ${ulp ?? ''} |`,
        ),
    ]),
    '',
    '## Not held against published figures',
    '',
    ...[...byReason]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([reason, list]) => `- ${reason} (${list.length}): ${list.map((name) => `\`${name}\``).join(', ')}`),
    '',
    '## Numbers held against published figures, by test',
    '',
    '| Test | Numbers |',
    '| :--- | ---: |',
    ...Object.entries(counts).map(([file, count]) => `| ${short(file)} | ${count} |`),
    '',
    '## Memory and common practice',
    '',
    'Figures behind which no document stands. They are marked so where they stand, and no verdict rests on memory alone.',
    '',
    '| File | memory | common practice |',
    '| :--- | ---: | ---: |',
    ...cited.open.map(({ file, memory, practice }) => `| \`${file}\` | ${memory || ''} | ${practice || ''} |`),
    '',
    '## Sources and editions',
    '',
    '| Id | Title | Edition | Kind | Cited in files |',
    '| :--- | :--- | :--- | :--- | ---: |',
    ...Object.entries(sources).map(
      ([id, { title, edition, kind }]) =>
        `| ${id} | ${cell(title)} | ${cell(edition)} | ${kind} | ${cited.files.get(id) ?? 0} |`,
    ),
    '',
    '## Misprints of the literature',
    '',
    'Printed answers that do not follow from what is given. The library must come to what follows, and must not come to the print.',
    '',
    '| Source | Place | Printed | What follows | Because |',
    '| :--- | :--- | ---: | ---: | :--- |',
    ...Object.values(misprints).map(
      ({ source, place, printed, unit, worked, because }) =>
        `| ${source} | ${cell(place)} | ${printed} ${unit} | ${Number(worked.toPrecision(6))} | ${cell(because)} |`,
    ),
    '',
  ].join('\n')
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|').replaceAll(/\s+/g, ' ')
}

/** Ids of cards by the function that they document. */
function grouped(): ReadonlyMap<string, string[]> {
  const cards = new Map<string, string[]>()
  for (const { id, documents } of allCards()) cards.set(documents, [...(cards.get(documents) ?? []), id])
  return cards
}

/** Ids of the registry that stand in a text; no document stands behind a derivation, memory or common practice. */
function documentsOf(text: string): string[] {
  const isDocument = (id: SourceId): boolean =>
    !['derivation', 'memory', 'common-practice'].includes((sources[id] as { kind: string }).kind)
  return (Object.keys(sources) as SourceId[]).filter((id) => isDocument(id) && text.includes(id))
}

function citations(): {
  readonly files: ReadonlyMap<string, number>
  readonly open: readonly { readonly file: string; readonly memory: number; readonly practice: number }[]
} {
  const files = new Map<string, number>()
  const open: { file: string; memory: number; practice: number }[] = []
  for (const file of filesIn('src', '.ts')) {
    if (file === 'src/references/sources.ts') continue
    const text = readFileSync(file, 'utf8')
    for (const id of Object.keys(sources))
      if (new RegExp(`['\\s]${id}['\\s,;.)]`).test(text)) files.set(id, (files.get(id) ?? 0) + 1)
    const count = (pattern: RegExp): number => [...text.matchAll(pattern)].length
    const memory = count(/(?:source: |@source )'?memory\b/g)
    const practice = count(/(?:source: |@source )'?common-practice\b/g)
    if (memory + practice > 0) open.push({ file, memory, practice })
  }
  return { files, open }
}
