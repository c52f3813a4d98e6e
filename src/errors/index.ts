export {
  type AcceptedNumbers,
  type ErrorCode,
  type ErrorFacts,
  isLitrebarError,
  LitrebarError,
  type TextPosition,
} from './litrebar-error.ts'
export { nearestOf, requireKeys, requireWord } from './require-known.ts'
export { type ColumnGroup, faultOfRow, requireRows } from './require-rows.ts'
export { type RowCodeName, rowCodes } from './row-code.ts'
export { shown } from './shown.ts'
