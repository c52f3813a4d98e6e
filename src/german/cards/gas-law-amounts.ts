import type { CardTexts } from '../../course/index.ts'

/** The cards of gas law amounts in German. */
export const gasLawAmountsTexts = {
  'amount-of-gas': {
    title: 'Stoffmenge der Luft in einer Flasche, Realgas',
    symbols: {
      n: 'Stoffmenge der Luft',
      V: 'Innenvolumen',
      p: 'Absolutdruck in der Flasche',
      T: 'Temperatur des Gases',
      R: 'Gaskonstante der Zustandsgleichung',
      Z: 'Realgasfaktor der Luft in der Flasche, nach GERG-2008',
    },
    conditions: ['trockene Luft', 'die Wände geben nicht nach'],
    errors: [
      'Die Anzeige des Messgeräts für den Absolutdruck gehalten',
      'Die Temperatur in Grad Celsius eingesetzt',
      'Das Gas für ideal gehalten: Z vergessen',
    ],
    place: 'Dichte',
  },
  'mass-of-gas': {
    title: 'Masse der Luft in einer Flasche, Realgas',
    symbols: {
      m: 'Masse der Luft',
      M: 'molare Masse trockener Luft',
      V: 'Innenvolumen',
      p: 'Absolutdruck in der Flasche',
      T: 'Temperatur des Gases',
      R: 'Gaskonstante der Zustandsgleichung',
      Z: 'Realgasfaktor der Luft in der Flasche, nach GERG-2008',
    },
    conditions: ['trockene Luft', 'die Wände geben nicht nach'],
    errors: [
      'Die Anzeige des Messgeräts für den Absolutdruck gehalten',
      'Die Temperatur in Grad Celsius eingesetzt',
      'Das Gas für ideal gehalten: Z vergessen',
    ],
    place: 'Dichte und molare Massen',
  },
  'free-gas-of-amount': {
    title: 'Entspanntes Gas einer Stoffmenge Luft',
    symbols: {
      V0: 'entspanntes Gas im Bezugszustand',
      n: 'Stoffmenge der Luft',
      p0: 'Druck des Bezugszustands',
      T0: 'Temperatur des Bezugszustands',
      R: 'Gaskonstante der Zustandsgleichung',
      Z0: 'Realgasfaktor der Luft im Bezugszustand',
    },
    conditions: [
      'trockene Luft in einem trockenen Bezugszustand: Ein Liter entspanntes Gas sagt nichts, solange Druck und Temperatur nicht angegeben sind',
    ],
    errors: ['Die Temperatur in Grad Celsius eingesetzt', 'Ein Überdruck für den Druck des Bezugszustands gehalten'],
    place: 'Dichte',
  },
  'pressure-at-gas-density': {
    title: 'Druck, bei dem geatmete Luft eine Dichte erreicht, ideales Gas',
    symbols: {
      p: 'Absolutdruck um den Taucher',
      rho: 'Dichte des Gases',
      M: 'molare Masse trockener Luft',
      T: 'Temperatur des Gases',
      R: 'Gaskonstante der Zustandsgleichung',
    },
    conditions: ['trockene Luft, ideal: Das Realgas liegt bei Atemdrücken innerhalb eines Hundertstels'],
    errors: ['Die Temperatur in Grad Celsius eingesetzt'],
    place: 'molare Massen und Gaskonstante',
  },
  'molar-mass-of-mixture': {
    title: 'Molare Masse eines Gemischs aus Sauerstoff, Helium und Stickstoff',
    symbols: {
      M: 'molare Masse des Gemischs',
      x: 'Sauerstoffanteil',
      y: 'Heliumanteil',
      Mo: 'molare Masse von Sauerstoff',
      Mh: 'molare Masse von Helium',
      Mn: 'molare Masse von Stickstoff',
    },
    conditions: ['nur Sauerstoff, Helium und Stickstoff, sonst nichts'],
    errors: [
      'Prozent für den Anteil gehalten',
      'Helium in der Bilanz vergessen: der ganze Rest für Stickstoff gehalten',
    ],
    place: 'molare Massen',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
