import { assert, integer, property, string } from 'fast-check'
import { expect, test } from 'vitest'
import { isLitrebarError } from '../../../src/errors/index.ts'
import { dryAir, heliox, mixtureFromText, nitrox, pureGas, sameMixture, trimix } from '../../../src/gas-law/index.ts'

test.each([
  ['air', dryAir],
  [' Air ', dryAir],
  ['nitrox 32', nitrox(0.32)],
  ['Nitrox32', nitrox(0.32)],
  ['EAN 36', nitrox(0.36)],
  ['32 %', nitrox(0.32)],
  ['32.5%', nitrox(0.325)],
  ['32,5 %', nitrox(0.325)],
  ['0.32', nitrox(0.32)],
  ['18/45', trimix({ oxygen: 0.18, helium: 0.45 })],
  ['trimix 10/70', trimix({ oxygen: 0.1, helium: 0.7 })],
  ['32/0', nitrox(0.32)],
  ['heliox 21', heliox(0.21)],
  ['heliox 21/79', heliox(0.21)],
  ['oxygen', pureGas('oxygen')],
  ['O2', pureGas('oxygen')],
  ['100 %', nitrox(1)],
  ['carbonDioxide', pureGas('carbonDioxide')],
])('%j is read', (text, expected) => {
  expect(sameMixture(mixtureFromText(text), expected)).toBe(true)
})

test.each([
  ['32', 'Write nitrox 32 or 32 %.'],
  ['nitrox 0.32', 'Write nitrox 32.'],
  ['60/50', 'more than 100 %'],
  ['heliox 20/70', '100 % together'],
  ['150 %', 'at most 100 %'],
  ['argn', 'Did you mean argon?'],
  ['constructor', 'Write air'],
  ['', 'Write air'],
])('%j is refused, with the remedy', (text, hint) => {
  expect(() => mixtureFromText(text)).toThrow(hint)
})

test('two whole numbers are oxygen and helium', () => {
  assert(
    property(integer({ min: 1, max: 50 }), integer({ min: 1, max: 50 }), (oxygen, helium) => {
      const read = mixtureFromText(`${oxygen}/${helium}`)
      expect(read.oxygen).toBeCloseTo(oxygen / 100, 12)
      expect(read.helium).toBeCloseTo(helium / 100, 12)
    }),
  )
})

test('any text gives a mixture or a typed error', () => {
  assert(
    property(string(), (text) => {
      try {
        mixtureFromText(text)
      } catch (thrown) {
        expect(isLitrebarError(thrown)).toBe(true)
      }
    }),
  )
})
