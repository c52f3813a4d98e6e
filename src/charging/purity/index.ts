export { type AirAnalysis, assessAnalysis, type MeasuredTrace, type PurityAssessment } from './assess-analysis.ts'
export { assessFilters } from './assess-filters.ts'
export {
  assessContaminantAtDepth,
  type BreathedContaminant,
  type ContaminantAtDepth,
  contaminantAtDepth,
  type PartialPressureLimit,
  partialPressureLimits,
} from './contaminant-at-depth.ts'
export {
  type FilterStageId,
  type FilterStageRow,
  filterStages,
  type Impurity,
  intakePlacement,
  oxygenCompatibleConditions,
} from './filter-stage.table.ts'
export {
  type CompressedAirClass,
  compressedAirClasses,
  type LimitEvidence,
  type OdourLimit,
  type PurityLimit,
  type PurityQuantity,
  type PurityRule,
  type PurityRuleId,
  purityRules,
} from './purity-rule.table.ts'
export { traceConcentration, traceFraction, traceMolarMasses } from './trace-concentration.ts'
