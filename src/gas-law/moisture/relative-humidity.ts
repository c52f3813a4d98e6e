import { requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Fraction,
  fractionOf,
  type MoleFraction,
  one,
  percent,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { saturatedWaterFraction } from './dew-point.ts'

const waterFractionRange: Accepted = {
  above: 0,
  atMost: 1,
  unit: one,
  hint: 'Give the mole fraction of water: fractionOf(67, partPerMillion).',
}
const humidityRange: Accepted = {
  atLeast: 0,
  atMost: 100,
  unit: percent,
  hint: 'Give 40 per cent as 0.4, or measure(40, percent).',
}

/**
 * Relative humidity of air: its water over that of saturated air of the same temperature and pressure, over ice where ice is stable.
 *
 * @param state - mole fraction of water, above 0; temperature, K, 193 to 373.15; pressure, absolute, Pa, at most 350 bar
 * @returns fraction; above 1 the water cannot all be vapour
 * @throws LitrebarError `outside-validity` or `range`, naming the field
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const filled = { waterFraction: fractionOf(67, partPerMillion), pressure: absolute(200, bar), temperature: temperatureOf(20, celsius) }
 * inUnit(relativeHumidity(filled), percent).toFixed(0) // => '31'
 */
export function relativeHumidity(state: {
  readonly waterFraction: MoleFraction
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): Fraction {
  requireKeys('state', state, { waterFraction: true, temperature: true, pressure: true })
  requireWithin('waterFraction', state.waterFraction, waterFractionRange)
  const { temperature, pressure } = state
  return (state.waterFraction / saturatedWaterFraction({ temperature, pressure })) as Fraction
}

/**
 * Mole fraction of water in air of a relative humidity.
 *
 * @param state - relative humidity, 0 to 1; temperature, K, 193 to 373.15; pressure, absolute, Pa, at most 350 bar
 * @returns mole fraction of water
 * @throws LitrebarError `outside-validity` or `range`, naming the field
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const room = { relativeHumidity: measure(60, percent), temperature: temperatureOf(25, celsius), pressure: absolute(1, atmosphere) }
 * inUnit(waterFractionFromHumidity(room), percent).toFixed(3) // => '1.885'
 */
export function waterFractionFromHumidity(state: {
  readonly relativeHumidity: Fraction
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): MoleFraction {
  requireKeys('state', state, { relativeHumidity: true, temperature: true, pressure: true })
  requireWithin('relativeHumidity', state.relativeHumidity, humidityRange)
  const { temperature, pressure } = state
  return fractionOf(state.relativeHumidity * saturatedWaterFraction({ temperature, pressure }))
}
