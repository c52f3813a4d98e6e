import type { Chart } from './chart-kinds.ts'
import type { Shape } from './require-shape.ts'

/** How numbers are written. */
export const numberStyleFields = {
  'decimal?': { words: ['point', 'comma'] },
  'grouping?': { words: ['thin space', 'none'] },
} as const

/** How numbers are written, and nothing else. */
export const numberStyleShape = { fields: numberStyleFields } as const

/** A source: its id, or the id with a place. */
export const citedShape = { textOr: { fields: { id: 'text', place: 'text' } } } as const

/** Limits drawn across a chart. */
export const limitsShape = [{ fields: { value: 'number', label: 'text' } }] as const

const axis = { label: 'text', unit: 'text', 'from?': 'number', 'to?': 'number' } as const
const series = { fields: { name: 'text', x: ['number'], y: ['number'], 'closed?': 'truth' } } as const
const head = {
  'kind?': 'text',
  id: 'id',
  title: 'text',
  description: 'text',
  'cautions?': ['text'],
  'sources?': [citedShape],
} as const

/** What each kind of chart holds. */
export const chartShapes: Readonly<Record<NonNullable<Chart['kind']>, Shape>> = {
  lines: {
    fields: {
      ...head,
      x: { fields: axis },
      y: { fields: axis },
      series: [series],
      'limits?': limitsShape,
      'note?': { fields: { x: 'number', y: 'number', text: 'text' } },
    },
  },
  bars: {
    fields: {
      ...head,
      y: { fields: axis },
      bars: [{ fields: { name: 'text', parts: [{ fields: { name: 'text', value: 'number' } }] } }],
      'limits?': limitsShape,
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
      'limits?': limitsShape,
    },
  },
  'pressure steps': {
    fields: { ...head, unit: 'text', places: [{ fields: { name: 'text', pressure: 'number' } }] },
  },
}

/** A chart of any kind. */
export const chartShape = { kinds: chartShapes, usual: 'lines' } as const

const column = { fields: { heading: 'text', 'unit?': 'text', align: { words: ['number', 'text'] } } } as const

/** What a table holds. */
export const tableShape: Shape = {
  fields: {
    caption: 'text',
    columns: [column],
    rows: [['text']],
    notes: ['text'],
    'cautions?': ['text'],
    'sources?': [citedShape],
    'exact?': [['number']], // of a table in two units
  },
}

/** What a source of the author’s own holds. */
export const ownSourceShape: Shape = {
  fields: { title: 'text', edition: 'text', 'scheme?': 'text', publisher: 'text', kind: 'text' },
}

/** What a caution of the author’s own holds. */
export const ownCautionShape: Shape = { fields: { text: 'text', 'appliesTo?': 'text', 'source?': 'text' } }
