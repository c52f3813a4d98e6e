import { faultOfRow, LitrebarError, requireRows, rowCodes } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  kelvin,
  pascal,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'

/** What the vapour is in balance with. A hygrometer’s frost point is over ice, its dew point over water. */
export type WaterPhase = 'water' | 'ice'

const critical = { temperature: 647.096, pressure: 22.064e6 } as const
const triple = { temperature: 273.16, pressure: 611.657 } as const

const waterRange: Accepted = {
  atLeast: 273.15, // 0 °C is 0.01 K below the triple point, where the equation still holds
  atMost: 647.096,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'Below 0 °C ask for ice: saturationPressureOverIce().',
}
const iceRange: Accepted = {
  atLeast: 50,
  atMost: 273.16,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'Above 0.01 °C ask for water: saturationPressureOverWater().',
}
const anyRange: Accepted = {
  atLeast: 50,
  atMost: 647.096,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'Give the temperature of the water or ice with its scale.',
}
const pressureRange: Accepted = {
  above: 1e-39,
  atMost: 22.064e6,
  unit: pascal,
  code: 'outside-validity',
  hint: 'Give the partial pressure of the vapour, absolute.',
}

/**
 * Saturation pressure of water vapour over liquid water, without other gas.
 * In compressed gas the vapour is more: multiply by `enhancementFactor`.
 *
 * @param temperature - K, 273.15 to 647.096
 * @returns pressure, absolute, Pa
 * @throws LitrebarError `outside-validity` outside that range; `range` if not finite
 * @source iapws-sr1-86, equation 1; wagner-pruss-1993
 * @example
 * saturationPressureOverWater(temperatureOf(37, celsius)).toFixed(1) // => '6282.4'
 */
export function saturationPressureOverWater(temperature: Temperature): AbsolutePressure {
  requireWithin('temperature', temperature, waterRange)
  return overWater(temperature) as AbsolutePressure
}

/**
 * Saturation pressure of water vapour over ice, without other gas.
 *
 * @param temperature - K, 50 to 273.16
 * @returns pressure, absolute, Pa
 * @throws LitrebarError `outside-validity` outside that range; `range` if not finite
 * @source iapws-r14-08, equation 6
 * @example
 * saturationPressureOverIce(temperatureOf(-50, celsius)).toFixed(3) // => '3.938'
 */
export function saturationPressureOverIce(temperature: Temperature): AbsolutePressure {
  requireWithin('temperature', temperature, iceRange)
  return overIce(temperature) as AbsolutePressure
}

/**
 * Saturation pressure over what is stable: ice below 0.01 °C, water from there.
 *
 * @param temperature - K, 50 to 647.096
 * @returns pressure, absolute, Pa
 * @throws LitrebarError `outside-validity` outside that range; `range` if not finite
 * @source iapws-sr1-86, equation 1; iapws-r14-08, equation 6
 * @example
 * saturationPressure(temperatureOf(20, celsius)).toFixed(1) // => '2339.2'
 */
export function saturationPressure(temperature: Temperature): AbsolutePressure {
  requireWithin('temperature', temperature, anyRange)
  return overStablePhase(temperature) as AbsolutePressure
}

/**
 * Temperature at which vapour of a partial pressure is saturated, without other gas: dew point over water, frost point over ice.
 * In compressed gas use `dewPoint`, which counts the enhancement.
 *
 * @param vapourPressure - absolute, Pa, up to 22.064 MPa
 * @returns temperature, K
 * @throws LitrebarError `outside-validity` for a pressure that no temperature has; `range` if not finite
 * @source iapws-sr1-86, equation 1; iapws-r14-08, equation 6
 * @example
 * inUnit(saturationTemperature(absolute(2339.2, pascal)), celsius).toFixed(3) // => '20.000'
 */
export function saturationTemperature(vapourPressure: AbsolutePressure): Temperature {
  requireWithin('vapourPressure', vapourPressure, pressureRange)
  const phase = vapourPressure < triple.pressure ? 'ice' : 'water'
  const kernel = phase === 'ice' ? overIce : overWater
  return temperatureAt(Math.log(vapourPressure), phase, (t) => Math.log(kernel(t))) as Temperature
}

/**
 * Saturation pressures of a column of temperatures, over what is stable. A bad row is NaN and gets a code
 * instead of an error.
 *
 * @param out - `pressurePascal` receives the pressures; `code` a row code: `good`, `missing`, `outOfRange` for an
 *   infinite temperature, `outsideValidity` outside 50 to 647.096 K
 * @param columns - `temperatureKelvin`
 * @param from - first row, 0 unless given
 * @param to - row after the last, all rows unless given
 * @throws LitrebarError as `requireRows`
 * @source iapws-sr1-86, equation 1; iapws-r14-08, equation 6
 */
export function saturationPressureInto(
  out: { readonly pressurePascal: Float64Array; readonly code: Uint8Array },
  columns: { readonly temperatureKelvin: Float64Array },
  from = 0,
  to?: number,
): void {
  const end = requireRows([columns, ['temperatureKelvin']], [out, ['pressurePascal', 'code']], from, to)
  const { temperatureKelvin } = columns
  const { pressurePascal, code } = out
  for (let row = from; row < end; row++) {
    const temperature = temperatureKelvin[row] as number
    const good = temperature >= 50 && temperature <= critical.temperature
    code[row] = good ? rowCodes.good : faultOfRow(rowCodes.outsideValidity, temperature)
    pressurePascal[row] = good ? overStablePhase(temperature) : Number.NaN
  }
}

/** Refuses a temperature at which liquid water has no saturation. */
export function requireWaterTemperature(temperature: Temperature): void {
  requireWithin('temperature', temperature, waterRange)
}

/** Saturation pressure over water, Pa. Unchecked: runs on smoothly below 0 °C, 0.7 % high at -40 °C; stays at the critical pressure above the critical temperature. */
export function overWater(temperature: number): number {
  const ratio = critical.temperature / temperature
  const th = Math.max(1 - 1 / ratio, 0)
  const root = Math.sqrt(th)
  const th2 = th * th
  const th3 = th2 * th
  const terms =
    (-7.85951783 + 1.84408259 * root) * th +
    (-11.7866497 + 22.6807411 * root - 15.9618719 * th + 1.80122502 * th3 * th * root) * th3
  return critical.pressure * Math.exp(ratio * terms)
}

/** Saturation pressure over ice, Pa. Unchecked. */
export function overIce(temperature: number): number {
  const th = temperature / triple.temperature
  const log = Math.log(th)
  const terms =
    -21.2144006 * Math.exp(0.333333333e-2 * log) +
    27.3203819 * Math.exp(1.20666667 * log) -
    6.1059813 * Math.exp(1.70333333 * log)
  return triple.pressure * Math.exp(terms / th)
}

/** Saturation pressure over ice below the triple point, over water from there, Pa. Unchecked. */
export function overStablePhase(temperature: number): number {
  return temperature < triple.temperature ? overIce(temperature) : overWater(temperature)
}

const mostSteps = 40

/**
 * The temperature at which the logarithm of a vapour pressure over one phase has a value: secant steps in 1/T, in which it is
 * nearly a straight line.
 *
 * @param wanted - logarithm of the pressure in Pa
 * @param phase - over water or ice
 * @param logPressure - the logarithm at a temperature
 * @returns temperature, K
 * @throws LitrebarError `not-converged`, which no state in range has been seen to do
 */
export function temperatureAt(wanted: number, phase: WaterPhase, logPressure: (temperature: number) => number): number {
  const heat = phase === 'ice' ? 6140 : 5423 // of sublimation or evaporation over the gas constant, K
  let last = 1 / triple.temperature
  let lastResidual = logPressure(triple.temperature) - wanted
  let inverse = last + lastResidual / heat
  for (let step = 0; step < mostSteps; step++) {
    const residual = logPressure(1 / inverse) - wanted
    if (Math.abs(residual) < 1e-13 || inverse === last) return 1 / inverse
    const next = inverse - (residual * (inverse - last)) / (residual - lastResidual)
    last = inverse
    lastResidual = residual
    // the last bits of the residual are noise: a step that no longer moves the temperature is the end
    if (Math.abs(next - inverse) <= 4e-16 * inverse) return 1 / next
    inverse = next
  }
  throw new LitrebarError({
    code: 'not-converged',
    argument: 'temperature of saturation',
    value: `${String(1 / inverse)} K after ${String(mostSteps)} steps`,
    expected: 'a steady value',
    hint: 'Report the state: every state in range should converge.',
  })
}
