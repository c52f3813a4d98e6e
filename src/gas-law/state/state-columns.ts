import { LitrebarError, requireKeys, requireRows, rowCodes } from '../../errors/index.ts'
import { reducedDensityAt } from '../equation/density-solve.ts'
import { equationFor } from '../equation/gas-equation.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import { isGas } from '../equation/single-phase.ts'
import { faultOfState, isStateInRange } from '../equation/state-range.ts'
import { type Mixture, requireMixture } from '../mixture/mixture.ts'
import { type CompiledMixture, interpolateInto } from './compiled-mixture.ts'
import { requireTable } from './state-table.ts'

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
 * Molar densities of a column of states, by the full equation or from a compiled mixture. A bad row is NaN and gets
 * a code instead of an error.
 *
 * @param out - `molarDensityMolePerCubicMetre` receives the densities; `code` a row code: `good`, `missing`, `outOfRange`, `outsideValidity` outside
 *   the range of `molarDensity` or the box of the compiled mixture, `condensing` for a state that is not a gas
 * @param columns - absolute pressures and temperatures, of one length
 * @param options - the mixture, or one from `compileMixture`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `mixture` for fractions that are none; `input` for no gas or two; as `requireRows`
 * @source gerg-2008
 * @example
 * const columns = { pressurePascal: Float64Array.of(200e5, -1), temperatureKelvin: Float64Array.of(293.15, 293.15) }
 * const out = { molarDensityMolePerCubicMetre: new Float64Array(2), code: new Uint8Array(2) }
 * molarDensityInto(out, columns, { mixture: dryAir })
 * out.code.join(' ') // => '0 2'
 */
export function molarDensityInto(
  out: { readonly molarDensityMolePerCubicMetre: Float64Array; readonly code: Uint8Array },
  columns: StateColumns,
  options: ColumnGas,
  from = 0,
  to?: number,
): void {
  requireKeys('options', options, gasKeys)
  requireColumnGas(options)
  const end = requireRows([columns, stateNames], [out, ['molarDensityMolePerCubicMetre', 'code']], from, to)
  if (options.compiled !== undefined) interpolateInto(out, options.compiled, columns, from, end)
  else solveInto(out, options.mixture, columns, from, end)
}

/**
 * Compressibility factors of a column of states, by the full equation or from a compiled mixture. A bad row is NaN and
 * gets a code instead of an error.
 *
 * @param out - `compressibilityFactor` receives Z; `code` as for `molarDensityInto`
 * @param columns - absolute pressures and temperatures, of one length
 * @param options - the mixture, or one from `compileMixture`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `mixture` for fractions that are none; `input` for no gas or two; as `requireRows`
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
  to?: number,
): void {
  requireKeys('options', options, gasKeys)
  const end = requireRows([columns, stateNames], [out, ['compressibilityFactor', 'code']], from, to)
  const { pressurePascal, temperatureKelvin } = columns
  const { compressibilityFactor: z, code } = out
  molarDensityInto({ molarDensityMolePerCubicMetre: z, code }, columns, options, from, end)
  for (let row = from; row < end; row++) {
    z[row] =
      (pressurePascal[row] as number) / (gerg2008GasConstant * (temperatureKelvin[row] as number) * (z[row] as number))
  }
}

const gasKeys = { mixture: false, compiled: false }
/** Names of the columns of a state. */
export const stateNames = ['pressurePascal', 'temperatureKelvin']

/** Refuses the gas of a column unless it is one mixture or one compiled mixture. */
export function requireColumnGas(options: ColumnGas): void {
  const { mixture, compiled } = options
  if ((mixture === undefined) === (compiled === undefined)) {
    throw new LitrebarError({
      code: 'input',
      argument: 'options',
      value: mixture === undefined ? 'without a gas' : 'with two gases',
      expected: 'a mixture, or one from compileMixture()',
      hint: 'State mixture or compiled.',
    })
  }
  if (compiled === undefined) requireMixture('options.mixture', mixture)
  else requireTable('options.compiled', compiled, 'compileMixture')
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
    code[row] = isGood ? rowCodes.good : isInRange ? rowCodes.condensing : faultOfState(pressure, temperature)
  }
}
