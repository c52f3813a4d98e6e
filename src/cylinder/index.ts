export {
  type CylinderBody,
  cylinderBuoyancy,
  type GasTaken,
  massOfGasTaken,
  type SubmergedCylinder,
} from './buoyancy/cylinder-buoyancy.ts'
export type { CaloricOptions } from './caloric.ts'
export { type BankCapacity, bankCapacity } from './capacity/bank-capacity.ts'
export {
  type CapacityRow,
  type CapacityTableCondition,
  capacityColumns,
  capacityTable,
  type ListedCylinder,
  sizesOfTheTrade,
} from './capacity/capacity-table.ts'
export {
  type CapacityComparison,
  type CapacityCondition,
  type CapacityOptions,
  compareRatedCapacity,
  internalVolumeForCapacity,
  ratedCapacity,
} from './capacity/rated-capacity.ts'
export { assessFill, type FilledCylinder } from './filling/assess-fill.ts'
export { type BankFill, type BankSequence, type BankStep, bankOrder, bankSequence } from './filling/bank-sequence.ts'
export { type BlendUncertainty, blendUncertainty, type UncertainFill } from './filling/blend-uncertainty.ts'
export { type ContinuousMix, type ContinuousMixing, continuousMix } from './filling/continuous-mix.ts'
export {
  type ClosedCylinder,
  type DevelopedPressureOptions,
  developedPressure,
  type VesselGrowth,
} from './filling/developed-pressure.ts'
export {
  type Equalised,
  type EqualisedCylinder,
  type EqualiseOptions,
  equalise,
  type JoinedCylinder,
} from './filling/equalise.ts'
export { fillAtConstantFlow, type SteadyFill, type SteadyFillEnd } from './filling/fill-at-constant-flow.ts'
export { type FilledStep, type FillStep, fillInSteps, type StepwiseFill } from './filling/fill-in-steps.ts'
export {
  type DesignatedServicePressure,
  designatedServicePressures,
  type FillLimitNote,
  type FillLimitRow,
  type FillRule,
  fillLimitNotes,
  fillLimitRows,
  type LimitedMark,
} from './filling/fill-limit.table.ts'
export {
  type FillLimit,
  type FillLimitInput,
  type FillLimitPart,
  fillLimit,
  type UnMarked,
  type UsMarked,
} from './filling/fill-limit.ts'
export { fillTemperature, type HotFill, type HotFillEnd } from './filling/fill-temperature.ts'
export { type FreeFlow, type FreeFlowEmptying, freeFlowEmptying } from './filling/free-flow-emptying.ts'
export { type IdealRecipe, idealRecipe } from './filling/ideal-recipe.ts'
export { type Leak, type LeakTest, leakTest } from './filling/leak-test.ts'
export { aluminiumOxygenConditions, type OxygenThresholdId, oxygenThresholds } from './filling/oxygen-service.table.ts'
export { oxygenService } from './filling/oxygen-service.ts'
export {
  type BlendOptions,
  type BlendOrder,
  type BlendPlan,
  type BlendStep,
  type BlendTarget,
  planBlend,
} from './filling/plan-blend.ts'
export {
  type PlusCondition,
  type PlusWallStress,
  plusConditions,
  plusWallStresses,
} from './filling/plus-permission.table.ts'
export { type PlusFindings, type PlusPermission, plusPermission } from './filling/plus-permission.ts'
export { type Settling, type SettlingCylinder, settlingAfterFill } from './filling/settling.ts'
export { type StopPressure, stopPressure, type WantedFill } from './filling/stop-pressure.ts'
export {
  type CompressionBound,
  coldestRemainder,
  type QuickEmptying,
  type SuddenCompression,
  suddenCompression,
} from './filling/sudden-compression.ts'
export {
  type CalendarDate,
  type CalendarMonth,
  type CylinderMaterial,
  type CylinderSpecification,
  type DesignStandard,
  type DualMark,
  daysBetween,
  designStandards,
  type Finding,
  type FindingCode,
  type FindingDetail,
  type FindingSeverity,
  findingSeverity,
  lastDayOf,
  type MarkingFamily,
  monthsLater,
  type NeckThread,
  type ReadStampOptions,
  type Retest,
  type RetestSuffix,
  readStamp,
  type SpecificationName,
  type Stamp,
  type StampField,
  type StampFieldName,
  type StampMarks,
  specificationOf,
  type UsPrefix,
  type UsSpecification,
  usSpecifications,
  waterForCapacity,
  waterVolume,
  writeStamp,
} from './marking/index.ts'
export {
  type CylinderService,
  type DueRow,
  dueWithin,
  type InspectionKind,
  nextRequalification,
  type PermitTerms,
  type PlusMark,
  type PlusMarkOptions,
  plusMark,
  type RegisterRow,
  type Requalification,
  type RequalificationHistory,
  type RequalificationOptions,
  type RequalificationRule,
  type RuleSetId,
  requalificationRules,
  requalifications,
  type TestPressure,
  testPressure,
} from './requalification/index.ts'
export {
  averageWallStress,
  bendingStress,
  type CylinderShell,
  type DirectReadings,
  directExpansion,
  type ElasticExcessRule,
  type ElasticFactor,
  type ElasticTest,
  type ExpansionJudgement,
  type ExpansionReadings,
  type ExpansionTest,
  type ExpansionTestTerm,
  elasticExcessRules,
  expansionTest,
  expansionTestTerms,
  type GuaranteedWall,
  guaranteedWall,
  longitudinalStress,
  type MaterialRule,
  materialRules,
  minimumWall,
  type PermanentExpansionLimit,
  type PermanentExpansionLimitId,
  permanentExpansionLimits,
  rejectionElasticExpansion,
  type Stress,
  type WallDesignRule,
  type WaterDensities,
  wallDesignRules,
  wallStress,
  waterCompression,
  waterCompressionByPractice,
  waterDensities,
} from './testing/index.ts'
