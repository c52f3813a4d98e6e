import { expect, test } from 'vitest'
import { chapterHtml, chartSvg, tableMarkdown } from '../../src/course/index.ts'
import { requireShape } from '../../src/course/require-shape.ts'

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
