import { faultOfRow, isLitrebarError, requireRows, rowCodes } from '../../errors/index.ts'
import { type GasModel, type GasModelOption, type Mixture, molarDensityInto } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import { isWithin } from '../../units/index.ts'
import { pressure, temperature } from '../accepted-contents.ts'
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'

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
 * @param out - `developedPressurePascal` receives the absolute pressures; `code` one of `rowCodes`: 0 for a good row, missing or out of
 *   range as `developedPressure` has it, condensing where the mixture is no gas in either state
 * @param columns - absolute pressures, their temperatures and the temperatures asked for, of one length
 * @param options - the mixture; `gas: 'ideal'` to show the difference
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `mixture` for fractions that are none; `input` for a column that is too short, an unknown key or word;
 *   `range` for rows that the columns do not have
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
  to?: number,
): void {
  const gas = gasModelOf(options, { mixture: true })
  const { mixture } = options
  requireMixture('options.mixture', mixture)
  const end = requireRows([columns, inNames], [out, ['developedPressurePascal', 'code']], from, to)
  const { developedPressurePascal: result, code } = out
  if (gas === 'real') molarDensityInto({ molarDensityMolePerCubicMetre: result, code }, columns, { mixture }, from, end)
  for (let row = from; row < end; row++) {
    const p = columns.pressurePascal[row] as number
    const t = columns.temperatureKelvin[row] as number
    const at = columns.atKelvin[row] as number
    const isAccepted = isWithin(p, pressure) && isWithin(t, temperature) && isWithin(at, temperature)
    // within these ranges the density has only one way to fail
    const isDense = gas === 'ideal' || code[row] === rowCodes.good
    code[row] = isAccepted ? (isDense ? rowCodes.good : rowCodes.condensing) : faultOfRow(rowCodes.outOfRange, p, t, at)
    if (code[row] !== rowCodes.good) {
      result[row] = Number.NaN
      continue
    }
    const density = gas === 'ideal' ? densityBy(gas, mixture, p, t) : (result[row] as number)
    developInto(result, code, row, { gas, mixture, density, at })
  }
}

const inNames = ['pressurePascal', 'temperatureKelvin', 'atKelvin']

/** One row: its pressure at the other temperature, or why there is none. */
function developInto(
  result: Float64Array,
  code: Uint8Array,
  row: number,
  {
    gas,
    mixture,
    density,
    at,
  }: { readonly gas: GasModel; readonly mixture: Mixture; readonly density: number; readonly at: number },
): void {
  try {
    result[row] = pressureBy(gas, mixture, density, at)
  } catch (thrown) {
    if (!isLitrebarError(thrown) || thrown.code !== 'outside-validity') throw thrown
    result[row] = Number.NaN
    // it is the pressure that leaves the range of the equation, or the state that is no gas
    code[row] = thrown.argument.endsWith('ressure') ? rowCodes.outsideValidity : rowCodes.condensing
  }
}
