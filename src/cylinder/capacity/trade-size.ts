import type { ReferenceCondition } from '../../gas-law/index.ts'
import type { FreeGas, InternalVolume } from '../../units/index.ts'
import {
  type CapacityComparison,
  type CapacityCondition,
  internalVolumeForCapacity,
  ratedCapacity,
} from './rated-capacity.ts'

/** What a trade size comes to under one way of counting it. */
export interface TradeSizeReading<Reference extends string> {
  readonly countedBy: CapacityComparison<Reference>['countedBy'][number]
  /** The litres of water that this way implies. */
  readonly internalVolume: InternalVolume
  /** What a cylinder of that volume really holds at its service pressure. */
  readonly freeGas: FreeGas<Reference>
}

/**
 * Litres of water and of free gas behind a trade size, 80 cubic feet say, by each way in which the trade counts one: by the real gas, by the
 * ideal gas at absolute pressure, and as volume times gauge pressure. A shoulder or a catalogue does not say which.
 *
 * The readings differ by about 5 % at 3000 psi. Where the water capacity is stamped or was measured, it counts:
 * `compareRatedCapacity` holds the trade size against it.
 *
 * @param size - trade size as free gas at the reference condition of the options, m³, above 0; service pressure, gauge, Pa; ambient pressure,
 *   absolute, Pa; temperature of the settled gas, K; mixture
 * @param options - the reference condition that the trade size is taken at
 * @returns one reading for each way of counting, the largest volume first
 * @throws LitrebarError as `internalVolumeForCapacity`
 * @source common-practice, definition; density from gas-law
 * @example
 * const readings = tradeSizeReadings(
 *   {
 *     ratedCapacity: freeGasOf(80, cubicFoot, roomCondition),
 *     servicePressure: gauge(3000, psi),
 *     ambientPressure: absolute(1, atmosphere),
 *     temperature: temperatureOf(20, celsius),
 *     mixture: dryAir,
 *   },
 *   { reference: roomCondition },
 * )
 * const volumes = readings.map(({ internalVolume }) => inUnit(internalVolume, litre).toFixed(2)) // => ['11.40', '11.10', '11.04']
 * const held = readings.map(({ freeGas }) => inUnit(freeGas, litre).toFixed(0)) // => ['2265', '2206', '2195']
 */
export function tradeSizeReadings<Reference extends string>(
  size: CapacityCondition & { readonly ratedCapacity: FreeGas<NoInfer<Reference>> },
  options: { readonly reference: ReferenceCondition<Reference> },
): readonly TradeSizeReading<Reference>[] {
  const real = internalVolumeForCapacity(size, options)
  const ideal = internalVolumeForCapacity(size, { ...options, gas: 'ideal' })
  const product = ((size.ratedCapacity * options.reference.pressure) / size.servicePressure) as InternalVolume
  const { ratedCapacity: _, ...condition } = size
  const reading = (
    countedBy: TradeSizeReading<Reference>['countedBy'],
    internalVolume: InternalVolume,
  ): TradeSizeReading<Reference> => ({
    countedBy,
    internalVolume,
    freeGas: ratedCapacity({ ...condition, internalVolume }, options),
  })
  return [reading('real gas', real), reading('ideal gas', ideal), reading('volume times gauge pressure', product)].sort(
    (a, b) => b.internalVolume - a.internalVolume,
  )
}
