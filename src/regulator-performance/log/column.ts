import { inputError, LitrebarError, requireKeys, shown } from '../../errors/index.ts'
import { isUnit } from '../../units/check-unit.ts'
import type { Dimension, Unit } from '../../units/index.ts'

/** A column of a log: plain numbers in SI, in the order in which they were taken. */
export type LogColumn = readonly number[] | Float64Array

/** A column as it stands in a log, with the unit that its heading names. */
export interface LoggedColumn<D extends Dimension = Dimension> {
  readonly values: LogColumn
  readonly unit: Unit<D>
}

/**
 * A column of a log in SI. Missing values stay missing: NaN in, NaN out, for the analysis to find.
 *
 * @param column - the numbers as logged, and their unit
 * @returns the numbers in SI, in a new array
 * @source common-practice
 * @example
 * siColumn({ values: [0, 2.5], unit: litre })[1] // => 0.0025
 */
export function siColumn(column: LoggedColumn): Float64Array {
  requireKeys('column', column, { values: true, unit: true })
  const { values, unit } = column
  requireColumn('column.values', values)
  if (!isUnit(unit)) throw inputError('column.unit', shown(unit), 'a unit', 'Pass the unit row itself, such as bar.')
  const { factor, offset = 0 } = unit
  // a missing value stays NaN: the analysis leaves out the breaths that it touches
  return Float64Array.from(values, (value, row) => {
    if (typeof value !== 'number') throw notFinite(`column.values[${row}]`, value)
    return value * factor + offset
  })
}

/** Refuses what is not a column of numbers. */
export function requireColumn(argument: string, column: unknown): void {
  if (Array.isArray(column) || column instanceof Float64Array) return
  throw inputError(argument, shown(column), 'a list of numbers or a Float64Array', 'Pass one value for each row.')
}

/** Refuses what is not a column of numbers; NaN, for a missing value, is one. */
export function requireNumbers(argument: string, column: unknown): void {
  requireColumn(argument, column)
  if (!Array.isArray(column)) return
  const other = column.findIndex((value) => typeof value !== 'number')
  if (other >= 0) throw notFinite(`${argument}[${other}]`, column[other] as number)
}

/** Refuses columns of different lengths, and any value that is not finite. */
export function requireColumns(columns: Readonly<Record<string, LogColumn>>, path: string): void {
  for (const [name, column] of Object.entries(columns)) requireColumn(`${path}.${name}`, column)
  requireEqualLength(columns, path)
  for (const [name, column] of Object.entries(columns)) {
    for (let row = 0; row < column.length; row++) {
      const value = column[row] as number
      if (!(typeof value === 'number' && Math.abs(value) < 1e150)) throw notFinite(`${path}.${name}[${row}]`, value)
    }
  }
}

export function requireEqualLength(columns: Readonly<Record<string, LogColumn>>, path: string): void {
  const lengths = Object.entries(columns).map(([name, column]) => `${name} ${column.length}`)
  const [first, ...others] = Object.values(columns)
  if (others.some((column) => column.length !== first?.length)) {
    throw inputError(
      path,
      lengths.join(', '),
      'columns of one length',
      'Take all columns from the same rows of the log.',
    )
  }
}

function notFinite(argument: string, value: number): LitrebarError {
  return new LitrebarError({
    code: typeof value === 'number' ? 'range' : 'input',
    argument,
    value: shown(value),
    expected: 'a finite number',
    hint: 'Leave out the rows with missing values, or give the whole log to `breathingAnalysis`, which leaves out the breaths they touch.',
  })
}
