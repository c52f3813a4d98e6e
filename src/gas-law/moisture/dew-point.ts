import { LitrebarError, requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  celsius,
  kelvin,
  type MoleFraction,
  partPerMillion,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { temperatureAt, type WaterPhase } from '../water/saturation.ts'
import { requireEnhancementPressure, requireEnhancementState } from './enhancement-factor.ts'
import { melting, saturatedFraction, saturatedFractionOver } from './saturated-gas.ts'

const waterFractionRange: Accepted = {
  above: 0,
  atMost: 1e6,
  unit: partPerMillion,
  hint: 'Give the mole fraction of water: fractionOf(67, partPerMillion).',
}

/** A dew point, and what the vapour settles as. */
export interface DewPoint {
  readonly temperature: Temperature
  /** `ice`: it is a frost point. */
  readonly over: WaterPhase
}

/** What a hygrometer’s figure below 0 °C stands for: `ice` for a frost point, `water` for a dew point over supercooled water, as weather stations have it. */
export interface OverPhase {
  /** What is stable unless given. Over water the figures go down to -40 °C, where they are 0.7 % of the water high. */
  readonly over?: WaterPhase
}

/**
 * Mole fraction of water in air that is saturated: also that of air whose dew or frost point at this pressure is this temperature.
 *
 * @param state - temperature, K, 193 to 373.15; pressure, absolute, Pa, above the vapour pressure and at most 350 bar; `over` for a hygrometer
 * @returns mole fraction of water, over ice or water, whichever is stable: ice melts at 0.01 °C, under 300 bar at -2.3 °C
 * @throws LitrebarError `outside-validity`, naming the field, outside that range; `range` if not finite
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const filled = saturatedWaterFraction({ temperature: temperatureOf(20, celsius), pressure: absolute(200, bar) })
 * inUnit(filled, partPerMillion).toFixed(0) // => '214'
 */
export function saturatedWaterFraction(
  state: { readonly temperature: Temperature; readonly pressure: AbsolutePressure } & OverPhase,
): MoleFraction {
  requireKeys('state', state, { temperature: true, pressure: true, over: false })
  requireEnhancementState(state)
  const { temperature, pressure, over } = state
  if (over === undefined) return saturatedFraction(temperature, pressure).fraction as MoleFraction
  requireWithin('temperature', temperature, over === 'ice' ? iceRange : waterRange)
  return saturatedFractionOver(temperature, pressure, over) as MoleFraction
}

/**
 * Dew or frost point of air at a pressure, from its mole fraction of water: the temperature to which it can cool before water or ice settles.
 * At cylinder pressure it is a pressure dew point, far above the one at the surface.
 *
 * @param state - mole fraction of water, above 0; pressure, absolute, Pa, at most 350 bar; `over` for what a hygrometer shows
 * @returns temperature, K, 193 to 373.15, and whether over water or ice
 * @throws LitrebarError `outside-validity` where that lies outside the range; `range` for a fraction that is none
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const inCylinder = dewPoint({ waterFraction: fractionOf(67, partPerMillion), pressure: absolute(200, bar) })
 * inUnit(inCylinder.temperature, celsius).toFixed(1) // => '0.8'
 */
export function dewPoint(
  state: { readonly waterFraction: MoleFraction; readonly pressure: AbsolutePressure } & OverPhase,
): DewPoint {
  requireKeys('state', state, { waterFraction: true, pressure: true, over: false })
  const { waterFraction, pressure } = state
  requireWithin('waterFraction', waterFraction, waterFractionRange)
  requireEnhancementPressure(pressure)
  requireReach(waterFraction, pressure)
  const over = (phase: WaterPhase): DewPoint => ({
    temperature: temperatureAt(Math.log(waterFraction), phase, (t) =>
      Math.log(saturatedFractionOver(t, pressure, phase)),
    ) as Temperature,
    over: phase,
  })
  if (state.over !== undefined) {
    const asked = over(state.over)
    requireWithin('dew point', asked.temperature, state.over === 'ice' ? iceRange : waterRange)
    return asked
  }
  // Of the two temperatures the higher one is met first on cooling.
  const ice = over('ice')
  if (ice.temperature < iceOnly) return ice
  const water = over('water')
  return ice.temperature > water.temperature && ice.temperature < melting ? ice : water
}

/** The solve must not leave the range of the enhancement factor: its ends are looked at first. */
function requireReach(waterFraction: number, pressure: number): void {
  const driest = saturatedFractionOver(lowestDewPoint, pressure, 'ice')
  const wettest = pressure > vapourPressureOf100 ? saturatedFractionOver(highestDewPoint, pressure, 'water') : 1
  if (waterFraction >= driest && waterFraction <= wettest) return
  const shown = (fraction: number): string => `${String(Number((fraction / partPerMillion.factor).toPrecision(4)))} ppm`
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'waterFraction',
    value: shown(waterFraction),
    expected: `${shown(driest)} to ${shown(wettest)}, dew points of -80 to 100 °C at that pressure`,
    hint: 'Check that the fraction is that of water, and the unit of the pressure.',
  })
}

const lowestDewPoint = 193
const highestDewPoint = 373.15
const vapourPressureOf100 = 101_420 // Pa, a little above that of water at 100 °C
/** Below this ice is stable at any pressure in range, K. */
const iceOnly = 269

const iceRange: Accepted = {
  atLeast: lowestDewPoint,
  atMost: melting,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'Ice is there from -80 to 0.01 °C.',
}
const waterRange: Accepted = {
  atLeast: -40,
  atMost: 100,
  unit: celsius,
  code: 'outside-validity',
  hint: 'Supercooled water is supported down to -40 °C; ask for ice below.',
}

/**
 * Dew point at another pressure: an atmospheric dew point into the pressure dew point of a cylinder or a line, and back.
 * The gas keeps its water; only its pressure changes.
 *
 * @param change - dew or frost point, K, 193 to 373.15, at `pressure`; `toPressure`; both absolute, Pa, at most 350 bar; `over: 'water'` if the
 *   hygrometer shows a dew point over supercooled water
 * @returns dew or frost point at `toPressure`
 * @throws LitrebarError `outside-validity`, naming the field, outside the range
 * @source litrebar-derivation, as `enhancementFactor`
 * @example
 * const atmospheric = { dewPoint: temperatureOf(-50, fahrenheit), pressure: absolute(1, atmosphere) }
 * const inLine = dewPointAtPressure({ ...atmospheric, toPressure: absolute(40, bar) })
 * const shown = `${inUnit(inLine.temperature, celsius).toFixed(1)} °C over ${inLine.over}` // => '-11.5 °C over ice'
 */
export function dewPointAtPressure(
  change: {
    readonly dewPoint: Temperature
    readonly pressure: AbsolutePressure
    readonly toPressure: AbsolutePressure
  } & OverPhase,
): DewPoint {
  requireKeys('change', change, { dewPoint: true, pressure: true, toPressure: true, over: false })
  const { dewPoint: temperature, pressure, over } = change
  const waterFraction = saturatedWaterFraction({ temperature, pressure, ...(over === undefined ? {} : { over }) })
  return dewPoint({ waterFraction, pressure: change.toPressure })
}
