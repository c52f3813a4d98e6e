import { isLitrebarError, requireKeys, requireRows, requireWord, rowCodes } from '../../errors/index.ts'
import {
  type CompiledMixture,
  compiledMolarDensity,
  gerg2008GasConstant,
  type Mixture,
  molarDensity,
} from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import { requireTable } from '../../gas-law/state/state-table.ts'
import type { AbsolutePressure, Temperature } from '../../units/index.ts'

/** The gas of a column of endurances: a mixture for the full equation, a compiled one for speed, or the ideal law. */
export type EnduranceColumnGas =
  | { readonly mixture: Mixture; readonly compiled?: never; readonly gas?: never }
  | { readonly compiled: CompiledMixture; readonly mixture?: never; readonly gas?: never }
  | { readonly gas: 'ideal'; readonly mixture?: never; readonly compiled?: never }

/**
 * Endurance row by row: one cylinder, one rate, one ambient pressure each. A cylinder below its residual pressure lasts 0 s.
 *
 * @param out - `enduranceSecond` receives the times; `code` 0 for a good row, else one of `rowCodes`, and the time NaN: `input` for a
 *   residual below the pressure around the diver
 * @param columns - internal volume, m³; pressure in the cylinder, residual and ambient pressure, absolute, Pa; temperature of the gas
 *   in the cylinder and as breathed, K; rate, m³/s; accepted as by `endurance`
 * @param options - `mixture`, or `compiled` with a box that holds all pressures, ambient ones too, or `gas: 'ideal'`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `input` for columns that are missing or too short, or for unknown options; `range` for rows that there are not
 * @source litrebar-derivation; gerg-2008, density
 */
export function enduranceInto(
  out: { readonly enduranceSecond: Float64Array; readonly code: Uint8Array },
  columns: {
    readonly internalVolumeCubicMetre: Float64Array
    readonly pressurePascal: Float64Array
    readonly residualPressurePascal: Float64Array
    readonly ambientPressurePascal: Float64Array
    readonly temperatureKelvin: Float64Array
    readonly breathedTemperatureKelvin: Float64Array
    readonly respiratoryMinuteVolumeCubicMetrePerSecond: Float64Array
  },
  options: EnduranceColumnGas,
  from = 0,
  to?: number,
): void {
  const end = requireRows([columns, columnNames], [out, ['enduranceSecond', 'code']], from, to)
  const density = densityBy(options)
  for (let row = from; row < end; row++) {
    const inside = columns.pressurePascal[row] as number
    const kept = columns.residualPressurePascal[row] as number
    const ambient = columns.ambientPressurePascal[row] as number
    const temperature = columns.temperatureKelvin[row] as number
    const breathed = columns.breathedTemperatureKelvin[row] as number
    const volume = columns.internalVolumeCubicMetre[row] as number
    const rate = columns.respiratoryMinuteVolumeCubicMetrePerSecond[row] as number
    const isInRange =
      inside > 0 &&
      inside <= highest &&
      kept <= highest &&
      ambient >= leastAmbient &&
      ambient <= mostAmbient &&
      volume > 0 &&
      volume <= largest &&
      rate > 0 &&
      rate <= fastest &&
      temperature >= coldest &&
      temperature <= warmest &&
      breathed >= coldest &&
      breathed <= warmest
    let code: number = rowCodes.good
    let time = Number.NaN
    if (!isInRange || Number.isNaN(kept)) {
      const values = [inside, kept, ambient, temperature, breathed, volume, rate]
      code = values.some(Number.isNaN) ? rowCodes.missing : rowCodes.outOfRange
    } else if (kept < ambient) code = rowCodes.input
    else if (kept >= inside) time = 0
    else {
      try {
        const amount = volume * (density(inside, temperature) - density(kept, temperature))
        time = amount / (density(ambient, breathed) * rate)
      } catch (thrown) {
        code = rowCodeOf(thrown)
      }
    }
    out.enduranceSecond[row] = time
    out.code[row] = code
  }
}

const columnNames = [
  'internalVolumeCubicMetre',
  'pressurePascal',
  'residualPressurePascal',
  'ambientPressurePascal',
  'temperatureKelvin',
  'breathedTemperatureKelvin',
  'respiratoryMinuteVolumeCubicMetrePerSecond',
]

// as `endurance` accepts them
const highest = 700e5
const leastAmbient = 0.2e5
const mostAmbient = 100e5
const largest = 100
const fastest = 500 / 60_000
const coldest = 223.15
const warmest = 373.15

/** The code of a row whose state has no density; rethrows what is not of this library. */
function rowCodeOf(thrown: unknown): number {
  if (!isLitrebarError(thrown)) throw thrown
  if (thrown.code === 'outside-validity') return rowCodes.outsideValidity
  if (thrown.code === 'mixture') return rowCodes.condensing
  return thrown.code === 'not-converged' ? rowCodes.notConverged : rowCodes.outOfRange
}

function densityBy(options: EnduranceColumnGas): (pressure: number, temperature: number) => number {
  requireKeys('options', options, { mixture: false, compiled: false, gas: false })
  const { mixture, compiled, gas } = options
  if (compiled !== undefined) {
    requireTable('options.compiled', compiled, 'compileMixture')
    return (p, t) => compiledMolarDensity(compiled, p as AbsolutePressure, t as Temperature)
  }
  if (mixture !== undefined) {
    requireMixture('options.mixture', mixture)
    return (p, t) => molarDensity(mixture, p as AbsolutePressure, t as Temperature)
  }
  requireWord('options.gas', gas, ['ideal'])
  return (p, t) => p / (gerg2008GasConstant * t)
}
