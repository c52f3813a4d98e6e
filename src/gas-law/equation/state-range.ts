import { faultOfRow, rowCodes } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { bar } from '../../units/pressure.ts'
import { kelvin } from '../../units/temperature.ts'

/**
 * Pressures of the equation: nothing, or a vacuum, has no state; the extended range ends at 70 MPa.
 *
 * @source gerg-2008, abstract
 */
export const statePressure: Accepted = {
  above: 0,
  atMost: 700,
  unit: bar,
  code: 'outside-validity',
  hint: 'Give an absolute pressure: add the ambient pressure to a gauge reading.',
}

/**
 * Temperatures of the equation: normal range from 90 K, extended range to 700 K. The extended range from 60 to 90 K is
 * left out, since argon and nitrogen freeze in it and the equation knows no solids.
 *
 * @source gerg-2008, abstract
 */
export const stateTemperature: Accepted = {
  atLeast: 90,
  atMost: 700,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'Give a thermodynamic temperature within the range of the equation.',
}

/**
 * Refuses a state that the equation was not made for.
 *
 * @param pressure - absolute, Pa
 * @param temperature - K
 * @throws LitrebarError `range` for what is not a pressure or temperature at all (not finite, or not above 0),
 *   `outside-validity` for the rest
 */
export function requireStateRange(pressure: number, temperature: number): void {
  if (typeof pressure === 'number' && typeof temperature === 'number' && isStateInRange(pressure, temperature)) return
  requireValid('pressure', pressure, statePressure)
  requireValid('temperature', temperature, stateTemperature)
}

/**
 * Refuses a state beyond where the equation may be extrapolated. Heat capacities of the gases are still smooth there; nothing vouches
 * for the densities.
 *
 * @param pressure - absolute, Pa
 * @param temperature - K
 * @throws LitrebarError as `requireStateRange`, with 1500 K for 700 K
 */
export function requireExtrapolatedRange(pressure: number, temperature: number): void {
  requireValid('pressure', pressure, statePressure)
  requireValid('temperature', temperature, { ...stateTemperature, atMost: 1500 })
}

/**
 * Whether a state lies in the range of the equation: the rows above, in the form for loops.
 *
 * @param pressure - absolute, Pa
 * @param temperature - K
 * @returns false also for NaN
 */
export function isStateInRange(pressure: number, temperature: number): boolean {
  return pressure > 0 && pressure <= 7e7 && temperature >= 90 && temperature <= 700
}

/** The code of a row whose state is out of range. */
export function faultOfState(pressure: number, temperature: number): number {
  const code = pressure > 0 && temperature > 0 ? rowCodes.outsideValidity : rowCodes.outOfRange
  return faultOfRow(code, pressure, temperature)
}

/**
 * Refuses a value outside a row of validity.
 *
 * @param argument - the parameter with its path
 * @param value - SI
 * @param validity - the row
 * @throws LitrebarError `range` if it is not a number above 0, `outside-validity` if it is outside the row
 */
export function requireValid(argument: string, value: number, validity: Accepted): void {
  requireWithin(argument, value, { above: 0, unit: validity.unit, hint: validity.hint })
  requireWithin(argument, value, validity)
}
