import type { CardTexts } from '../../course/index.ts'

/** The cards of uncertainty in German. */
export const uncertaintyTexts = {
  'rectangular-distribution': {
    title: 'Jeder Wert zwischen den Grenzen gleich wahrscheinlich: die halbe Breite durch die Wurzel aus drei',
    symbols: { u: 'Standardunsicherheit', a: 'halbe Breite des Intervalls' },
    conditions: ['Grenzen angegeben, sonst nichts bekannt'],
    errors: ['Die halbe Breite für die Standardunsicherheit gehalten'],
    place: '4.3.7',
  },
  'triangular-distribution': {
    title: 'Werte nahe der Mitte wahrscheinlicher: die halbe Breite durch die Wurzel aus sechs',
    symbols: { u: 'Standardunsicherheit', a: 'halbe Breite des Intervalls' },
    conditions: ['Grenzen angegeben, die Mitte wahrscheinlicher'],
    errors: ['Die halbe Breite für die Standardunsicherheit gehalten'],
    place: '4.3.9',
  },
  'arcsine-distribution': {
    title: 'Eine Schwingung zwischen zwei Grenzen: die halbe Breite durch die Wurzel aus zwei',
    symbols: { u: 'Standardunsicherheit', a: 'halbe Breite des Intervalls' },
    conditions: ['eine sinusförmige Schwingung'],
    errors: ['Die halbe Breite für die Standardunsicherheit gehalten'],
    place: '6.4.6',
  },
  'from-resolution': {
    title: 'Unsicherheit einer Anzeige, die auf ihren Schritt rundet',
    symbols: { u: 'Standardunsicherheit', s: 'Schritt der Anzeige' },
    conditions: ['die Anzeige rundet; eine, die abschneidet, weicht um einen halben Schritt mehr ab'],
    errors: ['Den ganzen Schritt für die halbe Breite gehalten'],
    place: 'F.2.2.1',
  },
  'maximum-permissible-error': {
    title: 'Größte Abweichung, die die Klasse eines Messgeräts erlaubt',
    symbols: {
      e: 'größte Abweichung',
      c: 'Klasse des Messgeräts, als Anteil der Messspanne',
      p: 'oberes Ende der Skale',
    },
    conditions: ['überall auf der Skale gleich', 'bei der Bezugstemperatur'],
    errors: ['Prozent für den Anteil gehalten'],
    place: 'Genauigkeitsklassen',
  },
  'from-gauge-class': {
    title: 'Standardunsicherheit aus der Klasse eines Messgeräts',
    symbols: {
      u: 'Standardunsicherheit',
      c: 'Klasse des Messgeräts, als Anteil der Messspanne',
      p: 'oberes Ende der Skale',
    },
    conditions: ['ein Messgerät innerhalb seiner Klasse', 'bei der Bezugstemperatur'],
    errors: ['Prozent für den Anteil gehalten'],
    place: 'Genauigkeitsklassen',
  },
  'quantization-step': {
    title: 'Kleinster Schritt eines Wandlers',
    symbols: { s: 'Schritt des Wandlers', r: 'Messbereich des Wandlers', n: 'Zahl der Bits' },
    conditions: ['ein idealer Wandler über seinen ganzen Bereich'],
  },
  'slope-uncertainty': {
    title: 'Unsicherheit einer Geschwindigkeit aus zehn gleichmäßigen Tiefenablesungen',
    symbols: {
      uv: 'Standardunsicherheit der Geschwindigkeit',
      u: 'Standardunsicherheit einer Ablesung',
      t: 'Zeit von einer Ablesung zur nächsten',
      n: 'Zahl der Ablesungen',
    },
    conditions: ['unabhängiges Rauschen der Ablesungen', 'ein gemeinsamer Versatz hebt sich auf'],
    place: 'Steigung der kleinsten Quadrate, weißes Rauschen',
  },
  'effective-degrees-of-freedom': {
    title: 'Welch und Satterthwaite: Freiheitsgrade einer Summe mit einem beobachteten Teil',
    symbols: {
      ne: 'effektive Freiheitsgrade',
      n1: 'Freiheitsgrade des beobachteten Teils',
      uc: 'kombinierte Standardunsicherheit',
      u1: 'Standardunsicherheit des beobachteten Teils',
    },
    conditions: ['ein Teil beobachtet, die anderen angegeben', 'unabhängige Teile, in der Einheit des Ergebnisses'],
    place: 'G.4.1',
  },
  'expanded-uncertainty': {
    title: 'Die erweiterte Messunsicherheit ist die Standardunsicherheit mal dem Erweiterungsfaktor',
    symbols: {
      U: 'erweiterte Messunsicherheit',
      n: 'Freiheitsgrade',
      P: 'Wahrscheinlichkeit des Intervalls',
      u: 'Standardunsicherheit',
      k: 'Erweiterungsfaktor',
    },
    conditions: ['das Ergebnis folgt der Studentschen t-Verteilung'],
    errors: ['Ein Erweiterungsfaktor von 2 bei jedem Freiheitsgrad'],
    place: '6.2 und G.6.4',
  },
  'mean-interval': {
    title: 'Halbe Breite des Intervalls eines Mittelwerts',
    symbols: {
      h: 'halbe Breite des Intervalls',
      n: 'Freiheitsgrade',
      P: 'Wahrscheinlichkeit des Intervalls',
      u: 'Standardunsicherheit des Mittelwerts',
      k: 'Erweiterungsfaktor',
    },
    conditions: ['normalverteilte Ablesungen'],
    place: 'G.3',
  },
  'upper-prediction-bound': {
    title: 'Worunter die nächste Ablesung bleibt',
    symbols: {
      b: 'Grenze der nächsten Ablesung',
      m: 'Mittelwert der Ablesungen',
      n: 'Freiheitsgrade',
      P: 'Wahrscheinlichkeit des Intervalls',
      s: 'Standardabweichung einer Ablesung',
      N: 'Zahl der Ablesungen',
      k: 'Erweiterungsfaktor',
    },
    conditions: ['normalverteilte, unabhängige Ablesungen', 'einseitig'],
    errors: ['Das Intervall des Mittelwerts für das der nächsten Ablesung gehalten'],
    place: 'normalverteilte Ablesungen',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
