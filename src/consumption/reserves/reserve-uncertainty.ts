import { requireKeys } from '../../errors/index.ts'
import { normalDistribution, propagate } from '../../uncertainty/index.ts'
import type { PressureDifference } from '../../units/index.ts'
import type { GasOptions } from '../gas/vessel-gas.ts'
import type { Ascent } from './ascent-gas.ts'
import { countedReserve, type ReserveCylinder } from './counted-reserve.ts'
import { type ReserveInput, reserveChanges } from './reserve-changes.table.ts'

/**
 * Standard uncertainties of the inputs of a reserve. As fractions: breathers (all together), stress factor, ascent rate, internal volume.
 * In SI: depth, m; times, s; temperature, K; residual pressure, Pa.
 */
export type ReserveUncertainties = Partial<Readonly<Record<Exclude<ReserveInput, 'maximumPermissibleError'>, number>>>

/** How well a reserve is known from how well its inputs are. */
export interface ReserveUncertainty {
  /** Of the gauge pressure before rounding, first order. */
  readonly standardUncertainty: PressureDifference
  /** Whether first order is enough, as `propagate` tests it. */
  readonly linear: boolean
  /** Share of each input in the variance. */
  readonly shares: readonly { readonly input: string; readonly share: number }[]
}

/** Uncertainty of the gauge pressure of a reserve. */
export function reserveUncertainty(
  ascent: Ascent,
  cylinder: ReserveCylinder,
  uncertainties: ReserveUncertainties,
  options: GasOptions,
): ReserveUncertainty {
  const known = reserveChanges.filter(
    ({ input }) => input !== 'maximumPermissibleError' && (input !== 'stop.duration' || ascent.stop !== undefined),
  )
  requireKeys(
    'options.standardUncertainties',
    uncertainties,
    Object.fromEntries(known.map(({ input }) => [input, false])),
  )
  const stated = uncertainties as Readonly<Record<string, number | undefined>>
  const rows = known.filter(({ input }) => stated[input] !== undefined)
  const inputs = Object.fromEntries(rows.map(({ input }) => [input, normalDistribution<number>(0, stated[input] ?? 0)]))
  const found = propagate((values: Readonly<Record<string, number>>): number => {
    let changed: readonly [Ascent, ReserveCylinder] = [ascent, cylinder]
    for (const row of rows) changed = row.changed(...changed, values[row.input] as number)
    return countedReserve(...changed, options).gaugePressure
  }, inputs)
  return {
    standardUncertainty: found.standardUncertainty as PressureDifference,
    linear: found.linear,
    shares: found.contributions.map(({ input, share }) => ({ input, share })),
  }
}
