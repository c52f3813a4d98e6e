import type { CardTexts } from '../../course/index.ts'

/** The cards of gauges compass in German. */
export const gaugesCompassTexts = {
  'compass-tilt-error': {
    title: 'Um wie viel ein gerollter Kompass auf Nordkurs zu wenig anzeigt',
    symbols: {
      e: 'um wie viel der angezeigte Kurs zu klein ist',
      r: 'Rollwinkel des Kompasses, rechte Seite nach unten',
      d: 'magnetische Inklination des Orts',
    },
    conditions: [
      'Kurs magnetisch Nord, der Kompass von vorn nach hinten waagerecht',
      'eine Rose, die in ihrem Gehäuse nicht frei schwingen kann',
    ],
    errors: ['Den Rollwinkel selbst für die Abweichung gehalten, als läge das Feld waagerecht'],
    place: 'Projektion des Felds in die Ebene der Rose',
  },
  'compass-card-tilt': {
    title: 'Neigung einer Kompassrose außerhalb ihrer Zone',
    symbols: {
      t: 'Neigung der Rose, Nordseite nach unten',
      z2: 'senkrechtes durch waagerechtes Feld am Ort des Gebrauchs',
      z1: 'senkrechtes durch waagerechtes Feld am Ort des Abgleichs',
      h: 'waagerechtes Feld am Ort des Abgleichs durch das am Ort des Gebrauchs',
      g: 'aufrichtendes Moment der Rose durch das drehende Moment des Felds',
    },
    conditions: ['Gleichgewicht der Momente um den Drehpunkt', 'eine Neigung unter dem Spielraum des Gehäuses'],
    errors: ['Die waagerechten Felder an beiden Orten für gleich gehalten'],
    place: 'Gleichgewicht der Momente um den Drehpunkt',
  },
  'compass-deviation': {
    title: 'Ablenkung eines Kompasses auf einem Kurs, aus ihren Koeffizienten',
    symbols: {
      D: 'Ablenkung, nach Osten positiv',
      a: 'fester Teil',
      b: 'Koeffizient des Sinus',
      c: 'Koeffizient des Kosinus',
      d: 'Koeffizient des Sinus des doppelten Kurses',
      e: 'Koeffizient des Kosinus des doppelten Kurses',
      z: 'Kurs nach dem Kompass',
    },
    conditions: ['Ort und Stahl, wie sie waren, als die Ablenkung aufgenommen wurde'],
    errors: ['Die Glieder des doppelten Kurses vergessen'],
    place: 'Abschnitt 501',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
