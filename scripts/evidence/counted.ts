// Counts, test by test, how many numbers are held against something, for the page of evidence. Set up by scripts/evidence.ts.
import { afterEach, beforeEach, chai } from 'vitest'

const matchers = ['toBeCloseTo', 'toBeLessThan', 'toBeLessThanOrEqual', 'toBe', 'toEqual'] as const

let compared = 0
chai.use((chaiItself, utils) => {
  for (const matcher of matchers) {
    utils.overwriteMethod(
      chaiItself.Assertion.prototype,
      matcher,
      (before: (...given: unknown[]) => unknown) =>
        function (this: object, ...given: unknown[]) {
          const actual = utils.flag(this, 'object') as unknown
          if (typeof actual === 'number' && !(utils.flag(this, 'negate') as boolean | undefined)) compared++
          return before.apply(this, given)
        },
    )
  }
})
beforeEach(() => {
  compared = 0
})
afterEach(({ task }) => {
  ;(task.meta as { compared?: number }).compared = compared
})
