import { depthAtPressure, pressureAtDepth } from '../../environment/index.ts'
import type { Card } from '../card.ts'

// Cards are plain literals: no call and no spread at the top level, or bundlers keep them.

/** Absolute pressure at a depth of water of one density; also solved for the depth. */
export const pressureAtDepthCard: Card<'p' | 'p0' | 'rho' | 'g' | 'd'> = {
  id: 'pressure-at-depth',
  title: 'Absolute pressure at a depth',
  documents: 'pressureAtDepth',
  result: 'p',
  symbols: {
    p: { letter: 'p', meaning: 'absolute pressure at the depth', dimension: 'pressure', parameter: 'pressure' },
    p0: {
      letter: 'p',
      subscript: '0',
      meaning: 'absolute pressure at the surface',
      dimension: 'pressure',
      parameter: 'surfacePressure',
    },
    rho: { letter: 'ρ', meaning: 'density of the water', dimension: 'density', parameter: 'density' },
    g: { letter: 'g', meaning: 'gravity', dimension: 'acceleration', parameter: 'gravity' },
    d: { letter: 'd', meaning: 'depth', dimension: 'length', parameter: 'depth' },
  },
  forms: {
    p: ['+', 'p0', ['*', 'rho', 'g', 'd']],
    d: ['/', ['-', 'p', 'p0'], ['*', 'rho', 'g']],
  },
  core: { p: pressureAtDepth, d: depthAtPressure },
  conditions: ['water at rest, of uniform density', 'gravity constant over the depth'],
  source: 'openstax-college-physics',
  place: 'section 11.4',
  commonErrors: [
    { slip: 'sea-water-for-fresh', text: 'Density of sea water used, 1025 kg/m³', symbols: ['rho'] },
    {
      slip: 'other-formula',
      text: 'Surface pressure left out',
      instead: { p: ['*', 'rho', 'g', 'd'], d: ['/', 'p', ['*', 'rho', 'g']] },
    },
  ],
  range: { p0: [60_000, 105_000], rho: [990, 1040], g: [9.78, 9.83], d: [1, 300], p: [110_000, 3_000_000] },
}
