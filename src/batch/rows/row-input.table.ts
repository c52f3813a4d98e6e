import type { Dimension, ParsedKind } from '../../units/index.ts'
import type { SlipUnits } from './unit-slip.ts'

/** A quantity that rows state as a number, and how it is read. */
export interface RowInput {
  /** As in `parseQuantity`: settles gauge or absolute where a field carries its own unit. */
  readonly kind: ParsedKind
  /** Of its standard uncertainty, where one is stated. */
  readonly uncertaintyKind: ParsedKind
  readonly dimension: Dimension
  /** Sizes between which the middle value of a column lies in practice, and the units that people confuse. Ours, wide on purpose. */
  readonly usual: SlipUnits
}

const pressureUnits = ['bar', 'psi', 'kPa', 'MPa', 'Pa'] as const
const pressureOf = (kind: 'absolute pressure' | 'gauge pressure', from: number, to: number): RowInput => ({
  kind,
  uncertaintyKind: 'pressure difference',
  dimension: 'pressure',
  usual: { from, to, units: pressureUnits },
})
const temperatureInput: RowInput = {
  kind: 'temperature',
  uncertaintyKind: 'temperature difference',
  dimension: 'temperature',
  usual: { from: 200, to: 400, units: ['K', '°C', '°F'] },
}
const fractionInput = (from: number): RowInput => ({
  kind: 'mole fraction',
  uncertaintyKind: 'fraction',
  dimension: 'fraction',
  usual: { from, to: 1, units: ['%', 'ppm'] },
})

const of = (kind: Extract<Dimension, ParsedKind>, from: number, to: number, units: readonly string[]): RowInput => ({
  kind,
  uncertaintyKind: kind,
  dimension: kind,
  usual: { from, to, units },
})
const lengthInput: RowInput = {
  kind: 'depth',
  uncertaintyKind: 'length',
  dimension: 'length',
  usual: { from: 0.3, to: 500, units: ['m', 'ft'] },
}

/**
 * What rows may state, by the name that a plan uses.
 *
 * @source common-practice, the usual sizes
 */
export const rowInputs: Readonly<Record<RowInputName, RowInput>> = {
  pressure: pressureOf('absolute pressure', 2e4, 5e7),
  gaugePressure: pressureOf('gauge pressure', 1e4, 5e7),
  ambientPressure: pressureOf('absolute pressure', 2e4, 5e6),
  temperature: temperatureInput,
  internalVolume: {
    kind: 'internal volume',
    uncertaintyKind: 'volume',
    dimension: 'volume',
    usual: { from: 1e-5, to: 5, units: ['m³', 'L', 'ft³'] },
  },
  residualPressure: pressureOf('absolute pressure', 2e4, 5e7),
  pressureAtDepth: pressureOf('absolute pressure', 2e4, 5e6),
  breathingGasTemperature: temperatureInput,
  respiratoryMinuteVolume: {
    kind: 'volume flow',
    uncertaintyKind: 'volume flow',
    dimension: 'volume flow',
    usual: { from: 5e-5, to: 5e-3, units: ['L/min', 'ft³/min', 'm³/h'] },
  },
  relativeHumidity: fractionInput(1e-3),
  waterFraction: fractionInput(1e-9),
  targetPressure: pressureOf('absolute pressure', 2e4, 5e7),
  targetOxygen: fractionInput(1e-3),
  targetHelium: fractionInput(0),
  depth: lengthInput,
  surfacePressure: pressureOf('absolute pressure', 4e4, 1.2e5),
  waterDensity: of('density', 900, 1300, ['kg/m³', 'lb/ft³']),
  stressFactor: of('fraction', 1, 10, ['%']),
  timeAtDepth: of('duration', 1, 36_000, ['s', 'min', 'h']),
  ascentRate: of('speed', 0.005, 2, ['m/min', 'm/s', 'ft/min']),
  stopDepth: lengthInput,
  stopDuration: of('duration', 0, 36_000, ['s', 'min', 'h']),
  maximumPermissibleError: { ...pressureOf('absolute pressure', 0, 5e6), kind: 'pressure difference' },
  peakFlow: of('volume flow', 1e-4, 0.1, ['L/s', 'L/min', 'm³/h']),
  intermediatePressure: { ...pressureOf('absolute pressure', 1e5, 5e6), kind: 'pressure difference' },
  regulatingMargin: { ...pressureOf('absolute pressure', 0, 5e6), kind: 'pressure difference' },
  orificeArea: of('area', 1e-8, 1e-3, ['mm²', 'cm²', 'm²']),
  dischargeCoefficient: fractionInput(0.05),
}

/** Name of a quantity that rows may state. */
export type RowInputName =
  | 'pressure'
  | 'gaugePressure'
  | 'ambientPressure'
  | 'temperature'
  | 'internalVolume'
  | 'residualPressure'
  | 'pressureAtDepth'
  | 'breathingGasTemperature'
  | 'respiratoryMinuteVolume'
  | 'relativeHumidity'
  | 'waterFraction'
  | 'targetPressure'
  | 'targetOxygen'
  | 'targetHelium'
  | 'depth'
  | 'surfacePressure'
  | 'waterDensity'
  | 'stressFactor'
  | 'timeAtDepth'
  | 'ascentRate'
  | 'stopDepth'
  | 'stopDuration'
  | 'maximumPermissibleError'
  | 'peakFlow'
  | 'intermediatePressure'
  | 'regulatingMargin'
  | 'orificeArea'
  | 'dischargeCoefficient'
