import type { SourceId } from '../../references/sources.ts'
import type { SpecificationName } from '../marking/index.ts'

/** How much of the expansion may stay after the test. Exactly the limit passes: the rule says "exceeds". */
export interface PermanentExpansionLimit {
  readonly id: string
  /** Types that it holds for; every one, if absent. */
  readonly specifications?: readonly SpecificationName[]
  /** Permanent over total expansion, per cent, as printed. */
  readonly percent: number
  readonly source: SourceId
  readonly place: string
  readonly edition: string
  readonly evidence: 'primary' | 'memory'
}

const condemned = {
  source: 'cfr-49-180-205',
  place: 'paragraph (i)(1) as read in the annual edition 2015, paragraph (j)(1) since',
  edition: '2021',
  evidence: 'primary',
} as const

/** Limits by rule. A design standard sets 5 or 10 %: which one is read from it, so the caller names the row. */
export const permanentExpansionLimits = {
  'us-ten-percent': {
    id: 'us-ten-percent',
    // every US type but 4E; a special permit and a design standard have their own
    specifications: [
      '3A',
      '3AA',
      '3AX',
      '3AAX',
      '3T',
      '3AL',
      '3HT',
      '3',
      '3E',
      '8',
      '8AL',
      '39',
      '3A480X',
      '3B',
      '3BN',
      '4B',
      '4BA',
      '4BW',
      '4B240ET',
      '4AA480',
      '4L',
      '4D',
      '4DA',
      '4DS',
    ],
    percent: 10,
    ...condemned,
  },
  'us-4e': {
    id: 'us-4e',
    specifications: ['4E'],
    percent: 12,
    ...condemned,
  },
  'iso-five-percent': {
    id: 'iso-five-percent',
    percent: 5,
    source: 'memory',
    place: 'ISO 18119, where the design standard says so',
    edition: 'current',
    evidence: 'memory',
  },
  'iso-ten-percent': {
    id: 'iso-ten-percent',
    percent: 10,
    source: 'memory',
    place: 'ISO 18119, where the design standard says so',
    edition: 'current',
    evidence: 'memory',
  },
} as const satisfies Record<string, PermanentExpansionLimit>

/** The id of a limit. */
export type PermanentExpansionLimitId = keyof typeof permanentExpansionLimits

/** What an elastic expansion above the marked rejection value means. */
export interface ElasticExcessRule {
  readonly specifications: readonly SpecificationName[]
  readonly meaning: 'condemn' | 'no plus' | 'permit decides' | 'none'
  readonly text: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

const summary = {
  source: 'cfr-49-180-205',
  place: 'rejection and condemnation, paragraphs (i) and (j), as summarised by others',
  edition: '2021',
} as const

/** By specification. Only one type is condemned for it; rejecting others on it alone would be a mistake. */
export const elasticExcessRules: readonly ElasticExcessRule[] = [
  {
    specifications: ['3HT'],
    meaning: 'condemn',
    text: 'condemned: elastic expansion above the marked value',
    ...summary,
  },
  {
    specifications: ['3A', '3AA', '3AX', '3AAX', '3T'],
    meaning: 'no plus',
    text: 'loses the plus mark; not a reason to condemn',
    source: 'phmsa-13-0042',
    place: 'letter',
    edition: '2013-05-22',
  },
  {
    specifications: ['special permit'],
    meaning: 'permit decides',
    text: 'the permit may set its own rejection value: read the permit',
    ...summary,
  },
  {
    specifications: ['3AL'],
    meaning: 'none',
    text: 'the rule gives elastic expansion no meaning for this type',
    source: 'cfr-49-173-302',
    place: 'list of types of the ten per cent rule',
    edition: 'before 2002 and 2003',
  },
]

/** A term of the test that is no limit of expansion. */
export interface ExpansionTestTerm {
  readonly id: string
  readonly text: string
  readonly value?: number
  readonly unit?: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

/** How the test is run, who is excepted, and how rejection values are found. */
export const expansionTestTerms: readonly ExpansionTestTerm[] = [
  {
    id: 'hold-time',
    text: 'test pressure is held at least this long, and until expansion is complete',
    value: 30,
    unit: 's',
    source: 'cga-c-1',
    place: 'as explained by a test house',
    edition: 'edition not seen',
  },
  {
    id: 'excepted-diameter',
    text: 'no expansion test for a cylinder of at most this outside diameter that is also short',
    value: 2,
    unit: 'in',
    source: 'cfr-49-180-209',
    place: 'table 1, footnote',
    edition: '2008',
  },
  {
    id: 'excepted-length',
    text: 'no expansion test for a cylinder below this length that is also thin',
    value: 2,
    unit: 'ft',
    source: 'cfr-49-180-209',
    place: 'table 1, footnote',
    edition: '2008',
  },
  {
    id: 'leak-or-crack',
    text: 'a leak through the wall, or a crack likely to weaken the cylinder, condemns it',
    source: 'cfr-49-180-205',
    place: 'rejection and condemnation, paragraphs (i) and (j), as summarised by others',
    edition: '2021',
  },
  {
    id: 'rejection-value-methods',
    text: 'a rejection elastic expansion is found by a factor K of the type, by the Bach or by the Clavarino formula',
    value: 3,
    unit: 'methods',
    source: 'cga-c-5',
    place: 'contents',
    edition: '2010',
  },
  {
    id: 'foreign-test-pressure',
    text: 'a foreign cylinder under the US rule is tested at its marked pressure, at least this many times any service or working pressure mark',
    value: 5 / 3,
    unit: '1',
    source: 'cfr-49-180-209',
    place: 'table 1',
    edition: '2008',
  },
  {
    id: 'overheated-aluminium',
    text: 'an aluminium cylinder of which any part reached this temperature is overheated: condemned',
    value: 176,
    unit: 'degC',
    source: 'cfr-49-180-203',
    place: 'definition of overheated',
    edition: '2004',
  },
  {
    id: 'overheated-steel',
    text: 'a steel cylinder of which any part reached this temperature is overheated: specially handled',
    value: 343,
    unit: 'degC',
    source: 'cfr-49-180-203',
    place: 'definition of overheated',
    edition: '2004',
  },
  {
    id: 'burst-ratio-liquids',
    text: 'burst over test pressure of refillable metal receptacles for liquids, at least',
    value: 1.5,
    unit: '1',
    source: 'adr-2017',
    place: '4.1.3.6',
    edition: '2017',
  },
  {
    id: 'burst-ratio-iso',
    text: 'burst over test pressure of seamless ISO cylinders, at least',
    value: 1.6,
    unit: '1',
    source: 'memory',
    place: 'ISO 9809-1 and ISO 7866',
    edition: 'current',
  },
]
