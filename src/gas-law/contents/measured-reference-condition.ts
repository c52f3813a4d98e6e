import { requireKeys, requireText } from '../../errors/index.ts'
import { type Accepted, requireWithin } from '../../units/accepted.ts'
import { bar } from '../../units/pressure.ts'
import type { AbsolutePressure, Temperature } from '../../units/quantity.ts'
import { celsius } from '../../units/temperature.ts'
import { saturationPressure } from '../water/saturation.ts'
import type { ReferenceCondition } from './reference-condition.ts'

/** A pressure and a temperature as measured, under a name of the caller's: gas at two states does not add. */
export interface MeasuredState<Name extends string> {
  readonly name: Name
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}

const pressureRange: Accepted = { above: 0, atMost: 100, unit: bar, hint: 'Give the absolute pressure around the gas.' }
const temperatureRange: Accepted = { atLeast: -40, atMost: 60, unit: celsius, hint: 'Check the temperature scale.' }

/**
 * ATPD: gas at the measured temperature and pressure, dry. What comes out of a cylinder.
 *
 * @param measured - a name for the state; pressure, absolute, Pa, above 0 and at most 100 bar; temperature, K, -40 to 60 °C
 * @returns the reference condition
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range
 * @source common-practice
 * @example
 * atpd({ name: 'bench', pressure: absolute(990, millibar), temperature: temperatureOf(18, celsius) }).name // => 'ATPD bench'
 */
export function atpd<const Name extends string>(measured: MeasuredState<Name>): ReferenceCondition<`ATPD ${Name}`> {
  requireKeys('measured', measured, { name: true, pressure: true, temperature: true })
  return atState('ATPD', measured, 'dry')
}

/**
 * ATPS: gas at the measured temperature and pressure, saturated with water vapour. What stands in a wet spirometer.
 *
 * @param measured - a name for the state; pressure, absolute, Pa, above that of the vapour and at most 100 bar;
 *   temperature, K, -40 to 60 °C
 * @returns the reference condition
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range, or nothing but vapour fits the pressure
 * @source common-practice; saturation pressure wagner-pruss-1993
 * @example
 * const spirometer = atps({ name: 'bench', pressure: absolute(990, millibar), temperature: temperatureOf(18, celsius) })
 * inUnit(spirometer.waterVapourPressure, millibar).toFixed(2) // => '20.65'
 */
export function atps<const Name extends string>(measured: MeasuredState<Name>): ReferenceCondition<`ATPS ${Name}`> {
  requireKeys('measured', measured, { name: true, pressure: true, temperature: true })
  return atState('ATPS', measured, 'saturated')
}

/**
 * BTPS: gas at body temperature, saturated, at the pressure around the diver. At 1 atm it is the constant `btps`.
 *
 * @param ambient - a name for the place; pressure, absolute, Pa, above that of the vapour and at most 100 bar
 * @returns the reference condition
 * @throws LitrebarError `range` if the pressure is not finite or out of range, or nothing but vapour fits it
 * @source common-practice; saturation pressure wagner-pruss-1993
 * @example
 * btpsAt({ name: 'at 30 m', pressure: absolute(4, bar) }).name // => 'BTPS at 30 m'
 */
export function btpsAt<const Name extends string>(ambient: {
  readonly name: Name
  readonly pressure: AbsolutePressure
}): ReferenceCondition<`BTPS ${Name}`> {
  requireKeys('ambient', ambient, { name: true, pressure: true })
  return atState('BTPS', { ...ambient, temperature: 310.15 as Temperature }, 'saturated')
}

function atState<Kind extends string, Name extends string>(
  kind: Kind,
  { name, pressure, temperature }: MeasuredState<Name>,
  moisture: 'dry' | 'saturated',
): ReferenceCondition<`${Kind} ${Name}`> {
  requireText('name', name, 'Name the state, such as "at 30 m".')
  requireWithin('temperature', temperature, temperatureRange)
  const waterVapourPressure = moisture === 'dry' ? (0 as AbsolutePressure) : saturationPressure(temperature)
  requireWithin('pressure', pressure, { ...pressureRange, above: waterVapourPressure / bar.factor })
  return {
    name: `${kind} ${name}`,
    pressure,
    temperature,
    moisture,
    waterVapourPressure,
    source: 'common-practice',
    place: 'as measured',
  }
}
