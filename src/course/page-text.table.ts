/**
 * Every fixed text that a reader of a page sees, by id. A page in another language overlays the table with its own.
 */
export const pageTexts = {
  caution: 'Caution.',
  source: 'Source:',
  sources: 'Sources',
  chartData: 'Data of this chart',
  holdsFor: 'Holds for:',
  given: 'Given',
  commonErrors: 'What goes wrong',
  comesOut: 'comes out',
  insteadOf: 'instead of',
  footnotes: 'Notes',
  backToText: 'back to the text',
  line: 'Line',
  contents: 'Contents',
  formulas: 'Formulas',
  chapter: 'Chapter',
  previous: 'Previous:',
  next: 'Next:',
  usedIn: 'in',
} as const

/** The fixed texts of a page, each under its id. */
export type PageTexts = Readonly<Record<keyof typeof pageTexts, string>>
