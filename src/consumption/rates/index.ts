export {
  type ConsumptionRate,
  type MeasuredUse,
  measuredRate,
  type PressureDrop,
  type RateReadings,
  relativeRateUncertainty,
  type SurfaceEquivalentRate,
} from './measured-rate.ts'
export { carbonDioxideOutput, freeGasFlowAt, oxygenEndurance, ventilationFor } from './oxygen-uptake.ts'
export type { PressureTrace, TraceReading, TraceUncertainty } from './pressure-trace.ts'
export { type RateOfNextDive, rateOfNextDive } from './several-dives.ts'
export type { TraceFinding } from './trace-findings.ts'
export { type TracedRate, tracedRate } from './traced-rate.ts'
export {
  type HandbookCylinder,
  handbookAtmosphere,
  handbookAvailableVolume,
  usNavyManualCapacity,
} from './us-navy-manual-gas.ts'
export {
  type RespiratoryRatio,
  respiratoryRatios,
  type VentilationFact,
  ventilationFacts,
  type WorkLevel,
  workLevels,
} from './work-level.table.ts'
