import type { Reason } from '../../references/assessment.ts'
import { monthNumber, monthText } from '../marking/calendar-month.ts'
import type { RetestSuffix, Stamp, StampMarks, TestKind } from '../marking/index.ts'
import { kindByMarks } from '../marking/test-kind.ts'
import { countryMarks } from './country-mark.table.ts'
import type { RuleSetId } from './requalification-rule.table.ts'

/** What determines when a cylinder is due: a `Stamp` as read, or the dates entered by hand. */
export type RequalificationHistory = Pick<StampMarks, 'retests'> &
  Partial<Omit<Stamp, 'retests' | 'fields' | 'findings'>> &
  Partial<Pick<Stamp, 'fields' | 'findings'>>

/** A test or an inspection that has been, as months since year 0. */
export interface PastTest {
  readonly month: number
  readonly kind: TestKind
  readonly suffixes: readonly RetestSuffix[]
}

/** What a shoulder says has been done up to a day, read by the customs of one country. */
export interface TestRecord {
  /** Month of the first test, or of manufacture where no test is stamped. */
  readonly first: number | undefined
  readonly made: number | undefined
  /** Later tests and inspections up to the day, oldest first. */
  readonly tests: readonly PastTest[]
  /** Reasons that the marks themselves give: a reject mark, a date ahead that is no test. */
  readonly against: readonly Reason[]
  readonly doubts: readonly Reason[]
}

/** Sorts the dates of a stamp into what has been done up to a day. A date after the day never counts as a test. */
export function testRecord(cylinder: RequalificationHistory, ruleSet: RuleSetId, today: number): TestRecord {
  const against: Reason[] = []
  const doubts: Reason[] = []
  const tests: PastTest[] = []
  const made = stampedMonth('cylinder.manufactured', cylinder.manufactured)
  const firstTest = stampedMonth('cylinder.firstTest', cylinder.firstTest)
  for (const [index, retest] of cylinder.retests.entries()) {
    const month = monthNumber(`cylinder.retests[${String(index)}].date`, retest.date)
    const inCountry = countryMarks.find(
      ({ mark, ruleSets }) =>
        ruleSets.includes(ruleSet) && retest.suffixes.includes(mark) && (mark !== '+' || cylinder.system !== 'US'),
    )
    const kind = inCountry?.kind ?? retest.kind ?? kindByMarks(retest.suffixes, cylinder.system)
    if (kind === 'rejected') {
      against.push({
        code: 'reject-mark',
        text: inCountry?.text ?? 'marked as rejected',
        source: inCountry?.source ?? 'memory',
      })
    } else if (month > today) doubts.push(ahead(month))
    else tests.push({ month, kind, suffixes: retest.suffixes })
  }
  let first = firstTest ?? made
  if (first !== undefined && first > today) {
    doubts.push(ahead(first))
    first = undefined
  }
  tests.sort((a, b) => a.month - b.month)
  return { first, made: made ?? firstTest, tests, against, doubts }
}

function ahead(month: number): Reason {
  return {
    code: 'date-in-the-future',
    text: `the date ${monthText(month)} is in the future: it is not a test, and the stamp does not say what it is`,
  }
}

function stampedMonth(argument: string, month: string | undefined): number | undefined {
  return month === undefined ? undefined : monthNumber(argument, month)
}

/** One way to read the dates: what the interval counts from. */
export interface StartReading {
  readonly month: number
  /** Why it might be so; absent for the plain reading. */
  readonly because?: string
}

const fullKinds: ReadonlySet<TestKind> = new Set<TestKind>(['hydraulic', 'ultrasonic', 'acoustic emission'])
const openKinds: ReadonlySet<TestKind> = new Set<TestKind>(['unknown', 'proof'])

/**
 * Months that the interval of the full test may count from, earliest first. A mark of an unknown kind that came before a full interval
 * had passed may have been an inspection alone: both readings are kept. One that came later was a full test, since
 * nothing less would have brought the cylinder back into service.
 *
 * @param record - what has been done
 * @param months - the interval after which only a full test will do
 * @returns candidates, none where no test is known
 */
export function fullTestStarts({ first, tests }: TestRecord, months: number): readonly StartReading[] {
  let starts: number[] = first === undefined ? [] : [first]
  for (const { month, kind } of tests) {
    if (fullKinds.has(kind)) starts = [month]
    else if (openKinds.has(kind)) starts = [...starts.filter((start) => month < start + months), month]
  }
  const plain = starts.at(-1)
  return starts.map((month) =>
    month === plain || plain === undefined
      ? { month }
      : { month, because: `unless the mark of ${monthText(plain)} was a full test, which it does not say` },
  )
}

/** Month of the last inspection of any depth; an external one alone counts for external inspections only. */
export function lastInspectionOf({ first, tests }: TestRecord, isExternalEnough: boolean): number | undefined {
  let last = first
  for (const { month, kind } of tests) {
    if ((kind !== 'external visual' || isExternalEnough) && (last === undefined || month > last)) last = month
  }
  return last
}

/** Month of the last eddy-current examination. */
export function lastEddyCurrent({ tests }: TestRecord): number | undefined {
  return tests.filter(({ suffixes, kind }) => suffixes.includes('VE') || kind === 'eddy current').at(-1)?.month
}
