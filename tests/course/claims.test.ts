import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { judgeClaims } from '../../src/course/index.ts'

const judge = (text: string): ReturnType<typeof judgeClaims> => judgeClaims(text, { file: 'claims.yaml' })

// Each claim is printed somewhere or made to show one slip; what is right was worked out by hand.
test.each([
  [
    'Boyle, a published example',
    'says: 17.7 mL\n  formula: boyle\n  p1: 6.5 psi\n  V1: 30.0 mL\n  p2: 11.0 psi',
    'agrees',
    undefined,
  ],
  [
    'degrees Celsius for kelvin',
    'says: 317 bar\n  last place: 1\n  formula: gay-lussac\n  p1: 220 bar\n  T1: 16.6 °C\n  T2: 23.9 °C',
    'differs',
    'degrees Celsius were used as kelvin',
  ],
  [
    'gauge for absolute',
    'says: 3.0 L\n  formula: boyle\n  p1: 4 atm\n  V1: 1 L\n  p2: 1.01325 bar',
    'differs',
    'a gauge pressure was used as absolute',
  ],
  [
    'ideal for real',
    'says: 2760 L\n  last place: 1\n  formula: free-gas\n  V: 12 L\n  p: 233.01325 bar\n  T: 15 °C\n  p0: 1 atm\n  T0: 15 °C',
    'differs',
    'by the ideal gas law instead of the real gas',
  ],
  [
    'another depth convention',
    'says: 4.000 bar\n  formula: pressure-at-depth\n  p0: 1 bar\n  rho: 1025 kg/m³\n  g: 9.80665 m/s²\n  d: 30 m',
    'differs',
    'another depth convention was used: 10 m of water to the bar',
  ],
  [
    'fresh water for sea',
    'says: 3.94 bar\n  formula: pressure-at-depth\n  p0: 1 bar\n  rho: 1025 kg/m³\n  g: 9.80665 m/s²\n  d: 30 m',
    'differs',
    'the density of fresh water was used',
  ],
  [
    'the right number in another unit',
    'says: 58.2 bar\n  formula: pressure-at-depth\n  p0: 1 bar\n  rho: 1025 kg/m³\n  g: 9.80665 m/s²\n  d: 30 m',
    'differs',
    'the number is right in psi',
  ],
  [
    'feet for metres in what is given', // 1 bar and 1025 × 9.80665 × 30 ft: 1.92 bar
    'says: 1.92 bar\n  formula: pressure-at-depth\n  p0: 1 bar\n  rho: 1025 kg/m³\n  g: 9.80665 m/s²\n  d: 30 m',
    'differs',
    'was taken in ft instead of m',
  ],
  [
    'degrees Fahrenheit for Celsius in what is given', // 200 × (305.372 / 288.15): 90 °F is 305.372 K
    'says: 212 bar\n  last place: 1\n  formula: gay-lussac\n  p1: 200 bar\n  T1: 15 °C\n  T2: 90 °C',
    'differs',
    'was taken in °F instead of °C',
  ],
  [
    'a prefix off',
    'says: 177 mL\n  formula: boyle\n  p1: 6.5 psi\n  V1: 30.0 mL\n  p2: 11.0 psi',
    'differs',
    'the decimal sign or the prefix of the unit is off by a factor of 10',
  ],
  [
    'a rounded intermediate',
    'says: 4.03 bar\n  formula: pressure-at-depth\n  p0: 1 bar\n  rho: 1025 kg/m³\n  g: 9.80665 m/s²\n  d: 30 m',
    'differs',
    'an intermediate result was probably rounded',
  ],
  [
    'mass per volume for work per volume',
    'says: 1.4 kg/L\n  formula: laminar-work\n  p: 1.1 kPa',
    'differs',
    'kg/L is a unit of density',
  ],
  [
    'a number that the text does not state',
    'says: 4 bar\n  formula: pressure-at-depth\n  p0: 1 bar',
    'cannot be judged',
    'the text does not state rho (density of the water)',
  ],
  ['no formula', 'says: 4 bar', 'cannot be judged', 'no formula is named for it'],
  [
    'outside what the formula takes',
    'says: 4 L\n  formula: free-gas\n  V: 12 L\n  p: 90000 bar\n  T: 15 °C\n  p0: 1 atm\n  T0: 15 °C',
    'cannot be judged',
    undefined,
  ],
] as const)('%s', (_, text, verdict, because) => {
  const { claims, problems } = judge(`- ${text}\n`)
  expect(problems).toEqual([])
  expect(claims[0]?.verdict, JSON.stringify(claims[0])).toBe(verdict)
  if (because !== undefined) expect(claims[0]?.because).toContain(because)
})

test('what cannot be read is a problem with its line, not a verdict', () => {
  const { claims, problems } = judge(
    '- says: four\n  formula: boyle\n- says: 4 bar\n  formula: boile\n- says: 4 bar\n  formula: boyle\n  q: 3\n',
  )
  expect(problems.map(({ line }) => line)).toContain(4)
  expect(problems.map(({ line }) => line)).toContain(7)
  expect(claims.filter(({ verdict }) => verdict !== 'cannot be judged')).toEqual([])
})

test('the places that are printed decide how far a number may be off', () => {
  const says = (text: string, place = ''): string | undefined =>
    judge(`- says: ${text}\n${place}  formula: boyle\n  p1: 3 bar\n  V1: 1.4 L\n  p2: 1 bar\n`).claims[0]?.verdict
  expect([says('4.2 L'), says('4.20 L'), says('4.24 L'), says('4 L'), says('4200 mL'), says('4190 mL')]).toEqual([
    ...['agrees', 'agrees', 'differs', 'agrees', 'agrees', 'differs'],
  ])
})

const collected = judge(readFileSync(new URL('../fixtures/claims-collected.yaml', import.meta.url), 'utf8'))

test('published numbers: of those that can be judged every wrong one is found, and none is invented', () => {
  const { claims, problems } = collected
  expect(problems).toEqual([])
  const judged = claims.filter(({ verdict }) => verdict !== 'cannot be judged')
  const wrong = judged.filter(({ verdict }) => verdict === 'differs').map(({ text }) => text)
  expect(wrong).toEqual(judged.map(({ text }) => text).filter((text) => /^(misprint|rounded constant)/.test(text)))
  expect([claims.length, judged.length, wrong.length]).toEqual([444, 241, 42])
})

test('a published number that is not judged says why', () => {
  const open = collected.claims.filter(({ verdict }) => verdict === 'cannot be judged')
  expect(open.filter(({ because = '' }) => because.length < 10 || because === 'no formula is named for it')).toEqual([])
})

test('slips and misprints in print are explained', () => {
  const because = Object.fromEntries(
    collected.claims.map((claim) => [claim.text.split(' ').slice(0, 2).join(' '), claim.because]),
  )
  expect(because).toMatchObject({
    'misprint ox-038': 'an intermediate result was probably rounded',
    'misprint pw-015': 'the number is right in cm',
    'misprint pw-180': 'the number is right in atm', // 3000 psi over 14.7
    'misprint pw-187': 'the number was cut off, not rounded',
    'misprint convert-atm-kg-cm2': 'the number is right in bar',
    'misprint pw-156': undefined, // the wrong row of the table
  })
})

test('one quantity in two units needs no formula', () => {
  const says = (text: string, same: string): string | undefined =>
    judge(`- { says: ${text}, same as: ${same} }`).claims[0]?.verdict
  expect([says('207 bar', '3000 psi'), says('204 bar', '3000 psi'), says('207 L', '3000 psi')]).toEqual([
    ...['agrees', 'differs', 'differs'],
  ])
  expect(judge('- { says: 207 L, same as: 3000 psi }').claims[0]?.because).toBe(
    'L is a unit of volume, and 3000 psi is a quantity of pressure',
  )
  expect(judge('- { says: 207 bar, same as: 3000 smoots }').problems).toHaveLength(1)
  expect(judge('- { says: bar, same as: 3000 psi }').problems).toHaveLength(1)
})

test('a length is never explained by the pressure of the air', () => {
  const claim = judge(
    '- { says: 101 335 m, formula: pressure-at-depth, find: d, p: 2 bar, p0: 1 bar, rho: 1019.716 kg/m³, g: 9.80665 m/s² }',
  ).claims[0]
  expect([claim?.verdict, claim?.because]).toEqual(['differs', undefined])
})
