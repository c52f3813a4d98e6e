import type { CardTexts } from '../../course/index.ts'

/** The cards of uncertainty compared in German. */
export const uncertaintyComparedTexts = {
  'uncertainty-of-difference': {
    title: 'Unsicherheit des Unterschieds zweier Ablesungen eines Messgeräts',
    symbols: {
      u: 'Standardunsicherheit des Unterschieds',
      u1: 'Standardunsicherheit der ersten Ablesung',
      u2: 'Standardunsicherheit der zweiten Ablesung',
      r: 'Korrelation ihrer Abweichungen',
    },
    conditions: [
      'kleine Abweichungen',
      'zwei Ablesungen eines Messgeräts weichen gemeinsam ab: Ihre Korrelation ist nahe 1',
    ],
    errors: ['Die beiden Ablesungen für unabhängig gehalten', 'Die beiden Unsicherheiten addiert'],
    place: '5.2.2',
  },
  agreement: {
    title: 'Ob zwei Ergebnisse innerhalb ihrer Unsicherheiten übereinstimmen',
    symbols: {
      E: 'Abstand durch kombinierte Unsicherheit: über 1 widersprechen sie sich',
      x1: 'erstes Ergebnis',
      x2: 'zweites Ergebnis',
      U1: 'erweiterte Messunsicherheit des ersten',
      U2: 'erweiterte Messunsicherheit des zweiten',
    },
    conditions: ['unabhängige Ergebnisse, beide mit derselben Überdeckung angegeben'],
    errors: ['Die Unsicherheiten addiert statt ihre Quadrate'],
    place: 'Vergleich von Messungen',
  },
  'sampling-loss': {
    title: 'Anteil der Arbeit, den ein abgetasteter Atemzug behält',
    symbols: { f: 'Arbeit des Vielecks durch die der Ellipse', N: 'Abtastwerte eines Atemzugs', pi: 'die Zahl π' },
    conditions: ['ein sinusförmiger Atemzug, in gleichen Zeitabständen abgetastet'],
    place: 'Vieleck in einer Ellipse',
  },
  'work-noise': {
    title: 'Was ein Rauschen des Drucks mit der Arbeit je Liter eines Atemzugs macht',
    symbols: {
      u: 'Standardunsicherheit der Arbeit je Liter',
      s: 'Standardabweichung eines Druckwerts',
      N: 'Abtastwerte eines Atemzugs',
      pi: 'die Zahl π',
    },
    conditions: [
      'ein sinusförmiger Atemzug, in gleichen Zeitabständen abgetastet',
      'Rauschen, das von Wert zu Wert unabhängig ist',
    ],
    errors: ['Das Rauschen eines Werts für das der Arbeit gehalten: Eine Schleife mittelt über ihre Werte'],
    place: 'Rauschen durch die Summe über eine Schleife',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
