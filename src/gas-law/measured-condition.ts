import { type Accepted, requireWithin } from '../units/accepted.ts'
import { bar } from '../units/pressure.ts'
import type { AbsolutePressure, Temperature } from '../units/quantity.ts'
import { celsius } from '../units/temperature.ts'
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
  const { name, pressure, temperature } = measured
  requireWithin('pressure', pressure, pressureRange)
  requireWithin('temperature', temperature, temperatureRange)
  return {
    name: `ATPD ${name}`,
    pressure,
    temperature,
    moisture: 'dry',
    waterVapourPressure: 0 as AbsolutePressure,
    source: 'common-practice',
    place: 'as measured',
  }
}
