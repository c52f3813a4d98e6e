export { type BenchFinding, benchFindings } from './bench-finding.table.ts'
export { assessIntermediatePressure, findBenchFindings, usualIntermediatePressure } from './bench-finding.ts'
export { type ExhaustValve, exhaustPressure } from './exhaust.ts'
export {
  type BalancedPiston,
  type Diaphragm,
  droop,
  effectiveArea,
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
export {
  type IntermediatePressureMotion,
  intermediatePressureMotion,
  intermediatePressureRise,
  type StageInMotion,
} from './intermediate-pressure-motion.ts'
export { type MinimumSupplyPressure, minimumSupplyPressure, type SupplyDemand } from './minimum-supply-pressure.ts'
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
export {
  type CompiledSupply,
  compileSupply,
  type MappedSupply,
  type SupplyMap,
  supplyMap,
  supplyRatioInto,
} from './supply-map.ts'
export {
  type ORingFit,
  type ORingInGroove,
  oRingBands,
  oRingFit,
  type Preload,
  preload,
  reliefArea,
  seatLeak,
} from './workshop.ts'
