import { expect, test } from 'vitest'
import { seededRandom } from '../../src/uncertainty/index.ts'
import { machineTrial } from './machine-trial.ts'

test('no seeded machine gives a number that is none, or negative water', () => {
  const random = seededRandom(7, 0)
  const ends = Array.from({ length: 300 }, () => machineTrial(random))
  expect(ends.flatMap((end) => ('bad' in end ? end.bad : []))).toEqual([])
  expect(ends.filter((end) => 'refused' in end)).toEqual([])
})
