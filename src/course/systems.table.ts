import {
  bar,
  celsius,
  cubicFoot,
  cubicFootPerMinute,
  type Dimension,
  fahrenheit,
  foot,
  kilogram,
  kilogramPerCubicMetre,
  kilogramPerHour,
  litre,
  litrePerMinute,
  metre,
  newton,
  pound,
  poundForce,
  poundPerCubicFoot,
  poundPerHour,
  psi,
  type Unit,
} from '../units/index.ts'

/**
 * The units of the two systems that courses are taught in, by dimension. What is not named keeps the unit it was stated in.
 *
 * @source common-practice
 */
export const systems = {
  metric: {
    pressure: bar,
    length: metre,
    volume: litre,
    temperature: celsius,
    mass: kilogram,
    density: kilogramPerCubicMetre,
    'volume flow': litrePerMinute,
    'mass flow': kilogramPerHour,
    force: newton,
  },
  us: {
    pressure: psi,
    length: foot,
    volume: cubicFoot,
    temperature: fahrenheit,
    mass: pound,
    density: poundPerCubicFoot,
    'volume flow': cubicFootPerMinute,
    'mass flow': poundPerHour,
    force: poundForce,
  },
} as const satisfies Readonly<Record<SystemName, { readonly [D in Dimension]?: Unit<D> }>>

/** The name of a system of units. */
export type SystemName = 'metric' | 'us'
