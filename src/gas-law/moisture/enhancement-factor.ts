import { LitrebarError, requireKeys } from '../../errors/index.ts'
import type { SourceId } from '../../references/sources.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Fraction,
  hectopascal,
  kelvin,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { overStablePhase } from '../water/saturation.ts'
import { pressedVapourPressure, saturatedFraction } from './saturated-gas.ts'

/** How far the enhancement factor is to be trusted: relative standard uncertainty up to a pressure. */
export interface EnhancementUncertainty {
  readonly upTo: AbsolutePressure
  readonly relative: number
  readonly source: SourceId
  readonly place: string
}

/**
 * Uncertainty of the enhancement factor by pressure, Pa. A judgement from four routes that were compared. The virial equation is published
 * to 50 bar; beyond, it is stretched. Below -30 °C at high pressure it is worse.
 */
export const enhancementUncertainty: readonly EnhancementUncertainty[] = [
  {
    upTo: 5e6 as AbsolutePressure,
    relative: 0.01,
    source: 'litrebar-derivation',
    place: 'virial against cubic equation',
  },
  {
    upTo: 2e7 as AbsolutePressure,
    relative: 0.05,
    source: 'litrebar-derivation',
    place: 'virial against cubic equation',
  },
  {
    upTo: 3e7 as AbsolutePressure,
    relative: 0.1,
    source: 'litrebar-derivation',
    place: 'virial against cubic equation',
  },
  {
    upTo: 3.5e7 as AbsolutePressure,
    relative: 0.15,
    source: 'litrebar-derivation',
    place: 'extrapolated from the rows before; the routes were compared to 300 bar',
  },
]

const temperatureRange: Accepted = {
  atLeast: 193,
  atMost: 373.15,
  unit: kelvin,
  code: 'outside-validity',
  hint: 'The enhancement factor is worked out from -80 to 100 °C.',
}
const pressureRange: Accepted = {
  above: 0,
  atMost: 350,
  unit: bar,
  code: 'outside-validity',
  hint: 'Give the absolute pressure of the gas, up to 350 bar.',
}

/**
 * Enhancement factor: how many times more water vapour compressed air holds at saturation than the vapour pressure alone would let it.
 * At 200 bar and 20 °C nearly twice: leaving it out puts a pressure dew point wrong by 10 K.
 *
 * For air, and for nitrox, whose gases pull at water alike. Helium hardly pulls: there the squeeze of the
 * pressure on the water is all (`enhancementFactorInHelium`). Never taken from GERG-2008, whose water in air is badly wrong.
 *
 * @param state - temperature, K, 193 to 373.15; pressure, absolute, Pa, above the vapour pressure and at most 350 bar
 * @returns saturated mole fraction × pressure / `saturationPressure`; how far to trust it: `enhancementUncertainty`
 * @throws LitrebarError `outside-validity`, naming the field, outside that range; `range` if not finite
 * @source litrebar-derivation, equal chemical potential with the virials of iapws-g11-15, density of gerg-2008, dissolved gas of iapws-g7-04
 * @example
 * enhancementFactor({ temperature: temperatureOf(20, celsius), pressure: absolute(200, bar) }).toFixed(2) // => '1.83'
 */
export function enhancementFactor(state: {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): Fraction {
  requireKeys('state', state, { temperature: true, pressure: true })
  requireEnhancementState(state)
  const { temperature, pressure } = state
  return ((saturatedFraction(temperature, pressure).fraction * pressure) / overStablePhase(temperature)) as Fraction
}

/**
 * Enhancement factor in helium: the squeeze of the pressure on the water or ice alone, since helium hardly pulls at vapour.
 *
 * @param state - temperature, K, 193 to 373.15; pressure, absolute, Pa, above the vapour pressure and at most 350 bar
 * @returns saturated mole fraction × pressure / `saturationPressure`; no measurement was found to compare it with
 * @throws LitrebarError `outside-validity`, naming the field, outside that range; `range` if not finite
 * @source memory
 * @example
 * enhancementFactorInHelium({ temperature: temperatureOf(20, celsius), pressure: absolute(200, bar) }).toFixed(2) // => '1.16'
 */
export function enhancementFactorInHelium(state: {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): Fraction {
  requireKeys('state', state, { temperature: true, pressure: true })
  requireEnhancementState(state)
  const { temperature, pressure } = state
  return (pressedVapourPressure(temperature, pressure) / overStablePhase(temperature)) as Fraction
}

/** Refuses a state without a saturated mole fraction of water. Shared by the dew points. */
export function requireEnhancementState(state: {
  readonly temperature: Temperature
  readonly pressure: AbsolutePressure
}): void {
  requireWithin('temperature', state.temperature, temperatureRange)
  requireWithin('pressure', state.pressure, pressureRange)
  const vapour = overStablePhase(state.temperature)
  if (state.pressure > vapour) return
  throw new LitrebarError({
    code: 'outside-validity',
    argument: 'pressure',
    value: `${String(Number((state.pressure / hectopascal.factor).toPrecision(12)))} hPa`,
    expected: `above the vapour pressure of water there, ${String(Number((vapour / hectopascal.factor).toPrecision(6)))} hPa`,
    hint: 'Water boils there: gas at this pressure cannot be saturated.',
  })
}

/** Refuses a pressure that the enhancement factor does not reach. */
export function requireEnhancementPressure(pressure: AbsolutePressure): void {
  requireWithin('pressure', pressure, pressureRange)
}
