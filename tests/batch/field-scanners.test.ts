// Fields that are found in bytes, against the well-kept parsers, for any rows.
import fc from 'fast-check'
import Papa from 'papaparse'
import { expect, test } from 'vitest'
import { FieldScanner } from '../../src/batch/formats/field-scanner.ts'
import { JsonScanner } from '../../src/batch/formats/json-scanner.ts'
import { linesOf, textPieces } from '../../src/batch/formats/lines.ts'
import { DictionaryColumn } from '../../src/batch/rows/dictionary-column.ts'

const slices = (bytes: Buffer, starts: Int32Array, ends: Int32Array): string[] =>
  Array.from(starts, (start, row) => bytes.toString('utf8', start, ends[row]))

const plainField = fc.string({ unit: fc.constantFrom('a', '1', '.', ' ', 'é', '-'), maxLength: 4 })
const table = fc.array(fc.array(plainField, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 12 })

test('lines and fields of CSV without quotes stand where the parser finds them', () => {
  const scanner = new FieldScanner(3, 44)
  fc.assert(
    fc.property(table, fc.constantFrom('\n', '\r\n'), fc.boolean(), (rows, newline, isEnded) => {
      const text = rows.map((fields) => fields.join(',')).join(newline) + (isEnded ? newline : '')
      // an empty last line that nothing ends is no row
      fc.pre(isEnded || !text.endsWith(newline))
      const bytes = Buffer.from(text)
      const { data } = Papa.parse<string[]>(text, { delimiter: ',', newline })
      if (isEnded) data.pop()
      fc.pre(bytes.length > 0)
      const found = scanner.scan(bytes, 0)
      expect(slices(bytes, found.starts, found.ends)).toEqual(data.map((fields) => fields.join(',')))
      for (const place of [0, 1, 2]) {
        const column = slices(bytes, found.fieldStarts[place] as Int32Array, found.fieldEnds[place] as Int32Array)
        expect(column).toEqual(data.map((fields) => fields[place] ?? ''))
      }
      expect([...found.faults]).toEqual(data.flatMap(({ length }, row) => (length === 3 ? [] : [[row, length]])))
    }),
    { numRuns: 2000 },
  )
})

test('more rows than there was room for lose nothing', () => {
  const count = 100_000
  const bytes = Buffer.from(Array.from({ length: count }, (_, row) => `${row},x\n`).join(''))
  const found = new FieldScanner(2, 44).scan(bytes, 0)
  expect(slices(bytes, found.fieldStarts[0] as Int32Array, found.fieldEnds[0] as Int32Array)).toEqual(
    Array.from({ length: count }, (_, row) => String(row)),
  )
  expect(linesOf(bytes, 0).starts).toHaveLength(count)
})

const cut = async (text: Buffer, from: number, chunk: number, isQuoted: boolean) => {
  async function* arriving() {
    for (let at = from; at < text.length; at += chunk) yield await Promise.resolve(text.subarray(at, at + chunk))
  }
  const pieces: { text: string; next: number }[] = []
  for await (const { bytes, next } of textPieces(arriving(), { from, isQuoted, size: 16 }))
    pieces.push({ text: bytes.toString(), next })
  return pieces
}

test('a text that is entered at the end of any piece is cut like one that was read from its start, however its bytes arrive', async () => {
  const line = fc.oneof(
    fc.string({ unit: fc.constantFrom('a', ',', '1'), maxLength: 40 }),
    fc.constantFrom('"a\nb",1', '"""\n"', '"long, and\nlonger, and\nlonger still"'),
  )
  await fc.assert(
    fc.asyncProperty(
      fc.array(line, { minLength: 1, maxLength: 20 }),
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: 1, max: 60 }),
      fc.boolean(),
      async (lines, chunk, other, isQuoted) => {
        const text = Buffer.from(`${lines.join('\n')}\n`)
        const whole = await cut(text, 0, chunk, isQuoted)
        expect(whole.map((piece) => piece.text).join('')).toBe(text.toString())
        for (const [place, { next, text: piece }] of whole.entries()) {
          expect(await cut(text, next, other, isQuoted)).toEqual(whole.slice(place + 1))
          if (isQuoted) expect((piece.match(/"/g) ?? []).length % 2).toBe(0)
          expect(piece.endsWith('\n')).toBe(true)
        }
      },
    ),
    { numRuns: 400 },
  )
})

const names = ['p', 'T', 'gas']
const value = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.integer(),
  fc.constantFrom(null, true, false, '', 'air', 'nitrox 32', '18/45', 'é'),
)
const object = fc.dictionary(fc.constantFrom('p', 'T', 'gas', 'id', 'é', '__proto__'), value, { noNullPrototype: true })

/** What stands in a field, as the reader of parsed objects gives it. */
const fieldOf = (given: Record<string, unknown>, name: string): string => {
  const found = Object.hasOwn(given, name) ? given[name] : ''
  if (found === null) return ''
  return typeof found === 'string' || typeof found === 'number' ? String(found) : JSON.stringify(found)
}

test('fields of flat JSON objects are those of the objects', () => {
  const scanner = new JsonScanner(names)
  fc.assert(
    fc.property(fc.array(object, { minLength: 1, maxLength: 6 }), fc.constantFrom(undefined, 1), (objects, blanks) => {
      const lines = objects.map((each) => JSON.stringify(each, undefined, blanks).replaceAll('\n', ' '))
      const bytes = Buffer.from(lines.join('\n'))
      const found = scanner.scan(bytes, linesOf(bytes, 0))
      const parsed = lines.map((line) => JSON.parse(line) as Record<string, unknown>)
      names.forEach((name, place) => {
        const column = slices(bytes, found?.fieldStarts[place] as Int32Array, found?.fieldEnds[place] as Int32Array)
        const wanted = parsed.map((each) => fieldOf(each, name))
        // a number stands as it was written
        column.forEach((field, row) => {
          expect(field === wanted[row] || Number(field) === Number(wanted[row])).toBe(true)
        })
      })
    }),
    { numRuns: 2000 },
  )
})

test.each([
  ['{"p":1,"p":2}', '2'],
  [' { "p" : 1.5e-3 , "x" : -0 } ', '1.5e-3'],
  ['{}', ''],
])('%s has the field %j', (line, wanted) => {
  const bytes = Buffer.from(line)
  const found = new JsonScanner(['p']).scan(bytes, linesOf(bytes, 0))
  expect(slices(bytes, found?.fieldStarts[0] as Int32Array, found?.fieldEnds[0] as Int32Array)).toEqual([wanted])
})

test('a line with one character put in, taken out or changed is taken only where it is still a flat object', () => {
  const scanner = new JsonScanner(names)
  const characters = Array.from('{}[]",:.-+eE01 \\\tpTtrufalsn\u0001')
  const edit = fc.record({ at: fc.nat(60), take: fc.nat(1), put: fc.constantFrom('', ...characters) })
  fc.assert(
    fc.property(object, edit, (given, { at, take, put }) => {
      const line = JSON.stringify(given)
      const place = at % (line.length + 1)
      const edited = line.slice(0, place) + put + line.slice(place + take)
      const bytes = Buffer.from(edited)
      fc.pre(bytes.length > 0)
      const found = scanner.scan(bytes, linesOf(bytes, 0))
      let parsed: unknown
      try {
        parsed = JSON.parse(edited)
      } catch {
        parsed = undefined
      }
      if (found === undefined) return
      // it may leave sound JSON to the parser, and never takes what is none
      expect(parsed).toBeTypeOf('object')
      expect(Array.isArray(parsed)).toBe(false)
      names.forEach((name, column) => {
        const [field = ''] = slices(
          bytes,
          found.fieldStarts[column] as Int32Array,
          found.fieldEnds[column] as Int32Array,
        )
        const wanted = fieldOf(parsed as Record<string, unknown>, name)
        // a number stands as it was written
        expect(field === wanted || Number(field) === Number(wanted)).toBe(true)
      })
    }),
    { numRuns: 5000 },
  )
})

test('a column of few words is read like any other, and a word without a place is asked for at every row', () => {
  const column = new DictionaryColumn(['air', '12.5', ''], Int32Array.of(0, 1, -1, 2, 0))
  expect(Array.from({ length: 5 }, (_, row) => column.text(row))).toEqual(['air', '12.5', '', '', 'air'])
  expect(column.number(1)).toBe(12.5)
  expect(column.number(0)).toBeNaN()
  expect(column.number(2)).toBeNaN()
  const asked: number[] = []
  const places = column.places((text, row) => {
    asked.push(row)
    return text === '12.5' ? 7 : -1
  })
  expect([...places]).toEqual([-1, 7, -1, -1, -1])
  expect(asked).toEqual([0, 1, 2, 3, 4])
})
