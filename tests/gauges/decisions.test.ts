import { describe, expect, test } from 'vitest'
import { decided } from '../fixtures/decision.ts'
import { decisions } from './decisions.ts'

describe.each(Object.entries(decisions))('%s', (_, table) => {
  test.each(table)('%s: %s', (_when, verdict, codes, judged) => {
    expect(decided(judged())).toEqual([verdict, ...codes])
  })
})
