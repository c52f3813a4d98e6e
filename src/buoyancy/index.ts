export {
  type Ballast,
  type BallastCase,
  type BallastConditions,
  type BallastCylinder,
  type BallastMoment,
  ballast,
  type EquippedDiver,
} from './ballast.ts'
export { type BallastCheck, ballastFromCheck, type CheckedBallast, type LevelMoment } from './ballast-check.ts'
export { bodyDensities, bodyVolume } from './body-volume.ts'
export { type BuoyancyMoment, type BuoyancyPoint, buoyancySeries } from './buoyancy-series.ts'
export { type DrySuit, type UnfilledDrySuit, unfilledDrySuit } from './dry-suit.ts'
export { type FoamFact, foamFacts } from './foam-facts.table.ts'
export {
  type FoamLoss,
  type FoamSuit,
  foamLoss,
  foamModelUncertainty,
  foamVolume,
  gasFractionOfFoam,
} from './foam-suit.ts'
export { ballastForOtherWater, liftOf, netBuoyancy, type RigidItem, type Water } from './net-buoyancy.ts'
export { assessReliefValve, bubbleHead, type ReliefValve } from './relief-valve.ts'
export { type PlacedForce, shiftForTrim, type Trim, trim } from './trim.ts'
export { liftGainPerMetre, type RisingGas, unventedLift, ventFlow } from './venting.ts'
export * from './warmth/index.ts'
export { displacedVolumeFromWeighing, type Weighing } from './weighing.ts'
