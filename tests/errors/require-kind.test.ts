import { expect, test } from 'vitest'
import { requireList, requireText } from '../../src/errors/index.ts'

test.each([undefined, null, 3, 'ab', { length: 3 }, new Float64Array(3)])('%j is not a list', (given) => {
  expect(() => requireList('points', given)).toThrow('points is not a list, expected a list. Pass a list.')
})

test('a list that is too short is refused with its length; one of the least length is not', () => {
  expect(() => requireList('points', [], 1)).toThrow('points is empty, expected at least 1')
  expect(() => requireList('points', [1, 2], 3, 'Take three.')).toThrow(
    'points is 2 in number, expected at least 3. Take three.',
  )
  expect(() => requireList('points', [1, 2, 3], 3)).not.toThrow()
  expect(() => requireList('points', [])).not.toThrow()
})

test.each([undefined, null, 3, ['a'], Symbol('a'), new String('a')])('%s is not a text', (given) => {
  expect(() => requireText('name', given)).toThrow(expect.objectContaining({ code: 'input', argument: 'name' }))
  expect(() => requireText('name', given)).toThrow('expected a text. Pass a text.')
})

test('an empty text is a text', () => {
  expect(() => requireText('name', '')).not.toThrow()
})
