import { describe, expect, test } from 'vitest'
import { readStamp, type StampMarks } from '../../../src/cylinder/marking/index.ts'
import {
  dueWithin,
  plusMark,
  type RequalificationHistory,
  type RequalificationOptions,
  type RuleSetId,
  requalifications,
  testPressure,
} from '../../../src/cylinder/requalification/index.ts'
import { bar, gauge, inUnit, psi } from '../../../src/units/index.ts'

// Everything that a row carries beside its verdict: reasons in their order, sources, readings, findings. Worked out from the tables.

const asOf = '2026-11-25'
type Given = RequalificationHistory | string
const read = (given: Given): RequalificationHistory => (typeof given === 'string' ? readStamp(given, { asOf }) : given)
const rowsOf = (given: Given, options: Omit<RequalificationOptions, 'asOf'>) => {
  const rows = requalifications(read(given), { ...options, asOf })
  // A reason is a sentence for people behind a code for programs.
  for (const { because } of rows)
    for (const { code, text } of because) {
      expect(code).toMatch(/^[a-z0-9-]+$/)
      expect(text.length, code).toBeGreaterThan(code.length)
    }
  return rows
}
const codes = (given: Given, options: Omit<RequalificationOptions, 'asOf'>): readonly string[] =>
  rowsOf(given, options).map(
    ({ rule, because }) =>
      `${rule?.id ?? 'stamp'}: ${because.map(({ code, source }) => (source === undefined ? code : `${code} (${source})`)).join(', ')}`,
  )
const aluminium = 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23'
const old: RequalificationHistory = { system: 'METRIC-OLD', material: 'steel', firstTest: '2024-05', retests: [] }
const us = { ruleSet: 'us-180.209' } as const

describe('a row that is within', () => {
  const [row, ...rest] = rowsOf(aluminium, us)

  test('names what it counts from, the last day, the days left, its rule and its source', () => {
    expect(rest).toEqual([])
    expect(row).toMatchObject({
      value: asOf,
      limit: '2028-10-31',
      margin: 706, // 36 days to the year’s end, 2027 with 365, and 305 days of 2028 up to 31 October
      last: '2023-10',
      due: '2028-10',
      verdict: 'within',
      cautions: ['requalification'],
      sources: ['cfr-49-180-209'],
    })
    expect(row?.because).toEqual([
      { code: 'due', text: 'due in 2028-10, valid through 2028-10-31', source: 'cfr-49-180-209' },
    ])
  })

  test('has no readings where there is only one, and carries the findings of the stamp', () => {
    expect(row).not.toHaveProperty('readings')
    expect(row?.findings).toEqual(readStamp(aluminium, { asOf }).findings)
    expect(row?.findings.length).toBeGreaterThan(0)
    expect(rowsOf(old, { ruleSet: 'dutch-diving' })[0]?.findings).toEqual([])
  })
})

test('two readings come with their reasons, the earliest first, and a note says so', () => {
  const [row] = rowsOf(
    { ...old, firstTest: '2022-05', retests: [{ date: '2024-05', suffixes: [] }] },
    { ruleSet: 'dutch-diving' },
  )
  expect(row).toMatchObject({ due: '2027-05', last: '2022-05', verdict: 'within' })
  expect(row?.readings).toEqual([
    {
      due: '2027-05',
      last: '2022-05',
      because: 'unless the mark of 2024-05 was a full test, which it does not say',
    },
    { due: '2029-05', last: '2024-05' },
  ])
  expect(row?.because.map(({ code, text }) => [code, text])).toEqual([
    ['due', 'due in 2027-05, valid through 2027-05-31'],
    [
      'earliest-of-readings',
      'the earliest of 2 readings of the dates: unless the mark of 2024-05 was a full test, which it does not say',
    ],
    ['secondary-source', 'the interval is second-hand; the text itself was not read (current)'],
  ])
})

test('overdue by one reading names the date and why it may be so', () => {
  const [row] = rowsOf(
    { ...old, firstTest: '2020-05', retests: [{ date: '2024-05', suffixes: [] }] },
    { ruleSet: 'dutch-diving' },
  )
  expect(row?.because[0]).toEqual({
    code: 'overdue-by-one-reading',
    text: 'was due in 2025-05, unless the mark of 2024-05 was a full test, which it does not say',
    source: 'common-practice',
  })
  expect(row?.sources).toEqual(['common-practice'])
})

test.each<[string, Given, Omit<RequalificationOptions, 'asOf'>, readonly string[]]>([
  [
    'a date that the stamp names is a row without a rule and without a last test',
    { ...old, deadlines: [{ date: '2026-09', kind: 'next due' }] },
    { ruleSet: 'dutch-diving' },
    ['stamp: overdue', 'dutch-full: due (common-practice), secondary-source (common-practice)'],
  ],
  [
    'an ended life is named once, whether the stamp or its findings say so',
    readStamp('DOT-SP9144-4500\nOT60412 KELDA\n06-08\nEND OF SERVICE LIFE 06 2023', { asOf }),
    us,
    ['stamp: life-ended', 'stamp: life-ended, permit-decides'],
  ],
  [
    'without a finding the stamped end itself is the reason',
    { ...old, deadlines: [{ date: '2023-06', kind: 'end of life' }] },
    { ruleSet: 'dutch-diving' },
    [
      'stamp: life-ended (phmsa-24-0033r)',
      'dutch-full: life-ended (phmsa-24-0033r), due (common-practice), secondary-source (common-practice)',
    ],
  ],
  [
    'a life that a rule ends',
    {
      system: 'US',
      specification: '3HT',
      firstTest: '2002-01',
      retests: [{ date: '2024-06', kind: 'hydraulic', suffixes: [] }],
    },
    us,
    ['us-3ht-life: overdue (cfr-49-180-205-2015), life-ended (phmsa-24-0033r)', 'us-3ht: due (cfr-49-180-209)'],
  ],
  [
    'damage calls for a test in spite of a date',
    aluminium,
    { ...us, triggers: ['damaged'] },
    ['us-five-years: damaged (phmsa-24-0093), due (cfr-49-180-209)'],
  ],
  [
    'a composite without UW, for diving',
    { system: 'UN', specification: 'ISO 11119-2', firstTest: '2024-06', retests: [] },
    { ruleSet: 'us-180.207' },
    [
      'us-un-composite: composite-without-uw (cfr-49-178-71), due (cfr-49-180-207-2015)',
      'us-un-composite-life: composite-without-uw (cfr-49-178-71), due (cfr-49-180-207-2015)',
    ],
  ],
  [
    'and said to be for diving',
    { system: 'UN', specification: 'ISO 11119-2', firstTest: '2024-06', retests: [] },
    { ruleSet: 'us-180.207', service: 'diving' },
    [
      'us-un-composite: composite-without-uw (cfr-49-178-71), due (cfr-49-180-207-2015)',
      'us-un-composite-life: composite-without-uw (cfr-49-178-71), due (cfr-49-180-207-2015)',
    ],
  ],
  [
    'not for a composite that stays in the dry',
    { system: 'UN', specification: 'ISO 11119-2', firstTest: '2024-06', retests: [] },
    { ruleSet: 'us-180.207', service: 'breathing apparatus' },
    ['us-un-composite: due (cfr-49-180-207-2015)', 'us-un-composite-life: due (cfr-49-180-207-2015)'],
  ],
  [
    'nor for one without the UN mark',
    { system: 'EU-pi', specification: 'EN 12245', firstTest: '2024-06', retests: [] },
    { ruleSet: 'dutch-diving' },
    ['dutch-full: due (common-practice), secondary-source (common-practice)'],
  ],
  [
    'the alloy as stated: known, never examined',
    {
      system: 'US',
      specification: '3AL',
      firstTest: '2004-06',
      retests: [{ date: '2024-06', kind: 'hydraulic', suffixes: [] }],
    },
    { ...us, alloy: '6351-T6' },
    ['us-6351: never-examined (cfr-49-180-205)', 'us-five-years: due (cfr-49-180-209)'],
  ],
  [
    'presumed by the hint of the stamp alone',
    {
      system: 'US',
      specification: '3AL',
      alloyHint: '6351-T6',
      firstTest: '2004-06',
      retests: [{ date: '2024-06', kind: 'hydraulic', suffixes: [] }],
    },
    us,
    ['us-6351: presumed-6351 (notice-94-7)', 'us-five-years: due (cfr-49-180-209)'],
  ],
  [
    'presumed by its age alone',
    {
      system: 'US',
      specification: '3AL',
      firstTest: '1988-06',
      retests: [{ date: '2024-06', kind: 'hydraulic', suffixes: [] }],
    },
    us,
    ['us-6351: presumed-6351 (notice-94-7)', 'us-five-years: due (cfr-49-180-209)'],
  ],
  [
    'examined on a date of its own kind',
    {
      system: 'US',
      specification: '3AL',
      firstTest: '1988-06',
      retests: [{ date: '2024-06', kind: 'hydraulic', suffixes: ['VE'] }],
    },
    us,
    ['us-five-years: due (cfr-49-180-209)', 'us-6351: due (cfr-49-180-205-2015)'],
  ],
  [
    'an eddy-current examination that the words of the date name',
    {
      system: 'US',
      specification: '3AL',
      firstTest: '1988-06',
      retests: [
        { date: '2022-06', kind: 'hydraulic', suffixes: [] },
        { date: '2024-06', kind: 'eddy current', suffixes: [] },
      ],
    },
    us,
    ['us-five-years: due (cfr-49-180-209)', 'us-6351: due (cfr-49-180-205-2015)'],
  ],
  [
    'shown to be of another alloy',
    {
      system: 'US',
      specification: '3AL',
      firstTest: '1988-06',
      retests: [{ date: '2024-06', kind: 'hydraulic', suffixes: [] }],
    },
    { ...us, alloy: 'other' },
    ['us-five-years: due (cfr-49-180-209)'],
  ],
  [
    'Australia: an approval withdrawn for a presumed alloy leaves it open',
    {
      system: 'US',
      specification: '3AL',
      firstTest: '1988-06',
      retests: [{ date: '2026-06', kind: 'hydraulic', suffixes: [] }],
    },
    { ruleSet: 'australian-diving' },
    [
      'australian-6351: presumed-6351 (as-2030), secondary-source (as-2030)',
      'australian-full: due (as-2030), secondary-source (as-2030)',
    ],
  ],
  [
    'Australia: and ends a known one',
    {
      system: 'US',
      specification: '3AL',
      firstTest: '1988-06',
      retests: [{ date: '2026-06', kind: 'hydraulic', suffixes: [] }],
    },
    { ruleSet: 'australian-diving', alloy: '6351-T6' },
    [
      'australian-6351: overdue (as-2030), life-ended (phmsa-24-0033r), secondary-source (as-2030)',
      'australian-full: due (as-2030), secondary-source (as-2030)',
    ],
  ],
  [
    'a custom without a rule says so',
    { ...old, firstTest: '2026-05' },
    { ruleSet: 'yearly-visual' },
    ['yearly-visual: due (common-practice), common-practice (common-practice)'],
  ],
  [
    'a remark of a rule comes last',
    old,
    us,
    ['us-foreign: due (cfr-49-180-209), foreign-not-transported (cfr-49-173-301)'],
  ],
  [
    'two intervals by use, each with the note',
    {
      system: 'US',
      specification: '3AA',
      firstTest: '2001-06',
      retests: [{ date: '2023-06', kind: 'hydraulic', suffixes: ['★'] }],
    },
    us,
    [
      'us-five-years: due (cfr-49-180-209), interval-depends-on-service',
      'us-star: conditions-not-stated (cfr-49-180-209), due (cfr-49-180-209), interval-depends-on-service, secondary-source (cfr-49-180-209)',
    ],
  ],
  [
    'the star with its use and its conditions stated',
    {
      system: 'US',
      specification: '3AA',
      firstTest: '2001-06',
      retests: [{ date: '2023-06', kind: 'hydraulic', suffixes: ['★'] }],
    },
    { ...us, service: 'dry listed gas', meetsStarConditions: true },
    ['us-star: due (cfr-49-180-209), secondary-source (cfr-49-180-209)'],
  ],
  [
    'a superseded interval',
    { ...old, material: 'steel' },
    { ruleSet: 'finnish-diving' },
    ['finnish-full: superseded (tukes-cylinders), due (tukes-cylinders)'],
  ],
  [
    'an interval from memory',
    aluminium,
    { ruleSet: 'canadian-diving' },
    ['canadian-full: from-memory (memory), due (memory)'],
  ],
  [
    'a type that no rule speaks of',
    { system: 'US', specification: '4L', firstTest: '2024-06', retests: [] },
    us,
    ['stamp: no-rule'],
  ],
  [
    'counted from the stamp where it counts from putting into service',
    { ...old, firstTest: '2023-05' },
    { ruleSet: 'french-diving', isInspectedYearly: false },
    [
      'french-yearly: counts-from-putting-into-service (french-order-2017), secondary-source (french-order-2017)',
      'french-two-years: counts-from-putting-into-service (french-order-2017)',
    ],
  ],
  [
    'a reject mark of one country',
    { ...old, retests: [{ date: '2025-05', suffixes: ['R'] }] },
    { ruleSet: 'spanish-diving' },
    [
      'spanish-visual: reject-mark (rd-809-2021), overdue (rd-809-2021), filled-before-due (cfr-49-180-205)',
      'spanish-full: reject-mark (rd-809-2021), due (rd-809-2021)',
    ],
  ],
  [
    'a cross on a US shoulder is no Swiss inspection',
    { system: 'US', specification: '3AA', firstTest: '2014-05', retests: [{ date: '2026-05', suffixes: ['+'] }] },
    { ruleSet: 'swiss-diving' },
    [
      'swiss-visual: due (common-practice), secondary-source (common-practice)',
      'swiss-full: due (common-practice), secondary-source (common-practice)',
    ],
  ],
  [
    'a date ahead that the reader found is a doubt once',
    'AIR 10 L\nPS 200 BAR PT 300 BAR\nNR 77142 FOREZ\n05.2024\n06.2027',
    { ruleSet: 'dutch-diving' },
    ['dutch-full: date-in-the-future, overdue-by-one-reading (common-practice), secondary-source (common-practice)'],
  ],
  [
    'a permit that was not read, of an age at which the alloy is presumed',
    { system: 'US', specification: 'special permit', firstTest: '1986-06', retests: [] },
    us,
    ['us-6351: presumed-6351 (notice-94-7)', 'stamp: permit-decides'],
  ],
  [
    'the terms of a permit say nothing of a type that has its rule',
    aluminium,
    { ...us, permit: { months: 12 } },
    ['us-five-years: due (cfr-49-180-209)'],
  ],
  [
    'no star, no ten years, whatever the use',
    { system: 'US', specification: '3AA', firstTest: '2024-06', retests: [] },
    { ...us, service: 'dry listed gas', meetsStarConditions: true },
    ['us-five-years: due (cfr-49-180-209)'],
  ],
  [
    'the milder rule for metal where the metal is known',
    { ...old, firstTest: '2026-05' },
    { ruleSet: 'french-diving', isInspectedYearly: true, putIntoService: '2026-05' },
    [
      'french-yearly: due (french-order-2017), secondary-source (french-order-2017)',
      'french-six-years: due (french-order-2017)',
    ],
  ],
  [
    'and the stricter one where it is not',
    { system: 'METRIC-OLD', firstTest: '2026-05', retests: [] },
    { ruleSet: 'french-diving', isInspectedYearly: true, putIntoService: '2026-05' },
    [
      'french-yearly: due (french-order-2017), secondary-source (french-order-2017)',
      'french-two-years: due (french-order-2017)',
    ],
  ],
  [
    'a Spanish reject mark on a US shoulder',
    { system: 'US', specification: '3AA', firstTest: '2024-06', retests: [{ date: '2026-06', suffixes: ['R'] }] },
    { ruleSet: 'spanish-diving' },
    [
      'spanish-visual: reject-mark (rd-809-2021), overdue (rd-809-2021), filled-before-due (cfr-49-180-205)',
      'spanish-full: reject-mark (rd-809-2021), due (rd-809-2021)',
    ],
  ],
])('%s', (_, given, options, wanted) => {
  const got = codes(given, options)
  expect(got.map((row) => row.replaceAll(/, date-may-be-expiry|, material-not-stated/g, ''))).toEqual(wanted)
})

test('the sources of a row are those of its rule and of its doubts, each once', () => {
  const sources = (given: Given, options: Omit<RequalificationOptions, 'asOf'>): readonly (readonly string[])[] =>
    rowsOf(given, options).map((row) => row.sources)
  const presumed = { system: 'US', specification: '3AL', firstTest: '1988-06', retests: [] } as const
  expect(sources(presumed, us)).toEqual([['cfr-49-180-209'], ['cfr-49-180-205-2015', 'notice-94-7']])
  expect(sources({ ...old, specification: 'EN 12245', system: 'ADR' }, { ruleSet: 'canadian-diving' })).toEqual([[]])
  expect(sources({ ...old, firstTest: '2027-05' }, { ruleSet: 'dutch-diving' })).toEqual([['common-practice']])
})

test('three readings of two marks of unknown kind, the last mark as the plain one', () => {
  const cylinder = {
    ...old,
    firstTest: '2022-05',
    retests: [
      { date: '2024-05', suffixes: [] },
      { date: '2026-05', suffixes: [] },
    ],
  } as const
  expect(rowsOf(cylinder, { ruleSet: 'dutch-diving' })[0]?.readings).toEqual([
    { due: '2027-05', last: '2022-05', because: expect.stringContaining('2026-05') },
    { due: '2029-05', last: '2024-05', because: expect.stringContaining('2026-05') },
    { due: '2031-05', last: '2026-05' },
  ])
})

test('a date that the stamp names is valid through its last day', () => {
  const [row] = rowsOf({ ...old, deadlines: [{ date: '2027-02', kind: 'next due' }] }, { ruleSet: 'dutch-diving' })
  expect(row?.because[0]?.text).toBe('the stamp names 2027-02 (next due), valid through 2027-02-28')
  expect(row).not.toHaveProperty('rule')
  expect(row).not.toHaveProperty('last')
})

test('texts of the reasons name what they speak of', () => {
  const text = (given: Given, options: Omit<RequalificationOptions, 'asOf'>, code: string): string | undefined =>
    rowsOf(given, options)
      .flatMap(({ because }) => because)
      .find((reason) => reason.code === code)?.text
  const { material: _, ...unstated } = { ...old, firstTest: '2025-01' } as const
  expect(text(unstated, { ruleSet: 'japanese-diving' }, 'overdue-if-of-this-metal')).toBe(
    'was due in 2026-01 if it is aluminium',
  )
  expect(text(unstated, { ruleSet: 'japanese-diving' }, 'material-not-stated')).toContain('is for aluminium,')
  expect(text(unstated, { ruleSet: 'carriage-p200' }, 'no-rule')).toBe(
    'rule set carriage-p200 has no interval for a cylinder without a specification',
  )
  expect(text({ ...old, system: 'US', specification: '4L' }, us, 'no-rule')).toBe(
    'rule set us-180.209 has no interval for 4L',
  )
  expect(text({ ...old, firstTest: '2027-01' }, { ruleSet: 'dutch-diving' }, 'date-in-the-future')).toContain('2027-01')
  expect(text({ ...old, firstTest: '2020-01' }, { ruleSet: 'dutch-diving' }, 'overdue')).toBe(
    'was due in 2025-01; not to be filled before requalification',
  )
  expect(text(old, { ruleSet: 'finnish-diving' }, 'superseded')).toContain('before the law of 2016')
  expect(
    text({ ...old, firstTest: '2023-05' }, { ruleSet: 'french-diving' }, 'counts-from-putting-into-service'),
  ).toContain('2024-05')
  const german = { ...old, firstTest: '2014-05', retests: [{ date: '2026-05', suffixes: [] }] } as const
  expect(rowsOf(german, { ruleSet: 'german-diving' })[0]?.readings?.[0]?.because).toBe(
    'if 2026-05 is the next due date, as German shoulders show it',
  )
})

test.each<[string, RuleSetId, Partial<RequalificationHistory>, Partial<RequalificationOptions>, string]>([
  ['before 2003 too', 'german-diving-before-2003', { retests: [{ date: '2025-05', suffixes: [] }] }, {}, '2025-05'],
  [
    'an inspection stated in the month of the question counts',
    'danish-diving',
    {},
    { lastInspection: '2026-11' },
    '2027-11',
  ],
  ['one stated for the next month does not', 'danish-diving', {}, { lastInspection: '2026-12' }, '2025-05'],
  ['an older one than the stamp does not', 'danish-diving', {}, { lastInspection: '2023-01' }, '2025-05'],
  [
    'an inspection in Austria in the year before the step has done it',
    'austrian-diving',
    { firstTest: '2019-05', retests: [{ date: '2022-06', kind: 'visual', suffixes: [] }] },
    {},
    '2026-05',
  ],
  [
    'one a month sooner has not',
    'austrian-diving',
    { firstTest: '2019-05', retests: [{ date: '2022-05', kind: 'visual', suffixes: [] }] },
    {},
    '2023-05',
  ],
  [
    'an external one has not',
    'austrian-diving',
    { firstTest: '2019-05', retests: [{ date: '2022-05', kind: 'external visual', suffixes: [] }] },
    {},
    '2023-05',
  ],
  [
    'an external one in that year has not either',
    'austrian-diving',
    { firstTest: '2019-05', retests: [{ date: '2022-06', kind: 'external visual', suffixes: [] }] },
    {},
    '2023-05',
  ],
  [
    'a mark behind the last step may have been the full test',
    'austrian-diving',
    { firstTest: '2019-05', retests: [{ date: '2026-06', suffixes: [] }] },
    {},
    '2029-05',
  ],
  [
    'an inspection stated for a cylinder without a date counts',
    'yearly-visual',
    { firstTest: undefined },
    { lastInspection: '2026-05' },
    '2027-05',
  ],
  [
    'putting into service is nothing to a rule that counts from the stamp',
    'dutch-diving',
    {},
    { putIntoService: '2020-05' },
    '2029-05',
  ],
  [
    'an end of life is no next date',
    'german-diving',
    { retests: [{ date: '2025-05', suffixes: [] }], deadlines: [{ date: '2044-05', kind: 'end of life' }] },
    {},
    '2025-05',
  ],
  [
    'behind the last step there is none',
    'austrian-diving',
    { firstTest: '2019-05', retests: [{ date: '2025-06', kind: 'visual', suffixes: [] }] },
    {},
    '2029-05',
  ],
])('%s', (_, ruleSet, given, options, due) => {
  expect(rowsOf({ ...old, ...given }, { ruleSet, ...options })[0]?.due).toBe(due)
})

describe('a register', () => {
  const one = (stamp: Given, days: number) =>
    dueWithin([{ id: 'A', ruleSet: 'dutch-diving', stamp }], { asOf, days: days })[0]

  test('due on the last of the days asked for is due, a day later is later', () => {
    const cylinder = { ...old, firstTest: '2021-12' } as const // 2026-12-31: 36 days
    expect([one(cylinder, 36)?.state, one(cylinder, 35)?.state]).toEqual(['due', 'later'])
  })

  test('findings travel with the row, none where the dates were given by hand', () => {
    const text = 'AIR 10 L\nPS 200 BAR PT 300 BAR\nNR 77142 FOREZ\n05.2024'
    expect(one(text, 0)?.findings).toEqual(readStamp(text, { asOf }).findings)
    expect(one(old, 0)?.findings).toEqual([])
    expect(one('nothing', 0)).toMatchObject({ state: 'error', findings: [], error: { code: 'stamp' } })
  })

  test('two-digit years count back from the day of the register', () => {
    expect(
      one('AIR 10 L\nPS 200 BAR PT 300 BAR\nNR 77142 FOREZ\n05.24', 0)?.findings.map(({ code }) => code),
    ).not.toContain('century-assumed')
  })

  test('a later row that is undetermined decides before an earlier one that is within', () => {
    const star = {
      system: 'US',
      specification: '3AA',
      firstTest: '2001-06',
      retests: [{ date: '2023-06', kind: 'hydraulic', suffixes: ['★'] }],
    } as const
    const [row] = dueWithin([{ id: 'A', ruleSet: 'us-180.209', stamp: star }], { asOf, days: 3 })
    expect([row?.state, row?.requalification?.rule?.id]).toEqual(['undetermined', 'us-star'])
  })

  test('a doubt beside a date is undetermined, and so is a row without a date', () => {
    expect(one({ ...old, firstTest: '2027-05' }, 0)?.state).toBe('undetermined')
    expect(one({ ...old, retests: [{ date: '2027-05', suffixes: [] }] }, 0)?.state).toBe('undetermined')
  })

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('%d days are refused', (days) => {
    expect(() => one(old, days)).toThrow(expect.objectContaining({ code: 'range', argument: 'options.days' }))
  })

  test('a misspelt option, a bad day and a misspelt row are named', () => {
    const refused = (argument: string): unknown => expect.objectContaining({ argument })
    expect(() => dueWithin([], { asOf } as never)).toThrow(refused('options.days'))
    expect(() => dueWithin([], { days: 3 } as never)).toThrow(refused('options.asOf'))
    expect(() => dueWithin([], { asOf: '2026-13-01', days: 3 })).toThrow(refused('options.asOf'))
    const [row] = dueWithin([{ id: 'A', ruleSet: 'dutch-diving', stamp: old, rule: 1 } as never], {
      asOf,
      days: 3,
    })
    expect(row?.error?.argument).toBe('row.rule')
  })

  test('an error that is not ours is not swallowed', () => {
    const stamp = new Proxy(old, {
      get: () => {
        throw new TypeError('of the caller')
      },
    })
    expect(() => one(stamp, 0)).toThrow(TypeError)
  })
})

test.each([
  [{}, { ruleSet: 'dutch-diving', asOf: '2026-13' }, 'options.asOf'],
  [{}, { asOf }, 'options.ruleSet'],
  [{}, { ruleSet: 'dutch-diving' }, 'options.asOf'],
  [{}, { ruleSet: 'dutch', asOf }, 'options.ruleSet'],
  [{}, { ruleSet: 'dutch-diving', asOf, service: 'swimming' }, 'options.service'],
  [{}, { ruleSet: 'dutch-diving', asOf, alloy: 'steel' }, 'options.alloy'],
  [{}, { ruleSet: 'dutch-diving', asOf, triggers: ['rain'] }, 'options.triggers[0]'],
  [{}, { ruleSet: 'dutch-diving', asOf, permit: {} }, 'options.permit.months'],
  [{}, { ruleSet: 'dutch-diving', asOf, permit: { months: 3, life: 4 } }, 'options.permit.life'],
  [{}, { ruleSet: 'danish-diving', asOf, lastInspection: '2026-13' }, 'options.lastInspection'],
  [{}, { ruleSet: 'french-diving', asOf, putIntoService: '2026-13' }, 'options.putIntoService'],
  [{ firstTest: '2020-13' }, { ruleSet: 'dutch-diving', asOf }, 'cylinder.firstTest'],
  [{ manufactured: '2020-13' }, { ruleSet: 'dutch-diving', asOf }, 'cylinder.manufactured'],
  [{ retests: [{ date: '2020-13', suffixes: [] }] }, { ruleSet: 'dutch-diving', asOf }, 'cylinder.retests[0].date'],
  [
    { deadlines: [{ date: '2020-13', kind: 'next due' }] },
    { ruleSet: 'dutch-diving', asOf },
    'cylinder.deadlines[0].date',
  ],
  [
    { deadlines: [{ date: '2020-13', kind: 'end of life' }] },
    { ruleSet: 'dutch-diving', asOf },
    'cylinder.deadlines[0].date',
  ],
  [{ retests: undefined }, { ruleSet: 'dutch-diving', asOf }, 'cylinder.retests'],
  [{ tests: [] }, { ruleSet: 'dutch-diving', asOf }, 'cylinder.tests'],
])('%j with %j is refused by name', (marks, options, argument) => {
  expect(() => requalifications({ ...old, ...marks } as never, options as never)).toThrow(
    expect.objectContaining({ argument }),
  )
})

describe('the plus mark', () => {
  const steel = (...retests: StampMarks['retests']): RequalificationHistory => ({
    system: 'US',
    specification: '3AA',
    firstTest: '2004-06',
    retests,
  })
  const plus = { date: '2024-06', kind: 'hydraulic', suffixes: ['+'] } as const
  const said = (cylinder: RequalificationHistory) => {
    const { isCurrent, findings, because } = plusMark(cylinder, { asOf })
    for (const { text } of because) expect(text.length).toBeGreaterThan(20)
    return [
      isCurrent,
      findings.plusSign,
      findings.specification,
      because.map(({ code, source = '-' }) => `${code} ${source}`),
    ]
  }

  test('is current with the last test, and whatever was looked at since', () => {
    expect(said(steel(plus))).toEqual([true, true, true, []])
    expect(said(steel(plus, { date: '2026-01', kind: 'visual', suffixes: [] }))).toEqual([true, true, true, []])
    expect(said(steel(plus, { date: '2026-01', kind: 'external visual', suffixes: [] }))).toEqual([
      true,
      true,
      true,
      [],
    ])
  })

  test('of the first test counts until a later test comes', () => {
    expect(said({ ...steel(), firstTest: '2024-06', firstTestSuffixes: ['+'] })).toEqual([true, true, true, []])
    expect(
      said({
        ...steel({ date: '2026-01', kind: 'hydraulic', suffixes: [] }),
        firstTest: '2024-06',
        firstTestSuffixes: ['+'],
      }),
    ).toEqual([false, false, true, ['plus-ended memory']])
  })

  test('ends with a later test without it, in whatever order the marks stand', () => {
    const plain = { date: '2025-06', kind: 'hydraulic', suffixes: [] } as const
    for (const cylinder of [steel(plus, plain), steel(plain, plus)])
      expect(said(cylinder)).toEqual([false, false, true, ['plus-ended memory']])
  })

  test('lapses with the test that was due', () => {
    expect(said(steel({ ...plus, date: '2020-06' }))).toEqual([false, false, true, ['plus-lapsed -']])
    expect(plusMark(steel({ ...plus, date: '2020-06' }), { asOf }).because[0]?.text).toContain('2025-06')
  })

  test('is open where the due date is', () => {
    const [isCurrent, sign, , because] = said(steel(plus, { date: '2027-06', kind: 'hydraulic', suffixes: ['+'] }))
    expect([isCurrent, sign, because]).toEqual([false, undefined, ['plus-undetermined -']])
  })

  test('is none on another type, and a cylinder that never had one has nothing said of it', () => {
    const other = { ...steel(plus), specification: '3AL' } as const
    expect(said(other)).toEqual([false, true, false, ['plus-not-allowed cfr-49-173-302']])
    expect(said(steel({ ...plus, suffixes: [] }))).toEqual([false, false, true, []])
    const { specification: _, ...unknown } = steel(plus)
    expect(plusMark(unknown, { asOf }).findings.specification).toBe(false)
  })

  test('asks for the day', () => {
    expect(() => plusMark(steel(plus), {} as never)).toThrow(expect.objectContaining({ argument: 'options.asOf' }))
    expect(() => plusMark(steel(plus), { asOf, gas: true } as never)).toThrow(
      expect.objectContaining({ argument: 'options.gas' }),
    )
  })
})

describe('a test pressure', () => {
  const said = (marks: Parameters<typeof testPressure>[0], options: Parameters<typeof testPressure>[1] = {}) => {
    const { pressure, basis, ratio, derived, because, sources, cautions } = testPressure(marks, options)
    expect(cautions).toEqual(['requalification'])
    for (const { text } of because) expect(text.length).toBeGreaterThan(20)
    const bars = (value: typeof pressure): number | undefined => value && Number(inUnit(value, bar).toFixed(2))
    return {
      is: [bars(pressure), basis, ratio, bars(derived)],
      because: because.map(({ code, source = '-' }) => `${code} ${source}`),
      sources,
    }
  }
  const un = { system: 'UN', specification: 'ISO 9809-1', workingPressure: gauge(200, bar) } as const

  test.each([
    [
      'derived from a service pressure',
      { specification: '3AA', servicePressure: gauge(300, bar) },
      {},
      [500, 'derived', '5/3', undefined],
      ['derived cfr-49-180-209'],
      ['cfr-49-180-209'],
    ],
    [
      'derived from a working pressure',
      un,
      {},
      [300, 'derived', '3/2', undefined],
      ['derived cfr-49-173-302b'],
      ['cfr-49-173-302b'],
    ],
    [
      'of an older European shoulder',
      { system: 'METRIC-OLD', workingPressure: gauge(200, bar) },
      {},
      [300, 'derived', '3/2', undefined],
      ['derived memory'],
      ['memory'],
    ],
    [
      'marked as the rule would have it',
      { ...un, testPressure: gauge(300, bar) },
      {},
      [300, 'marked', undefined, 300],
      ['marked -'],
      ['cfr-49-173-302b'],
    ],
    [
      'marked within the rounding',
      { ...un, testPressure: gauge(299.8, bar) },
      {},
      [299.8, 'marked', undefined, 300],
      ['marked -'],
      ['cfr-49-173-302b'],
    ],
    [
      'marked lower',
      { ...un, testPressure: gauge(299, bar) },
      {},
      [299, 'marked', undefined, 300],
      ['marked -', 'marked-below-derived -'],
      ['cfr-49-173-302b'],
    ],
    [
      'marked higher',
      { ...un, testPressure: gauge(301, bar) },
      {},
      [301, 'marked', undefined, 300],
      ['marked -', 'marked-above-derived -'],
      ['cfr-49-173-302b'],
    ],
    [
      'marked where no rule is known',
      { testPressure: gauge(300, bar) },
      {},
      [300, 'marked', undefined, undefined],
      ['marked -'],
      [],
    ],
    [
      'of an older European shoulder with a standard',
      { system: 'METRIC-OLD', specification: 'EN 1964-1', workingPressure: gauge(200, bar) },
      {},
      [300, 'derived', '3/2', undefined],
      ['derived cfr-49-173-302b'],
      ['cfr-49-173-302b'],
    ],
    [
      'of type 3',
      { specification: '3', servicePressure: gauge(1800, psi) },
      {},
      [206.84, 'fixed', undefined, undefined],
      ['fixed cfr-49-180-209'],
      ['cfr-49-180-209'],
    ],
    [
      'of type 4L',
      { specification: '4L', servicePressure: gauge(200, psi) },
      {},
      [undefined, 'unknown', undefined, undefined],
      ['unknown -'],
      [],
    ],
    [
      'without a pressure',
      { specification: '3AA' },
      {},
      [undefined, 'unknown', undefined, undefined],
      ['unknown -'],
      [],
    ],
    [
      'foreign under the US rule',
      { ...un, system: 'ADR', testPressure: gauge(300, bar) },
      { ruleSet: 'us-180.209' },
      [333.33, 'rule set', '5/3', undefined],
      ['us-foreign-test-pressure cfr-49-180-209', 'marked-below-derived -'],
      ['cfr-49-180-209'],
    ],
    [
      'foreign and marked high enough',
      { ...un, system: 'ADR', testPressure: gauge(334, bar) },
      { ruleSet: 'us-180.209' },
      [334, 'marked', undefined, 300],
      ['marked -', 'marked-above-derived -'],
      ['cfr-49-173-302b'],
    ],
    [
      'of a shoulder that names no family',
      { workingPressure: gauge(200, bar), testPressure: gauge(300, bar) },
      { ruleSet: 'us-180.209' },
      [300, 'marked', undefined, undefined],
      ['marked -'],
      [],
    ],
    [
      'foreign without a rule for it',
      { workingPressure: gauge(200, bar), system: 'ADR' },
      { ruleSet: 'us-180.209' },
      [333.33, 'rule set', '5/3', undefined],
      ['us-foreign-test-pressure cfr-49-180-209'],
      ['cfr-49-180-209'],
    ],
    [
      'of a permit',
      { specification: 'special permit', servicePressure: gauge(200, bar) },
      { permit: { ratio: 1.5 } },
      [300, 'permit', undefined, undefined],
      ['permit -'],
      [],
    ],
    [
      'of a permit without a pressure',
      { specification: 'special permit' },
      { permit: { ratio: 1.5 } },
      [undefined, 'unknown', undefined, undefined],
      ['permit-decides -'],
      [],
    ],
    [
      'of a permit that was not read',
      { specification: 'special permit', servicePressure: gauge(200, bar) },
      {},
      [undefined, 'unknown', undefined, undefined],
      ['permit-decides -'],
      [],
    ],
  ] as const)('%s', (_, marks, options, is, because, sources) => {
    expect(said(marks as never, options as never)).toEqual({ is, because, sources })
  })

  test('says what is missing, and what the other figure is', () => {
    const text = (marks: Parameters<typeof testPressure>[0]): string =>
      testPressure(marks)
        .because.map((reason) => reason.text)
        .join('; ')
    expect(text({ specification: '4L', servicePressure: gauge(200, psi) })).toBe(
      'no ratio is known for this specification',
    )
    expect(text({ specification: '3AA' })).toBe('no service or working pressure is marked')
    expect(text({ specification: '3AA', servicePressure: gauge(300, bar) })).toBe('5/3 of the service pressure')
    expect(text(un)).toBe('3/2 of the working pressure')
    expect(text({ ...un, testPressure: gauge(290, bar) })).toContain('3/2: 300.0 bar, not the 290.0 bar marked')
  })
})
