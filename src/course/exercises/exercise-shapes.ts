import { exerciseTextsShape, languageShape } from '../language-shape.table.ts'
import type { Fields, Shape, WholeRange } from '../require-shape.ts'
import { chartShapes } from '../shapes.table.ts'
import { drawnIds } from './drawn/drawn.ts'
import type { Exercise } from './exercise.ts'

// The limits are ours: three levels, and more figures than any answer has.
const levels: WholeRange = { atLeast: 1, atMost: 3, hint: 'Say how hard it is: 1, 2 or 3.' }
const seeds: WholeRange = { hint: 'Any whole number will do; keep it to draw the same again.' }
const figures: WholeRange = { atLeast: 1, atMost: 100, hint: 'Say how many figures the answer has.' }

const level = { whole: levels } as const
const cited = [{ fields: { id: 'text', place: 'text' } }] as const

/** A whole number that drawing starts from. */
export const seedShape = { whole: seeds } as const

/** How items are written. */
export const itemOptionFields: Fields = { 'texts?': exerciseTextsShape, 'language?': languageShape }

/** What is drawn from a bank. */
export const drawShape: Shape = {
  fields: {
    count: 'number',
    seed: seedShape,
    'subjects?': ['text'],
    'levels?': [level],
    'kinds?': [{ words: ['number', 'choice', 'judgement', 'several', 'drawn'] }],
  },
}

/** The key of an item that asks for a number. */
const numberKey = {
  fields: {
    value: 'number',
    text: 'text',
    unit: 'text',
    kind: 'text',
    figures: { whole: figures },
    tolerance: { fields: { halfUnit: 'number', rounding: 'number', conventions: 'number', total: 'number' } },
    distractors: [{ fields: { says: 'text', value: 'number', text: 'text' } }],
  },
} as const

/** One variant of an exercise. */
export const itemShape: Shape = {
  fields: {
    exercise: 'text',
    subject: 'text',
    level,
    seed: seedShape,
    kind: { words: ['number', 'choice', 'judgement', 'several'] },
    text: 'text',
    'exhibit?': ['text'],
    'chart?': chartShapes.lines,
    'number?': numberKey,
    'choices?': [{ fields: { id: 'text', text: 'text', right: 'truth', 'because?': 'text' } }],
    working: ['text'],
    cautions: ['text'],
    sources: cited,
  },
}

const core = {
  id: 'text',
  kind: 'text',
  subject: 'text',
  level,
  cautions: ['text'],
  sources: cited,
  fingerprint: 'text',
} as const

const number = {
  fields: {
    ...core,
    text: 'text',
    card: 'any', // with its own check
    find: 'text',
    givens: { each: { fields: { unit: 'unit', texts: ['text'], values: ['number'] } } },
    asked: { fields: { unit: 'unit', figures: { whole: figures }, kind: 'text' } },
    within: ['number'],
    conventions: [{ each: 'number' }],
    misconceptions: [{ fields: { says: 'text', of: 'function' } }],
  },
} as const

const statements = [{ fields: { text: 'text', 'because?': 'text' } }] as const
const judgement = { fields: { ...core, text: 'text', right: statements, wrong: statements, because: 'text' } } as const

/** What each kind of exercise holds. */
export const exerciseShapes: Readonly<Record<Exercise['kind'], Shape>> = {
  number,
  choice: number,
  judgement,
  several: judgement,
  drawn: { fields: { ...core, drawn: { words: drawnIds } } },
}

/** What a set of sheets was drawn from. */
export const recordShape: Shape = {
  fields: {
    version: 'text',
    seed: seedShape,
    students: ['text'],
    exercises: [{ fields: { id: 'text', fingerprint: 'text' } }],
  },
}
