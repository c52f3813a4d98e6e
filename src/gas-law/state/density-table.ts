import type { AbsolutePressure, Temperature } from '../../units/quantity.ts'
import { reducedDensityAt } from '../equation/density-solve.ts'
import type { Equation } from '../equation/gerg2008.ts'
import { isGas } from '../equation/single-phase.ts'

// The table holds ρ/p, which is smooth down to no pressure at all, as one polynomial of
// third degree in pressure and 1/T for each cell of a grid. (1/T costs the loop one division and is sixty times smoother
// than T, so half as many cells do in its direction.) The polynomials run through 4 × 4 Chebyshev points of their cell:
// that is eight times closer than values and slopes at the corners. Neighbours then differ at their common edge by no
// more than the error that is stated.

const nodes = 4
const perCell = nodes * nodes

/** The box of states that a table covers. */
export interface Box {
  /** Lowest and highest temperature, K. */
  readonly temperature: readonly [low: Temperature, high: Temperature]
  /** Lowest and highest absolute pressure, Pa. */
  readonly pressure: readonly [low: AbsolutePressure, high: AbsolutePressure]
}

/** What is made of a box. */
export interface Table {
  /** Largest relative error found against the full equation, at four places off the nodes in every cell; 1.2 times this is within the tolerance. */
  readonly largestError: number
  /** Cells along the pressures; half as many along the temperatures. */
  readonly cells: number
  /** Cells cut out of the box because the mixture would condense somewhere in them. */
  readonly cellsCut: number
  /** Sixteen coefficients for each cell; NaN in those cut out. */
  readonly coefficients: Float64Array
}

/**
 * The table of an equation over a box.
 *
 * @param equation - of the mixture
 * @param options - the box
 * @param cells - along the pressures, a multiple of two
 * @returns the table, and its largest error
 */
export function tableOf(equation: Equation, options: Box, cells: number): Table {
  const grid = gridOf(options, cells)
  const coefficients = new Float64Array(perCell * grid.rows * cells)
  cut(coefficients, equation, grid)
  fill(coefficients, equation, grid)
  const cellsCut = coefficients.filter((c, place) => place % perCell === 0 && Number.isNaN(c)).length
  return { cells, cellsCut, coefficients, largestError: largestError(coefficients, equation, grid) }
}

/** Cells in 1/T, the hottest first, and in pressure. */
export interface Grid {
  readonly rows: number
  readonly cells: number
  readonly inverseLow: number
  readonly inverseStep: number
  readonly pressureLow: number
  readonly pressureStep: number
}

/** The grid of so many cells over a box. */
export function gridOf({ temperature, pressure }: Box, cells: number): Grid {
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
export function interpolated(c: Float64Array, rows: number, cells: number, x: number, y: number): number {
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
