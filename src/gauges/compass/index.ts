export {
  compassDeviation,
  type Deviation,
  type DeviationAt,
  type DeviationCoefficients,
  deviationAt,
  type SwingPoint,
  trueHeading,
} from './deviation.ts'
export { type CardBalance, type CompassTilt, cardTilt, tiltError } from './tilt.ts'
