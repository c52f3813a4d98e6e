export {
  type AssessedCold,
  assessCold,
  type ColdCase,
  firstStageSurfaceTemperature,
  throttledTemperature,
  type WarmedGas,
  warmedGas,
} from './cold.ts'
export { type ColdTest, coldTests } from './cold-test.table.ts'
export { coldWater, type NearestColdTest, nearestColdTest } from './cold-test.ts'
export { type IceBound, iceBound } from './ice-bound.ts'
