import { pressureAtDepth, type WaterColumn } from '../environment/index.ts'
import { requireKeys } from '../errors/index.ts'
import {
  type Accepted,
  type Depth,
  type Force,
  type GasVolume,
  litre,
  metre,
  metrePerMinute,
  requireWithin,
  type Speed,
  type VolumeFlow,
} from '../units/index.ts'
import { gravityOf, liftOf } from './net-buoyancy.ts'

/** Gas in a suit or a device on the way up. */
export interface RisingGas {
  readonly volume: GasVolume
  readonly depth: Depth
  readonly water: WaterColumn
}

const volumeRange: Accepted = { above: 0, atMost: 2000, unit: litre, hint: 'Give the gas volume at that depth.' }
const depthRange: Accepted = { above: 0, atMost: 1000, unit: metre, hint: 'Give the depth of the gas.' }
const endRange: Accepted = { atLeast: 0, atMost: 1000, unit: metre, hint: 'Give the depth that it rises to.' }
const speedRange: Accepted = { above: 0, atMost: 120, unit: metrePerMinute, hint: 'Give the rate of ascent, upwards.' }

/**
 * Flow that has to be let out so that a gas volume stays the same on the way up. Largest near the surface.
 *
 * @param gas - volume at the depth, m³, above 0 and at most 2000 L; depth, m; water
 * @param ascentRate - m/s, above 0 and at most 120 m/min
 * @returns flow at ambient, m³/s
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation
 * @example
 * const water = { surfacePressure: absolute(101_325, pascal), density: measure(1025, kilogramPerCubicMetre) }
 * const gas = { volume: gasVolumeOf(10, litre), depth: depthOf(30, metre), water }
 * inUnit(ventFlow(gas, measure(9, metrePerMinute)), litrePerMinute).toFixed(2) // => '2.25'
 */
export function ventFlow(gas: RisingGas, ascentRate: Speed): VolumeFlow {
  requireWithin('ascentRate', ascentRate, speedRange)
  return (ascentRate * expansionPerMetre(gas)) as VolumeFlow
}

/**
 * Lift gained by rising one metre from a depth without letting gas out, as the slope there. It grows as the surface nears:
 * an ascent that gets out of hand gets worse by itself.
 *
 * @param gas - volume at the depth, m³, above 0 and at most 2000 L; depth, m; water
 * @returns force for each metre, N
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation
 * @example
 * const water = { surfacePressure: absolute(101_325, pascal), density: measure(1025, kilogramPerCubicMetre) }
 * const gas = { volume: gasVolumeOf(10, litre), depth: depthOf(30, metre), water }
 * inUnit(liftGainPerMetre(gas), kilogramForce).toFixed(3) // => '0.256'
 */
export function liftGainPerMetre(gas: RisingGas): Force {
  const expansion = expansionPerMetre(gas)
  return (expansion * gas.water.density * gravityOf(gas.water)) as Force
}

/**
 * Lift of a gas volume taken to another depth without letting any out, by Boyle's law: the whole change, not the slope.
 *
 * @param gas - volume at its depth, m³, above 0 and at most 2000 L; depth, m; water
 * @param to - the other depth, m
 * @returns force there, N
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation (ideal gas, constant temperature)
 * @example
 * const water = { surfacePressure: absolute(101_325, pascal), density: measure(1025, kilogramPerCubicMetre) }
 * const gas = { volume: gasVolumeOf(5, litre), depth: depthOf(10, metre), water }
 * inUnit(unventedLift(gas, depthOf(0, metre)), kilogramForce).toFixed(1) // => '10.2'
 */
export function unventedLift(gas: RisingGas, to: Depth): Force {
  requireGas(gas)
  requireWithin('to', to, endRange)
  const below = pressureAtDepth({ ...gas.water, depth: gas.depth })
  const there = pressureAtDepth({ ...gas.water, depth: to })
  return liftOf((gas.volume * below) / there, gas.water)
}

/** -dV/dz of a closed gas volume: V ρ g / p, m³/m. */
function expansionPerMetre(gas: RisingGas): number {
  requireGas(gas)
  const { volume, depth, water } = gas
  const gravity = gravityOf(water)
  return (volume * water.density * gravity) / pressureAtDepth({ ...water, depth })
}

function requireGas(gas: RisingGas): void {
  requireKeys('gas', gas, { volume: true, depth: true, water: true })
  const { volume, depth } = gas
  requireWithin('gas.volume', volume, volumeRange)
  requireWithin('gas.depth', depth, depthRange)
  gravityOf(gas.water) // refuses water that is missing or out of range
}
