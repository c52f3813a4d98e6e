import { exerciseTexts } from './exercises/exercise-text.table.ts'
import { figureTexts } from './figures/figure-text.table.ts'
import { pageTexts } from './page-text.table.ts'
import type { Fields, Shape } from './require-shape.ts'
import { roundingTexts } from './rounding-text.table.ts'
import { numberStyleFields } from './shapes.table.ts'

/** A text under every id of a table. */
function textsOf(table: object): Shape {
  return { fields: Object.fromEntries(Object.keys(table).map((id) => [id, 'text'] as const)) }
}

/** Some of the texts of a page in other words. */
export const pageTextsShape = { someOf: pageTexts } as const

/** Some of the texts of exercises in other words. */
export const exerciseTextsShape = { someOf: exerciseTexts } as const

/** Some of the texts of ready-made charts in other words. */
export const figureTextsShape = { someOf: figureTexts } as const

/** The words of roundings. */
export const roundingsShape: Shape = () => ({
  fields: {
    texts: textsOf(roundingTexts),
    uses: { each: { fields: { name: 'text', because: 'text' } } },
  },
})

/** The texts of one card. */
export const cardTextsShape: Shape = {
  fields: { title: 'text', symbols: { each: 'text' }, conditions: ['text'], 'errors?': ['text'], 'place?': 'text' },
}

/** Reasons in another language, and the words in their places. */
export const reasonsShape: Shape = { fields: { sentences: [['text']], parts: { each: 'text' } } }

/** Everything that a page in another language needs. */
export const languageShape: Shape = () => ({
  fields: {
    tag: 'text',
    decimal: numberStyleFields['decimal?'],
    page: textsOf(pageTexts),
    roundings: roundingsShape,
    cards: { each: cardTextsShape },
    cautions: { each: 'text' },
    sources: { each: 'text' },
    exercises: textsOf(exerciseTexts),
    drawn: {
      fields: {
        texts: { each: 'text' },
        faults: { each: { fields: { fault: 'text', seen: 'text' } } },
        findings: { each: { fields: { text: 'text', remedy: 'text' } } },
        figures: textsOf(figureTexts),
      },
    },
    reasons: reasonsShape,
    figures: textsOf(figureTexts),
  },
})

/** How a page is written. */
export function pageStyleFields(): Fields {
  return { ...numberStyleFields, 'texts?': pageTextsShape, 'language?': languageShape }
}
