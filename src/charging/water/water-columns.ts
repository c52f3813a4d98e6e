import { faultOfRow, requireKeys, requireRows, rowCodes } from '../../errors/index.ts'
import { dryAir, molarDensity } from '../../gas-law/index.ts'
import { type AbsolutePressure, isWithin, type PlainNumber, type Temperature } from '../../units/index.ts'
import { flow, humidity } from '../accepted.ts'
import { requireSeparator, saturatedRatio, waterMolarMass } from './saturation.ts'

/** Running conditions by row, as a compressor’s log has them. */
export interface RunningColumns {
  readonly intakeTemperatureKelvin: Float64Array
  readonly relativeHumidity: Float64Array
  readonly separatorTemperatureKelvin: Float64Array
  /** Moist air at the intake. */
  readonly flowCubicMetrePerSecond: Float64Array
}

/** Water by row. */
export interface WaterColumns {
  /** Drained by all separators together. */
  readonly drainedKilogramPerSecond: Float64Array
  /** What goes on to the cartridge. */
  readonly carryOverKilogramPerSecond: Float64Array
  /** Standard uncertainty of it, from the enhancement factor. */
  readonly carryOverUncertaintyKilogramPerSecond: Float64Array
  readonly code: Uint8Array
}

const columnNames = [
  'intakeTemperatureKelvin',
  'relativeHumidity',
  'separatorTemperatureKelvin',
  'flowCubicMetrePerSecond',
] as const
const outNames = [
  'drainedKilogramPerSecond',
  'carryOverKilogramPerSecond',
  'carryOverUncertaintyKilogramPerSecond',
  'code',
] as const

/**
 * Water of a compressor in a column of running conditions: what its separators drain and what goes on to the cartridge. The last
 * separator decides, so only its pressure is asked for. Bad rows get a code of `rowCodes` instead of an error, and NaN.
 *
 * @param out - receives flows of water, kg/s, and `code`
 * @param columns - temperatures at intake and last separator, K, relative humidity, 0 to 1, flow of moist air at the intake, m³/s
 * @param options - intake pressure and pressure of the last separator, absolute, Pa, up to 350 bar
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `range` or `outside-validity` for a pressure; `input` for rows or columns that do not fit
 * @source litrebar-derivation, as `separatedWater`
 * @example
 * const columns = {
 *   intakeTemperatureKelvin: Float64Array.of(293.15, Number.NaN),
 *   relativeHumidity: Float64Array.of(0.6, 0.6),
 *   separatorTemperatureKelvin: Float64Array.of(308.15, 308.15),
 *   flowCubicMetrePerSecond: Float64Array.of(100 / 60_000, 100 / 60_000),
 * }
 * const made = () => new Float64Array(2)
 * const out = {
 *   drainedKilogramPerSecond: made(),
 *   carryOverKilogramPerSecond: made(),
 *   carryOverUncertaintyKilogramPerSecond: made(),
 *   code: new Uint8Array(2),
 * }
 * separatedWaterInto(out, columns, { intakePressure: absolute(1, atmosphere), separatorPressure: absolute(225, bar) })
 * inUnit(measure(out.carryOverKilogramPerSecond[0]!, kilogramPerSecond), gramPerHour).toFixed(2) // => '2.02'
 * out.code.join(' ') // => '0 1'
 */
export function separatedWaterInto(
  out: WaterColumns,
  columns: RunningColumns,
  options: { readonly intakePressure: AbsolutePressure; readonly separatorPressure: AbsolutePressure },
  from: PlainNumber = 0,
  to?: PlainNumber,
): void {
  requireKeys('options', options, { intakePressure: true, separatorPressure: true })
  const { intakePressure, separatorPressure } = options
  requireSeparator('options', { pressure: intakePressure, temperature: 293.15 as Temperature })
  requireSeparator('options', { pressure: separatorPressure, temperature: 293.15 as Temperature })
  const end = requireRows([columns, columnNames], [out, outNames], from, to)
  const { intakeTemperatureKelvin, relativeHumidity, separatorTemperatureKelvin, flowCubicMetrePerSecond } = columns
  for (let row = from; row < end; row++) {
    const intake = intakeTemperatureKelvin[row] as number
    const humid = relativeHumidity[row] as number
    const cooled = separatorTemperatureKelvin[row] as number
    const drawn = flowCubicMetrePerSecond[row] as number
    const code = codeOf(intake, humid, cooled, drawn)
    out.code[row] = code
    let drained = Number.NaN
    let carried = Number.NaN
    let doubt = Number.NaN
    if (code === rowCodes.good) {
      const full = saturatedRatio({ pressure: intakePressure, temperature: intake as Temperature }, 'real')
      const fraction = (humid * full.ratio) / (1 + full.ratio)
      const takenIn = fraction / (1 - fraction)
      const held = saturatedRatio({ pressure: separatorPressure, temperature: cooled as Temperature }, 'real')
      const perRatio =
        drawn * molarDensity(dryAir, intakePressure, intake as Temperature) * (1 - fraction) * waterMolarMass
      const isSaturated = takenIn >= held.ratio
      carried = perRatio * (isSaturated ? held.ratio : takenIn)
      drained = isSaturated ? perRatio * (takenIn - held.ratio) : 0
      doubt = carried * (isSaturated ? held.relative : full.relative)
    }
    out.drainedKilogramPerSecond[row] = drained
    out.carryOverKilogramPerSecond[row] = carried
    out.carryOverUncertaintyKilogramPerSecond[row] = doubt
  }
}

function codeOf(intake: number, humid: number, cooled: number, drawn: number): number {
  if (!isWithin(humid, humidity) || !isWithin(drawn, flow))
    return faultOfRow(rowCodes.outOfRange, intake, humid, cooled, drawn)
  const fits = (t: number): boolean => t >= 213.15 && t <= 372
  if (fits(intake) && fits(cooled)) return rowCodes.good
  return faultOfRow(intake > 0 && cooled > 0 ? rowCodes.outsideValidity : rowCodes.outOfRange, intake, cooled)
}
