import { expect, test } from 'vitest'
import { verdictFrom } from '../../src/references/assessment.ts'

const reason = (code: string): { code: string; text: string } => ({ code, text: code })

test.each([
  { against: [], doubts: [], verdict: 'within' },
  { against: [], doubts: ['unread'], verdict: 'undetermined' },
  { against: ['condemned'], doubts: [], verdict: 'beyond' },
  { against: ['condemned'], doubts: ['unread'], verdict: 'beyond' },
])('against $against, doubts $doubts: $verdict', ({ against, doubts, verdict }) => {
  const found = verdictFrom({ against: against.map(reason), doubts: doubts.map(reason), notes: [reason('note')] })
  expect(found.verdict).toBe(verdict)
  expect(found.because.map(({ code }) => code)).toEqual([...against, ...doubts, 'note'])
})
