import type { CardTexts } from '../../course/index.ts'

/** The cards of gas law contents in German. */
export const gasLawContentsTexts = {
  'free-gas-at': {
    title: 'Entspanntes Gas in einem anderen Bezugszustand',
    symbols: {
      V2: 'Volumen im zweiten Bezugszustand',
      V1: 'Volumen im ersten Bezugszustand',
      p1: 'Absolutdruck des ersten Bezugszustands',
      p2: 'Absolutdruck des zweiten Bezugszustands',
      T1: 'Temperatur des ersten Bezugszustands',
      T2: 'Temperatur des zweiten Bezugszustands',
    },
    conditions: ['ideales Gas', 'eine Menge trockenes Gas'],
    errors: ['Grad Celsius für Kelvin gehalten', 'Das Verhältnis der Temperaturen umgedreht'],
    place: 'Definition',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
