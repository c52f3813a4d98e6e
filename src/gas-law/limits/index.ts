export { type GasDensityLimit, gasDensityLimits } from './breathing-gas-density.table.ts'
export { assessGasDensity, type BreathedGas, pressureAtGasDensity } from './breathing-gas-density.ts'
export {
  maximumOperatingDepth,
  minimumOperatingDepth,
  type OxygenDepthLimit,
  type RichestMixture,
  richestMixture,
} from './oxygen-limit.ts'
export { surfaceEquivalentFraction } from './surface-equivalent.ts'
