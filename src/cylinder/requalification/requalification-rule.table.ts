import type { SourceId } from '../../references/sources.ts'
import type { CylinderMaterial, MarkingFamily, RetestSuffix, SpecificationName } from '../marking/index.ts'

/** What a rule asks for. */
export type InspectionKind =
  | 'requalification'
  | 'internal inspection'
  | 'external inspection'
  | 'visual inspection'
  | 'eddy current'
  | 'end of service life'

/** What the cylinder is used for, as far as an interval depends on it. */
export type CylinderService = (typeof cylinderServices)[number]

/** The uses by name. */
export const cylinderServices = [
  'diving',
  'breathing apparatus',
  'oxygen',
  'dry listed gas',
  'carbon dioxide',
  'fire extinguisher',
] as const

/**
 * How well the figure is known. `read`: the text of the rule was seen. `secondary`: a restatement by others. `practice`: custom without
 * a rule. `memory`: recalled, and never enough for `within`. `superseded`: read, but the rule has been replaced since.
 */
export type RuleStatus = 'read' | 'secondary' | 'practice' | 'memory' | 'superseded'

/** One interval of one rule set, with what it holds for. */
export interface RequalificationRule {
  readonly id: string
  readonly ruleSet: RuleSetId
  readonly title: string
  readonly kind: InspectionKind
  readonly months: number
  /** The interval until the first one, where it differs. */
  readonly firstMonths?: number
  /** Inspections at fixed ages after the full test, in months, instead of a regular interval. */
  readonly steps?: readonly number[]
  /** Where the count starts, if not at the stamped month of the last one. */
  readonly countsFrom?: 'putting into service' | 'month before the stamp'
  /** A day on which it ends for all. */
  readonly endsIn?: `${number}-${number}`
  /** Families of marks that it covers; all, if absent. */
  readonly systems?: readonly MarkingFamily[]
  readonly specifications?: readonly SpecificationName[]
  readonly materials?: readonly CylinderMaterial[]
  /** Only where the last test carries this mark. */
  readonly mark?: RetestSuffix
  /** First year of manufacture that it holds for. */
  readonly madeFrom?: number
  readonly alloy?: '6351-T6'
  /** Only for these uses; a case that does not state its use is shown this rule beside the one it would replace. */
  readonly services?: readonly CylinderService[]
  /** Holds only where the caller states this. */
  readonly needs?: 'hasRiskAssessment' | 'isInspectedYearly'
  /** What a caller has to state before it can be `within`. */
  readonly conditions?: 'meetsStarConditions'
  /** The rule that this one stands in for where it holds. */
  readonly replaces?: string
  /** Something that a reader of the due date has to know. */
  readonly remark?: { readonly code: string; readonly text: string; readonly source: SourceId }
  readonly status: RuleStatus
  readonly source: SourceId
  readonly place: string
  /** Edition of the source that the figure was taken from. */
  readonly edition: string
}

/**
 * Rule sets that a caller can name. None is ever chosen from a stamp: the same shoulder falls under different rules in
 * different places and uses.
 */
export type RuleSetId = (typeof ruleSetIds)[number]

/** The names of the rule sets. */
export const ruleSetIds = [
  'us-180.209',
  'us-180.207',
  'us-navy',
  'canadian-diving',
  'carriage-p200',
  'iso-18119-diving',
  'uk-diving',
  'uk-diving-before-2002',
  'german-diving',
  'german-diving-before-2003',
  'austrian-diving',
  'swiss-diving',
  'french-diving',
  'french-diving-before-2018',
  'belgian-diving',
  'dutch-diving',
  'danish-diving',
  'spanish-diving',
  'spanish-diving-before-2021',
  'italian-diving',
  'norwegian-diving',
  'finnish-diving',
  'japanese-diving',
  'australian-diving',
  'new-zealand-diving',
  'south-african-diving',
  'yearly-visual',
] as const

const table1 = {
  ruleSet: 'us-180.209',
  status: 'read',
  source: 'cfr-49-180-209',
  place: 'paragraph (a), table 1',
  edition: '2014, amended since (85 FR 85380, 89 FR 15636)',
} as const
const table207 = {
  ruleSet: 'us-180.207',
  systems: ['UN'],
  status: 'read',
  source: 'cfr-49-180-207-2015',
  place: 'paragraph (c), table 1',
  edition: '2015, amended since',
} as const
const guidance = {
  ruleSet: 'iso-18119-diving',
  status: 'secondary',
  source: 'iso-18119',
  place: 'guidance for diving where no local rule exists',
  edition: '2018, guidance as quoted by a federation',
} as const
const navy = {
  ruleSet: 'us-navy',
  status: 'secondary',
  source: 'us-navy-diving-manual',
  place: '7-2.2.2.2',
  edition: 'revisions 4 to 6, read in public copies',
} as const

/** Intervals of the US rules, of carriage, and of guidance that no country owns. */
export const generalRules: readonly RequalificationRule[] = [
  {
    id: 'us-five-years',
    title: '49 CFR 180.209 table 1: 5 years',
    kind: 'requalification',
    months: 60,
    systems: ['US'],
    specifications: ['3A', '3AA', '3AL', '3AX', '3AAX', '3T', '3'],
    ...table1,
  },
  {
    id: 'us-foreign',
    title: '49 CFR 180.209 table 1: foreign cylinders, 5 years',
    kind: 'requalification',
    months: 60,
    systems: ['METRIC-OLD', 'EU-pi', 'ADR'],
    remark: {
      code: 'foreign-not-transported',
      text: 'without a DOT, TC or UN mark it may not be transported filled in the US, except under a special permit or for export; meeting the interval alone does not make it fillable there, and its test pressure must be at least 5/3 of the marked pressure',
      source: 'cfr-49-173-301',
    },
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
    title: 'service life of 24 years, or 4380 pressurisations',
    kind: 'end of service life',
    months: 288,
    specifications: ['3HT'],
    ruleSet: 'us-180.209',
    status: 'read',
    source: 'cfr-49-180-205-2015',
    place: 'paragraph (i)(1)(v), since moved to (j)',
    edition: '2015, amended since',
  },
  {
    id: 'us-star',
    title: '49 CFR 180.209(b): star, 10 years, listed dry gases only',
    kind: 'requalification',
    months: 120,
    specifications: ['3A', '3AA'],
    mark: '★',
    madeFrom: 1946,
    services: ['dry listed gas'],
    replaces: 'us-five-years',
    conditions: 'meetsStarConditions',
    ruleSet: 'us-180.209',
    status: 'secondary',
    source: 'cfr-49-180-209',
    place: 'paragraph (b), fragments; made after 1945: memory',
    edition: '2014, amended since (85 FR 85380, 89 FR 15636)',
  },
  {
    id: 'us-fire-extinguisher',
    title: '49 CFR 180.209 table 1: fire extinguishers, 12 years',
    kind: 'requalification',
    months: 144,
    specifications: ['3A', '3AA', '3AL'],
    services: ['fire extinguisher'],
    replaces: 'us-five-years',
    ...table1,
  },
  {
    id: 'us-6351',
    title: '49 CFR 180.205(f)(4) and part 180 appendix C: eddy current every 5 years for 6351-T6, beside the test',
    kind: 'eddy current',
    months: 60,
    specifications: ['3AL', 'special permit'],
    alloy: '6351-T6',
    services: ['diving', 'breathing apparatus', 'oxygen'],
    ruleSet: 'us-180.209',
    status: 'read',
    source: 'cfr-49-180-205-2015',
    place: 'paragraph (f)(4), in force from 2007-01-01',
    edition: '2015, amended since',
  },
  {
    id: 'us-un-seamless',
    title: '49 CFR 180.207 table 1: UN receptacles, 10 years',
    kind: 'requalification',
    months: 120,
    materials: ['steel', 'aluminium'],
    ...table207,
  },
  {
    id: 'us-un-carbon-dioxide',
    title: '49 CFR 180.207 table 1: UN receptacles of carbon dioxide, 5 years',
    kind: 'requalification',
    months: 60,
    services: ['carbon dioxide'],
    replaces: 'us-un-seamless',
    ...table207,
  },
  {
    id: 'us-un-composite',
    title: '49 CFR 180.207 table 1: UN composite receptacles, 5 years',
    kind: 'requalification',
    months: 60,
    materials: ['composite'],
    ...table207,
  },
  {
    id: 'us-un-composite-life',
    title: '49 CFR 180.207(a)(3): UN composite receptacles, no requalification for use beyond 15 years',
    kind: 'end of service life',
    months: 180,
    materials: ['composite'],
    ...table207,
    place: 'paragraph (a)(3)',
  },
  {
    id: 'p200-seamless',
    title: 'P200: 10 years for seamless receptacles of compressed gas',
    kind: 'requalification',
    months: 120,
    systems: ['UN', 'EU-pi', 'ADR'],
    materials: ['steel', 'aluminium'],
    ruleSet: 'carriage-p200',
    status: 'secondary',
    source: 'cfr-49-180-207-2015',
    place: 'paragraph (c), table 1, which takes the UN figures over; P200 itself was not read',
    edition: '2015, amended since',
  },
  {
    id: 'p200-composite',
    title: 'ADR P200: 5 years for composite receptacles, unless the authority extends them',
    kind: 'requalification',
    months: 60,
    systems: ['UN', 'EU-pi', 'ADR'],
    materials: ['composite'],
    ruleSet: 'carriage-p200',
    status: 'read',
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
    needs: 'hasRiskAssessment',
    replaces: 'iso-18119-internal',
    ...guidance,
  },
  {
    id: 'navy-hydrostatic',
    title: 'US Navy: hydrostatic test 5 years',
    kind: 'requalification',
    months: 60,
    ...navy,
  },
  { id: 'navy-visual', title: 'US Navy: visual inspection 12 months', kind: 'visual inspection', months: 12, ...navy },
  {
    id: 'yearly-visual',
    title: 'common practice: visual inspection every year',
    kind: 'visual inspection',
    months: 12,
    ruleSet: 'yearly-visual',
    status: 'practice',
    source: 'common-practice',
    place: 'none',
    edition: 'current',
  },
]
