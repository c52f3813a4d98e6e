import { pressureAtDepth, type WaterColumn } from '../environment/index.ts'
import { requireKeys, requireList } from '../errors/index.ts'
import type { CautionId, SourceId } from '../references/index.ts'
import {
  type Accepted,
  type Density,
  type Depth,
  type GasVolume,
  kilogram,
  kilogramPerCubicMetre,
  litre,
  type Mass,
  type Rounded,
  requireWithin,
  round,
  type Unit,
} from '../units/index.ts'
import { type FoamSuit, foamKeys, foamVolume } from './foam-suit.ts'
import { gravityOf, requireItem } from './net-buoyancy.ts'

/** A diver hanging level, or about to. */
export interface LevelMoment {
  readonly depth: Depth
  /** Gas left in all cylinders together. */
  readonly gasMass: Mass
  /** Gas in a dry suit and in the device, at the pressure of the moment; none unless given. */
  readonly gasVolume?: GasVolume
}

/** A check in the water, and the end of the dive that its result is wanted for. */
export interface BallastCheck {
  readonly water: WaterColumn
  /** Mass in air of the ballast that was carried, and its density. */
  readonly ballast: Mass
  readonly ballastDensity: Density
  readonly foamSuits: readonly FoamSuit[]
  /** When the diver hung level, breathing normally. */
  readonly check: LevelMoment
  /** The end that has to be held: shallowest stop, cylinders nearly empty. */
  readonly end: LevelMoment
  /** In which unit and step the ballast is shown, always rounded up. */
  readonly show: { readonly unit: Unit<'mass'>; readonly step: number }
}

/** Ballast that a check in the water leads to. */
export interface CheckedBallast {
  /** Mass in air, unrounded. */
  readonly ballast: Mass
  /** What is to be added to the ballast of the check; negative to be taken off. */
  readonly change: Mass
  readonly shown: Rounded
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const ballastRange: Accepted = { atLeast: 0, atMost: 100, unit: kilogram, hint: 'Give the ballast carried.' }
const densityRange: Accepted = {
  atLeast: 2000,
  atMost: 25_000,
  unit: kilogramPerCubicMetre,
  hint: 'Give the density of the ballast itself: lead is near 11 340 kg/m³.',
}
const gasMassRange: Accepted = { atLeast: 0, atMost: 500, unit: kilogram, hint: 'Give the mass of the gas.' }
const gasVolumeRange: Accepted = { atLeast: 0, atMost: 200, unit: litre, hint: 'Give the gas at that depth.' }

/**
 * Ballast for the end of a dive from a check in the water: the diver hung level once, with a known ballast and known gas, and nothing is
 * assumed about body, lungs or the volume of the gear. Gas breathed since the check and the foam that changes with depth are made up for.
 *
 * @param given - water; ballast, kg, and its density, kg/m³, 2000 to 25 000; foam suits; depth, m, mass of the gas in the cylinders, kg,
 *   and gas in suit and device, m³, at the check and at the end; `show`: unit and step, rounded up
 * @returns ballast for the end, and by how much it differs from that of the check
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation
 * @example
 * const found = ballastFromCheck({
 *   water: { surfacePressure: absolute(1, atmosphere), density: measure(1025, kilogramPerCubicMetre) },
 *   ballast: measure(6, kilogram),
 *   ballastDensity: measure(11_340, kilogramPerCubicMetre),
 *   foamSuits: [],
 *   check: { depth: depthOf(1, metre), gasMass: measure(2.8, kilogram) },
 *   end: { depth: depthOf(5, metre), gasMass: measure(0.7, kilogram) },
 *   show: { unit: kilogram, step: 0.5 },
 * })
 * found.change.toFixed(2) // => '2.31'
 * found.shown.text // => '8.5'
 */
export function ballastFromCheck(given: BallastCheck): CheckedBallast {
  requireKeys('given', given, {
    water: true,
    ballast: true,
    ballastDensity: true,
    foamSuits: true,
    check: true,
    end: true,
    show: true,
  })
  const { water, ballast, ballastDensity, foamSuits, check, end, show } = given
  requireWithin('ballast', ballast, ballastRange)
  requireWithin('ballastDensity', ballastDensity, densityRange)
  requireKeys('show', show, { unit: true, step: true })
  gravityOf(water)
  requireList('foamSuits', foamSuits)
  foamSuits.forEach((suit, i) => {
    requireItem(`foamSuits[${i}]`, suit, foamKeys)
  })
  const more = apparentLift('end', end, given) - apparentLift('check', check, given)
  // a kilogram of ballast pulls less than a kilogram in water
  const change = more / (1 - water.density / ballastDensity)
  const mass = Math.max(0, ballast + change) as Mass
  return {
    ballast: mass,
    change: (mass - ballast) as Mass,
    shown: round(mass, { ...show, toward: 'caution', use: 'ballast' }),
    cautions: ['buoyancy', 'always'],
    sources: ['litrebar-derivation', 'bardy-mollendorf-2008'],
  }
}

/** Lift of what changes, as mass of water: foam and gas spaces less the gas in the cylinders, kg. */
function apparentLift(name: string, moment: LevelMoment, { water, foamSuits }: BallastCheck): number {
  requireKeys(name, moment, { depth: true, gasMass: true, gasVolume: false })
  const { depth, gasMass, gasVolume = 0 as GasVolume } = moment
  requireWithin(`${name}.gasMass`, gasMass, gasMassRange)
  requireWithin(`${name}.gasVolume`, gasVolume, gasVolumeRange)
  const pressure = pressureAtDepth({ ...water, depth })
  const foam = foamSuits.reduce<number>((sum, suit) => sum + foamVolume(suit, pressure), 0)
  return (foam + gasVolume) * water.density - gasMass
}
