import { describe, expect, test } from 'vitest'
import { assessReliefValve, bubbleHead } from '../../src/buoyancy/index.ts'
import { kilogramPerCubicMetre, litrePerMinute, measure, metre } from '../../src/units/index.ts'
import { decided } from '../fixtures/decision.ts'
import { decisions } from './decisions.ts'

describe.each(Object.entries(decisions))('%s', (_, table) => {
  test.each(table)('%s: %s', (_when, verdict, codes, judged) => {
    expect(decided(judged())).toEqual([verdict, ...codes])
  })
})

test('a bubble that just meets the spring opens the valve, and the margin is what is vented beyond the inflator', () => {
  const water = { density: measure(1000, kilogramPerCubicMetre) }
  const height = measure(1, metre)
  const valve = { opensAt: bubbleHead(height, water), height, ventFlow: measure(400, litrePerMinute) }
  const found = assessReliefValve(valve, measure(250, litrePerMinute), water)
  expect([found.verdict, found.because[0]?.code]).toEqual(['beyond', 'opens-at-rest'])
  expect(found.margin).toBeCloseTo(150 / 60_000, 12)
  expect([found.cautions, found.sources]).toEqual([['buoyancy', 'always'], ['litrebar-derivation']])
})
