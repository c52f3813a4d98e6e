import { requireKeys, requireWord } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import type { SourceId } from '../../references/sources.ts'
import { type Accepted, type Fraction, one, type PlainNumber, requireWithin } from '../../units/index.ts'

/** A published criterion for cracks in the neck of 6351-T6 cylinders. */
export interface NeckCrackCriterion {
  readonly text: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

/** Two texts of one authority that contradict each other, as it has said itself. Both are applied and named, never merged. */
export const neckCrackCriteria = {
  'appendix-c': {
    text: 'condemn for a crack of two thread lengths or more in neck or shoulder, by eddy-current and visual examination',
    source: 'cfr-49-180-appendix-c',
    place: 'condemnation criteria',
    edition: '2021',
  },
  'letter-2011': {
    text: 'condemn for any cracking that has spread into the neck threads',
    source: 'phmsa-10-0019r',
    place: 'letter, which repeats one of 2010 and mentions the conflict',
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

const length: Accepted = { above: 0, atMost: 50, unit: one, hint: 'Count the threads that the crack crosses.' }
const longest = 2

/**
 * A neck crack under both published criteria, each with its own verdict and both texts. Where they differ, the difference is the answer.
 * No verdict is ever milder than `undetermined`: each criterion says what condemns, neither says that a cracked cylinder may stay
 * in use, and the visual half of the examination can condemn it for any crack.
 *
 * @param crack - length in threads, above 0; whether it reaches the threads
 * @returns one assessment per criterion, by its id: `beyond` where it condemns, `undetermined` otherwise
 * @throws LitrebarError `range` or `input`, naming the field
 * @source cfr-49-180-appendix-c; phmsa-10-0019r
 * @example
 * const verdicts = assessNeckCrack({ lengthInThreads: 1.5, isInThreads: true })
 * const shown = [verdicts['appendix-c'].verdict, verdicts['letter-2011'].verdict] // => ['undetermined', 'beyond']
 */
export function assessNeckCrack(
  crack: NeckCrack,
): Readonly<Record<keyof typeof neckCrackCriteria, Assessment<Fraction>>> {
  requireKeys('crack', crack, { lengthInThreads: true, isInThreads: true })
  const { lengthInThreads, isInThreads } = crack
  requireWithin('lengthInThreads', lengthInThreads, length)
  requireWord('isInThreads', isInThreads, [true, false])
  const value = lengthInThreads as number as Fraction
  return {
    'appendix-c': {
      ...judged(value, 'appendix-c', lengthInThreads >= longest),
      limit: longest as Fraction,
      margin: longest - lengthInThreads,
    },
    'letter-2011': judged(value, 'letter-2011', isInThreads),
  }
}

function judged(value: Fraction, id: keyof typeof neckCrackCriteria, condemns: boolean): Assessment<Fraction> {
  const reasons = (Object.keys(neckCrackCriteria) as (typeof id)[]).map((code): Reason => {
    const { text, source } = neckCrackCriteria[code]
    return { code, text, source }
  })
  const own = reasons.filter(({ code }) => code === id)
  const other = reasons.filter(({ code }) => code !== id)
  return {
    value,
    ...verdictFrom({ against: condemns ? own : [], doubts: [cracked, ...other, ...(condemns ? [] : own)] }),
    cautions: ['inspection'],
    sources: reasons.flatMap(({ source }) => source ?? []),
  }
}

const cracked: Reason = {
  code: 'cracked',
  text: 'a crack was found: no criterion clears a cracked cylinder for use, and the visual examination may condemn it for any crack',
  source: 'cfr-49-180-appendix-c',
}
