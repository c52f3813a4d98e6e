import { expect, test } from 'vitest'
import { isLitrebarError, LitrebarError } from '../../src/errors/index.ts'

const facts = {
  code: 'range',
  argument: 'depth',
  value: '-3 m',
  expected: 'at least 0 m',
  hint: 'Depth counts downwards.',
  accepted: { atLeast: 0, unit: 'm' },
  position: { line: 0, start: 2, end: 4 },
} as const

test('says what, how much, what would do, and the fix', () => {
  expect(new LitrebarError(facts).message).toBe('depth is -3 m, expected at least 0 m. Depth counts downwards.')
})

test('keeps message, numbers and position as plain data across JSON and a worker boundary', () => {
  const crossed: unknown = structuredClone(JSON.parse(JSON.stringify(new LitrebarError(facts))))
  expect(crossed).toMatchObject({ ...facts, message: 'depth is -3 m, expected at least 0 m. Depth counts downwards.' })
})

test('is recognised from another copy of the class, and nothing else is', () => {
  const copy = Object.assign(new Error('from the other copy'), { name: 'LitrebarError' })
  expect(isLitrebarError(copy)).toBe(true)
  expect(isLitrebarError(new Error('plain'))).toBe(false)
  expect(isLitrebarError({ name: 'LitrebarError' })).toBe(false)
})
