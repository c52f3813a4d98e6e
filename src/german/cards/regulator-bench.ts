import type { CardTexts } from '../../course/index.ts'

/** The cards of regulator bench in German. */
export const regulatorBenchTexts = {
  'effective-area': {
    title: 'Wirksame Fläche eines nicht kompensierten Kolbens',
    symbols: { A: 'wirksame Fläche', Ah: 'Fläche des Kolbenkopfs', As: 'Fläche des Schafts', Av: 'Fläche des Sitzes' },
    conditions: ['keine Reibung'],
    errors: ['Nur die Fläche des Kolbenkopfs genommen'],
    place: 'Gleichgewicht der Kräfte',
  },
  'sealed-chamber-pressure': {
    title: 'Eine verschlossene erste Stufe vervielfacht den Tiefendruck',
    symbols: {
      p: 'Mitteldruck über der Umgebung in der Tiefe',
      s: 'Mitteldruck an der Oberfläche',
      k: 'äußere Fläche durch innere',
      w: 'Druck des Wassers allein',
    },
    conditions: ['keine Reibung'],
    place: 'Unterschied zweier Kräftegleichgewichte',
  },
  'seat-leak': {
    title: 'Leck eines Sitzes aus dem Mitteldruckanstieg',
    symbols: {
      q: 'Leck, entspanntes Gas bei dem genannten Druck',
      V: 'Volumen, das das Leck füllt',
      dp: 'Anstieg des Drucks',
      t: 'Zeit, die er dauerte',
      p: 'Absolutdruck, für den das Leck angegeben ist',
    },
    conditions: ['ideales Gas bei einer Temperatur', 'währenddessen nichts geatmet'],
    errors: ['Minuten für Sekunden gehalten'],
    place: 'ideales Gas bei einer Temperatur',
  },
  'relief-area': {
    title: 'Querschnitt, der einen Schlauch entlastet, wenn die erste Stufe offen versagt',
    symbols: {
      A2: 'Querschnitt der Entlastung',
      A1: 'Querschnitt der offenen Düse',
      p1: 'absoluter Versorgungsdruck',
      p2: 'Absolutdruck, bei dem der Schlauch entlastet wird',
    },
    conditions: ['beide Düsen kritisch durchströmt', 'ein Gas bei einer Temperatur'],
    errors: ['Überdruck für Absolutdruck gehalten'],
    place: 'zwei kritisch durchströmte Düsen hintereinander',
  },
  preload: {
    title: 'Zug eines Gewindes aus seinem Anzugsmoment',
    symbols: {
      F: 'Zug des Gewindes',
      M: 'Anzugsmoment des Gewindes',
      k: 'Reibwert der Schraube, für das Schmiermittel angegeben',
      D: 'Durchmesser des Gewindes',
    },
    conditions: ['die Reibung streut den Zug um etwa 30 Prozent nach beiden Seiten'],
    errors: ['Radius und Durchmesser verwechselt'],
    place: 'Anzugsmoment, Reibwert, Durchmesser, Kraft',
  },
  'work-at-density': {
    title: 'Die Atemarbeit wächst mit der Dichte des Gases, bis auf einen festen Anteil',
    symbols: {
      W: 'Atemarbeit je Liter bei der anderen Dichte',
      W0: 'Atemarbeit je Liter, wie gemessen',
      c: 'Anteil, den die Dichte nicht ändert',
      r2: 'andere Dichte des Gases',
      r1: 'Dichte des Gases bei der Messung',
    },
    conditions: ['gleiche Ventilation', 'turbulente Strömung für den Anteil, der wächst'],
    errors: ['Die ganze Arbeit mit der Dichte wachsen lassen'],
    place: 'Widerstand nach Teilen',
  },
  'critical-pressure-ratio': {
    title: 'Druckverhältnis, unter dem eine Düse kritisch durchströmt wird',
    symbols: { b: 'kritisches Verhältnis, Druck dahinter durch Druck davor', k: 'Verhältnis der Wärmekapazitäten' },
    conditions: ['ideales Gas', 'Absolutdrücke'],
    place: 'isentrope Strömung eines idealen Gases',
  },
  'drift-error': {
    title: 'Die Drift eines Druckkanals zählt als Arbeit',
    symbols: {
      W: 'Abweichung der Arbeit je Liter',
      dp: 'Änderung des Nullpunkts',
      t: 'Zeit, in der die Änderung geschah',
      f: 'Atemfrequenz',
    },
    conditions: ['gleichmäßige Drift', 'sinusförmiger Atemzug'],
    place: 'Integral über eine geschlossene Schleife',
  },
  'lock-up': {
    title: 'Schließdruckdifferenz: wie weit der Mitteldruck in Ruhe über dem Öffnungsdruck liegt',
    symbols: {
      dp: 'Schließdruckdifferenz',
      F: 'Kraft, die den Sitz dicht macht',
      A: 'Fläche, auf die der Mitteldruck wirkt',
    },
    conditions: ['keine Reibung', 'in Ruhe: Die Schließdruckdifferenz sagt nichts über den Volumenstrom'],
    errors: ['Die Kraft durch die vierfache Fläche geteilt, einen Durchmesser für einen Radius genommen'],
    place: 'Gleichgewicht der Kräfte',
  },
  droop: {
    title: 'Druckabfall bei Entnahme: wie weit der Mitteldruck sinkt, wenn das Ventil offen steht',
    symbols: {
      dp: 'Absinken des Mitteldrucks',
      k: 'Steifigkeit der Feder',
      l: 'Hub des Ventils',
      A: 'Fläche, auf die der Mitteldruck wirkt',
    },
    conditions: ['keine Reibung', 'nur die Feder: Was die Strömung selbst am Ventil zieht, kommt hinzu'],
    errors: ['Die Fläche viermal zu groß genommen, einen Durchmesser für einen Radius'],
    place: 'Gleichgewicht der Kräfte',
  },
  'o-ring-squeeze': {
    title: 'Pressung eines O-Rings, der in seine Nut gedehnt ist',
    symbols: {
      s: 'Pressung der gedehnten Schnur',
      g: 'Tiefe des Einbauraums',
      d: 'Durchmesser der Schnur in Ruhe',
      D: 'Durchmesser des Nutgrunds',
      di: 'Innendurchmesser des Rings in Ruhe',
    },
    conditions: ['die Schnur behält beim Dehnen ihr Volumen'],
    errors: ['Die Schnur wie in Ruhe genommen: gedehnt ist sie dünner'],
    place: 'eine Schnur von festem Volumen',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
