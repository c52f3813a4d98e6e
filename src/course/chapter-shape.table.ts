import type { Block } from './chapter.ts'
import type { Shape } from './require-shape.ts'
import { tableShape } from './shapes.table.ts'

/** What a chapter holds, the blocks of its sections aside. */
export const chapterShape: Shape = {
  fields: {
    title: 'text',
    lead: 'text',
    language: 'text',
    sections: [{ fields: { id: 'any', title: 'text', blocks: ['any'] } }],
    'ownSources?': 'any',
    'ownCautions?': 'any',
  },
}

const text = { fields: { kind: 'text', text: 'any' } } as const

/** What each kind of block holds; charts and solutions are looked into where they are drawn. */
export const blockShapes: Readonly<Record<Block['kind'], Shape>> = {
  answer: text,
  paragraph: text,
  heading: text,
  list: { fields: { kind: 'text', ordered: 'truth', items: ['any'] } },
  quote: { fields: { kind: 'text', blocks: ['any'] } },
  code: { fields: { kind: 'text', text: 'text' } },
  chart: { fields: { kind: 'text', chart: 'any', 'recipe?': 'any' } },
  table: { fields: { kind: 'text', table: tableShape, 'recipe?': 'any' } },
  solution: { fields: { kind: 'text', solution: 'any', 'recipe?': 'any' } },
  cautions: { fields: { kind: 'text', cautions: ['text'] } },
  sources: { fields: { kind: 'text', sources: ['any'] } },
  footnotes: { fields: { kind: 'text', notes: ['any'] } },
}
