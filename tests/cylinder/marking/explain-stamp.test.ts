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
    firstTest: '1999-11, seen by W',
    retest: '2024-07, by C208, with the ten per cent plus, with eddy-current examination',
  })
})

test('each explained retest is its own', () => {
  const { fields } = explainStamp(readStamp('DOT-3AA2265\nHB1 KELDA\n06 K 97\n05 A417 02\n08 B551 23', { asOf }))
  expect(fields.filter(({ name }) => name === 'retest').map(({ reading }) => reading)).toEqual([
    '2002-05, by A417',
    '2023-08, by B551',
  ])
})

test('findings come with their meaning and what to do', () => {
  const { findings } = explainStamp(readStamp('DOT-3AL3000\nP1 BRISKA\n07 V 08\n06 D114 13 +', { asOf }))
  expect(findings.find(({ code }) => code === 'plus-not-allowed')?.says).toMatch(/^This type is not on the list/)
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
