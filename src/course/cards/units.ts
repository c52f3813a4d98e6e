import { type AbsolutePressure, type GaugePressure, toAbsolute, toGauge } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Absolute pressure from a gauge pressure, and back. */
export const gaugeToAbsoluteCard: Card<'p' | 'pg' | 'pa'> = {
  id: 'gauge-to-absolute',
  title: 'Absolute pressure is gauge pressure plus ambient pressure',
  documents: 'toAbsolute',
  result: 'p',
  symbols: {
    p: { letter: 'p', meaning: 'absolute pressure', dimension: 'pressure', parameter: 'absolutePressure' },
    pg: {
      letter: 'p',
      subscript: 'g',
      meaning: 'gauge pressure',
      dimension: 'pressure',
      datum: 'gauge',
      parameter: 'pressure',
    },
    pa: {
      letter: 'p',
      subscript: 'a',
      meaning: 'ambient pressure, absolute',
      dimension: 'pressure',
      parameter: 'ambientPressure',
    },
  },
  forms: { p: ['+', 'pg', 'pa'], pg: ['-', 'p', 'pa'] },
  core: {
    p: ({ pressure, ambientPressure }: { pressure: GaugePressure; ambientPressure: AbsolutePressure }) =>
      toAbsolute(pressure, ambientPressure),
    pg: ({
      absolutePressure,
      ambientPressure,
    }: {
      absolutePressure: AbsolutePressure
      ambientPressure: AbsolutePressure
    }) => toGauge(absolutePressure, ambientPressure),
  },
  conditions: ['the gauge reads zero at ambient pressure'],
  source: 'openstax-college-physics',
  place: 'section 11.6',
  range: { p: [100_000, 30_000_000], pg: [0, 30_000_000], pa: [60_000, 600_000] },
}
