export {
  type AnalysedDepth,
  type AnalysedFraction,
  type Analysis,
  analysedFraction,
  depthOfAnalysis,
} from './analysed-fraction.ts'
export { assessCell, type CellCheck } from './assess-cell.ts'
export { type MoistGas, type OxygenAtCell, oxygenAtCell } from './calibration-gas.ts'
export {
  type CellCalibration,
  type CellPoint,
  cellLinearity,
  expectedOutput,
  limitedCell,
  oxygenShown,
} from './cell.ts'
export { type CellAgreement, type CellReading, cellAgreement } from './cell-agreement.ts'
export {
  type CellExposure,
  type CellLife,
  cellLife,
  cellTemperatureCoefficient,
  thermistorLagFactor,
} from './temperature-and-age.ts'
