import type { CardTexts } from '../../course/index.ts'

/** The cards of gas law mixtures in German. */
export const gasLawMixturesTexts = {
  'van-der-waals': {
    title: 'Stickstoff nach van der Waals: Moleküle brauchen Platz und ziehen sich an',
    symbols: {
      p: 'Absolutdruck',
      n: 'molare Dichte',
      R: 'universelle Gaskonstante',
      T: 'Temperatur des Gases',
      nm: 'molare Dichte der dichtesten Packung',
      pull: 'Anziehung der Moleküle, 1,39 L²·atm/mol² mal dem Quadrat der molaren Dichte',
    },
    conditions: ['Stickstoff, Konstanten wie in Büchern gedruckt', 'für die Richtung der Abweichung, nicht für Zahlen'],
    errors: ['Mit dem idealen Gasgesetz gerechnet, ohne Platz und Anziehung', 'Grad Celsius für Kelvin gehalten'],
    place: 'Abschnitt 9.6',
  },
  'moisture-concentration': {
    title: 'Masse des Wassers in einem Kubikmeter entspannten Gases',
    symbols: {
      c: 'Masse des Wassers je Volumen entspannten Gases',
      x: 'Stoffmengenanteil des Wassers',
      p: 'Absolutdruck des Bezugszustands',
      Mw: 'molare Masse von Wasser',
      R: 'universelle Gaskonstante',
      T: 'Temperatur des Bezugszustands',
    },
    conditions: ['ideales Gas im Bezugszustand', 'entspanntes Gas, nicht Gas unter Druck'],
    errors: ['Grad Celsius für Kelvin gehalten', 'Prozent für den Anteil gehalten'],
    place: 'ideales Gas',
  },
  'humidity-ratio': {
    title: 'Wasser je Kilogramm trockener Luft',
    symbols: {
      w: 'Wassergehalt, Masse Wasser je Masse trockener Luft',
      eps: 'molare Masse von Wasser durch die trockener Luft',
      x: 'Stoffmengenanteil des Wassers',
    },
    conditions: ['das andere Gas ist trockene Luft'],
    errors: ['Den Stoffmengenanteil für das Massenverhältnis gehalten', 'Prozent für den Anteil gehalten'],
    place: 'Kapitel 1, Gleichung 20',
  },
  'total-pressure': {
    title: 'Gesetz von Dalton: Partialdrücke addieren sich',
    symbols: {
      p: 'Absolutdruck des Gemischs',
      pO: 'Sauerstoffpartialdruck',
      pN: 'Stickstoffpartialdruck',
      pHe: 'Heliumpartialdruck',
    },
    conditions: ['ideales Gas', 'alle Gase des Gemischs gezählt'],
    place: 'Abschnitt 9.3',
  },
  'pressure-volume': {
    title: 'Barliter sind Druck mal Innenvolumen',
    symbols: { pV: 'Druck mal Volumen', p: 'Druck, oder sein Abfall', V: 'Innenvolumen' },
    conditions: ['Barliter entspannten Gases nur, wo das Gas ideal ist'],
  },
  'minimum-operating-depth': {
    title: 'Kleinste Tiefe für einen niedrigsten Sauerstoffpartialdruck',
    symbols: {
      d: 'kleinste Tiefe',
      pO2: 'niedrigster Sauerstoffpartialdruck, von der geltenden Regel genannt',
      x: 'Sauerstoffanteil des Gemischs',
      p0: 'Absolutdruck an der Oberfläche',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
    },
    conditions: ['Wasser von einer Dichte', 'die Grenze ist eine Regel der Ausbildung oder des Orts, keine der Physik'],
    errors: ['Der Druck an der Oberfläche vergessen', 'Prozent für den Anteil gehalten'],
    place: 'Abschnitt zu Dalton',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
