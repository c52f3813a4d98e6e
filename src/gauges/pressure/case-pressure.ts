import { requireKeys } from '../../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  type GaugePressure,
  requireWithin,
  toAbsolute,
  toGauge,
} from '../../units/index.ts'
import { gaugeReading, surroundingPressure } from '../accepted.ts'

const inside: Accepted = { atLeast: 0, atMost: 1500, unit: bar, hint: 'Give the absolute pressure in the tube.' }

/**
 * What a pressure gauge shows: the pressure in its tube above that around the tube. A sealed case keeps the pressure it was closed at;
 * one that is open to the water, or filled and flexible, has the pressure of the water, and the gauge reads lower by as much.
 *
 * @param at - pressure in the tube, absolute, Pa; pressure in the case, around the tube, absolute, Pa
 * @returns the reading, Pa
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation, what a Bourdon tube measures
 * @example
 * const atForty = { pressure: absolute(50, bar), casePressure: absolute(5, bar) }
 * inUnit(shownCylinderPressure(atForty), bar).toFixed(1) // => '45.0'
 */
export function shownCylinderPressure(at: {
  readonly pressure: AbsolutePressure
  readonly casePressure: AbsolutePressure
}): GaugePressure {
  requireKeys('at', at, { pressure: true, casePressure: true })
  requireWithin('at.pressure', at.pressure, inside)
  requireWithin('at.casePressure', at.casePressure, surroundingPressure)
  return toGauge(at.pressure, at.casePressure)
}

/**
 * Absolute pressure behind a reading.
 *
 * @param at - the reading, gauge, Pa; pressure in the case, around the tube, absolute, Pa
 * @returns absolute pressure in the tube, Pa
 * @throws LitrebarError `range`, naming the field, also for a reading below vacuum; `input` for an unknown key
 * @source litrebar-derivation, what a Bourdon tube measures
 * @example
 * inUnit(cylinderPressureBehind({ reading: gauge(50, bar), casePressure: absolute(1, bar) }), bar).toFixed(1) // => '51.0'
 */
export function cylinderPressureBehind(at: {
  readonly reading: GaugePressure
  readonly casePressure: AbsolutePressure
}): AbsolutePressure {
  requireKeys('at', at, { reading: true, casePressure: true })
  requireWithin('at.reading', at.reading, gaugeReading)
  requireWithin('at.casePressure', at.casePressure, surroundingPressure)
  return toAbsolute(at.reading, at.casePressure)
}
