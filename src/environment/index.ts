export {
  type DepthConvention,
  densityOfConvention,
  depthConventions,
  pressureAtShownDepth,
  shownDepth,
} from './depth-convention.ts'
export { normalGravity, type Place, standardGravity } from './gravity.ts'
export {
  geopotentialHeightOf,
  pressureAltitude,
  type StandardAir,
  standardAtmosphereAt,
  stationPressure,
  surfacePressureAtAltitude,
} from './standard-atmosphere.ts'
export { depthAtPressure, pressureAtDepth, pressureAtDepthInto, type WaterColumn } from './water-column.ts'
