import { reducedDensityAt } from '../equation/density-solve.ts'
import { equationFor } from '../equation/gas-equation.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import { isGas } from '../equation/single-phase.ts'
import { isStateInRange } from '../equation/state-range.ts'
import type { Mixture } from '../mixture/mixture.ts'
import { type CompiledMixture, interpolateInto } from './compiled-mixture.ts'

/** States by row. */
export interface StateColumns {
  /** Absolute. */
  readonly pressurePascal: Float64Array
  readonly temperatureKelvin: Float64Array
}

/** The gas of a column: a mixture for the full equation, or a compiled one for speed. */
export type ColumnGas =
  | { readonly mixture: Mixture; readonly compiled?: never }
  | { readonly compiled: CompiledMixture; readonly mixture?: never }

/**
 * Molar densities of a column of states, by the full equation or from a compiled mixture. Bad rows get a code instead
 * of an error, and NaN.
 *
 * @param out - `molarDensityMolePerCubicMetre` receives the densities; `code` 0 for a good row, 1 for one outside the
 *   range of `molarDensity` or the box of the compiled mixture, 2 for one that is no gas
 * @param columns - absolute pressures and temperatures, of one length
 * @param options - the mixture, or one from `compileMixture`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `mixture` for fractions that are none
 * @source gerg-2008
 * @example
 * const columns = { pressurePascal: Float64Array.of(200e5, -1), temperatureKelvin: Float64Array.of(293.15, 293.15) }
 * const out = { molarDensityMolePerCubicMetre: new Float64Array(2), code: new Uint8Array(2) }
 * molarDensityInto(out, columns, { mixture: dryAir })
 * out.code.join(' ') // => '0 1'
 */
export function molarDensityInto(
  out: { readonly molarDensityMolePerCubicMetre: Float64Array; readonly code: Uint8Array },
  columns: StateColumns,
  options: ColumnGas,
  from = 0,
  to: number = columns.pressurePascal.length,
): void {
  if (options.compiled !== undefined) interpolateInto(out, options.compiled, columns, from, to)
  else solveInto(out, options.mixture, columns, from, to)
}

/**
 * Compressibility factors of a column of states, by the full equation or from a compiled mixture. Bad rows get a code
 * instead of an error, and NaN.
 *
 * @param out - `compressibilityFactor` receives Z; `code` as for `molarDensityInto`
 * @param columns - absolute pressures and temperatures, of one length
 * @param options - the mixture, or one from `compileMixture`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `mixture` for fractions that are none
 * @source gerg-2008
 * @example
 * const columns = { pressurePascal: Float64Array.of(300e5), temperatureKelvin: Float64Array.of(293.15) }
 * const out = { compressibilityFactor: new Float64Array(1), code: new Uint8Array(1) }
 * compressibilityFactorInto(out, columns, { mixture: dryAir })
 * out.compressibilityFactor[0]?.toFixed(4) // => '1.1047'
 */
export function compressibilityFactorInto(
  out: { readonly compressibilityFactor: Float64Array; readonly code: Uint8Array },
  columns: StateColumns,
  options: ColumnGas,
  from = 0,
  to: number = columns.pressurePascal.length,
): void {
  const { pressurePascal, temperatureKelvin } = columns
  const { compressibilityFactor: z, code } = out
  molarDensityInto({ molarDensityMolePerCubicMetre: z, code }, columns, options, from, to)
  for (let row = from; row < to; row++) {
    z[row] =
      (pressurePascal[row] as number) / (gerg2008GasConstant * (temperatureKelvin[row] as number) * (z[row] as number))
  }
}

function solveInto(
  out: { readonly molarDensityMolePerCubicMetre: Float64Array; readonly code: Uint8Array },
  mixture: Mixture,
  { pressurePascal, temperatureKelvin }: StateColumns,
  from: number,
  to: number,
): void {
  const { molarDensityMolePerCubicMetre, code } = out
  const equation = equationFor(mixture)
  for (let row = from; row < to; row++) {
    const pressure = pressurePascal[row] as number
    const temperature = temperatureKelvin[row] as number
    const isInRange = isStateInRange(pressure, temperature)
    const delta = isInRange ? reducedDensityAt(equation, pressure, temperature) : Number.NaN
    const isGood = isInRange && isGas(equation, pressure, temperature, delta)
    molarDensityMolePerCubicMetre[row] = isGood ? delta * equation.reducingDensity : Number.NaN
    code[row] = isGood ? 0 : isInRange ? 2 : 1
  }
}
