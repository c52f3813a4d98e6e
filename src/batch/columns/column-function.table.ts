/** A column function with its types set aside: its own checks judge what it is given. */
export type ColumnFunction = (out: unknown, columns: unknown, options: unknown, from: number, to: number) => void

type Plain = (out: never, columns: never, options: never, from: number, to: number) => void
type WithoutOptions = (out: never, columns: never, from: number, to: number) => void

const gasLaw = () => import('../../gas-law/index.ts')
const environment = () => import('../../environment/index.ts')
const plain = (fn: Plain): ColumnFunction => fn as ColumnFunction
const withoutOptions =
  (fn: WithoutOptions): ColumnFunction =>
  (out, columns, _, from, to) =>
    fn(out as never, columns as never, from, to)

/**
 * The column functions whose rows do not depend on one another, so that threads can share them out. A conversion of units is not
 * among them: one thread is as fast as the memory.
 */
export const columnFunctions: Readonly<Record<ColumnFunctionName, () => Promise<ColumnFunction>>> = {
  molarDensityInto: async () => plain((await gasLaw()).molarDensityInto),
  compressibilityFactorInto: async () => plain((await gasLaw()).compressibilityFactorInto),
  freeGasInto: async () => plain((await gasLaw()).freeGasInto),
  tabulatedInto: async () => plain((await gasLaw()).tabulatedInto),
  gasStateInto: async () => plain((await gasLaw()).gasStateInto),
  saturatedWaterFractionInto: async () => withoutOptions((await gasLaw()).saturatedWaterFractionInto),
  waterFractionFromHumidityInto: async () => withoutOptions((await gasLaw()).waterFractionFromHumidityInto),
  relativeHumidityInto: async () => withoutOptions((await gasLaw()).relativeHumidityInto),
  dewPointInto: async () => withoutOptions((await gasLaw()).dewPointInto),
  saturationPressureInto: async () => withoutOptions((await gasLaw()).saturationPressureInto),
  pressureAtDepthInto: async () => plain((await environment()).pressureAtDepthInto),
  seawaterDensityInto: async () => withoutOptions((await environment()).seawaterDensityInto),
  developedPressureInto: async () => plain((await import('../../cylinder/index.ts')).developedPressureInto),
  supplyRatioInto: async () => plain((await import('../../regulator-performance/index.ts')).supplyRatioInto),
  enduranceInto: async () => plain((await import('../../consumption/index.ts')).enduranceInto),
  reservePressureInto: async () => plain((await import('../../consumption/index.ts')).reservePressureInto),
  separatedWaterInto: async () => plain((await import('../../charging/index.ts')).separatedWaterInto),
  depthFromPressureInto: async () => plain((await import('../../gauges/index.ts')).depthFromPressureInto),
}

/** Name of a column function that threads can share out. */
export type ColumnFunctionName =
  | 'molarDensityInto'
  | 'compressibilityFactorInto'
  | 'freeGasInto'
  | 'tabulatedInto'
  | 'gasStateInto'
  | 'saturatedWaterFractionInto'
  | 'waterFractionFromHumidityInto'
  | 'relativeHumidityInto'
  | 'dewPointInto'
  | 'saturationPressureInto'
  | 'pressureAtDepthInto'
  | 'seawaterDensityInto'
  | 'developedPressureInto'
  | 'supplyRatioInto'
  | 'enduranceInto'
  | 'reservePressureInto'
  | 'separatedWaterInto'
  | 'depthFromPressureInto'
