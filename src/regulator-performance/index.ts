export {
  type AcceptanceAssessment,
  type AcceptanceOptions,
  acceptance,
  type MeasuredPerformance,
  type TestConditions,
} from './acceptance.ts'
export {
  type AcceptanceLimit,
  acceptanceLimits,
  type ConditionName,
  type LimitCondition,
  type LimitedQuantity,
  type Printed,
  type PrintedLine,
} from './acceptance-limit.table.ts'
export { type Column, type LoggedColumn, siColumn } from './column.ts'
export { type HydrostaticHead, hydrostaticImbalance } from './hydrostatic-imbalance.ts'
export type { LoopFinding, LoopFindingCode } from './loop-finding.ts'
export {
  type BreathingLoop,
  type HalfBreath,
  type LoopOptions,
  loopWork,
  type WorkOfBreathing,
  workOfBreathing,
} from './work-of-breathing.ts'
export { powerOfBreathing, workOfBreathingPerLitreOf } from './work-per-litre.ts'
