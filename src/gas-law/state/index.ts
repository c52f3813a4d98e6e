export {
  type CompiledMixture,
  type CompileOptions,
  compiledCompressibilityFactor,
  compiledMolarDensity,
  compileMixture,
} from './compiled-mixture.ts'
export { type GasModel, molarDensityBy } from './gas-model.ts'
export { type GasState, type GasStateOptions, gasState, type PressureTemperature } from './gas-state.ts'
export { type GasStateColumns, gasStateInto } from './gas-state-columns.ts'
export {
  temperatureAtDensity,
  temperatureAtEnthalpy,
  temperatureAtEntropy,
  temperatureAtInternalEnergy,
} from './inverse-states.ts'
export { modelRanges, type UncertaintyClass, uncertaintyClasses } from './model-uncertainty.table.ts'
export { type GasPair, type ModelUncertainty, modelUncertainty } from './model-uncertainty.ts'
export { molarDensity } from './molar-density.ts'
export { pressureAtDensity } from './pressure-at-density.ts'
export {
  type ColumnGas,
  compressibilityFactorInto,
  molarDensityInto,
  type StateColumns,
} from './state-columns.ts'
export type { Box as StateBox, Table as StateTable } from './state-table.ts'
export {
  type TabulatedFunction,
  type TabulateOptions,
  tabulated,
  tabulatedInto,
  tabulatedValue,
} from './tabulated-function.ts'
