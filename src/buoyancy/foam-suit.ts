import { LitrebarError, requireKeys } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Density,
  type DisplacedVolume,
  type Force,
  type Fraction,
  kilogram,
  kilogramPerCubicMetre,
  litre,
  type Mass,
  one,
  type PressureDifference,
  type PressureVolume,
  requireWithin,
} from '../units/index.ts'
import { liftOf, type Water } from './net-buoyancy.ts'

/** A suit of closed-cell foam. */
export interface FoamSuit {
  readonly mass: Mass
  /** Of the foam, at the pressure `statedAt`. */
  readonly displacedVolume: DisplacedVolume
  /** Absolute pressure at which the volume holds: that of the surface where it was measured. */
  readonly statedAt: AbsolutePressure
  /** Share of the volume that is gas: `gasFractionOfFoam`. */
  readonly gasFraction: Fraction
  /** Stiffness of the rubber, which makes the foam yield less than its gas would. None unless given: the usual, and the softer, assumption. */
  readonly stiffness?: PressureDifference
}

const volumeRange: Accepted = { above: 0, atMost: 200, unit: litre, hint: 'Give the volume of the foam.' }
const massRange: Accepted = { atLeast: 0, atMost: 1000, unit: kilogram, hint: 'Give the mass as weighed in air.' }
const pressureRange: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give an absolute pressure.' }
const gasRange: Accepted = { atLeast: 0, below: 1, unit: one, hint: 'Give 80 per cent as 0.8.' }
const stiffnessRange: Accepted = {
  atLeast: 0,
  atMost: 50,
  unit: bar,
  hint: 'Leave the stiffness out if it is not known.',
}
const foamRange: Accepted = { above: 0, atMost: 2000, unit: kilogramPerCubicMetre, hint: 'Give mass over volume.' }

/**
 * How far a real suit may lie from the model, as a fraction of the volume lost. A judgement of ours without a document: stiffness, linings and
 * permanent set make new suits yield less at first, and old ones recover less.
 *
 * @source litrebar-derivation (judgement)
 */
export const foamModelUncertainty = 0.15

/**
 * Share of a foam that is gas, from its density and that of the solid rubber.
 *
 * @param foam - density of the foam at the surface, kg/m³
 * @param rubber - density of the rubber without gas, kg/m³; about 1230 (memory)
 * @returns fraction of the volume
 * @throws LitrebarError `range`, also if the foam is denser than the rubber
 * @source litrebar-derivation
 * @example
 * gasFractionOfFoam(measure(230, kilogramPerCubicMetre), measure(1230, kilogramPerCubicMetre)).toFixed(3) // => '0.813'
 */
export function gasFractionOfFoam(foam: Density, rubber: Density): Fraction {
  requireWithin('rubber', rubber, foamRange)
  requireWithin('foam', foam, { ...foamRange, atMost: rubber })
  return (1 - foam / rubber) as Fraction
}

/**
 * Volume of a foam suit at a pressure: the rubber stays, the gas in its cells shrinks by Boyle's law, against the
 * stiffness of the rubber where that is given.
 *
 * @param suit - volume and the pressure it holds at; gas fraction; stiffness
 * @param pressure - around the suit, absolute, Pa, 0.2 to 100 bar
 * @returns displaced volume, m³; a real suit may lie `foamModelUncertainty` of the loss to either side
 * @throws LitrebarError `range`, naming the field
 * @source bardy-mollendorf-2008, abstract (gas by the ideal law); the rubber's stiffness litrebar-derivation
 * @example
 * const suit = {
 *   mass: measure(3, kilogram),
 *   displacedVolume: displacedVolumeOf(12, litre),
 *   statedAt: absolute(1, atmosphere),
 *   gasFraction: measure(0.75, one),
 * }
 * inUnit(foamVolume(suit, absolute(4, bar)), litre).toFixed(2) // => '5.28'
 */
export function foamVolume(suit: FoamSuit, pressure: AbsolutePressure): DisplacedVolume {
  requireFoam(suit)
  const { displacedVolume, gasFraction } = suit
  requireWithin('pressure', pressure, pressureRange)
  return (displacedVolume * (1 - gasFraction + gasFraction * gasRatio(suit, pressure))) as DisplacedVolume
}

/** r of p = p0/r + E (1 - r): gas volume over that at the stated pressure. The positive root of E r² + (p - E) r - p0 = 0. */
export function gasRatio(
  { statedAt, stiffness = 0 as PressureDifference }: Pick<FoamSuit, 'statedAt' | 'stiffness'>,
  pressure: number,
): number {
  if (stiffness === 0) return statedAt / pressure
  const b = pressure - stiffness
  const root = Math.sqrt(b * b + 4 * stiffness * statedAt)
  // the form without a difference of near equals
  return b > 0 ? (2 * statedAt) / (b + root) : (root - b) / (2 * stiffness)
}

/** What depth takes from a foam suit. */
export interface FoamLoss {
  readonly lostVolume: DisplacedVolume
  /** Two-sided, `foamModelUncertainty` to either side. */
  readonly band: { readonly low: DisplacedVolume; readonly high: DisplacedVolume }
  readonly lostLift: Force
  /** Gas at ambient that a buoyancy device needs to make up for it: pressure times volume. */
  readonly deviceGas: PressureVolume
}

/**
 * Lift that a foam suit loses on the way from one pressure to another, and the gas that makes up for it.
 *
 * @param suit - as for `foamVolume`
 * @param pressures - absolute, Pa: from which and to which, the latter the higher
 * @param water - density and gravity
 * @returns lost volume with its band, lost lift, gas for the device
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation, from `foamVolume`
 * @example
 * const suit = {
 *   mass: measure(3, kilogram),
 *   displacedVolume: displacedVolumeOf(12, litre),
 *   statedAt: absolute(1, atmosphere),
 *   gasFraction: measure(0.75, one),
 * }
 * const loss = foamLoss(suit, { from: absolute(1, atmosphere), to: absolute(4, bar) }, { density: measure(1025, kilogramPerCubicMetre) })
 * inUnit(loss.lostLift, kilogramForce).toFixed(1) // => '6.9'
 */
export function foamLoss(
  suit: FoamSuit,
  pressures: { readonly from: AbsolutePressure; readonly to: AbsolutePressure },
  water: Water,
): FoamLoss {
  requireKeys('pressures', pressures, { from: true, to: true })
  const { from, to } = pressures
  const lost = foamVolume(suit, from) - foamVolume(suit, to)
  if (!(to >= from)) {
    throw new LitrebarError({
      code: 'range',
      argument: 'pressures.to',
      value: `${to / bar.factor} bar`,
      expected: `at least ${from / bar.factor} bar`,
      hint: 'A suit loses volume on the way down: exchange the two.',
    })
  }
  return {
    lostVolume: lost as DisplacedVolume,
    band: {
      low: (lost * (1 - foamModelUncertainty)) as DisplacedVolume,
      high: (lost * (1 + foamModelUncertainty)) as DisplacedVolume,
    },
    lostLift: liftOf(lost, water),
    deviceGas: (lost * to) as PressureVolume,
  }
}

/** What a foam suit holds besides mass and volume. */
export const foamKeys = { statedAt: true, gasFraction: true, stiffness: false } as const

/** Refuses a suit whose foam makes no sense. */
export function requireFoam(suit: FoamSuit): void {
  requireKeys('suit', suit, { mass: true, displacedVolume: true, ...foamKeys })
  const { mass, displacedVolume, statedAt, gasFraction, stiffness } = suit
  requireWithin('suit.mass', mass, massRange)
  requireWithin('suit.displacedVolume', displacedVolume, volumeRange)
  requireWithin('suit.statedAt', statedAt, pressureRange)
  requireWithin('suit.gasFraction', gasFraction, gasRange)
  if (stiffness !== undefined) requireWithin('suit.stiffness', stiffness, stiffnessRange)
}
