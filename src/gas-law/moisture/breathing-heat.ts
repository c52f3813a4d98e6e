import { requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  litrePerMinute,
  type Power,
  requireWithin,
  type Temperature,
  type VolumeFlow,
} from '../../units/index.ts'
import type { Mixture } from '../mixture/mixture.ts'
import { gasState } from '../state/gas-state.ts'
import { saturatedWaterFraction } from './dew-point.ts'

/** A breath of a stated gas, many times over. */
export interface Ventilation {
  readonly mixture: Mixture
  /** Absolute pressure around the diver. */
  readonly pressure: AbsolutePressure
  readonly inspiredTemperature: Temperature
  /** Temperature of the gas breathed out, saturated with water. */
  readonly expiredTemperature: Temperature
  /** Respiratory minute volume, at the pressure around the diver and the temperature breathed out. */
  readonly respiratoryMinuteVolume: VolumeFlow
}

/** Heat that breathing carries out of the body. */
export interface BreathingHeat {
  /** To warm the gas. It grows with its density. */
  readonly warming: Power
  /** To saturate it with water. It hardly changes with depth. */
  readonly humidifying: Power
  readonly total: Power
}

const pressureRange: Accepted = {
  atLeast: 0.5,
  atMost: 100,
  unit: bar,
  hint: 'Give the absolute pressure around the diver.',
}
const inspiredRange: Accepted = {
  atLeast: -50,
  atMost: 45,
  unit: celsius,
  hint: 'Give the temperature of the gas at the mouth.',
}
const expiredRange: Accepted = {
  atLeast: 0,
  atMost: 45,
  unit: celsius,
  hint: 'Gas is breathed out between 10 and 37 °C.',
}
const flowRange: Accepted = {
  above: 0,
  atMost: 300,
  unit: litrePerMinute,
  hint: 'Give the respiratory minute volume at the pressure of the diver, not as surface gas.',
}

const waterMolarMass = 0.018015268

/**
 * Heat carried away by breathing gas: to warm dry gas from the cylinder to body temperature, and to saturate it.
 * Warming grows with depth and is what chills deep; helium lowers it per litre of gas but cools the skin.
 *
 * @param ventilation - mixture, dry; pressure, absolute, Pa, 0.5 to 100 bar; temperature breathed in, K, -50 to 45 °C; temperature breathed out,
 *   K, 0 to 45 °C; respiratory minute volume, m³/s, above 0 and at most 300 L/min
 * @returns power, W; negative warming where the gas is hotter than the breath
 * @throws LitrebarError `range`, naming the field, if one is not finite or out of range
 * @source gerg-2008, enthalpy; ashrae-fundamentals-2017, chapter 1, heat of evaporation in equation 33
 * @example
 * const ventilation = {
 *   mixture: dryAir,
 *   pressure: absolute(5, bar),
 *   inspiredTemperature: temperatureOf(4, celsius),
 *   expiredTemperature: temperatureOf(33, celsius),
 *   respiratoryMinuteVolume: measure(25, litrePerMinute),
 * }
 * const { warming, humidifying } = breathingHeat(ventilation)
 * const shown = `${warming.toFixed(0)} W and ${humidifying.toFixed(0)} W` // => '69 W and 37 W'
 */
export function breathingHeat(ventilation: Ventilation): BreathingHeat {
  requireKeys('ventilation', ventilation, {
    mixture: true,
    pressure: true,
    inspiredTemperature: true,
    expiredTemperature: true,
    respiratoryMinuteVolume: true,
  })
  const { mixture, pressure, inspiredTemperature, expiredTemperature, respiratoryMinuteVolume } = ventilation
  requireWithin('pressure', pressure, pressureRange)
  requireWithin('inspiredTemperature', inspiredTemperature, inspiredRange)
  requireWithin('expiredTemperature', expiredTemperature, expiredRange)
  requireWithin('respiratoryMinuteVolume', respiratoryMinuteVolume, flowRange)

  const expired = gasState(mixture, { pressure, temperature: expiredTemperature })
  const inspired = gasState(mixture, { pressure, temperature: inspiredTemperature })
  const vapour = saturatedWaterFraction({ pressure, temperature: expiredTemperature })
  const total = respiratoryMinuteVolume * expired.molarDensity // mol/s, vapour and gas together
  const warming = total * (1 - vapour) * (expired.molarEnthalpy - inspired.molarEnthalpy)
  const heatOfEvaporation = (2501 - 2.326 * (expiredTemperature - 273.15)) * 1000 // J/kg
  const humidifying = total * vapour * waterMolarMass * heatOfEvaporation
  return { warming: warming as Power, humidifying: humidifying as Power, total: (warming + humidifying) as Power }
}
