export {
  type CapillaryDive,
  type CapillaryGauge,
  type CapillaryMark,
  type CapillaryReading,
  capillaryReading,
  capillaryResolution,
  capillaryScale,
  capillaryServesTo,
} from './capillary.ts'
export { type DepthColumns, depthFromPressureInto } from './depth-columns.ts'
export {
  type DepthGauge,
  depthBeforePointerMoves,
  depthErrorOf,
  depthShown,
  type GaugeSurroundings,
  pressureBehindDepth,
  type ShownDepth,
  trueDepth,
} from './depth-gauge.ts'
export { type PressureSensor, type SensorBudget, type SensorUse, sensorBudget } from './pressure-sensor.ts'
export {
  type Display,
  type InstrumentEvidence,
  type RemainingEvidence,
  remainingEvidence,
  type ShownQuantity,
  shownQuantities,
} from './remaining-evidence.ts'
export { assessSurfaceCheck, type SurfaceCheck } from './surface-check.ts'
