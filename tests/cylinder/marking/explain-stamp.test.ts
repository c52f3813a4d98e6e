import { expect, test } from 'vitest'
import {
  explainStamp,
  fieldTexts,
  findingSeverity,
  findingTexts,
  readStamp,
} from '../../../src/cylinder/marking/index.ts'
import { sources } from '../../../src/references/index.ts'
import fixture from '../../fixtures/stamps.json' with { type: 'json' }

const asOf = '2026-11'
const stamps = [...fixture.valid, ...fixture.malformed].map(({ lines }) => readStamp(lines.join('\n'), { asOf }))

test('every mark of every stamp of the collection is explained, in the order of the shoulder', () => {
  for (const stamp of stamps) {
    const { fields } = explainStamp(stamp)
    expect(fields).toHaveLength(stamp.fields.length)
    for (const [index, { line, start }] of fields.entries()) {
      const before = fields[index - 1]
      expect(before === undefined || before.line < line || (before.line === line && before.start <= start)).toBe(true)
    }
  }
})

test('a field is told in both systems of units, a test with what followed from it', () => {
  const stamp = readStamp('TC-3AAM155 DOT-3AA2250\nLP33107 SKERRY\n11 W 99 +\n7 C208 24 + VE', { asOf })
  const readings = Object.fromEntries(explainStamp(stamp).fields.map(({ name, reading }) => [name, reading]))
  expect(readings).toMatchObject({
    specification: '3AA, steel',
    servicePressure: '2250 psi, 155.1 bar',
    dual: 'TC 3AAM, 155 bar, 2248 psi',
    firstTest: '1999-11, witnessed by W',
    retest: '2024-07, hydraulic test, by C208, with the ten per cent plus mark, with eddy-current examination',
  })
})

test('each explained retest is its own', () => {
  const { fields } = explainStamp(readStamp('DOT-3AA2265\nHB1 KELDA\n06 K 97\n05 A417 02\n08 B551 23', { asOf }))
  expect(fields.filter(({ name }) => name === 'retest').map(({ reading }) => reading)).toEqual([
    '2002-05, hydraulic test, by A417',
    '2023-08, hydraulic test, by B551',
  ])
})

test.each([
  ['05.2018', '2018-05, a test or an inspection: the stamp does not say which'],
  ['SICHTPRÜFUNG 05.2018', '2018-05, visual inspection'],
  ['DRUCKPRÜFUNG 05.2018', '2018-05, hydraulic test'],
  ['ULTRASCHALL 05.2018', '2018-05, ultrasonic examination'],
  ['SCHALLEMISSION 05.2018', '2018-05, acoustic emission test'],
  ['WIRBELSTROM 05.2018', '2018-05, eddy-current examination'],
])('the kind of %s is told', (mark, wanted) => {
  const { fields } = explainStamp(readStamp(`AIR 12 L\n200 BAR PH 300 BAR\nNR 4471 KELDA\n03.2008\n${mark}`, { asOf }))
  expect(fields.filter(({ name }) => name === 'retest').map(({ reading }) => reading)).toEqual([wanted])
})

test.each([
  ['06 D114 24 E', '2024-06, external visual inspection, by D114, marked E, instead of the test'],
  ['06 D114 24 S', '2024-06, proof pressure test, by D114, marked S'],
  ['06 D114 24 UE', '2024-06, ultrasonic examination, by D114, marked UE'],
  ['06 D114 24 AE', '2024-06, acoustic emission test, by D114, marked AE'],
])('the US mark %s is told by its letters', (mark, wanted) => {
  const { fields } = explainStamp(readStamp(`DOT-3AA2265\nHB1 KELDA\n06 K 97\n${mark}`, { asOf }))
  expect(fields.find(({ name }) => name === 'retest')?.reading).toBe(wanted)
})

test('dates that lie ahead, the month of manufacture and UW are told, each deadline its own', () => {
  const text =
    '25P D MAREN 508231\nPW300 PH450BAR 4.9KG 6.8L UW\nMFD 04 2020\nUN ISO 11119-2 D TV1 2020/06 FINAL 2035/06'
  const { fields } = explainStamp(readStamp(`${text}\nNEXT TEST 06 2030\nVALID UNTIL 06 2028`, { asOf }))
  const told = (wanted: string): (string | undefined)[] =>
    fields.filter(({ name }) => name === wanted).map(({ reading }) => reading)
  expect(told('manufactured')).toEqual(['made in 2020-04'])
  expect(told('underwater')).toEqual(['for underwater use'])
  expect(told('deadline')).toEqual([
    'service life ends in 2035-06',
    'next inspection due in 2030-06',
    'last inspection valid until 2028-06',
  ])
})

test('a date ahead that pairs with a test keeps its place among the deadlines', () => {
  const text = 'DRUCKLUFT 10 L\n200 BAR PRÜF 300 BAR\nNR 4471 KELDA\n03.2023 03.2028\nFINAL 2040/01'
  const stamp = readStamp(text, { asOf })
  expect(stamp.deadlines).toEqual([
    { date: '2028-03', kind: 'next due' },
    { date: '2040-01', kind: 'end of life' },
  ])
  expect(explainStamp(stamp).fields.flatMap(({ name, reading }) => (name === 'deadline' ? [reading] : []))).toEqual([
    'next inspection due in 2028-03',
    'service life ends in 2040-01',
  ])
})

test.each([
  null,
  undefined,
  7,
  'DOT-3AL3000',
  {},
  { system: 'US', retests: [], fields: [], findings: [], seriel: 'X' },
])('%j is no stamp as read', (given) => {
  expect(() => explainStamp(given as never)).toThrow(expect.objectContaining({ code: 'input' }))
})

test('findings come with their meaning and what to do', () => {
  const { findings } = explainStamp(readStamp('DOT-3AL3000\nP1 BRISKA\n07 V 08\n06 D114 13 +', { asOf }))
  expect(findings.find(({ code }) => code === 'plus-not-allowed')?.says).toMatch(
    /^The ten per cent rule covers .*, not this type/,
  )
})

test('all words are sentences, all sources exist, and no two fields or findings are told alike', () => {
  expect(Object.keys(findingTexts).sort()).toEqual(Object.keys(findingSeverity).sort())
  const texts = [
    ...Object.values(findingTexts).map(({ text }) => text),
    ...Object.values(fieldTexts).map(({ meaning }) => meaning),
  ]
  expect(new Set(texts).size).toBe(texts.length)
  expect(texts.filter((text) => !/^[A-Z0-9].*\.$/.test(text))).toEqual([])
  expect(texts.filter((text) => /\bsafe(ly)?\b/i.test(text))).toEqual([])
  for (const { source } of [...Object.values(findingTexts), ...Object.values(fieldTexts)]) {
    expect(Object.keys(sources)).toContain(source)
  }
})
