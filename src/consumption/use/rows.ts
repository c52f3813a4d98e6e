import { LitrebarError } from '../../errors/index.ts'

/** Refuses rows that there are not, and columns that are too short for them: once per call, never per row. */
export function requireRows(
  from: number,
  to: number,
  columns: Readonly<Record<string, { readonly length: number }>>,
): void {
  for (const [argument, row] of [
    ['from', from],
    ['to', to],
  ] as const) {
    if (!(Number.isSafeInteger(row) && row >= 0)) throw noRow(argument, String(row), 'a whole number, 0 or more')
  }
  if (from > to) throw noRow('from', String(from), `at most ${to}, the row after the last`)
  for (const [name, { length }] of Object.entries(columns)) {
    if (length < to) throw noRow(name, `${length} rows`, `at least ${to} rows`)
  }
}

function noRow(argument: string, value: string, expected: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value,
    expected,
    hint: 'Rows are counted from 0, and every column has one value for each.',
  })
}
