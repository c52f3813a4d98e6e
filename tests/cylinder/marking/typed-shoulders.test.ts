import { expect, test } from 'vitest'
import { nextRequalification, readStamp } from '../../../src/cylinder/index.ts'
import { bar, inUnit, kilogram, litre } from '../../../src/units/index.ts'
import fixture from '../../fixtures/typed-shoulders.json' with { type: 'json' }

const { asOf } = fixture.meta as { asOf: '2026-11' }

test.each(fixture.rows)('read as it was meant: $text', ({ text, expect: wanted }) => {
  const stamp = readStamp(text, { asOf })
  const pressure = stamp.workingPressure ?? stamp.servicePressure
  const read: Readonly<Record<string, unknown>> = {
    specification: stamp.specification,
    workingBar: pressure && Math.round(inUnit(pressure, bar)),
    testBar: stamp.testPressure && Math.round(inUnit(stamp.testPressure, bar)),
    litres: stamp.waterCapacity && Number(inUnit(stamp.waterCapacity, litre).toFixed(2)),
    kilograms: stamp.emptyMass && Number(inUnit(stamp.emptyMass, kilogram).toFixed(2)),
    serial: stamp.serial,
    maker: stamp.maker ?? null,
    firstTest: stamp.firstTest,
    tests: stamp.retests.map(({ date }) => date).toSorted(),
    deadlines: stamp.deadlines?.map(({ date }) => date),
  }
  expect(Object.fromEntries(Object.keys(wanted).map((name) => [name, read[name]]))).toEqual(wanted)
})

// A figure with a decimal is a volume, a mass or a wall without its unit; read as October 2003 or March 2010 it would be a test.
test.each([
  'FJORD 4711 200 BAR V 10.3 W 12.1',
  'EN 1975 D FJORD 0815 AA6061 S 11.0 PW 200 BAR PH 300 BAR 14.2 KG 2019/03',
])('a figure with a decimal is neither a date nor a serial number: %s', (text) => {
  const stamp = readStamp(text, { asOf })
  expect([stamp.firstTest, ...stamp.retests.map(({ date }) => date)].filter((date) => date === '2010-03')).toEqual([])
  expect(stamp.serial).toMatch(/^(4711|0815)$/)
  expect(nextRequalification(stamp, { ruleSet: 'german-diving', asOf }).verdict).not.toBe('within')
})

test('the mark of an inspector typed as a sign separates month and year', () => {
  for (const sign of ['▲', '△', '▼', 'Δ', '∆', '◆', '○', '^', '|', '=']) {
    const { firstTest } = readStamp(`DOT-3AL3000 P84213 BRISKA 06${sign}18`, { asOf })
    expect(firstTest, sign).toBe('2018-06')
  }
})

test('a unit that stands between two figures belongs to the one that has no other', () => {
  expect(readStamp('2X10 L 200 BAR PT 300 BAR', { asOf }).waterCapacity).toBe(undefined)
  expect(readStamp('L 10 200 BAR PT 300 BAR', { asOf }).waterCapacity).toBeCloseTo(0.01, 12)
})
