export {
  type AcceptanceAssessment,
  type AcceptanceOptions,
  assessAcceptance,
  type MeasuredPerformance,
} from './acceptance.ts'
export {
  type AcceptanceLimit,
  acceptanceLimits,
  type ConditionName,
  type LimitCondition,
  type LimitedQuantity,
  type PrintedLimit,
  type PrintedLine,
} from './acceptance-limit.table.ts'
export { type FittedAssist, fittedAssist } from './assist.ts'
export { type ComparedWork, comparedWork } from './compared-work.ts'
export { acceptanceLimitAt, type LimitValue } from './limit-bound.ts'
export { type MachineSetting, machineSettings } from './machine-setting.table.ts'
export { measuredPerformance } from './measured-performance.ts'
export { type SupplyAtLimit, supplyAtLimit, type WorkAtSupply } from './supply-at-limit.ts'
export type { TestConditions } from './test-condition.ts'
export { assessTestPlan, type BreathingTestPoint, type TestPlanAssessment, type TestPlanOptions } from './test-plan.ts'
