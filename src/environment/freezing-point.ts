import { requireKeys } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  one,
  type PracticalSalinity,
  requireWithin,
  type Temperature,
} from '../units/index.ts'
import { seaPressure } from './seawater-density.ts'

const salinityRange: Accepted = {
  atLeast: 0,
  atMost: 40,
  unit: one,
  code: 'outside-validity',
  hint: 'The formula was fitted from 4 to 40; at 0 it gives the freezing point of fresh water.',
}
const pressureRange: Accepted = {
  atLeast: 0.2,
  atMost: 51.013_25,
  unit: bar,
  code: 'outside-validity',
  hint: 'Give the absolute pressure, up to 50 bar above the atmosphere.',
}

/**
 * Freezing point of sea water: the coldest that liquid water around a diver or a regulator can be. Air-saturated water within 0.003 °C.
 *
 * @param water - practical salinity, 0 to 40; pressure, absolute, Pa, 0.2 to 51 bar
 * @returns temperature, K
 * @throws LitrebarError `outside-validity`, naming the field, if one is out of range; `range` if it is not finite
 * @source eos-80, pages 29 and 30
 * @example
 * const water = { salinity: practicalSalinityOf(35), pressure: absolute(1, atmosphere) }
 * inUnit(freezingPointOfWater(water), celsius).toFixed(3) // => '-1.922'
 */
export function freezingPointOfWater(water: {
  readonly salinity: PracticalSalinity
  readonly pressure: AbsolutePressure
}): Temperature {
  requireKeys('water', water, { salinity: true, pressure: true })
  requireWithin('salinity', water.salinity, salinityRange)
  requireWithin('pressure', water.pressure, pressureRange)
  const s = water.salinity
  const celsiusDegrees1968 =
    (-0.0575 + 1.710523e-3 * Math.sqrt(s) - 2.154996e-4 * s) * s - 7.53e-3 * seaPressure(water.pressure)
  return (celsiusDegrees1968 / 1.000_24 + 273.15) as Temperature
}
