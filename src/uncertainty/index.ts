export { agreement, type StatedResult } from './agreement.ts'
export { type Correlation, correlationCoefficient } from './correlation.ts'
export { type Coverage, coverageFactor, type Expanded, expanded } from './coverage.ts'
export {
  arcsine,
  converterStep,
  type Distribution,
  fromGaugeClass,
  fromResolution,
  type GaugeClass,
  gaugeError,
  normal,
  rectangular,
  type Shape,
  type Spread,
  type Stated,
  triangular,
} from './distribution.ts'
export { meanInterval, type Observations, observationsOf, observed, upperPredictionBound } from './observations.ts'
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
export { type Random, seeded } from './random.ts'
export { type EvenReadings, rateUncertainty } from './rate-of-change.ts'
export {
  coverageInterval,
  type LinearityCheck,
  linearityCheck,
  quantileOf,
  type Sampled,
  type SampleOptions,
  sample,
} from './sample.ts'
