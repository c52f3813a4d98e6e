import { expect, test } from 'vitest'
import fixture from '../fixtures/iapws-not-expressed.json' with { type: 'json' }

test.each(
  fixture.releases.map(({ release, reason, count, items }) => ({
    release,
    reason,
    count,
    ids: items.map(({ id }) => id),
  })),
)('$release: $count rows without a function here, for a stated reason', ({ reason, count, ids }) => {
  expect(reason).toMatch(/^.{40,}\.$/)
  expect(new Set(ids).size).toBe(count)
})

test('54 rows of four releases are left out', () => {
  expect(fixture.releases.map(({ count }) => count)).toEqual([25, 16, 5, 8])
})
