import { uncertaintyOfDifference } from '../../gauges/index.ts'
import { samplingLoss, workUncertainty } from '../../regulator-performance/index.ts'
import { assessAgreement } from '../../uncertainty/index.ts'
import type { AbsolutePressure, EnergyPerVolume, PressureDifference } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Standard uncertainty of a difference of two readings. */
export const uncertaintyOfDifferenceCard: Card<'u' | 'u1' | 'u2' | 'r'> = {
  id: 'uncertainty-of-difference',
  title: 'Uncertainty of the difference of two readings of one gauge',
  documents: 'uncertaintyOfDifference',
  result: 'u',
  symbols: {
    u: {
      letter: 'u',
      meaning: 'standard uncertainty of the difference',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'uncertainty',
    },
    u1: {
      letter: 'u',
      subscript: '1',
      meaning: 'standard uncertainty of the first reading',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'first',
    },
    u2: {
      letter: 'u',
      subscript: '2',
      meaning: 'standard uncertainty of the second reading',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'second',
    },
    r: { letter: 'r', meaning: 'correlation of their errors', dimension: 'fraction', parameter: 'together' },
  },
  forms: { u: ['sqrt', ['-', ['+', ['^', 'u1', 2], ['^', 'u2', 2]], ['*', 2, 'r', 'u1', 'u2']]] },
  core: {
    u: ({ first, second, together }: { first: number; second: number; together: number }) =>
      uncertaintyOfDifference(first, second, together),
  },
  conditions: ['small errors', 'two readings of one gauge share their errors: the correlation is near 1'],
  source: 'gum-2008',
  place: '5.2.2',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The two readings treated as independent',
      instead: { u: ['sqrt', ['+', ['^', 'u1', 2], ['^', 'u2', 2]]] },
    },
    { slip: 'other-formula', text: 'The two uncertainties added', instead: { u: ['+', 'u1', 'u2'] } },
  ],
  range: { u1: [50_000, 500_000], u2: [60_000, 500_000], r: [-0.9, 0.9] },
}

/** Whether two results agree. */
export const agreementCard: Card<'E' | 'x1' | 'x2' | 'U1' | 'U2'> = {
  id: 'agreement',
  title: 'Whether two results agree within their uncertainties',
  documents: 'assessAgreement',
  result: 'E',
  symbols: {
    E: {
      letter: 'E',
      subscript: 'n',
      meaning: 'difference over combined uncertainty: above 1 they disagree',
      dimension: 'fraction',
      parameter: 'value',
    },
    x1: { letter: 'x', subscript: '1', meaning: 'first result', dimension: 'pressure', parameter: 'first.value' },
    x2: { letter: 'x', subscript: '2', meaning: 'second result', dimension: 'pressure', parameter: 'second.value' },
    U1: {
      letter: 'U',
      subscript: '1',
      meaning: 'expanded uncertainty of the first',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'first.expandedUncertainty',
    },
    U2: {
      letter: 'U',
      subscript: '2',
      meaning: 'expanded uncertainty of the second',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'second.expandedUncertainty',
    },
  },
  forms: {
    E: ['/', ['max', ['-', 'x1', 'x2'], ['-', 'x2', 'x1']], ['sqrt', ['+', ['^', 'U1', 2], ['^', 'U2', 2]]]],
  },
  core: {
    E: (k: TwoResults) =>
      assessAgreement(
        { value: k['first.value'], expandedUncertainty: k['first.expandedUncertainty'] },
        { value: k['second.value'], expandedUncertainty: k['second.expandedUncertainty'] },
      ).value,
  },
  conditions: ['independent results, both stated with the same coverage'],
  source: 'common-practice',
  place: 'comparison of measurements',
  cautions: ['instrument'],
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The uncertainties added instead of their squares',
      instead: { E: ['/', ['max', ['-', 'x1', 'x2'], ['-', 'x2', 'x1']], ['+', 'U1', 'U2']] },
    },
  ],
  range: { x1: [19_000_000, 20_000_000], x2: [20_500_000, 21_000_000], U1: [100_000, 900_000], U2: [100_000, 900_000] },
}

/** Work lost by sampling a breath. */
export const samplingLossCard: Card<'f' | 'N' | 'pi'> = {
  id: 'sampling-loss',
  title: 'Fraction of the work that sampling preserves',
  documents: 'samplingLoss',
  result: 'f',
  symbols: {
    f: {
      letter: 'f',
      meaning: 'work of the polygon over that of the ellipse',
      dimension: 'fraction',
      parameter: 'workFactor',
    },
    N: { letter: 'N', meaning: 'samples per breath', dimension: 'fraction', parameter: 'samplesPerBreath' },
    pi: { letter: 'π', meaning: 'the number π', dimension: 'fraction' },
  },
  forms: { f: ['/', ['sin', ['/', ['*', 2, 'pi'], 'N']], ['/', ['*', 2, 'pi'], 'N']] },
  core: { f: ({ samplesPerBreath }: { samplesPerBreath: number }) => samplingLoss(samplesPerBreath) },
  constants: { pi: Math.PI },
  conditions: ['a sinusoidal breath, sampled at even intervals'],
  source: 'litrebar-derivation',
  place: 'polygon inside an ellipse',
  range: { N: [4, 500] },
}

/** Noise in a measured work per litre. */
export const workNoiseCard: Card<'u' | 's' | 'N' | 'pi'> = {
  id: 'work-noise',
  title: 'How pressure noise affects the work per litre of a breath',
  documents: 'workUncertainty',
  result: 'u',
  symbols: {
    u: {
      letter: 'u',
      meaning: 'standard uncertainty of the work per litre',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'noise',
    },
    s: {
      letter: 's',
      meaning: 'standard deviation of one pressure sample',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'pressureNoise',
    },
    N: { letter: 'N', meaning: 'samples per breath', dimension: 'fraction', parameter: 'samplesPerBreath' },
    pi: { letter: 'π', meaning: 'the number π', dimension: 'fraction' },
  },
  forms: { u: ['/', ['*', 'pi', 's'], ['sqrt', ['*', 2, 'N']]] },
  core: {
    u: ({ pressureNoise, samplesPerBreath }: { pressureNoise: PressureDifference; samplesPerBreath: number }) =>
      workUncertainty({
        workOfBreathingPerLitre: 1500 as EnergyPerVolume,
        pressureGain: 0,
        pressureNoise,
        samplesPerBreath,
      }),
  },
  constants: { pi: Math.PI },
  besides: ['workOfBreathingPerLitre', 'pressureGain', 'breaths'],
  conditions: ['a sinusoidal breath, sampled at even intervals', 'noise that is independent from sample to sample'],
  source: 'litrebar-derivation',
  place: 'noise through the sum over a loop',
  commonErrors: [
    {
      slip: 'other-formula',
      text: 'The noise of one sample used for the work: a loop averages over its samples',
      instead: { u: ['*', 1, 's'] },
    },
  ],
  range: { s: [10, 200], N: [50, 1000] },
}

interface TwoResults {
  readonly 'first.value': AbsolutePressure
  readonly 'second.value': AbsolutePressure
  readonly 'first.expandedUncertainty': PressureDifference
  readonly 'second.expandedUncertainty': PressureDifference
}
