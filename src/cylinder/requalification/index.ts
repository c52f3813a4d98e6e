export { type CountryMark, countryMarks } from './country-mark.table.ts'
export type { DueReading } from './due-readings.ts'
export { type DueRow, dueWithin, type RegisterRow } from './due-within.ts'
export {
  nextRequalification,
  type Requalification,
  requalifications,
} from './next-requalification.ts'
export type { PermitRow, PermitTimes } from './permit-table.ts'
export { type PlusMark, type PlusMarkOptions, plusMark } from './plus-mark.ts'
export { type RequalificationNote, requalificationNotes } from './requalification-note.table.ts'
export type { RequalificationOptions } from './requalification-options.ts'
export {
  type CylinderService,
  cylinderServices,
  type InspectionKind,
  type RequalificationRule,
  type RuleSetId,
  type RuleStatus,
  ruleSetIds,
} from './requalification-rule.table.ts'
export { requalificationRules } from './rules-for.ts'
export type { RequalificationHistory } from './stamped-tests.ts'
export { type PermitTerms, type TestPressure, type TestPressureOptions, testPressure } from './test-pressure.ts'
export { type TestPressureRule, testPressureRules } from './test-pressure-rule.table.ts'
export { type TestTrigger, testTriggers } from './test-trigger.table.ts'
