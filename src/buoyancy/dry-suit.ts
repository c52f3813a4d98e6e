import { requireKeys } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type Force,
  type GasVolume,
  litre,
  requireWithin,
} from '../units/index.ts'
import { liftOf, type Water } from './net-buoyancy.ts'

/** The gas in a suit whose shell has no volume of its own to lose. */
export interface DrySuit {
  /** Gas inside at the pressure `filledAt`. */
  readonly gasVolume: GasVolume
  /** Absolute pressure at which that volume holds. */
  readonly filledAt: AbsolutePressure
  /** Gas that the undergarment holds when the suit lies on it without pressing: below this it squeezes and stops insulating. */
  readonly loft: GasVolume
}

/** A dry suit taken down without adding gas. */
export interface UnfilledDrySuit {
  readonly gasVolume: GasVolume
  readonly lift: Force
  /** Volume missing before the undergarment is free; 0 as long as it is. */
  readonly missing: GasVolume
  readonly isSqueezed: boolean
  /** Absolute pressure at which the squeeze begins. */
  readonly squeezeFrom: AbsolutePressure
}

const volumeRange: Accepted = { above: 0, atMost: 200, unit: litre, hint: 'Give the gas volume inside the suit.' }
const pressureRange: Accepted = { atLeast: 0.2, atMost: 100, unit: bar, hint: 'Give an absolute pressure.' }

/**
 * A dry suit at a pressure when no gas is let in or out: its gas shrinks by Boyle's law, its lift with it, and below the loft of
 * the undergarment it squeezes. With gas added on the way the volume stays, and so does the lift: count that gas
 * with `inflationUse`.
 *
 * @param suit - gas inside, m³, and the pressure it holds at, absolute, Pa; loft of the undergarment, m³
 * @param pressure - around the suit, absolute, Pa, 0.2 to 100 bar
 * @param water - density and gravity
 * @returns volume and lift left, what is missing, and where the squeeze begins
 * @throws LitrebarError `range`, naming the field
 * @source litrebar-derivation (ideal gas, constant temperature)
 * @example
 * const suit = { gasVolume: gasVolumeOf(10, litre), filledAt: absolute(1, bar), loft: gasVolumeOf(6, litre) }
 * const { isSqueezed, squeezeFrom } = unfilledDrySuit(suit, absolute(2, bar), { density: measure(1025, kilogramPerCubicMetre) })
 * isSqueezed // => true
 * inUnit(squeezeFrom, bar).toFixed(2) // => '1.67'
 */
export function unfilledDrySuit(suit: DrySuit, pressure: AbsolutePressure, water: Water): UnfilledDrySuit {
  requireKeys('suit', suit, { gasVolume: true, filledAt: true, loft: true })
  const { gasVolume, filledAt, loft } = suit
  requireWithin('suit.gasVolume', gasVolume, volumeRange)
  requireWithin('suit.filledAt', filledAt, pressureRange)
  requireWithin('suit.loft', loft, volumeRange)
  requireWithin('pressure', pressure, pressureRange)
  const left = (gasVolume * filledAt) / pressure
  return {
    gasVolume: left as GasVolume,
    lift: liftOf(left, water),
    missing: Math.max(0, loft - left) as GasVolume,
    isSqueezed: left < loft,
    squeezeFrom: ((gasVolume * filledAt) / loft) as AbsolutePressure,
  }
}
