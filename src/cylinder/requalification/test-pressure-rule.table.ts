import type { SourceId } from '../../references/sources.ts'
import type { MarkingFamily } from '../marking/index.ts'
import type { RuleSetId, RuleStatus } from './requalification-rule.table.ts'

/** The least test pressure that a rule set asks of cylinders marked under other rules than its own. */
export interface TestPressureRule {
  readonly id: string
  readonly ruleSet: RuleSetId
  readonly text: string
  /** Families of marks that it covers; all, if absent. */
  readonly systems?: readonly MarkingFamily[]
  /** Of the marked service or working pressure. */
  readonly ratio: { readonly numerator: number; readonly denominator: number }
  readonly status: RuleStatus
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

/** Test pressures that depend on the country of the test. Where a rule set has no row, the mark or the specification decides. */
export const testPressureRules: readonly TestPressureRule[] = [
  {
    id: 'us-foreign-test-pressure',
    ruleSet: 'us-180.209',
    text: 'a foreign cylinder is tested at 5/3 of its marked pressure or more, whatever test pressure is marked',
    systems: ['METRIC-OLD', 'EU-pi', 'ADR'],
    ratio: { numerator: 5, denominator: 3 },
    status: 'secondary',
    source: 'cfr-49-180-209',
    place: 'paragraph (a), table 1, foreign cylinder',
    edition: 'later codification, copy undated, after the rule of 2021-01-27',
  },
  {
    id: 'new-zealand-test-pressure',
    ruleSet: 'new-zealand-diving',
    text: 'tested at 5/3 of the service pressure',
    ratio: { numerator: 5, denominator: 3 },
    status: 'secondary',
    source: 'nz-hazardous-substances-2017',
    place: 'guide to gas cylinders, as told by a test station',
    edition: 'as told by a test station',
  },
]
