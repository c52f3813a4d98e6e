import type { ErrorCode } from './litrebar-error.ts'

/**
 * Why a row of a column calculation has no result: the one table of codes for every function named `…Into`.
 * A bad row keeps its place, its results are NaN, and its code says which of these it was; 0 is a good row.
 */
export const rowCodes = {
  good: 0,
  /** A value of the row is missing: NaN. */
  missing: 1,
  /** A value is infinite, or outside the range that the function accepts. */
  outOfRange: 2,
  /** A value is outside the published range of the equation or the table behind the function. */
  outsideValidity: 3,
  /** The mixture would condense at the state of the row. */
  condensing: 4,
  /** An iteration reached no answer. */
  notConverged: 5,
  /** The values of the row contradict one another, or its text cannot be read. */
  input: 6,
} as const

/** Name of a row code. */
export type RowCodeName = keyof typeof rowCodes

/** The row code of what a function refuses for one row. */
export function rowCodeOf(code: ErrorCode): number {
  if (code === 'not-converged') return rowCodes.notConverged
  if (code === 'outside-validity') return rowCodes.outsideValidity
  return code === 'range' ? rowCodes.outOfRange : rowCodes.input
}
