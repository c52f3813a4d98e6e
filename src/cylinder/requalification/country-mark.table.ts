import type { SourceId } from '../../references/sources.ts'
import type { RetestSuffix, TestKind } from '../marking/index.ts'
import type { RuleSetId, RuleStatus } from './requalification-rule.table.ts'

/** What a sign behind a date means in one country. The same sign means something else, or nothing, in the next one. */
export interface CountryMark {
  readonly mark: RetestSuffix
  readonly ruleSets: readonly RuleSetId[]
  /** `rejected`: the cylinder failed. */
  readonly kind: TestKind | 'rejected'
  readonly text: string
  readonly status: RuleStatus
  readonly source: SourceId
  readonly place: string
}

const told = { status: 'secondary', source: 'common-practice', place: 'trade and club pages' } as const

/** Signs that cannot be read without knowing the country. */
export const countryMarks: readonly CountryMark[] = [
  {
    mark: 'R',
    ruleSets: ['spanish-diving'],
    kind: 'rejected',
    text: 'R beside the serial number marks a rejected cylinder in Spain',
    status: 'read',
    source: 'rd-809-2021',
    place: 'EP-5 article 8, annex II',
  },
  {
    mark: 'R',
    ruleSets: ['belgian-diving'],
    kind: 'hydraulic',
    text: 'R is a hydraulic test passed in Belgium',
    ...told,
  },
  { mark: 'RR', ruleSets: ['belgian-diving'], kind: 'visual', text: 'RR is a visual inspection in Belgium', ...told },
  {
    mark: '+',
    ruleSets: ['swiss-diving'],
    kind: 'visual',
    text: 'a cross is a visual inspection in Switzerland',
    ...told,
  },
  { mark: 'L', ruleSets: ['japanese-diving'], kind: 'hydraulic', text: 'L is the full test in Japan', ...told },
  { mark: 'S', ruleSets: ['japanese-diving'], kind: 'visual', text: 'S is the short test in Japan', ...told },
]
