export { assessFill, type FilledCylinder } from './assess-fill.ts'
export { type BankFill, type BankSequence, type BankStep, bankOrder, bankSequence } from './bank-sequence.ts'
export { blendByMass, type MassBlend, type MassBlendOptions, type MassStep } from './blend-by-mass.ts'
export { type BlendUncertainty, blendUncertainty, type UncertainFill } from './blend-uncertainty.ts'
export { type ContinuousMix, type ContinuousMixing, continuousMix } from './continuous-mix.ts'
export {
  type ClosedCylinder,
  type DevelopedPressureOptions,
  developedPressure,
  type VesselGrowth,
} from './developed-pressure.ts'
export { type ClosedCylinderColumns, developedPressureInto } from './developed-pressure-columns.ts'
export {
  type Equalised,
  type EqualisedCylinder,
  type EqualiseOptions,
  equalise,
} from './equalise.ts'
export { fillAtConstantFlow, type SteadyFill, type SteadyFillEnd } from './fill-at-constant-flow.ts'
export { type FilledStep, type FillStep, fillInSteps, type StepwiseFill } from './fill-in-steps.ts'
export {
  type DesignatedServicePressure,
  designatedServicePressures,
  type FillLimitNote,
  type FillLimitRow,
  type FillRule,
  fillLimitNotes,
  fillLimitRows,
  type LimitedMark,
} from './fill-limit.table.ts'
export {
  type FillLimit,
  type FillLimitInput,
  type FillLimitPart,
  fillLimit,
  type UnMarking,
  type UsMarking,
} from './fill-limit.ts'
export { fillTemperature, type HotFill, type HotFillEnd } from './fill-temperature.ts'
export { type FreeFlow, type FreeFlowEmptying, freeFlowEmptying } from './free-flow-emptying.ts'
export { type IdealRecipe, idealRecipe } from './ideal-recipe.ts'
export { type Leak, type LeakTest, leakTest } from './leak-test.ts'
export { aluminiumOxygenConditions, type OxygenThresholdId, oxygenThresholds } from './oxygen-service.table.ts'
export { assessOxygenService } from './oxygen-service.ts'
export {
  type BlendOptions,
  type BlendOrder,
  type BlendPlan,
  type BlendStep,
  type BlendTarget,
  planBlend,
} from './plan-blend.ts'
export {
  type PlusCondition,
  type PlusWallStress,
  plusConditions,
  plusWallStresses,
  shownByPlusSign,
} from './plus-permission.table.ts'
export { type PlusFindings, type PlusPermission, plusPermission } from './plus-permission.ts'
export { type Settling, type SettlingCylinder, settlingAfterFill } from './settling.ts'
export { type StopPressure, stopPressure, type WantedFill } from './stop-pressure.ts'
export {
  type CompressionBound,
  coldestRemainder,
  type QuickEmptying,
  type SuddenCompression,
  suddenCompression,
} from './sudden-compression.ts'
export { type BlendTrim, type SingleGasTrim, trimBlend } from './trim-blend.ts'
