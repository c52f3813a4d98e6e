import type { AbsolutePressure, PressureDifference, Temperature } from '../../units/index.ts'
import { differenceOf, offsetBy } from '../../units/index.ts'
import type { Card } from '../card.ts'

/** A pressure offset by a difference. */
export const offsetByCard: Card<'p2' | 'p1' | 'dp'> = {
  id: 'offset-by',
  title: 'A pressure offset by a difference',
  documents: 'offsetBy',
  result: 'p2',
  symbols: {
    p2: { letter: 'p', meaning: 'absolute pressure after', dimension: 'pressure', parameter: 'moved' },
    p1: {
      letter: 'p',
      subscript: '1',
      meaning: 'absolute pressure before',
      dimension: 'pressure',
      parameter: 'pressure',
    },
    dp: {
      letter: 'Δ',
      subscript: 'p',
      meaning: 'change of the pressure',
      dimension: 'pressure',
      datum: 'difference',
      parameter: 'change',
    },
  },
  forms: { p2: ['+', 'p1', 'dp'] },
  core: {
    p2: ({ pressure: p1, change: dp }: { pressure: AbsolutePressure; change: PressureDifference }) => offsetBy(p1, dp),
  },
  conditions: ['both from the same datum'],
  source: 'litrebar-derivation',
  place: 'definition',
  range: { p2: [100000.0, 20000000.0], p1: [100000.0, 20000000.0], dp: [10000.0, 1000000.0] },
}

/** A temperature difference. */
export const differenceOfCard: Card<'dT' | 'a' | 'b'> = {
  id: 'temperature-difference',
  title: 'A temperature difference',
  documents: 'differenceOf',
  result: 'dT',
  symbols: {
    dT: {
      letter: 'Δ',
      subscript: 'T',
      meaning: 'difference of temperature',
      dimension: 'temperature difference',
      parameter: 'difference',
    },
    a: { letter: 'T', subscript: '1', meaning: 'first temperature', dimension: 'temperature', parameter: 'a' },
    b: { letter: 'T', subscript: '2', meaning: 'second temperature', dimension: 'temperature', parameter: 'b' },
  },
  forms: { dT: ['-', 'a', 'b'] },
  core: {
    dT: ({ a, b }: { a: Temperature; b: Temperature }) => differenceOf(a, b),
  },
  conditions: ['both on the same scale'],
  source: 'litrebar-derivation',
  place: 'definition',
  range: { a: [275, 320], b: [275, 320] },
}
