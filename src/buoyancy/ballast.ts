import { pressureAtDepth, type WaterColumn } from '../environment/index.ts'
import { LitrebarError, requireKeys, requireList } from '../errors/index.ts'
import type { CautionId, SourceId } from '../references/index.ts'
import { requireFields } from '../units/accepted.ts'
import {
  type Accepted,
  type Density,
  type Depth,
  type Force,
  type GasVolume,
  kilogram,
  kilogramPerCubicMetre,
  litre,
  type Mass,
  metre,
  type Rounded,
  requireWithin,
  round,
  type Unit,
} from '../units/index.ts'
import { type FoamSuit, foamKeys, foamVolume } from './foam-suit.ts'
import { gravityOf, type RigidItem, requireItem } from './net-buoyancy.ts'

/** The three moments that matter: full cylinders at the surface, the deepest point, nearly empty at the last stop. */
export type BallastMoment = 'start' | 'deepest' | 'end'

const moments: readonly BallastMoment[] = ['start', 'deepest', 'end']

/** A cylinder by its outside, and the gas in it at each moment. */
export interface BallastCylinder extends RigidItem {
  /** Mass without gas, valve and boots included. */
  readonly mass: Mass
  readonly gasMass: Readonly<Record<BallastMoment, Mass>>
}

/** A diver with everything but ballast. */
export interface EquippedDiver {
  /** Body, regulators, lamp, device without gas, and so on. */
  readonly items: readonly RigidItem[]
  readonly foamSuits: readonly FoamSuit[]
  readonly cylinders: readonly BallastCylinder[]
  /** Gas in a dry suit at each moment, at the pressure of that moment. */
  readonly suitGas?: Readonly<Record<BallastMoment, GasVolume>>
}

/** The dive and the ballast. */
export interface BallastConditions {
  readonly water: WaterColumn
  readonly depths: Readonly<Record<BallastMoment, Depth>>
  /** Of the ballast: lead is near 11 340 kg/m³ solid, about 6500 as shot in a pouch. */
  readonly ballastDensity: Density
  /** In which unit and step the ballast is shown, always rounded up. */
  readonly show: { readonly unit: Unit<'mass'>; readonly step: number }
}

/** One of the three moments. */
export interface BallastCase {
  readonly moment: BallastMoment
  /** Force on the diver without ballast and without gas in the device, upwards positive. */
  readonly withoutBallast: Force
  /** Ballast that would make it level; 0 where the diver sinks as it is. */
  readonly ballast: Mass
  /** Force with the ballast of the end, device empty. Upwards at the start where the suit lifts more than the gas weighs. */
  readonly withBallast: Force
  /** What the device has to lift to hang level. */
  readonly requiredLift: Force
}

/** Ballast for a dive. */
export interface Ballast {
  /** Mass in air of the ballast that makes the end level, unrounded. */
  readonly ballast: Mass
  readonly shown: Rounded
  readonly cases: readonly BallastCase[]
  /** The largest of the three. A lost dry suit or a second diver is not counted. */
  readonly requiredLift: Force
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const ballastRange: Accepted = {
  atLeast: 2000,
  atMost: 25_000,
  unit: kilogramPerCubicMetre,
  hint: 'Give the density of the ballast itself: lead is near 11 340 kg/m³.',
}
const depthRange: Accepted = { atLeast: 0, atMost: 11_000, unit: metre, hint: 'Count downwards from the surface.' }
const gasMassRange: Accepted = { atLeast: 0, atMost: 500, unit: kilogram, hint: 'Give the mass of the gas.' }
const suitGasRange: Accepted = { atLeast: 0, atMost: 200, unit: litre, hint: 'Give the gas in the suit at that depth.' }

/**
 * Ballast in three cases: start, deepest point, end. The end sets it, when gas has been breathed and the suit has its volume back:
 * with less, the last stop cannot be held. At the deepest point the same ballast and the compressed suit have to be lifted.
 * At the surface a thick suit may still float the diver until it gives way in the first metres: the case of the start says so,
 * and more ballast than the end asks for would have to be lifted all dive long. A starting point for a check in the water, no more.
 *
 * @param diver - items, foam suits, cylinders with their gas at each moment, gas in a dry suit
 * @param conditions - water; depth at each moment, m; density of the ballast, kg/m³, 2000 to 25 000; `show`: unit and step, rounded up
 * @returns ballast, the three cases, the lift wanted, and the cautions that belong to it
 * @throws LitrebarError `range`, naming the field; `input` for moments that contradict one another: a start or an end below the deepest
 *   point, a cylinder that gains gas
 * @source litrebar-derivation
 * @example
 * const diver = {
 *   items: [{ mass: measure(85, kilogram), displacedVolume: displacedVolumeOf(84, litre) }],
 *   foamSuits: [
 *     {
 *       mass: measure(3, kilogram),
 *       displacedVolume: displacedVolumeOf(11, litre),
 *       statedAt: absolute(1, atmosphere),
 *       gasFraction: measure(0.75, one),
 *     },
 *   ],
 *   cylinders: [
 *     {
 *       mass: measure(14, kilogram),
 *       displacedVolume: displacedVolumeOf(14, litre),
 *       gasMass: { start: measure(2.8, kilogram), deepest: measure(2.2, kilogram), end: measure(0.7, kilogram) },
 *     },
 *   ],
 * }
 * const found = ballast(diver, {
 *   water: { surfacePressure: absolute(1, atmosphere), density: measure(1025, kilogramPerCubicMetre) },
 *   depths: { start: depthOf(0, metre), deepest: depthOf(30, metre), end: depthOf(5, metre) },
 *   ballastDensity: measure(11_340, kilogramPerCubicMetre),
 *   show: { unit: kilogram, step: 0.5 },
 * })
 * found.shown.text // => '7.0'
 */
export function ballast(diver: EquippedDiver, conditions: BallastConditions): Ballast {
  requireKeys('conditions', conditions, { water: true, depths: true, ballastDensity: true, show: true })
  const { water, ballastDensity, show } = conditions
  requireKeys('conditions.show', show, { unit: true, step: true })
  requireDepths(conditions.depths)
  requireWithin('conditions.ballastDensity', ballastDensity, ballastRange)
  requireDiver(diver)
  const gravity = gravityOf(water)
  // a kilogram of ballast pulls less than a kilogram in water
  const pull = (1 - water.density / ballastDensity) * gravity
  const forces = moments.map((moment) => forceAt(diver, conditions, moment))
  const wanted = forces.map((force) => Math.max(0, force) / pull)
  // the last moment of the three
  const mass = wanted.at(-1) as number
  const cases = moments.map((moment, i): BallastCase => {
    const withBallast = (forces[i] as number) - mass * pull
    return {
      moment,
      withoutBallast: forces[i] as Force,
      ballast: wanted[i] as Mass,
      withBallast: withBallast as Force,
      requiredLift: Math.max(0, -withBallast) as Force,
    }
  })
  return {
    ballast: mass as Mass,
    shown: round(mass as Mass, { ...show, toward: 'caution', use: 'ballast' }),
    cases,
    requiredLift: Math.max(...cases.map(({ requiredLift }) => requiredLift)) as Force,
    cautions: ['buoyancy', 'always'],
    sources: ['litrebar-derivation', 'bardy-mollendorf-2008'],
  }
}

/** Force on a diver at a moment, device empty and without ballast. */
function forceAt(diver: EquippedDiver, { water, depths }: BallastConditions, moment: BallastMoment): Force {
  const gravity = gravityOf(water)
  const pressure = pressureAtDepth({ ...water, depth: depths[moment] })
  let volume = diver.suitGas?.[moment] ?? 0
  let mass = 0
  for (const item of diver.items) {
    volume += item.displacedVolume
    mass += item.mass
  }
  for (const cylinder of diver.cylinders) {
    volume += cylinder.displacedVolume
    mass += cylinder.mass + cylinder.gasMass[moment]
  }
  for (const suit of diver.foamSuits) {
    volume += foamVolume(suit, pressure)
    mass += suit.mass
  }
  return ((volume * water.density - mass) * gravity) as Force
}

const ofMoments = { start: true, deepest: true, end: true } as const

/** Refuses a deepest point that is not the deepest. */
function requireDepths(depths: BallastConditions['depths']): void {
  requireFields('conditions.depths', depths, { start: depthRange, deepest: depthRange, end: depthRange })
  for (const moment of ['start', 'end'] as const) {
    if (depths[moment] <= depths.deepest) continue
    throw new LitrebarError({
      code: 'input',
      argument: `conditions.depths.${moment}`,
      value: `${depths[moment]} m`,
      expected: `at most the ${depths.deepest} m of the deepest point`,
      hint: 'The moments are exchanged, or a depth is wrong.',
    })
  }
}

/** Refuses a cylinder that holds more gas later than before. */
function requireFalling(argument: string, gasMass: BallastCylinder['gasMass']): void {
  for (const [before, after] of [
    ['start', 'deepest'],
    ['deepest', 'end'],
  ] as const) {
    if (gasMass[after] <= gasMass[before]) continue
    throw new LitrebarError({
      code: 'input',
      argument: `${argument}.${after}`,
      value: `${gasMass[after]} kg`,
      expected: `at most the ${gasMass[before]} kg of ${before}`,
      hint: 'A cylinder loses gas on a dive: the moments are exchanged, or a mass is wrong.',
    })
  }
}

function requireDiver(diver: EquippedDiver): void {
  requireKeys('diver', diver, { items: true, foamSuits: true, cylinders: true, suitGas: false })
  const { items, cylinders, foamSuits, suitGas } = diver
  requireList('diver.items', items)
  requireList('diver.foamSuits', foamSuits)
  requireList('diver.cylinders', cylinders)
  items.forEach((item, i) => {
    requireItem(`diver.items[${i}]`, item)
  })
  foamSuits.forEach((suit, i) => {
    requireItem(`diver.foamSuits[${i}]`, suit, foamKeys)
  })
  cylinders.forEach((cylinder, i) => {
    requireItem(`diver.cylinders[${i}]`, cylinder, { gasMass: true })
    requireKeys(`diver.cylinders[${i}].gasMass`, cylinder.gasMass, ofMoments)
    for (const moment of moments) {
      requireWithin(`diver.cylinders[${i}].gasMass.${moment}`, cylinder.gasMass[moment], gasMassRange)
    }
    requireFalling(`diver.cylinders[${i}].gasMass`, cylinder.gasMass)
  })
  if (suitGas === undefined) return
  requireKeys('diver.suitGas', suitGas, ofMoments)
  for (const moment of moments) requireWithin(`diver.suitGas.${moment}`, suitGas[moment], suitGasRange)
}
