import { expect, test } from 'vitest'
import {
  countryMarks,
  expansionTestTerms,
  fillLimitRows,
  findingSeverity,
  markingRules,
  materialRules,
  permanentExpansionLimits,
  requalificationNotes,
  requalificationRules,
  testPressureRules,
  testTriggers,
} from '../../../src/cylinder/index.ts'
import { rulesAnswered } from '../../fixtures/rules-answered.ts'

const ids = (rows: readonly { readonly id: string }[]): string[] => rows.map(({ id }) => id)
const tables: Readonly<Record<string, readonly string[]>> = {
  mark: ids(markingRules),
  note: ids(requalificationNotes),
  rule: ids(requalificationRules),
  country: countryMarks.map(({ mark }) => mark),
  trigger: Object.keys(testTriggers),
  pressure: ids(testPressureRules),
  expansion: ids(expansionTestTerms),
  limit: Object.keys(permanentExpansionLimits),
  material: ids(materialRules),
  fill: ids(fillLimitRows),
  finding: Object.keys(findingSeverity),
}

test('each of the 180 rules that were gathered is answered by a row that exists, or says why not', () => {
  const rows = Object.entries(rulesAnswered)
  expect(rows).toHaveLength(180)
  const unanswered = rows.filter(([, answer]) =>
    'reason' in answer ? answer.reason.length < 20 : tables[answer.table]?.includes(answer.key) !== true,
  )
  expect(unanswered).toEqual([])
})

test('rows that were read in a later edition say so', () => {
  const mark = markingRules.find(({ id }) => id === 'condemned-mark')
  expect([mark?.source, mark?.place]).toEqual(['cfr-49-180-205-2015', 'paragraph (i)(2), since moved to (j)'])
  expect(requalificationNotes.find(({ id }) => id === 'moisture-free-later')).toMatchObject({
    value: 55,
    edition: 'later codification, copy undated',
  })
})
