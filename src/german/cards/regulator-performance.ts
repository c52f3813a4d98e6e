import type { CardTexts } from '../../course/index.ts'

/** The cards of regulator performance in German. */
export const regulatorPerformanceTexts = {
  'peak-inhalation-flow': {
    title: 'Die Spitze eines Atemzugs ist das π-Fache des Minutenvolumens',
    symbols: { q: 'Spitzenstrom der Einatmung', pi: 'die Zahl π', VE: 'Atemminutenvolumen' },
    conditions: ['sinusförmige Atmung'],
  },
  'respiratory-minute-volume': {
    title: 'Ventilation einer künstlichen Lunge',
    symbols: { VE: 'Atemminutenvolumen', VT: 'Atemzugvolumen', f: 'Atemfrequenz' },
    conditions: ['gleichmäßige Atmung'],
  },
  'cracking-work': {
    title: 'Ein schwergängiges Ventil kostet das Doppelte seines Spitzendrucks',
    symbols: { W: 'Atemarbeit je Liter', p: 'Spitzendruck jeder Hälfte' },
    conditions: ['der Druck hängt nicht vom Volumenstrom ab: ein Rechteck', 'beide Hälften gleich'],
  },
  'laminar-work': {
    title: 'Ein laminarer Widerstand kostet π/2 mal seinen Spitzendruck',
    symbols: { W: 'Atemarbeit je Liter', pi: 'die Zahl π', p: 'Spitzendruck jeder Hälfte' },
    conditions: ['der Druck wächst mit dem Volumenstrom: eine Ellipse', 'sinusförmige Atmung, beide Hälften gleich'],
  },
  'turbulent-work': {
    title: 'Ein turbulenter Widerstand kostet 4/3 seines Spitzendrucks',
    symbols: { W: 'Atemarbeit je Liter', p: 'Spitzendruck jeder Hälfte' },
    conditions: ['der Druck wächst mit dem Quadrat des Volumenstroms', 'sinusförmige Atmung, beide Hälften gleich'],
  },
  'power-of-breathing': {
    title: 'Atemleistung',
    symbols: { P: 'Atemleistung', W: 'Atemarbeit je Liter', VE: 'Atemminutenvolumen' },
    conditions: ['gleichmäßige Atmung'],
  },
  'hydrostatic-imbalance': {
    title: 'Hydrostatischer Unterschied zwischen Mund und Brust',
    symbols: {
      dp: 'hydrostatischer Unterschied',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
      h: 'Höhe der Membran über dem Bezugspunkt',
    },
    conditions: ['ruhendes Wasser'],
  },
  'balanced-piston': {
    title: 'Ein kompensierter Kolben spürt die Versorgung nur, wo sich Dichtkante und Schaft unterscheiden',
    symbols: {
      pi: 'Mitteldruck über der Umgebung',
      F: 'Kraft der Feder',
      ps: 'Versorgungsdruck, absolut',
      pa: 'Umgebungsdruck, absolut',
      As: 'Fläche des Schafts an seinem O-Ring',
      Ae: 'Fläche der Dichtkante',
      Ah: 'Fläche des Kolbenkopfs',
    },
    conditions: ['keine Strömung', 'keine Reibung', 'Kammer zum Wasser offen'],
  },
  'cracking-pressure': {
    title: 'Was einen Lungenautomaten öffnet',
    symbols: {
      dp: 'Ansprechdruck, unter der Umgebung',
      F: 'Kraft der Feder',
      pi: 'Mitteldruck über der Umgebung',
      Ao: 'Querschnitt der Düse',
      b: 'kompensierter Anteil der Düse',
      lambda: 'Weg der Membran durch Weg des Ventilkegels',
      Ad: 'Fläche der Membran',
    },
    conditions: ['Ventil, das mit dem Strom öffnet', 'keine Reibung', 'kleine Öffnung'],
  },
  'choked-mass-flow': {
    title: 'Eine kritisch durchströmte Düse lässt durch, was der Druck davor treibt',
    symbols: {
      m: 'Massenstrom',
      Cd: 'Durchflusskoeffizient',
      A: 'Querschnitt der Düse',
      p1: 'Druck vor der Düse, absolut',
      T1: 'Temperatur vor der Düse',
      M: 'molare Masse des Gases',
      k: 'Verhältnis der Wärmekapazitäten',
      R: 'universelle Gaskonstante',
      C: 'kritischer Durchflussfaktor, 0,685 für Luft',
    },
    conditions: [
      'ideales Gas: Reale Luft von 200 bar strömt um 7 Prozent stärker',
      'Druck dahinter unter dem kritischen Verhältnis',
    ],
    place: 'Form für das ideale Gas, aus dem Gedächtnis',
  },
  'choked-supply-pressure': {
    title: 'Der niedrigste Versorgungsdruck, der einen Massenstrom noch speist',
    symbols: {
      ps: 'Versorgungsdruck, absolut',
      m: 'Massenstrom, der in der Spitze geatmet wird',
      Cd: 'Durchflusskoeffizient',
      A: 'Querschnitt der Düse der ersten Stufe',
      T1: 'Temperatur vor der Düse',
      M: 'molare Masse des Gases',
      k: 'Verhältnis der Wärmekapazitäten',
      R: 'universelle Gaskonstante',
      C: 'kritischer Durchflussfaktor, 0,685 für Luft',
    },
    conditions: ['ideales Gas', 'Mitteldruck unter dem kritischen Verhältnis mal dem Versorgungsdruck'],
  },
} as const satisfies Readonly<Record<string, CardTexts>>
