import type { Chart } from './chart-kinds.ts'
import type { Shape } from './require-shape.ts'

const axis = { label: 'text', unit: 'text', 'from?': 'number', 'to?': 'number' } as const
const series = { fields: { name: 'text', x: ['number'], y: ['number'], 'closed?': 'truth' } } as const
const limits = [{ fields: { value: 'number', label: 'text' } }] as const
const head = {
  'kind?': 'text',
  id: 'any',
  title: 'text',
  description: 'text',
  'cautions?': ['text'],
  'sources?': ['any'],
} as const

/** What each kind of chart holds. */
export const chartShapes: Readonly<Record<NonNullable<Chart['kind']>, Shape>> = {
  lines: {
    fields: {
      ...head,
      x: { fields: axis },
      y: { fields: axis },
      series: [series],
      'limits?': limits,
      'note?': { fields: { x: 'number', y: 'number', text: 'text' } },
    },
  },
  bars: {
    fields: {
      ...head,
      y: { fields: axis },
      bars: [{ fields: { name: 'text', parts: [{ fields: { name: 'text', value: 'number' } }] } }],
      'limits?': limits,
    },
  },
  'heat map': {
    fields: {
      ...head,
      x: { fields: { ...axis, values: ['number'] } },
      y: { fields: { ...axis, values: ['number'] } },
      z: { fields: { label: 'text', unit: 'text' } },
      cells: [['number']],
      'contours?': ['number'],
    },
  },
  points: {
    fields: {
      ...head,
      x: { fields: axis },
      y: { fields: axis },
      points: [{ fields: { x: 'number', y: 'number', 'low?': 'number', 'high?': 'number' } }],
      'line?': series,
      'limits?': limits,
    },
  },
  'pressure steps': {
    fields: { ...head, unit: 'text', places: [{ fields: { name: 'text', pressure: 'number' } }] },
  },
}

/** What a table holds. */
export const tableShape: Shape = {
  fields: {
    caption: 'text',
    columns: [{ fields: { heading: 'text', 'unit?': 'text', align: { words: ['number', 'text'] } } }],
    rows: [['text']],
    notes: ['text'],
    'cautions?': ['text'],
    'sources?': ['any'],
    'exact?': ['any'], // of a table in two units
  },
}

/** What a source of the author’s own holds. */
export const ownSourceShape: Shape = {
  fields: { title: 'text', edition: 'text', 'scheme?': 'text', publisher: 'text', kind: 'text' },
}

/** What a caution of the author’s own holds. */
export const ownCautionShape: Shape = { fields: { text: 'text', 'appliesTo?': 'text', 'source?': 'text' } }
