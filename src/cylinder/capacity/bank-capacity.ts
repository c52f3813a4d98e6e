import { requireList } from '../../errors/index.ts'
import { freeGas, type GasContents } from '../../gas-law/index.ts'
import type { FreeGas, InternalVolume } from '../../units/index.ts'
import type { CapacityOptions } from './rated-capacity.ts'

/** What several cylinders hold together. */
export interface BankCapacity<Reference extends string> {
  readonly internalVolume: InternalVolume
  readonly freeGas: FreeGas<Reference>
  /** Of each cylinder, in their order. */
  readonly each: readonly FreeGas<Reference>[]
}

/**
 * Free gas of a twin set or a bank: the sum over its cylinders, which may differ in volume, pressure, temperature and mixture.
 * Joining unlike cylinders changes the pressures, not the sum: `equalise` gives the common pressure.
 *
 * @param cylinders - contents of each, as for `freeGas`; at least one
 * @param options - reference condition; `gas: 'ideal'` to show the difference
 * @returns internal volume and free gas together, and the free gas of each, m³
 * @throws LitrebarError `range`, naming the field; `input` for an empty list
 * @source common-practice, definition
 * @example
 * const cylinder = {
 *   internalVolume: internalVolumeOf(8.5, litre),
 *   gaugePressure: gauge(232, bar),
 *   ambientPressure: absolute(1, atmosphere),
 *   temperature: temperatureOf(15, celsius),
 *   mixture: dryAir,
 * }
 * const twin = bankCapacity([cylinder, cylinder], { reference: isoStandard })
 * const shown = [inUnit(twin.internalVolume, litre), inUnit(twin.freeGas, litre).toFixed(0)] // => [17, '3741']
 */
export function bankCapacity<Reference extends string>(
  cylinders: readonly GasContents[],
  options: CapacityOptions<Reference>,
): BankCapacity<Reference> {
  requireList('cylinders', cylinders, 1, 'List the cylinders of the bank.')
  const each = cylinders.map((contents) => freeGas(contents, options))
  return {
    internalVolume: cylinders.reduce((sum, contents) => sum + contents.internalVolume, 0) as InternalVolume,
    freeGas: each.reduce<number>((sum, one) => sum + one, 0) as FreeGas<Reference>,
    each,
  }
}
