import { LitrebarError, requireKeys, rowCodes } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { one } from '../../units/fraction.ts'
import { bar } from '../../units/pressure.ts'
import type { AbsolutePressure, Fraction, MolarDensity, Temperature } from '../../units/quantity.ts'
import { reducedDensityAt } from '../equation/density-solve.ts'
import { equationFor } from '../equation/gas-equation.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import type { Equation } from '../equation/gerg2008.ts'
import { isGas } from '../equation/single-phase.ts'
import { faultOfState, requireStateRange, stateTemperature } from '../equation/state-range.ts'
import type { Mixture } from '../mixture/mixture.ts'
import {
  type Box,
  gridOf,
  interpolated,
  requireBox,
  requireTable,
  type Table,
  type Tabulable,
  tableWithin,
} from './state-table.ts'

/** What a compiled mixture is asked for. */
export interface CompileOptions extends Box {
  /** Largest relative error of the density against the full equation, 1e-12 to 0.01. 5e-9 is usual. */
  readonly tolerance: number
}

/** A mixture compiled to a table over a box of states. */
export interface CompiledMixture extends Box, Table {
  readonly mixture: Mixture
  /** As asked for. */
  readonly tolerance: number
}

/**
 * Compiles a mixture to a table over a box of pressures and temperatures, for loops over many millions of states.
 * The table is checked against the full equation when it is made; its error is in the result. Where the mixture would
 * condense the box is cut, by whole cells.
 *
 * @param mixture - the gas
 * @param options - lowest and highest temperature, K, within 90 to 700 K; lowest and highest pressure, absolute, Pa,
 *   up to 700 bar; largest relative error of the density, 1e-12 to 0.01
 * @returns the table, with the error found
 * @throws LitrebarError `range` if a limit or the tolerance is out of range, or the box is empty; `outside-validity` if
 *   the box leaves the range of the equation or nothing in it is a gas; `not-converged` if 128 × 64 cells do not
 *   reach the tolerance
 * @source gerg-2008
 * @example
 * const box = {
 *   temperature: [temperatureOf(-10, celsius), temperatureOf(60, celsius)],
 *   pressure: [absolute(1, bar), absolute(300, bar)],
 *   tolerance: 5e-9,
 * } as const
 * const air = compileMixture(dryAir, box)
 * compiledMolarDensity(air, absolute(200, bar), temperatureOf(20, celsius)).toFixed(1) // => '7991.2'
 */
export function compileMixture(mixture: Mixture, options: CompileOptions): CompiledMixture {
  requireKeys('options', options, { tolerance: true, temperature: true, pressure: true })
  const { tolerance } = options
  requireWithin('options.tolerance', tolerance, { atLeast: 1e-12, atMost: 0.01, unit: one, hint: '5e-9 is usual.' })
  requireBox('options.temperature', options.temperature, stateTemperature)
  requireBox('options.pressure', options.pressure, boxPressure)
  const equation = equationFor(mixture)
  return { mixture, ...options, ...tableWithin(densityPerPressure(equation), options) }
}

// densities of less are lost to rounding
const boxPressure: Accepted = { atLeast: 1e-5, atMost: 700, unit: bar, hint: 'Begin the box at 1 Pa or above.' }

// ρ/p is smooth down to no pressure at all
function densityPerPressure(equation: Equation): Tabulable {
  return {
    value: (temperature, pressure) =>
      (reducedDensityAt(equation, pressure, temperature) * equation.reducingDensity) / pressure,
    isSound: (temperature, pressure) =>
      isGas(equation, pressure, temperature, reducedDensityAt(equation, pressure, temperature)),
    error: (interpolated, full) => Math.abs(interpolated / full - 1),
  }
}

/**
 * Molar density from a compiled mixture.
 *
 * @param compiled - from `compileMixture`
 * @param pressure - absolute, Pa, within the box
 * @param temperature - K, within the box
 * @returns molar density, mol/m³, within the error stated in `compiled`
 * @throws LitrebarError `range` for what is not finite; `outside-validity` outside the box, or where it was cut
 * @source gerg-2008
 * @example
 * const box = {
 *   temperature: [temperatureOf(0, celsius), temperatureOf(40, celsius)],
 *   pressure: [absolute(1, bar), absolute(300, bar)],
 *   tolerance: 1e-6,
 * } as const
 * compiledMolarDensity(compileMixture(nitrox(0.32), box), absolute(1, bar), temperatureOf(0, celsius)).toFixed(3)
 * // => '44.059'
 */
export function compiledMolarDensity(
  compiled: CompiledMixture,
  pressure: AbsolutePressure,
  temperature: Temperature,
): MolarDensity {
  return inBox(compiled, pressure, temperature) as MolarDensity
}

/**
 * Compressibility factor from a compiled mixture.
 *
 * @param compiled - from `compileMixture`
 * @param pressure - absolute, Pa, within the box
 * @param temperature - K, within the box
 * @returns Z, within the error stated in `compiled`
 * @throws LitrebarError as `compiledMolarDensity`
 * @source gerg-2008
 * @example
 * const box = {
 *   temperature: [temperatureOf(0, celsius), temperatureOf(40, celsius)],
 *   pressure: [absolute(1, bar), absolute(300, bar)],
 *   tolerance: 1e-6,
 * } as const
 * const air = compileMixture(dryAir, box)
 * compiledCompressibilityFactor(air, absolute(300, bar), temperatureOf(20, celsius)).toFixed(4) // => '1.1047'
 */
export function compiledCompressibilityFactor(
  compiled: CompiledMixture,
  pressure: AbsolutePressure,
  temperature: Temperature,
): Fraction {
  const density = inBox(compiled, pressure, temperature)
  return (pressure / (gerg2008GasConstant * temperature * density)) as Fraction
}

function inBox(compiled: CompiledMixture, pressure: number, temperature: number): number {
  requireTable('compiled', compiled, 'compileMixture')
  const { cells, coefficients } = compiled
  const [coldest, hottest] = compiled.temperature
  const [lowest, highest] = compiled.pressure
  const isState = typeof pressure === 'number' && typeof temperature === 'number'
  if (isState && pressure >= lowest && pressure <= highest && temperature >= coldest && temperature <= hottest) {
    const { rows, inverseLow, inverseStep, pressureStep } = gridOf(compiled, cells)
    const x = (1 / temperature - inverseLow) / inverseStep
    const density = pressure * interpolated(coefficients, rows, cells, x, (pressure - lowest) / pressureStep)
    if (!Number.isNaN(density)) return density
  }
  requireStateRange(pressure, temperature)
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'state',
    value: `${pressure / 1e5} bar and ${temperature} K`,
    expected: `gas within ${lowest / 1e5} to ${highest / 1e5} bar and ${coldest} to ${hottest} K`,
    hint: 'Compile a wider box, or ask molarDensity what is wrong with the state.',
  })
}

/**
 * Densities of a column from a compiled mixture: the loop behind `molarDensityInto`.
 *
 * @param out - densities, mol/m³, NaN where the row is bad; `code` the row code: outside the box `outsideValidity`, where it was cut `condensing`
 * @param compiled - the table
 * @param columns - absolute pressures, Pa, and temperatures, K
 * @param from - first row
 * @param to - row after the last
 */
export function interpolateInto(
  out: { readonly molarDensityMolePerCubicMetre: Float64Array; readonly code: Uint8Array },
  compiled: CompiledMixture,
  columns: { readonly pressurePascal: Float64Array; readonly temperatureKelvin: Float64Array },
  from: number,
  to: number,
): void {
  const { molarDensityMolePerCubicMetre: densities, code } = out
  const { pressurePascal, temperatureKelvin } = columns
  const { cells, coefficients } = compiled
  const [coldest, hottest] = compiled.temperature
  const [lowest, highest] = compiled.pressure
  const { rows, inverseLow, inverseStep, pressureStep } = gridOf(compiled, cells)
  const perInverse = 1 / inverseStep
  const perPascal = 1 / pressureStep
  for (let row = from; row < to; row++) {
    const pressure = pressurePascal[row] as number
    const temperature = temperatureKelvin[row] as number
    if (pressure >= lowest && pressure <= highest && temperature >= coldest && temperature <= hottest) {
      const x = (1 / temperature - inverseLow) * perInverse
      densities[row] = pressure * interpolated(coefficients, rows, cells, x, (pressure - lowest) * perPascal)
      code[row] = rowCodes.good
    } else {
      densities[row] = Number.NaN
      code[row] = faultOfState(pressure, temperature)
    }
  }
  if (compiled.cellsCut === 0) return
  for (let row = from; row < to; row++) {
    if (code[row] === rowCodes.good && Number.isNaN(densities[row])) code[row] = rowCodes.condensing
  }
}
