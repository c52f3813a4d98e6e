export {
  type AcceptedNumbers,
  type ErrorCode,
  type ErrorFacts,
  inputError,
  isLitrebarError,
  LitrebarError,
  type TextPosition,
} from './litrebar-error.ts'
export { requireList, requireText } from './require-kind.ts'
export { nearestOf, requireKeys, requireWord } from './require-known.ts'
export { type ColumnGroup, faultOfRow, requireRows } from './require-rows.ts'
export { type RowCodeName, rowCodes } from './row-code.ts'
export { shown } from './shown.ts'
