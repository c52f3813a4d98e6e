import { requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  kelvin,
  type MoleFraction,
  megapascal,
  one,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { airLimit, crossCoefficients, waterLimit, type ZeroDensityLimit } from './virial.table.ts'

/** Second virial coefficients, m³/mol, and third, m⁶/mol², of air (a) and water (w) and between them. */
export interface HumidAirVirials {
  readonly Baa: number
  readonly Baw: number
  readonly Bww: number
  readonly Caaa: number
  readonly Caaw: number
  readonly Caww: number
  readonly Cwww: number
}

const temperatureRange: Accepted = {
  atLeast: 193,
  atMost: 473,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'The virial equation holds from -80 to 200 °C.',
}
const pressureRange: Accepted = {
  above: 0,
  atMost: 5,
  unit: megapascal,
  code: 'outside-validity',
  hint: 'The virial equation holds to 5 MPa; for cylinder pressures use enhancementFactor().',
}
const fractionRange: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Give the mole fraction of water.' }

// The gas constant that the guideline prints: the vectors hang on it in the eighth digit.
const gasConstant = 8.314462

/**
 * Virial coefficients of humid air: how strongly its molecules pull at each other, two and three at a time.
 *
 * @param temperature - K, 193 to 473
 * @returns second coefficients, m³/mol, third, m⁶/mol²
 * @throws LitrebarError `outside-validity` outside that range; `range` if not finite
 * @source iapws-g11-15, equations 7 to 9; lemmon-2000; iapws-r6-95
 * @example
 * humidAirVirials(temperatureOf(300, kelvin)).Baw.toExponential(8) // => '-2.95672747e-5'
 */
export function humidAirVirials(temperature: Temperature): HumidAirVirials {
  requireWithin('temperature', temperature, temperatureRange)
  return virialsAt(temperature)
}

/** As `humidAirVirials`, unchecked. */
export function virialsAt(temperature: number): HumidAirVirials {
  const air = zeroDensityVirials(airLimit, temperature)
  const water = zeroDensityVirials(waterLimit, temperature)
  const { airWater, airAirWater, airWaterWater } = crossCoefficients
  const t = temperature / 100
  let second = 0
  for (const { factor, power } of airWater) second += factor * t ** power
  return {
    Baa: air.second,
    Baw: 1e-6 * second,
    Bww: water.second,
    Caaa: air.third,
    Caaw: 1e-12 * inverseSeries(airAirWater, t),
    Caww: -1e-6 * Math.exp(inverseSeries(airWaterWater, t)),
    Cwww: water.third,
  }
}

/**
 * Fugacity of water in humid air: the pressure that it counts as when it condenses, dissolves or reacts.
 *
 * @param state - mole fraction of water, 0 to 1; pressure, absolute, Pa, up to 5 MPa; temperature, K, 193 to 473
 * @returns fugacity, Pa
 * @throws LitrebarError `outside-validity`, naming the field, outside the range of the equation; `range` for a fraction that is none
 * @source iapws-g11-15, equations 2 to 4
 * @example
 * const air = { waterFraction: fractionOf(0.1), pressure: absolute(1, megapascal), temperature: temperatureOf(300, kelvin) }
 * waterFugacityInAir(air).toFixed(3) // => '88406.169'
 */
export function waterFugacityInAir(state: {
  readonly waterFraction: MoleFraction
  readonly pressure: AbsolutePressure
  readonly temperature: Temperature
}): AbsolutePressure {
  requireKeys('state', state, { waterFraction: true, pressure: true, temperature: true })
  const { waterFraction: x, pressure, temperature } = state
  requireWithin('waterFraction', x, fractionRange)
  requireWithin('pressure', pressure, pressureRange)
  requireWithin('temperature', temperature, temperatureRange)
  const { Baa, Baw, Bww, Caaa, Caaw, Caww, Cwww } = virialsAt(temperature)
  const a = 1 - x
  const beta = x * (2 - x) * Bww + a * a * (2 * Baw - Baa)
  const gamma =
    x * x * (3 - 2 * x) * Cwww +
    a * a * (6 * x * Caww + 3 * (1 - 2 * x) * Caaw - 2 * a * Caaa) +
    (x * x * Bww + 2 * x * a * Baw + a * a * Baa) *
      (x * (3 * x - 4) * Bww + 2 * a * (3 * x - 2) * Baw + 3 * a * a * Baa)
  const density = pressure / (gasConstant * temperature)
  return (x * pressure * Math.exp(density * (beta + 0.5 * gamma * density))) as AbsolutePressure
}

function inverseSeries(coefficients: readonly number[], t: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum / t + coefficient, 0)
}

/** First and second derivative of the residual Helmholtz energy by density, at zero density. */
function zeroDensityVirials(
  { reducingTemperature, reducingDensity, terms }: ZeroDensityLimit,
  temperature: number,
): { readonly second: number; readonly third: number } {
  const tau = reducingTemperature / temperature
  let second = 0
  let third = 0
  for (const { n, t, d, c } of terms) {
    const term = n * tau ** t
    if (d === 1) second += term
    if (d === 1 && c === 1) third -= 2 * term
    if (d === 2) third += 2 * term
  }
  return { second: second / reducingDensity, third: third / (reducingDensity * reducingDensity) }
}
