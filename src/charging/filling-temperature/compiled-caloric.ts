import { isLitrebarError, LitrebarError, requireKeys } from '../../errors/index.ts'
import { gasState, gerg2008GasConstant, type Mixture, molarDensity, pressureAtDensity } from '../../gas-law/index.ts'
import { type Box, gridOf, interpolated, requireBox, type Table, tableWithin } from '../../gas-law/state/state-table.ts'
import { type Accepted, type MolarDensity, one, requireWithin, type Temperature } from '../../units/index.ts'
import { pressure as pressureRange, temperature as temperatureRange } from '../accepted.ts'

/** The internal energy of a mixture over a box of states, as a table of density and temperature. Plain data: it crosses to workers. */
export interface CompiledCaloric extends Table {
  readonly mixture: Mixture
  readonly temperature: Box['temperature']
  /** Lowest and highest molar density, mol/m³. */
  readonly density: readonly [low: number, high: number]
  /** As asked for: largest error of the energy, as a part of R·T. A temperature found from it is off by less than half of that part. */
  readonly tolerance: number
}

/** The fields of a table. */
export const compiledKeys = {
  mixture: true,
  temperature: true,
  density: true,
  tolerance: true,
  largestError: true,
  cells: true,
  cellsCut: true,
  coefficients: true,
} as const satisfies Readonly<Record<keyof CompiledCaloric, true>>

const toleranceRange: Accepted = { atLeast: 1e-11, atMost: 1e-3, unit: one, hint: '1e-8 is usual.' }

/**
 * The internal energy of a mixture, tabulated for many fills: `chargeCylinder` takes it in place of the equation of state on the way, and
 * the equation itself at the start and at the end. The error is measured against the equation when the table is made, off the nodes of
 * every cell. It takes some tenths of a second.
 *
 * @param mixture - the gas
 * @param options - lowest and highest temperature that the gas reaches on the way, K; lowest and highest pressure, absolute, Pa;
 *   tolerance of the energy, as a part of R·T, 1e-11 to 1e-3
 * @returns the table, with the error found
 * @throws LitrebarError `range` or `input`, naming the field; `outside-validity` where the gas has no state in the box; `not-converged`
 *   where 128 × 64 cells do not reach the tolerance
 * @source gerg-2008, energy; litrebar-derivation, cubics through Chebyshev points
 * @example
 * const box = {
 *   temperature: [temperatureOf(-20, celsius), temperatureOf(120, celsius)],
 *   pressure: [absolute(5, bar), absolute(350, bar)],
 *   tolerance: 1e-7,
 * } as const
 * compileCaloric(dryAir, box).largestError < 1e-7 // => true
 */
export function compileCaloric(mixture: Mixture, options: Box & { readonly tolerance: number }): CompiledCaloric {
  requireKeys('options', options, { temperature: true, pressure: true, tolerance: true })
  const { temperature, pressure, tolerance } = options
  requireWithin('options.tolerance', tolerance, toleranceRange)
  requireBox('options.temperature', temperature, temperatureRange)
  requireBox('options.pressure', pressure, pressureRange)
  const density = [
    molarDensity(mixture, pressure[0], temperature[1]),
    molarDensity(mixture, pressure[1], temperature[0]),
  ] as const
  const value = (t: number, n: number): number => {
    try {
      const at = { molarDensity: n as MolarDensity, temperature: t as Temperature }
      const p = pressureAtDensity(mixture, at)
      return gasState(mixture, { pressure: p, temperature: at.temperature }).molarInternalEnergy
    } catch (thrown) {
      if (!isLitrebarError(thrown)) throw thrown
      return Number.NaN
    }
  }
  const isSound = (t: number, n: number): boolean => !Number.isNaN(value(t, n))
  // between two energies only the difference means anything, so that its error is counted against R·T
  const error = (found: number, full: number): number => Math.abs(found - full) / (gerg2008GasConstant * temperature[0])
  const table = tableWithin({ value, isSound, error }, { ...boxOf({ temperature, density }), tolerance })
  return { mixture, temperature, density, tolerance, ...table }
}

/**
 * Temperatures from energy and density, by one table. Each search starts where the last one ended: states that follow one another lie close.
 *
 * @param compiled - from `compileCaloric`
 * @param start - temperature near the first one asked for, K
 * @returns temperature, K, of gas of an internal energy, J/mol, and a molar density, mol/m³
 * @throws LitrebarError `outside-validity` for a state outside the box
 */
export function temperatureByTable(
  compiled: CompiledCaloric,
  start: number,
): (internalEnergy: number, density: number) => number {
  const { cells, coefficients, temperature, density: densities } = compiled
  const [coldest, hottest] = temperature
  const [lowest, highest] = densities
  const { rows, inverseLow, inverseStep, pressureStep } = gridOf(boxOf(compiled), cells)
  const energy = (t: number, n: number): number =>
    t >= coldest && t <= hottest && n >= lowest && n <= highest
      ? interpolated(coefficients, rows, cells, (1 / t - inverseLow) / inverseStep, (n - lowest) / pressureStep)
      : Number.NaN
  let last = start
  // of the last place; a secant keeps it near enough to gain several digits a step
  let capacity = Number.NaN
  return (internalEnergy, density) => {
    let t = last
    let found = energy(t, density)
    if (!(capacity > 0)) capacity = capacityAt(t, density, found)
    for (let k = 0; k < mostSteps; k++) {
      const change = (internalEnergy - found) / capacity
      t += change
      if (Math.abs(change) <= closest) {
        last = t
        return t
      }
      const before = found
      found = energy(t, density)
      if (Math.abs(change) > leastSecant) capacity = (found - before) / change
    }
    throw outsideBox(compiled, t, density)
  }

  function capacityAt(t: number, density: number, found: number): number {
    const step = t > (coldest + hottest) / 2 ? -1e-2 : 1e-2
    return (energy(t + step, density) - found) / step
  }
}

const mostSteps = 30
// K. What a step leaves is a thousandth of it at most.
const closest = 1e-6
// K. Over less, the difference of two energies is rounding.
const leastSecant = 1e-3

/** The table knows pressures only: a density takes their place. */
function boxOf({ temperature, density }: Pick<CompiledCaloric, 'temperature' | 'density'>): Box {
  return { temperature, pressure: density as unknown as Box['pressure'] }
}

function outsideBox({ temperature, density }: CompiledCaloric, t: number, n: number): LitrebarError {
  const inDigits = (x: number): string => String(Number(x.toPrecision(5)))
  return new LitrebarError({
    code: 'outside-validity',
    argument: 'options.compiled',
    value: `a state of ${inDigits(t)} K and ${inDigits(n)} mol/m³`,
    expected: `${temperature.map(inDigits).join(' to ')} K and ${density.map(inDigits).join(' to ')} mol/m³`,
    hint: 'Compile a wider box, or leave the table out.',
  })
}

/** Refuses a table of another mixture. */
export function requireCaloricOf(mixture: Mixture, compiled: CompiledCaloric): void {
  if (compiled.mixture === mixture) return
  throw new LitrebarError({
    code: 'input',
    argument: 'options.compiled',
    value: 'compiled from another mixture',
    expected: 'a table of the mixture in the cylinder',
    hint: 'Compile the very mixture object that the fill names.',
  })
}
