import type { CardTexts } from '../../course/index.ts'

/** The cards of cylinder in German. */
export const cylinderTexts = {
  'end-load': {
    title: 'Das Gas drückt ein Ventil mit Druck mal Fläche hinaus',
    symbols: {
      F: 'Kraft auf die Verschraubung',
      pg: 'Überdruck',
      pi: 'die Zahl π',
      D: 'Durchmesser, auf dem sie dichtet',
    },
    conditions: ['der Druck wirkt auf die ganze Fläche innerhalb der Dichtung'],
    errors: ['Radius und Durchmesser verwechselt'],
    place: 'Druck mal Fläche',
  },
  'developed-pressure': {
    title: 'Eine geschlossene Luftflasche bei einer anderen Temperatur, Realgas',
    symbols: {
      p2: 'Absolutdruck bei der anderen Temperatur',
      p1: 'Absolutdruck in der Flasche',
      T1: 'Temperatur des Gases',
      T2: 'die andere Temperatur',
      z: 'was reale Luft zur idealen Regel hinzufügt, nach GERG-2008',
    },
    conditions: ['trockene Luft', 'eine Gasmenge', 'die Flasche weitet sich nicht'],
    errors: ['Grad Celsius für Kelvin gehalten', 'Mit dem idealen Gasgesetz statt mit dem Realgas gerechnet'],
  },
} as const satisfies Readonly<Record<string, CardTexts>>
