import { expect, test } from 'vitest'
import { faultOfRow, requireRows, rowCodes } from '../../src/errors/index.ts'

const rows = (from: number, to: number | undefined, columns: object, out: object): number =>
  requireRows([columns, ['a', 'b']], [out, ['value', 'code']], from, to)
const column = (length: number): Float64Array => new Float64Array(length)
const columns = { a: column(3), b: column(3) }
const out = { value: column(3), code: new Uint8Array(3) }

test('all rows unless told otherwise, and any part of them', () => {
  expect(rows(0, undefined, columns, out)).toBe(3)
  expect(rows(1, 2, columns, out)).toBe(2)
  expect(rows(3, 3, columns, out)).toBe(3)
  expect(rows(0, undefined, { a: column(0), b: column(0) }, out)).toBe(0)
})

test.each([
  [-1, 3],
  [-Infinity, 3],
  [0, 1e9],
  [0, 4],
  [0.5, 3],
  [Number.NaN, 3],
  [0, Number.NaN],
  [0, null],
  ['0', 3],
  [2, 1],
])('rows from %s to %s are refused', (from, to) => {
  expect(() => rows(from as number, to as number, columns, out)).toThrow(expect.objectContaining({ code: 'range' }))
})

test('a column that is missing, is none, or has another length than the first is refused by name', () => {
  expect(() => rows(0, 3, { a: column(3) }, out)).toThrow('columns.b is missing, expected a typed array.')
  expect(() => rows(0, 3, { a: [1, 2, 3], b: column(3) }, out)).toThrow('columns.a is a list')
  expect(() => rows(0, 2, { a: column(3), b: column(2) }, out)).toThrow('columns.b is 2 rows long, expected 3 rows.')
  expect(() => rows(0, 3, columns, { ...out, code: new Uint8Array(2) })).toThrow('out.code is 2 rows long')
  expect(rows(0, 2, columns, { value: column(2), code: new Uint8Array(2) })).toBe(2)
  for (const slip of [null, undefined, 5, 'columns'])
    expect(() => rows(0, 3, slip as never, out)).toThrow(expect.objectContaining({ code: 'input' }))
})

test('the code of a row tells a missing value from one that is out of range', () => {
  expect(faultOfRow(rowCodes.outsideValidity, 1, Number.NaN)).toBe(rowCodes.missing)
  expect(faultOfRow(rowCodes.outsideValidity, 1, -Infinity)).toBe(rowCodes.outOfRange)
  expect(faultOfRow(rowCodes.outsideValidity, 1, 2)).toBe(rowCodes.outsideValidity)
})
