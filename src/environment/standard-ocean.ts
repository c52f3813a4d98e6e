import { requireKeys } from '../errors/index.ts'
import { type AbsolutePressure, type Accepted, type Angle, type Depth, degree, requireWithin } from '../units/index.ts'
import { seawaterRanges } from './seawater-density.ts'
import { requireBelowSurface, requireSurfacePressure } from './water-column.ts'

const latitudeRange: Accepted = {
  atLeast: -90,
  atMost: 90,
  unit: degree,
  hint: 'Give the latitude with its unit: measure(60, degree).',
}

/**
 * Depth in the standard ocean (practical salinity 35, 0 °C throughout) at a pressure, by the formula of 1983.
 * Real seas are deeper at the same pressure by the height that their lighter water adds.
 *
 * @param at - pressure, absolute, Pa, and that at the surface; latitude, -90° to 90°
 * @returns depth, m
 * @throws LitrebarError `range`, naming the field, for a pressure below that at the surface
 * @source eos-80, pages 25 to 28
 * @example
 * const at = { surfacePressure: absolute(1, atmosphere), latitude: measure(30, degree) }
 * depthInStandardOcean({ pressure: absolute(1001.01325, bar), ...at }).toFixed(3) // => '9712.653'
 */
export function depthInStandardOcean(at: {
  readonly pressure: AbsolutePressure
  readonly surfacePressure: AbsolutePressure
  readonly latitude: Angle
}): Depth {
  requireKeys('at', at, { pressure: true, surfacePressure: true, latitude: true })
  requireWithin('pressure', at.pressure, seawaterRanges.pressure)
  requireSurfacePressure(at.surfacePressure)
  requireBelowSurface(at.pressure, at.surfacePressure)
  requireWithin('latitude', at.latitude, latitudeRange)
  const p = (at.pressure - at.surfacePressure) / 1e4
  const sine = Math.sin(at.latitude)
  const s = sine * sine
  const gravity = 9.780318 * (1 + (5.2788e-3 + 2.36e-5 * s) * s) + 1.092e-6 * p
  return (((9.72659 + (-2.2512e-5 + (2.279e-10 - 1.82e-15 * p) * p) * p) * p) / gravity) as Depth
}
