import { dryAir, freeGasAt, isoStandard } from '../../gas-law/index.ts'
import type { AbsolutePressure, FreeGas, Temperature } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** Free gas at another reference condition. */
export const freeGasAtCard: Card<'V2' | 'V1' | 'p1' | 'p2' | 'T1' | 'T2'> = {
  id: 'free-gas-at',
  title: 'Free gas at another reference condition',
  documents: 'freeGasAt',
  result: 'V2',
  symbols: {
    V2: {
      letter: 'V',
      subscript: '2',
      meaning: 'volume at the second reference',
      dimension: 'volume',
      parameter: 'volume',
    },
    V1: {
      letter: 'V',
      subscript: '1',
      meaning: 'volume at the first reference',
      dimension: 'volume',
      parameter: 'freeGas',
    },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'absolute pressure of the first reference',
      dimension: 'pressure',
      parameter: 'from.pressure',
    },
    p2: {
      letter: 'p',
      subscript: '2',
      meaning: 'absolute pressure of the second reference',
      dimension: 'pressure',
      parameter: 'to.pressure',
    },
    T1: {
      letter: 'T',
      subscript: '1',
      meaning: 'temperature of the first reference',
      dimension: 'temperature',
      parameter: 'from.temperature',
    },
    T2: {
      letter: 'T',
      subscript: '2',
      meaning: 'temperature of the second reference',
      dimension: 'temperature',
      parameter: 'to.temperature',
    },
  },
  forms: { V2: ['*', 'V1', ['/', 'p1', 'p2'], ['/', 'T2', 'T1']] },
  core: {
    V2: ({
      freeGas: V1,
      'from.pressure': p1,
      'to.pressure': p2,
      'to.temperature': T2,
      'from.temperature': T1,
    }: {
      freeGas: FreeGas<'from'>
      'from.pressure': AbsolutePressure
      'to.pressure': AbsolutePressure
      'to.temperature': Temperature
      'from.temperature': Temperature
    }) =>
      freeGasAt(V1, {
        from: { ...isoStandard, name: 'from', pressure: p1, temperature: T1 },
        to: { ...isoStandard, name: 'to', pressure: p2, temperature: T2 },
        mixture: dryAir,
        gas: 'ideal',
      }),
  },
  besides: ['gas', 'mixture'],
  conditions: ['ideal gas', 'fixed amount of dry gas'],
  source: 'common-practice',
  place: 'definition',
  commonErrors: [
    { slip: 'celsius-for-kelvin', text: 'Degrees Celsius used as kelvin', symbols: ['T1', 'T2'] },
    {
      slip: 'other-formula',
      text: 'The ratio of temperatures inverted',
      instead: { V2: ['*', 'V1', ['/', 'p1', 'p2'], ['/', 'T1', 'T2']] },
    },
  ],
  range: { V2: [0.5, 5], V1: [0.5, 5], p1: [95000, 105000], p2: [95000, 105000], T1: [275, 320], T2: [275, 320] },
}
