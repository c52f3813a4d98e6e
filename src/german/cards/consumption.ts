import type { CardTexts } from '../../course/index.ts'

/** The cards of consumption in German. */
export const consumptionTexts = {
  'gas-breathed': {
    title: 'In einer Tiefe geatmetes Gas',
    symbols: {
      G: 'geatmetes Produkt aus Druck und Volumen',
      VE: 'Atemminutenvolumen',
      pa: 'Absolutdruck um den Taucher',
      t: 'Zeit',
    },
    conditions: [
      'eine Tiefe, ein Verbrauch',
      'gezählt als Druck mal Volumen am Taucher: Keine Zustandsgleichung geht ein',
    ],
  },
  'respiratory-minute-volume-from-drop': {
    title: 'Atemminutenvolumen aus einem Druckabfall, ideales Gas',
    symbols: {
      VE: 'Atemminutenvolumen',
      V: 'Innenvolumen',
      p1: 'Absolutdruck in der Flasche vorher',
      p2: 'Absolutdruck in der Flasche nachher',
      pa: 'Absolutdruck um den Taucher',
      t: 'Zeit zwischen den Ablesungen',
    },
    conditions: [
      'ideales Gas: Zwischen 300 und 200 bar Luft gibt es etwa 30 Prozent zu viel an',
      'gleiche Temperatur bei beiden Ablesungen',
      'beide Drücke absolut oder beide als Überdruck',
    ],
  },
  endurance: {
    title: 'Wie lange das Gas in einer Tiefe reicht, ideales Gas',
    symbols: {
      t: 'Zeit, bis der Restdruck erreicht ist',
      V: 'Innenvolumen',
      p: 'Absolutdruck in der Flasche',
      pr: 'Absolutdruck, der erhalten bleibt',
      VE: 'Atemminutenvolumen',
      pa: 'Absolutdruck um den Taucher',
    },
    conditions: ['ideales Gas', 'eine Tiefe, ein Verbrauch, eine Temperatur'],
  },
  'turn-pressure': {
    title: 'Umkehrdruck nach einem Anteil des nutzbaren Gases, ideales Gas',
    symbols: {
      pt: 'Absolutdruck, bei dem umzukehren ist',
      p: 'Absolutdruck am Anfang',
      f: 'Anteil des nutzbaren Gases für den Hinweg',
      pr: 'Absolutdruck, der erhalten bleibt',
    },
    conditions: ['ideales Gas', 'ein Taucher, oder gleiche Flaschen und gleicher Verbrauch'],
  },
} as const satisfies Readonly<Record<string, CardTexts>>
