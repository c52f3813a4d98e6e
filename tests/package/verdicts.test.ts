import { readdirSync } from 'node:fs'
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import type { VerdictRow } from './verdict-rows/row.ts'

// Every exported function whose result holds a verdict, found by its type, so that a new one cannot be forgotten.

const folder = new URL('./verdict-rows/', import.meta.url)
const files = readdirSync(folder).filter((file) => file !== 'row.ts')
const rooms = await Promise.all(
  files.map(async (file) => (await import(new URL(file, folder).pathname)) as { rows: Record<string, VerdictRow> }),
)
const rows: Readonly<Record<string, VerdictRow>> = Object.assign({}, ...rooms.map((room) => room.rows))

/** Whether a value of this type holds a verdict, in itself or in what it holds. */
function holdsVerdict(checker: ts.TypeChecker, type: ts.Type, depth: number): boolean {
  if (depth < 0) return false
  const inner = (each: ts.Type): boolean => holdsVerdict(checker, each, depth - 1)
  if (type.isUnionOrIntersection()) return type.types.some((each) => holdsVerdict(checker, each, depth))
  if (checker.isArrayType(type) || checker.isTupleType(type)) {
    return checker.getTypeArguments(type as ts.TypeReference).some(inner)
  }
  const isPlain = (type.flags & ts.TypeFlags.Object) !== 0 && type.getCallSignatures().length === 0
  if (!isPlain) return false
  const properties = type.getProperties()
  return (
    properties.some(({ name }) => name === 'verdict') || properties.some((each) => inner(checker.getTypeOfSymbol(each)))
  )
}

function functionsWithVerdict(): readonly string[] {
  const config = ts.readConfigFile('tsconfig.json', (path) => ts.sys.readFile(path)).config as object
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, process.cwd())
  const program = ts.createProgram(['src/index.ts'], { ...options, noEmit: true })
  const checker = program.getTypeChecker()
  const root = program.getSourceFile('src/index.ts') as ts.SourceFile
  return checker
    .getExportsOfModule(checker.getSymbolAtLocation(root) as ts.Symbol)
    .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
    .filter((symbol) =>
      checker
        .getTypeOfSymbol(symbol)
        .getCallSignatures()
        .some((signature) => holdsVerdict(checker, signature.getReturnType(), 3)),
    )
    .map(({ name }) => name)
    .filter((name) => name !== 'verdictFrom') // the rule itself
    .sort()
}

test('every exported function with a verdict in its result has a row here, and every row its function', () => {
  const found = functionsWithVerdict()
  expect(found).toContain('assessFill')
  expect(Object.keys(rows).sort()).toEqual(found)
}, 60_000)

for (const [name, row] of Object.entries(rows)) {
  if (row === 'pending') {
    test.todo(`${name}: a case within, and every doubt that must turn it`)
    continue
  }
  describe(name, () => {
    test(row.isNeverWithin === true ? 'has no case that is within' : 'has a case that is within', () => {
      expect(row.base()).toBe(row.isNeverWithin === true ? 'undetermined' : 'within')
    })
    for (const [doubt, call] of Object.entries(row.turnedBy)) {
      test(`is not within: ${doubt}`, () => {
        expect(['beyond', 'undetermined']).toContain(call())
      })
    }
    test('is turned by something', () => {
      expect(Object.keys(row.turnedBy).length).toBeGreaterThan(0)
    })
  })
}
