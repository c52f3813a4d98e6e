// Numbers of text against the language's own reader and writer, for any double and any decimal.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { TextBytes } from '../../src/batch/formats/text-bytes.ts'
import { FieldColumn } from '../../src/batch/rows/field-column.ts'

const text = new TextBytes()
const exact = (value: number): string => {
  text.exact(value)
  return Buffer.from(text.take()).toString()
}
const rounded = (value: number, figures: number): string => {
  text.number(value, figures)
  return Buffer.from(text.take()).toString()
}
const finite = fc.double({ noNaN: true, noDefaultInfinity: true })
const everyday = fc.tuple(fc.integer(), fc.integer({ min: 0, max: 9 })).map(([digits, places]) => digits / 10 ** places)

test('exact text reads back as the same number', () => {
  fc.assert(
    fc.property(fc.oneof(finite, everyday), (value) => {
      expect(Number(exact(value))).toBe(value === 0 ? 0 : value)
      expect(exact(value)).toBe(String(value))
    }),
    { numRuns: 3000 },
  )
})

test('rounded text is the number to so many figures', () => {
  fc.assert(
    fc.property(fc.oneof(finite, everyday), fc.integer({ min: 1, max: 15 }), (value, figures) => {
      const wanted = Number(value.toPrecision(figures))
      const found = Number(rounded(value, figures))
      // where the rest is a half within the last bit of a double, either neighbour is right
      const isNear = Math.abs(found - value) <= Math.abs(wanted - value) + 4 * Number.EPSILON * Math.abs(value)
      expect(isNear).toBe(true)
      expect(found === 0 ? 0 : Number(found.toPrecision(figures))).toBe(found === 0 ? 0 : found)
    }),
    { numRuns: 3000 },
  )
})

test.each([
  [0, 10, '0'],
  [-0, 10, '0'],
  [1 / 3, 10, '0.3333333333'],
  [2 / 3, 4, '0.6667'],
  [-1234.56789, 6, '-1234.57'],
  [999_999.9, 3, '1000000'],
  [99.99, 3, '100'],
  [0.000_001_25, 10, '0.00000125'],
  [1.25e-7, 10, '1.25e-7'],
  [1e15, 10, '1000000000000000'],
  [0.1 + 0.2, 17, '0.30000000000000004'],
])('%d to %i figures is %s', (value, figures, wanted) => {
  expect(rounded(value, figures)).toBe(wanted)
})

test('a field is read as Number reads it, an empty one as NaN', () => {
  const decimal = fc
    .tuple(
      fc.constantFrom('', '-', '+'),
      fc.stringMatching(/^\d{0,18}$/),
      fc.constantFrom('', '.'),
      fc.stringMatching(/^\d{0,6}$/),
    )
    .map((parts) => parts.join(''))
  const field = fc.oneof(
    decimal,
    finite.map(String),
    fc.constantFrom('', ' ', '1e3', '12 bar', '--1', '1.2.3', '-', '.', ' 7 '),
  )
  fc.assert(
    fc.property(fc.array(field, { minLength: 1, maxLength: 8 }), (fields) => {
      const bytes = Buffer.from(fields.join(','))
      const ends = fields.map((_, place) => fields.slice(0, place + 1).join(',').length)
      const starts = fields.map((each, place) => (ends[place] ?? 0) - each.length)
      const column = new FieldColumn(bytes, Int32Array.from(starts), Int32Array.from(ends))
      fields.forEach((each, row) => {
        expect(column.text(row)).toBe(each)
        expect(column.number(row)).toBe(each === '' ? Number.NaN : Number(each))
      })
    }),
    { numRuns: 2000 },
  )
})

test('equal words have one place, and each row of words that are none is asked for', () => {
  const words = ['air', 'ean32', 'air', '', 'ean32', '']
  const bytes = Buffer.from(words.join(''))
  const ends = words.map((_, place) => words.slice(0, place + 1).join('').length)
  const starts = words.map((word, place) => (ends[place] ?? 0) - word.length)
  const asked: number[] = []
  const known = new Map([
    ['air', 0],
    ['ean32', 1],
  ])
  const places = new FieldColumn(bytes, Int32Array.from(starts), Int32Array.from(ends)).places((word, row) => {
    asked.push(row)
    return known.get(word) ?? -1
  })
  expect([...places]).toEqual([0, 1, 0, -1, 1, -1])
  expect(asked).toEqual([0, 1, 3, 5])
})
