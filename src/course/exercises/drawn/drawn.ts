import type { Random } from '../../../uncertainty/index.ts'
import type { DrawnItem } from './drawn-item.ts'
import type { DrawnWords } from './drawn-text.table.ts'
import { dueStamp } from './due-stamp.ts'
import { loopFault } from './loop-fault.ts'
import { loopPicture } from './loop-picture.ts'
import { shoulderFindings } from './shoulder-findings.ts'

/** Ids of what can be drawn to be judged. */
export type DrawnId = 'due-stamp' | 'shoulder-findings' | 'loop-fault' | 'loop-picture'

/** The same as a list, for checks. */
export const drawnIds: readonly DrawnId[] = ['due-stamp', 'shoulder-findings', 'loop-fault', 'loop-picture']

/** What draws each, and whether one answer is right or several may be. */
export const drawnItems: Readonly<
  Record<
    DrawnId,
    { readonly kind: 'judgement' | 'several'; readonly draw: (random: Random, words: DrawnWords) => DrawnItem }
  >
> = {
  'due-stamp': { kind: 'judgement', draw: dueStamp },
  'shoulder-findings': { kind: 'several', draw: shoulderFindings },
  'loop-fault': { kind: 'judgement', draw: loopFault },
  'loop-picture': { kind: 'judgement', draw: loopPicture },
}
