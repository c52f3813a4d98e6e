import { expect, test } from 'vitest'
import {
  boyleCard,
  type Card,
  chapterHtml,
  chapterLatex,
  chapterMarkdown,
  chapterText,
  chartSvg,
  coursePages,
  dimensionOf,
  evaluate,
  tableMarkdown,
  workedSolution,
} from '../../src/course/index.ts'
import { requireShape, type Shape } from '../../src/course/require-shape.ts'

const lines = {
  id: 'lines',
  title: 'Lines',
  description: 'Two points.',
  x: { label: 'time', unit: 's' },
  y: { label: 'depth', unit: 'm' },
  series: [{ name: 'dive', x: [0, 1], y: [0, 10] }],
}
const table = { caption: 'Depths', columns: [{ heading: 'Depth', align: 'number' }], rows: [['10']], notes: [] }
const chapter = (block: object): unknown => ({
  title: 'Title',
  lead: 'Lead',
  language: 'en',
  sections: [{ id: 'one', title: 'One', blocks: [block] }],
})

test.each([
  [() => chartSvg({ ...lines, titel: 'Lines' } as never), 'chart.titel', 'Did you mean title?'],
  [() => chartSvg({ ...lines, kind: 'line' } as never), 'chart.kind', "Did you mean 'lines'?"],
  [() => chartSvg({ ...lines, x: { label: 'time', unit: 1 } } as never), 'chart.x.unit', 'text'],
  [
    () => chartSvg({ ...lines, series: [{ ...lines.series[0], x: [0, '1'] }] } as never),
    'chart.series[0].x[1]',
    'finite number',
  ],
  [() => chartSvg(null as never), 'chart', 'object'],
  [() => tableMarkdown({ ...table, rows: [[10]] } as never), 'table.rows[0][0]', 'text'],
  [() => tableMarkdown({ ...table, rows: 'none' } as never), 'table.rows', 'list'],
  [
    () => tableMarkdown({ ...table, columns: [{ heading: 'Depth', align: 'left' }] } as never),
    'table.columns[0].align',
    'number',
  ],
  [
    () => chapterHtml(chapter({ kind: 'paragraf', text: '' }) as never),
    'chapter.sections[0].blocks[0].kind',
    'paragraph',
  ],
  [() => chapterHtml(chapter({ kind: 'code' }) as never), 'chapter.sections[0].blocks[0].text', 'State text'],
  [() => chapterHtml(chapter(null as never) as never), 'chapter.sections[0].blocks[0].kind', 'paragraph'],
] as const)('%# a document of another shape is refused where it differs', (call, argument, said) => {
  expect(call).toThrow(expect.objectContaining({ name: 'LitrebarError', argument }))
  expect(call).toThrow(said)
})

test('what may be left out may be left out, and a long column is looked through', () => {
  const shape = { fields: { x: ['number'], 'note?': 'text' } } as const
  expect(() => requireShape('given', { x: Float64Array.of(1, 2) }, shape)).not.toThrow()
  expect(() => requireShape('given', { x: [1, 2], note: 'two' }, shape)).not.toThrow()
  expect(() => requireShape('given', { x: Float64Array.of(1, Number.NaN) }, shape)).toThrow(/^given\.x\[1\] is NaN/)
  expect(() => requireShape('given', { x: [1], note: 2 }, shape)).toThrow(/^given\.note is 2/)
})

const bar = { symbol: 'bar', quantity: 'pressure', factor: 1e5 }
const tree: Shape = { fields: { kind: 'text', 'branches?': [() => tree] } }

test.each<readonly [Shape, unknown, unknown, string]>([
  ['function', () => 1, 1, 'a function'],
  ['unit', bar, { ...bar, factor: '1' }, 'a unit'],
  ['id', 'one-1', '1 one', 'a letter'],
  ['expression', ['*', 'p', ['sqrt', 2]], ['*', 'p', ['root', 2]], 'operator'],
  [{ whole: { atLeast: 1, atMost: 9, hint: 'Count.' } }, 1, 1.5, 'a whole number'],
  [{ whole: { atLeast: 1, atMost: 9, hint: 'Count.' } }, 1, 0, 'a whole number from 1 to 9'],
  [{ whole: { atLeast: 1, atMost: 9, hint: 'Count.' } }, 9, 10, 'from 1 to 9'],
  [{ whole: { hint: 'Count.' } }, -3, '3', 'a whole number'],
  ['number', -1e149, 1e150, 'a finite number'],
  ['number', 0, '0', 'a finite number'],
  [{ each: 'number' }, { x: 1 }, { x: undefined }, 'given.x is missing'],
  [{ each: 'number' }, { 'x?': 1 }, [1], 'an object'],
  [{ each: 'text' }, {}, null, 'an object'],
  [{ someOf: { key: 'Key', answer: 'Answer:' } }, { key: 'Lösung' }, { kye: 'Lösung' }, 'Did you mean key?'],
  [{ someOf: { key: 'Key' } }, {}, { key: undefined }, 'given.key is missing'],
  [{ textOr: ['number'] }, 'one', [true], 'given[0] is true'],
  [{ textOr: ['number'] }, [1], 1, 'a list'],
  [
    { kinds: { a: { fields: { 'kind?': 'text', x: 'number' } } }, usual: 'a' },
    { x: 1 },
    { kind: 'b', x: 1 },
    'given.kind',
  ],
  [{ kinds: { a: { fields: { kind: 'text' } } } }, { kind: 'a' }, {}, 'given.kind'],
  [tree, { kind: 'a', branches: [{ kind: 'b' }] }, { kind: 'a', branches: [{ kind: 1 }] }, 'given.branches[0].kind'],
])('%# a shape takes what has it and names what has not', (shape, right, wrong, said) => {
  expect(() => requireShape('given', right, shape)).not.toThrow()
  expect(() => requireShape('given', wrong, shape)).toThrow(expect.objectContaining({ name: 'LitrebarError' }))
  expect(() => requireShape('given', wrong, shape)).toThrow(said)
})

const loop: unknown[] = ['+', 1]
loop.push(loop)

test.each([
  [['+'], "expression is '+' with 0 parts"],
  [['-', 1], "expression is '-' with 1 parts"],
  [['ln', 1, 2], "expression is 'ln' with 2 parts"],
  [['call'], "expression is 'call' with 0 parts"],
  [['call', ''], "expression is 'call' with 1 parts"],
  [['call', 'Z', ['*', 'p', Number.NaN]], 'expression[2][2] is NaN'],
  [['constructor', 1], "expression is 'constructor'"],
  [[], 'expression is missing'],
  ['', "expression is ''"],
  [loop, 'expression[2][2]'],
])('%# what is no expression is refused where it is none', (expression, said) => {
  expect(() => evaluate(expression as never, { p: 1 })).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => evaluate(expression as never, { p: 1 })).toThrow(said)
})

test('a formula without an answer for its numbers is refused, and an inherited name is no symbol and no call', () => {
  expect(() => evaluate(['ln', 'x'], { x: -1 })).toThrow(expect.objectContaining({ code: 'range', argument: 'values' }))
  expect(() => evaluate(['/', 1, 'x'], { x: 0 })).toThrow(/come to Infinity/)
  expect(() => evaluate('constructor', {})).toThrow(expect.objectContaining({ argument: 'inputs.constructor' }))
  expect(() => evaluate(['call', 'toString'], {}, {})).toThrow(/without toString/)
  expect(() => dimensionOf('constructor', {})).toThrow(/constructor is no dimension/)
})

const card: Card = boyleCard

test.each<readonly [Partial<Card>, string]>([
  [{ symbols: { ...card.symbols, p1: undefined as never } }, 'card.symbols.p1'],
  [{ forms: { ...card.forms, q: 'p1' } }, 'card.forms.q'],
  [{ forms: { ...card.forms, p2: ['*', 'p1', 'q'] } }, 'card.forms.p2.q'],
  [{ forms: { ...card.forms, p2: ['call', 'Z'] }, calls: { Z: () => 1 } }, 'card.forms.p2.Z'],
  [{ constants: { q: 1 } }, 'card.constants.q'],
  [{ commonErrors: [{ slip: 'gauge' as never, text: 'Gauge' }] }, 'card.commonErrors[0].slip'],
])('%# a card with what it does not explain is refused', (spoilt, argument) => {
  const work = (): unknown =>
    workedSolution({ ...card, ...spoilt }, { p1: 2e5, V1: 1, V2: 2 }, { find: 'p2', figures: 3 })
  expect(work).toThrow(expect.objectContaining({ name: 'LitrebarError', argument }))
})

test('a chapter is looked through to its last piece before any of it is written', () => {
  const nested = { kind: 'quote', blocks: [{ kind: 'list', ordered: true, items: [[{ kind: 'code', text: 1 }]] }] }
  for (const write of [chapterHtml, chapterLatex, chapterMarkdown, chapterText])
    expect(() => write(chapter(nested) as never)).toThrow(
      expect.objectContaining({ argument: 'chapter.sections[0].blocks[0].blocks[0].items[0][0].text' }),
    )
})

test('two pages of a course have two names', () => {
  const part = { name: 'a', chapter: chapter({ kind: 'code', text: 'x' }), style: { decimal: 'point' }, formulas: [] }
  for (const parts of [[part, part], [{ ...part, name: 'index' }], [{ ...part, name: '' }]])
    expect(() => coursePages('Course', parts as never)).toThrow(expect.objectContaining({ argument: 'parts.name' }))
})
