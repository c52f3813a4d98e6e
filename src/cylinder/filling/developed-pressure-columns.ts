import { type GasModelOption, type Mixture, molarDensityInto } from '../../gas-law/index.ts'
import { isWithin } from '../../units/index.ts'
import { pressure, temperature } from '../accepted-contents.ts'
import { densityBy, pressureBy } from '../cylinder-gas.ts'

/** Closed rigid cylinders by row. */
export interface ClosedCylinderColumns {
  /** Absolute. */
  readonly pressurePascal: Float64Array
  readonly temperatureKelvin: Float64Array
  /** The temperature of the pressure that is asked for. */
  readonly atKelvin: Float64Array
}

/**
 * Developed pressures of a column of closed rigid cylinders. Bad rows get a code instead of an error, and NaN.
 *
 * @param out - `developedPressurePascal` receives the absolute pressures; `code` 0 for a good row, 1 for one outside the ranges of
 *   `developedPressure`, 2 for one that is no gas in either state
 * @param columns - absolute pressures, their temperatures and the temperatures asked for, of one length
 * @param options - the mixture; `gas: 'ideal'` to show the difference
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `mixture` for fractions that are none
 * @source litrebar-derivation, constant amount; density from gas-law
 * @example
 * const columns = {
 *   pressurePascal: Float64Array.of(201e5, 201e5),
 *   temperatureKelvin: Float64Array.of(288.15, Number.NaN),
 *   atKelvin: Float64Array.of(338.15, 338.15),
 * }
 * const out = { developedPressurePascal: new Float64Array(2), code: new Uint8Array(2) }
 * developedPressureInto(out, columns, { mixture: dryAir })
 * const shown = [out.developedPressurePascal[0]?.toFixed(0), ...out.code] // => ['25151932', 0, 1]
 */
export function developedPressureInto(
  out: { readonly developedPressurePascal: Float64Array; readonly code: Uint8Array },
  columns: ClosedCylinderColumns,
  options: GasModelOption & { readonly mixture: Mixture },
  from = 0,
  to: number = columns.pressurePascal.length,
): void {
  const { developedPressurePascal: result, code } = out
  const { mixture, gas = 'real' } = options
  if (gas === 'real') molarDensityInto({ molarDensityMolePerCubicMetre: result, code }, columns, { mixture }, from, to)
  for (let row = from; row < to; row++) {
    const p = columns.pressurePascal[row] as number
    const t = columns.temperatureKelvin[row] as number
    const at = columns.atKelvin[row] as number
    if (!(isWithin(p, pressure) && isWithin(t, temperature) && isWithin(at, temperature))) code[row] = 1
    else if (gas === 'ideal') {
      code[row] = 0
      result[row] = densityBy(gas, mixture, p, t)
    }
    if (code[row] !== 0) {
      result[row] = Number.NaN
      continue
    }
    try {
      result[row] = pressureBy(gas, mixture, result[row] as number, at)
    } catch {
      // cold enough to condense, or beyond the pressures of the equation
      code[row] = 2
      result[row] = Number.NaN
    }
  }
}
