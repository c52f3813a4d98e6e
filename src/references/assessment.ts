import { requireKeys, requireList, requireText } from '../errors/index.ts'
import type { CautionId } from './cautions.ts'
import type { SourceId } from './sources.ts'

/** What a comparison with a limit found. `undetermined`: the case is not one that the limit speaks about, or a fact is missing. */
export type Verdict = 'within' | 'beyond' | 'undetermined'

/** One reason behind a verdict: a code for programs, words for people, numbers where there are any. */
export interface Reason {
  readonly code: string
  readonly text: string
  readonly source?: SourceId
}

/**
 * A value judged against a limit. It judges the limit, never whether something may be done:
 * the cautions that belong beside it say who decides.
 */
export interface Assessment<Value = number> {
  readonly value: Value
  readonly limit?: Value
  /** Room left before the limit, in the unit of the value; negative beyond it. */
  readonly margin?: number
  /** Standard uncertainty of the margin, where the inputs stated theirs. */
  readonly marginUncertainty?: number
  readonly verdict: Verdict
  readonly because: readonly Reason[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

/** What speaks for and against a verdict. */
export interface Evidence {
  /** What puts the value beyond its limit, or ends what is judged: a condemnation, an ended life. One is enough. */
  readonly against: readonly Reason[]
  /** What is unknown, unread, contradictory, or rests on memory alone. One is enough to keep the verdict from `within`. */
  readonly doubts: readonly Reason[]
  /** What a reader should know and what changes nothing. */
  readonly notes?: readonly Reason[]
}

/**
 * The verdict that everything known allows, and its reasons in the order of their weight: `beyond` where anything speaks against,
 * `undetermined` where anything is in doubt, `within` only where nothing is left. The one rule of every function that gives an
 * `Assessment`.
 *
 * @param evidence - reasons against, doubts, notes
 * @returns the verdict and its reasons
 * @throws LitrebarError `input` for what is not a list of reasons
 */
export function verdictFrom(evidence: Evidence): Pick<Assessment, 'verdict' | 'because'> {
  requireKeys('evidence', evidence, { against: true, doubts: true, notes: false })
  const { against, doubts, notes = [] } = evidence
  for (const [name, reasons] of Object.entries({ against, doubts, notes })) requireReasons(`evidence.${name}`, reasons)
  return {
    verdict: against.length > 0 ? 'beyond' : doubts.length > 0 ? 'undetermined' : 'within',
    because: [...against, ...doubts, ...notes],
  }
}

function requireReasons(argument: string, reasons: readonly Reason[]): void {
  requireList(argument, reasons)
  for (const [i, reason] of reasons.entries()) {
    requireKeys(`${argument}[${i}]`, reason, { code: true, text: true, source: false })
    requireText(`${argument}[${i}].code`, reason.code)
    requireText(`${argument}[${i}].text`, reason.text)
  }
}
