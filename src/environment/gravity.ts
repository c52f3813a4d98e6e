import { requireKeys } from '../errors/index.ts'
import {
  type Acceleration,
  type Accepted,
  type Altitude,
  type Angle,
  type Depth,
  degree,
  metre,
  requireWithin,
} from '../units/index.ts'

/**
 * Standard gravity, 9.80665 m/s² exactly: a convention, near the gravity at 45° of latitude.
 *
 * @source nist-sp-811, appendix B.8
 */
export const standardGravity: Acceleration = 9.80665 as Acceleration

/** Where gravity is asked for: at sea level unless an altitude or a depth of water is given. */
export type GravityPlace =
  | { readonly latitude: Angle; readonly altitude?: Altitude; readonly depth?: never }
  | { readonly latitude: Angle; readonly depth?: Depth; readonly altitude?: never }

const latitude: Accepted = {
  atLeast: -90,
  atMost: 90,
  unit: degree,
  hint: 'Give the latitude with its unit: measure(60, degree).',
}
const altitude: Accepted = { atLeast: -500, atMost: 12_000, unit: metre, hint: 'Give the height above sea level.' }
const depth: Accepted = { atLeast: 0, atMost: 11_000, unit: metre, hint: 'Give the depth below sea level.' }

/**
 * Normal gravity: the acceleration of free fall on the smooth ellipsoid of the earth, by latitude and by altitude or depth.
 * Between equator and pole it grows by 0.5 %, as much as the choice between 1025 and 1030 kg/m³ of sea water.
 * Mountains and ore bodies move the real value by another 0.01 %.
 *
 * Above the sea it falls by 3.09e-6 m/s² per metre. In the sea it grows by 2.2e-6: the water above pulls upwards.
 *
 * @param place - latitude, -90° to 90°; altitude above sea level, -500 to 12 000 m, or depth in the sea, 0 to 11 000 m
 * @returns acceleration, m/s²
 * @throws LitrebarError `range` if latitude, altitude or depth is out of range
 * @source teos-10, gsw_grav (sea level and depth); memory, free-air gradient of the 1980 ellipsoid
 * @example
 * normalGravity({ latitude: measure(60, degree) }).toFixed(4) // => '9.8192'
 */
export function normalGravity(place: GravityPlace): Acceleration {
  requireKeys('place', place, { latitude: true, altitude: false, depth: false })
  requireWithin('latitude', place.latitude, latitude)
  const sine = Math.sin(place.latitude)
  const s = sine * sine
  const surface = 9.780327 * (1 + (5.2792e-3 + 2.32e-5 * s) * s)
  if (place.depth !== undefined) {
    requireWithin('depth', place.depth, depth)
    return (surface * (1 + gravityGradientInSea * place.depth)) as Acceleration
  }
  const height = place.altitude ?? 0
  requireWithin('altitude', height, altitude)
  return (surface - (3.0877e-6 - 4.3e-9 * s) * height + 7.2e-13 * height * height) as Acceleration
}

/**
 * Relative growth of gravity per metre of sea water, 1/m.
 *
 * @source teos-10, gsw_grav
 */
export const gravityGradientInSea = 2.26e-7
