import type { PressureDifference } from '../../units/index.ts'
import { type GasOptions, requireGasOptions } from '../gas/vessel-gas.ts'
import type { Ascent } from './ascent-gas.ts'
import { countedReserve, type ReserveCylinder, requireReserveCylinder } from './counted-reserve.ts'
import { type ReserveInput, reserveChanges } from './reserve-changes.table.ts'

/** By how much the reserve moves when one input is larger. */
export interface InputEffect {
  readonly input: ReserveInput
  /** In words: by 10 %, by 1 min. */
  readonly change: string
  readonly pressure: PressureDifference
}

/**
 * Effect of each input on a reserve: by how much the gauge must show more when one input is a little larger and all others stay.
 * Tells which figure is worth knowing better.
 *
 * @param ascent - as for `ascentReserve`
 * @param cylinder - as for `ascentReserve`
 * @param options - `gas: 'ideal'` to leave out compressibility
 * @returns a row for each input, with the change in words
 * @throws LitrebarError as `ascentReserve`
 * @source litrebar-derivation
 */
export function reserveEffects(
  ascent: Ascent,
  cylinder: ReserveCylinder,
  options: GasOptions = {},
): readonly InputEffect[] {
  requireGasOptions(options)
  requireReserveCylinder(cylinder, ascent)
  const { gaugePressure } = countedReserve(ascent, cylinder, options)
  return reserveChanges
    .filter(({ input }) => input !== 'stop.duration' || ascent.stop !== undefined)
    .map(({ input, change, step, changed }) => ({
      input,
      change,
      pressure: (countedReserve(...changed(ascent, cylinder, step), options).gaugePressure -
        gaugePressure) as PressureDifference,
    }))
}
