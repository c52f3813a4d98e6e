import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { one } from '../../units/fraction.ts'
import { molePerLitre } from '../../units/molar.ts'
import { bar } from '../../units/pressure.ts'
import type { AbsolutePressure, MolarDensity, Temperature } from '../../units/quantity.ts'
import { kelvin } from '../../units/temperature.ts'
import { molarGasConstant } from './ideal-gas-law.ts'
import type { VanDerWaalsConstants } from './van-der-waals.table.ts'

const pressureRange: Accepted = { atLeast: 0, atMost: 1e4, unit: bar, hint: 'Give the absolute pressure.' }
const temperatureRange: Accepted = { above: 0, atMost: 1e4, unit: kelvin, hint: 'Check the temperature scale.' }

/**
 * Pressure by the equation of van der Waals: the ideal gas with an own volume of the molecules and a pull between them.
 * It shows why gases depart from the ideal law, and in which direction; in figures `gasState` is far better.
 *
 * @param state - constants of the gas; temperature, K, above 0 and at most 10 000 K; molar density, mol/m³, at least 0 and below
 *   that of the closest packing, 1/b
 * @returns absolute pressure, Pa; negative inside the liquid-vapour dome, where the equation has no meaning
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range
 * @source openstax-chemistry-2e, section 9.6; molar gas constant codata-2018
 * @example
 * const state = { constants: vanDerWaalsConstants.nitrogen, temperature: temperatureOf(20, celsius) }
 * inUnit(vanDerWaalsPressure({ ...state, molarDensity: measure(8, molePerLitre) }), bar).toFixed(0) // => '194'
 */
export function vanDerWaalsPressure(state: {
  readonly constants: VanDerWaalsConstants
  readonly temperature: Temperature
  readonly molarDensity: MolarDensity
}): AbsolutePressure {
  requireKeys('state', state, { constants: true, temperature: true, molarDensity: true })
  const { a, b } = inSi(state.constants)
  requireWithin('temperature', state.temperature, temperatureRange)
  requireWithin('molarDensity', state.molarDensity, {
    atLeast: 0,
    below: 1 / b / molePerLitre.factor,
    unit: molePerLitre,
    hint: 'The molecules fill the space before that.',
  })
  return pressureAt(a, b, state.temperature, state.molarDensity) as AbsolutePressure
}

/**
 * Molar density of the gas by the equation of van der Waals. Of the densities that the equation may give for one pressure it is the
 * lowest, the gas; where there is only a liquid, it refuses.
 *
 * @param state - constants of the gas; temperature, K, above 0 and at most 10 000 K; pressure, absolute, Pa, 0 to 10 000 bar
 * @returns molar density, mol/m³
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range; `outside-validity` where the equation
 *   has no gas at that pressure; `not-converged` next to absolute zero
 * @source openstax-chemistry-2e, section 9.6; molar gas constant codata-2018
 * @example
 * const state = { constants: vanDerWaalsConstants.helium, temperature: temperatureOf(20, celsius) }
 * inUnit(vanDerWaalsMolarDensity({ ...state, pressure: absolute(200, bar) }), molePerLitre).toFixed(2) // => '6.92'
 */
export function vanDerWaalsMolarDensity(state: {
  readonly constants: VanDerWaalsConstants
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): MolarDensity {
  requireKeys('state', state, { constants: true, temperature: true, pressure: true })
  const { a, b } = inSi(state.constants)
  const { temperature, pressure } = state
  requireWithin('temperature', temperature, temperatureRange)
  requireWithin('pressure', pressure, pressureRange)
  // Along the gas, pressure grows with density up to this one.
  const densest = gasSpinodal(a, b, temperature)
  if (pressureAt(a, b, temperature, densest) < pressure) {
    throw new LitrebarError({
      code: 'outside-validity',
      argument: 'pressure',
      value: `${pressure / bar.factor} bar`,
      expected: `at most ${pressureAt(a, b, temperature, densest) / bar.factor} bar`,
      hint: 'The equation has only a liquid there.',
    })
  }
  // Repulsion alone bounds the density from below. Of attraction the gas branch suffers at most Z = 3/8, at the critical point.
  const thermal = molarGasConstant * temperature
  const thinnest = pressure / (thermal + b * pressure)
  const thickest = Math.min((3 * pressure) / thermal, densest)
  return rising(thinnest, thickest, (density) => pressureAt(a, b, temperature, density) - pressure) as MolarDensity
}

function pressureAt(a: number, b: number, temperature: number, density: number): number {
  return (density * molarGasConstant * temperature) / (1 - b * density) - a * density * density
}

/** The density at which the gas branch ends: where pressure stops growing, or the closest packing if it never does. */
function gasSpinodal(a: number, b: number, temperature: number): number {
  const slope = (density: number): number => (molarGasConstant * temperature) / (1 - b * density) ** 2 - 2 * a * density
  const critical = 1 / (3 * b)
  if (slope(critical) >= 0) return (1 - 1e-12) / b
  return rising(0, critical, (density) => -slope(density))
}

/** Where a function that rises through zero between two points does so, by halving until no double lies between. */
function rising(from: number, to: number, f: (x: number) => number): number {
  let low = from
  let high = to
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2
    if (middle <= low || middle >= high) return low
    if (f(middle) > 0) high = middle
    else low = middle
  }
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'temperature',
    value: 'too low',
    expected: 'a temperature at which there is gas',
    hint: 'Check the temperature scale.',
  })
}

const aRange: Accepted = { atLeast: 0, atMost: 1000, unit: one, hint: 'Give a in L²·atm/mol², as books print it.' }
const bRange: Accepted = { atLeast: 0.001, atMost: 10, unit: one, hint: 'Give b in L/mol, as books print it.' }

function inSi(constants: VanDerWaalsConstants): { readonly a: number; readonly b: number } {
  requireKeys('constants', constants, { a: true, b: true, source: false, place: false })
  requireWithin('constants.a', constants.a, aRange)
  requireWithin('constants.b', constants.b, bRange)
  return { a: constants.a * 0.101325, b: constants.b * 1e-3 } // L²·atm and L to Pa·m⁶ and m³
}
