/**
 * Every fixed text that a reader of a page sees, by id. A page in another language overlays the table with its own.
 * `{name}` stands for what is filled in.
 */
export const pageTexts = {
  caution: 'Caution.',
  source: 'Source:',
  sources: 'Sources',
  chartData: 'Data of this chart',
  holdsFor: 'Holds for:',
  given: 'Given',
  commonErrors: 'Common errors',
  comesOut: 'gives',
  insteadOf: 'instead of',
  footnotes: 'Notes',
  backToText: 'back to the text',
  line: 'Line',
  from: 'from',
  to: 'to',
  pointsShown: '{shown} of {all} points, evenly spaced.',
  metricUnits: '{title} (metric units)',
  usUnits: '{title} (US units)',
  tableRounding:
    'Computed in the first unit of each pair; every cell is rounded once, from the unrounded value: {rules}.',
  contents: 'Contents',
  formulas: 'Formulas',
  chapter: 'Chapter',
  previous: 'Previous:',
  next: 'Next:',
  usedIn: 'in',
  liveLegend: 'Change the numbers',
  liveSlider: '{meaning}, slider',
  liveReset: 'Back to the printed numbers',
  liveChanged: 'You have changed the numbers. Text and titles still refer to the printed ones.',
  liveAnswer: '{meaning}: {answer}.',
  liveUnread: '{meaning}: “{text}” cannot be read. Write a number, such as {example}.',
  liveOutside: 'One of the numbers comes to {value}; the formula accepts {limits}.',
  liveAbove: 'above {limit}',
  liveAtLeast: 'at least {limit}',
  liveBelow: 'below {limit}',
  liveAtMost: 'at most {limit}',
  liveNoAnswer: 'The formula has no answer for these numbers.',
  liveKept: 'The working below is the last one with an answer.',
  liveBeyond: '{meaning} is outside {low} to {high}, the range over which this formula is checked.',
} as const

/** The fixed texts of a page, each under its id. */
export type PageTexts = Readonly<Record<keyof typeof pageTexts, string>>
