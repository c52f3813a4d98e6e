import type { CardTexts } from '../../course/index.ts'

/** The cards of environment conventions in German. */
export const environmentConventionsTexts = {
  'indicated-depth': {
    title: 'Eine Tiefenanzeige teilt den Druck über der Oberfläche durch einen festen Druck je Meter',
    symbols: {
      d: 'angezeigte Tiefe',
      p: 'Absolutdruck in der Tiefe',
      p0: 'Absolutdruck an der Oberfläche',
      pc: 'Druck, den die Vereinbarung für einen Meter zählt',
      L: 'Länge eines Meters',
    },
    conditions: ['eine Anzeige, die 10 kPa je Meter zählt', 'Nullpunkt an der Oberfläche dieses Wassers'],
    errors: ['Der Druck an der Oberfläche vergessen'],
    place: 'Umrechnungsregel',
  },
  'density-of-convention': {
    title: 'Eine Tiefenvereinbarung steht für Wasser von einer Dichte',
    symbols: {
      rho: 'Dichte, für die die Vereinbarung steht',
      pc: 'Druck, den die Vereinbarung für einen Meter zählt',
      L: 'Länge eines Meters',
      g: 'Fallbeschleunigung',
    },
    conditions: ['eine Vereinbarung von 10 kPa je Meter'],
    place: 'Hydrostatik',
  },
  'geopotential-height': {
    title: 'Die Höhe, in der die Normatmosphäre zählt, schrumpft wie die Fallbeschleunigung',
    symbols: { H: 'geopotentielle Höhe', r: 'Erdradius der Norm', h: 'Höhe über dem Meer' },
    conditions: ['die Fallbeschleunigung sinkt mit dem Quadrat des Abstands'],
    place: 'Gleichung 18',
  },
  'surface-pressure-at-altitude': {
    title: 'Der Druck sinkt mit der Höhe nach der Normatmosphäre',
    symbols: {
      p: 'Absolutdruck in der Höhe',
      pn: 'Normdruck auf Meereshöhe',
      r: 'Erdradius der Norm',
      h: 'Höhe über dem Meer',
      H0: 'Höhe, in der die Abnahme null Kelvin erreichen würde',
      n: 'Exponent der Temperaturabnahme',
    },
    conditions: ['Normatmosphäre, unter 11 km', 'das Wetter ändert den Druck um etwa 3 Prozent nach beiden Seiten'],
    place: 'Gleichungen 18 und 33a',
  },
  'normal-gravity': {
    title: 'Fallbeschleunigung bei einer geographischen Breite, auf Meereshöhe',
    symbols: {
      g: 'Fallbeschleunigung am Ort',
      g0: 'Fallbeschleunigung am Äquator',
      l: 'geographische Breite des Orts',
    },
    conditions: ['Meereshöhe, auf dem glatten Ellipsoid der Erde'],
    errors: ['Die Fallbeschleunigung des Äquators überall genommen'],
    place: 'gsw_grav',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
