export {
  type AcceptedNumbers,
  type ErrorCode,
  type ErrorFacts,
  isLitrebarError,
  LitrebarError,
  type TextPosition,
} from './litrebar-error.ts'
