import { tableCsv } from '../table.ts'
import type { ExerciseItem } from './exercise.ts'
import type { ExerciseSheet } from './exercise-sheet.ts'

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
 */
export function sheetsCsv(sheets: readonly ExerciseSheet[]): string {
  return tableCsv({
    caption: '',
    notes: [],
    columns: headings.map((heading) => ({ heading, align: numeric.has(heading) ? 'number' : 'text' })),
    rows: sheets.flatMap(({ student, items }) =>
      items.map((item, index) => [student, String(index + 1), ...cells(item)]),
    ),
  })
}

function cells({ exercise, subject, level, seed, kind, text, exhibit = [], choices, number }: ExerciseItem): string[] {
  return [
    exercise,
    subject,
    String(level),
    String(seed),
    kind,
    [text, ...exhibit].join('\n'),
    choices?.map((choice) => `${choice.id}: ${choice.text}`).join('\n') ?? '',
    choices?.flatMap(({ id, right }) => (right ? [id] : [])).join(', ') ?? number?.text ?? '',
    number?.unit ?? '',
    number === undefined ? '' : String(number.figures),
    number === undefined ? '' : String(Number(number.tolerance.total.toPrecision(6))),
  ]
}
