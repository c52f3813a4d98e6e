import type { CardTexts } from '../../course/index.ts'

/** The cards of charging compressor in German. */
export const chargingCompressorTexts = {
  'stall-ratio': {
    title: 'Druckverhältnis, bei dem eine Verdichterstufe nicht mehr fördert',
    symbols: {
      r: 'Enddruck durch Ansaugdruck der Stufe, beide absolut',
      c: 'Schadraum durch Hubvolumen',
      n: 'Exponent der Expansion',
    },
    conditions: ['das Gas im Schadraum entspannt sich entlang eines Exponenten', 'kein Leck an Ventilen und Ringen'],
    errors: ['Den Schadraum in Prozent eingesetzt', 'Den Exponenten vergessen'],
    place: 'Liefergrad 0',
  },
  'shaft-power': {
    title: 'Wellenleistung eines Luftverdichters',
    symbols: {
      P: 'Leistung an der Welle',
      m: 'Masse der Luft je Zeit',
      w: 'Arbeit aller Stufen je Mol',
      M: 'molare Masse trockener Luft',
      eta: 'mechanischer Wirkungsgrad',
    },
    conditions: ['trockene Luft', 'der Motor muss mehr leisten: Seine Verluste und die des Riemens kommen hinzu'],
    errors: [
      'Den Wirkungsgrad in Prozent eingesetzt',
      'Mit dem Wirkungsgrad multipliziert: Die Welle muss mehr abgeben, als das Gas aufnimmt',
    ],
    place: 'Arbeit je Zeit',
  },
  'drain-interval': {
    title: 'Laufzeit, nach der ein Abscheider voll ist',
    symbols: {
      t: 'Laufzeit',
      V: 'Flüssigkeit, die der Abscheider fassen darf',
      T: 'Temperatur des Abscheiders',
      m: 'Wasser, das sich je Zeit abscheidet',
      rhow: 'Dichte des Wassers',
    },
    conditions: ['der Abscheider nimmt alles heraus, was sich abscheidet, und ist am Anfang leer'],
    errors: ['Wasser je Stunde geteilt, als wäre es je Minute'],
    place: 'Wasserbilanz',
  },
  'cartridge-load': {
    title: 'Wasser, das in eine Filterpatrone gelangt, ideales Gas',
    symbols: {
      m: 'Wasser je Zeit',
      q: 'Liefermenge',
      p0: 'Druck, für den die Liefermenge angegeben ist',
      T0: 'Temperatur, für die die Liefermenge angegeben ist',
      p: 'Absolutdruck im letzten Abscheider',
      T: 'Temperatur der Luft, die ihn verlässt',
      M: 'molare Masse von Wasser',
      R: 'Gaskonstante der Zustandsgleichung',
      es: 'Sättigungsdruck von Wasser',
    },
    conditions: [
      'die Luft verlässt den Abscheider gesättigt',
      'ideales Gas: Verdichtete Luft nimmt mehr Dampf auf, als der Sättigungsdruck allein zulässt, bei 200 bar und 20 °C das 1,8-Fache',
    ],
    errors: [
      'Die Bezugstemperatur in Grad Celsius eingesetzt',
      'Das angesaugte Wasser gezählt: Das meiste davon ist in den Abscheidern geblieben',
    ],
    place: 'Wasser je Mol Luft',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
