import { requireKeys, requireList } from '../errors/index.ts'
import {
  type Accepted,
  type Force,
  type Length,
  metre,
  newton,
  newtonMetre,
  requireWithin,
  type Torque,
} from '../units/index.ts'

/** A force on a diver in the water, and where it acts. */
export interface PlacedForce {
  /** Upwards positive: lift of lungs and suit, negative for a weight. */
  readonly force: Force
  /** Along the body from the reference point, towards the head positive. */
  readonly position: Length
}

/** How a diver hangs in the water. */
export interface Trim {
  readonly net: Force
  /** About the reference point; positive lifts the head. */
  readonly moment: Torque
}

const forceRange: Accepted = { atLeast: -1e5, atMost: 1e5, unit: newton, hint: 'Give the force in water.' }
const weightRange: Accepted = {
  above: 0,
  atMost: 1e5,
  unit: newton,
  hint: 'Give the weight in water of what is moved, downwards positive.',
}
const momentRange: Accepted = { atLeast: -1e6, atMost: 1e6, unit: newtonMetre, hint: 'Take it from trim.' }
const positionRange: Accepted = { atLeast: -5, atMost: 5, unit: metre, hint: 'Count from the reference point.' }

/**
 * Net force and moment of everything that pulls on a diver, about any one point. With no net force the moment is the
 * same about every point; level trim needs both to be zero. A rough figure: breathing alone moves it.
 *
 * @param forces - N, upwards positive, and where along the body, m, towards the head positive
 * @returns net force and moment
 * @throws LitrebarError `range`, naming the force
 * @source openstax-college-physics, section 9.2
 * @example
 * const forces = [[30, -0.25], [-18, 0.2], [-10, -0.1]] as const
 * const { moment } = trim(forces.map(([n, m]) => ({ force: measure(n, newton), position: measure(m, metre) })))
 * moment.toFixed(1) // => '-10.1'
 */
export function trim(forces: readonly PlacedForce[]): Trim {
  requireList('forces', forces)
  let net = 0
  let moment = 0
  forces.forEach((placed, i) => {
    requireKeys(`forces[${i}]`, placed, { force: true, position: true })
    const { force, position } = placed
    requireWithin(`forces[${i}].force`, force, forceRange)
    requireWithin(`forces[${i}].position`, position, positionRange)
    net += force
    moment += force * position
  })
  return { net: net as Force, moment: moment as Torque }
}

/**
 * How far a weight has to move to take a moment away.
 *
 * @param moment - N·m, from `trim`
 * @param weight - of what is moved, in water, N, downwards positive and above 0
 * @returns distance, m, towards the head positive
 * @throws LitrebarError `range` for a weight that is not above 0
 * @source litrebar-derivation
 * @example
 * shiftForTrim(measure(-10, newtonMetre), measure(40, newton)) // => -0.25
 */
export function shiftForTrim(moment: Torque, weight: Force): Length {
  requireWithin('weight', weight, weightRange)
  requireWithin('moment', moment, momentRange)
  return (moment / weight) as Length
}
