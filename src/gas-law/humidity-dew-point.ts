import { LitrebarError } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Fraction,
  fractionOf,
  type MoleFraction,
  one,
  partPerMillion,
  percent,
  requireWithin,
  type Temperature,
} from '../units/index.ts'
import {
  melting,
  requireEnhancementPressure,
  requireEnhancementState,
  saturatedFraction,
  saturatedFractionOver,
} from './humidity-enhancement.ts'
import { temperatureAt, type WaterPhase } from './humidity-saturation.ts'

const waterFractionRange: Accepted = {
  above: 0,
  atMost: 1e6,
  unit: partPerMillion,
  hint: 'Give the mole fraction of water: fractionOf(67, partPerMillion).',
}
const humidityRange: Accepted = {
  atLeast: 0,
  atMost: 100,
  unit: percent,
  hint: 'Give 40 per cent as 0.4, or measure(40, percent).',
}

/** A dew point, and what the vapour settles as. */
export interface DewPoint {
  readonly temperature: Temperature
  /** `ice`: it is a frost point. */
  readonly over: WaterPhase
}

/**
 * Mole fraction of water in air that is saturated: also that of air whose dew or frost point at this pressure is this temperature.
 *
 * @param state - temperature, K, 193 to 373.15; pressure, absolute, Pa, above the vapour pressure and at most 300 bar
 * @returns mole fraction of water, over ice or water, whichever is stable: ice melts at 0.01 °C, under 300 bar at -2.3 °C
 * @throws LitrebarError `outside-validity`, naming the field, outside that range; `range` if not finite
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const filled = saturatedWaterFraction({ temperature: temperatureOf(20, celsius), pressure: absolute(200, bar) })
 * inUnit(filled, partPerMillion).toFixed(0) // => '214'
 */
export function saturatedWaterFraction(state: {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): MoleFraction {
  requireEnhancementState(state)
  return saturatedFraction(state.temperature, state.pressure).fraction as MoleFraction
}

/**
 * Dew or frost point of air at a pressure, from its mole fraction of water: the temperature to which it can cool before water or ice settles.
 * At cylinder pressure it is a pressure dew point, far above the one at the surface.
 *
 * @param state - mole fraction of water, above 0; pressure, absolute, Pa, at most 300 bar
 * @returns temperature, K, 193 to 373.15, and whether over water or ice
 * @throws LitrebarError `outside-validity` where that lies outside the range; `range` for a fraction that is none
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const inCylinder = dewPoint({ waterFraction: fractionOf(67, partPerMillion), pressure: absolute(200, bar) })
 * inUnit(inCylinder.temperature, celsius).toFixed(1) // => '0.8'
 */
export function dewPoint(state: {
  readonly waterFraction: MoleFraction
  readonly pressure: AbsolutePressure
}): DewPoint {
  const { waterFraction, pressure } = state
  requireWithin('waterFraction', waterFraction, waterFractionRange)
  requireEnhancementPressure(pressure)
  requireReach(state)
  const over = (phase: WaterPhase): number =>
    temperatureAt(Math.log(waterFraction), phase, (t) => Math.log(saturatedFractionOver(t, pressure, phase)))
  // Of the two temperatures the higher one is met first on cooling.
  const ice = over('ice')
  if (ice < iceOnly) return { temperature: ice as Temperature, over: 'ice' }
  const water = over('water')
  return ice > water && ice < melting
    ? { temperature: ice as Temperature, over: 'ice' }
    : { temperature: water as Temperature, over: 'water' }
}

/** The solve must not leave the range of the enhancement factor: its ends are looked at first. */
function requireReach(state: { readonly waterFraction: MoleFraction; readonly pressure: AbsolutePressure }): void {
  const { waterFraction, pressure } = state
  const driest = saturatedFractionOver(lowestDewPoint, pressure, 'ice')
  if (waterFraction >= driest) return
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'waterFraction',
    value: `${String(waterFraction / partPerMillion.factor)} ppm`,
    expected: `at least ${String(Number((driest / partPerMillion.factor).toPrecision(3)))} ppm, a frost point of -80 °C at that pressure`,
    hint: 'Drier gas than this is not covered.',
  })
}

const lowestDewPoint = 193
/** Below this ice is stable at any pressure in range, K. */
const iceOnly = 269

/**
 * Dew point at another pressure: an atmospheric dew point into the pressure dew point of a cylinder or a line, and back.
 * The gas keeps its water; only its pressure changes.
 *
 * @param change - dew or frost point, K, 193 to 373.15, at `pressure`; `toPressure`; both absolute, Pa, at most 300 bar
 * @returns dew or frost point at `toPressure`
 * @throws LitrebarError `outside-validity`, naming the field, outside the range
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const atmospheric = { dewPoint: temperatureOf(-50, fahrenheit), pressure: absolute(1, atmosphere) }
 * const inLine = dewPointAtPressure({ ...atmospheric, toPressure: absolute(40, bar) })
 * const shown = `${inUnit(inLine.temperature, celsius).toFixed(1)} °C over ${inLine.over}` // => '-11.5 °C over ice'
 */
export function dewPointAtPressure(change: {
  readonly dewPoint: Temperature
  readonly pressure: AbsolutePressure
  readonly toPressure: AbsolutePressure
}): DewPoint {
  const waterFraction = saturatedWaterFraction({ temperature: change.dewPoint, pressure: change.pressure })
  return dewPoint({ waterFraction, pressure: change.toPressure })
}

/**
 * Relative humidity of air: its water over that of saturated air of the same temperature and pressure, over ice where ice is stable.
 *
 * @param state - mole fraction of water, above 0; temperature, K, 193 to 373.15; pressure, absolute, Pa, at most 300 bar
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
  requireWithin('waterFraction', state.waterFraction, { ...waterFractionRange, atMost: 1, unit: one })
  return (state.waterFraction / saturatedWaterFraction(state)) as Fraction
}

/**
 * Mole fraction of water in air of a relative humidity.
 *
 * @param state - relative humidity, 0 to 1; temperature, K, 193 to 373.15; pressure, absolute, Pa, at most 300 bar
 * @returns mole fraction of water
 * @throws LitrebarError `outside-validity` or `range`, naming the field
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const room = { relativeHumidity: measure(60, percent), temperature: temperatureOf(25, celsius), pressure: absolute(1, atmosphere) }
 * inUnit(waterFractionAtHumidity(room), percent).toFixed(3) // => '1.885'
 */
export function waterFractionAtHumidity(state: {
  readonly relativeHumidity: Fraction
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): MoleFraction {
  requireWithin('relativeHumidity', state.relativeHumidity, humidityRange)
  return fractionOf(state.relativeHumidity * saturatedWaterFraction(state))
}
