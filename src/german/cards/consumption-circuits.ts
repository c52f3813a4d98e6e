import type { CardTexts } from '../../course/index.ts'

/** The cards of consumption circuits in German. */
export const consumptionCircuitsTexts = {
  'semi-closed-oxygen': {
    title: 'Sauerstoff eines halbgeschlossenen Kreislaufs mit festem Massenstrom',
    symbols: {
      x: 'Sauerstoffanteil des Kreislaufs im Beharrungszustand',
      q: 'zugeführter Volumenstrom, STPD',
      xs: 'Sauerstoffanteil des zugeführten Gases',
      u: 'aufgenommener Sauerstoff, STPD',
    },
    conditions: ['Beharrungszustand eines gespülten Kreislaufs', 'Zufuhr und Aufnahme in einem Bezugszustand'],
    errors: ['Prozent für den Anteil gehalten', 'Den aufgenommenen Sauerstoff nicht vom Ausstrom abgezogen'],
    place: 'Gleichung',
  },
  'ventilation-for-uptake': {
    title: 'Ventilation aus dem aufgenommenen Sauerstoff',
    symbols: {
      VE: 'Atemminutenvolumen',
      k: 'geatmete Liter je Liter aufgenommenen Sauerstoffs',
      u: 'aufgenommener Sauerstoff, STPD',
    },
    conditions: ['gleichmäßige Arbeit'],
    place: 'Verhältnis',
  },
  'carbon-dioxide-output': {
    title: 'Abgegebenes Kohlendioxid, aus dem aufgenommenen Sauerstoff',
    symbols: {
      c: 'abgegebenes Kohlendioxid, STPD',
      k: 'respiratorischer Quotient',
      u: 'aufgenommener Sauerstoff, STPD',
    },
    conditions: ['gleichmäßige Arbeit'],
    place: 'Verhältnis',
  },
  'oxygen-endurance': {
    title: 'Wie lange eine Sauerstoffflasche einen Kreislauf speist, ideales Gas',
    symbols: {
      t: 'Zeit bis zum Restdruck',
      p: 'Absolutdruck der Flasche',
      pr: 'Restdruck, absolut',
      V: 'Innenvolumen der Flasche',
      T: 'Temperatur des Gases',
      T0: 'Temperatur von STPD',
      pn: 'Druck von STPD',
      u: 'aufgenommener Sauerstoff, STPD',
    },
    conditions: ['ideales Gas', 'Sauerstoff nur für das, was aufgenommen wird: nichts abgeblasen'],
    errors: ['Den Restdruck vergessen', 'Grad Celsius für Kelvin gehalten'],
    place: '17-4.1.1',
  },
  'handbook-capacity': {
    title: 'Inhalt nach dem Handbuch: Volumen mal absolute Atmosphären',
    symbols: {
      C: 'Inhalt, entspanntes Gas',
      V: 'Innenvolumen',
      pg: 'Überdruck',
      pa: 'Druck einer Atmosphäre, 14,7 psi',
    },
    conditions: ['ideales Gas', 'eine Atmosphäre von 14,7 psi, wie das Handbuch zählt'],
    errors: ['Überdruck für Absolutdruck gehalten'],
    place: '7-4.1',
  },
  'handbook-available-volume': {
    title: 'Verfügbares Gas nach dem Handbuch: was über dem Mindestdruck liegt',
    symbols: {
      C: 'verfügbares Volumen, entspanntes Gas',
      pg: 'Überdruck',
      pm: 'Mindestdruck, Überdruck',
      pa: 'Druck einer Atmosphäre, 14,7 psi',
      V: 'Innenvolumen',
      N: 'Zahl der Flaschen',
    },
    conditions: ['ideales Gas', 'eine Atmosphäre von 14,7 psi, wie das Handbuch zählt'],
    errors: ['Den Mindestdruck vergessen'],
    place: '8-2.2.1',
  },
  'relative-rate-uncertainty': {
    title: 'Relative Unsicherheit eines gemessenen Gasverbrauchs',
    symbols: {
      ur: 'relative Standardunsicherheit des Verbrauchs',
      u: 'Standardunsicherheit jeder Ablesung',
      dp: 'erste Ablesung minus zweite',
      uV: 'relative Standardunsicherheit des Innenvolumens',
      ut: 'relative Standardunsicherheit der Dauer',
      ua: 'relative Standardunsicherheit des Umgebungsdrucks',
    },
    conditions: ['die Ablesungen sind unabhängig; ein Versatz des Messgeräts hebt sich auf', 'ideales Gas'],
    errors: ['Die Unsicherheit einer Ablesung für die des Abfalls gezählt'],
    place: 'relative Varianzen addieren sich',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
