import { cardTilt, type Deviation, deviationAt, tiltError } from '../../gauges/index.ts'
import type { Angle } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Error of a compass that is rolled, on a heading of north. */
export const tiltErrorCard: Card<'e' | 'r' | 'd'> = {
  id: 'compass-tilt-error',
  title: 'How far a rolled compass reads too low on a heading of north',
  documents: 'tiltError',
  result: 'e',
  symbols: {
    e: { letter: 'ε', meaning: 'how far the heading shown is too low', dimension: 'angle', parameter: 'error' },
    r: { letter: 'φ', meaning: 'roll of the compass, right side down', dimension: 'angle', parameter: 'roll' },
    d: { letter: 'δ', meaning: 'magnetic dip of the place', dimension: 'angle', parameter: 'dip' },
  },
  forms: { e: ['arctan', ['*', ['sin', 'r'], ['tan', 'd']]] },
  core: {
    e: (held: { roll: Angle; dip: Angle }) => -tiltError({ ...held, heading: 0 as Angle, pitch: 0 as Angle }),
  },
  besides: ['heading', 'pitch'],
  conditions: [
    'a heading of magnetic north, the compass level from front to back',
    'a card that cannot swing freely in its case',
  ],
  source: 'litrebar-derivation',
  place: 'projection of the field into the plane of the card',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The roll itself used as the error, as if the field were level',
      instead: { e: ['*', 1, 'r'] },
    },
  ],
  range: { r: [0.02, 0.5], d: [-1.3, 1.3] },
}

/** Tilt of a compass card away from the zone it was balanced for. */
export const cardTiltCard: Card<'t' | 'z1' | 'z2' | 'h' | 'g'> = {
  id: 'compass-card-tilt',
  title: 'Tilt of a compass card outside its zone',
  documents: 'cardTilt',
  result: 't',
  symbols: {
    t: { letter: 'θ', meaning: 'tilt of the card, north end down', dimension: 'angle', parameter: 'tilt' },
    z2: {
      letter: 'z',
      subscript: '2',
      meaning: 'vertical over horizontal field where it is used',
      dimension: 'fraction',
      parameter: 'usedAt',
    },
    z1: {
      letter: 'z',
      subscript: '1',
      meaning: 'vertical over horizontal field where it was balanced',
      dimension: 'fraction',
      parameter: 'balancedFor',
    },
    h: {
      letter: 'h',
      meaning: 'horizontal field at the place of balance over that at the place of use',
      dimension: 'fraction',
      parameter: 'horizontalRatio',
    },
    g: {
      letter: 'g',
      meaning: 'righting moment of the card over the turning moment of the field',
      dimension: 'fraction',
      parameter: 'righting',
    },
  },
  forms: { t: ['arctan', ['/', ['-', 'z2', ['*', 'z1', 'h']], ['+', 'g', 1]]] },
  core: { t: (card: Parameters<typeof cardTilt>[0]) => cardTilt(card) },
  conditions: ['balance of moments about the pivot', 'a tilt within what the case allows'],
  source: 'litrebar-derivation',
  place: 'balance of moments about the pivot',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The horizontal fields assumed equal at both places',
      instead: { t: ['arctan', ['/', ['-', 'z2', 'z1'], ['+', 'g', 1]]] },
    },
  ],
  range: { z1: [-3, 3], z2: [-3, 3], h: [0.5, 2], g: [5, 50] },
}

/** Deviation of a compass on a heading. */
export const deviationCard: Card<'D' | 'a' | 'b' | 'c' | 'd' | 'e' | 'z'> = {
  id: 'compass-deviation',
  title: 'Deviation of a compass on a heading, from its coefficients',
  documents: 'deviationAt',
  result: 'D',
  symbols: {
    D: { letter: 'δ', meaning: 'deviation, east positive', dimension: 'angle', parameter: 'deviation' },
    a: { letter: 'A', meaning: 'constant part', dimension: 'angle', parameter: 'coefficients.a' },
    b: { letter: 'B', meaning: 'coefficient of the sine', dimension: 'angle', parameter: 'coefficients.b' },
    c: { letter: 'C', meaning: 'coefficient of the cosine', dimension: 'angle', parameter: 'coefficients.c' },
    d: {
      letter: 'D',
      meaning: 'coefficient of the sine of twice the heading',
      dimension: 'angle',
      parameter: 'coefficients.d',
    },
    e: {
      letter: 'E',
      meaning: 'coefficient of the cosine of twice the heading',
      dimension: 'angle',
      parameter: 'coefficients.e',
    },
    z: { letter: 'ζ', meaning: 'heading by the compass', dimension: 'angle', parameter: 'compassHeading' },
  },
  forms: {
    D: [
      '+',
      'a',
      ['*', 'b', ['sin', 'z']],
      ['*', 'c', ['cos', 'z']],
      ['*', 'd', ['sin', ['*', 2, 'z']]],
      ['*', 'e', ['cos', ['*', 2, 'z']]],
    ],
  },
  core: {
    D: (knowns: SwungCompass) => {
      const coefficients = {
        a: knowns['coefficients.a'],
        b: knowns['coefficients.b'],
        c: knowns['coefficients.c'],
        d: knowns['coefficients.d'],
        e: knowns['coefficients.e'],
      }
      const fitted: Deviation = {
        coefficients,
        standardUncertainties: coefficients,
        covariance: [],
        scatter: 0 as Angle,
        degreesOfFreedom: 3,
      }
      return deviationAt(fitted, knowns.compassHeading)
    },
  },
  besides: ['standardUncertainties', 'covariance', 'scatter', 'degreesOfFreedom'],
  conditions: ['the place and the steel as they were when the compass was swung'],
  source: 'nga-compass-adjustment',
  place: 'section 501',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The terms of twice the heading left out',
      instead: { D: ['+', 'a', ['*', 'b', ['sin', 'z']], ['*', 'c', ['cos', 'z']]] },
    },
  ],
  range: {
    a: [-0.05, 0.05],
    b: [-0.3, 0.3],
    c: [-0.3, 0.3],
    d: [-0.1, 0.1],
    e: [-0.1, 0.1],
    z: [0, 6.28],
  },
}

interface SwungCompass {
  readonly 'coefficients.a': Angle
  readonly 'coefficients.b': Angle
  readonly 'coefficients.c': Angle
  readonly 'coefficients.d': Angle
  readonly 'coefficients.e': Angle
  readonly compassHeading: Angle
}
