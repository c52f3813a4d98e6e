import { assert, constantFrom, integer, property } from 'fast-check'
import { expect, test } from 'vitest'
import { daysBetween, lastDayOf, monthsLater, readStamp } from '../../../src/cylinder/marking/index.ts'
import {
  dueWithin,
  nextRequalification,
  plusMark,
  type RuleSetId,
  requalificationRules,
  requalifications,
  testPressure,
} from '../../../src/cylinder/requalification/index.ts'
import { bar, gauge, inUnit, psi } from '../../../src/units/index.ts'

const aluminium = {
  system: 'US',
  specification: '3AL',
  firstTest: '2008-07',
  retests: [{ date: '2023-10', suffixes: [] }],
} as const
const star = { ...aluminium, specification: '3AA', retests: [{ date: '2019-02', suffixes: ['★'] }] } as const

test('months add to months, and the last day follows the calendar', () => {
  expect(monthsLater('2023-08', 60)).toBe('2028-08')
  expect(monthsLater('2023-08-31', 30)).toBe('2026-02')
  expect(monthsLater('2000-01', -1)).toBe('1999-12')
  expect(
    ['2026-02', '2028-02', '1900-02', '2000-02', '2026-04', '2026-12'].map((month) =>
      lastDayOf(month as never).slice(8),
    ),
  ).toEqual(['28', '29', '28', '29', '30', '31'])
  expect(daysBetween('2026-11-25', '2026-11-25')).toBe(0)
  expect(daysBetween('2026-02-28', '2026-03-01')).toBe(1)
  expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2)
  expect(daysBetween('2000-01-01', '2026-01-01')).toBe(26 * 365 + 7) // leap days of 2000, 2004 … 2024
})

test('days between dates agree with the proleptic calendar of the machine', () => {
  assert(
    property(integer({ min: 0, max: 90_000 }), integer({ min: 0, max: 90_000 }), (a, b) => {
      const date = (n: number): `${number}-${number}-${number}` =>
        new Date(Date.UTC(1900, 0, 1) + n * 86_400_000).toISOString().slice(0, 10) as `${number}-${number}-${number}`
      expect(daysBetween(date(a), date(b))).toBe(b - a)
    }),
    { numRuns: 200 },
  )
})

test('a month added and taken away is the same month', () => {
  assert(
    property(integer({ min: 1900 * 12, max: 2100 * 12 }), integer({ min: -500, max: 500 }), (number, count) => {
      const month = monthsLater('1900-01', number - 1900 * 12)
      expect(monthsLater(monthsLater(month, count), -count)).toBe(month)
    }),
    { numRuns: 100 },
  )
})

test.each(['2026-13', '2026-1', '26-11', '2026-02-30', '2026/11', 'November', '0999-01', ''])(
  '%s is no month',
  (text) => {
    expect(() => monthsLater(text as never, 1)).toThrow(expect.objectContaining({ code: 'input', argument: 'month' }))
  },
)

test('what is due in a month is valid through its last day and overdue on the next', () => {
  const on = (asOf: `${number}-${number}-${number}`): [string, number | undefined] => {
    const { verdict, margin } = nextRequalification(aluminium, { ruleSet: 'us-180.209', asOf })
    return [verdict, margin]
  }
  expect(on('2028-10-31')).toEqual(['within', 0])
  expect(on('2028-11-01')).toEqual(['beyond', -1])
})

test('the caller’s rule set decides, never the stamp: one cylinder, four answers', () => {
  const first = (ruleSet: RuleSetId): string | undefined =>
    nextRequalification(aluminium, { ruleSet, asOf: '2026-11' }).due
  expect(first('us-180.209')).toBe('2028-10')
  expect(first('uk-diving')).toBe('2026-04')
  expect(first('yearly-visual')).toBe('2024-10')
  expect(first('us-navy')).toBe('2024-10')
  expect(requalifications(aluminium, { ruleSet: 'us-navy', asOf: '2026-11' }).map(({ due }) => due)).toEqual([
    '2024-10',
    '2028-10',
  ])
})

test('every result names its rule, the edition of the rule, a source and a caution', () => {
  for (const { ruleSet } of requalificationRules) {
    for (const result of requalifications(aluminium, { ruleSet, asOf: '2026-11' })) {
      expect(result.cautions).toContain('requalification')
      if (result.verdict === 'undetermined') expect(result.because).not.toEqual([])
      else
        expect([result.rule?.ruleSet, typeof result.rule?.edition, result.sources.length]).toEqual([
          ruleSet,
          'string',
          1,
        ])
    }
  }
})

test('a star gives ten years to dry listed gases only; without a stated use both intervals are shown', () => {
  const due = (service?: 'diving' | 'dry listed gas'): string[] =>
    requalifications(star, {
      ruleSet: 'us-180.209',
      asOf: '2026-11',
      meetsStarConditions: true,
      ...(service === undefined ? {} : { service }),
    }).map((result) => `${result.due ?? ''} ${result.because.map(({ code }) => code).join(' ')}`)
  expect(due('diving')).toEqual(['2024-02 overdue filled-before-due'])
  expect(due('dry listed gas')).toEqual(['2029-02 due secondary-source'])
  expect(due()).toEqual([
    '2024-02 overdue filled-before-due interval-depends-on-service',
    '2029-02 due interval-depends-on-service secondary-source',
  ])
})

test('3HT: three years, and an end after twenty-four', () => {
  const cylinder = {
    system: 'US',
    specification: '3HT',
    firstTest: '2001-05',
    retests: [{ date: '2024-03', suffixes: [] }],
  } as const
  const results = requalifications(cylinder, { ruleSet: 'us-180.209', asOf: '2026-11' })
  expect(results.map(({ due, verdict, rule }) => [due, verdict, rule?.kind])).toEqual([
    ['2025-05', 'beyond', 'end of service life'],
    ['2027-03', 'within', 'requalification'],
  ])
})

test('an inspection of its own moves the inspection, not the test', () => {
  const options = { ruleSet: 'uk-diving', asOf: '2026-11', lastInspection: '2026-03-14' } as const
  expect(requalifications(aluminium, options).map(({ due, rule }) => [due, rule?.kind])).toEqual([
    ['2028-09', 'visual inspection'],
    ['2028-10', 'requalification'],
  ])
})

test('no date, no rule and a special permit are undetermined, each with its reason', () => {
  const code = (cylinder: Parameters<typeof nextRequalification>[0], ruleSet: RuleSetId): string | undefined =>
    nextRequalification(cylinder, { ruleSet, asOf: '2026-11' }).because[0]?.code
  expect(code({ ...aluminium, retests: [], firstTest: undefined }, 'us-180.209')).toBe('no-date')
  expect(code({ ...aluminium, specification: '39' }, 'us-180.209')).toBe('no-rule')
  expect(code({ ...aluminium, specification: 'special permit' }, 'us-180.209')).toBe('permit-decides')
  expect(code(aluminium, 'carriage-p200')).toBe('no-rule')
})

test('a register keeps every row, the bad ones with their error', () => {
  const rows = dueWithin(
    [
      { id: 'A1', ruleSet: 'us-180.209', stamp: 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n12 A902 21' },
      { id: 'A2', ruleSet: 'us-180.209', stamp: 'scratched beyond reading' },
      { id: 'A3', ruleSet: 'no such rules' as RuleSetId, stamp: 'DOT-3AL3000\nP4711 BRISKA\n07 V 08' },
      { id: 'A4', ruleSet: 'us-180.209', stamp: aluminium },
      { id: 'A5', ruleSet: 'us-180.209', stamp: 'DOT-3AL3000\nP4711 BRISKA\n07 V 08' },
      { id: 'A6', ruleSet: 'us-180.209', stamp: 'DOT-SP12345-3442\nP4711 BRISKA\n07 V 08' },
    ],
    { asOf: '2026-11-25', days: 60 },
  )
  expect(rows.map(({ id, state }) => `${id} ${state}`)).toEqual([
    'A1 due',
    'A2 error',
    'A3 error',
    'A4 later',
    'A5 overdue',
    'A6 undetermined',
  ])
  expect(rows[1]?.error).toMatchObject({ code: 'stamp', position: { line: 0, start: 0, end: 9 } })
  expect(rows[2]?.error).toMatchObject({ code: 'input', argument: 'ruleSet' })
})

test('a day more of notice never takes a row out of the list', () => {
  assert(
    property(integer({ min: 0, max: 1500 }), constantFrom('2022-03', '2024-11', '2026-01'), (days, date) => {
      const register = [
        { id: 'A1', ruleSet: 'us-180.209', stamp: { ...aluminium, retests: [{ date, suffixes: [] }] } },
      ] as const
      const state = (n: number): string | undefined => dueWithin(register, { asOf: '2026-11-25', days: n })[0]?.state
      expect(state(days) === 'due' && state(days + 1) === 'later').toBe(false)
    }),
    { numRuns: 100 },
  )
})

test('the plus: type and date from the stamp, the rest unknown until stated, and never earned', () => {
  const stamp = readStamp('DOT-3AA2250\nLP33107 SKERRY\n11 W 19 +\n7 C208 24 +', { asOf: '2026-11' })
  const known = { gas: true, reliefDevice: true, elasticExpansion: true, wallStress: true, visualExamination: true }
  expect(plusMark(stamp, { asOf: '2026-11' })).toMatchObject({ outcome: 'undetermined', isCurrent: true })
  expect(plusMark(stamp, { asOf: '2026-11', known })).toMatchObject({ outcome: 'possible', unknown: [], unmet: [] })
  expect(plusMark(stamp, { asOf: '2029-08', known })).toMatchObject({
    outcome: 'not-possible',
    unmet: ['plusSign'],
    isCurrent: false,
  })
  expect(plusMark(stamp, { asOf: '2026-11', known: { ...known, reliefDevice: false } }).unmet).toEqual(['reliefDevice'])
  expect(plusMark(stamp, { asOf: '2026-11' }).cautions).toContain('plus-mark')
})

// Trade facts without a source: 200 bar cylinders are tested at 300, 232 at 348 (common practice).
test.each([
  [200, 300],
  [232, 348],
])('a %s bar cylinder is tested at %s bar', (working, tested) => {
  for (const marks of [{ specification: 'ISO 9809-1' }, { system: 'METRIC-OLD' }] as const) {
    const { pressure, ratio, basis } = testPressure({ ...marks, workingPressure: gauge(working, bar) })
    expect([inUnit(pressure ?? gauge(0, bar), bar), ratio, basis]).toEqual([tested, '3/2', 'derived'])
  }
})

test('a special permit has no test pressure until its terms are stated', () => {
  const marks = { specification: 'special permit', servicePressure: gauge(3442, psi) } as const
  expect(testPressure(marks)).toMatchObject({ basis: 'unknown', because: [{ code: 'permit-decides' }] })
  // One published family: 3/2 of a design pressure of 3500 psi, though 3442 is stamped; 3/2 of the stamp would be 5163.
  const { pressure, basis } = testPressure(marks, { permit: { ratio: 1.5, designPressure: gauge(3500, psi) } })
  expect([inUnit(pressure ?? gauge(0, psi), psi).toFixed(6), basis]).toEqual(['5250.000000', 'permit'])
})

test('a marked test pressure wins over the rule, and a contradiction is said, not resolved', () => {
  const low = testPressure({
    specification: 'ISO 7866',
    workingPressure: gauge(200, bar),
    testPressure: gauge(250, bar),
  })
  expect([low.basis, inUnit(low.pressure ?? gauge(0, bar), bar), inUnit(low.derived ?? gauge(0, bar), bar)]).toEqual([
    'marked',
    250,
    300,
  ])
  expect(low.because.map(({ code }) => code)).toEqual(['marked', 'marked-below-derived'])
  const same = testPressure({
    specification: 'ISO 7866',
    workingPressure: gauge(206, bar),
    testPressure: gauge(310, bar),
  })
  expect(same.because.map(({ code }) => code)).toEqual(['marked', 'marked-above-derived'])
  expect(testPressure({ specification: '3' })).toMatchObject({ basis: 'fixed' })
  expect(testPressure({ specification: '3E', servicePressure: gauge(1800, psi) })).toMatchObject({ basis: 'unknown' })
})
