export { type DueRow, dueWithin, type RegisterRow } from './due-within.ts'
export {
  nextRequalification,
  type Requalification,
  type RequalificationHistory,
  type RequalificationOptions,
  requalifications,
} from './next-requalification.ts'
export { type PlusMark, type PlusMarkOptions, plusMark } from './plus-mark.ts'
export { type RequalificationNote, requalificationNotes } from './requalification-note.table.ts'
export {
  type CylinderService,
  type InspectionKind,
  type RequalificationRule,
  type RuleSetId,
  requalificationRules,
} from './requalification-rule.table.ts'
export { type PermitTerms, type TestPressure, testPressure } from './test-pressure.ts'
