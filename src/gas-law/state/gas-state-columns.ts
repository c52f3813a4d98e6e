import { inputError, requireKeys, requireRows, rowCodes } from '../../errors/index.ts'
import { reducedDensityAt } from '../equation/density-solve.ts'
import { equationFor } from '../equation/gas-equation.ts'
import { propertyCount } from '../equation/gerg2008.ts'
import { idealPartFor } from '../equation/ideal-part.ts'
import { setTemperatureAndDerivatives } from '../equation/set-temperature.ts'
import { isGas } from '../equation/single-phase.ts'
import { faultOfState, isStateInRange } from '../equation/state-range.ts'
import { type Mixture, requireMixture } from '../mixture/mixture.ts'
import { propertiesInto } from './gas-state.ts'
import { type StateColumns, stateNames } from './state-columns.ts'

/** The properties of `GasState` by row, its fugacity coefficients left out. Those whose columns are there are written. */
export interface GasStateColumns {
  readonly code: Uint8Array
  readonly compressibilityFactor?: Float64Array
  readonly compressibilityFactorMinusOne?: Float64Array
  readonly molarDensityMolePerCubicMetre?: Float64Array
  readonly densityKilogramPerCubicMetre?: Float64Array
  readonly isochoricHeatCapacityJoulePerMoleKelvin?: Float64Array
  readonly isobaricHeatCapacityJoulePerMoleKelvin?: Float64Array
  readonly isentropicExponent?: Float64Array
  readonly speedOfSoundMetrePerSecond?: Float64Array
  readonly jouleThomsonCoefficientKelvinPerPascal?: Float64Array
  readonly molarInternalEnergyJoulePerMole?: Float64Array
  readonly molarEnthalpyJoulePerMole?: Float64Array
  readonly molarEntropyJoulePerMoleKelvin?: Float64Array
  readonly molarGibbsEnergyJoulePerMole?: Float64Array
  readonly pressureTemperatureDerivativePascalPerKelvin?: Float64Array
  readonly pressureDensityDerivativePascalCubicMetrePerMole?: Float64Array
}

type PropertyColumn = Exclude<keyof GasStateColumns, 'code'>

// Where `propertiesInto` leaves them; behind its twelve come three that follow from the density.
const places: Readonly<Record<PropertyColumn, number>> = {
  compressibilityFactorMinusOne: 0,
  isochoricHeatCapacityJoulePerMoleKelvin: 1,
  isobaricHeatCapacityJoulePerMoleKelvin: 2,
  isentropicExponent: 3,
  speedOfSoundMetrePerSecond: 4,
  jouleThomsonCoefficientKelvinPerPascal: 5,
  molarInternalEnergyJoulePerMole: 6,
  molarEnthalpyJoulePerMole: 7,
  molarEntropyJoulePerMoleKelvin: 8,
  molarGibbsEnergyJoulePerMole: 9,
  pressureTemperatureDerivativePascalPerKelvin: 10,
  pressureDensityDerivativePascalCubicMetrePerMole: 11,
  compressibilityFactor: propertyCount,
  molarDensityMolePerCubicMetre: propertyCount + 1,
  densityKilogramPerCubicMetre: propertyCount + 2,
}

/**
 * Properties of a gas in a column of states, by the full equation: heat capacities, speed of sound, Joule–Thomson coefficient, enthalpy
 * and the rest, to the bit as `gasState` gives them. A bad row is NaN and gets a code instead of an error. A single property of millions of
 * rows is faster from a table: `tabulatedInto`.
 *
 * @param out - the columns that are wanted, at least one; `code` a row code: `good`, `missing`, `outOfRange`, `outsideValidity` outside
 *   the range of `gasState`, `condensing` for a state that is not a gas
 * @param columns - absolute pressures and temperatures, of one length
 * @param options - the mixture
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError `mixture` for fractions that are none; `input` for no property, or an unknown one; as `requireRows`
 * @source gerg-2008
 * @example
 * const columns = { pressurePascal: Float64Array.of(200e5, -1), temperatureKelvin: Float64Array.of(293.15, 293.15) }
 * const out = { jouleThomsonCoefficientKelvinPerPascal: new Float64Array(2), code: new Uint8Array(2) }
 * gasStateInto(out, columns, { mixture: dryAir })
 * const throttled = (out.jouleThomsonCoefficientKelvinPerPascal[0] ?? 0) / kelvinPerBar.factor
 * throttled.toFixed(3) // => '0.089'
 * out.code.join(' ') // => '0 2'
 */
export function gasStateInto(
  out: GasStateColumns,
  columns: StateColumns,
  options: { readonly mixture: Mixture },
  from = 0,
  to?: number,
): void {
  requireKeys('out', out, { ...places, code: true })
  requireKeys('options', options, { mixture: true })
  requireMixture('options.mixture', options.mixture)
  const names = (Object.keys(places) as PropertyColumn[]).filter((name) => out[name] !== undefined)
  if (names.length === 0) throw inputError('out', 'without a property', 'at least one', 'Give a column for it.')
  const end = requireRows([columns, stateNames], [out, [...names, 'code']], from, to)
  const wanted = names.map((name) => ({ place: places[name], column: out[name] as Float64Array }))
  const { code } = out
  const { pressurePascal, temperatureKelvin } = columns
  const equation = equationFor(options.mixture)
  const ideal = idealPartFor(options.mixture, equation)
  const { reducingDensity, molarMass } = equation
  const values = new Float64Array(propertyCount + 3)
  for (let row = from; row < end; row++) {
    const pressure = pressurePascal[row] as number
    const temperature = temperatureKelvin[row] as number
    code[row] = faultOrGood(pressure, temperature)
    if (code[row] === rowCodes.good) {
      setTemperatureAndDerivatives(equation, temperature)
      const delta = reducedDensityAt(equation, pressure, temperature)
      if (isGas(equation, pressure, temperature, delta)) {
        propertiesInto(values, equation, ideal, delta, temperature)
        values[propertyCount] = 1 + (values[0] as number)
        values[propertyCount + 1] = delta * reducingDensity
        values[propertyCount + 2] = delta * reducingDensity * molarMass
      } else code[row] = rowCodes.condensing
    }
    if (code[row] !== rowCodes.good) values.fill(Number.NaN)
    for (const { place, column } of wanted) column[row] = values[place] as number
  }
}

function faultOrGood(pressure: number, temperature: number): number {
  return isStateInRange(pressure, temperature) ? rowCodes.good : faultOfState(pressure, temperature)
}
