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
