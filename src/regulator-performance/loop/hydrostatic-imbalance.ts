import { requireKeys } from '../../errors/index.ts'
import {
  type Acceleration,
  type Accepted,
  type Density,
  kilogramPerCubicMetre,
  type Length,
  metre,
  metrePerSecondSquared,
  type PressureDifference,
  requireWithin,
} from '../../units/index.ts'

/** Where the regulator's diaphragm hangs against the point that the lungs feel. */
export interface HydrostaticHead {
  /**
   * Height of the regulator's diaphragm above the reference point (suprasternal notch or lung centroid), m, within 0.5 m.
   * Positive: the reference point lies deeper, and the mouth pressure is below the pressure there.
   */
  readonly height: Length
  readonly waterDensity: Density
  readonly gravity: Acceleration
}

const height: Accepted = {
  atLeast: -0.5,
  atMost: 0.5,
  unit: metre,
  hint: 'Mouth and chest of one diver are not further apart: check the unit.',
}
const waterDensity: Accepted = {
  above: 900,
  below: 1300,
  unit: kilogramPerCubicMetre,
  hint: 'State the density of the water.',
}
const gravity: Accepted = { above: 9.7, below: 9.9, unit: metrePerSecondSquared, hint: 'State gravity on Earth.' }

/**
 * Hydrostatic imbalance: pressure at the reference point minus pressure at the regulator's diaphragm, ρ g Δz.
 * A static load: it moves work between the halves of a breath and leaves the sum as it is. The published tolerable ranges count
 * mouth minus reference, the opposite sign.
 *
 * @param head - height of the diaphragm above the reference point, density of the water, gravity
 * @returns pressure, Pa; positive when the reference point is deeper
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const head = { height: measure(0.1, metre), waterDensity: measure(1025, kilogramPerCubicMetre), gravity: measure(9.80665, metrePerSecondSquared) }
 * inUnit(hydrostaticImbalance(head), centimetreOfWater).toFixed(2) // => '10.25'
 */
export function hydrostaticImbalance(head: HydrostaticHead): PressureDifference {
  requireKeys('head', head, { height: true, waterDensity: true, gravity: true })
  requireWithin('head.height', head.height, height)
  requireWithin('head.waterDensity', head.waterDensity, waterDensity)
  requireWithin('head.gravity', head.gravity, gravity)
  return (head.waterDensity * head.gravity * head.height) as PressureDifference
}
