import { requireKeys } from '../../errors/index.ts'
import type { Reason } from '../../references/index.ts'
import { type PlusFindings, type PlusPermission, plusPermission } from '../filling/plus-permission.ts'
import { type CalendarDate, type CalendarMonth, specificationOf } from '../marking/index.ts'
import { requireStamp } from '../marking/require-stamp.ts'
import { everythingDue } from './next-requalification.ts'
import type { RequalificationHistory } from './stamped-tests.ts'

/** The day of the question, and what is known beside the stamp. */
export interface PlusMarkOptions {
  readonly asOf: CalendarMonth | CalendarDate
  /** What is known of the conditions that no stamp shows: gas, relief device, elastic expansion, wall stress, examination. */
  readonly known?: Omit<PlusFindings, 'specification' | 'plusSign'>
}

/** A plus mark as a stamp shows it, with every condition of the permission behind it. */
export interface PlusMark extends PlusPermission {
  /** What goes on to a filling limit. */
  readonly findings: PlusFindings
  /** Whether the last test carries a plus and is not overdue: a later test without a plus ends the permission. */
  readonly isCurrent: boolean
  readonly because: readonly Reason[]
}

/**
 * The plus mark of a US cylinder: whether the ten per cent permission may be possible on the day, and what it hangs on.
 * A stamp shows two of its conditions, the type and the plus behind the last test; the others stay unknown until stated.
 * Never whether the permission has been earned: that is the requalifier's.
 *
 * @param cylinder - a stamp as read, or its dates
 * @param options - the day, and what is known beside the stamp
 * @returns the conditions met, unmet and unknown, whether the mark is current, and reasons
 * @throws LitrebarError `input` for a date that the calendar does not have, or an unknown option
 * @source cfr-49-173-302, paragraph (c), now 173.302a(b); a later test without plus ends it: memory
 * @example
 * const stamp = readStamp('DOT-3AA2250\nLP33107 SKERRY\n11 W 19 +\n7 C208 24 +', { asOf: '2026-11' })
 * const { isCurrent, outcome, met } = plusMark(stamp, { asOf: '2026-11' })
 * const shown = [isCurrent, outcome, met.join(' ')] // => [true, 'undetermined', 'specification plusSign']
 */
export function plusMark(cylinder: RequalificationHistory, options: PlusMarkOptions): PlusMark {
  requireStamp('cylinder', cylinder, ['retests'])
  requireKeys('options', options, { asOf: true, known: false })
  const row = cylinder.specification === undefined ? undefined : specificationOf(cylinder.specification)
  const due = everythingDue(cylinder, { ruleSet: 'us-180.209', service: 'diving', asOf: options.asOf }).find(
    ({ rule }) => rule === undefined || rule.kind === 'requalification',
  )
  // The last test or, before the first retest, the one at manufacture (173.302a(b)).
  const retests = cylinder.retests.filter(({ kind }) => kind !== 'visual' && kind !== 'external visual')
  const last = [...retests].sort((a, b) => (a.date < b.date ? -1 : 1)).at(-1)
  const isMarked = (last?.suffixes ?? cylinder.firstTestSuffixes ?? []).includes('+')
  const isCurrent = isMarked && due?.verdict === 'within'
  const isOpen = isMarked && due?.verdict === 'undetermined'
  const isPlusType = row?.mayCarryPlus === true
  const findings: PlusFindings = {
    ...options.known,
    specification: isPlusType,
    ...(isOpen ? {} : { plusSign: isCurrent }),
  }
  const because: Reason[] = []
  if (isOpen) {
    because.push({
      code: 'plus-undetermined',
      text: 'it cannot be determined whether the test behind the plus is still valid',
    })
  }
  if (isMarked && due?.verdict === 'beyond') {
    because.push({
      code: 'plus-lapsed',
      text: `the plus lapsed with the test that was due in ${due.due ?? 'the past'}`,
    })
  }
  const hadPlus = cylinder.firstTestSuffixes?.includes('+') === true
  if (!isMarked && (hadPlus || cylinder.retests.some(({ suffixes }) => suffixes.includes('+')))) {
    because.push({
      code: 'plus-ended',
      text: 'the last test carries no plus, which ends the permission',
      source: 'memory',
    })
  }
  if (isMarked && !isPlusType) {
    because.push({
      code: 'plus-not-allowed',
      text: 'the ten per cent rule does not cover this type',
      source: 'cfr-49-173-302',
    })
  }
  return { ...plusPermission(findings), findings, isCurrent: isCurrent && isPlusType, because }
}
