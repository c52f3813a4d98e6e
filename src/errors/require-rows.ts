import { LitrebarError } from './litrebar-error.ts'
import { rowCodes } from './row-code.ts'
import { shown } from './shown.ts'

/** Columns as handed in, and the names that the function reads or writes in them. */
export type ColumnGroup = readonly [given: unknown, names: readonly string[]]

/**
 * Checks the columns and the rows of a function named `…Into`, once per call: a short column would lose rows in silence,
 * and a bad `from` or `to` might never end.
 *
 * @param columns - what is read, all of one length
 * @param out - what is written, long enough for the rows asked for
 * @param from - first row
 * @param to - row after the last; undefined for all rows
 * @returns the row after the last
 * @throws LitrebarError `input` for a column that is missing, is none or is too short; `range` unless `from` and `to` are
 *   whole numbers with 0 ≤ from ≤ to ≤ number of rows
 */
export function requireRows(columns: ColumnGroup, out: ColumnGroup, from: number, to: number | undefined): number {
  const rows = requireColumns('columns', columns, undefined)
  const end = to === undefined ? rows : to
  if (!(Number.isInteger(from) && Number.isInteger(end) && from >= 0 && from <= end && end <= rows)) {
    throw new LitrebarError({
      code: 'range',
      argument: 'rows',
      value: `from ${shown(from)} to ${shown(end)}`,
      expected: `whole numbers with 0 ≤ from ≤ to ≤ ${String(rows)}`,
      hint: 'Count rows from 0; `to` is the row after the last.',
    })
  }
  requireColumns('out', out, end)
  return end
}

/** Refuses what is not a column, or is too short. Without a length the first column sets it, and all have it. */
function requireColumns(argument: string, [given, names]: ColumnGroup, least: number | undefined): number {
  let length = least
  for (const name of names) {
    const column = (given as Record<string, unknown> | null | undefined)?.[name]
    if (!ArrayBuffer.isView(column) || column instanceof DataView) {
      throw refusal(
        `${argument}.${name}`,
        shown(column),
        'a typed array',
        'Pass a Float64Array; codes are a Uint8Array.',
      )
    }
    const { length: own } = column as Float64Array
    length ??= own
    if (least === undefined ? own !== length : own < length) {
      const expected = `${least === undefined ? '' : 'at least '}${String(length)} rows`
      throw refusal(`${argument}.${name}`, `${String(own)} rows long`, expected, 'Give every column the same length.')
    }
  }
  return length ?? 0
}

/**
 * The code of a row that failed a check.
 *
 * @param otherwise - the code where the values are finite
 * @param values - the values of the row
 * @returns `missing` where one is NaN, `outOfRange` where one is infinite, else `otherwise`
 */
export function faultOfRow(otherwise: number, ...values: readonly number[]): number {
  if (values.some(Number.isNaN)) return rowCodes.missing
  return values.every(Number.isFinite) ? otherwise : rowCodes.outOfRange
}

function refusal(argument: string, value: string, expected: string, hint: string): LitrebarError {
  return new LitrebarError({ code: 'input', argument, value, expected, hint })
}
