import type { SourceId } from '../../references/sources.ts'
import type { CylinderMaterial, MarkingFamily, RetestSuffix, SpecificationName } from '../marking/index.ts'

/** What a rule asks for. */
export type InspectionKind =
  | 'requalification'
  | 'internal inspection'
  | 'visual inspection'
  | 'eddy current'
  | 'end of service life'

/** What the cylinder is used for, as far as an interval depends on it. */
export type CylinderService = 'diving' | 'dry listed gas' | 'fire extinguisher'

/** One interval of one rule set, with what it holds for. */
export interface RequalificationRule {
  readonly id: string
  readonly ruleSet: RuleSetId
  readonly title: string
  readonly kind: InspectionKind
  readonly months: number
  /** Families of marks that it speaks of; all, if absent. */
  readonly systems?: readonly MarkingFamily[]
  readonly specifications?: readonly SpecificationName[]
  readonly materials?: readonly CylinderMaterial[]
  /** Only where the last test carries this mark. */
  readonly mark?: RetestSuffix
  readonly alloy?: '6351-T6'
  /** Only for this use; a case that does not state its use is shown this rule beside the one it would replace. */
  readonly service?: CylinderService
  /** Only with a documented risk assessment of the owner. */
  readonly needsRiskAssessment?: boolean
  /** The rule that this one stands in for where it holds. */
  readonly replaces?: string
  readonly source: SourceId
  readonly place: string
  /** Edition of the source that the figure was taken from. */
  readonly edition: string
}

/**
 * Rule sets that a caller can name. None is ever chosen from a stamp: the same shoulder falls under different rules in
 * different places and uses.
 */
export type RuleSetId =
  | 'us-180.209'
  | 'carriage-p200'
  | 'iso-18119-diving'
  | 'uk-diving'
  | 'uk-diving-before-2002'
  | 'german-diving'
  | 'national-five-years'
  | 'us-navy'
  | 'yearly-visual'

const table1 = {
  ruleSet: 'us-180.209',
  source: 'cfr-49-180-209',
  place: 'paragraph (a), table 1',
  edition: '2008',
} as const
const guidance = {
  ruleSet: 'iso-18119-diving',
  source: 'iso-18119',
  place: 'guidance for diving where no local rule exists',
  edition: '2018, guidance as quoted by a federation',
} as const
const british = { source: 'hse-cylinders', place: 'practice since September 2002', edition: 'as copied' } as const
const practice = { source: 'common-practice', place: 'none', edition: 'current' } as const

/** Every interval, one row each. */
export const requalificationRules: readonly RequalificationRule[] = [
  {
    id: 'us-five-years',
    title: '49 CFR 180.209 table 1: 5 years',
    kind: 'requalification',
    months: 60,
    specifications: ['3A', '3AA', '3AL', '3AX', '3AAX', '3T', '3'],
    ...table1,
  },
  {
    id: 'us-foreign',
    title: '49 CFR 180.209 table 1: foreign cylinders, 5 years',
    kind: 'requalification',
    months: 60,
    systems: ['METRIC-OLD', 'EU-pi', 'ADR'],
    ...table1,
  },
  {
    id: 'us-3ht',
    title: '49 CFR 180.209 table 1: 3 years',
    kind: 'requalification',
    months: 36,
    specifications: ['3HT'],
    ...table1,
  },
  {
    id: 'us-3ht-life',
    title: 'service life of 24 years',
    kind: 'end of service life',
    months: 288,
    specifications: ['3HT'],
    ruleSet: 'us-180.209',
    source: 'cfr-49-173-302a',
    place: 'page 560',
    edition: '2003',
  },
  {
    id: 'us-star',
    title: '49 CFR 180.209(b): star, 10 years, listed dry gases only',
    kind: 'requalification',
    months: 120,
    specifications: ['3A', '3AA'],
    mark: '★',
    service: 'dry listed gas',
    replaces: 'us-five-years',
    ruleSet: 'us-180.209',
    source: 'memory',
    place: '49 CFR 180.209(b)',
    edition: 'current',
  },
  {
    id: 'us-fire-extinguisher',
    title: '49 CFR 180.209 table 1: fire extinguishers, 12 years',
    kind: 'requalification',
    months: 144,
    specifications: ['3A', '3AA', '3AL'],
    service: 'fire extinguisher',
    replaces: 'us-five-years',
    ...table1,
  },
  {
    id: 'us-6351',
    title: '49 CFR 180.209(m) and part 180 appendix C: 5 years with eddy current for 6351-T6 in diving',
    kind: 'eddy current',
    months: 60,
    specifications: ['3AL', 'special permit'],
    alloy: '6351-T6',
    replaces: 'us-five-years',
    ruleSet: 'us-180.209',
    source: 'phmsa-10-0019r',
    place: 'letter',
    edition: '2011-01-07',
  },
  {
    id: 'p200-seamless',
    title: 'P200 and 49 CFR 180.207: 10 years for seamless receptacles of compressed gas',
    kind: 'requalification',
    months: 120,
    systems: ['UN', 'EU-pi', 'ADR'],
    materials: ['steel', 'aluminium'],
    ruleSet: 'carriage-p200',
    source: 'memory',
    place: 'P200 table 1; 49 CFR 180.207(c)',
    edition: 'current',
  },
  {
    id: 'p200-composite',
    title: 'ADR P200: 5 years for composite receptacles, unless the authority extends them',
    kind: 'requalification',
    months: 60,
    systems: ['UN', 'EU-pi', 'ADR'],
    materials: ['composite'],
    ruleSet: 'carriage-p200',
    source: 'adr-2025',
    place: '4.1.4.1 P200 (3)',
    edition: '2025',
  },
  {
    id: 'iso-18119-full',
    title: 'ISO 18119 guidance for diving: full test 5 years',
    kind: 'requalification',
    months: 60,
    ...guidance,
  },
  {
    id: 'iso-18119-internal',
    title: 'ISO 18119 guidance for diving: internal examination yearly',
    kind: 'internal inspection',
    months: 12,
    ...guidance,
  },
  {
    id: 'iso-18119-internal-assessed',
    title: 'ISO 18119 guidance for diving: internal examination, at most 2.5 years with a risk assessment',
    kind: 'internal inspection',
    months: 30,
    needsRiskAssessment: true,
    replaces: 'iso-18119-internal',
    ...guidance,
  },
  {
    id: 'uk-hydraulic',
    title: 'British practice: hydraulic test 5 years',
    kind: 'requalification',
    months: 60,
    ruleSet: 'uk-diving',
    ...british,
  },
  {
    id: 'uk-visual',
    title: 'British practice: visual inspection 2.5 years',
    kind: 'visual inspection',
    months: 30,
    ruleSet: 'uk-diving',
    ...british,
  },
  {
    id: 'uk-hydraulic-before-2002',
    title: 'British practice until September 2002: hydraulic test 4 years',
    kind: 'requalification',
    months: 48,
    ruleSet: 'uk-diving-before-2002',
    ...british,
  },
  {
    id: 'uk-visual-before-2002',
    title: 'British practice until September 2002: visual inspection 2 years',
    kind: 'visual inspection',
    months: 24,
    ruleSet: 'uk-diving-before-2002',
    ...british,
  },
  {
    id: 'german-full',
    title: 'German practice: full inspection 5 years',
    kind: 'requalification',
    months: 60,
    ruleSet: 'german-diving',
    ...practice,
  },
  {
    id: 'german-internal',
    title: 'German practice: internal inspection of steel 2.5 years',
    kind: 'internal inspection',
    months: 30,
    materials: ['steel'],
    ruleSet: 'german-diving',
    ...practice,
  },
  {
    id: 'national-five-years',
    title: 'national practice of many countries: full inspection 5 years',
    kind: 'requalification',
    months: 60,
    ruleSet: 'national-five-years',
    ...practice,
  },
  {
    id: 'navy-hydrostatic',
    title: 'US Navy: hydrostatic test 5 years',
    kind: 'requalification',
    months: 60,
    ruleSet: 'us-navy',
    source: 'us-navy-diving-manual',
    place: '7-2.2.2.2',
    edition: 'revisions 4 to 6, public mirror texts',
  },
  {
    id: 'navy-visual',
    title: 'US Navy: visual inspection 12 months',
    kind: 'visual inspection',
    months: 12,
    ruleSet: 'us-navy',
    source: 'us-navy-diving-manual',
    place: '7-2.2.2.2',
    edition: 'revisions 4 to 6, public mirror texts',
  },
  {
    id: 'yearly-visual',
    title: 'common practice: visual inspection every year',
    kind: 'visual inspection',
    months: 12,
    ruleSet: 'yearly-visual',
    ...practice,
  },
]
