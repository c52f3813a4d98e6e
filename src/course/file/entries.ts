import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml'
import { type Problems, unknownWord } from './problem.ts'

/** A value of a YAML or JSON text with the line that it stands in. */
export interface Entry {
  readonly line: number
  /** A single value as text; numbers and words alike. */
  readonly text?: string
  readonly list?: readonly Entry[]
  readonly fields?: ReadonlyMap<string, Entry>
}

/**
 * Reads YAML or JSON into entries that know their lines.
 *
 * @param source - the text
 * @param firstLine - line of the file that the text begins in
 * @param problems - takes what cannot be read
 * @returns the entry, or undefined where the text cannot be read
 */
export function readEntries(source: string, firstLine: number, problems: Problems): Entry | undefined {
  const lines = new LineCounter()
  const document = parseDocument(source, { lineCounter: lines, prettyErrors: false, merge: false })
  for (const { message, pos, code } of document.errors) {
    const text =
      code === 'DUPLICATE_KEY'
        ? 'This name is given twice in one block. Keep one of the two.'
        : `${message}. Indent with spaces, and put texts with a colon into quotes.`
    problems.add(firstLine + lines.linePos(pos[0]).line - 1, text)
  }
  if (document.errors.length > 0) return undefined
  const lineOf = (node: Node): number => firstLine + lines.linePos(node.range?.[0] ?? 0).line - 1
  const entryOf = (node: Node | null, line: number): Entry => {
    if (isMap<Node, Node | null>(node)) {
      const fields = new Map<string, Entry>()
      for (const { key, value } of node.items)
        fields.set(String(isScalar(key) ? key.value : key), entryOf(value, lineOf(key)))
      return { line, fields }
    }
    if (isSeq<Node>(node)) return { line, list: node.items.map((item) => entryOf(item, lineOf(item))) }
    if (isScalar(node)) return { line, text: node.value === null ? '' : (node.source ?? JSON.stringify(node.value)) }
    if (node !== null) problems.add(line, 'References between values are not read. Write the value out.')
    return { line, text: '' }
  }
  return document.contents === null ? { line: firstLine, text: '' } : entryOf(document.contents, firstLine)
}

/** The fields of an entry, or a problem and none. */
export function fieldsOf(entry: Entry, what: string, problems: Problems): ReadonlyMap<string, Entry> {
  if (entry.fields !== undefined) return entry.fields
  problems.add(entry.line, `${what} needs lines of the form "name: value".`)
  return new Map()
}

/** A text of a field, or undefined with a problem where it is needed and missing, or no text. */
export function textOf(
  fields: ReadonlyMap<string, Entry>,
  name: string,
  line: number,
  problems: Problems,
  needed = true,
): string | undefined {
  const entry = fields.get(name)
  if (entry?.text !== undefined && entry.text !== '') return entry.text
  if (entry !== undefined && entry.text === undefined)
    problems.add(entry.line, `"${name}" takes one value, not a list.`)
  else if (needed) problems.add(line, `"${name}" is missing. Add a line "${name}: …".`)
  return undefined
}

/** Items of a list, or of a text with a sign between them. */
export function itemsOf(entry: Entry | undefined, between: RegExp = /,/): readonly Entry[] {
  if (entry === undefined) return []
  if (entry.list !== undefined) return entry.list
  if (entry.text !== undefined)
    return entry.text.split(between).map((text) => ({ line: entry.line, text: text.trim() }))
  return [entry]
}

/** Names that a block does not know become problems. */
export function requireNames(
  fields: ReadonlyMap<string, Entry>,
  what: string,
  known: readonly string[],
  problems: Problems,
): void {
  for (const [name, { line }] of fields) {
    if (!known.includes(name)) problems.add(line, unknownWord(what, name, known))
  }
}
