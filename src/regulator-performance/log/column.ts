import { LitrebarError } from '../../errors/index.ts'
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
  const { values, unit } = column
  const { factor, offset = 0 } = unit
  return Float64Array.from(values, (value) => value * factor + offset)
}

/** Refuses columns of unlike length, and any value that is not finite. */
export function requireColumns(columns: Readonly<Record<string, LogColumn>>, path: string): void {
  requireEqualLength(columns, path)
  for (const [name, column] of Object.entries(columns)) {
    for (let row = 0; row < column.length; row++) {
      const value = column[row] as number
      if (value - value !== 0) throw notFinite(`${path}.${name}[${row}]`, value)
    }
  }
}

export function requireEqualLength(columns: Readonly<Record<string, LogColumn>>, path: string): void {
  const lengths = Object.entries(columns).map(([name, column]) => `${name} ${column.length}`)
  const [first, ...others] = Object.values(columns)
  if (others.some((column) => column.length !== first?.length)) {
    throw new LitrebarError({
      code: 'input',
      argument: path,
      value: lengths.join(', '),
      expected: 'columns of one length',
      hint: 'Take all columns from the same rows of the log.',
    })
  }
}

function notFinite(argument: string, value: number): LitrebarError {
  return new LitrebarError({
    code: 'range',
    argument,
    value: String(value),
    expected: 'a finite number',
    hint: 'Leave out the rows with missing values, or give the whole log to `breathingAnalysis`, which leaves out the breaths they touch.',
  })
}
