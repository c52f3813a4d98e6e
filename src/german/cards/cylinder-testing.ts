import type { CardTexts } from '../../course/index.ts'

/** The cards of cylinder testing in German. */
export const cylinderTestingTexts = {
  'wall-stress': {
    title: 'Wandspannung einer Flasche bei Prüfdruck',
    symbols: { S: 'Spannung in der Wand', pt: 'Prüfdruck, Überdruck', D: 'Außendurchmesser', t: 'Wanddicke' },
    conditions: [
      'eine nahtlose Stahlflasche mit überall gleicher Wanddicke',
      'fern von Flaschenschulter und Flaschenboden',
    ],
    errors: ['Mit der Kesselformel für dünne Wände gerechnet', 'Radius und Durchmesser verwechselt'],
    place: 'Formel der Wandspannung',
  },
  'longitudinal-stress': {
    title: 'Längsspannung einer Flasche bei Prüfdruck',
    symbols: {
      S: 'Spannung in Längsrichtung der Flasche',
      pt: 'Prüfdruck, Überdruck',
      D: 'Außendurchmesser',
      t: 'Wanddicke',
    },
    conditions: ['geschlossene Enden', 'fern von Flaschenschulter und Flaschenboden'],
    errors: ['Radius und Durchmesser verwechselt'],
    place: 'Absatz (a)(2)(iii)',
  },
  'minimum-wall-for-stress': {
    title: 'Dünnste Wand für eine Spannung bei Prüfdruck',
    symbols: { t: 'Wanddicke', D: 'Außendurchmesser', S: 'erlaubte Spannung', pt: 'Prüfdruck, Überdruck' },
    conditions: ['die Regel der Wandspannung, nach der Wanddicke aufgelöst'],
    errors: ['Radius und Durchmesser verwechselt'],
    place: 'Umformung der Formel von cfr-49-178-46',
  },
  'bending-stress': {
    title: 'Biegespannung einer gefüllten Flasche auf zwei Auflagern',
    symbols: {
      S: 'Biegespannung',
      W: 'Gewicht der gefüllten Flasche',
      L: 'Abstand der Auflager',
      D: 'Außendurchmesser',
      t: 'Wanddicke',
      k: 'π/64, wie die Regel es druckt',
    },
    conditions: ['das Gewicht ist über die Länge verteilt'],
    errors: ['Radius und Durchmesser verwechselt'],
    place: 'Absatz (a)(2)(ii)',
  },
  'average-wall-stress': {
    title: 'Mittlere Wandspannung aus der elastischen Dehnung',
    symbols: {
      S: 'mittlere Wandspannung',
      EE: 'elastische Dehnung bei Prüfdruck',
      k: 'elastische Weitung der Flasche für den genannten Druck, als Anteil',
      pk: 'Druck, für den die Weitung angegeben ist',
      V: 'Innenvolumen',
      pt: 'Prüfdruck, Überdruck',
    },
    conditions: ['Stahl', 'die Weitung mit dem Druck angegeben, zu dem sie gehört'],
    place: 'Absatz (b)(3)(i)(A)',
  },
  'water-compression': {
    title: 'Volumen, um das das Wasser einer Prüfung nachgibt',
    symbols: {
      dV: 'vom Wasser verlorenes Volumen',
      m: 'Masse des Wassers',
      r1: 'Dichte des Wassers bei Umgebungsdruck',
      r2: 'Dichte des Wassers bei Prüfdruck',
    },
    conditions: ['keine Luft im Wasser und in den Leitungen', 'eine Temperatur'],
    place: 'Masse durch Dichte bei beiden Drücken',
  },
  'total-expansion': {
    title: 'Gesamtdehnung nach dem direkten Verfahren',
    symbols: {
      TE: 'Gesamtdehnung',
      Vf: 'hineingepresstes Wasser',
      m: 'Masse des Wassers',
      r1: 'Dichte des Wassers bei Umgebungsdruck',
      r2: 'Dichte des Wassers bei Prüfdruck',
    },
    conditions: ['keine Luft im Wasser und in den Leitungen', 'die Prüfung ohne Wassermantel'],
    errors: ['Die Zusammendrückung des Wassers vergessen'],
    place: 'direkte Dehnungsmessung',
  },
  'permanent-expansion': {
    title: 'Bleibende Dehnung nach dem direkten Verfahren',
    symbols: { PE: 'bleibende Dehnung', Vf: 'hineingepresstes Wasser', Vr: 'zurückgekommenes Wasser' },
    conditions: ['beide Ablesungen bei Umgebungsdruck'],
    place: 'direkte Dehnungsmessung',
  },
  'water-volume': {
    title: 'Innenvolumen aus der Masse des Wassers, das es füllt',
    symbols: { V: 'Innenvolumen', m: 'Masse des Wassers', rho: 'Dichte des Wassers' },
    conditions: ['Wasser ohne Luftblasen'],
    errors: ['Dichte von Meerwasser eingesetzt, 1025 kg/m³'],
    place: 'Masse durch Dichte',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
