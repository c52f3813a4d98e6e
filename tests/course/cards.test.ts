import { readdirSync, readFileSync } from 'node:fs'
import { assert, double, property, record } from 'fast-check'
import ts from 'typescript'
import { expect, test } from 'vitest'
import type { Card } from '../../src/course/card.ts'
import { dimensionOf } from '../../src/course/dimension-of.ts'
import { evaluate } from '../../src/course/evaluate.ts'
import type { Expression } from '../../src/course/expression.ts'
import * as course from '../../src/course/index.ts'
import { dimensions } from '../../src/units/index.ts'

const cards = Object.entries(course).filter(([name]) => name.endsWith('Card')) as unknown as [string, Card][]
const forms = cards.flatMap(([, card]) =>
  Object.entries(card.forms as Record<string, Expression>).map(([find, expression]) => ({
    id: `${card.id}: ${find}`,
    card,
    find,
    expression,
  })),
)

function symbolsOf(expression: Expression): string[] {
  if (typeof expression === 'string') return [expression]
  if (typeof expression === 'number') return []
  return [...new Set(expression.slice(expression[0] === 'call' ? 2 : 1).flatMap(symbolsOf))]
}

const constantsOf = (card: Card): Record<string, number> => (card.constants ?? {}) as Record<string, number>

function callsOf(expression: Expression): string[] {
  if (typeof expression === 'string' || typeof expression === 'number') return []
  if (expression[0] === 'call') return [expression[1]]
  return expression.slice(1).flatMap(callsOf)
}

test('every card is found by its id, and ids are unique', () => {
  const ids = cards.map(([, card]) => card.id)
  expect(ids.length).toBeGreaterThanOrEqual(120)
  expect(new Set(ids).size).toBe(ids.length)
  expect([...course.allCards()].map((card) => card.id).sort()).toEqual([...ids].sort())
})

// First check: the formula that is printed and the function that computes are one.
test.each(forms)('$id: the formula gives what the core function gives', ({ card, find, expression }) => {
  const core = card.core[find]
  expect(core).toBeDefined()
  const names = symbolsOf(expression)
  const inputs = record(
    Object.fromEntries(
      names
        .filter((name) => card.constants?.[name] === undefined)
        .map((name) => {
          const [min, max] = card.range[name] ?? [Number.NaN, Number.NaN]
          return [name, double({ min, max, noNaN: true })]
        }),
    ),
  )
  assert(
    property(inputs, (values) => {
      const printed = evaluate(expression, { ...constantsOf(card), ...values }, card.calls)
      const knowns = Object.fromEntries(
        Object.entries(values).map(([name, value]) => [card.symbols[name]?.parameter ?? name, value]),
      )
      const result = core?.(knowns as never)
      const computed =
        typeof result === 'number' ? result : (result as Record<string, number>)[card.symbols[find]?.parameter ?? find]
      // the order of factors may differ: a few ulp, and what cancels in a difference
      const scale = Math.max(Math.abs(printed), ...termsOf(expression, { ...constantsOf(card), ...values }, card))
      expect(Math.abs(printed - (computed as number))).toBeLessThanOrEqual(2e-14 * scale)
    }),
    { numRuns: 60 },
  )
})

/** Sizes of the terms of the outermost sum, against which rounding is measured. */
function termsOf(expression: Expression, values: Record<string, number>, card: Card): number[] {
  if (!Array.isArray(expression)) return []
  const [operator, ...terms] = expression as [string, ...Expression[]]
  if (['+', '-'].includes(operator)) return terms.map((term) => Math.abs(evaluate(term, values, card.calls)))
  if (operator !== '/' && operator !== '*') return []
  // a quotient of a difference carries the size of the terms of the difference
  const [first, ...rest] = terms as [Expression, ...Expression[]]
  const others = rest.reduce<number>((product, term) => product * Math.abs(evaluate(term, values, card.calls)), 1)
  return termsOf(first, values, card).map((size) => (operator === '/' ? size / others : size * others))
}

// Second check: dimensions.
test.each(forms)('$id: both sides have the same dimension', ({ card, find, expression }) => {
  const dimension = card.symbols[find]?.dimension
  expect(dimension).toBeDefined()
  expect(dimensionOf(expression, card.symbols, card.callSymbols)).toEqual(
    dimensions[dimension as keyof typeof dimensions],
  )
})

test('a formula that adds a pressure to a length is refused', () => {
  const symbols = { p: { dimension: 'pressure' }, d: { dimension: 'length' } } as const
  expect(() => dimensionOf(['+', 'p', 'd'], symbols)).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => dimensionOf(['ln', 'p'], symbols)).toThrow(expect.objectContaining({ code: 'input' }))
})

// Third check: symbols are the parameters of the core function, and the other way round.
const program = ts.createProgram({
  rootNames: [new URL('../../src/index.ts', import.meta.url).pathname],
  options: {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    strict: true,
    allowImportingTsExtensions: true,
    noEmit: true,
    types: [],
  },
})
const checker = program.getTypeChecker()
const root = program.getSourceFile(new URL('../../src/index.ts', import.meta.url).pathname)
const exported = new Map(
  (root === undefined ? [] : checker.getExportsOfModule(checker.getSymbolAtLocation(root) as ts.Symbol)).map(
    (symbol) => [symbol.name, symbol],
  ),
)

function declarationOf(name: string): ts.FunctionDeclaration {
  const symbol = exported.get(name)
  if (symbol === undefined) throw new Error(`${name} is not exported`)
  const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol
  const declaration = target.declarations?.find(ts.isFunctionDeclaration)
  if (declaration === undefined) throw new Error(`${name} is not a function declaration`)
  return declaration
}

/** Fields of a record, or of the elements of a list, of all members of a union. A branded number has none. */
function fieldsOf(type: ts.Type): readonly ts.Symbol[] {
  if (type.isUnion()) return type.types.flatMap(fieldsOf)
  if (checker.isArrayType(type) || checker.isTupleType(type))
    return checker.getTypeArguments(type as ts.TypeReference).flatMap(fieldsOf)
  if (type.isIntersection() && type.types.some((part) => part.flags & ts.TypeFlags.NumberLike)) return []
  return type.flags & ts.TypeFlags.Object || type.isIntersection() ? checker.getPropertiesOfType(type) : []
}

/** Dotted paths of a parameter and all that it holds, three levels deep. */
function pathsOf(type: ts.Type, prefix: string, levels: number): string[] {
  if (levels === 0) return []
  return fieldsOf(type).flatMap((field) => {
    const path = prefix === '' ? field.name : `${prefix}.${field.name}`
    return [path, ...pathsOf(checker.getTypeOfSymbol(field), path, levels - 1)]
  })
}

const isNumber = (type: ts.Type): boolean =>
  type.isIntersection() && type.types.some((part) => (part.flags & ts.TypeFlags.NumberLike) !== 0)

interface Parameter {
  readonly name: string
  /** What the call names at its top: the fields of a record, or the parameter itself. */
  readonly top: readonly string[]
  /** All that it holds, with and without its own name before it. */
  readonly paths: readonly string[]
}

/** Parameters by name; of one that is a record or a list of records, its fields; both of one that may be a number instead. */
function parametersOf(declaration: ts.FunctionDeclaration): Parameter[] {
  return declaration.parameters.map((parameter) => {
    const name = parameter.name.getText()
    const type = checker.getTypeAtLocation(parameter)
    const fields = pathsOf(type, '', 3).filter((path) => !path.includes('__@')) // a brand is no field
    const alone = fields.length === 0 || (type.isUnion() && type.types.some(isNumber)) ? [name] : []
    const top = [...alone, ...fields.filter((path) => !path.includes('.'))]
    return { name, top, paths: [...alone, ...fields, ...fields.map((path) => `${name}.${path}`)] }
  })
}

test.each(cards)('%s: its symbols are the parameters of the core function, and the other way round', (_, card) => {
  const parameters = parametersOf(declarationOf(card.documents))
  const all = new Set(parameters.flatMap(({ paths }) => paths))
  const given = Object.entries(card.symbols)
    .filter(([name]) => card.constants?.[name] === undefined)
    .map(([name, symbol]) => ({ name, parameter: symbol.parameter ?? name }))
  expect(given.filter(({ name, parameter }) => name !== card.result && !all.has(parameter))).toEqual([])
  const besides = card.besides ?? []
  const explained = new Set([...given.map(({ parameter }) => parameter), ...besides])
  const isExplained = (path: string): boolean =>
    [...explained].some((known) => known === path || known.startsWith(`${path}.`))
  const left = parameters.flatMap(({ name, top }) =>
    top.filter((field) => !isExplained(field) && !isExplained(`${name}.${field}`)),
  )
  expect([...new Set(left)]).toEqual([])
  expect(besides.filter((name) => !parameters.some(({ top }) => top.includes(name)))).toEqual([])
})

test.each(cards)('%s: every call has a function and a look, every form only known symbols', (_, card) => {
  for (const expression of Object.values(card.forms as Record<string, Expression>)) {
    for (const name of callsOf(expression)) {
      expect(card.calls).toHaveProperty(name)
      expect(card.callSymbols).toHaveProperty(name)
    }
    for (const name of symbolsOf(expression)) expect(card.symbols).toHaveProperty(name)
  }
})

// Fourth check: for functions that are one arithmetic expression, the tree read from the source is the tree of the card.
const operators: Partial<Record<ts.SyntaxKind, string>> = {
  [ts.SyntaxKind.PlusToken]: '+',
  [ts.SyntaxKind.MinusToken]: '-',
  [ts.SyntaxKind.AsteriskToken]: '*',
  [ts.SyntaxKind.SlashToken]: '/',
  [ts.SyntaxKind.AsteriskAsteriskToken]: '^',
}

function treeOf(node: ts.Expression, locals: Map<string, ts.Expression>): Expression | undefined {
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node)) return treeOf(node.expression, locals)
  if (ts.isNumericLiteral(node)) return Number(node.text.replaceAll('_', ''))
  if (ts.isPropertyAccessExpression(node)) return node.name.text
  if (ts.isIdentifier(node)) {
    const local = locals.get(node.text)
    return local === undefined ? node.text : treeOf(local, locals)
  }
  const operator = ts.isBinaryExpression(node) ? operators[node.operatorToken.kind] : undefined
  if (operator === undefined || !ts.isBinaryExpression(node)) return undefined
  const left = treeOf(node.left, locals)
  const right = treeOf(node.right, locals)
  return left === undefined || right === undefined ? undefined : ([operator, left, right] as unknown as Expression)
}

/** The tree of a function whose last statement returns one arithmetic expression; undefined for any other function. */
function sourceTree(name: string): Expression | undefined {
  const body = declarationOf(name).body
  const locals = new Map<string, ts.Expression>()
  let tree: Expression | undefined
  for (const statement of body?.statements ?? []) {
    if (ts.isVariableStatement(statement)) {
      for (const declaration of statement.declarationList.declarations) {
        if (declaration.initializer !== undefined && ts.isIdentifier(declaration.name))
          locals.set(declaration.name.text, declaration.initializer)
      }
    } else if (ts.isReturnStatement(statement)) {
      tree = statement.expression === undefined ? undefined : treeOf(statement.expression, locals)
    } else if (!ts.isExpressionStatement(statement)) return undefined // a branch or a loop
  }
  return Array.isArray(tree) ? tree : undefined
}

/** Sums and products as sorted lists: grouping and order of factors are the card's own choice. */
function canonical(expression: Expression, rename: (name: string) => string): unknown {
  if (typeof expression === 'string') return rename(expression)
  if (!Array.isArray(expression)) return expression
  const [operator, ...parts] = expression as [string, ...Expression[]]
  const inner = parts.map((part) => canonical(part, rename))
  if (operator !== '+' && operator !== '*') return [operator, ...inner]
  const flat = inner.flatMap((part) =>
    Array.isArray(part) && part[0] === operator ? (part.slice(1) as unknown[]) : [part],
  )
  return [operator, ...flat.sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1))]
}

test('where the core function is one arithmetic expression, the card prints that expression', () => {
  const compared: string[] = []
  for (const [, card] of cards) {
    const tree = sourceTree(card.documents)
    if (tree === undefined) continue
    const parameters = new Set(Object.values(card.symbols).map((symbol) => symbol.parameter))
    const known = symbolsOf(tree).every((name) => parameters.has(name))
    if (!known) continue
    compared.push(card.id)
    const printed = card.forms[card.result] as Expression
    expect(
      canonical(printed, (name) => card.symbols[name]?.parameter ?? name),
      card.id,
    ).toEqual(canonical(tree, (name) => name))
  }
  // The others branch, loop, call another function, or are solved by a table of exponents.
  expect(compared.sort()).toEqual([
    'ballast-for-other-water',
    'carbon-dioxide-output',
    'drift-error',
    'filling-rate',
    'gas-fraction-of-foam',
    'hydrostatic-imbalance',
    'maximum-permissible-error',
    'offset-by',
    'partial-pressure',
    'power-of-breathing',
    'pressure-volume',
    'quantization-step',
    'sealed-chamber-pressure',
    'seat-leak',
    'shift-for-trim',
    'stall-ratio',
    'surface-equivalent',
    'ventilation-for-uptake',
    'water-compression',
    'water-volume',
  ])
})

test('every file of cards is exported and listed', () => {
  const folder = new URL('../../src/course/cards/', import.meta.url)
  const index = readFileSync(new URL('../../src/course/index.ts', import.meta.url), 'utf8')
  const listed = new Set(course.allCards().map((card) => card.id))
  for (const file of readdirSync(folder)) {
    if (file === 'all-cards.ts') continue
    expect(index).toContain(`export * from './cards/${file}'`)
    const text = readFileSync(new URL(file, folder), 'utf8')
    const ids = [...text.matchAll(/^ {2}id: '([^']+)'/gm)].map(([, id]) => id)
    expect(ids.length, file).toBeGreaterThan(0)
    for (const id of ids) expect(listed, file).toContain(id)
  }
})

test('cards are literals: nothing is called or spread at the top level of a card file', () => {
  const folder = new URL('../../src/course/cards/', import.meta.url)
  const offences: string[] = []
  for (const file of readdirSync(folder)) {
    const source = ts.createSourceFile(file, readFileSync(new URL(file, folder), 'utf8'), ts.ScriptTarget.ES2022, true)
    const look = (node: ts.Node): void => {
      if (ts.isArrowFunction(node) || ts.isFunctionDeclaration(node)) return // what happens when it is used
      if (
        ts.isCallExpression(node) ||
        ts.isSpreadAssignment(node) ||
        ts.isSpreadElement(node) ||
        ts.isNewExpression(node)
      )
        offences.push(`${file}: ${node.getText()}`)
      node.forEachChild(look)
    }
    source.forEachChild(look)
  }
  expect(offences).toEqual([])
})
