import type { CardTexts } from '../../course/index.ts'

/** The cards of charging in German. */
export const chargingTexts = {
  'stage-discharge-temperature': {
    title: 'Temperatur nach einer Verdichterstufe, ideales Gas',
    symbols: {
      T2: 'Temperatur nach der Stufe',
      T1: 'Temperatur vor der Stufe',
      p2: 'Absolutdruck nach der Stufe',
      p1: 'Absolutdruck vor der Stufe',
      n: 'Exponent der Verdichtung',
    },
    conditions: [
      'ideales Gas entlang eines Exponenten',
      'eine Stufe, kein Gas, das zurückströmt und noch einmal verdichtet wird',
    ],
    errors: ['Die Temperatur in Grad Celsius eingesetzt', 'Den Überdruck nach der Stufe für Absolutdruck gehalten'],
  },
  'best-interstage-pressure': {
    title: 'Günstigster Druck zwischen zwei Stufen, ideales Gas',
    symbols: {
      pi: 'Absolutdruck zwischen den Stufen',
      p1: 'Absolutdruck vor der ersten Stufe',
      p2: 'Absolutdruck nach der zweiten Stufe',
    },
    conditions: ['ideales Gas', 'der Kühler bringt das Gas auf die Temperatur vor der ersten Stufe zurück'],
    errors: ['Das Mittel der beiden Drücke genommen: Gleich sollen die Verhältnisse sein, nicht die Schritte'],
  },
  'stages-needed': {
    title: 'Stufenzahl, die jede Stufe unter einem Druckverhältnis hält',
    symbols: {
      z: 'Zahl der Stufen',
      r: 'Enddruck durch Ansaugdruck, beide absolut',
      rs: 'höchstes Druckverhältnis einer Stufe',
      next: 'die Zahl, auf eine ganze aufgerundet',
    },
    conditions: [
      'gleiche Verhältnisse, vollkommene Kühler, ideales Gas',
      'aufgerundet: Zur nächsten ganzen Zahl gerundet, wäre die Grenze verletzt',
    ],
    errors: ['Das ganze Verhältnis durch das einer Stufe geteilt: Verhältnisse werden multipliziert'],
  },
  'volumetric-efficiency': {
    title: 'Liefergrad einer Stufe nach ihrem Schadraum',
    symbols: {
      eta: 'Anteil des Hubvolumens, der frisches Gas ansaugt',
      c: 'Schadraum durch Hubvolumen',
      r: 'Druckverhältnis der Stufe',
      n: 'Exponent der Expansion',
    },
    conditions: [
      'nur der Schadraum: Drosselung, warme Wände und Lecks kosten mehr',
      'ideales Gas entlang eines Exponenten',
    ],
    errors: [
      'Das Gas im Schadraum nach dem Gesetz von Boyle entspannt, ohne seinen Exponenten',
      'Den Schadraum in Prozent eingesetzt',
    ],
  },
  'filling-rate': {
    title: 'Fülleistung nach der Uhr',
    symbols: {
      q: 'Fülleistung',
      V: 'Innenvolumen der Flasche',
      p1: 'Druck am Anfang',
      p2: 'Druck am Ende, abgekühlt',
      pu: 'Druck, in dem der Anstieg gezählt wird',
      t: 'Zeit des Füllvorgangs',
    },
    conditions: [
      'beide Drücke absolut oder beide als Überdruck, auf eine Temperatur abgekühlt',
      'kein entspanntes Gas: Das Gas ist nicht ideal',
    ],
  },
  'free-air-of-filling-rate': {
    title: 'Volumenstrom hinter einer Fülleistung, ideales Gas',
    symbols: {
      qf: 'Volumenstrom der angesaugten Luft',
      q: 'Fülleistung',
      pu: 'Druck, in dem der Anstieg gezählt wurde',
      p0: 'Druck der angesaugten Luft, absolut',
      T0: 'Temperatur der angesaugten Luft',
      T: 'Temperatur in der Flasche, abgekühlt',
    },
    conditions: [
      'ideales Gas, trocken: Zwischen 100 und 300 bar nimmt eine Flasche ein Sechstel weniger auf',
      'eine Temperatur vor und nach dem Füllen',
    ],
    errors: ['Die beiden Angaben für eine gehalten', 'Temperaturen in Grad Celsius eingesetzt'],
  },
  condensate: {
    title: 'Nach der Verdichtung abgelassenes Wasser, ideales Gas',
    symbols: {
      w: 'in einer Zeit abgelassenes Wasser',
      q: 'Volumenstrom feuchter Luft an der Ansaugung',
      phi: 'relative Luftfeuchte an der Ansaugung',
      p0: 'Absolutdruck an der Ansaugung',
      T0: 'Temperatur an der Ansaugung',
      p: 'Absolutdruck im Abscheider',
      T: 'Temperatur des Gases im Abscheider',
      M: 'molare Masse von Wasser',
      R: 'universelle Gaskonstante',
      e: 'Dampfdruck von Wasser',
    },
    conditions: [
      'ideales Gas ohne Erhöhungsfaktor: Bei 300 bar hält Luft doppelt so viel Dampf, wie hier herauskommt',
      'der Abscheider hält alle Flüssigkeit zurück, und es gibt welche',
    ],
    errors: [
      'Die relative Luftfeuchte in Prozent eingesetzt',
      'Allen angesaugten Dampf als abgelassen gezählt: Die Luft verlässt den Abscheider gesättigt',
    ],
  },
  'trace-concentration': {
    title: 'Masse einer Verunreinigung in einem Volumen entspannten Gases',
    symbols: {
      c: 'Masse je Volumen entspannten Gases',
      x: 'Stoffmengenanteil der Verunreinigung',
      M: 'molare Masse der Verunreinigung',
      p: 'Druck, für den das Volumen angegeben ist',
      T: 'Temperatur, für die das Volumen angegeben ist',
      R: 'universelle Gaskonstante',
    },
    conditions: [
      'ideales Gas',
      'der Zustand des Kubikmeters, wie ihn die Regel nennt: Zwischen 15 und 25 °C sind es 3,5 Prozent',
    ],
    errors: ['Die Temperatur in Grad Celsius eingesetzt'],
  },
  'contaminant-at-depth': {
    title: 'Eine Verunreinigung in der Tiefe, wie sie an der Oberfläche wirken würde',
    symbols: {
      xs: 'Anteil, der an der Oberfläche ebenso wirken würde',
      x: 'Stoffmengenanteil der Verunreinigung',
      p: 'Absolutdruck um den Taucher',
      p0: 'Absolutdruck an der Oberfläche',
    },
    conditions: ['die Wirkung folgt dem Partialdruck'],
    errors: ['Den Überdruck des Wassers für Absolutdruck gehalten'],
  },
  'booster-stroke': {
    title: 'Gas, das ein Druckerhöher mit einem Hub fördert',
    symbols: {
      G: 'Gas eines Hubs',
      Vs: 'Hubvolumen des Gaskolbens',
      ps: 'Absolutdruck der Versorgung',
      pd: 'Absolutdruck der Förderung',
      c: 'Schadraum durch Hubvolumen',
      n: 'Exponent der Expansion',
    },
    conditions: [
      'der Antrieb hält den Förderdruck',
      'Druck mal Volumen auf der Saugseite: Keine Zustandsgleichung geht ein',
    ],
    errors: ['Den Schadraum vergessen: Nahe dem Stillstand nimmt er den ganzen Hub'],
  },
} as const satisfies Readonly<Record<string, CardTexts>>
