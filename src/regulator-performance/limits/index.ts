export {
  type AcceptanceAssessment,
  type AcceptanceOptions,
  assessAcceptance,
  type MeasuredPerformance,
  type TestConditions,
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
export { type MachineSetting, machineSettings } from './machine-setting.table.ts'
export { measuredPerformance } from './measured-performance.ts'
