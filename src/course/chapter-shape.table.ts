import { lookShape, solutionShape } from './card-shape.table.ts'
import type { Block, Inline } from './chapter.ts'
import type { Shape } from './require-shape.ts'
import { chartShape, citedShape, ownCautionShape, ownSourceShape, tableShape } from './shapes.table.ts'

const content: Shape = [(): Shape => ({ kinds: inlineShapes })]
const text: Shape = { textOr: content }
const blocks: Shape = [(): Shape => ({ kinds: blockShapes })]

/** What each piece of running text holds. */
const inlineShapes: Readonly<Record<Inline['kind'], Shape>> = {
  text: { fields: { kind: 'text', text: 'text' } },
  emphasis: { fields: { kind: 'text', content } },
  strong: { fields: { kind: 'text', content } },
  code: { fields: { kind: 'text', text: 'text' } },
  link: { fields: { kind: 'text', address: 'text', content } },
  image: { fields: { kind: 'text', address: 'text', alternative: 'text', 'data?': 'text' } },
  value: { fields: { kind: 'text', text: 'text', unit: 'text' } },
  formula: { fields: { kind: 'text', 'find?': 'text', expression: 'expression', symbols: { each: lookShape } } },
  note: { fields: { kind: 'text', number: 'number' } },
  break: { fields: { kind: 'text' } },
}

/** What each kind of block holds. Recipes are what a reader of files makes, for the script of live pages. */
const blockShapes: Readonly<Record<Block['kind'], Shape>> = {
  answer: { fields: { kind: 'text', text } },
  paragraph: { fields: { kind: 'text', text } },
  heading: { fields: { kind: 'text', text } },
  list: { fields: { kind: 'text', ordered: 'truth', items: [blocks] } },
  quote: { fields: { kind: 'text', blocks } },
  code: { fields: { kind: 'text', text: 'text' } },
  chart: { fields: { kind: 'text', chart: chartShape, 'recipe?': 'any' } },
  table: { fields: { kind: 'text', table: tableShape, 'recipe?': 'any' } },
  solution: { fields: { kind: 'text', solution: solutionShape, 'recipe?': 'any' } },
  cautions: { fields: { kind: 'text', cautions: ['text'] } },
  sources: { fields: { kind: 'text', sources: [citedShape] } },
  footnotes: { fields: { kind: 'text', notes: [{ fields: { number: 'number', text } }] } },
}

/** What a chapter holds. */
export const chapterShape: Shape = {
  fields: {
    title: 'text',
    lead: 'text',
    language: 'text',
    sections: [{ fields: { id: 'id', title: 'text', blocks } }],
    'ownSources?': { each: ownSourceShape },
    'ownCautions?': { each: ownCautionShape },
  },
}
