import { expect, test } from 'vitest'
import {
  assessFilling,
  dueWithin,
  explainStamp,
  findingEvidence,
  nextRequalification,
  plusMark,
  readStamp,
  type Stamp,
  testKindOf,
  testPressure,
  writeStamp,
} from '../../../src/cylinder/index.ts'
import { us } from '../../fixtures/filling-requests.ts'

const stamp = readStamp('DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23 +\nUNREAD', { asOf: '2026-11' })
const rules = { ruleSet: 'us-180.209', asOf: '2026-11-25' } as const

// What stands in a stamp instead, and the name that the refusal must give, behind that of the argument.
const spoilt: readonly (readonly [string, object])[] = [
  ['system', { system: 'UK' }],
  ['prefix', { prefix: 'dot' }],
  ['specification', { specification: '3ALUMINIUM' }],
  ['specification', { specification: 'constructor' }],
  ['permit', { permit: 12_345 }],
  ['dual.servicePressure', { dual: { prefix: 'TC', specification: '3ALM' } }],
  ['dual.prefix', { dual: { prefix: 'UK', specification: '3ALM', servicePressure: 2e7 } }],
  ['servicePressure', { servicePressure: '3000 psi' }],
  ['servicePressure', { servicePressure: -1 }],
  ['testPressure', { testPressure: Number.NaN }],
  ['waterCapacity', { waterCapacity: Infinity }],
  ['thread.designation', { thread: {} }],
  ['thread.form', { thread: { designation: 'M25x2', form: 'conical' } }],
  ['material', { material: 'aluminum' }],
  ['maker', { maker: 7 }],
  ['firstTest', { firstTest: '2008-13' }],
  ['firstTestSuffixes[0]', { firstTestSuffixes: ['*'] }],
  ['retests', { retests: '10 A902 23' }],
  ['retests[0].date', { retests: [{ date: '2023', suffixes: [] }] }],
  ['retests[0].suffixes', { retests: [{ date: '2023-10' }] }],
  ['retests[1].kind', { retests: [stamp.retests[0], { date: '2023-10', suffixes: [], kind: 'hydro' }] }],
  ['retests[0].tester', { retests: [{ date: '2023-10', suffixes: [], tester: 'A902' }] }],
  ['deadlines[0].kind', { deadlines: [{ date: '2028-10', kind: 'due' }] }],
  ['underwater', { underwater: 'yes' }],
  ['nominal.cubicFeet', { nominal: { identifier: 'S80' } }],
  ['closure', { closure: 'WELD' }],
  ['alloyHint', { alloyHint: '6061' }],
  ['fields', { fields: 3 }],
  ['findings[0].code', { findings: [{ ...stamp.findings[0], code: 'rusty' }] }],
  ['findings[0].severity', { findings: [{ ...stamp.findings[0], severity: 'fatal' }] }],
  ['findings[0].line', { findings: [{ ...stamp.findings[0], line: -1 }] }],
  ['findings[0].detail.wasDue', { findings: [{ ...stamp.findings[0], detail: { wasDue: 'May 2020' } }] }],
]

test.each(spoilt)('a wrong %s of a stamp is refused by its name, wherever a stamp is taken', (name, instead) => {
  const wrong = { ...stamp, ...instead }
  const calls: readonly (readonly [string, () => unknown])[] = [
    ['stamp', () => explainStamp(wrong)],
    ['cylinder', () => nextRequalification(wrong, rules)],
    ['cylinder', () => plusMark(wrong, { asOf: '2026-11' })],
    ['marks', () => testPressure(wrong)],
    ['marks', () => writeStamp(wrong)],
    ['stamp', () => assessFilling({ ...us, stamp: wrong })],
  ]
  for (const [argument, call] of calls) {
    expect(call).toThrow(expect.objectContaining({ argument: `${argument}.${name}` }))
  }
  const [row] = dueWithin([{ id: 'A1', stamp: wrong, ruleSet: 'us-180.209' }], { asOf: '2026-11-25', days: 60 })
  expect([row?.state, row?.error?.argument]).toEqual(['error', `row.stamp.${name}`])
})

test('four figures that are no year of a cylinder are no date', () => {
  const text = '25P D MAREN 508231 H\nPW232 PH348BAR 14.9KG 12.0L 5.1MM\nUN ISO 9809-1 D IN07 2016/03\nK11 09/0412'
  const read = readStamp(text, { asOf: '2026-11' })
  expect(read.retests).toEqual([])
  expect(read.findings.map(({ text: found }) => found)).toContain('09/0412')
  expect(readStamp(text.replace('0412', '2012'), { asOf: '2026-11' }).retests).toHaveLength(1)
  const old = 'AIR 11 L\nPS 200 BAR PE 300 BAR\nFOREZ 22107 13,9 KG\n89-03\n94-05'
  const oldDates = (line: string): readonly string[] =>
    readStamp(`${old}\n${line}`, { asOf: '2026-11' }).retests.map(({ date }) => date)
  expect(['0599-06', '06.0599', '06 0599', '1999-06'].map((line) => oldDates(line).length)).toEqual([1, 1, 1, 2])
})

test('where the marks stand is read by explainStamp alone, and refused there', () => {
  const wrong = { ...stamp, fields: [{ ...stamp.fields[0], start: 'left' }] } as unknown as Stamp
  expect(() => explainStamp(wrong)).toThrow(expect.objectContaining({ argument: 'stamp.fields[0].start' }))
  const unknown = { ...stamp, fields: [{ ...stamp.fields[0], name: 'colour' }] } as unknown as Stamp
  expect(() => explainStamp(unknown)).toThrow(expect.objectContaining({ argument: 'stamp.fields' }))
  expect(nextRequalification(wrong, rules).due).toBe('2028-10')
})

test('letters behind a date, families and findings are refused by themselves too', () => {
  expect(() => testKindOf(['X'] as never, 'US')).toThrow(expect.objectContaining({ argument: 'suffixes[0]' }))
  expect(() => testKindOf('+' as never, 'US')).toThrow(expect.objectContaining({ argument: 'suffixes' }))
  expect(() => testKindOf([], 'UK' as never)).toThrow(expect.objectContaining({ argument: 'system' }))
  expect(testKindOf([], undefined)).toBe('unknown')
  expect(() => findingEvidence([{ code: 'condemned' }] as never)).toThrow(
    expect.objectContaining({ argument: 'findings[0].severity' }),
  )
})

test.each([
  ['lastInspection', '2023'],
  ['putIntoService', 2019],
  ['hasRiskAssessment', 'yes'],
  ['isInspectedYearly', 1],
  ['meetsStarConditions', 'true'],
  ['triggers', 'dropped'],
  ['permit.months', { lifeMonths: 180 }],
])('a wrong %s of the options is refused by its name', (name, value) => {
  const [option = ''] = name.split('.')
  const given = { ...rules, [option]: value } as never
  expect(() => nextRequalification(stamp, given)).toThrow(expect.objectContaining({ argument: `options.${name}` }))
  expect(() => assessFilling({ ...us, rules: given })).toThrow(expect.objectContaining({ argument: `options.${name}` }))
})

test('a register with a row that has no id is refused; any other wrong row keeps its place', () => {
  const days = { asOf: '2026-11-25', days: 60 } as const
  for (const row of [null, 7, { stamp, ruleSet: 'us-180.209' }])
    expect(() => dueWithin([row] as never, days)).toThrow(expect.objectContaining({ argument: 'register[0].id' }))
  const rows = dueWithin([{ id: 'A1', stamp: null, ruleSet: 'us-180.209' }] as never, days)
  expect(rows.map(({ id, state, error }) => [id, state, error?.argument])).toEqual([['A1', 'error', 'row.stamp']])
})
