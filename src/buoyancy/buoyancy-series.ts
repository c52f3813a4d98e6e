import { pressureAtDepth, type WaterColumn } from '../environment/index.ts'
import { LitrebarError, requireKeys, requireList } from '../errors/index.ts'
import {
  type Accepted,
  type Depth,
  type Duration,
  type Force,
  type GasVolume,
  kilogram,
  litre,
  type Mass,
  type PressureVolume,
  requireWithin,
  second,
} from '../units/index.ts'
import { type FoamSuit, foamVolume, requireFoam } from './foam-suit.ts'
import { gravityOf, type RigidItem, requireItem } from './net-buoyancy.ts'

/** A moment of a dive with the gas left in the cylinders. */
export interface BuoyancyPoint {
  readonly time: Duration
  readonly depth: Depth
  /** Of all cylinders together. */
  readonly gasMass: Mass
  /** Gas in a dry suit, at the pressure of the moment. */
  readonly suitGas?: GasVolume
}

/** Buoyancy at a moment. */
export interface BuoyancyMoment {
  readonly time: Duration
  readonly depth: Depth
  /** Lift of the foam at that depth, its own weight taken off. */
  readonly foamLift: Force
  /** Force with an empty device, upwards positive. */
  readonly net: Force
  /** Gas in the device that makes it level, at the pressure of the moment; 0 where the diver floats as it is. */
  readonly deviceVolume: GasVolume
  /** The same as pressure times volume. */
  readonly deviceGas: PressureVolume
}

const suitGasRange: Accepted = { atLeast: 0, atMost: 200, unit: litre, hint: 'Give the gas in the suit at that depth.' }
const timeRange: Accepted = { unit: second, hint: 'Give the time of the point.' }
const gasMassRange: Accepted = { atLeast: 0, atMost: 500, unit: kilogram, hint: 'Give the mass of the gas.' }

/**
 * Buoyancy through a dive, for a chart: suit, net force with an empty device, and the gas that the device needs.
 *
 * @param points - time, s, each later than the one before; depth, m; gas left in the cylinders, kg; gas in a dry suit, m³
 * @param diver - everything that does not change, ballast and empty cylinders included, and the foam suits
 * @param water - surface pressure, density, gravity
 * @returns a row for each point
 * @throws LitrebarError `range` or `input`, naming the point
 * @source litrebar-derivation
 * @example
 * const points = [0, 30].map((metres, i) => ({
 *   time: measure(i, minute),
 *   depth: depthOf(metres, metre),
 *   gasMass: measure(2.5, kilogram),
 * }))
 * const diver = {
 *   items: [{ mass: measure(110, kilogram), displacedVolume: displacedVolumeOf(100, litre) }],
 *   foamSuits: [
 *     {
 *       mass: measure(3, kilogram),
 *       displacedVolume: displacedVolumeOf(11, litre),
 *       statedAt: absolute(1, atmosphere),
 *       gasFraction: measure(0.75, one),
 *     },
 *   ],
 * }
 * const water = { surfacePressure: absolute(1, atmosphere), density: measure(1025, kilogramPerCubicMetre) }
 * buoyancySeries(points, diver, water).map(({ net }) => inUnit(net, kilogramForce).toFixed(1)) // => ['-1.7', '-8.1']
 */
export function buoyancySeries(
  points: readonly BuoyancyPoint[],
  diver: { readonly items: readonly RigidItem[]; readonly foamSuits: readonly FoamSuit[] },
  water: WaterColumn,
): readonly BuoyancyMoment[] {
  requireKeys('diver', diver, { items: true, foamSuits: true })
  requireList('points', points)
  requireList('diver.items', diver.items)
  requireList('diver.foamSuits', diver.foamSuits)
  for (const suit of diver.foamSuits) requireFoam(suit)
  const gravity = gravityOf(water)
  let mass = 0
  let volume = 0
  diver.items.forEach((item, i) => {
    requireItem(`diver.items[${i}]`, item)
    mass += item.mass
    volume += item.displacedVolume
  })
  return points.map((point, i): BuoyancyMoment => {
    requireKeys(`points[${i}]`, point, { time: true, depth: true, gasMass: true, suitGas: false })
    const { time, depth, gasMass, suitGas = 0 as GasVolume } = point
    requireWithin(`points[${i}].suitGas`, suitGas, suitGasRange)
    requireWithin(`points[${i}].gasMass`, gasMass, gasMassRange)
    requireWithin(`points[${i}].time`, time, timeRange)
    requireLater(points, i)
    const pressure = pressureAtDepth({ ...water, depth })
    const foam = diver.foamSuits.reduce((sum, suit) => sum + foamVolume(suit, pressure) * water.density - suit.mass, 0)
    const net = (volume + suitGas) * water.density + foam - mass - gasMass
    const deviceVolume = Math.max(0, -net) / water.density
    return {
      time,
      depth,
      foamLift: (foam * gravity) as Force,
      net: (net * gravity) as Force,
      deviceVolume: deviceVolume as GasVolume,
      deviceGas: (deviceVolume * pressure) as PressureVolume,
    }
  })
}

function requireLater(points: readonly BuoyancyPoint[], i: number): void {
  const time = points[i]?.time ?? Number.NaN
  const before = points[i - 1]?.time ?? -Infinity
  if (time > before) return
  throw new LitrebarError({
    code: 'input',
    argument: `points[${i}].time`,
    value: `${time} s`,
    expected: `later than ${before} s`,
    hint: 'Sort the points by time.',
  })
}
