import { inputError, LitrebarError, requireList, shown } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import type { AbsolutePressure, Temperature } from '../../units/quantity.ts'

// A table holds a smooth function of pressure and temperature as one polynomial of third degree in pressure and 1/T for each cell
// of a grid. (1/T costs the loop one division and is sixty times smoother
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

/** What is put into a table. */
export interface Tabulable {
  /** The function; NaN where it has no value. */
  readonly value: (temperature: number, pressure: number) => number
  /** Whether the function has a value at a corner of the grid: a cell with a bad corner is cut. */
  readonly isSound: (temperature: number, pressure: number) => boolean
  /** Error of an interpolated value, from it and the full one. */
  readonly error: (interpolated: number, full: number) => number
}

function tableOf(tabulable: Tabulable, options: Box, cells: number): Table {
  const grid = gridOf(options, cells)
  const coefficients = new Float64Array(perCell * grid.rows * cells)
  cut(coefficients, tabulable, grid)
  fill(coefficients, tabulable, grid)
  const cellsCut = coefficients.filter((c, place) => place % perCell === 0 && Number.isNaN(c)).length
  return { cells, cellsCut, coefficients, largestError: largestError(coefficients, tabulable, grid) }
}

const firstCells = 16
const usualCells = 64
const mostCells = 128
// A cubic gains a factor of 16 with each halving of its cell; the first table tells how many cells are needed.
const order = 4
// Between the places that are checked the error is up to some per cent larger.
const margin = 1.2

/**
 * The table of a function over a box, with as many cells as the tolerance asks for.
 *
 * @param tabulable - the function
 * @param options - the box, and the largest error
 * @returns the table, and its largest error
 * @throws LitrebarError `outside-validity` where the function has no value anywhere in the box; `not-converged` if 128 × 64 cells
 *   do not reach the tolerance
 */
export function tableWithin(tabulable: Tabulable, options: Box & { readonly tolerance: number }): Table {
  const { tolerance } = options
  let table = tableOf(tabulable, options, firstCells)
  while (!isGood(table, tolerance) && table.cells < mostCells)
    table = tableOf(tabulable, options, moreCells(table, tolerance))
  if (table.cellsCut === table.cells ** 2 / 2) {
    throw new LitrebarError({
      code: 'outside-validity',
      argument: 'options',
      value: 'a box without gas',
      expected: 'a box that holds gas',
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
  return table
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

/**
 * Refuses a box without extent, or one that leaves the accepted range.
 *
 * @param argument - the parameter with its path
 * @param ends - the lower and the upper end
 * @param accepted - the range of both
 * @throws LitrebarError `input` for what is not a pair; `range` outside the accepted range, or without extent
 */
export function requireBox(argument: string, ends: readonly [number, number], accepted: Accepted): void {
  requireList(argument, ends, 2, 'Give the lower and the upper end.')
  const [low, high] = ends
  requireWithin(`${argument}[0]`, low, accepted)
  requireWithin(`${argument}[1]`, high, accepted)
  if ((ends as readonly number[]).length === 2 && high > low) return
  throw new LitrebarError({
    code: 'range',
    argument,
    value: `${low} to ${high}`,
    expected: 'the lower limit first, and a higher one',
    hint: 'A box has an extent in both directions.',
  })
}

/** Refuses what is not a table over a box, such as one that lost its coefficients on the way through text. */
export function requireTable(
  argument: string,
  table: Box & Pick<Table, 'cells' | 'coefficients'>,
  maker: string,
): void {
  const { cells, coefficients, pressure, temperature } = Object(table) as Partial<Box & Table>
  const isWhole = coefficients instanceof Float64Array && typeof cells === 'number' && cells > 0
  if (isWhole && coefficients.length === (perCell * cells * cells) / 2 && isRange(pressure) && isRange(temperature))
    return
  throw inputError(argument, shown(table), `a table from ${maker}()`, 'Make the table and pass on what you get, whole.')
}

function isRange(ends: readonly unknown[] | undefined): boolean {
  if (!Array.isArray(ends)) return false
  const [low, high] = ends as readonly unknown[]
  return typeof low === 'number' && typeof high === 'number' && low > 0 && high > low && high < Infinity
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

const chebyshev = [
  0.5 - 0.4619397662556434,
  0.5 - 0.1913417161825449,
  0.5 + 0.1913417161825449,
  0.5 + 0.4619397662556434,
]

/** Puts into each cell that is not cut the polynomial through its points, rows of one temperature at a time. */
function fill(coefficients: Float64Array, { value }: Tabulable, grid: Grid): void {
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
          addPolynomial(across, 0, value(temperature, pressure), interpolation[b] as Powers)
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

/** Cuts out the cells in which some corner is bad. */
function cut(coefficients: Float64Array, { isSound }: Tabulable, grid: Grid): void {
  const { rows, cells, inverseLow, inverseStep, pressureLow, pressureStep } = grid
  const corners = cells + 1
  const isCornerSound = new Uint8Array((rows + 1) * corners)
  for (let i = 0; i <= rows; i++) {
    const temperature = 1 / (inverseLow + i * inverseStep)
    for (let j = 0; j < corners; j++) {
      const pressure = pressureLow + j * pressureStep
      isCornerSound[i * corners + j] = isSound(temperature, pressure) ? 1 : 0
    }
  }
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < cells; j++) {
      const corner = i * corners + j
      const sound =
        isCornerSound[corner] &&
        isCornerSound[corner + 1] &&
        isCornerSound[corner + corners] &&
        isCornerSound[corner + corners + 1]
      const place = perCell * (i * cells + j)
      if (!sound) coefficients.fill(Number.NaN, place, place + perCell)
    }
  }
}

// Where the error of a cubic through Chebyshev points is largest: at the ends, in the middle and half way between.
const offNodes = [0.001, 0.1464, 0.5, 0.8536, 0.999]

/** The largest error at four places of every cell, which go through all 25 pairs of `offNodes` from cell to cell. */
function largestError(coefficients: Float64Array, { value, error: errorOf }: Tabulable, grid: Grid): number {
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
          const full = value(temperature, pressureLow + y * pressureStep)
          const error = errorOf(interpolated(coefficients, rows, cells, x, y), full)
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
