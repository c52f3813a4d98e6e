import { requireKeys, requireList, requireText } from '../../errors/index.ts'
import {
  freeGasByModel,
  type GasContents,
  type Mixture,
  massOfGas,
  type ReferenceCondition,
} from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  bar,
  cubicFoot,
  cubicInch,
  type Fraction,
  type FreeGas,
  type GaugePressure,
  gauge,
  type InternalVolume,
  internalVolumeOf,
  kilogram,
  litre,
  type Mass,
  percent,
  pound,
  psi,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { gaugePressure } from '../accepted-contents.ts'
import { type CylinderSize, cylinderSizes } from './capacity-table.table.ts'

/** A cylinder to be listed. */
export interface ListedCylinder {
  readonly name: string
  readonly internalVolume: InternalVolume
  readonly servicePressure: GaugePressure
}

/** One row of a capacity table: quantities, to be shown in the units of `capacityColumns`. */
export interface CapacityRow<Reference extends string> extends ListedCylinder {
  readonly freeGas: FreeGas<Reference>
  readonly idealFreeGas: FreeGas<Reference>
  /** By how much the ideal gas overstates the content. */
  readonly idealExcess: Fraction
  readonly gasMass: Mass
}

/** What a capacity table is counted for. */
export interface CapacityTableCondition<Reference extends string> {
  readonly mixture: Mixture
  readonly temperature: Temperature
  readonly ambientPressure: AbsolutePressure
  readonly reference: ReferenceCondition<Reference>
}

/** The columns of a capacity table with their units in both systems, in order. */
export const capacityColumns = [
  { key: 'internalVolume', heading: 'internal volume', metric: litre, imperial: cubicInch },
  { key: 'servicePressure', heading: 'service pressure, gauge', metric: bar, imperial: psi },
  { key: 'freeGas', heading: 'free gas', metric: litre, imperial: cubicFoot },
  { key: 'idealFreeGas', heading: 'free gas, ideal', metric: litre, imperial: cubicFoot },
  { key: 'idealExcess', heading: 'ideal overstates by', metric: percent, imperial: percent },
  { key: 'gasMass', heading: 'mass of gas', metric: kilogram, imperial: pound },
] as const

/**
 * Capacity table: free gas by real and by ideal gas, and the mass of it, of many cylinders at their service pressures.
 *
 * @param cylinders - name, internal volume, m³, service pressure, gauge, Pa; `tradeSizes` gives a list
 * @param condition - mixture, temperature of the settled gas, K, ambient pressure, absolute, Pa, reference condition
 * @returns one row of quantities per cylinder, for `capacityColumns` to show in either system
 * @throws LitrebarError `range`, naming the field
 * @source common-practice, definition; density from gas-law
 * @example
 * const rows = capacityTable(tradeSizes(), {
 *   mixture: dryAir,
 *   temperature: temperatureOf(15, celsius),
 *   ambientPressure: absolute(1, atmosphere),
 *   reference: isoStandard,
 * })
 * rows.filter((row) => row.name === '12 L, 232 bar').map((row) => inUnit(row.freeGas, litre).toFixed(0)) // => ['2641']
 */
export function capacityTable<Reference extends string>(
  cylinders: readonly ListedCylinder[],
  condition: CapacityTableCondition<Reference>,
): readonly CapacityRow<Reference>[] {
  requireList('cylinders', cylinders, 0, 'List the cylinders: tradeSizes gives some.')
  requireKeys('condition', condition, { mixture: true, temperature: true, ambientPressure: true, reference: true })
  const { reference, ...state } = condition
  return cylinders.map((cylinder, k) => {
    requireKeys(`cylinders[${k}]`, cylinder, { name: true, internalVolume: true, servicePressure: true })
    requireText(`cylinders[${k}].name`, cylinder.name)
    requireWithin(`cylinders[${k}].servicePressure`, cylinder.servicePressure, gaugePressure)
    const contents: GasContents = {
      ...state,
      internalVolume: cylinder.internalVolume,
      gaugePressure: cylinder.servicePressure,
    }
    const { real, ideal, overstatement } = freeGasByModel(contents, { reference })
    return {
      ...cylinder,
      freeGas: real,
      idealFreeGas: ideal,
      idealExcess: overstatement,
      gasMass: massOfGas(contents),
    }
  })
}

/**
 * Sizes of cylinder as the trade names them, as rows for a capacity table.
 *
 * @returns name, internal volume, m³, service pressure, gauge, Pa
 * @source common-practice
 * @example
 * tradeSizes().length // => 10
 */
export function tradeSizes(): readonly ListedCylinder[] {
  return cylinderSizes.map(({ name, internalVolume, servicePressure }: CylinderSize) => ({
    name,
    internalVolume: internalVolumeOf(internalVolume.value, litre),
    servicePressure: gauge(servicePressure.value, servicePressure.unit === 'bar' ? bar : psi),
  }))
}
