import type { SlipUnits } from './unit-slip.ts'

/** A quantity that rows state as a number, and how it is read. */
export interface RowInput {
  /** As in `parseQuantity`: settles gauge or absolute where a field carries its own unit. */
  readonly kind: 'absolute pressure' | 'gauge pressure' | 'temperature' | 'internal volume'
  readonly dimension: 'pressure' | 'temperature' | 'volume'
  /** Sizes between which the middle value of a column lies in practice, and the units that people confuse. Ours, wide on purpose. */
  readonly usual: SlipUnits
}

const pressureUnits = ['bar', 'psi', 'kPa', 'MPa', 'Pa'] as const

/**
 * What rows may state, by the name that a plan uses.
 *
 * @source common-practice, the usual sizes
 */
export const rowInputs: Readonly<Record<RowInputName, RowInput>> = {
  pressure: { kind: 'absolute pressure', dimension: 'pressure', usual: { from: 2e4, to: 5e7, units: pressureUnits } },
  gaugePressure: { kind: 'gauge pressure', dimension: 'pressure', usual: { from: 1e4, to: 5e7, units: pressureUnits } },
  ambientPressure: {
    kind: 'absolute pressure',
    dimension: 'pressure',
    usual: { from: 2e4, to: 5e6, units: pressureUnits },
  },
  temperature: {
    kind: 'temperature',
    dimension: 'temperature',
    usual: { from: 200, to: 400, units: ['K', '°C', '°F'] },
  },
  internalVolume: {
    kind: 'internal volume',
    dimension: 'volume',
    usual: { from: 1e-5, to: 5, units: ['m³', 'L', 'ft³'] },
  },
}

/** Name of a quantity that rows may state. */
export type RowInputName = 'pressure' | 'gaugePressure' | 'ambientPressure' | 'temperature' | 'internalVolume'
