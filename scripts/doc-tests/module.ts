// Turns a block into a module that checks itself: `expression // => value` and `expression // throws code`.
import ts from 'typescript'
import type { Block } from './blocks.ts'

/** Where a public name comes from. */
export interface PublicName {
  readonly from: string
  readonly isType: boolean
}

/** A checking module, whose line `n` is line `n + offset` of the documented file. */
export interface CheckingModule {
  readonly text: string
  readonly offset: number
}

/**
 * The module of a block. Public names that it uses without importing or declaring them are imported.
 *
 * @param publicNames - name to entry point
 * @param checker - module specifier of check.ts
 */
export function checkingModule(
  block: Block,
  publicNames: ReadonlyMap<string, PublicName>,
  checker: string,
): CheckingModule {
  const source = ts.createSourceFile('block.ts', block.code, ts.ScriptTarget.ES2022, true)
  const place = `${block.file}:${block.line}`
  const imports = source.statements.filter((statement) => ts.isImportDeclaration(statement))
  const header = [
    `import { block, check, checkThrows, more, Printed } from '${checker}'`,
    automaticImports(source, publicNames),
    ...imports.map((statement) => statement.getText().replaceAll('\n', ' ')),
    `await block(${JSON.stringify(place)}, ${block.mark === 'throws'}, async () => {`,
  ].join('; ')
  const edits: Edit[] = imports.map((statement) => ({
    from: statement.getStart(),
    to: statement.getEnd(),
    text: '\n'.repeat(statement.getText().split('\n').length - 1),
  }))
  for (const statement of source.statements) edits.push(...claimEdits(block, source, statement))
  const body = applyEdits(block.code, edits)
  return {
    text: `${header}\n${body}\n})\nvoid [check, checkThrows, more, Printed]\n`,
    offset: block.line - 2,
  }
}

interface Edit {
  readonly from: number
  readonly to: number
  readonly text: string
}

function applyEdits(code: string, edits: readonly Edit[]): string {
  let text = code
  for (const { from, to, text: replacement } of [...edits].sort((a, b) => b.from - a.from)) {
    text = text.slice(0, from) + replacement + text.slice(to)
  }
  return text
}

function claimEdits(block: Block, source: ts.SourceFile, statement: ts.Statement): Edit[] {
  const rest = block.code.slice(statement.getEnd())
  const lineEnd = rest.indexOf('\n') < 0 ? rest.length : rest.indexOf('\n')
  const claim = /^[ \t]*;?[ \t]*\/\/ (=>|throws) ?(.*)$/.exec(rest.slice(0, lineEnd))
  const place = `${block.file}:${block.line + source.getLineAndCharacterOfPosition(statement.getEnd()).line}`
  if (claim === null) {
    const looksLikeResult =
      ts.isExpressionStatement(statement) && /\/\/\s*(=|→|-|throws|['"[{\d])/.test(rest.slice(0, lineEnd))
    if (looksLikeResult) throw new Error(`${place}: write a result as "// => value" or "// throws code"`)
    return []
  }
  const [, kind = '', words = ''] = claim
  const subject = subjectOf(statement)
  if (subject === undefined) throw new Error(`${place}: a result belongs behind an expression or one constant`)
  if (kind === 'throws') {
    const call = `checkThrows(${JSON.stringify(place)}, () => (${subject.text}), ${JSON.stringify(words.trim())})`
    return [{ from: statement.getStart(), to: statement.getEnd(), text: call }]
  }
  const value = documentedValue(words, rest.slice(lineEnd + 1), place)
  const call = `check(${JSON.stringify(place)}, ${subject.text}, ${value.code}, ${JSON.stringify(value.words)})`
  return subject.isDeclared
    ? [{ from: statement.getEnd(), to: statement.getEnd(), text: `; ${call}` }]
    : [{ from: statement.getStart(), to: statement.getEnd(), text: `;${call}` }]
}

function subjectOf(statement: ts.Statement): { text: string; isDeclared: boolean } | undefined {
  if (ts.isExpressionStatement(statement)) return { text: statement.expression.getText(), isDeclared: false }
  if (!ts.isVariableStatement(statement)) return undefined
  const [declaration, ...others] = statement.declarationList.declarations
  if (declaration === undefined || others.length > 0 || !ts.isIdentifier(declaration.name)) return undefined
  return { text: declaration.name.text, isDeclared: true }
}

/** Reads the value; one that does not end on its line goes on in the comment lines below. */
function documentedValue(words: string, below: string, place: string): { code: string; words: string } {
  let text = words.trim()
  for (const line of ['', ...below.split('\n')]) {
    if (line !== '') {
      const next = /^\s*\/\/(?! =>)(.*)$/.exec(line)
      if (next === null) break
      text += ` ${(next[1] ?? '').trim()}`
    }
    const expression = parsed(text)
    if (expression !== undefined) return { code: valueCode(expression, place), words: text }
  }
  throw new Error(`${place}: "${text}" is not a value. Write a number, a text in quotes, a list or an object.`)
}

function parsed(text: string): ts.Expression | undefined {
  const written = text.replaceAll(/,?\s*(?:…|\.\.\.)\s*([}\]])/g, ', ...more $1').replaceAll(/([{[])\s*,/g, '$1')
  const source = ts.createSourceFile('value.ts', `(${written})`, ts.ScriptTarget.ES2022, true)
  const problems = (source as unknown as { parseDiagnostics: unknown[] }).parseDiagnostics
  const [statement, ...others] = source.statements
  if (problems.length > 0 || statement === undefined || others.length > 0) return undefined
  if (!ts.isExpressionStatement(statement) || !ts.isParenthesizedExpression(statement.expression)) return undefined
  return statement.expression.expression
}

function valueCode(value: ts.Expression, place: string): string {
  if (ts.isNumericLiteral(value)) return `new Printed('${value.getText()}')`
  if (ts.isPrefixUnaryExpression(value) && ts.isNumericLiteral(value.operand)) {
    return `new Printed('${value.getText().replace(/\s/g, '')}')`
  }
  if (ts.isStringLiteralLike(value)) return JSON.stringify(value.text)
  if (ts.isArrayLiteralExpression(value)) {
    return `[${value.elements.map((each) => (ts.isSpreadElement(each) ? 'more' : valueCode(each, place))).join(', ')}]`
  }
  if (ts.isObjectLiteralExpression(value)) {
    const members = value.properties.map((member) => {
      if (ts.isSpreadAssignment(member)) return '[more]: true'
      if (ts.isPropertyAssignment(member)) return `${member.name.getText()}: ${valueCode(member.initializer, place)}`
      throw new Error(`${place}: "${member.getText()}" needs a value`)
    })
    return `{ ${members.join(', ')} }`
  }
  const word = value.getText()
  if (['true', 'false', 'null', 'undefined', 'NaN', 'Infinity', '-Infinity'].includes(word)) return word
  throw new Error(`${place}: "${word}" is not a value. Write a number, a text in quotes, a list or an object.`)
}

function automaticImports(source: ts.SourceFile, publicNames: ReadonlyMap<string, PublicName>): string {
  const declared = new Set<string>()
  const used = new Set<string>()
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) {
      const { parent } = node
      if (isDeclaring(parent) && parent.name === node) declared.add(node.text)
      else if (ts.isShorthandPropertyAssignment(parent) || !isMemberName(node)) used.add(node.text)
    }
    ts.forEachChild(node, visit)
  }
  visit(source)
  return [...used]
    .filter((name) => !declared.has(name))
    .flatMap((name) => {
      const origin = publicNames.get(name)
      return origin === undefined ? [] : [`import ${origin.isType ? 'type ' : ''}{ ${name} } from '${origin.from}'`]
    })
    .join('; ')
}

function isDeclaring(node: ts.Node): node is ts.NamedDeclaration {
  return (
    ts.isVariableDeclaration(node) ||
    ts.isParameter(node) ||
    ts.isBindingElement(node) ||
    ts.isFunctionDeclaration(node) ||
    ts.isClassDeclaration(node) ||
    ts.isInterfaceDeclaration(node) ||
    ts.isTypeAliasDeclaration(node) ||
    ts.isTypeParameterDeclaration(node) ||
    ts.isImportSpecifier(node) ||
    ts.isImportClause(node) ||
    ts.isNamespaceImport(node)
  )
}

function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node
  return (
    ('name' in parent && parent.name === node) ||
    ('propertyName' in parent && parent.propertyName === node) ||
    (ts.isQualifiedName(parent) && parent.right === node)
  )
}
