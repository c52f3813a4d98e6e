import { requireKeys } from '../../errors/index.ts'
import { type Accepted, type Angle, degree, one, requireWithin } from '../../units/index.ts'

/** How a compass is held. */
export interface CompassTilt {
  /** Of the lubber line, clockwise from magnetic north. */
  readonly heading: Angle
  /** To the right side down, positive. */
  readonly roll: Angle
  /** Front up, positive. */
  readonly pitch: Angle
  /** Magnetic dip at the place: north end down, positive. */
  readonly dip: Angle
}

const anyAngle: Accepted = { atLeast: -360, atMost: 360, unit: degree, hint: 'Give the heading from magnetic north.' }
const tiltRange: Accepted = { above: -90, below: 90, unit: degree, hint: 'Give the tilt from level.' }
const dipRange: Accepted = { atLeast: -89, atMost: 89, unit: degree, hint: 'Give the magnetic dip of the place.' }

/**
 * Error of a compass whose card is forced out of the level: a card held fast by its case, or electronic axes without correction of tilt. The
 * vertical part of the field leaks into the plane of the card; at a dip of 65° each degree of roll turns a northern heading by two.
 * A card that swings free in its case has none of this up to the tilt where it touches.
 *
 * @param held - heading, roll, pitch and dip
 * @returns shown minus true magnetic heading, rad, from -π to π
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation (projection of the field into the plane of the card)
 * @example
 * const held = { heading: measure(0, degree), roll: measure(5, degree), pitch: measure(0, degree), dip: measure(65, degree) }
 * inUnit(tiltError(held), degree).toFixed(1) // => '-10.6'
 */
export function tiltError(held: CompassTilt): Angle {
  requireKeys('held', held, { heading: true, roll: true, pitch: true, dip: true })
  requireWithin('held.heading', held.heading, anyAngle)
  requireWithin('held.roll', held.roll, tiltRange)
  requireWithin('held.pitch', held.pitch, tiltRange)
  requireWithin('held.dip', held.dip, dipRange)
  const { heading, roll, pitch } = held
  // field with its horizontal part as 1: north, and down by the tangent of the dip
  const down = Math.tan(held.dip)
  const forward = Math.cos(pitch) * Math.cos(heading) - Math.sin(pitch) * down
  const levelRight = -Math.sin(heading)
  // the axis that points down out of the card before it rolls
  const under = Math.sin(pitch) * Math.cos(heading) + Math.cos(pitch) * down
  const right = Math.cos(roll) * levelRight + Math.sin(roll) * under
  return wrapped(Math.atan2(-right, forward) - heading)
}

/** A compass card, and the field where it is used. */
export interface CardBalance {
  /** Vertical part of the field over its horizontal part at the place the card was balanced for: the tangent of the dip there. */
  readonly balancedFor: number
  /** The same at the place of use. */
  readonly usedAt: number
  /** Horizontal part of the field at the place of balance over that at the place of use. */
  readonly horizontalRatio: number
  /** How much stronger the weight of the card rights it than the horizontal field at the place of use turns it. */
  readonly righting: number
}

const tangent: Accepted = {
  atLeast: -60,
  atMost: 60,
  unit: one,
  hint: 'Give the tangent of the dip, positive in the north.',
}
const ratio: Accepted = { above: 0, atMost: 1000, unit: one, hint: 'Give a ratio above 0.' }

/**
 * Tilt of a compass card outside the zone that it was balanced for: its north end dips where the vertical field is stronger. Past the
 * freedom of its case the card drags, and the compass sticks. Makers divide the world into zones for this reason.
 *
 * @param card - vertical over horizontal field where it was balanced and where it is used; ratio of the horizontal fields; righting
 * @returns tilt, rad, north end down positive
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source litrebar-derivation (balance of moments about the pivot)
 * @example
 * const card = { balancedFor: 2, usedAt: -2, horizontalRatio: 1, righting: 20 }
 * inUnit(cardTilt(card), degree).toFixed(1) // => '-10.8'
 */
export function cardTilt(card: CardBalance): Angle {
  requireKeys('card', card, { balancedFor: true, usedAt: true, horizontalRatio: true, righting: true })
  requireWithin('card.balancedFor', card.balancedFor, tangent)
  requireWithin('card.usedAt', card.usedAt, tangent)
  requireWithin('card.horizontalRatio', card.horizontalRatio, ratio)
  requireWithin('card.righting', card.righting, ratio)
  return Math.atan((card.usedAt - card.balancedFor * card.horizontalRatio) / (card.righting + 1)) as Angle
}

/** An angle brought between -π and π. */
export function wrapped(angle: number): Angle {
  const turn = 2 * Math.PI
  return (angle - turn * Math.round(angle / turn)) as Angle
}
