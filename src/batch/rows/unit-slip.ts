import { LitrebarError } from '../../errors/index.ts'
import { allUnits, type Unit } from '../../units/index.ts'

/** The sizes of a column that are met, SI, and the units that are taken for one another. */
export interface SlipUnits {
  readonly from: number
  readonly to: number
  /** Symbols. */
  readonly units: readonly string[]
}

/**
 * Refuses a column whose sizes betray another unit than the stated one, such as bar given as Pa. Judged by the middle value of the
 * first block, so that single bad rows do not speak for a column.
 *
 * @param argument - the input with its path
 * @param values - SI, as read with the stated unit; NaN is passed over
 * @param stated - the unit that was stated
 * @param usual - the sizes that are met
 * @throws LitrebarError `unit`, with the unit that would explain the sizes
 */
export function requireUsualSizes(argument: string, values: Float64Array, stated: Unit, usual: SlipUnits): void {
  const every = Math.ceil(values.length / judged)
  const known = values.filter((value, row) => row % every === 0 && value - value === 0).sort()
  const middle = known[known.length >> 1]
  if (middle === undefined || (middle >= usual.from && middle <= usual.to)) return
  const number = (middle - (stated.offset ?? 0)) / stated.factor
  const meant = usual.units.filter((symbol) => {
    const unit = allUnits.find((each) => each.symbol === symbol)
    if (unit === undefined || symbol === stated.symbol) return false
    const si = number * unit.factor + (unit.offset ?? 0)
    return si >= usual.from && si <= usual.to
  })
  throw new LitrebarError({
    code: 'unit',
    argument,
    value: `around ${Number(number.toPrecision(4))} ${stated.symbol}`,
    expected: `sizes that are met in practice, from ${inStated(usual.from, stated)} to ${inStated(usual.to, stated)} ${stated.symbol}`,
    hint:
      meant.length === 0
        ? 'State the unit of the column, or allow unusual sizes.'
        : `Perhaps the column is in ${meant.join(' or ')}: state that unit, or allow unusual sizes.`,
  })
}

// So many rows, from all over the block, show where the middle lies.
const judged = 4096

function inStated(si: number, unit: Unit): number {
  return Number(((si - (unit.offset ?? 0)) / unit.factor).toPrecision(4))
}
