import { requireList } from '../../errors/index.ts'
import { tableCsv } from '../table.ts'
import type { ExerciseItem } from './exercise.ts'
import type { ExerciseSheet } from './exercise-sheet.ts'
import { requireSheet } from './require-exercise.ts'

const headings = [
  'student',
  'number',
  'exercise',
  'subject',
  'level',
  'seed',
  'kind',
  'question',
  'choices',
  'key',
  'unit',
  'figures',
  'tolerance',
]
const numeric = new Set(['number', 'level', 'seed', 'figures', 'tolerance'])

/**
 * Sheets as one table in CSV, a row for each item, with its key. Texts that a spreadsheet would run as a formula are made inert.
 *
 * @param sheets - the sheets of a class
 * @returns text with a head row, fields in quotes where they must be, lines ending in CR LF
 * @throws LitrebarError `input` for what is no sheet
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * const item = exerciseItem(exercise, 7)
 * sheetsCsv([{ student: 'Ada', items: [item] }]).startsWith('student,number') // => true
 */
export function sheetsCsv(sheets: readonly ExerciseSheet[]): string {
  requireList('sheets', sheets)
  for (const [index, sheet] of sheets.entries()) requireSheet(`sheets[${String(index)}]`, sheet)
  return tableCsv({
    caption: '',
    notes: [],
    columns: headings.map((heading) => ({ heading, align: numeric.has(heading) ? 'number' : 'text' })),
    rows: sheets.flatMap(({ student, items }) =>
      items.map((item, index) => [student, String(index + 1), ...cells(item)]),
    ),
  })
}

function cells({
  exercise,
  subject,
  level,
  seed,
  kind,
  text,
  exhibit = [],
  chart,
  choices,
  number,
}: ExerciseItem): string[] {
  return [
    exercise,
    subject,
    String(level),
    String(seed),
    kind,
    [text, ...exhibit, ...(chart === undefined ? [] : [chart.description])].join('\n'),
    choices?.map((choice) => `${choice.id}: ${choice.text}`).join('\n') ?? '',
    choices?.flatMap(({ id, right }) => (right ? [id] : [])).join(', ') ?? number?.text ?? '',
    number?.unit ?? '',
    number === undefined ? '' : String(number.figures),
    number === undefined ? '' : String(Number(number.tolerance.total.toPrecision(6))),
  ]
}
