import { standardGravity } from '../environment/index.ts'
import { gravityRange, waterDensityRange } from '../environment/water-ranges.ts'
import { requireKeys } from '../errors/index.ts'
import {
  type Acceleration,
  type Accepted,
  type Density,
  type DisplacedVolume,
  type Force,
  kilogram,
  litre,
  type Mass,
  requireWithin,
} from '../units/index.ts'

/** A thing in the water that pressure does not change. */
export interface RigidItem {
  readonly mass: Mass
  /** Water that it displaces, walls and all: for a cylinder more than its internal volume. */
  readonly displacedVolume: DisplacedVolume
}

/** Water as buoyancy sees it. */
export interface Water {
  readonly density: Density
  /** Standard gravity unless given. */
  readonly gravity?: Acceleration
}

const massRange: Accepted = { atLeast: 0, atMost: 100_000, unit: kilogram, hint: 'Give the mass as weighed in air.' }
const volumeRange: Accepted = { atLeast: 0, atMost: 1e6, unit: litre, hint: 'Give the water displaced.' }

/**
 * Net buoyancy of a rigid thing: weight of the water displaced less its own weight. Upwards positive.
 * Shown in `kilogramForce` it is the trade's kilograms of lift.
 *
 * @param item - mass, kg, 0 to 100 000; displaced volume, m³, 0 to 1e6 L
 * @param water - density, kg/m³, 900 to 1300; gravity
 * @returns force, N, negative for what sinks
 * @throws LitrebarError `range`, naming the field
 * @source openstax-college-physics, section 11.7
 * @example
 * const anchor = { mass: measure(100, pound), displacedVolume: displacedVolumeOf(0.22, cubicFoot) }
 * const sea = { density: measure(64, poundPerCubicFoot) }
 * inUnit(netBuoyancy(anchor, sea), poundForce).toFixed(0) // => '-86'
 */
export function netBuoyancy(item: RigidItem, water: Water): Force {
  requireItem('item', item)
  const gravity = gravityOf(water)
  return ((item.displacedVolume * water.density - item.mass) * gravity) as Force
}

/**
 * Lift of a volume of gas in water: the weight of the water it displaces. The weight of the gas itself is left to where its mass is counted.
 *
 * @param volume - m³, at the pressure that it has
 * @param water - density, kg/m³, 900 to 1300; gravity
 * @returns force, N
 * @throws LitrebarError `range`
 * @source openstax-college-physics, section 11.7
 */
export function liftOf(volume: number, water: Water): Force {
  requireWithin('volume', volume, volumeRange)
  const gravity = gravityOf(water)
  return (volume * water.density * gravity) as Force
}

/**
 * Ballast for another water: what floats level in one water needs more in a denser one.
 *
 * @param displacedVolume - of the diver with everything, ballast too, m³
 * @param waters - densities, kg/m³: that of the water in which the ballast was right, and of the other
 * @returns apparent mass to be added in the other water, kg, as it weighs in that water; negative to be taken off
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const waters = { from: measure(1000, kilogramPerCubicMetre), to: measure(1025, kilogramPerCubicMetre) }
 * inUnit(ballastForOtherWater(displacedVolumeOf(100, litre), waters), kilogram).toFixed(1) // => '2.5'
 */
export function ballastForOtherWater(
  displacedVolume: DisplacedVolume,
  waters: { readonly from: Density; readonly to: Density },
): Mass {
  requireWithin('displacedVolume', displacedVolume, volumeRange)
  requireKeys('waters', waters, { from: true, to: true })
  requireWithin('waters.from', waters.from, waterDensityRange)
  requireWithin('waters.to', waters.to, waterDensityRange)
  return (displacedVolume * (waters.to - waters.from)) as Mass
}

/** Gravity of a water whose fields are checked on the way. */
export function gravityOf(water: Water): number {
  requireKeys('water', water, { density: true, gravity: false, surfacePressure: false }) // of a water column, too
  const { density, gravity = standardGravity } = water
  requireWithin('water.density', density, waterDensityRange)
  requireWithin('water.gravity', gravity, gravityRange)
  return gravity
}

/** Refuses an item without mass or volume, or with a key that is neither. */
export function requireItem(argument: string, item: RigidItem, others: Readonly<Record<string, boolean>> = {}): void {
  requireKeys(argument, item, { mass: true, displacedVolume: true, ...others })
  const { mass, displacedVolume } = item
  requireWithin(`${argument}.mass`, mass, massRange)
  requireWithin(`${argument}.displacedVolume`, displacedVolume, volumeRange)
}
