import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { joulePerMole, joulePerMoleKelvin, molePerCubicMetre } from '../../units/molar.ts'
import type {
  AbsolutePressure,
  MolarDensity,
  MolarEnergy,
  MolarHeatCapacity,
  Temperature,
} from '../../units/quantity.ts'
import { reducedDensityAt } from '../equation/density-solve.ts'
import { equationFor } from '../equation/gas-equation.ts'
import { gerg2008GasConstant } from '../equation/gerg2008.parameters.ts'
import { idealPartFor } from '../equation/ideal-part.ts'
import { setTemperature } from '../equation/set-temperature.ts'
import { requireGas, requireGasDensity } from '../equation/single-phase.ts'
import { requireStateRange, requireValid, statePressure } from '../equation/state-range.ts'
import type { Mixture } from '../mixture/mixture.ts'
import { propertiesInto } from './gas-state.ts'
import { pressureOfEquation } from './pressure-at-density.ts'

// Each quantity below rises with temperature, so a bracket holds the answer while Newton finds it.

const density: Accepted = { above: 0, unit: molePerCubicMetre, hint: 'Divide the amount by the internal volume.' }
const energy: Accepted = { unit: joulePerMole, hint: 'Take it from a gasState of the same mixture.' }
const entropy: Accepted = { unit: joulePerMoleKelvin, hint: 'Take it from a gasState of the same mixture.' }

/**
 * Temperature of a gas from its molar density and pressure.
 *
 * @param mixture - the gas
 * @param at - molar density, mol/m³, above 0; pressure, absolute, Pa, above 0 and at most 700 bar
 * @returns temperature, K, 90 to 700 K
 * @throws LitrebarError `range` for what is not finite or not above 0; `outside-validity` if no gas within the range of
 *   the equation has that density and pressure
 * @source gerg-2008
 * @example
 * const filled = molarDensity(dryAir, absolute(233, bar), temperatureOf(50, celsius))
 * temperatureAtDensity(dryAir, { molarDensity: filled, pressure: absolute(233, bar) }).toFixed(2) // => '323.15'
 */
export function temperatureAtDensity(
  mixture: Mixture,
  at: { readonly molarDensity: MolarDensity; readonly pressure: AbsolutePressure },
): Temperature {
  requireKeys('at', at, { molarDensity: true, pressure: true })
  const { molarDensity, pressure } = at
  requireWithin('at.molarDensity', molarDensity, density)
  requireValid('at.pressure', pressure, statePressure)
  const equation = equationFor(mixture)
  const delta = molarDensity / equation.reducingDensity
  const state = properties(mixture)
  const temperature = solveTemperature('at', pressure / (molarDensity * gerg2008GasConstant), (trial) => {
    const excess = pressureOfEquation(equation, delta, trial) - pressure
    return { excess, slope: state.at(delta, trial)[10] as number }
  })
  requireGasDensity(equation, pressure, temperature, delta)
  return temperature as Temperature
}

/**
 * Temperature of a gas from its enthalpy and pressure: where throttling ends, since it keeps the enthalpy.
 *
 * @param mixture - the gas
 * @param at - molar enthalpy, J/mol, from `gasState`; pressure, absolute, Pa, above 0 and at most 700 bar
 * @returns temperature, K, 90 to 700 K
 * @throws LitrebarError `range` for what is not finite; `outside-validity` if no gas within the range of the equation
 *   has that enthalpy at that pressure
 * @source gerg-2008
 * @example
 * const { molarEnthalpy } = gasState(dryAir, { pressure: absolute(232, bar), temperature: temperatureOf(20, celsius) })
 * const after = temperatureAtEnthalpy(dryAir, { molarEnthalpy, pressure: absolute(10, bar) })
 * inUnit(after, celsius).toFixed(1) // => '-16.8'
 */
export function temperatureAtEnthalpy(
  mixture: Mixture,
  at: { readonly molarEnthalpy: MolarEnergy; readonly pressure: AbsolutePressure },
): Temperature {
  requireKeys('at', at, { molarEnthalpy: true, pressure: true })
  requireWithin('at.molarEnthalpy', at.molarEnthalpy, energy)
  return temperatureOnIsobar(mixture, at.pressure, (state) => ({
    excess: (state[7] as number) - at.molarEnthalpy,
    slope: state[2] as number,
  }))
}

/**
 * Temperature of a gas from its entropy and pressure: where compression or expansion without heat and friction ends.
 *
 * @param mixture - the gas
 * @param at - molar entropy, J/(mol K), from `gasState`; pressure, absolute, Pa, above 0 and at most 700 bar
 * @param options - `extrapolate: true` goes on beyond the range of the equation, to 1500 K: for bounds, such as that of
 *   oxygen compressed at a blow
 * @returns temperature, K, 90 to 700 K, or to 1500 K when extrapolating
 * @throws LitrebarError `range` for what is not finite; `outside-validity` if no gas within the range of the equation
 *   has that entropy at that pressure
 * @source gerg-2008
 * @example
 * const { molarEntropy } = gasState(dryAir, { pressure: absolute(1, bar), temperature: temperatureOf(20, celsius) })
 * const after = temperatureAtEntropy(dryAir, { molarEntropy, pressure: absolute(5, bar) })
 * inUnit(after, celsius).toFixed(1) // => '190.0'
 */
export function temperatureAtEntropy(
  mixture: Mixture,
  at: { readonly molarEntropy: MolarHeatCapacity; readonly pressure: AbsolutePressure },
  options: { readonly extrapolate?: boolean } = {},
): Temperature {
  requireKeys('options', options, { extrapolate: false })
  requireKeys('at', at, { molarEntropy: true, pressure: true })
  requireWithin('at.molarEntropy', at.molarEntropy, entropy)
  const judge = (state: Float64Array, trial: number): Excess => ({
    excess: (state[8] as number) - at.molarEntropy,
    slope: (state[2] as number) / trial,
  })
  return temperatureOnIsobar(mixture, at.pressure, judge, options.extrapolate === true ? highestExtrapolated : highest)
}

/**
 * Temperature of a gas from its internal energy and density: a cylinder while it is filled or emptied.
 *
 * @param mixture - the gas
 * @param at - molar internal energy, J/mol, from `gasState`; molar density, mol/m³, above 0
 * @returns temperature, K, 90 to 700 K
 * @throws LitrebarError `range` for what is not finite; `outside-validity` if no gas within the range of the equation
 *   has that internal energy at that density
 * @source gerg-2008
 * @example
 * const { molarInternalEnergy, molarDensity } =
 *   gasState(nitrox(0.32), { pressure: absolute(200, bar), temperature: temperatureOf(60, celsius) })
 * temperatureAtInternalEnergy(nitrox(0.32), { molarInternalEnergy, molarDensity }).toFixed(2) // => '333.15'
 */
export function temperatureAtInternalEnergy(
  mixture: Mixture,
  at: { readonly molarInternalEnergy: MolarEnergy; readonly molarDensity: MolarDensity },
): Temperature {
  requireKeys('at', at, { molarInternalEnergy: true, molarDensity: true })
  const { molarDensity, molarInternalEnergy } = at
  requireWithin('at.molarInternalEnergy', molarInternalEnergy, energy)
  requireWithin('at.molarDensity', molarDensity, density)
  const equation = equationFor(mixture)
  const delta = molarDensity / equation.reducingDensity
  const state = properties(mixture)
  const temperature = solveTemperature('at', 300, (trial) => {
    const values = state.at(delta, trial)
    return { excess: (values[6] as number) - molarInternalEnergy, slope: values[1] as number }
  })
  const pressure = pressureOfEquation(equation, delta, temperature)
  requireStateRange(pressure, temperature)
  requireGasDensity(equation, pressure, temperature, delta)
  return temperature as Temperature
}

/** A quantity less what it should be, and how it rises with temperature. */
interface Excess {
  readonly excess: number
  readonly slope: number
}

function temperatureOnIsobar(
  mixture: Mixture,
  pressure: AbsolutePressure,
  judge: (state: Float64Array, temperature: number) => Excess,
  upTo: number = highest,
): Temperature {
  requireValid('at.pressure', pressure, statePressure)
  const equation = equationFor(mixture)
  const state = properties(mixture)
  const temperature = solveTemperature(
    'at',
    300,
    (trial) => {
      const delta = reducedDensityAt(equation, pressure, trial)
      return judge(state.at(delta, trial), trial)
    },
    upTo,
  )
  const delta = reducedDensityAt(equation, pressure, temperature)
  requireGas(equation, pressure, temperature, delta)
  return temperature as Temperature
}

function properties(mixture: Mixture): { at: (delta: number, temperature: number) => Float64Array } {
  const equation = equationFor(mixture)
  const ideal = idealPartFor(mixture, equation)
  return {
    at: (delta, temperature) => {
      setTemperature(equation, temperature)
      propertiesInto(equation.properties, equation, ideal, delta, temperature)
      return equation.properties
    },
  }
}

const lowest = 90
const highest = 700
// Heat capacities of the gases are still smooth there; nothing vouches for the densities.
const highestExtrapolated = 1500
const mostSteps = 80

/** Newton's method within a bracket, which is halved wherever a step would leave it or a trial is not a gas at all. */
function solveTemperature(
  argument: string,
  start: number,
  judge: (trial: number) => Excess,
  upTo: number = highest,
): number {
  let low = lowest
  let high = upTo
  let temperature = Math.min(Math.max(start, low), high)
  for (let step = 0; step < mostSteps; step++) {
    const { excess, slope } = judge(temperature)
    // what has no gas root is too cold: liquid has less of everything that is sought here
    if (excess > 0) high = temperature
    else low = temperature
    const next = temperature - excess / slope
    // Newton is of second order: what follows a step of 1e-9 is below the last bit
    if (slope > 0 && Math.abs(next - temperature) <= 1e-9 * temperature) return Math.min(Math.max(next, lowest), upTo)
    const inside = slope > 0 && next > low && next < high
    const change = inside ? next - temperature : 0.5 * (low + high) - temperature
    // the bracket has closed on an end of the range, or on the edge of what is gas
    if (Math.abs(change) <= 1e-12 * temperature) throw outside(argument, upTo)
    temperature += change
  }
  throw new LitrebarError({
    code: 'not-converged',
    argument,
    value: `at ${temperature.toPrecision(12)} K after ${mostSteps} steps`,
    expected: 'a temperature',
    hint: 'The state lies where gas and liquid part; ask for one further off.',
  })
}

function outside(argument: string, upTo: number): LitrebarError {
  return new LitrebarError({
    code: 'outside-validity',
    argument,
    value: 'not reached by any gas',
    expected: `a state from ${lowest} to ${upTo} K`,
    hint: 'Check that both quantities belong to this mixture, per mole and in SI.',
  })
}
