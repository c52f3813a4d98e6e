import type { CardTexts } from '../../course/index.ts'

/** The cards of buoyancy in German. */
export const buoyancyTexts = {
  'net-buoyancy': {
    title: 'Der Auftrieb ist das Gewicht des verdrängten Wassers abzüglich des Gewichts des Gegenstands',
    symbols: {
      F: 'Auftrieb, nach oben',
      V: 'verdrängtes Volumen mitsamt den Wänden',
      rho: 'Dichte des Wassers',
      m: 'Masse in Luft',
      g: 'Fallbeschleunigung',
    },
    conditions: ['der Gegenstand behält sein Volumen', 'in Luft gewogen, deren eigener Auftrieb vernachlässigt ist'],
    errors: ['Dichte von Süßwasser eingesetzt, 1000 kg/m³', 'Dichte von Meerwasser eingesetzt, 1025 kg/m³'],
  },
  'gas-fraction-of-foam': {
    title: 'Wie viel eines Schaumstoffs Gas ist',
    symbols: { x: 'Gasanteil am Volumen', rf: 'Dichte des Schaumstoffs', rr: 'Dichte seines Gummis' },
    conditions: ['das Gas wiegt neben dem Gummi nichts'],
  },
  'foam-volume': {
    title: 'Das Gas eines Schaumstoffanzugs schrumpft nach dem Gesetz von Boyle, sein Gummi bleibt',
    symbols: {
      V: 'Volumen des Schaumstoffs bei dem Druck',
      V0: 'Volumen des Schaumstoffs an der Oberfläche',
      x: 'Gasanteil am Volumen',
      p0: 'Absolutdruck an der Oberfläche',
      p: 'Absolutdruck um den Anzug',
    },
    conditions: [
      'das Gummi leistet keinen Widerstand: Wirkliche Anzüge schrumpfen weniger',
      'der Anzug hatte Zeit, dem Druck zu folgen',
    ],
    errors: ['Überdruck für Absolutdruck gehalten'],
  },
  'unfilled-dry-suit': {
    title: 'Auftrieb, der einem Trockentauchanzug ohne Nachfüllen bleibt',
    symbols: {
      F: 'Auftrieb des Gases im Anzug',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
      V0: 'Gas im Anzug am Anfang',
      p0: 'Absolutdruck am Anfang',
      p: 'Absolutdruck um den Anzug',
    },
    conditions: ['kein Gas zugeführt, keines abgelassen', 'gleiche Temperatur'],
    errors: ['Überdruck für Absolutdruck gehalten'],
  },
  'body-volume': {
    title: 'Wasservolumen, das ein Körper verdrängt',
    symbols: {
      V: 'verdrängtes Volumen',
      m: 'Masse des Körpers',
      f: 'Massenanteil Fett',
      Vl: 'Gas in der Lunge',
      rf: 'Dichte von Fett',
      rl: 'Dichte alles Übrigen',
    },
    conditions: [
      'das Zweikomponentenmodell: Menschen weichen um mehrere Liter davon ab, und eine Probe im Wasser entscheidet',
    ],
    errors: ['Der Fettanteil in Prozent eingesetzt', 'Das Gas in der Lunge vergessen'],
    place: 'Zweikomponentenmodell',
  },
  'foam-conductivity': {
    title: 'Wärmeleitfähigkeit von Gummi mit Gaszellen, die einander nicht berühren',
    symbols: {
      k: 'Wärmeleitfähigkeit des Schaumstoffs',
      kr: 'Wärmeleitfähigkeit des Gummis',
      kg: 'Wärmeleitfähigkeit des Gases',
      x: 'Volumenanteil Gas',
    },
    conditions: [
      'Zellen, die einander nicht berühren: die höchste Leitfähigkeit, die ein gleichmäßiger Schaumstoff haben kann',
    ],
    errors: [
      'Der Gasanteil in Prozent eingesetzt',
      'Das Mittel nach Volumen genommen, als lägen Gummi und Gas nebeneinander',
    ],
    place: 'Regel von Maxwell und Eucken (aus dem Gedächtnis)',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
