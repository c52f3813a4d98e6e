/** An own reader and scorer of the QTI that is written: strict about numbers, deaf to everything else. */

interface Node {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly children: (Node | string)[]
}

function parseXml(text: string): Node {
  const root: Node = { name: '', attributes: {}, children: [] }
  const open: Node[] = [root]
  for (const [piece] of text.replace(/^<\?xml[^>]*\?>\s*/, '').matchAll(/<[^>]*>|[^<]+/g)) {
    const top = open.at(-1) as Node
    if (piece.startsWith('</')) {
      if (`</${top.name}>` !== piece) throw new Error(`${piece} closes ${top.name}`)
      open.pop()
    } else if (piece.startsWith('<')) {
      const name = /^<([\w:-]+)/.exec(piece)?.[1] ?? ''
      const attributes = Object.fromEntries(
        [...piece.matchAll(/ ([\w:-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
      )
      const node: Node = { name, attributes, children: [] }
      top.children.push(node)
      if (!piece.endsWith('/>')) open.push(node)
    } else top.children.push(piece)
  }
  if (open.length !== 1) throw new Error('not closed')
  return root.children.find((child) => typeof child !== 'string') as Node
}

/** One name for all versions: `qti-response-else-if` and `responseElseIf` alike. */
const plain = (name: string): string =>
  name.replace(/^qti-/, '').replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)

const elements = (node: Node): Node[] => node.children.filter((child) => typeof child !== 'string')
const all = (node: Node, name: string): Node[] =>
  elements(node).flatMap((child) => [...(plain(child.name) === name ? [child] : []), ...all(child, name)])
const text = (node: Node | undefined): string =>
  node?.children.filter((child) => typeof child === 'string').join('') ?? ''
const attribute = (node: Node, name: string): string =>
  Object.entries(node.attributes).find(([key]) => plain(key) === name)?.[1] ?? ''

function float(source: string): number {
  if (!/^-?\d+(\.\d+)?(e[+-]?\d+)?$/.test(source)) throw new Error(`no float: ${source}`)
  return Number(source)
}

/** Score and feedback of a response: a number, letters, or nothing. */
export function qtiScore(
  document: string,
  response: string | readonly string[] | undefined,
): { score: number; feedback?: string } {
  const item = parseXml(document)
  const declaration = all(item, 'response-declaration')[0] as Node
  const correct = all(declaration, 'value').map(text)
  const processing = all(item, 'response-processing')[0] as Node
  if (attribute(processing, 'template') !== '') {
    const given = new Set(Array.isArray(response) ? (response as readonly string[]) : [])
    const known = new Set(all(item, 'simple-choice').map((choice) => attribute(choice, 'identifier')))
    if (!correct.every((id) => known.has(id))) throw new Error('a key that is no choice')
    return { score: given.size === correct.length && correct.every((id) => given.has(id)) ? 1 : 0 }
  }
  let score = float(text(all(all(item, 'outcome-declaration')[0] as Node, 'value')[0]))
  let feedback: string | undefined
  const value = (node: Node): number | undefined => {
    if (plain(node.name) === 'variable') return response === undefined ? undefined : float(response as string)
    return float(plain(node.name) === 'correct' ? (correct[0] as string) : text(node))
  }
  for (const branch of elements(all(processing, 'response-condition')[0] as Node)) {
    const [test, ...outcomes] = elements(branch)
    if (test === undefined || !holds(test, value, response)) continue
    for (const outcome of outcomes) {
      const set = text(elements(outcome)[0])
      if (attribute(outcome, 'identifier') === 'SCORE') score = float(set)
      else feedback = set
    }
    break
  }
  const messages = all(item, 'modal-feedback').map((message) => attribute(message, 'identifier'))
  if (feedback !== undefined && !messages.includes(feedback)) throw new Error(`no feedback ${feedback}`)
  return feedback === undefined ? { score } : { score, feedback }
}

function holds(
  test: Node,
  value: (node: Node) => number | undefined,
  response: string | readonly string[] | undefined,
): boolean {
  if (plain(test.name) === 'is-null') return response === undefined
  if (plain(test.name) !== 'equal' || attribute(test, 'tolerance-mode') !== 'absolute') throw new Error(test.name)
  // the range is built round the first
  const [x, y] = elements(test).map(value)
  const [below = Number.NaN, above = below] = attribute(test, 'tolerance').split(' ').map(float)
  return x !== undefined && y !== undefined && y >= x - below && y <= x + above
}
