import { expect, test } from 'vitest'
import { outOfUsePhrases } from '../../../src/cylinder/marking/date-label.table.ts'
import { readStamp } from '../../../src/cylinder/marking/index.ts'
import { bar, inUnit } from '../../../src/units/index.ts'

const asOf = '2026-11'
const frame = (line: string): string => `AIR 10 L\nPS 200 BAR PT 300 BAR\nNR 77142 FOREZ 12.8 KG\n05.2024\n${line}`

test.each(outOfUsePhrases)('%s takes a cylinder out of use, alone and between other marks', (phrase) => {
  for (const text of [frame(phrase), frame(`${phrase} 12345`), `${phrase.toLowerCase()} ${frame('')}`]) {
    expect(readStamp(text, { asOf }).findings.map(({ code }) => code)).toContain('condemned')
  }
})

test.each(['DO', 'OUT OF', 'HORS', 'NE PAS', 'UTE AV'])('%s alone takes nothing out of use', (words) => {
  expect(readStamp(frame(words), { asOf }).findings.map(({ code }) => code)).not.toContain('condemned')
})

test.each([
  ['JUNE 2025', '2025-06'],
  ['juin 2025', '2025-06'],
  ['MÄRZ 2025', '2025-03'],
  ['dec 25', '2025-12'],
  ['AOÛT 2025', '2025-08'],
])('%s is a date', (line, date) => {
  expect(readStamp(frame(line), { asOf }).retests.map((retest) => retest.date)).toEqual([date])
})

test.each([
  'PRESSION D’ÉPREUVE'.replace('’', "'"),
  'PROVTRYCK',
  'PROEFDRUK',
  'PRESIÓN DE PRUEBA',
  'TEST PRESSURE',
  'PRÓBNE',
])('%s labels a test pressure, %s', (label) => {
  const stamp = readStamp(`AIR 10 L\n${label} 300 BAR\nNR 77142 FOREZ\n05.2024`, { asOf })
  expect([stamp.testPressure, stamp.workingPressure].map((mark) => mark && inUnit(mark, bar))).toEqual([300, undefined])
})

test.each(['PRESSIONE DI ESERCIZIO', 'WERKDRUK', 'WORKING PRESSURE', 'FÜLLDRUCK', 'ARBEIDSTRYKK'])(
  '%s labels a working pressure',
  (label) => {
    const stamp = readStamp(`AIR 10 L\n${label} 200 BAR\nNR 77142 FOREZ\n05.2024`, { asOf })
    expect([stamp.testPressure, stamp.workingPressure].map((mark) => mark && inUnit(mark, bar))).toEqual([
      undefined,
      200,
    ])
  },
)

test('of two pressures that one language calls working and another test pressure, the lower one is the working pressure', () => {
  for (const line of ['PE 300 BAR PP 200 BAR', 'P.E. 200 BAR P.P. 300 BAR', 'PT 200 BAR PP 300 BAR', '200/300 BAR']) {
    const { workingPressure, testPressure } = readStamp(`AIR 10 L\n${line}\nNR 77142 FOREZ\n05.2024`, { asOf })
    expect([workingPressure, testPressure].map((mark) => mark && inUnit(mark, bar))).toEqual([200, 300])
  }
})

test('the number of a requalifier is no trade size, and goes with the date that stands alone beside it', () => {
  const read = (line: string): readonly (string | undefined)[] => {
    const stamp = readStamp(`DOT-3AL3000\nP1234567 KELDA\n06A12\n${line}`, { asOf })
    expect(stamp.nominal).toBeUndefined()
    return stamp.retests.flatMap(({ date, body }) => [date, body])
  }
  expect(read('C208 07/22')).toEqual(['2022-07', 'C208'])
  expect(read('07/22 C208')).toEqual(['2022-07', 'C208'])
  expect(read('07/17 C208 08/22 D114')).toEqual(['2017-07', 'C208', '2022-08', 'D114'])
  expect(read('07/17 C208 07/22')).toEqual(['2017-07', undefined, '2022-07', 'C208'])
})

test('V, W, TP and FP of a Japanese shoulder, glued and spaced', () => {
  for (const line of ['V10.3 W12.8 TP29.4M FP19.6M', 'TP 29.4M FP 19.6M V 10.3 W 12.8']) {
    const stamp = readStamp(`KELDA 12345\n${line}\n6-2025`, { asOf })
    expect(stamp.workingPressure && inUnit(stamp.workingPressure, bar)).toBeCloseTo(196, 9)
    expect(stamp.testPressure && inUnit(stamp.testPressure, bar)).toBeCloseTo(294, 9)
    expect(stamp.waterCapacity).toBeCloseTo(0.0103, 12)
    expect(stamp.emptyMass).toBeCloseTo(12.8, 12)
  }
  expect(readStamp(frame('V10.20'), { asOf }).waterCapacity).toBeCloseTo(0.01, 12)
})

test('a test pressure that is two figures of rounding away from 3/2 is none that is too low', () => {
  const codesOf = (group: string): readonly string[] =>
    readStamp(`25P D MAREN 1 \n${group} 14KG 11L\nUN ISO 7866 D IN07 2024/06`, { asOf }).findings.map(
      ({ code }) => code,
    )
  expect(codesOf('PW207 PH310BAR')).not.toContain('test-pressure-too-low')
  expect(codesOf('PW207 PH309BAR')).toContain('test-pressure-too-low')
  expect(codesOf('PW208 PH311BAR')).toContain('test-pressure-too-low')
})

test.each([
  ['PW232-PH348BAR-14.9KG-12.0L', [232, 348, 12, 14.9]],
  ['pw232-ph348bar-14,9kg-12,0l', [232, 348, 12, 14.9]],
  ['12L-PW200BAR', [200, undefined, 12, undefined]],
])('%s is several marks with dashes between them', (text, wanted) => {
  const { workingPressure, testPressure, waterCapacity, emptyMass } = readStamp(`ISO 9809-1 D IN07 2024/06\n${text}`)
  expect([
    workingPressure && inUnit(workingPressure, bar),
    testPressure && inUnit(testPressure, bar),
    waterCapacity && waterCapacity * 1000,
    emptyMass,
  ]).toEqual(wanted)
})

test.each(['AB-12-345', 'D-200-12L', 'PW-77-12'])(
  '%s, with one measure or none between its dashes, is one word',
  (text) => {
    expect(readStamp(`AIR 10 L\nPS 200 BAR PT 300 BAR\nNR ${text}\n05.2024`, { asOf }).serial).toBe(text)
  },
)
