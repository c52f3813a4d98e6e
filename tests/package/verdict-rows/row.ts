import type { Verdict } from '../../../src/references/index.ts'

/** One function with a verdict: a case that is `within`, and what must turn it. `pending` until the owner of the room fills it. */
export type VerdictRow =
  | 'pending'
  | {
      readonly base: () => Verdict
      /** Where nothing that is known can ever be enough: the base is `undetermined`. */
      readonly isNeverWithin?: true
      /** By the name of the doubt: an error finding, a missing condition, a wrong sign, a limit from memory. */
      readonly turnedBy: Readonly<Record<string, () => Verdict>>
    }
