import { requireKeys } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  celsius,
  type Density,
  type Fraction,
  fractionOf,
  hectopascal,
  type MoleFraction,
  one,
  requireWithin,
  type Temperature,
} from '../units/index.ts'

/** The air of a room or above the water. */
export interface HumidAir {
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
  /** Vapour present as a share of that at saturation, 0 to 1. */
  readonly relativeHumidity: Fraction
  /** Mole fraction of carbon dioxide, 0.0004 unless given. */
  readonly carbonDioxide?: MoleFraction
}

const pressureRange: Accepted = {
  atLeast: 600,
  atMost: 1100,
  unit: hectopascal,
  code: 'outside-validity',
  hint: 'The equation holds from 600 to 1100 hPa; compressed air goes through the real-gas functions.',
}
const temperatureRange: Accepted = {
  atLeast: 15,
  atMost: 27,
  unit: celsius,
  code: 'outside-validity',
  hint: 'The equation holds from 15 to 27 °C; extrapolate: true stretches it to 0 to 40 °C.',
}
const stretchedTemperatureRange: Accepted = {
  ...temperatureRange,
  atLeast: 0,
  atMost: 40,
  hint: 'Stay within 0 to 40 °C.',
}
const humidityRange: Accepted = {
  atLeast: 0,
  atMost: 1,
  unit: one,
  hint: 'Give 40 per cent as 0.4, or measure(40, percent).',
}
const carbonDioxideRange: Accepted = { atLeast: 0, atMost: 0.01, unit: one, hint: 'Outdoor air has 0.0004.' }

const gasConstant = 8.314472 // of the 2002 adjustment, which the equation keeps

/**
 * Density of humid air near one atmosphere: the equation of 2007 for weighing in air. Relative standard uncertainty 2.2e-5.
 *
 * @param air - pressure, absolute, Pa, 600 to 1100 hPa; temperature, K, 15 to 27 °C; relative humidity, 0 to 1; carbon dioxide, 0 to 0.01
 * @param options - `extrapolate: true` allows 0 to 40 °C, where it is within 1e-4
 * @returns density, kg/m³
 * @throws LitrebarError `outside-validity`, naming the field, outside the range of the equation; `range` for a humidity out of range
 * @source cipm-2007, equation 1 and appendix A.1
 * @example
 * const air = {
 *   pressure: absolute(1, atmosphere),
 *   temperature: temperatureOf(20, celsius),
 *   relativeHumidity: measure(50, percent),
 * }
 * humidAirDensity(air).toFixed(5) // => '1.19931'
 */
export function humidAirDensity(air: HumidAir, options: { readonly extrapolate?: boolean } = {}): Density {
  requireKeys('options', options, { extrapolate: false })
  requireKeys('air', air, { pressure: true, temperature: true, relativeHumidity: true, carbonDioxide: false })
  const { pressure: p, temperature: T, relativeHumidity, carbonDioxide = fractionOf(0.0004) } = air
  requireWithin('pressure', p, pressureRange)
  requireWithin('temperature', T, options.extrapolate === true ? stretchedTemperatureRange : temperatureRange)
  requireWithin('relativeHumidity', relativeHumidity, humidityRange)
  requireWithin('carbonDioxide', carbonDioxide, carbonDioxideRange)

  const t = T - 273.15
  const saturation = Math.exp((1.2378847e-5 * T - 1.9121316e-2) * T + 33.93711047 - 6.3431645e3 / T)
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t
  const x = (relativeHumidity * enhancement * saturation) / p
  const perKelvin = p / T
  const compressibility =
    1 -
    perKelvin *
      (1.58123e-6 +
        (-2.9331e-8 + 1.1043e-10 * t) * t +
        (5.707e-6 - 2.051e-8 * t) * x +
        (1.9898e-4 - 2.376e-6 * t) * x * x) +
    perKelvin * perKelvin * (1.83e-11 - 0.765e-8 * x * x)
  const dryMolarMass = 1e-3 * (28.96546 + 12.011 * (carbonDioxide - 0.0004))
  const molarMass = dryMolarMass * (1 - x * (1 - 18.01528e-3 / dryMolarMass))
  return ((perKelvin * molarMass) / (compressibility * gasConstant)) as Density
}
