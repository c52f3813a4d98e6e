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
