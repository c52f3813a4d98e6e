import { faultOfRow, isLitrebarError, requireRows, rowCodes } from '../../errors/index.ts'
import { rowCodeOf } from '../../errors/row-code.ts'
import type { AbsolutePressure, Fraction, MoleFraction, Temperature } from '../../units/index.ts'
import { type StateColumns, stateNames } from '../state/state-columns.ts'
import { dewPoint, saturatedWaterFraction } from './dew-point.ts'
import { relativeHumidity, waterFractionFromHumidity } from './relative-humidity.ts'

/** Water by row. */
export interface WaterFractionColumns {
  /** Mole fractions. */
  readonly waterFraction: Float64Array
  readonly code: Uint8Array
}

/**
 * Mole fractions of water in saturated air, row by row. A bad row is NaN and gets a code instead of an error.
 *
 * @param out - `waterFraction` receives the fractions; `code` a row code: `good`, `missing`, `outOfRange`, `outsideValidity` as
 *   `saturatedWaterFraction` refuses
 * @param columns - absolute pressures and temperatures, of one length
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `requireRows`
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const columns = { pressurePascal: Float64Array.of(200e5, 1e9), temperatureKelvin: Float64Array.of(293.15, 293.15) }
 * const out = { waterFraction: new Float64Array(2), code: new Uint8Array(2) }
 * saturatedWaterFractionInto(out, columns)
 * const saturated = (out.waterFraction[0] ?? 0) / partPerMillion.factor
 * saturated.toFixed(0) // => '214'
 * out.code.join(' ') // => '0 3'
 */
export function saturatedWaterFractionInto(
  out: WaterFractionColumns,
  columns: StateColumns,
  from = 0,
  to?: number,
): void {
  const end = requireRows([columns, stateNames], [out, waterNames], from, to)
  const { pressurePascal, temperatureKelvin } = columns
  rowByRow(out.waterFraction, out.code, [pressurePascal, temperatureKelvin], from, end, (pressure, temperature) =>
    saturatedWaterFraction({ pressure: pressure as AbsolutePressure, temperature: temperature as Temperature }),
  )
}

/**
 * Mole fractions of water in air of a relative humidity, row by row. A bad row is NaN and gets a code instead of an error.
 *
 * @param out - `waterFraction` receives the fractions; `code` a row code: `good`, `missing`, `outOfRange`, `outsideValidity` as
 *   `waterFractionFromHumidity` refuses
 * @param columns - relative humidities, 0 to 1, absolute pressures and temperatures, of one length
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `requireRows`
 * @source litrebar-derivation, as `enhancementFactor`
 */
export function waterFractionFromHumidityInto(
  out: WaterFractionColumns,
  columns: StateColumns & { readonly relativeHumidity: Float64Array },
  from = 0,
  to?: number,
): void {
  const names = ['relativeHumidity', ...stateNames]
  const end = requireRows([columns, names], [out, waterNames], from, to)
  const { relativeHumidity: humidity, pressurePascal, temperatureKelvin } = columns
  const given = [humidity, pressurePascal, temperatureKelvin] as const
  rowByRow(out.waterFraction, out.code, given, from, end, (humid, pressure, temperature) =>
    waterFractionFromHumidity({
      relativeHumidity: humid as Fraction,
      pressure: pressure as AbsolutePressure,
      temperature: temperature as Temperature,
    }),
  )
}

/**
 * Relative humidities of air, row by row. A bad row is NaN and gets a code instead of an error.
 *
 * @param out - `relativeHumidity` receives fractions; `code` a row code: `good`, `missing`, `outOfRange`, `outsideValidity` as
 *   `relativeHumidity` refuses
 * @param columns - mole fractions of water, absolute pressures and temperatures, of one length
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `requireRows`
 * @source litrebar-derivation, as `enhancementFactor`
 */
export function relativeHumidityInto(
  out: { readonly relativeHumidity: Float64Array; readonly code: Uint8Array },
  columns: StateColumns & { readonly waterFraction: Float64Array },
  from = 0,
  to?: number,
): void {
  const names = ['waterFraction', ...stateNames]
  const end = requireRows([columns, names], [out, ['relativeHumidity', 'code']], from, to)
  const { waterFraction, pressurePascal, temperatureKelvin } = columns
  const given = [waterFraction, pressurePascal, temperatureKelvin] as const
  rowByRow(out.relativeHumidity, out.code, given, from, end, (fraction, pressure, temperature) =>
    relativeHumidity({
      waterFraction: fraction as MoleFraction,
      pressure: pressure as AbsolutePressure,
      temperature: temperature as Temperature,
    }),
  )
}

/**
 * Dew or frost points of air, row by row, over water or ice, whichever settles first. A bad row is NaN and gets a code instead of an error.
 *
 * @param out - `dewPointKelvin` receives the temperatures; `code` a row code: `good`, `missing`, `outOfRange`, `outsideValidity` as
 *   `dewPoint` refuses, `notConverged`
 * @param columns - mole fractions of water, and absolute pressures, of one length
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `requireRows`
 * @source litrebar-derivation, as `enhancementFactor`
 */
export function dewPointInto(
  out: { readonly dewPointKelvin: Float64Array; readonly code: Uint8Array },
  columns: { readonly waterFraction: Float64Array; readonly pressurePascal: Float64Array },
  from = 0,
  to?: number,
): void {
  const end = requireRows([columns, ['waterFraction', 'pressurePascal']], [out, ['dewPointKelvin', 'code']], from, to)
  const { waterFraction, pressurePascal } = columns
  rowByRow(
    out.dewPointKelvin,
    out.code,
    [waterFraction, pressurePascal],
    from,
    end,
    (fraction, pressure) =>
      dewPoint({ waterFraction: fraction as MoleFraction, pressure: pressure as AbsolutePressure }).temperature,
  )
}

const waterNames = ['waterFraction', 'code']

/** Each row takes some microseconds: its checks are those of the function itself, which tell more than a range. */
function rowByRow(
  result: Float64Array,
  code: Uint8Array,
  [first, second, third = second]: readonly [Float64Array, Float64Array, Float64Array?],
  from: number,
  to: number,
  of: (first: number, second: number, third: number) => number,
): void {
  for (let row = from; row < to; row++) {
    const a = first[row] as number
    const b = second[row] as number
    const c = third[row] as number
    result[row] = Number.NaN
    try {
      result[row] = of(a, b, c)
      code[row] = rowCodes.good
    } catch (thrown) {
      if (!isLitrebarError(thrown)) throw thrown
      code[row] = faultOfRow(rowCodeOf(thrown.code), a, b, c)
    }
  }
}
