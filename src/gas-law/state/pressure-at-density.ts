import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { requireWithin } from '../../units/accepted.ts'
import { molePerCubicMetre } from '../../units/molar.ts'
import type { AbsolutePressure, MolarDensity, Temperature } from '../../units/quantity.ts'
import { differentiate } from '../equation/density-derivatives.ts'
import { equationFor } from '../equation/gas-equation.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import type { Equation } from '../equation/gerg2008.ts'
import { setTemperature } from '../equation/set-temperature.ts'
import { requireGasDensity } from '../equation/single-phase.ts'
import { requireStateRange, requireValid, stateTemperature } from '../equation/state-range.ts'
import type { Mixture } from '../mixture/mixture.ts'

/**
 * Pressure of a gas from its molar density and temperature, by GERG-2008. Nothing is iterated: the right entry for
 * a closed cylinder that warms or cools, and for amounts that come together.
 *
 * @param mixture - the gas
 * @param at - molar density, mol/m³, above 0; temperature, K, 90 to 700 K
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range` if density or temperature is not finite or not above 0; `outside-validity` if the
 *   pressure comes to more than 700 bar, or the state is not a gas; `mixture` for fractions that are none
 * @source gerg-2008
 * @example
 * const filled = molarDensity(dryAir, absolute(233, bar), temperatureOf(20, celsius))
 * inUnit(pressureAtDensity(dryAir, { molarDensity: filled, temperature: temperatureOf(4, celsius) }), bar).toFixed(1) // => '214.1'
 */
export function pressureAtDensity(
  mixture: Mixture,
  at: { readonly molarDensity: MolarDensity; readonly temperature: Temperature },
): AbsolutePressure {
  requireKeys('at', at, { molarDensity: true, temperature: true })
  const { molarDensity, temperature } = at
  requireWithin('at.molarDensity', molarDensity, accepted)
  requireValid('at.temperature', temperature, stateTemperature)
  const equation = equationFor(mixture)
  const delta = molarDensity / equation.reducingDensity
  const pressure = pressureOfEquation(equation, delta, temperature)
  if (!(pressure > 0)) {
    throw new LitrebarError({
      code: 'outside-validity',
      argument: 'at.molarDensity',
      value: `${molarDensity} mol/m³ at ${temperature} K`,
      expected: 'the density of a gas',
      hint: 'The mixture would part into gas and liquid.',
    })
  }
  requireStateRange(pressure, temperature)
  requireGasDensity(equation, pressure, temperature, delta)
  return pressure as AbsolutePressure
}

const accepted = {
  above: 0,
  unit: molePerCubicMetre,
  hint: 'Divide the amount of gas by the internal volume.',
} as const

/**
 * Pressure of the equation, without judgement.
 *
 * @param equation - its temperature is set here
 * @param delta - reduced density
 * @param temperature - K
 * @returns Pa
 */
export function pressureOfEquation(equation: Equation, delta: number, temperature: number): number {
  setTemperature(equation, temperature)
  differentiate(equation, delta)
  return delta * equation.reducingDensity * gerg2008GasConstant * temperature * (1 + (equation.derivative[0] as number))
}
