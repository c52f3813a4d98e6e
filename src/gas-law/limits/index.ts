export { type GasDensityLimit, gasDensityLimits } from './breathing-gas-density.table.ts'
export { type BreathedGas, gasDensityAssessment, pressureAtGasDensity } from './breathing-gas-density.ts'
export {
  maximumOperatingDepth,
  minimumOperatingDepth,
  type OxygenDepthLimit,
  type RichestMixture,
  richestMixture,
} from './oxygen-limit.ts'
export { surfaceEquivalent } from './surface-equivalent.ts'
