import { expect, test } from 'vitest'
import { type FindingCode, findingEvidence, findingSeverity } from '../../../src/cylinder/marking/index.ts'

// By hand: what ends a cylinder, and which warnings leave a date or a pressure open. Every other error is a doubt as well.
const ends = ['condemned', 'life-ended']
const opens = [
  'unread-figure',
  'pressure-withheld',
  'implausible-number',
  'ambiguous-date',
  'date-in-the-future',
  'conflicting-dual-pressure',
  'capacity-mass-mismatch',
  'eddy-current-on-steel',
  'two-families',
]

test.each(Object.entries(findingSeverity) as [FindingCode, 'error' | 'warning' | 'note'][])(
  'what %s (%s) does to a verdict',
  (code, severity) => {
    const finding = { code, severity, line: 0, start: 0, end: 2, text: 'XX' } as const
    const { against, doubts } = findingEvidence([finding, finding])
    const isEnd = ends.includes(code)
    const isDoubt = !isEnd && (severity === 'error' || opens.includes(code))
    expect([against.map((reason) => reason.code), doubts.map((reason) => reason.code)]).toEqual([
      isEnd ? [code] : [],
      isDoubt ? [code] : [],
    ])
  },
)
