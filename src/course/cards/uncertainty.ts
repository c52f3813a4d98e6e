import {
  arcsine,
  coverageFactor,
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  fromGaugeClass,
  fromResolution,
  maximumPermissibleError,
  meanInterval,
  quantizationStep,
  rectangular,
  slopeUncertainty,
  triangular,
  upperPredictionBound,
} from '../../uncertainty/index.ts'
import type {
  AbsolutePressure,
  Duration,
  GaugePressure,
  Length,
  PressureDifference,
  VolumeFlow,
} from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Any value within the bounds equally likely: the half width over the root of three. */
export const rectangularCard: Card<'u' | 'a'> = {
  id: 'rectangular-distribution',
  title: 'All values within the bounds equally likely: the half width over the square root of three',
  documents: 'rectangular',
  result: 'u',
  symbols: {
    u: {
      letter: 'u',
      meaning: 'standard uncertainty',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'standardUncertainty',
    },
    a: {
      letter: 'a',
      meaning: 'half width of the interval',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'halfWidth',
    },
  },
  forms: { u: ['/', 'a', ['sqrt', 3]] },
  core: {
    u: ({ halfWidth: a }: { halfWidth: PressureDifference }) => rectangular(1e7 as AbsolutePressure, a),
  },
  besides: ['value'],
  conditions: ['bounds stated, nothing else known'],
  source: 'gum-2008',
  place: '4.3.7',
  commonErrors: [
    { slip: 'other-formula', text: 'The half width used as the standard uncertainty', instead: { u: ['*', 1, 'a'] } },
  ],
  range: { u: [10000.0, 1000000.0], a: [10000.0, 1000000.0] },
}

/** Values near the middle more likely: the half width over the root of six. */
export const triangularCard: Card<'u' | 'a'> = {
  id: 'triangular-distribution',
  title: 'Values near the middle more likely: the half width over the square root of six',
  documents: 'triangular',
  result: 'u',
  symbols: {
    u: {
      letter: 'u',
      meaning: 'standard uncertainty',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'standardUncertainty',
    },
    a: {
      letter: 'a',
      meaning: 'half width of the interval',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'halfWidth',
    },
  },
  forms: { u: ['/', 'a', ['sqrt', 6]] },
  core: {
    u: ({ halfWidth: a }: { halfWidth: PressureDifference }) => triangular(1e7 as AbsolutePressure, a),
  },
  besides: ['value'],
  conditions: ['bounds stated, values near the middle more likely'],
  source: 'gum-2008',
  place: '4.3.9',
  commonErrors: [
    { slip: 'other-formula', text: 'The half width used as the standard uncertainty', instead: { u: ['*', 1, 'a'] } },
  ],
  range: { u: [10000.0, 1000000.0], a: [10000.0, 1000000.0] },
}

/** A cycle between two bounds: the half width over the root of two. */
export const arcsineCard: Card<'u' | 'a'> = {
  id: 'arcsine-distribution',
  title: 'A cycle between two bounds: the half width over the square root of two',
  documents: 'arcsine',
  result: 'u',
  symbols: {
    u: {
      letter: 'u',
      meaning: 'standard uncertainty',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'standardUncertainty',
    },
    a: {
      letter: 'a',
      meaning: 'half width of the interval',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'halfWidth',
    },
  },
  forms: { u: ['/', 'a', ['sqrt', 2]] },
  core: {
    u: ({ halfWidth: a }: { halfWidth: PressureDifference }) => arcsine(1e7 as AbsolutePressure, a),
  },
  besides: ['value'],
  conditions: ['a sinusoidal cycle'],
  source: 'gum-s1-2008',
  place: '6.4.6',
  commonErrors: [
    { slip: 'other-formula', text: 'The half width used as the standard uncertainty', instead: { u: ['*', 1, 'a'] } },
  ],
  range: { u: [10000.0, 1000000.0], a: [10000.0, 1000000.0] },
}

/** Uncertainty of a display that rounds to its step. */
export const fromResolutionCard: Card<'u' | 's'> = {
  id: 'from-resolution',
  title: 'Uncertainty of a display that rounds to its step',
  documents: 'fromResolution',
  result: 'u',
  symbols: {
    u: {
      letter: 'u',
      meaning: 'standard uncertainty',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'standardUncertainty',
    },
    s: { letter: 's', meaning: 'step of the display', dimension: 'pressure', datum: 'difference', parameter: 'step' },
  },
  forms: { u: ['/', ['/', 's', 2], ['sqrt', 3]] },
  core: {
    u: ({ step: s }: { step: PressureDifference }) => fromResolution(1e7 as AbsolutePressure, s),
  },
  besides: ['reading'],
  conditions: ['a display that rounds; one that truncates is off by up to another half step'],
  source: 'gum-2008',
  place: 'F.2.2.1',
  commonErrors: [
    { slip: 'other-formula', text: 'The whole step used as the half width', instead: { u: ['/', 's', ['sqrt', 3]] } },
  ],
  range: { u: [10000.0, 1000000.0], s: [100000.0, 1000000.0] },
}

/** Largest error that the class of a gauge allows. */
export const maximumPermissibleErrorCard: Card<'e' | 'c' | 'p'> = {
  id: 'maximum-permissible-error',
  title: 'Largest error that the class of a gauge allows',
  documents: 'maximumPermissibleError',
  result: 'e',
  symbols: {
    e: { letter: 'e', meaning: 'largest error', dimension: 'pressure', datum: 'difference', parameter: 'error' },
    c: {
      letter: 'c',
      meaning: 'class of the gauge, as a fraction of the span',
      dimension: 'fraction',
      parameter: 'accuracyClass',
    },
    p: {
      letter: 'p',
      subscript: 'max',
      meaning: 'upper end of the scale',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'span',
    },
  },
  forms: { e: ['*', 'c', 'p'] },
  core: {
    e: ({ accuracyClass: c, span: p }: { accuracyClass: number; span: PressureDifference }) =>
      maximumPermissibleError({ span: p, accuracyClass: c }),
  },
  conditions: ['the same everywhere on the scale', 'at the reference temperature'],
  source: 'en-837-1',
  place: 'accuracy classes',
  cautions: ['instrument'],
  commonErrors: [{ slip: 'percent-for-fraction', text: 'Per cent used as a fraction', symbols: ['c'] }],
  range: { c: [0.01, 0.04], p: [10000000.0, 40000000.0] },
}

/** Standard uncertainty from the class of a gauge. */
export const fromGaugeClassCard: Card<'u' | 'c' | 'p'> = {
  id: 'from-gauge-class',
  title: 'Standard uncertainty from the class of a gauge',
  documents: 'fromGaugeClass',
  result: 'u',
  symbols: {
    u: {
      letter: 'u',
      meaning: 'standard uncertainty',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'standardUncertainty',
    },
    c: {
      letter: 'c',
      meaning: 'class of the gauge, as a fraction of the span',
      dimension: 'fraction',
      parameter: 'accuracyClass',
    },
    p: {
      letter: 'p',
      subscript: 'max',
      meaning: 'upper end of the scale',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'span',
    },
  },
  forms: { u: ['/', ['*', 'c', 'p'], ['sqrt', 3]] },
  core: {
    u: ({ accuracyClass: c, span: p }: { accuracyClass: number; span: PressureDifference }) =>
      fromGaugeClass(1e7 as GaugePressure, { span: p, accuracyClass: c }),
  },
  besides: ['reading'],
  conditions: ['a gauge within its class', 'at the reference temperature'],
  source: 'en-837-1',
  place: 'accuracy classes',
  cautions: ['instrument'],
  commonErrors: [{ slip: 'percent-for-fraction', text: 'Per cent used as a fraction', symbols: ['c'] }],
  range: { u: [10000.0, 1000000.0], c: [0.01, 0.04], p: [10000000.0, 40000000.0] },
}

/** Smallest step of a converter. */
export const quantizationStepCard: Card<'s' | 'r' | 'n'> = {
  id: 'quantization-step',
  title: 'Smallest step of a converter',
  documents: 'quantizationStep',
  result: 's',
  symbols: {
    s: { letter: 's', meaning: 'step of the converter', dimension: 'pressure', datum: 'difference', parameter: 'step' },
    r: {
      letter: 'r',
      meaning: 'range of the converter',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'range',
    },
    n: { letter: 'n', meaning: 'number of bits', dimension: 'fraction', parameter: 'bits' },
  },
  forms: { s: ['/', 'r', ['^', 2, 'n']] },
  core: {
    s: ({ range: r, bits: n }: { range: PressureDifference; bits: number }) => quantizationStep(r, n),
  },
  conditions: ['an ideal converter over its whole range'],
  source: 'common-practice',
  range: { r: [1000000.0, 40000000.0], n: [8, 24] },
}

/** Uncertainty of a rate from ten even readings of depth. */
export const slopeUncertaintyCard: Card<'uv' | 'u' | 't' | 'n'> = {
  id: 'slope-uncertainty',
  title: 'Uncertainty of a rate from ten evenly spaced depth readings',
  documents: 'slopeUncertainty',
  result: 'uv',
  symbols: {
    uv: {
      letter: 'u',
      subscript: 'v',
      meaning: 'standard uncertainty of the rate',
      dimension: 'speed',
      parameter: 'rate',
    },
    u: {
      letter: 'u',
      subscript: 'd',
      meaning: 'standard uncertainty of one reading',
      dimension: 'length',
      parameter: 'standardUncertainty',
    },
    t: { letter: 't', meaning: 'time from one reading to the next', dimension: 'duration', parameter: 'interval' },
    n: { letter: 'n', meaning: 'number of readings', dimension: 'fraction' },
  },
  forms: { uv: ['/', 'u', ['*', 't', ['sqrt', ['/', ['*', 'n', ['-', ['^', 'n', 2], 1]], 12]]]] },
  constants: { n: 10 },
  core: {
    uv: ({ standardUncertainty: u, interval: t }: { standardUncertainty: Length; interval: Duration }) =>
      slopeUncertainty({ standardUncertainty: u, interval: t, count: 10 }),
  },
  besides: ['count'],
  conditions: ['independent noise in the readings', 'a common offset cancels'],
  source: 'litrebar-derivation',
  place: 'slope of least squares, white noise',
  range: { u: [0.01, 0.3], t: [0.5, 20] },
}

/** Welch and Satterthwaite: degrees of freedom of a sum with one observed part. */
export const effectiveDegreesOfFreedomCard: Card<'ne' | 'n1' | 'uc' | 'u1'> = {
  id: 'effective-degrees-of-freedom',
  title: 'Welch–Satterthwaite: effective degrees of freedom with one observed component',
  documents: 'effectiveDegreesOfFreedom',
  result: 'ne',
  symbols: {
    ne: {
      letter: 'n',
      subscript: 'eff',
      meaning: 'effective degrees of freedom',
      dimension: 'fraction',
      parameter: 'effective',
    },
    n1: {
      letter: 'n',
      subscript: '1',
      meaning: 'degrees of freedom of the observed component',
      dimension: 'fraction',
      parameter: 'degreesOfFreedom',
    },
    uc: {
      letter: 'u',
      subscript: 'c',
      meaning: 'combined standard uncertainty',
      dimension: 'fraction',
      parameter: 'combined',
    },
    u1: {
      letter: 'u',
      subscript: '1',
      meaning: 'standard uncertainty of the observed component',
      dimension: 'fraction',
      parameter: 'standardUncertainty',
    },
  },
  forms: { ne: ['/', 'n1', ['^', ['/', 'u1', 'uc'], 4]] },
  core: {
    ne: ({
      degreesOfFreedom: n1,
      standardUncertainty: u1,
      combined: uc,
    }: {
      degreesOfFreedom: number
      standardUncertainty: number
      combined: number
    }) => effectiveDegreesOfFreedom(uc, [{ standardUncertainty: u1, degreesOfFreedom: n1 }]),
  },
  conditions: ['one component observed, the others given', 'components independent, in the unit of the result'],
  source: 'gum-2008',
  place: 'G.4.1',
  range: { n1: [3, 30], uc: [1, 3], u1: [0.2, 0.9] },
}

/** Expanded uncertainty is the standard uncertainty times the coverage factor. */
export const expandedUncertaintyCard: Card<'U' | 'n' | 'P' | 'u'> = {
  id: 'expanded-uncertainty',
  title: 'Expanded uncertainty is the standard uncertainty times the coverage factor',
  documents: 'expandedUncertainty',
  result: 'U',
  symbols: {
    U: {
      letter: 'U',
      meaning: 'expanded uncertainty',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'expandedUncertainty',
    },
    n: {
      letter: 'n',
      subscript: 'f',
      meaning: 'degrees of freedom',
      dimension: 'fraction',
      parameter: 'degreesOfFreedom',
    },
    P: { letter: 'P', meaning: 'coverage probability', dimension: 'fraction', parameter: 'probability' },
    u: {
      letter: 'u',
      meaning: 'standard uncertainty',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'standardUncertainty',
    },
  },
  forms: { U: ['*', ['call', 'k', 'n', 'P'], 'u'] },
  core: {
    U: ({
      degreesOfFreedom: n,
      probability: P,
      standardUncertainty: u,
    }: {
      degreesOfFreedom: number
      probability: number
      standardUncertainty: PressureDifference
    }) => expandedUncertainty({ value: 1e7 as AbsolutePressure, standardUncertainty: u, degreesOfFreedom: n }, P),
  },
  besides: ['value', 'linear'],
  calls: {
    k: (degreesOfFreedom = 1, probability = 0.95) => coverageFactor({ probability, degreesOfFreedom, sides: 'two' }),
  },
  callSymbols: { k: { letter: 'k', meaning: 'coverage factor', dimension: 'fraction' } },
  conditions: ['the result follows Student’s distribution'],
  source: 'gum-2008',
  place: '6.2 and G.6.4',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'A coverage factor of 2 whatever the degrees of freedom',
      instead: { U: ['*', 2, 'u'] },
    },
  ],
  range: { n: [3, 30], P: [0.8, 0.99], u: [10000.0, 1000000.0] },
}

/** Half width of the interval of a mean. */
export const meanIntervalCard: Card<'h' | 'n' | 'P' | 'u'> = {
  id: 'mean-interval',
  title: 'Half width of the confidence interval of a mean',
  documents: 'meanInterval',
  result: 'h',
  symbols: {
    h: {
      letter: 'h',
      meaning: 'half width of the interval',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'halfWidth',
    },
    n: {
      letter: 'n',
      subscript: 'f',
      meaning: 'degrees of freedom',
      dimension: 'fraction',
      parameter: 'degreesOfFreedom',
    },
    P: { letter: 'P', meaning: 'coverage probability', dimension: 'fraction', parameter: 'probability' },
    u: {
      letter: 'u',
      meaning: 'standard uncertainty of the mean',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'standardUncertaintyOfMean',
    },
  },
  forms: { h: ['*', ['call', 'k', 'n', 'P'], 'u'] },
  core: {
    h: ({
      degreesOfFreedom: n,
      probability: P,
      standardUncertaintyOfMean: u,
    }: {
      degreesOfFreedom: number
      probability: number
      standardUncertaintyOfMean: PressureDifference
    }) =>
      meanInterval(
        {
          count: n + 1,
          mean: 1e7 as PressureDifference,
          standardDeviation: u,
          standardUncertaintyOfMean: u,
          degreesOfFreedom: n,
        },
        P,
      ),
  },
  besides: ['count', 'mean', 'standardDeviation'],
  calls: {
    k: (degreesOfFreedom = 1, probability = 0.95) => coverageFactor({ probability, degreesOfFreedom, sides: 'two' }),
  },
  callSymbols: { k: { letter: 'k', meaning: 'coverage factor', dimension: 'fraction' } },
  conditions: ['normally distributed readings'],
  source: 'gum-2008',
  place: 'G.3',
  range: { n: [3, 30], P: [0.8, 0.99], u: [10000.0, 1000000.0] },
}

/** What the next reading stays below. */
export const upperPredictionBoundCard: Card<'b' | 'm' | 'n' | 'P' | 's' | 'N'> = {
  id: 'upper-prediction-bound',
  title: 'What the next reading stays below',
  documents: 'upperPredictionBound',
  result: 'b',
  symbols: {
    b: { letter: 'b', meaning: 'upper bound of the next reading', dimension: 'volume flow', parameter: 'bound' },
    m: { letter: 'm', meaning: 'mean of the readings', dimension: 'volume flow', parameter: 'mean' },
    n: {
      letter: 'n',
      subscript: 'f',
      meaning: 'degrees of freedom',
      dimension: 'fraction',
      parameter: 'degreesOfFreedom',
    },
    P: { letter: 'P', meaning: 'coverage probability', dimension: 'fraction', parameter: 'probability' },
    s: {
      letter: 's',
      meaning: 'standard deviation of a reading',
      dimension: 'volume flow',
      parameter: 'standardDeviation',
    },
    N: { letter: 'N', meaning: 'number of readings', dimension: 'fraction', parameter: 'count' },
  },
  forms: { b: ['+', 'm', ['*', ['call', 'k', 'n', 'P'], 's', ['sqrt', ['+', 1, ['/', 1, 'N']]]]] },
  core: {
    b: ({
      mean: m,
      degreesOfFreedom: n,
      probability: P,
      standardDeviation: s,
      count: N,
    }: {
      mean: VolumeFlow
      degreesOfFreedom: number
      probability: number
      standardDeviation: VolumeFlow
      count: number
    }) =>
      upperPredictionBound(
        { count: N, mean: m, standardDeviation: s, standardUncertaintyOfMean: s, degreesOfFreedom: n },
        P,
      ),
  },
  besides: ['standardUncertaintyOfMean'],
  calls: {
    k: (degreesOfFreedom = 1, probability = 0.95) => coverageFactor({ probability, degreesOfFreedom, sides: 'one' }),
  },
  callSymbols: { k: { letter: 'k', meaning: 'coverage factor', dimension: 'fraction' } },
  conditions: ['independent, normally distributed readings', 'one-sided'],
  source: 'litrebar-derivation',
  place: 'normally distributed readings',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The interval of the mean used for the next reading',
      instead: { b: ['+', 'm', ['*', ['call', 'k', 'n', 'P'], 's', ['sqrt', ['/', 1, 'N']]]] },
    },
  ],
  range: { m: [0.0002, 0.0005], n: [3, 30], P: [0.8, 0.99], s: [1e-5, 0.0001], N: [4, 30] },
}
