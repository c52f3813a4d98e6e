import { LitrebarError } from '../errors/index.ts'
import { requireWithin } from '../units/accepted.ts'
import { one } from '../units/fraction.ts'
import type { AbsolutePressure, Fraction, MolarDensity, Temperature } from '../units/quantity.ts'
import { reducedDensityAt } from './density-solve.ts'
import { equationFor } from './gas-equation.ts'
import { gasConstant } from './gerg2008.parameters.ts'
import type { Equation } from './gerg2008.ts'
import type { Mixture } from './mixture.ts'
import { isGas } from './single-phase.ts'
import { requireStateRange } from './state-range.ts'

// The table holds ρ/p, which is smooth down to no pressure at all, as one polynomial of
// third degree in pressure and 1/T for each cell of a grid. (1/T costs the loop one division and is sixty times smoother
// than T, so half as many cells do in its direction.) The polynomials run through 4 × 4 Chebyshev points of their cell:
// that is eight times closer than values and slopes at the corners. Neighbours then differ at their common edge by no
// more than the error that is stated.

/** What a compiled mixture is asked for. */
export interface CompileOptions {
  /** Lowest and highest temperature, K. */
  readonly temperature: readonly [low: Temperature, high: Temperature]
  /** Lowest and highest absolute pressure, Pa. */
  readonly pressure: readonly [low: AbsolutePressure, high: AbsolutePressure]
  /** Largest relative error of the density against the full equation, 1e-12 to 0.01. 5e-9 is usual. */
  readonly tolerance: number
}

/** A mixture compiled to a table over a box of states. */
export interface CompiledMixture {
  readonly mixture: Mixture
  readonly temperature: readonly [low: Temperature, high: Temperature]
  readonly pressure: readonly [low: AbsolutePressure, high: AbsolutePressure]
  /** As asked for. */
  readonly tolerance: number
  /** Largest relative error found against the full equation, at four places off the nodes in every cell; 1.2 times this is within the tolerance. */
  readonly largestError: number
  /** Cells along the pressures; half as many along the temperatures. */
  readonly cells: number
  /** Cells cut out of the box because the mixture would condense somewhere in them. */
  readonly cellsCut: number
  /** Sixteen coefficients for each cell; NaN in those cut out. */
  readonly coefficients: Float64Array
}

const nodes = 4
const perCell = nodes * nodes
const firstCells = 16
const usualCells = 64
const mostCells = 128
// A cubic gains a factor of 16 with each halving of its cell; the first table tells how many cells are needed.
const order = 4
// Between the places that are checked the error is up to some per cent larger.
const margin = 1.2

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
  const { tolerance } = options
  requireWithin('options.tolerance', tolerance, { atLeast: 1e-12, atMost: 0.01, unit: one, hint: '5e-9 is usual.' })
  requireBox('options.temperature', options.temperature)
  requireBox('options.pressure', options.pressure)
  requireStateRange(options.pressure[0], options.temperature[0])
  requireStateRange(options.pressure[1], options.temperature[1])
  const equation = equationFor(mixture)
  let table = tableOf(equation, options, firstCells)
  while (!isGood(table, tolerance) && table.cells < mostCells)
    table = tableOf(equation, options, moreCells(table, tolerance))
  if (table.cellsCut === table.cells ** 2 / 2) {
    throw new LitrebarError({
      code: 'outside-validity',
      argument: 'options',
      value: 'a box without gas',
      expected: `a box that holds gas of ${equation.present.join(', ')}`,
      hint: 'Raise the temperatures or lower the pressures.',
    })
  }
  if (!(margin * table.largestError <= tolerance)) {
    throw new LitrebarError({
      code: 'not-converged',
      argument: 'options.tolerance',
      value: `${table.largestError.toExponential(1)} with ${mostCells} × ${mostCells / 2} cells`,
      expected: `at most ${tolerance}`,
      hint: 'Narrow the box or allow a larger error.',
    })
  }
  return { mixture, ...options, ...table }
}

function isGood({ largestError, cells, cellsCut }: Table, tolerance: number): boolean {
  return margin * largestError <= tolerance && (cellsCut === 0 || cells >= usualCells)
}

/** How many cells would do, in steps of 8: by the order of the error, and so that a cut does not take more than it must. */
function moreCells({ largestError, cells, cellsCut }: Table, tolerance: number): number {
  if (cellsCut === (cells * cells) / 2) return mostCells
  const needed = cells * (largestError / (0.75 * tolerance)) ** (1 / order)
  return Math.min(Math.max(8 * Math.ceil(needed / 8), cells + 8, cellsCut > 0 ? usualCells : 0), mostCells)
}

function requireBox(argument: string, [low, high]: readonly [number, number]): void {
  if (high > low) return
  throw new LitrebarError({
    code: 'range',
    argument,
    value: `${low} to ${high}`,
    expected: 'the lower limit first, and a higher one',
    hint: 'A box has an extent in both directions.',
  })
}

type Table = Pick<CompiledMixture, 'cells' | 'cellsCut' | 'coefficients' | 'largestError'>

function tableOf(equation: Equation, options: CompileOptions, cells: number): Table {
  const grid = gridOf(options, cells)
  const coefficients = new Float64Array(perCell * grid.rows * cells)
  cut(coefficients, equation, grid)
  fill(coefficients, equation, grid)
  const cellsCut = coefficients.filter((c, place) => place % perCell === 0 && Number.isNaN(c)).length
  return { cells, cellsCut, coefficients, largestError: largestError(coefficients, equation, grid) }
}

/** Cells in 1/T, the hottest first, and in pressure. */
interface Grid {
  readonly rows: number
  readonly cells: number
  readonly inverseLow: number
  readonly inverseStep: number
  readonly pressureLow: number
  readonly pressureStep: number
}

function gridOf({ temperature, pressure }: Pick<CompileOptions, 'temperature' | 'pressure'>, cells: number): Grid {
  const rows = cells / 2
  const inverseLow = 1 / temperature[1]
  return {
    rows,
    cells,
    inverseLow,
    inverseStep: (1 / temperature[0] - inverseLow) / rows,
    pressureLow: pressure[0],
    pressureStep: (pressure[1] - pressure[0]) / cells,
  }
}

/** ρ/p by the full equation, mol/J; NaN where it finds no gas. */
function densityPerPressure(equation: Equation, temperature: number, pressure: number): number {
  return (reducedDensityAt(equation, pressure, temperature) * equation.reducingDensity) / pressure
}

const chebyshev = [
  0.5 - 0.4619397662556434,
  0.5 - 0.1913417161825449,
  0.5 + 0.1913417161825449,
  0.5 + 0.4619397662556434,
]

/** Puts into each cell that is not cut the polynomial through its points, rows of one temperature at a time. */
function fill(coefficients: Float64Array, equation: Equation, grid: Grid): void {
  const { rows, cells, inverseLow, inverseStep, pressureLow, pressureStep } = grid
  const interpolation = powersThrough(chebyshev)
  const across = new Float64Array(nodes)
  for (let i = 0; i < rows; i++) {
    for (let a = 0; a < nodes; a++) {
      const temperature = 1 / (inverseLow + (i + (chebyshev[a] as number)) * inverseStep)
      const along = interpolation[a] as Powers
      for (let j = 0; j < cells; j++) {
        if (Number.isNaN(coefficients[perCell * (i * cells + j)])) continue
        across.fill(0)
        for (let b = 0; b < nodes; b++) {
          const pressure = pressureLow + (j + (chebyshev[b] as number)) * pressureStep
          addPolynomial(across, 0, densityPerPressure(equation, temperature, pressure), interpolation[b] as Powers)
        }
        for (let m = 0; m < nodes; m++) {
          addPolynomial(coefficients, perCell * (i * cells + j) + nodes * m, along[m] as number, across)
        }
      }
    }
  }
}

function addPolynomial(sums: Float64Array, place: number, factor: number, polynomial: Powers): void {
  for (let n = 0; n < nodes; n++) sums[place + n] = (sums[place + n] as number) + factor * (polynomial[n] as number)
}

type Powers = ArrayLike<number>

/** For each node the coefficients of the polynomial that is 1 there and 0 at the others. */
function powersThrough(places: readonly number[]): readonly Powers[] {
  return places.map((place) => {
    const polynomial = new Float64Array(places.length)
    polynomial[0] = 1
    for (const other of places) {
      if (other === place) continue
      // times (x - other) / (place - other), from the highest power down
      for (let n = places.length - 1; n >= 0; n--) {
        const lower = n > 0 ? (polynomial[n - 1] as number) : 0
        polynomial[n] = (lower - other * (polynomial[n] as number)) / (place - other)
      }
    }
    return polynomial
  })
}

/** Cuts out the cells in which some corner is no gas. */
function cut(coefficients: Float64Array, equation: Equation, grid: Grid): void {
  const { rows, cells, inverseLow, inverseStep, pressureLow, pressureStep } = grid
  const corners = cells + 1
  const isCornerGas = new Uint8Array((rows + 1) * corners)
  for (let i = 0; i <= rows; i++) {
    const temperature = 1 / (inverseLow + i * inverseStep)
    for (let j = 0; j < corners; j++) {
      const pressure = pressureLow + j * pressureStep
      const delta = reducedDensityAt(equation, pressure, temperature)
      isCornerGas[i * corners + j] = isGas(equation, pressure, temperature, delta) ? 1 : 0
    }
  }
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < cells; j++) {
      const corner = i * corners + j
      const sound =
        isCornerGas[corner] &&
        isCornerGas[corner + 1] &&
        isCornerGas[corner + corners] &&
        isCornerGas[corner + corners + 1]
      const place = perCell * (i * cells + j)
      if (!sound) coefficients.fill(Number.NaN, place, place + perCell)
    }
  }
}

// Where the error of a cubic through Chebyshev points is largest: at the ends, in the middle and half way between.
const offNodes = [0.001, 0.1464, 0.5, 0.8536, 0.999]

/** The largest error at four places of every cell, which go through all 25 pairs of `offNodes` from cell to cell. */
function largestError(coefficients: Float64Array, equation: Equation, grid: Grid): number {
  const { rows, cells, inverseLow, inverseStep, pressureLow, pressureStep } = grid
  let largest = 0
  for (let i = 0; i < rows; i++) {
    for (let a = 0; a < 2; a++) {
      const x = i + (offNodes[(2 * i + a) % 5] as number)
      const temperature = 1 / (inverseLow + x * inverseStep)
      for (let j = 0; j < cells; j++) {
        if (Number.isNaN(coefficients[perCell * (i * cells + j)])) continue
        for (let b = 0; b < 2; b++) {
          const y = j + (offNodes[(2 * j + b) % 5] as number)
          const full = densityPerPressure(equation, temperature, pressureLow + y * pressureStep)
          const error = Math.abs(interpolated(coefficients, rows, cells, x, y) / full - 1)
          if (!(error <= largest)) largest = error
        }
      }
    }
  }
  return largest
}

/** The polynomial of the cell that holds a place given in cells from the low corner. */
function interpolated(c: Float64Array, rows: number, cells: number, x: number, y: number): number {
  const i = Math.min(x, rows - 0.5) | 0
  const j = Math.min(y, cells - 0.5) | 0
  const s = x - i
  const t = y - j
  // imul and mask tell the engine that the place is a small whole number
  const k = ((Math.imul(i, cells) + j) << 4) & 0xfffff0
  const c0 = (c[k] as number) + t * ((c[k + 1] as number) + t * ((c[k + 2] as number) + t * (c[k + 3] as number)))
  const c1 = (c[k + 4] as number) + t * ((c[k + 5] as number) + t * ((c[k + 6] as number) + t * (c[k + 7] as number)))
  const c2 = (c[k + 8] as number) + t * ((c[k + 9] as number) + t * ((c[k + 10] as number) + t * (c[k + 11] as number)))
  const c3 =
    (c[k + 12] as number) + t * ((c[k + 13] as number) + t * ((c[k + 14] as number) + t * (c[k + 15] as number)))
  return c0 + s * (c1 + s * (c2 + s * c3))
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
  return (pressure / (gasConstant * temperature * inBox(compiled, pressure, temperature))) as Fraction
}

function inBox(compiled: CompiledMixture, pressure: number, temperature: number): number {
  const { cells, coefficients } = compiled
  const [coldest, hottest] = compiled.temperature
  const [lowest, highest] = compiled.pressure
  if (pressure >= lowest && pressure <= highest && temperature >= coldest && temperature <= hottest) {
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
 * @param out - densities, mol/m³, NaN where the row is bad; `code` 0 for a good row, 1 outside the box, 2 where it was cut
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
      code[row] = 0
    } else {
      densities[row] = Number.NaN
      code[row] = 1
    }
  }
  if (compiled.cellsCut === 0) return
  for (let row = from; row < to; row++) {
    if (code[row] === 0 && Number.isNaN(densities[row])) code[row] = 2
  }
}
