export type { Ascent, AscentLeg } from './ascent-gas.ts'
export { endurance, type Supply } from './endurance.ts'
export {
  type ConsumptionRate,
  type Drop,
  type MeasuredUse,
  measuredRate,
  type RateReadings,
  relativeRateUncertainty,
  type SurfaceEquivalentRate,
} from './measured-rate.ts'
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
} from './reserve.ts'
export type { CylinderGas, GasQuantity } from './supply.ts'
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
