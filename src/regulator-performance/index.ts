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
export { type FittedAssist, fittedAssist } from './assist.ts'
export type { AveragedHalf, AveragedLoop } from './averaged-loop.ts'
export { type BenchFinding, benchFindings } from './bench-finding.table.ts'
export { assessIntermediatePressure, findingsNamed, usualIntermediatePressure } from './bench-finding.ts'
export type { BreathRow, BreathSummary, ColumnSummary } from './breath-table.ts'
export {
  type AnalysisOptions,
  type BreathingAnalysis,
  breathingAnalysis,
} from './breathing-analysis.ts'
export { type PeakDemand, peakDemand } from './breathing-demand.ts'
export type { BreathingLog } from './breathing-log.ts'
export {
  type BreathingSeries,
  type BreathingSetting,
  breathingSeries,
  peakInhalationFlow,
  type SimulatedBreathing,
  simulatedBreathing,
  type Waveform,
} from './breathing-waveform.ts'
export {
  driftError,
  type LagError,
  type LaggingChannel,
  lagError,
  type SamplingLoss,
  samplingLoss,
  type WorkUncertainty,
  type WorkUncertaintyInput,
  workUncertainty,
} from './channel-error.ts'
export {
  type ColdAssessment,
  type ColdCase,
  coldAssessment,
  surfaceTemperature,
  throttledTemperature,
  type WarmedGas,
  warmedGas,
} from './cold.ts'
export { type ColdTest, coldTests } from './cold-test.table.ts'
export { coldWater, type NearestColdTest, nearestColdTest } from './cold-test.ts'
export { type Column, type LoggedColumn, siColumn } from './column.ts'
export { type CriticalFlow, criticalFlow, realCriticalFlow } from './critical-flow.ts'
export {
  type PredictionOptions,
  predictedWork,
  type WorkInGas,
  type WorkPrediction,
  workAtDensity,
} from './density-scaling.ts'
export { elastanceAndInertance, type LinearLoad, type LoadedBreath, loadedBreath } from './elastance.ts'
export { type Exhaust, exhaustPressure } from './exhaust.ts'
export {
  type BalancedPiston,
  type Diaphragm,
  droop,
  type FirstStage,
  type Imbalance,
  type IntermediatePressure,
  imbalance,
  lockUp,
  type StageReading,
  sealedChamberPressure,
  staticIntermediatePressure,
  type UnbalancedPiston,
} from './first-stage.ts'
export { type Hose, type HoseFlow, type HoseGas, hoseFlow } from './hose.ts'
export { type HydrostaticHead, hydrostaticImbalance } from './hydrostatic-imbalance.ts'
export { chokedMassFlow, chokedSupplyPressure, type IdealUpstream, idealOrificeFlow } from './ideal-orifice.ts'
export type { ChannelLag } from './lag-correction.ts'
export type { LoopFinding, LoopFindingCode } from './loop-finding.ts'
export { type LowestSupplyPressure, lowestSupplyPressure, type SupplyDemand } from './lowest-supply-pressure.ts'
export { type MachineSetting, machineSettings } from './machine-setting.table.ts'
export { measuredPerformance } from './measured-performance.ts'
export type { MeasuredWork } from './measured-work.ts'
export { type Orifice, type OrificeFlow, type OrificeState, orificeFlow } from './orifice.ts'
export { type FittedResistance, type ResistanceMeasurement, resistanceFit } from './resistance-fit.ts'
export {
  type LoopShape,
  loopShape,
  powerLawWorkPerLitre,
  type ResistanceParts,
  type ResistiveWork,
  resistiveWork,
} from './resistance-model.ts'
export {
  type Attitude,
  type AttitudeEffect,
  attitudeEffect,
  type CrackingPressure,
  crackingPressure,
  type DemandValve,
  type PilotOperated,
  pilotOpening,
} from './second-stage.ts'
export { type FlowElement, type SeriesFlow, type SeriesState, seriesFlow } from './series-flow.ts'
export { conductanceOfOrifice, conductedFlow, type ValveFlow } from './sonic-conductance.ts'
export {
  type CompiledSupply,
  compileSupply,
  type MappedSupply,
  type SupplyMap,
  supplyMap,
  supplyRatioInto,
} from './supply-map.ts'
export {
  type BreathingLoop,
  type HalfBreath,
  type LoopOptions,
  loopWork,
  type WorkOfBreathing,
  workOfBreathing,
} from './work-of-breathing.ts'
export { powerOfBreathing, workOfBreathingPerLitreOf } from './work-per-litre.ts'
export {
  type OringFit,
  type OringInGroove,
  oringBands,
  oringFit,
  type Preload,
  preload,
  reliefArea,
  seatLeak,
} from './workshop.ts'
