import { bar, dueWithin, explainStamp, format, isLitrebarError, litre, psi, readStamp, testPressure } from 'litrebar'
import { registerRowSchema } from 'litrebar/schemas'

/** The register, judged: every row stays, a bad one with its reason. */
export function dueSection(request, { asOf, register, style }) {
  const rows = register.map((row) => judged(row, { asOf, days: request.days, style }))
  const count = (state) => rows.filter((row) => row.state === state).length
  const table = {
    caption: `The gear room’s cylinders on ${asOf}`,
    columns: [
      { heading: 'Cylinder', align: 'text' },
      { heading: 'Marked', align: 'text' },
      { heading: 'Pressure', unit: 'bar', align: 'number' },
      { heading: 'Test', unit: 'bar', align: 'number' },
      { heading: 'Volume', unit: 'L', align: 'number' },
      { heading: 'Due', align: 'text' },
      { heading: 'State', align: 'text' },
      { heading: 'Why', align: 'text' },
    ],
    rows: rows.map((row) => [row.id, row.marked, row.pressure, row.test, row.volume, row.due, row.state, row.why]),
    notes: [
      `${rows.length} rows: ${count('overdue')} overdue, ${count('due')} due within ${request.days} days, ${count('later')} later, ${count('undetermined')} undetermined, ${count('error')} with an error.`,
      'A due month counts as valid through its last day. Test pressures are those marked, or derived by the specification where none is.',
    ],
  }
  return {
    section: {
      id: request.id,
      title: 'Which cylinders must go to the inspector',
      blocks: [
        {
          kind: 'answer',
          text: `Of ${rows.length} cylinders ${count('overdue')} ${count('overdue') === 1 ? 'is' : 'are'} overdue and ${count('due')} ${count('due') === 1 ? 'falls' : 'fall'} due within ${request.days} days; ${count('undetermined') + count('error')} cannot be judged from what is written.`,
        },
        { kind: 'cautions', cautions: ['requalification', 'stamp-reading'] },
        {
          kind: 'paragraph',
          text: 'A shoulder stamp tells when a cylinder was tested. It does not tell when it is due: that depends on the rules of the place and on the use, so each row names its rule set. A row that cannot be read stays in the table, with the reason and the remedy.',
        },
        { kind: 'table', table },
        { kind: 'sources', sources: [...new Set(rows.flatMap((row) => row.sources))] },
      ],
    },
    summary: table.notes[0],
    tables: { register: table },
  }
}

const empty = { marked: '', pressure: '', test: '', volume: '', due: '', sources: [] }

function judged(row, { asOf, days, style }) {
  const input = registerRowSchema.safeParse({
    id: row.id,
    stamp: row.stamp.replaceAll(' / ', '\n'),
    ruleSet: row['rule set'],
    service: row.service,
    ...(row['last inspection'] !== '' && { lastInspection: row['last inspection'] }),
  })
  if (!input.success) {
    return {
      ...empty,
      id: row.id,
      state: 'error',
      why: input.error.issues.map((issue) => issue.message).join('; '), // each names its field
    }
  }
  const [due] = dueWithin([input.data], { asOf, days })
  const decoded = due.state === 'error' ? {} : decodedFields(input.data.stamp, asOf, style)
  const { requalification, error } = due
  return {
    ...empty,
    ...decoded,
    id: row.id,
    due: requalification?.due ?? '',
    state: due.state,
    why: error?.message ?? whyOf(requalification, decoded.findings ?? []),
    sources: requalification?.sources ?? [],
  }
}

/** The rule where one was found, the reasons where none could be, and what the stamp itself left open. */
function whyOf({ rule, verdict, because }, findings) {
  const reasons = verdict === 'undetermined' ? because.map((reason) => reason.text) : [rule.title]
  return [reasons.join('; '), ...findings].join('. ')
}

function decodedFields(text, asOf, style) {
  const stamp = readStamp(text, { asOf })
  const marked = stamp.servicePressure ?? stamp.workingPressure
  const inBar = (q) => (q === undefined ? '' : format(q, { unit: bar, decimals: 0, ...style }).split('\u202f')[0])
  return {
    marked:
      [
        stamp.prefix,
        stamp.specification,
        stamp.servicePressure && format(stamp.servicePressure, { unit: psi, decimals: 0, grouping: 'none' }),
      ]
        .filter(Boolean)
        .join(' ') || stamp.system,
    pressure: inBar(marked),
    test: inBar(derivedTest(stamp)),
    volume:
      stamp.waterCapacity === undefined
        ? ''
        : format(stamp.waterCapacity, { unit: litre, decimals: 1, ...style }).split('\u202f')[0],
    findings: explainStamp(stamp)
      .findings.filter((finding) => finding.severity !== 'note')
      .map((finding) => `${finding.says} ${finding.remedy}`),
  }
}

function derivedTest(stamp) {
  try {
    return testPressure(stamp)?.pressure
  } catch (thrown) {
    if (isLitrebarError(thrown)) return undefined
    throw thrown
  }
}
