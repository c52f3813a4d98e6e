export {
  type CompressibleColumn,
  type ConventionDifference,
  conventionDifferences,
  depthInWaterColumn,
  pressureInWaterColumn,
} from './compressible-column.ts'
export {
  type DepthConvention,
  densityOfConvention,
  depthConventions,
  indicatedDepth,
  pressureAtShownDepth,
} from './depth-convention.ts'
export { freezingPointOfWater } from './freezing-point.ts'
export { type GravityPlace, normalGravity, standardGravity } from './gravity.ts'
export { type HumidAir, humidAirDensity } from './humid-air.ts'
export { type LiquidWater, liquidWaterAt } from './liquid-water.ts'
export {
  absoluteSalinityOf,
  conservativeTemperatureOf,
  practicalSalinityOf,
  toAbsoluteSalinity,
  toPracticalSalinity,
} from './salinity.ts'
export { freshWaterDensity, type SeawaterState, seawaterDensity, seawaterDensityInto } from './seawater-density.ts'
export { seawaterDensityTeos10, type Teos10State } from './seawater-teos-10.ts'
export { speedOfSoundInWater } from './sound-in-water.ts'
export {
  altitudeOfGeopotentialHeight,
  geopotentialHeightOf,
  pressureAltitude,
  type StandardAir,
  standardAtmosphereAt,
  stationPressure,
  surfacePressureAtAltitude,
} from './standard-atmosphere.ts'
export { depthInStandardOcean, pressureInStandardOcean } from './standard-ocean.ts'
export { depthAtPressure, pressureAtDepth, pressureAtDepthInto, type WaterColumn } from './water-column.ts'
