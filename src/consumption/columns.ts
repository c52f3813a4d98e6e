import { pressureAtDepthInto, type WaterColumn } from '../environment/index.ts'
import { LitrebarError } from '../errors/index.ts'
import {
  type CompiledMixture,
  compiledMolarDensity,
  gerg2008GasConstant,
  type Mixture,
  molarDensity,
} from '../gas-law/index.ts'
import type { AbsolutePressure, Temperature } from '../units/index.ts'

/** Why a row has no result. */
export const useCodes = { fine: 0, notFinite: 1, notLater: 2, gap: 3 } as const

/** What a column of uses is reckoned with. */
export interface UseColumnOptions {
  readonly water: WaterColumn
  /** The longest time between two rows, s; none unless given. */
  readonly longestGapSecond?: number
}

/**
 * Pressure times volume breathed since the row before, for long records: exact for even changes between two rows, so that
 * the column adds up to the use of the whole record, and parts of it can be worked out apart.
 * The first row of all gets 0.
 *
 * @param out - `pressureVolumePascalCubicMetre` receives the use; `code` 0 for a good row, else one of `useCodes`, and the use 0
 * @param columns - time, s; depth, m, 0 to 11 000; rate, m³/s, of the stretch that ends at the row
 * @param options - the water, checked once; the longest gap
 * @param from - first row, 0 unless given; the row before it is read
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `range` for a field of the water
 * @source litrebar-derivation
 */
export function pressureVolumeBreathedInto(
  out: { readonly pressureVolumePascalCubicMetre: Float64Array; readonly code: Uint8Array },
  columns: {
    readonly timeSecond: Float64Array
    readonly depthMetre: Float64Array
    readonly respiratoryMinuteVolumeCubicMetrePerSecond: Float64Array
  },
  options: UseColumnOptions,
  from = 0,
  to: number = columns.timeSecond.length,
): void {
  const { timeSecond, depthMetre, respiratoryMinuteVolumeCubicMetrePerSecond: rates } = columns
  const { pressureVolumePascalCubicMetre: use, code } = out
  const { water, longestGapSecond = Infinity } = options
  const [surface, perMetre] = lineOf(water)
  const half = perMetre / 2
  let before = Math.max(from - 1, 0)
  let lastTime = timeSecond[before] as number
  let lastDepth = depthMetre[before] as number
  for (let row = from; row < to; row++) {
    const time = timeSecond[row] as number
    const depth = depthMetre[row] as number
    const rate = rates[row] as number
    const duration = time - lastTime
    const product = rate * (surface + half * (lastDepth + depth)) * duration
    // one comparison for the usual row; what is wrong is looked for only in the others
    const isFine = product >= 0 && product < Infinity && duration > 0 && duration <= longestGapSecond
    const fault =
      isFine && rate >= 0 && depth >= 0 && depth <= 11_000 && lastDepth >= 0 && lastDepth <= 11_000
        ? useCodes.fine
        : faultOf(product, Math.min(depth, lastDepth), Math.max(depth, lastDepth), rate, duration, row === before)
    code[row] = fault
    use[row] = fault === useCodes.fine ? product : 0
    before = -1
    lastTime = time
    lastDepth = depth
  }
}

function faultOf(
  product: number,
  shallower: number,
  deeper: number,
  rate: number,
  duration: number,
  isFirst: boolean,
): number {
  if (product - product !== 0 || !(shallower >= 0 && deeper <= 11_000) || !(rate >= 0)) return useCodes.notFinite
  if (isFirst) return useCodes.fine
  return duration > 0 ? useCodes.gap : useCodes.notLater
}

/** Pressure at the surface and its growth with depth, both checked by the environment. */
function lineOf(water: WaterColumn): readonly [surface: number, perMetre: number] {
  const out = { pressurePascal: new Float64Array(2), code: new Uint8Array(2) }
  pressureAtDepthInto(out, { depthMetre: Float64Array.of(0, 1) }, water)
  const [surface = 0, below = 0] = out.pressurePascal
  return [surface, below - surface]
}

/** Why a row of endurances has no result. */
export const enduranceCodes = { fine: 0, notFinite: 1, residualAbovePressure: 2, outsideValidity: 3 } as const

/** The gas of a column of endurances: a mixture for the full equation, a compiled one for speed, or the ideal law. */
export type EnduranceColumnGas =
  | { readonly mixture: Mixture; readonly compiled?: never; readonly gas?: never }
  | { readonly compiled: CompiledMixture; readonly mixture?: never; readonly gas?: never }
  | { readonly gas: 'ideal'; readonly mixture?: never; readonly compiled?: never }

/**
 * Endurance row by row: one cylinder, one rate, one ambient pressure each.
 *
 * @param out - `enduranceSecond` receives the times; `code` 0 for a good row, else one of `enduranceCodes`, and the time NaN
 * @param columns - internal volume, m³; pressure in the cylinder, residual and ambient pressure, absolute, Pa; temperature of the gas
 *   in the cylinder and as breathed, K; rate, m³/s
 * @param options - `mixture`, or `compiled` with a box that holds all pressures, ambient ones too, or `gas: 'ideal'`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
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
  to: number = columns.pressurePascal.length,
): void {
  const density = densityBy(options)
  for (let row = from; row < to; row++) {
    const inside = columns.pressurePascal[row] as number
    const kept = columns.residualPressurePascal[row] as number
    const ambient = columns.ambientPressurePascal[row] as number
    const temperature = columns.temperatureKelvin[row] as number
    const breathed = columns.breathedTemperatureKelvin[row] as number
    const volume = columns.internalVolumeCubicMetre[row] as number
    const rate = columns.respiratoryMinuteVolumeCubicMetrePerSecond[row] as number
    let code: number = enduranceCodes.fine
    let time = Number.NaN
    const isState = kept > 0 && inside < Infinity && ambient > 0 && ambient < Infinity && volume > 0 && rate > 0
    if (!(isState && temperature > 0 && breathed > 0)) code = enduranceCodes.notFinite
    else if (!(kept <= inside)) code = enduranceCodes.residualAbovePressure
    else {
      try {
        const amount = volume * (density(inside, temperature) - density(kept, temperature))
        time = amount / (density(ambient, breathed) * rate)
        if (!(time < Infinity)) code = enduranceCodes.notFinite
      } catch (thrown) {
        if (!(thrown instanceof LitrebarError)) throw thrown
        code = enduranceCodes.outsideValidity
      }
    }
    out.enduranceSecond[row] = code === enduranceCodes.fine ? time : Number.NaN
    out.code[row] = code
  }
}

function densityBy({ mixture, compiled }: EnduranceColumnGas): (pressure: number, temperature: number) => number {
  if (compiled !== undefined) {
    return (p, t) => compiledMolarDensity(compiled, p as AbsolutePressure, t as Temperature)
  }
  if (mixture !== undefined) return (p, t) => molarDensity(mixture, p as AbsolutePressure, t as Temperature)
  return (p, t) => p / (gerg2008GasConstant * t)
}
