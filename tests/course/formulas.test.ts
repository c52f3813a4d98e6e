import { expect, test } from 'vitest'
import { allCards, type Card } from '../../src/course/index.ts'
import * as core from '../../src/index.ts'
import { columnForms, otherForms, withoutCard } from './formulas-without-cards.ts'

const functions = Object.entries(core).flatMap(([name, value]) => (typeof value === 'function' ? [name] : []))
const documented = new Set(allCards().map(({ documents }) => documents))

test('every core function has a formula card, or one reason why it has none', () => {
  const listed = [...Object.keys(otherForms), ...Object.keys(columnForms), ...Object.values(withoutCard).flat()]
  const twice = listed.filter((name, index) => listed.indexOf(name) !== index)
  expect(twice).toEqual([])
  const left = functions.filter((name) => !documented.has(name)).sort()
  expect(listed.filter((name) => !left.includes(name)).sort(), 'stale: a card, or no such function').toEqual([])
  expect(
    left.filter((name) => !listed.includes(name)),
    'give it a card, or a reason in formulas-without-cards.ts',
  ).toEqual([])
})

test.each(Object.entries(otherForms))('%s is what another card computes for one of its symbols', (name, [id, find]) => {
  const card = allCards().find((each) => each.id === id) as Card
  expect(Object.keys(card.forms)).toContain(find)
  // the tests of the cards hold the form against this very function
  expect(String(card.core[find])).toContain(name)
})

test.each(Object.entries(columnForms))('%s has the columns of %s', (name, scalar) => {
  expect(name).toMatch(/Into$/)
  expect(functions).toContain(scalar)
})

test('a function named Into stands among the forms for columns', () => {
  expect(functions.filter((name) => name.endsWith('Into') && columnForms[name] === undefined)).toEqual([])
})

test('what is said to give a verdict returns one', () => {
  const assess = functions.filter((name) => name.startsWith('assess') && !documented.has(name))
  expect(
    assess.filter((name) => !withoutCard['gives a verdict: a rule applied, with its reasons']?.includes(name)),
  ).toEqual([])
})
