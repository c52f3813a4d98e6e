import { requireKeys } from '../errors/index.ts'
import { type Accepted, celsius, one, requireWithin, type Speed } from '../units/index.ts'
import { onScaleOf1968 } from './salinity.ts'
import { type SeawaterState, seaPressure, seawaterRanges } from './seawater-density.ts'

const salinityRange: Accepted = { ...seawaterRanges.salinity, atMost: 40, unit: one }
const temperatureRange: Accepted = {
  atLeast: 0,
  atMost: 40,
  unit: celsius,
  code: 'outside-validity',
  hint: 'The equation holds from 0 to 40 °C.',
}

/**
 * Speed of sound in sea or fresh water, by Chen and Millero. Within 0.3 m/s of TEOS-10 down to 300 m, 1 m/s in a warm sea at 3000 m.
 *
 * @param state - practical salinity, 0 to 40; temperature, K, 0 to 40 °C; pressure, absolute, Pa, 0.2 to 1001 bar
 * @returns speed, m/s
 * @throws LitrebarError `outside-validity`, naming the field, if one is out of range; `range` if it is not finite
 * @source eos-80, pages 46 to 49
 * @example
 * const sea = { salinity: practicalSalinityOf(35), temperature: temperatureOf(10, celsius), pressure: absolute(1, atmosphere) }
 * speedOfSoundInWater(sea).toFixed(1) // => '1489.8'
 */
export function speedOfSoundInWater(state: SeawaterState): Speed {
  requireKeys('state', state, { salinity: true, temperature: true, pressure: true })
  requireWithin('salinity', state.salinity, salinityRange)
  requireWithin('temperature', state.temperature, temperatureRange)
  requireWithin('pressure', state.pressure, seawaterRanges.pressure)
  const s = state.salinity
  const t = onScaleOf1968(state.temperature)
  const p = seaPressure(state.pressure)

  const pureWater =
    1402.388 +
    (5.03711 + (-5.80852e-2 + (3.342e-4 + (-1.478e-6 + 3.1464e-9 * t) * t) * t) * t) * t +
    (0.153563 +
      (6.8982e-4 + (-8.1788e-6 + (1.3621e-7 - 6.1185e-10 * t) * t) * t) * t +
      (3.126e-5 +
        (-1.7107e-6 + (2.5974e-8 + (-2.5335e-10 + 1.0405e-12 * t) * t) * t) * t +
        (-9.7729e-9 + (3.8504e-10 - 2.3643e-12 * t) * t) * p) *
        p) *
      p
  const linear =
    1.389 +
    (-1.262e-2 + (7.164e-5 + (2.006e-6 - 3.21e-8 * t) * t) * t) * t +
    (9.4742e-5 +
      (-1.258e-5 + (-6.4885e-8 + (1.0507e-8 - 2.0122e-10 * t) * t) * t) * t +
      (-3.9064e-7 +
        (9.1041e-9 + (-1.6002e-10 + 7.988e-12 * t) * t) * t +
        (1.1e-10 + (6.649e-12 - 3.389e-13 * t) * t) * p) *
        p) *
      p
  const threeHalves = -1.922e-2 - 4.42e-5 * t + (7.3637e-5 + 1.7945e-7 * t) * p
  const square = 1.727e-3 - 7.9836e-6 * p
  return (pureWater + (linear + threeHalves * Math.sqrt(s) + square * s) * s) as Speed
}
