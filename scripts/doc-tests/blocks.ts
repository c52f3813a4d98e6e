// Finds the code that readers are shown: fenced ts blocks of Markdown and the @example parts of doc comments.
import ts from 'typescript'

/** A piece of code with the place of its first line. */
export interface Block {
  readonly file: string
  /** Line of the file on which the code begins, from 1. */
  readonly line: number
  readonly code: string
  /** `fragment` is not run; `throws` must throw. */
  readonly mark: '' | 'throws' | 'fragment'
}

const fence = /^\s*```(\S*)\s*(.*?)\s*$/

/** The ts blocks of a Markdown text. Other languages are passed over; an unknown mark, or a fence left open, throws. */
export function markdownBlocks(file: string, text: string, firstLine = 1): Block[] {
  const blocks: Block[] = []
  let open: { language: string; mark: string; line: number; code: string[] } | undefined
  for (const [index, line] of text.split('\n').entries()) {
    const at = firstLine + index
    const [isFence, language = '', mark = ''] = fence.exec(line) ?? []
    if (open === undefined) {
      if (isFence !== undefined) open = { language, mark, line: at + 1, code: [] }
    } else if (line.trim() === '```') {
      if (open.language === 'ts' || open.language === 'typescript') {
        blocks.push({
          file,
          line: open.line,
          code: open.code.join('\n'),
          mark: knownMark(open.mark, file, open.line - 1),
        })
      }
      open = undefined
    } else {
      open.code.push(line)
    }
  }
  if (open !== undefined) throw new Error(`${file}:${open.line - 1} opens a code block that is never closed`)
  return blocks
}

function knownMark(mark: string, file: string, line: number): Block['mark'] {
  if (mark === '' || mark === 'throws' || mark === 'fragment') return mark
  throw new Error(`${file}:${line} has the unknown mark "${mark}". Known are: throws, fragment.`)
}

/** The examples in the doc comments of a TypeScript file: fenced, or the whole text that follows the tag. */
export function exampleBlocks(file: string, text: string): Block[] {
  const blocks: Block[] = []
  const lines = text.split('\n')
  for (const { from, to } of docComments(file, text)) {
    const first = lineOf(text, from)
    const comment = lines.slice(first, lineOf(text, to) + 1).map(withoutStar)
    let start: number | undefined
    const finish = (end: number): void => {
      if (start === undefined) return
      const code = comment.slice(start, end)
      const line = first + start + 1
      if (code.some((each) => fence.test(each))) blocks.push(...markdownBlocks(file, code.join('\n'), line))
      else if (code.every((each) => each.trim() === '')) throw new Error(`${file}:${line - 1} has an empty @example`)
      else blocks.push({ file, line, code: code.join('\n').trimEnd(), mark: '' })
      start = undefined
    }
    let isFenced = false
    for (const [index, line] of comment.entries()) {
      if (fence.test(line)) isFenced = !isFenced
      if (isFenced || !/^@\w/.test(line)) continue
      finish(index)
      if (/^@example\b/.test(line)) {
        if (line.trim() !== '@example')
          throw new Error(`${file}:${first + index + 1}: begin the example on the next line`)
        start = index + 1
      }
    }
    finish(comment.length)
  }
  return blocks
}

// The scanner tells a comment from text that merely looks like one.
function docComments(file: string, text: string): { from: number; to: number }[] {
  const found = new Map<number, number>()
  const visit = (node: ts.Node): void => {
    for (const range of ts.getLeadingCommentRanges(text, node.pos) ?? []) {
      if (text.startsWith('/**', range.pos)) found.set(range.pos, range.end)
    }
    ts.forEachChild(node, visit)
  }
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true)
  visit(source)
  visit(source.endOfFileToken)
  return [...found].map(([from, to]) => ({ from, to }))
}

function lineOf(text: string, position: number): number {
  return text.slice(0, position).split('\n').length - 1
}

function withoutStar(line: string): string {
  return line
    .replace(/^\s*\/\*\*\s?/, '')
    .replace(/\s*\*\/\s*$/, '')
    .replace(/^\s*\* ?/, '')
}
