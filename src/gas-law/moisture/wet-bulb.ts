import { LitrebarError, requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  celsius,
  type Fraction,
  hectopascal,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { humidityRatio } from './concentration.ts'
import { saturatedWaterFraction } from './dew-point.ts'

const temperatureRange: Accepted = {
  atLeast: 0,
  atMost: 60,
  unit: celsius,
  code: 'outside-validity',
  hint: 'The wet bulb is read from 0 to 60 °C.',
}
const pressureRange: Accepted = {
  atLeast: 500,
  atMost: 1200,
  unit: hectopascal,
  code: 'outside-validity',
  hint: 'A wet-bulb thermometer is read in the open air.',
}

/**
 * Humidity ratio of room air from a dry and a wet thermometer: the humidity of the air that a compressor takes in, with two thermometers and a wick.
 * The wick needs a draught of 3 m/s, or it reads high.
 *
 * @param reading - temperature, K, 0 to 60 °C; wet-bulb temperature, K, 0 °C up to the temperature; pressure, absolute, Pa, 500 to 1200 hPa
 * @returns mass of water per mass of dry air, kg/kg
 * @throws LitrebarError `outside-validity` out of range; `input` if the wet bulb is the warmer one, or colder than dry air could make it
 * @source ashrae-fundamentals-2017, chapter 1, equation 33
 * @example
 * const reading = { temperature: temperatureOf(40, celsius), wetBulb: temperatureOf(20, celsius), pressure: absolute(1, atmosphere) }
 * inUnit(humidityRatioFromWetBulb(reading), gramPerKilogram).toFixed(1) // => '6.5'
 */
export function humidityRatioFromWetBulb(reading: {
  readonly temperature: Temperature
  readonly wetBulb: Temperature
  readonly pressure: AbsolutePressure
}): Fraction {
  requireKeys('reading', reading, { temperature: true, wetBulb: true, pressure: true })
  const { temperature, wetBulb, pressure } = reading
  requireWithin('temperature', temperature, temperatureRange)
  requireWithin('wetBulb', wetBulb, temperatureRange)
  requireWithin('pressure', pressure, pressureRange)
  const dry = temperature - 273.15
  const wet = wetBulb - 273.15
  const saturated = humidityRatio(saturatedWaterFraction({ temperature: wetBulb, pressure }))
  const ratio = ((2501 - 2.326 * wet) * saturated - 1.006 * (dry - wet)) / (2501 + 1.86 * dry - 4.186 * wet)
  if (wet <= dry && ratio >= 0) return ratio as Fraction
  throw new LitrebarError({
    code: 'input',
    argument: 'wetBulb',
    value: `${String(Number(wet.toPrecision(6)))} °C beside ${String(Number(dry.toPrecision(6)))} °C`,
    expected: 'at most the temperature, and no colder than dry air makes it',
    hint: wet > dry ? 'The two readings may be swapped.' : 'Check that the wick is wet and both thermometers agree.',
  })
}
