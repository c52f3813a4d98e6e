export { assessAgreement, type StatedResult } from './agreement.ts'
export { type Correlation, correlationCoefficient } from './correlation.ts'
export { type Coverage, coverageFactor, type Expanded, expandedUncertainty } from './coverage.ts'
export {
  type DesignColumns,
  gridDesign,
  type InputRanges,
  latinHypercube,
  randomDesign,
  sobolDesign,
} from './design.ts'
export {
  arcsine,
  type Distribution,
  type DistributionShape,
  fromGaugeClass,
  fromResolution,
  type GaugeClass,
  maximumPermissibleError,
  normalDistribution,
  quantizationStep,
  rectangular,
  type Spread,
  type Stated,
  triangular,
} from './distribution.ts'
export {
  meanInterval,
  meanOfReadings,
  type Observations,
  observationsOf,
  upperPredictionBound,
} from './observations.ts'
export {
  type Contribution,
  effectiveDegreesOfFreedom,
  type Inputs,
  type Propagated,
  type PropagateOptions,
  propagate,
  type Values,
} from './propagate.ts'
export { normalQuantile, studentQuantile } from './quantile.ts'
export { type Random, seededRandom } from './random.ts'
export { type EvenReadings, slopeUncertainty } from './rate-of-change.ts'
export {
  coverageInterval,
  type LinearityCheck,
  linearityCheck,
  propagateBySampling,
  quantileOf,
  type Sampled,
  type SampleOptions,
} from './sample.ts'
export { type SobolIndex, type SobolIndices, sobolIndices } from './sobol-indices.ts'
export { sobolSequence } from './sobol-sequence.ts'
export { type SearchRange, type SolvedFor, solveFor, solveForInto } from './solve-for.ts'
export { summaryOf, type ValueSummary } from './summary.ts'
