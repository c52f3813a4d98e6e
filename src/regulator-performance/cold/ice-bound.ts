import { gasState, molarMass } from '../../gas-law/index.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type Accepted,
  type Duration,
  type Energy,
  hour,
  type Mass,
  requireWithin,
  type Temperature,
} from '../../units/index.ts'
import { assessCold, type ColdCase } from './cold.ts'

/** The most ice that a regulator can grow in a time, by the heat that its gas can draw. */
export interface IceBound {
  /** That the gas draws from a surface at the freezing point until it is as warm as that itself, J. */
  readonly heat: Energy
  /** If all of it came from water that freezes, and none from water that flows past: no more ice can grow. */
  readonly outside: Mass
  /** All the water that the gas carried through: no more ice can grow inside. Absent where the moisture is not known. */
  readonly inside?: Mass
  readonly cautions: readonly CautionId[]
}

const duration: Accepted = { atLeast: 0, atMost: 24, unit: hour, hint: 'State how long the regulator is breathed.' }

// Of ice from pure water at 0 °C, and its fall per kelvin below: the difference of the heat capacities of water and ice (memory).
const heatOfFusion = 333.4e3 // J/kg
const perKelvin = 2.1e3 // J/(kg·K)
const heatCapacityOfWater = 3.95e3 // J/(kg·K): no more than that of sea water, so that the ice is the most (memory)
const molarMassOfWater = 0.018015 // kg/mol
const zero = 273.15

/**
 * The most ice that can grow on and in a regulator while it is breathed, by the first law alone: freezing gives heat, and the gas can take
 * up no more than brings it to the freezing point. Most of that heat comes from water that flows past and does not freeze, so that real ice
 * is far less; where it sits, and whether a little of it is enough to hold a valve open, no balance tells. Evidence for how fast ice can grow,
 * never for how long a regulator lasts.
 *
 * The supply counts as steady: state the highest pressure of the stretch, where air and oxygen cool most.
 *
 * @param at - as `assessCold`; with `waterFraction` also the ice inside
 * @param lasting - how long it is breathed, s, to 24 h
 * @returns heat, J, and the most ice, kg; 0 where the gas is no colder than the freezing point
 * @throws LitrebarError as `assessCold`; `range` for a duration out of range
 * @source gerg-2008, enthalpy; litrebar-derivation, first law; heat of fusion and heat capacities memory
 * @example
 * const lake = { mixture: dryAir, supplyPressure: absolute(200, bar), waterTemperature: temperatureOf(4, celsius), ambientPressure: absolute(4, bar), intermediatePressure: difference(9.5, bar), respiratoryMinuteVolume: measure(30, litrePerMinute), freezingPoint: temperatureOf(0, celsius) }
 * inUnit(iceBound(lake, measure(10, minute)).outside, gram).toFixed(0) // => '158'
 */
export function iceBound(at: ColdCase, lasting: Duration): IceBound {
  requireWithin('lasting', lasting, duration)
  const { massFlow, cautions } = assessCold(at)
  const mass = molarMass(at.mixture)
  const supplied = gasState(at.mixture, { pressure: at.supplyPressure, temperature: at.waterTemperature })
  const thawed = gasState(at.mixture, { pressure: at.ambientPressure, temperature: at.freezingPoint })
  const perKilogram = Math.max(0, (thawed.molarEnthalpy - supplied.molarEnthalpy) / mass)
  const heat = massFlow * lasting * perKilogram
  return {
    heat: heat as Energy,
    outside: (heat / heatOfFreezing(at.waterTemperature, at.freezingPoint)) as Mass,
    ...(at.waterFraction !== undefined && {
      inside: ((massFlow / mass) * lasting * at.waterFraction * molarMassOfWater) as Mass,
    }),
    cautions,
  }
}

/** What a kilogram of water gives until it is ice: the least that it can be, so that the ice is the most. */
function heatOfFreezing(water: Temperature, freezing: Temperature): number {
  const cooling = heatCapacityOfWater * Math.max(0, water - freezing)
  return heatOfFusion - perKelvin * Math.max(0, zero - freezing) + cooling
}
