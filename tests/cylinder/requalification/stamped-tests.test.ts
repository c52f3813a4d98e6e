import { expect, test } from 'vitest'
import type { Retest, StampMarks } from '../../../src/cylinder/marking/index.ts'
import { type RuleSetId, requalifications } from '../../../src/cylinder/requalification/index.ts'

// What the dates of a shoulder are taken for. Intervals are those of the tables; months by hand.

type Cylinder = Partial<StampMarks> & Pick<StampMarks, 'retests'>
const rowOf = (id: string, cylinder: Cylinder, ruleSet: RuleSetId, alloy?: '6351-T6'): string | undefined =>
  requalifications(cylinder, { ruleSet, asOf: '2026-11', ...(alloy === undefined ? {} : { alloy }) })
    .filter(({ rule }) => rule?.id === id)
    .map(({ due, verdict, because }) => `${due ?? '-'} ${verdict} ${because[0]?.code ?? ''}`)[0]
const later = (date: Retest['date'], kind: NonNullable<Retest['kind']>): Retest => ({ date, kind, suffixes: [] })
const old = (firstTest: Retest['date'], ...retests: Retest[]): Cylinder => ({
  system: 'METRIC-OLD',
  material: 'steel',
  firstTest,
  retests,
})

test.each<[string, string, Cylinder, RuleSetId, string]>([
  [
    'the longer first interval is for the first alone',
    'norwegian-full',
    old('2024-05', later('2025-05', 'unknown')),
    'norwegian-diving',
    '2026-05 undetermined overdue-by-one-reading',
  ],
  [
    'a date ahead that is named so is no second reading',
    'german-strength',
    { ...old('2014-03', later('2024-03', 'unknown')), deadlines: [{ date: '2029-03', kind: 'next due' }] },
    'german-diving',
    '2029-03 within due',
  ],
  [
    'without it the last date may be the next one',
    'german-strength',
    old('2014-03', later('2024-03', 'unknown')),
    'german-diving',
    '2024-03 undetermined overdue-by-one-reading',
  ],
  [
    'an external inspection is none from inside',
    'german-internal',
    old('2023-03', later('2025-03', 'external visual')),
    'german-diving',
    '2025-09 beyond overdue',
  ],
  [
    'an external inspection is one from outside',
    'german-external',
    old('2023-03', later('2025-03', 'external visual')),
    'german-diving',
    '2027-09 within due',
  ],
  [
    'Austria has inspections between: six years later proves no full test',
    'austrian-full',
    old('2014-03', later('2020-03', 'unknown')),
    'austrian-diving',
    '2024-03 undetermined overdue-by-one-reading',
  ],
  [
    'elsewhere a mark after five years was a full test',
    'finnish-full',
    old('2014-03', later('2020-03', 'unknown')),
    'finnish-diving',
    '2030-03 undetermined superseded',
  ],
  [
    'an ultrasonic examination is a full test',
    'uk-hydraulic',
    old('2018-03', later('2022-09', 'ultrasonic')),
    'uk-diving',
    '2027-09 within due',
  ],
  [
    'so is one by acoustic emission',
    'uk-hydraulic',
    old('2018-03', later('2022-09', 'acoustic emission')),
    'uk-diving',
    '2027-09 within due',
  ],
  [
    'a visual inspection is none',
    'uk-hydraulic',
    old('2018-03', later('2022-09', 'visual')),
    'uk-diving',
    '2023-03 beyond overdue',
  ],
  [
    'a proof test may be one',
    'uk-hydraulic',
    old('2018-03', later('2022-09', 'proof')),
    'uk-diving',
    '2023-03 undetermined overdue-by-one-reading',
  ],
  ['a first test ahead is none', 'uk-hydraulic', old('2027-03'), 'uk-diving', '- undetermined date-in-the-future'],
  [
    'a life counts from manufacture',
    'us-3ht-life',
    { system: 'US', specification: '3HT', manufactured: '2001-05', firstTest: '2001-08', retests: [] },
    'us-180.209',
    '2025-05 beyond overdue',
  ],
  [
    'a plus on a US shoulder is no Swiss cross',
    'swiss-full',
    { system: 'US', specification: '3AA', firstTest: '2010-05', retests: [{ date: '2024-06', suffixes: ['+'] }] },
    'swiss-diving',
    '2029-06 within due',
  ],
  [
    'a cross on another is a visual inspection in Switzerland',
    'swiss-full',
    old('2010-05', { date: '2024-06', suffixes: ['+'] }),
    'swiss-diving',
    '2015-05 beyond overdue',
  ],
])('%s', (_name, id, cylinder, ruleSet, wanted) => {
  expect(rowOf(id, cylinder, ruleSet)).toBe(wanted)
})

test('the last eddy-current examination counts', () => {
  const examined = { date: '2014-10', suffixes: ['VE'] } as const
  const cylinder: Cylinder = {
    system: 'US',
    specification: '3AL',
    firstTest: '1985-07',
    retests: [examined, { date: '2023-10', suffixes: ['VE'] }],
  }
  expect(rowOf('us-6351', cylinder, 'us-180.209', '6351-T6')).toBe('2028-10 within due')
  expect(rowOf('us-6351', { ...cylinder, retests: [examined] }, 'us-180.209', '6351-T6')).toBe('2019-10 beyond overdue')
})
