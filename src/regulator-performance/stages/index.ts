export { type BenchFinding, benchFindings } from './bench-finding.table.ts'
export { assessIntermediatePressure, findingsNamed, usualIntermediatePressure } from './bench-finding.ts'
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
export { type LowestSupplyPressure, lowestSupplyPressure, type SupplyDemand } from './lowest-supply-pressure.ts'
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
  type OringFit,
  type OringInGroove,
  oringBands,
  oringFit,
  type Preload,
  preload,
  reliefArea,
  seatLeak,
} from './workshop.ts'
