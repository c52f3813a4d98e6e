import { requireKeys } from '../errors/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  type Angle,
  type Depth,
  degree,
  metre,
  requireWithin,
} from '../units/index.ts'
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
  return depthBy((at.pressure - at.surfacePressure) / 1e4, at.latitude).depth as Depth
}

const depthRange: Accepted = {
  atLeast: 0,
  atMost: 9725,
  unit: metre,
  hint: 'The formula was fitted down to 10 000 dbar.',
}

// From 2 % off each step squares what is left: four leave rounding.
const steps = 4

/**
 * Pressure at a depth of the standard ocean (practical salinity 35, 0 °C throughout): the inverse of `depthInStandardOcean`.
 *
 * @param at - depth, m, 0 to 9725; pressure at the surface, absolute, Pa; latitude, -90° to 90°
 * @returns absolute pressure, Pa
 * @throws LitrebarError `range`, naming the field; `outside-validity` above 1000 bar, which lie 50 m higher at the poles
 * @source eos-80, pages 25 to 28, solved for the pressure
 * @example
 * const at = { surfacePressure: absolute(1, atmosphere), latitude: measure(30, degree) }
 * inUnit(pressureInStandardOcean({ depth: depthOf(100, metre), ...at }), bar).toFixed(3) // => '11.084'
 */
export function pressureInStandardOcean(at: {
  readonly depth: Depth
  readonly surfacePressure: AbsolutePressure
  readonly latitude: Angle
}): AbsolutePressure {
  requireKeys('at', at, { depth: true, surfacePressure: true, latitude: true })
  requireWithin('depth', at.depth, depthRange)
  requireSurfacePressure(at.surfacePressure)
  requireWithin('latitude', at.latitude, latitudeRange)
  let decibars: number = at.depth
  for (let step = 0; step < steps; step++) {
    const { depth, perDecibar } = depthBy(decibars, at.latitude)
    decibars -= (depth - at.depth) / perDecibar
  }
  const pressure = (at.surfacePressure + 1e4 * decibars) as AbsolutePressure
  requireWithin('pressure', pressure, seawaterRanges.pressure)
  return pressure
}

/** Depth under so many decibars of water, m, and how fast it grows. */
function depthBy(p: number, latitude: Angle): { readonly depth: number; readonly perDecibar: number } {
  const sine = Math.sin(latitude)
  const s = sine * sine
  const gravity = 9.780318 * (1 + (5.2788e-3 + 2.36e-5 * s) * s) + 1.092e-6 * p
  const depth = ((9.72659 + (-2.2512e-5 + (2.279e-10 - 1.82e-15 * p) * p) * p) * p) / gravity
  const rise = 9.72659 + (2 * -2.2512e-5 + (3 * 2.279e-10 - 4 * 1.82e-15 * p) * p) * p
  return { depth, perDecibar: (rise - 1.092e-6 * depth) / gravity }
}
