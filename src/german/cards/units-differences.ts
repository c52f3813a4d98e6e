import type { CardTexts } from '../../course/index.ts'

/** The cards of units differences in German. */
export const unitsDifferencesTexts = {
  'offset-by': {
    title: 'Ein Druck, um einen Unterschied verschoben',
    symbols: { p2: 'Absolutdruck nachher', p1: 'Absolutdruck vorher', dp: 'Änderung des Drucks' },
    conditions: ['beide vom selben Nullpunkt gezählt'],
    place: 'Definition',
  },
  'temperature-difference': {
    title: 'Ein Temperaturunterschied',
    symbols: { dT: 'Unterschied der Temperatur', a: 'erste Temperatur', b: 'zweite Temperatur' },
    conditions: ['beide auf derselben Skale'],
    place: 'Definition',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
