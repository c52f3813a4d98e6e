import { describe, expect, test } from 'vitest'
import type { Retest, StampMarks } from '../../../src/cylinder/marking/index.ts'
import { type RuleSetId, requalifications } from '../../../src/cylinder/requalification/index.ts'

// The last month on which something holds, and the first on which it does not; what counts in the month of the question itself.

type Cylinder = Partial<StampMarks> & Pick<StampMarks, 'retests'>
const asOf = '2026-11'
const rows = (cylinder: Cylinder, ruleSet: RuleSetId): readonly string[] =>
  requalifications(cylinder, { ruleSet, asOf }).map(
    ({ rule, due, verdict, because }) => `${rule?.id ?? 'stamp'} ${due ?? '-'} ${verdict} ${because[0]?.code ?? ''}`,
  )
const test60 = (date: Retest['date'], kind: NonNullable<Retest['kind']> = 'hydraulic'): Retest => ({
  date,
  kind,
  suffixes: [],
})
const old = (firstTest: StampMarks['firstTest'], ...retests: Retest[]): Cylinder => ({
  system: 'METRIC-OLD',
  material: 'steel',
  firstTest,
  retests,
})

describe('the month of the question', () => {
  test('a test in it counts, one in the next month does not', () => {
    expect(rows(old('2015-03', test60('2026-11')), 'dutch-diving')).toEqual(['dutch-full 2031-11 within due'])
    expect(rows(old('2025-03', test60('2026-12')), 'dutch-diving')).toEqual([
      'dutch-full 2030-03 undetermined date-in-the-future',
    ])
  })

  test('a first test in it counts, one in the next month does not', () => {
    expect(rows(old('2026-11'), 'dutch-diving')).toEqual(['dutch-full 2031-11 within due'])
    expect(rows(old('2026-12'), 'dutch-diving')).toEqual(['dutch-full - undetermined date-in-the-future'])
  })

  test('what is due in it is not overdue', () => {
    expect(rows(old('2021-11'), 'dutch-diving')).toEqual(['dutch-full 2026-11 within due'])
    expect(rows(old('2021-10'), 'dutch-diving')).toEqual(['dutch-full 2026-10 beyond overdue'])
  })

  test.each([
    ['next due', 'due', 'overdue'],
    ['expiry', 'due', 'overdue'],
    ['end of life', 'life-ends', 'life-ended'],
  ] as const)('a stamped %s in it still holds', (kind, holds, ended) => {
    const named = (date: '2026-11' | '2026-10'): readonly string[] =>
      rows({ ...old('2024-03'), deadlines: [{ date, kind }] }, 'dutch-diving').filter((row) => row.startsWith('stamp'))
    expect(named('2026-11')).toEqual([`stamp 2026-11 within ${holds}`])
    expect(named('2026-10')).toEqual([`stamp 2026-10 beyond ${ended}`])
  })
})

describe('a stamped next date that a test has answered', () => {
  const chain = (answered: Retest['date'], ...deadlines: NonNullable<StampMarks['deadlines']>): readonly string[] =>
    rows({ ...old('2016-05', test60(answered)), deadlines }, 'dutch-diving').filter((row) => row.startsWith('stamp'))
  const next = { date: '2026-09', kind: 'next due' } as const
  const after = { date: '2031-09', kind: 'next due' } as const

  test('is dropped where a later one is stamped behind it', () => {
    expect(chain('2026-09', next, after)).toEqual(['stamp 2031-09 within due'])
  })

  test('stands where nothing follows', () => {
    expect(chain('2026-09', next)).toEqual(['stamp 2026-09 beyond overdue'])
  })

  test('stands where the test came more than a year before it', () => {
    expect(chain('2025-09', next, after)).toEqual(['stamp 2031-09 within due'])
    expect(chain('2025-08', next, after)).toEqual(['stamp 2026-09 beyond overdue', 'stamp 2031-09 within due'])
  })

  test('never drops an end of life', () => {
    const end = { date: '2026-09', kind: 'end of life' } as const
    expect(chain('2026-09', end, after)).toContain('stamp 2026-09 beyond life-ended')
    expect(chain('2026-09', next, { date: '2031-09', kind: 'end of life' })).toContain('stamp 2026-09 beyond overdue')
  })
})

test('a US mark of an unknown kind is no next date, under German rules either', () => {
  const cylinder: Cylinder = {
    system: 'US',
    specification: '3AA',
    material: 'steel',
    firstTest: '2015-03',
    retests: [{ date: '2026-05', kind: 'unknown', suffixes: ['R'] }],
  }
  expect(rows(cylinder, 'german-diving')).toContain('german-strength 2031-05 within due')
})

test('a rule for one metal leaves a cylinder of no stated metal undetermined, and judges a known one', () => {
  const aluminium = old('2024-05')
  const { material: _, ...unstated } = aluminium
  expect(rows(unstated, 'japanese-diving')[0]).toBe('japanese-aluminium 2025-05 undetermined material-not-stated')
  expect(rows({ ...aluminium, material: 'aluminium' }, 'japanese-diving')[0]).toBe(
    'japanese-aluminium 2025-05 beyond overdue',
  )
  expect(rows({ ...aluminium, material: 'steel' }, 'japanese-diving')).toEqual(['japanese-full 2029-04 within due'])
})

test('what is overdue by a date stands before what is against the cylinder without one', () => {
  const cylinder: Cylinder = {
    system: 'US',
    specification: 'special permit',
    firstTest: '2008-06',
    retests: [],
    deadlines: [{ date: '2023-06', kind: 'end of life' }],
  }
  expect(rows(cylinder, 'us-180.209').map((row) => row.split(' ').slice(0, 3).join(' '))).toEqual([
    'stamp 2023-06 beyond',
    'stamp - beyond',
  ])
})

test('the star is for cylinders made from 1946 on', () => {
  const star = (firstTest: StampMarks['firstTest']): readonly string[] =>
    rows(
      {
        system: 'US',
        specification: '3A',
        firstTest,
        retests: [{ date: '2022-06', kind: 'hydraulic', suffixes: ['★'] }],
      },
      'us-180.209',
    )
  expect(star('1945-12').map((row) => row.split(' ')[0])).toEqual(['us-five-years'])
  expect(star('1946-01').map((row) => row.split(' ')[0])).toEqual(['us-five-years', 'us-star'])
})
