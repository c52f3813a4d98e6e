import { expect, test } from 'vitest'
import { readStamp } from '../../../src/cylinder/marking/index.ts'
import { type RuleSetId, requalifications } from '../../../src/cylinder/requalification/index.ts'
import { bar, inUnit, litre } from '../../../src/units/index.ts'
import fixture from '../../fixtures/shoulders.json' with { type: 'json' }

// Composed from the rules of their families, never from what the reader gave.

test('there are at least 350 of them', () => {
  expect(fixture.rows.length).toBeGreaterThanOrEqual(350)
})

test.each(fixture.rows)('$id: every field, the due date and the verdict', ({ lines, ruleSet, expect: wanted }) => {
  const { asOf } = fixture.meta as { asOf: '2026-11' }
  const stamp = readStamp(lines.join('\n'), { asOf })
  const inBar = (pressure: number | undefined): number | undefined =>
    pressure === undefined ? undefined : Number(inUnit(pressure as never, bar).toFixed(3))
  const [next] = requalifications(stamp, { ruleSet: ruleSet as RuleSetId, asOf })
  const extra = {
    testBar: inBar(stamp.testPressure),
    litres: stamp.waterCapacity === undefined ? undefined : Number(inUnit(stamp.waterCapacity, litre).toFixed(3)),
    thread: stamp.thread?.designation,
    alloy: stamp.alloyHint,
    uw: stamp.underwater,
    serial: stamp.serial,
    maker: stamp.maker,
    inspector: stamp.inspector,
    permit: stamp.permit,
  }
  const stated = Object.entries(extra).filter(([name]) => name in wanted)
  const got = {
    specification: stamp.specification ?? null,
    pressureBar: inBar(stamp.servicePressure ?? stamp.workingPressure),
    ...Object.fromEntries(stated),
    firstTest: stamp.firstTest,
    tests: stamp.retests.map(({ date, kind, body = null }) => [date, kind, body]),
    deadlines: stamp.deadlines?.map(({ date, kind }) => [date, kind]),
    due: next?.due ?? null,
    verdict: next?.verdict,
  }
  expect(got).toEqual(wanted)
})
