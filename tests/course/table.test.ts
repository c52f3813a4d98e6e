import { expect, test } from 'vitest'
import {
  bibtex,
  citation,
  dualUnitTable,
  sortedSources,
  tableCsv,
  tableMarkdown,
  tableText,
} from '../../src/course/index.ts'
import { cautions, type SourceId, sources } from '../../src/references/index.ts'
import { bar, celsius, fahrenheit, foot, litre, metre, psi } from '../../src/units/index.ts'

const table = dualUnitTable({
  caption: 'Absolute pressure at a depth of sea water',
  argument: {
    heading: 'Depth',
    values: [0, 3, 6, 9, 12],
    primary: { unit: metre, rounding: { decimals: 0 } },
    second: { unit: foot, rounding: { decimals: 0 } },
  },
  columns: [
    {
      heading: 'Pressure',
      of: (depth) => 101_325 + 1025 * 9.80665 * depth,
      primary: { unit: bar, rounding: { decimals: 2, toward: 'up' } },
      second: { unit: psi, rounding: { decimals: 1, toward: 'up' } },
    },
  ],
  notes: ['Standard gravity, 1025 kg/m³.'],
})

test('every printed cell lies within one step of the exact value, on the stated side', () => {
  const steps = [1, 1, 0.01, 0.1]
  const up = [false, false, true, true]
  table.rows.forEach((row, at) => {
    row.forEach((cell, column) => {
      const off = Number(cell) - (table.exact[at]?.[column] ?? Number.NaN)
      const step = steps[column] ?? Number.NaN
      if (up[column]) expect(off).toBeGreaterThanOrEqual(-1e-12)
      expect(Math.abs(off)).toBeLessThanOrEqual(up[column] ? step : step / 2)
    })
  })
})

test('the second unit is converted from the unrounded value, not from the printed cell', () => {
  // 9 m = 29.53 ft; 1.92 bar printed, exactly 1.91797 bar = 27.8178 psi, rounded up once: 27.9
  expect(table.rows[3]).toEqual(['9', '30', '1.92', '27.9'])
})

test('notes state the rule of each column', () => {
  expect(table.notes).toEqual([
    'Computed in the first unit of each pair; every cell is rounded once, from the unrounded value: m, ft rounded to a whole number, ties to even; bar rounded up to 2 decimals; psi rounded up to 1 decimal.',
    'Standard gravity, 1025 kg/m³.',
  ])
})

test('is written with decimal comma and minus where the reader wants them, and never changes its numbers', () => {
  const cold = dualUnitTable(
    {
      caption: 'Frost points',
      argument: {
        heading: 'Frost point',
        values: [-45.6],
        primary: { unit: celsius, rounding: { decimals: 1 } },
        second: { unit: fahrenheit, rounding: { decimals: 1 } },
      },
      columns: [],
    },
    { decimal: 'comma' },
  )
  expect(cold.rows).toEqual([['−45,6', '−50,1']])
  expect(cold.exact[0]?.[1]).toBeCloseTo(-50.08, 9)
})

test('a pair of columns in unlike dimensions is refused', () => {
  expect(() =>
    dualUnitTable({
      caption: '',
      argument: {
        heading: 'Depth',
        values: [1],
        primary: { unit: metre, rounding: { decimals: 0 } },
        second: { unit: litre, rounding: { decimals: 0 } },
      },
      columns: [],
    }),
  ).toThrow(expect.objectContaining({ code: 'input', argument: 'column "Depth"' }))
})

test('Markdown escapes pipes; CSV follows RFC 4180', () => {
  const small = {
    caption: 'c',
    columns: [
      { heading: 'a|b', align: 'text' },
      { heading: 'p', unit: 'bar', align: 'number' },
    ],
    rows: [['x "y", z', '1']],
    notes: [],
  } as const
  expect(tableMarkdown(small)).toContain('| a\\|b | p, bar |')
  expect(tableCsv(small)).toBe('a|b,"p, bar"\r\n"x ""y"", z",1\r\n')
})

test('a table that carries cautions prints them as text and as CSV, and refuses one that is not known', () => {
  const plain = { caption: 'c', columns: [{ heading: 'a', align: 'text' }], rows: [['x']], notes: [] } as const
  const table = { ...plain, cautions: ['fill-limit', 'own-yard'] } as const
  const text = cautions['fill-limit'].text
  expect(tableText(table).replaceAll(/\s+/g, ' ')).toBe(`c a - x Caution: ${text} Caution: own-yard`)
  const quoted = /[",]/.test(text) ? `"Caution: ${text}"` : `Caution: ${text}`
  expect(tableCsv(table)).toBe(`${quoted}\r\nCaution: own-yard\r\na\r\nx\r\n`)
  const wrong = { ...plain, cautions: ['constructor'] } as never
  for (const write of [tableText, tableCsv])
    expect(() => write(wrong)).toThrow(expect.objectContaining({ code: 'input' }))
})

test('every source can be cited as text and as a BibTeX entry with balanced braces', () => {
  for (const id of Object.keys(sources) as SourceId[]) {
    expect(citation(id), id).toMatch(/\.$/)
    const entry = bibtex(id)
    expect(entry, id).toMatch(new RegExp(`^@[a-z]+\\{${id.replaceAll('.', '\\.')},\\n`))
    expect(entry.split('{').length, id).toBe(entry.split('}').length)
  }
  expect(citation('gum-2008', 'annex H.1')).toBe(
    'JCGM 100, Guide to the expression of uncertainty in measurement, 2008, annex H.1. BIPM.',
  )
  expect(sortedSources(['nist-sp-811', 'gerg-2008', 'nist-sp-811'])).toEqual(['gerg-2008', 'nist-sp-811'])
})
