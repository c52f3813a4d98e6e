import type { CardTexts } from '../../course/index.ts'

/** The cards of environment in German. */
export const environmentTexts = {
  'pressure-at-depth': {
    title: 'Absolutdruck in einer Tiefe',
    symbols: {
      p: 'Absolutdruck in der Tiefe',
      p0: 'Absolutdruck an der Oberfläche',
      rho: 'Dichte des Wassers',
      g: 'Fallbeschleunigung',
      d: 'Tiefe',
    },
    conditions: ['ruhendes Wasser von einer Dichte', 'gleiche Fallbeschleunigung über die ganze Tiefe'],
    errors: ['Dichte von Meerwasser eingesetzt, 1025 kg/m³', 'Der Druck an der Oberfläche vergessen'],
    place: 'Abschnitt 11.4',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
