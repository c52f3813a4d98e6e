import type { Reason } from '../../references/assessment.ts'
import type { GaugePressure } from '../../units/index.ts'
import type { Stamp } from '../marking/index.ts'
import type { FillingRequest } from './filling-request.ts'

/** What one condition of a filling comes to. */
export interface ConditionResult {
  readonly against?: readonly Reason[]
  readonly doubts?: readonly Reason[]
  readonly notes?: readonly Reason[]
}

/** What a condition is judged on. */
export interface FillingCase {
  readonly request: FillingRequest
  readonly stamp: Stamp
  /** The settled pressure that the marks allow; undefined where they name none. */
  readonly limit: GaugePressure | undefined
}

/** One question that is asked before a cylinder is filled. */
export type FillingCondition = (filling: FillingCase) => ConditionResult

/** A reason, of which the source is left out where there is none. */
export function reason(code: string, text: string, source?: Reason['source']): Reason {
  return source === undefined ? { code, text } : { code, text, source }
}
