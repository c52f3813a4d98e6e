import type { CardTexts } from '../../course/index.ts'

/** The cards of buoyancy changes in German. */
export const buoyancyChangesTexts = {
  lift: {
    title: 'Der Auftrieb eines Volumens ist das Gewicht des verdrängten Wassers',
    symbols: {
      F: 'Auftrieb',
      V: 'Volumen des verdrängten Wassers',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
    },
    conditions: ['Wasser von einer Dichte'],
    errors: ['Dichte von Süßwasser eingesetzt, 1000 kg/m³'],
    place: 'Abschnitt 11.7',
  },
  'ballast-for-other-water': {
    title: 'Ballast, der für Wasser anderer Dichte hinzukommt',
    symbols: {
      m: 'zusätzlicher Ballast',
      V: 'verdrängtes Volumen',
      w1: 'Dichte des ersten Wassers',
      w2: 'Dichte des anderen Wassers',
    },
    conditions: [
      'das Volumen von Taucher und Ausrüstung bleibt gleich',
      'das Volumen des zusätzlichen Ballasts selbst vernachlässigt',
    ],
    place: 'Auftrieb in zwei Gewässern',
  },
  'bubble-head': {
    title: 'Die Höhe einer Gasblase drückt auf das Ventil über ihr',
    symbols: {
      dp: 'Druck des Gases über dem des Wassers am Ventil',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
      h: 'Höhe des Ventils über dem tiefsten Gas',
    },
    conditions: ['ruhendes Wasser'],
    errors: ['Dichte von Süßwasser eingesetzt, 1000 kg/m³'],
    place: 'Hydrostatik',
  },
  'vent-flow': {
    title: 'Beim Aufstieg abzulassendes Gas',
    symbols: {
      q: 'abzulassender Volumenstrom, in der Tiefe',
      v: 'Aufstiegsgeschwindigkeit',
      V: 'Volumen des Gases in der Tiefe',
      d: 'Tiefe',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
      p0: 'Absolutdruck an der Oberfläche',
    },
    conditions: ['ideales Gas bei einer Temperatur', 'das Volumen soll gleich bleiben'],
    errors: ['Der Druck an der Oberfläche vergessen'],
    place: 'Gesetz von Boyle entlang der Tiefe',
  },
  'lift-gain-per-metre': {
    title: 'Auftrieb, den eingeschlossenes Gas auf einem Meter Aufstieg gewinnt',
    symbols: {
      F: 'auf einem Meter gewonnener Auftrieb',
      V: 'Volumen des Gases in der Tiefe',
      d: 'Tiefe',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
      p0: 'Absolutdruck an der Oberfläche',
      L: 'Länge eines Meters',
    },
    conditions: ['ideales Gas bei einer Temperatur', 'die Steigung in der Tiefe: Über mehrere Meter wächst sie'],
    place: 'Gesetz von Boyle entlang der Tiefe',
  },
  'unvented-lift': {
    title: 'Auftrieb eines Gases, das mit hinaufgenommen und nicht abgelassen wird',
    symbols: {
      F: 'Auftrieb in der geringeren Tiefe',
      V: 'Volumen des Gases in der Tiefe',
      d: 'Tiefe, in der das Gas sein Volumen hat',
      to: 'geringere Tiefe',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
      p0: 'Absolutdruck an der Oberfläche',
    },
    conditions: ['ideales Gas bei einer Temperatur', 'Platz für das Gas, um zu wachsen'],
    errors: ['Das Gas sein Volumen behalten lassen'],
    place: 'Gesetz von Boyle',
  },
  'displaced-volume-from-weighing': {
    title: 'Verdrängtes Volumen, aus Wägung in Luft und im Wasser',
    symbols: {
      V: 'verdrängtes Volumen',
      ma: 'Anzeige in Luft',
      mw: 'Anzeige im Wasser',
      rw: 'Dichte des Wassers',
      ra: 'Dichte der Luft',
    },
    conditions: ['ganz im Wasser, keine Blasen daran'],
    errors: ['Dichte von Süßwasser eingesetzt, 1000 kg/m³'],
    place: 'Abschnitt 11.7',
  },
  'shift-for-trim': {
    title: 'Wie weit ein Gewicht zu verschieben ist, damit ein Taucher waagerecht liegt',
    symbols: {
      x: 'Weg, um den das Gewicht zu verschieben ist',
      M: 'Moment, das den Kopf hebt',
      W: 'Gewicht des Verschobenen im Wasser',
    },
    conditions: ['nur Kräfte entlang des Körpers'],
    place: 'Gleichgewicht der Momente',
  },
  'heat-loss': {
    title: 'Wärme durch einen Anzug: Fläche und Temperaturunterschied durch Wärmedämmung',
    symbols: {
      Q: 'durch den Anzug verlorene Wärme',
      A: 'Fläche der Haut unter dem Anzug',
      Ts: 'mittlere Temperatur der Haut',
      Tw: 'Temperatur des Wassers',
      I: 'Wärmedämmung von der Haut zum Wasser',
    },
    conditions: [
      'Beharrungszustand',
      'Schichten hintereinander: Ihre Wärmedämmung addiert sich',
      'die Atmung gesondert gezählt',
    ],
    place: 'Schichten hintereinander',
  },
  'gas-layer-insulation': {
    title: 'Wärmedämmung einer ruhenden Gasschicht',
    symbols: {
      I: 'Wärmedämmung der Schicht',
      s: 'Dicke der Schicht, wie getragen',
      p: 'Absolutdruck um den Taucher',
      T: 'mittlere Temperatur der Schicht',
      conductivity: 'Wärmeleitfähigkeit der Luft',
    },
    conditions: ['das Gas bewegt sich nicht'],
    place: 'Dicke durch Leitfähigkeit',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
