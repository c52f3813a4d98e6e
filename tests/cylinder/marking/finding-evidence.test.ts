import { expect, test } from 'vitest'
import { type FindingCode, findingEvidence, findingSeverity, readStamp } from '../../../src/cylinder/marking/index.ts'

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

test('a reason names what was found and what stands there, once for each code', () => {
  const text = 'DOT-3AL3000\nP4711 BRISKA\n07 V 08\n06 C208 23\n44\n55'
  const { doubts } = findingEvidence(readStamp(text, { asOf: '2026-11' }).findings)
  expect(doubts).toEqual([{ code: 'unread-figure', text: 'the stamp shows unread figure at ‘44’' }])
  const gap = { code: 'missing-service-pressure', severity: 'error', line: 0, start: 3, end: 3, text: '' } as const
  const other = { ...gap, code: 'invalid-month', text: '13' } as const
  expect(findingEvidence([gap, other]).doubts).toEqual([
    { code: 'missing-service-pressure', text: 'the stamp shows missing service pressure' },
    { code: 'invalid-month', text: 'the stamp shows invalid month at ‘13’' },
  ])
})
