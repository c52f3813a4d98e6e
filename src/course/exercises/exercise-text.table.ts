/** Every fixed text of exercises, items and sheets, by id. A sheet in another language overlays the table with its own. */
export const exerciseTexts = {
  answerIn: 'Answer in {unit}, to {figures} significant figures.',
  answerPure: 'Answer as a number, to {figures} significant figures.',
  chooseOne: 'Choose one.',
  chooseSeveral: 'Choose all that apply.',
  sheet: 'Exercises',
  forStudent: 'For {student}',
  reader: 'Write the unit with every number. Round once, at the end.',
  teacher: 'Teacher’s edition: keys, tolerances, common errors, sources.',
  exercise: 'Exercise {number}',
  answer: 'Answer:',
  key: 'Key',
  tolerance:
    'Accepted: ± {total} (half a unit in the last figure {halfUnit}, intermediate rounding {rounding}, other accepted constants {conventions}).',
  commonErrors: 'Common errors',
  comesOut: '{answer}: {says}.',
  working: 'Worked solution',
  record: 'Record',
  recordOf: 'Seed {seed}, version {version}.',
  right: 'right',
  wrong: 'wrong',
  correct: 'Correct.',
} as const

/** The fixed texts of exercises, each under its id. */
export type ExerciseTexts = Readonly<Record<keyof typeof exerciseTexts, string>>
