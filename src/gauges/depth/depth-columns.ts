import { standardGravity, type WaterColumn } from '../../environment/index.ts'
import { faultOfRow, requireKeys, requireRows, rowCodes } from '../../errors/index.ts'
import { requireWithin } from '../../units/index.ts'
import { surroundingPressure } from '../accepted.ts'
import { type DepthGauge, pressurePerMetre, requireWater, zeroPressureNow } from './depth-gauge.ts'

/** What is worked out for each row of a pressure log. */
export interface DepthColumns {
  /** In the water that was stated. */
  readonly trueDepthMetre: Float64Array
  /** What the instrument shows; negative where it would stand before its zero. */
  readonly shownDepthMetre: Float64Array
  readonly code: Uint8Array
}

/**
 * Depths of a log of pressures: the true ones, and those that an instrument shows. A bad row gets NaN and a code.
 *
 * @param out - `trueDepthMetre`, `shownDepthMetre`, `code` of `rowCodes`
 * @param columns - `pressurePascal`, absolute
 * @param options - the water; the instrument, without gas sealed in its case
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `input` for columns or options; `range` for rows, water or instrument
 * @source openstax-college-physics, section 11.4; en-13319, rule of conversion
 */
export function depthFromPressureInto(
  out: DepthColumns,
  columns: { readonly pressurePascal: Float64Array },
  options: { readonly water: WaterColumn; readonly gauge: DepthGauge },
  from = 0,
  to?: number,
): void {
  const end = requireRows([columns, ['pressurePascal']], [out, ['trueDepthMetre', 'shownDepthMetre', 'code']], from, to)
  requireKeys('options', options, { water: true, gauge: true })
  const { water, gauge } = options
  requireWater('options.water', water)
  requireWithin('options.water.surfacePressure', water.surfacePressure, surroundingPressure)
  const zero = zeroPressureNow(gauge, undefined)
  const perShownMetre = pressurePerMetre(gauge.convention)
  const { surfacePressure, density, gravity = standardGravity } = water
  const perMetre = density * gravity
  const { pressurePascal } = columns
  const { trueDepthMetre, shownDepthMetre, code } = out
  for (let row = from; row < end; row++) {
    const pressure = pressurePascal[row] as number
    if (pressure >= surfacePressure && pressure <= 1.2e8) {
      trueDepthMetre[row] = (pressure - surfacePressure) / perMetre
      shownDepthMetre[row] = (pressure - zero) / perShownMetre
      code[row] = rowCodes.good
    } else {
      trueDepthMetre[row] = Number.NaN
      shownDepthMetre[row] = Number.NaN
      code[row] = faultOfRow(rowCodes.outOfRange, pressure)
    }
  }
}
