import type { CardTexts } from '../../course/index.ts'

/** The cards of units in German. */
export const unitsTexts = {
  'gauge-to-absolute': {
    title: 'Der Absolutdruck ist der Überdruck und das, was um das Messgerät herrscht',
    symbols: { p: 'Absolutdruck', pg: 'Überdruck', pa: 'Umgebungsdruck, absolut' },
    conditions: ['ein Messgerät, das zum Druck seiner Umgebung offen ist'],
    place: 'Abschnitt 11.6',
  },
} as const satisfies Readonly<Record<string, CardTexts>>
