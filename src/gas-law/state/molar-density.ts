import type { AbsolutePressure, MolarDensity, Temperature } from '../../units/quantity.ts'
import { reducedDensityAt } from '../equation/density-solve.ts'
import { equationFor } from '../equation/gas-equation.ts'
import { requireGas } from '../equation/single-phase.ts'
import { requireStateRange } from '../equation/state-range.ts'
import type { Mixture } from '../mixture/mixture.ts'

/**
 * Molar density of a gas mixture by GERG-2008.
 * For gas only: a state that condenses, is liquid, or would stay gas only until disturbed is refused.
 *
 * @param mixture - the gas
 * @param pressure - absolute, Pa, above 0 and at most 700 bar (above 350 bar the range of the equation is extended)
 * @param temperature - K, 90 to 700 K (above 450 K the range is extended)
 * @returns molar density, mol/m³; how far to trust it: `modelUncertainty`
 * @throws LitrebarError `range` if pressure or temperature is not finite or not above 0; `outside-validity` if the
 *   state is outside the range of the equation or is not a gas; `mixture` for fractions that are none
 * @source gerg-2008
 * @example
 * molarDensity(dryAir, absolute(200, bar), temperatureOf(20, celsius)).toFixed(1) // => '7991.2'
 */
export function molarDensity(mixture: Mixture, pressure: AbsolutePressure, temperature: Temperature): MolarDensity {
  requireStateRange(pressure, temperature)
  const equation = equationFor(mixture)
  const delta = requireGas(equation, pressure, temperature, reducedDensityAt(equation, pressure, temperature))
  return (delta * equation.reducingDensity) as MolarDensity
}
