import type { CalendarDate, CalendarMonth } from '../marking/index.ts'
import type { PermitRow, PermitTimes } from './permit-table.ts'
import type { CylinderService, RuleSetId } from './requalification-rule.table.ts'
import type { TestTrigger } from './test-trigger.table.ts'

/** What determines a due date besides the stamp: rules, day, use. */
export interface RequalificationOptions {
  /** The rules that govern the cylinder where it is used. There is no default: the stamp cannot say. */
  readonly ruleSet: RuleSetId
  /** The day, or the month, for which the question is asked. */
  readonly asOf: CalendarMonth | CalendarDate
  /** What the cylinder is used for, where an interval depends on it; unstated, diving. */
  readonly service?: CylinderService
  /** The alloy, where it is known; without it what the stamp points to is used. `other`: shown not to be 6351-T6. */
  readonly alloy?: '6351-T6' | 'other'
  /** Month of the last visual or internal inspection, which no stamp shows. */
  readonly lastInspection?: CalendarMonth | CalendarDate
  /** Month in which it was put into service, where a rule counts from there. */
  readonly putIntoService?: CalendarMonth | CalendarDate
  /** Whether the owner holds the documented risk assessment that some intervals ask for. */
  readonly hasRiskAssessment?: boolean
  /** Whether it is inspected at least yearly under an approved scheme, which lengthens some intervals. */
  readonly isInspectedYearly?: boolean
  /**
   * Whether every condition of the ten-year star holds: at most 125 lb of water, one of the listed dry gases and no other since,
   * hammer test before each refill, not used under water.
   */
  readonly meetsStarConditions?: boolean
  /** What has happened to the cylinder that calls for a test in spite of a valid date. */
  readonly triggers?: readonly TestTrigger[]
  /** The terms of its special permit, as the caller read them there. */
  readonly permit?: PermitTimes
  /**
   * Permits as the caller read them, for a register with many: the row of the stamped number gives interval and life, and one that is
   * missing or no longer in force is a reason. `permit` comes before it.
   */
  readonly permits?: readonly PermitRow[]
}
