export { type Ascent, type AscentLeg, ascentLegs } from './ascent-gas.ts'
export {
  type EnduranceColumnGas,
  enduranceCodes,
  enduranceInto,
  pressureVolumeBreathedInto,
  type UseColumnOptions,
  useCodes,
} from './columns.ts'
export { endurance, type Supply } from './endurance.ts'
export { type Consumer, type FurthestTurn, type FurthestTurnOptions, furthestTurn } from './furthest-turn.ts'
export {
  type HandbookCylinder,
  handbookAtmosphere,
  handbookAvailableVolume,
  usNavyManualCapacity,
} from './handbook-gas.ts'
export {
  type InflatedSpace,
  type InflationLeg,
  type InflationUse,
  inflationLegs,
  inflationUse,
} from './inflation.ts'
export { type FailureStop, failureStops, instrumentFailureAscent } from './instrument-failure.ts'
export {
  type ConsumptionRate,
  type MeasuredUse,
  measuredRate,
  type PressureDrop,
  type RateReadings,
  relativeRateUncertainty,
  type SurfaceEquivalentRate,
} from './measured-rate.ts'
export { assessMixtures, type StatedOxygenLimits } from './mixture-limits.ts'
export { type CylinderTurn, type OrderOptions, orderOfUse } from './order-of-use.ts'
export { carbonDioxideOutput, freeGasFlowAt, oxygenEndurance, ventilationFor } from './oxygen-uptake.ts'
export { type PressureMoment, pressureSeries, type SeriesOptions, type TemperaturePoint } from './pressure-series.ts'
export {
  type DepthPoint,
  meanAmbientPressure,
  type Profile,
  type ProfilePoint,
  profileInWater,
  steadyProfile,
} from './profile.ts'
export {
  ascentReserve,
  type InputEffect,
  type PressureStep,
  type Reserve,
  type ReserveCylinder,
  type ReservePart,
  reserveEffects,
  reservePressure,
} from './reserve.ts'
export { type RateOfNextDive, rateOfNextDive } from './several-dives.ts'
export type { CylinderGas, GasOptions, GasQuantity } from './supply.ts'
export {
  type TeamSupply,
  type TurnOptions,
  type TurnPressure,
  type TurnPressures,
  turnPressures,
} from './turn-pressure.ts'
export {
  type BreathedDive,
  type BreathingPeriod,
  type CylinderUse,
  gasUsed,
  pressureVolumeBreathed,
} from './use.ts'
export {
  type RespiratoryRatio,
  respiratoryRatios,
  type VentilationFact,
  ventilationFacts,
  type WorkLevel,
  workLevels,
} from './work-level.table.ts'
