import { readFileSync } from 'node:fs'
import ts from 'typescript'
import { filesIn } from './files-in.ts'

/** A regular expression of the library. */
export interface ShippedPattern {
  readonly source: string
  readonly flags: string
  /** Files that hold it. */
  readonly files: readonly string[]
}

/**
 * Every regular expression that is written in `src`, found in the syntax tree, and the places where one is put together at run time,
 * which no tool can read.
 *
 * @returns literals without repetition, in order of the files; and `new RegExp` by file and line
 */
export function shippedPatterns(): { readonly patterns: readonly ShippedPattern[]; readonly built: readonly string[] } {
  const found = new Map<string, { source: string; flags: string; files: Set<string> }>()
  const built: string[] = []
  for (const file of filesIn('src', '.ts')) {
    const tree = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2022, true)
    const visit = (node: ts.Node): void => {
      if (ts.isRegularExpressionLiteral(node)) {
        const end = node.text.lastIndexOf('/')
        const [source, flags] = [node.text.slice(1, end), node.text.slice(end + 1)]
        const key = `${source}/${flags.replace('g', '').replace('y', '')}`
        const row = found.get(key) ?? { source, flags, files: new Set() }
        row.files.add(file)
        found.set(key, row)
      }
      const isBuilt =
        (ts.isNewExpression(node) || ts.isCallExpression(node)) && node.expression.getText(tree) === 'RegExp'
      if (isBuilt) built.push(`${file}:${tree.getLineAndCharacterOfPosition(node.pos).line + 1}: ${node.getText(tree)}`)
      ts.forEachChild(node, visit)
    }
    visit(tree)
  }
  return { patterns: [...found.values()].map((row) => ({ ...row, files: [...row.files] })), built }
}
