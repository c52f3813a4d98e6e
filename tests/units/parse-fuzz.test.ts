import { array, assert, constantFrom, nat, oneof, property, string, tuple } from 'fast-check'
import { expect, test } from 'vitest'
import type { LitrebarError } from '../../src/errors/index.ts'
import { allUnits, type Dimension, type ParsedKind, parseQuantity } from '../../src/units/index.ts'

const kinds = [
  'gauge pressure',
  'absolute pressure',
  'pressure difference',
  'temperature',
  'temperature difference',
  'internal volume',
  'gas volume',
  'displaced volume',
  'depth',
  'altitude',
  'mole fraction',
  'volume flow',
  'duration',
  'mass',
  'energy',
] as const satisfies readonly ParsedKind[]

// Pieces that come close to being read: most random texts fail at their first character and prove little.
const pieces = constantFrom(
  ...['0', '7', '232', '3,000', '1.5', '1 000', '.', ',', "'", '’', '\u202f', ' ', '\n', '\t', '+', '-', '−'],
  ...['e', 'E+400', 'e-9', '×10^', 'x10', 'NaN', 'Infinity', '0x1F', '½', '٣', '(g)', '(a)', 'g', 'abs', 'gauge', '%'],
  ...['\u0000', '\ud800', '😀', '__proto__', 'constructor', 'toString', ...allUnits.map(({ symbol }) => symbol)],
)
const number = constantFrom(
  '0',
  '7',
  '232',
  '-3',
  '−0,5',
  '1.5',
  '1 000',
  '3,000',
  '1.234,5',
  '.5',
  '2e400',
  '1e-330',
  '2×10^7',
)
const unit = constantFrom(...allUnits.map(({ symbol }) => symbol))
const nastyText = oneof(
  tuple(
    number,
    constantFrom('', ' ', '\u202f', '\t\t'),
    unit,
    constantFrom('', '', 'g', ' abs', '(a)', ' gauge', '\n', '?'),
  ).map((parts) => parts.join('')),
  array(pieces, { maxLength: 8 }).map((parts) => parts.join('')),
  string({ unit: 'binary', maxLength: 40 }),
)

test('20 000 nasty texts are read as a finite number or refused by an error of the library, pointing within the text', () => {
  let read = 0
  assert(
    property(nastyText, constantFrom(...kinds), constantFrom(undefined, 'point', 'comma'), (text, kind, decimal) => {
      try {
        const value = parseQuantity(text, kind, decimal === undefined ? {} : { decimal })
        expect(value).toSatisfy(Number.isFinite)
        read += 1
      } catch (error) {
        expect(error).toMatchObject({ name: 'LitrebarError', code: expect.stringMatching(/^(unit|range)$/) as string })
        const { position } = error as { readonly position?: { readonly start: number; readonly end: number } }
        if (position === undefined) return
        expect(position.start).toBeGreaterThanOrEqual(0)
        expect(position.end).toBeGreaterThanOrEqual(position.start)
        expect(position.end).toBeLessThanOrEqual(text.length)
      }
    }),
    { numRuns: 20_000, seed: 20 },
  )
  expect(read).toBeGreaterThan(100) // some are good, or nothing is proven of reading
}, 60_000)

// No stopwatch: backtracking over pairs of 100 000 characters takes minutes, and ends at the limit of the test.
test.each([
  ['digits', '1'.repeat(100_000)],
  ['digits and spaces', '1 '.repeat(50_000)],
  ['spaces before', `${' '.repeat(100_000)}bar`],
  ['spaces between', `1${' '.repeat(100_000)}bar`],
  ['spaces and no unit', `1${' '.repeat(100_000)}`],
  ['groups', `1${',000'.repeat(25_000)} bar?`],
  ['points', `1${'.'.repeat(100_000)}`],
  ['middle dots', `1 kgf${' ·'.repeat(50_000)}m`],
  ['signs', '-'.repeat(100_000)],
  ['lines', '\n'.repeat(100_000)],
] as const)('a very long text of %s ends soon', (_, text) => {
  try {
    expect(parseQuantity(text, 'gauge pressure')).toSatisfy(Number.isFinite)
  } catch (error) {
    expect(error).toMatchObject({ name: 'LitrebarError' })
  }
})

/** What comes of a text: the number, or the error with the place counted from the first character that is not a space. */
function outcome(text: string, kind: ParsedKind, options: object): string {
  const shift = text.length - text.trimStart().length
  try {
    return String(parseQuantity(text, kind, options))
  } catch (thrown) {
    const { code, expected, hint, position } = thrown as LitrebarError
    return [code, expected, hint, Number(position?.start) - shift, Number(position?.end) - shift].join('|')
  }
}

test('12 000 texts are read alike by the short way and, behind a space, by the long way', () => {
  const kindOf: Partial<Record<Dimension, readonly ParsedKind[]>> = {
    pressure: ['gauge pressure', 'absolute pressure', 'pressure difference'],
    temperature: ['temperature', 'temperature difference'],
    volume: ['internal volume', 'gas volume', 'displaced volume'],
    length: ['depth', 'altitude', 'length'],
    fraction: ['mole fraction', 'mass fraction'],
  }
  const plainNumber = oneof(
    number,
    nat({ max: 30_000 }).map(String),
    constantFrom('12.5', '-40', '007', '0.0', '1.200', '12e', '5 e3'),
  )
  const written = constantFrom(
    ...allUnits.flatMap((known) => [known.symbol, ...(known.spellings ?? [])].map((text) => ({ text, known }))),
  )
  let read = 0
  assert(
    property(
      plainNumber,
      constantFrom('', ' ', '  '),
      written,
      constantFrom('', '', '', '', 'g', 'a', '(g)', ' abs', ' gauge', '?', ' '),
      nat(),
      constantFrom({}, {}, { decimal: 'point' }, { decimal: 'comma' }),
      (digits, space, { text, known }, mark, place, options) => {
        const kinds = kindOf[known.quantity] ?? [known.quantity as ParsedKind]
        const kind = kinds[place % kinds.length] as ParsedKind
        const whole = digits + space + text + mark
        const short = outcome(whole, kind, options)
        expect(short).toBe(outcome(` ${whole}`, kind, options))
        if (!short.includes('|')) read++
      },
    ),
    { numRuns: 12_000, seed: 7 },
  )
  expect(read).toBeGreaterThan(4500)
}, 120_000)
