import { expect, test } from 'vitest'
import { assessFilling } from '../../../src/cylinder/index.ts'
import { readStamp } from '../../../src/cylinder/marking/index.ts'
import { dueWithin, type PermitRow, requalifications } from '../../../src/cylinder/requalification/index.ts'
import { dryAir } from '../../../src/gas-law/index.ts'
import { absolute, atmosphere, celsius, temperatureOf } from '../../../src/units/index.ts'

const asOf = '2026-11-25'
const stamp = (permit: string): string => `DOT-${permit}-4500\nOT60412 KELDA\n06 A 19\n06 C208 24`
const judged = (text: string, permits: readonly PermitRow[]): readonly string[] =>
  requalifications(readStamp(text, { asOf }), { ruleSet: 'us-180.209', asOf, permits }).map(
    ({ rule, due, verdict, because }) => `${rule?.id ?? '-'} ${due ?? '-'} ${verdict} ${because[0]?.code ?? ''}`,
  )
const inForce: PermitRow = { permit: 'SP9144', months: 60, lifeMonths: 180, validUntil: '2027-06-30' }

test('a permit in force gives interval and life', () => {
  expect(judged(stamp('SP9144'), [inForce])).toEqual(['permit 2029-06 within due', 'permit-life 2034-06 within due'])
})

test.each(['SP9144', 'SP-9144', 'E9144', 'SP 9144', 'E 9144'])(
  '%s on the shoulder is the permit of the table',
  (permit) => {
    expect(judged(stamp(permit), [{ ...inForce, permit: 'E 9144' }])[0]).toBe('permit 2029-06 within due')
  },
)

test('a permit that ended is against every row, on the day after its last', () => {
  const until = (validUntil: PermitRow['validUntil']): readonly string[] =>
    judged(stamp('SP9144'), [{ permit: 'SP9144', months: 60, ...(validUntil === undefined ? {} : { validUntil }) }])
  expect(until('2026-11-24')).toEqual(['permit 2029-06 beyond permit-expired'])
  expect(until('2026-11-25')).toEqual(['permit 2029-06 within due'])
  expect(until('2026-11')).toEqual(['permit 2029-06 within due'])
  expect(until('2026-10')).toEqual(['permit 2029-06 beyond permit-expired'])
  expect(until(undefined)).toEqual(['permit 2029-06 undetermined permit-validity-unknown'])
})

test('a permit that is not in the table is unknown, and so is a shoulder without its number', () => {
  expect(judged(stamp('SP9145'), [inForce])).toEqual(['- - undetermined permit-unknown'])
  expect(judged('DOT-SU9144-4500\nOT60412 KELDA\n06 A 19\n06 C208 24', [inForce])[0]).toContain('permit-unknown')
  const nameless = { specification: 'special permit', firstTest: '2019-06', retests: [], system: 'US' } as const
  const [first] = requalifications(nameless, { ruleSet: 'us-180.209', asOf, permits: [inForce] })
  expect(first?.because.map(({ code }) => code)).toContain('permit-unknown')
})

test('a Canadian number is no US one, and every reason says what it is about', () => {
  const of = (permit: string, row: PermitRow): string | undefined =>
    requalifications(readStamp(stamp(permit), { asOf }), { ruleSet: 'us-180.209', asOf, permits: [row] })[0]?.because[0]
      ?.text
  expect(of('SP9144', { ...inForce, permit: 'SU9144' })).toBe(
    'SP9144 is not in the given table of permits: read the permit',
  )
  expect(of('SP9144', { permit: 'SP9144', months: 60 })).toContain('the expiry of SP9144 is not stated')
  expect(of('SP9144', { ...inForce, validUntil: '2025-01' })).toContain('SP9144 was valid until 2025-01')
  const nameless = { specification: 'special permit', firstTest: '2019-06', retests: [], system: 'US' } as const
  const [first] = requalifications(nameless, { ruleSet: 'us-180.209', asOf, permits: [inForce] })
  expect(first?.because[0]?.text).toBe('no permit number was read from the shoulder')
  const canadian = 'TC-SU9144-310\nOT60412 KELDA\n06 A 19\n06 C208 24'
  expect(judged(canadian, [{ ...inForce, permit: 'TC-SU9144' }])[0]).toBe('permit 2029-06 within due')
  expect(judged(canadian, [inForce])[0]).toContain('permit-unknown')
})

test('a table of permits says nothing of a cylinder that has none', () => {
  const text = 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n10 A902 23'
  expect(judged(text, [])).toEqual(judged(text, [inForce]))
  expect(judged(text, [])).toEqual(['us-five-years 2028-10 within due'])
})

test('terms stated for this cylinder come before the table', () => {
  const options = { ruleSet: 'us-180.209', asOf, permits: [], permit: { months: 36 } } as const
  const rows = requalifications(readStamp(stamp('SP9144'), { asOf }), options)
  expect(rows.map(({ due, verdict }) => [due, verdict])).toEqual([['2027-06', 'within']])
})

test('an ended permit reaches a register and the question of filling', () => {
  const permits: readonly PermitRow[] = [{ ...inForce, validUntil: '2025-01' }]
  const [row] = dueWithin([{ id: 'A', stamp: stamp('SP9144'), ruleSet: 'us-180.209', permits }], { asOf, days: 30 })
  expect(row?.state).toBe('overdue')
  const filling = assessFilling({
    stamp: stamp('SP9144'),
    mixture: dryAir,
    rules: { ruleSet: 'us-180.209', asOf, permits },
    country: 'US',
    ambientPressure: absolute(1, atmosphere),
    gasTemperature: temperatureOf(20, celsius),
  })
  expect([filling.verdict, filling.because[0]?.code]).toEqual(['beyond', 'permit-expired'])
})

test.each([
  [[{ permit: '9144', months: 60 }], 'options.permits[0].permit'],
  [[{ permit: 'SP9144', months: 0 }], 'options.permits[0].months'],
  [[{ permit: 'SP9144', months: Number.NaN }], 'options.permits[0].months'],
  [[{ permit: 'SP9144', months: 60, lifeMonths: 601 }], 'options.permits[0].lifeMonths'],
  [[{ permit: 'SP9144', months: 60, validUntil: '2026-13' }], 'options.permits[0].validUntil'],
  [[inForce, { permit: 'E-09144', months: 36 }], 'options.permits[1].permit'],
  [[{ permit: 'SP9144', months: 60, expires: '2026-12' }], 'options.permits[0].expires'],
  ['SP9144', 'options.permits'],
])('the table %j is refused by name', (permits, argument) => {
  const code = argument.endsWith('onths') ? 'range' : 'input'
  expect(() => judged(stamp('SP9144'), permits as never)).toThrow(expect.objectContaining({ argument, code }))
})
