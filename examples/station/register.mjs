import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { dueWithin } from 'litrebar'
import { registerRowSchema } from 'litrebar/schemas'

/** The register of the gear room, judged: every row keeps its place, a bad one with its reason. */
export function registerTable(asOf, days) {
  const register = parse(readFileSync(new URL('register.csv', import.meta.url), 'utf8'), {
    columns: true,
    skip_empty_lines: true,
  })
  const rows = register.map((row) => judged(row, asOf, days))
  const count = (state) => rows.filter((row) => row[2] === state).length
  return {
    caption: `The gear room’s cylinders on ${asOf}`,
    columns: ['Cylinder', 'Due', 'State', 'Why'].map((heading) => ({ heading, align: 'text' })),
    rows,
    notes: [
      `${rows.length} rows: ${count('overdue')} overdue, ${count('due')} due within ${days} days, ${count('later')} later, ${count('undetermined')} undetermined, ${count('error')} with an error.`,
    ],
    cautions: ['requalification', 'stamp-reading'],
  }
}

function judged(row, asOf, days) {
  const input = registerRowSchema.safeParse({
    id: row.id,
    stamp: row.stamp.replaceAll(' / ', '\n'),
    ruleSet: row['rule set'],
    service: row.service,
    ...(row['last inspection'] !== '' && { lastInspection: row['last inspection'] }),
  })
  if (!input.success) return [row.id, '', 'error', input.error.issues.map(({ message }) => message).join('; ')]
  const [{ state, requalification, error }] = dueWithin([input.data], { asOf, days })
  if (error !== undefined) return [row.id, '', state, error.message]
  const { due = '', verdict, because, rule } = requalification
  return [
    row.id,
    due,
    state,
    verdict === 'undetermined' ? because.map(({ text }) => text).join('; ') : (rule?.title ?? ''),
  ]
}
