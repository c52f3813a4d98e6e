export { cylinderPressureBehind, shownCylinderPressure } from './case-pressure.ts'
export { type CertainGas, certainGas, type GasAtPressure, type ReadCylinder } from './certain-gas.ts'
export {
  type CalibrationLine,
  type CalibrationPoint,
  type CorrectedReading,
  calibrationLine,
  correctedReading,
} from './gauge-calibration.ts'
export { type GaugeError, gaugeError, type PressureGauge } from './gauge-error.ts'
export {
  fewestTestPoints,
  type GaugeElement,
  type GaugeElementId,
  gaugeClasses,
  gaugeElements,
} from './gauge-kind.table.ts'
export { assessGaugeTest, type GaugeTest, type GaugeTestResult, type TestPoint } from './gauge-test.ts'
export {
  assessDisagreement,
  assessEquivalentGauges,
  type PressureUsed,
  pressureUsed,
  type ReadingPair,
  type UncertainReading,
  uncertaintyOfDifference,
} from './readings-compared.ts'
