import {
  altitudeOfGeopotentialHeight,
  densityOfConvention,
  depthConventions,
  geopotentialHeightOf,
  indicatedDepth,
  normalGravity,
  pressureAtShownDepth,
  surfacePressureAtAltitude,
} from '../../environment/index.ts'
import type { AbsolutePressure, Acceleration, Altitude, Angle, Depth, Length } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** A depth display divides the pressure over the surface by a fixed pressure for each metre. */
export const indicatedDepthCard: Card<'d' | 'p' | 'p0' | 'pc' | 'L'> = {
  id: 'indicated-depth',
  title: 'A depth display divides the pressure above surface pressure by a fixed pressure per metre',
  documents: 'indicatedDepth',
  result: 'd',
  symbols: {
    d: { letter: 'd', meaning: 'indicated depth', dimension: 'length', parameter: 'depth' },
    p: { letter: 'p', meaning: 'absolute pressure at the depth', dimension: 'pressure', parameter: 'pressure' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'surfacePressure',
    },
    pc: {
      letter: 'p',
      subscript: 'c',
      meaning: 'pressure that the convention takes as one metre',
      dimension: 'pressure',
    },
    L: { letter: 'L', meaning: 'length of one metre', dimension: 'length' },
  },
  forms: { d: ['*', ['/', ['-', 'p', 'p0'], 'pc'], 'L'], p: ['+', 'p0', ['*', 'pc', ['/', 'd', 'L']]] },
  constants: { pc: 10000, L: 1 },
  core: {
    d: ({ pressure: p, surfacePressure: p0 }: { pressure: AbsolutePressure; surfacePressure: AbsolutePressure }) =>
      indicatedDepth({ pressure: p, surfacePressure: p0, convention: depthConventions.depthGauge }),
    p: ({ surfacePressure: p0, depth: d }: { surfacePressure: AbsolutePressure; depth: Depth }) =>
      pressureAtShownDepth({ depth: d, surfacePressure: p0, convention: depthConventions.depthGauge }),
  },
  besides: ['convention'],
  conditions: ['a display that takes 10 kPa as one metre', 'zero set at the surface'],
  source: 'en-13319',
  place: 'rule of conversion',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'Surface pressure left out',
      instead: { d: ['*', ['/', 'p', 'pc'], 'L'] },
    },
  ],
  range: { d: [1, 100], p: [110000, 2000000.0], p0: [60000, 105000] },
}

/** A depth convention stands for water of one density. */
export const densityOfConventionCard: Card<'rho' | 'pc' | 'L' | 'g'> = {
  id: 'density-of-convention',
  title: 'A depth convention implies a water density',
  documents: 'densityOfConvention',
  result: 'rho',
  symbols: {
    rho: { letter: 'ρ', meaning: 'density implied by the convention', dimension: 'density', parameter: 'density' },
    pc: {
      letter: 'p',
      subscript: 'c',
      meaning: 'pressure that the convention takes as one metre',
      dimension: 'pressure',
    },
    L: { letter: 'L', meaning: 'length of one metre', dimension: 'length' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
  },
  forms: { rho: ['/', 'pc', ['*', 'L', 'g']] },
  constants: { pc: 10000, L: 1 },
  core: {
    rho: ({ gravity: g }: { gravity: Acceleration }) => densityOfConvention(depthConventions.depthGauge, g),
  },
  besides: ['length', 'name', 'pressure', 'source', 'place'],
  conditions: ['a convention of 10 kPa per metre'],
  source: 'litrebar-derivation',
  place: 'hydrostatics',
  range: { g: [9.78, 9.83] },
}

/** Geopotential height: altitude corrected for the fall of gravity. */
export const geopotentialHeightCard: Card<'H' | 'r' | 'h'> = {
  id: 'geopotential-height',
  title: 'Geopotential height: altitude corrected for decreasing gravity',
  documents: 'geopotentialHeightOf',
  result: 'H',
  symbols: {
    H: { letter: 'H', meaning: 'geopotential height', dimension: 'length', parameter: 'height' },
    r: { letter: 'r', meaning: 'radius of the Earth in the standard', dimension: 'length' },
    h: { letter: 'h', meaning: 'altitude above sea level', dimension: 'length', parameter: 'altitude' },
  },
  forms: { H: ['/', ['*', 'r', 'h'], ['+', 'r', 'h']], h: ['/', ['*', 'r', 'H'], ['-', 'r', 'H']] },
  constants: { r: 6356766 },
  core: {
    H: ({ altitude: h }: { altitude: Altitude }) => geopotentialHeightOf(h),
    h: ({ height }: { height: Length }) => altitudeOfGeopotentialHeight(height),
  },
  conditions: ['gravity falls with the square of the distance'],
  source: 'us-standard-atmosphere-1976',
  place: 'equation 18',
  range: { h: [0, 9000], H: [0, 8980] },
}

/** Pressure falls with altitude by the standard atmosphere. */
export const surfacePressureAtAltitudeCard: Card<'p' | 'pn' | 'r' | 'h' | 'H0' | 'n'> = {
  id: 'surface-pressure-at-altitude',
  title: 'Pressure falls with altitude in the standard atmosphere',
  documents: 'surfacePressureAtAltitude',
  result: 'p',
  symbols: {
    p: { letter: 'p', meaning: 'absolute pressure at the altitude', dimension: 'pressure', parameter: 'pressure' },
    pn: { letter: 'p', subscript: 'n', meaning: 'standard pressure at sea level', dimension: 'pressure' },
    r: { letter: 'r', meaning: 'radius of the Earth in the standard', dimension: 'length' },
    h: { letter: 'h', meaning: 'altitude above sea level', dimension: 'length', parameter: 'altitude' },
    H0: {
      letter: 'H',
      subscript: '0',
      meaning: 'height at which the lapse would reach zero kelvin',
      dimension: 'length',
    },
    n: { letter: 'n', meaning: 'exponent of the temperature lapse', dimension: 'fraction' },
  },
  forms: { p: ['*', 'pn', ['^', ['-', 1, ['/', ['/', ['*', 'r', 'h'], ['+', 'r', 'h']], 'H0']], 'n']] },
  constants: { pn: 101325, r: 6356766, H0: 288.15 / 0.0065, n: (9.80665 * 0.0289644) / (8.31432 * 0.0065) },
  core: {
    p: ({ altitude: h }: { altitude: Altitude }) => surfacePressureAtAltitude(h),
  },
  conditions: ['standard atmosphere, below 11 km', 'weather moves the pressure by some 3 per cent either way'],
  source: 'us-standard-atmosphere-1976',
  place: 'equations 18 and 33a',
  range: { p: [100000.0, 20000000.0], h: [0, 9000] },
}

/** Gravity at a latitude. */
export const normalGravityCard: Card<'g' | 'g0' | 'l'> = {
  id: 'normal-gravity',
  title: 'Gravity at a latitude, at sea level',
  documents: 'normalGravity',
  result: 'g',
  symbols: {
    g: { letter: 'g', meaning: 'acceleration of free fall', dimension: 'acceleration', parameter: 'gravity' },
    g0: { letter: 'g', subscript: 'e', meaning: 'acceleration of free fall at the equator', dimension: 'acceleration' },
    l: { letter: 'φ', meaning: 'latitude of the place', dimension: 'angle', parameter: 'latitude' },
  },
  forms: {
    g: ['*', 'g0', ['+', 1, ['*', ['+', 0.0052792, ['*', 0.0000232, ['^', ['sin', 'l'], 2]]], ['^', ['sin', 'l'], 2]]]],
  },
  core: { g: (place: { latitude: Angle }) => normalGravity(place) },
  constants: { g0: 9.780327 },
  besides: ['altitude', 'depth'],
  conditions: ['sea level, on the smooth ellipsoid of the earth'],
  source: 'teos-10',
  place: 'gsw_grav',
  commonErrors: [{ slip: 'other-formula', text: 'Equatorial gravity used everywhere', instead: { g: ['*', 1, 'g0'] } }],
  range: { l: [-1.5, 1.5] },
}
