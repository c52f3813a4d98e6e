import { assert, constantFrom, property, string } from 'fast-check'
import { expect, test } from 'vitest'
import { nearestOf, requireKeys, requireWord } from '../../src/errors/index.ts'

const keys = { temperature: true, pressure: true, gas: false }
const whole = { temperature: 1, pressure: 2 }

test('a misspelt key is named with the nearest known one', () => {
  const call = (): void => requireKeys('options', { ...whole, temprature: 1 }, keys)
  expect(call).toThrow(
    'options.temprature is not an option, expected temperature, pressure or gas. Did you mean temperature?',
  )
})

test('a missing key is named; one that may be left out is not', () => {
  expect(() => requireKeys('options', { temperature: 1 }, keys)).toThrow('options.pressure is missing')
  expect(() => requireKeys('options', { temperature: 1, pressure: undefined }, keys)).toThrow(
    'options.pressure is missing',
  )
  expect(() => requireKeys('options', whole, keys)).not.toThrow()
})

test.each([undefined, null, 3, 'x', [1], true])('%j is no object of options', (given) => {
  expect(() => requireKeys('options', given, keys)).toThrow(
    expect.objectContaining({ code: 'input', argument: 'options' }),
  )
})

test('inherited names are no keys', () => {
  const given = JSON.parse('{"temperature":1,"pressure":2,"constructor":3}') as unknown
  expect(() => requireKeys('options', given, keys)).toThrow('options.constructor is not an option')
})

test('a row of a table serves as the list of keys: none of them is required', () => {
  const rows = { pressure: { atLeast: 0 }, volume: 3 }
  expect(() => requireKeys('knowns', { volume: 1 }, rows)).not.toThrow()
  expect(() => requireKeys('knowns', { volum: 1 }, rows)).toThrow('Did you mean volume?')
})

test('a word is refused unless it is one of the allowed, letter for letter', () => {
  expect(() => requireWord('options.gas', 'Ideal', ['real', 'ideal'])).toThrow("Did you mean 'ideal'?")
  expect(() => requireWord('options.gas', undefined, ['real', 'ideal'])).toThrow('options.gas is missing')
  assert(
    property(string(), (word) => {
      if (word === 'real' || word === 'ideal') return
      expect(() => requireWord('gas', word, ['real', 'ideal'])).toThrow(expect.objectContaining({ code: 'input' }))
    }),
  )
})

test('a swap, a missing and a doubled letter are one step each', () => {
  assert(
    property(constantFrom('temprature', 'tempreature', 'temperrature', 'TEMPERATURE'), (slip) => {
      expect(nearestOf(slip, ['pressure', 'temperature'])).toBe('temperature')
    }),
  )
  expect(nearestOf('gsa', ['gauge', 'gas'])).toBe('gas')
  expect(nearestOf('', ['gas'])).toBeUndefined()
  expect(nearestOf('q', ['F', 'm'])).toBeUndefined()
  expect(nearestOf('f', ['F', 'm'])).toBe('F')
  expect(nearestOf('gas', [])).toBeUndefined()
  expect(nearestOf('volume', ['pressure', 'temperature'])).toBeUndefined()
  expect(nearestOf('x'.repeat(1e6), ['pressure'])).toBeUndefined()
})

test('a shorter name with fewer letters apart is nearer than a longer one with more', () => {
  expect(nearestOf('baar', ['mbar', 'bar', 'Pa'])).toBe('bar')
})
