import type { Reason } from '../../references/assessment.ts'
import type { Finding, FindingCode } from './finding.ts'
import { requireFindings } from './require-stamp.ts'

/** What the findings of a stamp do to any verdict about the cylinder. */
export interface FindingEvidence {
  /** It is condemned, or its life has ended. */
  readonly against: readonly Reason[]
  /** Something is broken, unread or contradictory: nothing can be `within` before it is cleared up. */
  readonly doubts: readonly Reason[]
}

const ends: ReadonlySet<FindingCode> = new Set<FindingCode>(['condemned', 'life-ended'])

// Warnings that leave a date or a pressure open. Every error leaves one open too; the other warnings change no verdict by themselves.
const opens: ReadonlySet<FindingCode> = new Set<FindingCode>([
  'unread-figure',
  'pressure-withheld',
  'implausible-number',
  'ambiguous-date',
  'date-in-the-future',
  'conflicting-dual-pressure',
  'capacity-mass-mismatch',
  'eddy-current-on-steel',
  'two-families',
])

/**
 * What the findings of a stamp say against a verdict, and what they leave in doubt. Every function that judges a cylinder adds
 * this to its own reasons: a condemned cylinder is `beyond` whatever else holds, and an error or an unread figure keeps the verdict
 * from `within`.
 *
 * @param findings - of a stamp as read
 * @returns reasons against and doubts, one per code, with the text that stands there
 * @throws LitrebarError `input` for something that is no finding
 * @source litrebar-derivation
 * @example
 * const { findings } = readStamp('DOT-3AL3000 CONDEMNED\nP4711 BRISKA\n07 V 08\n06 C208 23', { asOf: '2026-11' })
 * findingEvidence(findings).against.map(({ code }) => code) // => ['condemned']
 */
export function findingEvidence(findings: readonly Finding[]): FindingEvidence {
  requireFindings('findings', findings)
  return evidenceOf(findings)
}

/** The same of findings that have been checked. */
export function evidenceOf(findings: readonly Finding[]): FindingEvidence {
  const against: Reason[] = []
  const doubts: Reason[] = []
  for (const { code, severity, text } of findings) {
    const list = ends.has(code) ? against : severity === 'error' || opens.has(code) ? doubts : undefined
    if (list === undefined || list.some((reason) => reason.code === code)) continue
    const place = text === '' ? '' : ` at ‘${text}’`
    list.push({ code, text: `the stamp shows ${code.replaceAll('-', ' ')}${place}` })
  }
  return { against, doubts }
}
