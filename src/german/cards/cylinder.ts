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
  'trade-size': {
    title: 'Liter Wasser hinter einer Handelsgröße, gezählt als Volumen mal Überdruck',
    symbols: {
      V: 'Innenvolumen',
      V0: 'Handelsgröße als entspanntes Gas',
      p0: 'Absolutdruck, bei dem das entspannte Gas gezählt wird',
      pg: 'Betriebsdruck der US-Regel',
    },
    conditions: [
      'der Handel zählt nach dem Messgerät und dem idealen Gas; nach dem Realgas gezählt braucht es bei 3000 psi 3 % mehr Wasser',
    ],
    errors: ['Absolutdruck statt Überdruck'],
    place: 'Handelsgrößen aus Katalogen',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
