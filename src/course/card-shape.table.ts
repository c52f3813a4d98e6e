import { dimensions } from '../units/index.ts'
import type { Shape } from './require-shape.ts'
import { citedShape } from './shapes.table.ts'
import { slips } from './slip.table.ts'

const dimension: Shape = () => ({ words: Object.keys(dimensions) })
const slip: Shape = () => ({ words: [...Object.keys(slips), 'other-formula'] })

/** What something of a formula must tell so that its dimension can be checked: a symbol of a card, or the dimension alone. */
export const dimensionShape: Shape = {
  fields: {
    'letter?': 'text',
    'subscript?': 'text',
    'meaning?': 'text',
    dimension,
    'datum?': { words: ['gauge', 'difference'] },
    'parameter?': 'text',
  },
}

/** How a symbol looks: a symbol of a card, or its letter alone. */
export const lookShape: Shape = {
  fields: {
    letter: 'text',
    'subscript?': 'text',
    'meaning?': 'text',
    'dimension?': dimension,
    'datum?': { words: ['gauge', 'difference'] },
    'parameter?': 'text',
  },
}

const symbol: Shape = {
  fields: {
    letter: 'text',
    'subscript?': 'text',
    meaning: 'text',
    dimension,
    'datum?': { words: ['gauge', 'difference'] },
    'parameter?': 'text',
  },
}

/** What a formula card holds. */
export const cardShape: Shape = {
  fields: {
    id: 'text',
    title: 'text',
    documents: 'text',
    result: 'text',
    symbols: { each: symbol },
    forms: { each: 'expression' },
    core: { each: 'function' },
    'constants?': { each: 'number' },
    'besides?': ['text'],
    'calls?': { each: 'function' },
    'callSymbols?': { each: symbol },
    conditions: ['text'],
    source: 'text',
    'place?': 'text',
    'cautions?': ['text'],
    'commonErrors?': [{ fields: { slip, text: 'text', 'symbols?': ['text'], 'instead?': { each: 'expression' } } }],
    range: { each: ['number'] },
  },
}

const shown = { fields: { value: 'number', text: 'text', unit: 'text' } } as const

/** What each step of a worked solution holds. */
const steps = {
  given: { fields: { kind: 'text', symbol: 'text', quantity: shown, meaning: 'text' } },
  convert: { fields: { kind: 'text', symbol: 'text', from: shown, to: shown } },
  formula: { fields: { kind: 'text', find: 'text', expression: 'expression' } },
  called: { fields: { kind: 'text', name: 'text', expression: 'expression', quantity: shown, meaning: 'text' } },
  substitute: { fields: { kind: 'text', find: 'text', expression: 'expression', values: { each: shown } } },
  reduce: { fields: { kind: 'text', find: 'text', operator: { words: ['+', '-'] }, terms: [shown] } },
  result: { fields: { kind: 'text', find: 'text', unrounded: shown, quantity: shown, rule: 'text' } },
} as const

/** What a worked solution holds. */
export const solutionShape: Shape = {
  fields: {
    card: 'text',
    title: 'text',
    find: 'text',
    value: 'number',
    answer: shown,
    symbols: { each: symbol },
    steps: [{ kinds: steps }],
    conditions: ['text'],
    sources: ['text'],
    'citations?': [citedShape],
    cautions: ['text'],
    'commonErrors?': [{ fields: { slip, text: 'text', value: 'number', answer: shown } }],
  },
}
