import { rowCodes } from '../../errors/index.ts'

/** The names of the row codes, by their number. */
export const codeNames = Object.keys(rowCodes)
