import type { CardTexts } from '../../course/index.ts'

/** The cards of gauges oxygen in German. */
export const gaugesOxygenTexts = {
  'oxygen-shown': {
    title: 'Sauerstoffpartialdruck aus dem Ausgang einer Zelle',
    symbols: {
      p: 'Sauerstoffpartialdruck',
      U: 'Ausgang der Zelle',
      pc: 'Sauerstoffpartialdruck bei der Kalibrierung',
      Uc: 'Ausgang bei der Kalibrierung',
    },
    conditions: [
      'eine Zelle, die gerade durch null geht: Eine strombegrenzte zeigt zu wenig, und keine Kalibrierung verrät es',
    ],
    errors: ['Den Unterschied der Ausgänge addiert, statt ihr Verhältnis zu nehmen'],
    place: 'lineare Zelle',
  },
  'cell-linearity': {
    title: 'Linearität einer Sauerstoffzelle',
    symbols: {
      L: 'Ausgang durch das, was der untere Punkt vorhersagt',
      U2: 'Ausgang beim höheren Partialdruck',
      U1: 'Ausgang beim niedrigeren Partialdruck',
      p2: 'höherer Sauerstoffpartialdruck',
      p1: 'niedrigerer Sauerstoffpartialdruck',
    },
    conditions: ['eine Zelle, die ohne Sauerstoff keine Spannung gibt', 'nur bis zum höheren Punkt geprüft'],
    errors: ['Die beiden Ausgänge ohne ihre Partialdrücke verglichen'],
    place: 'lineare Zelle',
  },
  'limited-cell': {
    title: 'Was eine strombegrenzte Zelle zeigt',
    symbols: {
      p: 'angezeigter Partialdruck',
      pO: 'wahrer Sauerstoffpartialdruck',
      pc: 'Sauerstoffpartialdruck bei der Kalibrierung',
      Uc: 'Ausgang bei der Kalibrierung',
      Ul: 'höchster Ausgang, den die Zelle geben kann',
    },
    conditions: ['gerade bis zur Grenze, ab dort waagerecht'],
    errors: ['Der Zelle jenseits ihrer Grenze geglaubt'],
    place: 'strombegrenzte Zelle',
  },
  'thermistor-lag': {
    title: 'Anzeige einer Zelle, deren Thermistor nachhinkt',
    symbols: {
      f: 'Faktor auf den Anzeigewert',
      k: 'Koeffizient der bloßen Zelle, je Kelvin',
      dT: 'um wie viel die Zelle wärmer ist als ihr Thermistor',
      u: 'ein Kelvin',
    },
    conditions: ['ein Koeffizient über den ganzen Unterschied'],
    errors: ['Den Koeffizienten multipliziert, statt ihn zu potenzieren'],
    place: 'Koeffizient: Aufsätze über galvanische Sauerstoffsensoren',
  },
  'cell-life': {
    title: 'Verbrauchter Anteil der Nennlebensdauer einer Sauerstoffzelle',
    symbols: {
      s: 'verbrauchter Anteil der Nenndosis',
      p: 'Sauerstoffpartialdruck, in dem die Zelle war',
      t: 'Zeit, die sie darin war',
      pr: 'Partialdruck der Nennangabe',
      tr: 'Nennlebensdauer',
    },
    conditions: ['nur eine Dosis: Viele Zellen trocknen aus oder lecken, bevor sie verbraucht ist'],
    errors: ['Stunden mit Stunden verglichen, gleich bei welchem Partialdruck'],
    place: 'Form der Nennangabe',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
