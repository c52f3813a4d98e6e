import { expect, test } from 'vitest'
import { sweep } from './sweep.ts'

// The long form, 10⁸ states, is scripts/gas-sweep.ts; its result is in docs/explanation/real-gas-equation.md.
test('random states of random mixtures all have one right density, to 1e-12 in pressure', () => {
  const { examples, largestResidual, ...counts } = sweep({ seed: 20_261_125, mixtures: 200, statesPerMixture: 300 })
  expect(examples).toEqual([])
  expect(largestResidual).toBeLessThanOrEqual(1e-12)
  expect(counts).toMatchObject({ states: 60_000, failures: 0, wrongRoots: 0, condensedUnexpectedly: 0 })
  expect(counts.condensed).toBeLessThan(600)
})
