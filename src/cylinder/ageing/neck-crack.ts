import type { Assessment } from '../../references/assessment.ts'
import type { SourceId } from '../../references/sources.ts'
import { type Accepted, type Fraction, one, type PlainNumber, requireWithin } from '../../units/index.ts'

/** A published criterion for cracks in the neck of 6351-T6 cylinders. */
export interface NeckCrackCriterion {
  readonly text: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

/** Two texts of one authority that contradict each other; it has said so. Both are applied, named, and never merged. */
export const neckCrackCriteria = {
  'appendix-c': {
    text: 'condemn for a crack in neck or shoulder two thread lengths or longer, by eddy current and visual examination',
    source: 'cfr-49-180-appendix-c',
    place: 'condemnation criteria',
    edition: '2021',
  },
  'letter-2011': {
    text: 'condemn for any cracking that has spread into the neck threads',
    source: 'phmsa-10-0019r',
    place: 'letter, which restates one of 2010 and names the conflict',
    edition: '2011-01-07',
  },
} as const satisfies Record<string, NeckCrackCriterion>

/** The reference notch of the eddy-current examination. */
export const eddyCurrentNotch = {
  /** At most this share of the neck wall. */
  depthOfWall: 1 / 3,
  /** At least this many threads. */
  lengthInThreads: 2,
  source: 'cfr-49-180-appendix-c',
  place: 'reference ring',
  edition: '2021',
} as const satisfies { readonly source: SourceId; readonly [name: string]: string | number }

/** A crack as an inspector describes it. */
export interface NeckCrack {
  /** How many thread pitches it runs. */
  readonly lengthInThreads: PlainNumber
  readonly isInThreads: boolean
}

const length: Accepted = { above: 0, atMost: 50, unit: one, hint: 'Count the threads that the crack runs across.' }
const longest = 2

/**
 * A neck crack under both published criteria, each with its own verdict. Where they differ, the difference is the answer:
 * the cylinder is out of use and an inspector decides under the rule that governs him.
 *
 * @param crack - length in threads, above 0; whether it reaches the threads
 * @returns one assessment per criterion, by its id
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-180-appendix-c; phmsa-10-0019r
 * @example
 * const verdicts = assessNeckCrack({ lengthInThreads: 1.5, isInThreads: true })
 * const shown = [verdicts['appendix-c'].verdict, verdicts['letter-2011'].verdict] // => ['within', 'beyond']
 */
export function assessNeckCrack({
  lengthInThreads,
  isInThreads,
}: NeckCrack): Readonly<Record<keyof typeof neckCrackCriteria, Assessment<Fraction>>> {
  requireWithin('lengthInThreads', lengthInThreads, length)
  const value = lengthInThreads as number as Fraction
  const common = { cautions: ['inspection'], value } as const
  const [code, letter] = [neckCrackCriteria['appendix-c'], neckCrackCriteria['letter-2011']]
  return {
    'appendix-c': {
      ...common,
      limit: longest as Fraction,
      margin: longest - lengthInThreads,
      verdict: lengthInThreads < longest ? 'within' : 'beyond',
      because: [{ code: 'appendix-c', text: code.text, source: code.source }],
      sources: [code.source],
    },
    'letter-2011': {
      ...common,
      verdict: isInThreads ? 'beyond' : 'within',
      because: [{ code: 'letter-2011', text: letter.text, source: letter.source }],
      sources: [letter.source],
    },
  }
}
