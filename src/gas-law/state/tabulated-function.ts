import {
  faultOfRow,
  inputError,
  isLitrebarError,
  LitrebarError,
  requireKeys,
  requireRows,
  requireWord,
  rowCodes,
  shown,
} from '../../errors/index.ts'
import { requireWithin } from '../../units/accepted.ts'
import { one } from '../../units/fraction.ts'
import { bar } from '../../units/pressure.ts'
import type { AbsolutePressure, PlainNumber, Temperature } from '../../units/quantity.ts'
import { kelvin } from '../../units/temperature.ts'
import type { StateColumns } from './state-columns.ts'
import { type Box, gridOf, interpolated, requireBox, requireTable, type Table, tableWithin } from './state-table.ts'

/** What a function is tabulated over. */
export interface TabulateOptions extends Box {
  /** Largest error of an interpolated value, 1e-12 to 0.01. */
  readonly tolerance: number
  /**
   * What the error is a part of: the value `each` time, the default; or the `largest` value that the function has in the box, for
   * what passes through zero, such as an enthalpy.
   */
  readonly errorOf?: 'each' | 'largest'
}

/** A function of pressure and temperature, as a table over a box of states. Plain data: it crosses to workers. */
export interface TabulatedFunction extends Box, Table {
  /** As asked for. */
  readonly tolerance: number
}

const tolerance = { atLeast: 1e-12, atMost: 0.01, unit: one, hint: '1e-6 is usual.' }
const anyTemperature = { above: 0, atMost: 1e4, unit: kelvin, hint: 'Check the temperature scale.' }
const anyPressure = { above: 0, atMost: 1e4, unit: bar, hint: 'Give absolute pressures.' }
const optionKeys = { temperature: true, pressure: true, tolerance: true, errorOf: false }

/**
 * A table of any smooth function of pressure and temperature over a box of states, for loops over many millions of rows: the
 * viscosity of a mixture, its enthalpy, the free gas in one litre. The error of the table is measured against the function when it is
 * made, at four places off the nodes of every cell: enough for a smooth function, while a kink close to the edge of a cell may hide.
 * Cells in which the function has no value are cut out.
 *
 * @param property - the function; a `LitrebarError` that it throws is a state without a value
 * @param options - lowest and highest temperature, K; lowest and highest pressure, absolute, Pa; largest error and of what
 * @returns the table, with the error found
 * @throws LitrebarError `range` for a tolerance out of range or an empty box; `input` for options that are none; `outside-validity`
 *   where the function has no value anywhere in the box; `not-converged` if 128 × 64 cells do not reach the tolerance, as with a kink
 * @source litrebar-derivation, cubics through Chebyshev points
 * @example
 * const box = {
 *   temperature: [temperatureOf(0, celsius), temperatureOf(40, celsius)],
 *   pressure: [absolute(1, bar), absolute(250, bar)],
 *   tolerance: 1e-6,
 * } as const
 * const table = tabulated((pressure, temperature) => viscosity(nitrox(0.32), { pressure, temperature }), box)
 * const found = tabulatedValue(table, absolute(200, bar), temperatureOf(20, celsius))
 * inUnit(found as Viscosity, micropascalSecond).toFixed(2) // => '24.23'
 */
export function tabulated(
  property: (pressure: AbsolutePressure, temperature: Temperature) => number,
  options: TabulateOptions,
): TabulatedFunction {
  if (typeof property !== 'function')
    throw inputError('property', shown(property), 'a function', 'Pass a function of pressure and temperature.')
  requireKeys('options', options, optionKeys)
  const { errorOf = 'each', ...box } = options
  requireWord('options.errorOf', errorOf, ['each', 'largest'])
  requireWithin('options.tolerance', box.tolerance, tolerance)
  requireBox('options.temperature', box.temperature, anyTemperature)
  requireBox('options.pressure', box.pressure, anyPressure)
  const value = (temperature: number, pressure: number): number => {
    try {
      return property(pressure as AbsolutePressure, temperature as Temperature)
    } catch (thrown) {
      if (!isLitrebarError(thrown)) throw thrown
      return Number.NaN
    }
  }
  const scale = errorOf === 'largest' ? largestIn(box, value) : undefined
  const error =
    scale === undefined
      ? (found: number, full: number): number => (found === full ? 0 : Math.abs(found / full - 1))
      : (found: number, full: number): number => Math.abs(found - full) / scale
  const isSound = (temperature: number, pressure: number): boolean => !Number.isNaN(value(temperature, pressure))
  return { ...box, ...tableWithin({ value, isSound, error }, box) }
}

const probes = 9

/** The largest size of a function on a coarse net over the box. */
function largestIn({ temperature, pressure }: Box, value: (temperature: number, pressure: number) => number): number {
  let largest = Number.MIN_VALUE
  for (let i = 0; i < probes; i++) {
    const t = temperature[0] + ((temperature[1] - temperature[0]) * i) / (probes - 1)
    for (let j = 0; j < probes; j++) {
      const p = pressure[0] + ((pressure[1] - pressure[0]) * j) / (probes - 1)
      const size = Math.abs(value(t, p))
      if (size > largest) largest = size
    }
  }
  return largest
}

/**
 * A value from a tabulated function.
 *
 * @param table - from `tabulated`
 * @param pressure - absolute, Pa, within the box
 * @param temperature - K, within the box
 * @returns the value, within the error stated in the table
 * @throws LitrebarError `outside-validity` outside the box or where it was cut
 * @source litrebar-derivation
 */
export function tabulatedValue(table: TabulatedFunction, pressure: AbsolutePressure, temperature: Temperature): number {
  requireTable('table', table, 'tabulated')
  const [coldest, hottest] = table.temperature
  const [lowest, highest] = table.pressure
  const isState = typeof pressure === 'number' && typeof temperature === 'number'
  if (isState && pressure >= lowest && pressure <= highest && temperature >= coldest && temperature <= hottest) {
    const { rows, inverseLow, inverseStep, pressureStep } = gridOf(table, table.cells)
    const x = (1 / temperature - inverseLow) / inverseStep
    const found = interpolated(table.coefficients, rows, table.cells, x, (pressure - lowest) / pressureStep)
    if (!Number.isNaN(found)) return found
  }
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'state',
    value: isState ? `${pressure / 1e5} bar and ${temperature} K` : `${shown(pressure)} and ${shown(temperature)}`,
    expected: `a state within ${lowest / 1e5} to ${highest / 1e5} bar and ${coldest} to ${hottest} K`,
    hint: 'Tabulate a wider box, or ask the function itself what is wrong with the state.',
  })
}

/**
 * A column of values from a tabulated function. Bad rows get a code instead of an error, and NaN.
 *
 * @param out - `value` receives the values; `code` as in `rowCodes`: outside the box a row is out of range, where the box was cut it
 *   is outside the validity of the function
 * @param columns - absolute pressures and temperatures, of one length
 * @param table - from `tabulated`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `requireRows`
 * @source litrebar-derivation
 */
export function tabulatedInto(
  out: { readonly value: Float64Array; readonly code: Uint8Array },
  columns: StateColumns,
  table: TabulatedFunction,
  from: PlainNumber = 0,
  to?: PlainNumber,
): void {
  requireTable('table', table, 'tabulated')
  const end = requireRows([columns, ['pressurePascal', 'temperatureKelvin']], [out, ['value', 'code']], from, to)
  const { value, code } = out
  const { pressurePascal, temperatureKelvin } = columns
  const { cells, coefficients } = table
  const [coldest, hottest] = table.temperature
  const [lowest, highest] = table.pressure
  const { rows, inverseLow, inverseStep, pressureStep } = gridOf(table, cells)
  const perInverse = 1 / inverseStep
  const perPascal = 1 / pressureStep
  const { good, outOfRange, outsideValidity } = rowCodes
  for (let row = from; row < end; row++) {
    const pressure = pressurePascal[row] as number
    const temperature = temperatureKelvin[row] as number
    if (pressure >= lowest && pressure <= highest && temperature >= coldest && temperature <= hottest) {
      const x = (1 / temperature - inverseLow) * perInverse
      const found = interpolated(coefficients, rows, cells, x, (pressure - lowest) * perPascal)
      value[row] = found
      code[row] = Number.isNaN(found) ? outsideValidity : good
    } else {
      value[row] = Number.NaN
      code[row] = faultOfRow(outOfRange, pressure, temperature)
    }
  }
}
