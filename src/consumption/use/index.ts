export type { BreathedDive, BreathingPeriod } from './breathed-dive.ts'
export type { RunOut } from './drawdown.ts'
export { type Endurance, endurance, type Supply } from './endurance.ts'
export { type EnduranceColumnGas, enduranceInto } from './endurance-columns.ts'
export { type CylinderUse, type DiveUse, gasUsed } from './gas-used.ts'
export { type InflatedSpace, type InflationLeg, type InflationUse, inflationLegs, inflationUse } from './inflation.ts'
export { assessMixtures, type StatedOxygenLimits } from './mixture-limits.ts'
export { pressureReached } from './pressure-reached.ts'
export {
  type PressureMoment,
  type PressureSeries,
  pressureSeries,
  type SeriesOptions,
  type TemperaturePoint,
} from './pressure-series.ts'
export { pressureVolumeBreathed } from './pressure-volume-breathed.ts'
export { pressureVolumeBreathedInto, type UseColumnOptions } from './pressure-volume-breathed-columns.ts'
export {
  type DepthPoint,
  meanAmbientPressure,
  type Profile,
  type ProfilePoint,
  profileInWater,
  steadyProfile,
} from './profile.ts'
