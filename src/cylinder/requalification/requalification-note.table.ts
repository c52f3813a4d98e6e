import type { SourceId } from '../../references/sources.ts'

/** What a rule of requalification says beside its interval. */
export interface RequalificationNote {
  readonly id: string
  readonly text: string
  readonly value?: number
  readonly unit?: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

const star = {
  source: 'cfr-49-180-209',
  place: 'paragraph (b), fragments quoted by others',
  edition: '2008, amended since (85 FR 85380, 89 FR 15636)',
} as const
const un = { source: 'cfr-49-180-207', place: 'paragraph (a)', edition: '2021' } as const
const federation = {
  source: 'iso-18119',
  place: 'as quoted by a federation',
  edition: '2018, guidance as quoted by a federation',
} as const

/** Conditions and exceptions that stand beside the intervals. */
export const requalificationNotes: readonly RequalificationNote[] = [
  {
    id: 'star-hammer-test',
    text: 'star: before each refill the cylinder is taken from its cluster and passes the hammer test; dried immediately after the hydrostatic test',
    ...star,
  },
  {
    id: 'star-obliterated',
    text: 'star: obliterated when the cylinder is filled with a gas that is not listed',
    ...star,
  },
  {
    id: 'star-capacity',
    text: 'star: water capacity at most',
    value: 125,
    unit: 'lb',
    source: 'memory',
    place: '49 CFR 180.209(b)',
    edition: 'current',
  },
  {
    id: 'star-not-for-diving',
    text: 'star: not for underwater breathing',
    source: 'memory',
    place: '49 CFR 180.209(b)',
    edition: 'current',
  },
  {
    id: 'us-filled-before-due',
    text: 'US types: may be requalified up to the due month; a cylinder filled before it may stay in service until empty',
    source: 'cfr-49-180-205-2015',
    place: 'paragraph (c)',
    edition: '2015, amended since',
  },
  {
    id: 'us-life-ended',
    text: 'US types: the end of an authorised service life is itself a reason to condemn, not just the end of refilling',
    source: 'phmsa-24-0033r',
    place: '49 CFR 180.205(j)(1)(x)',
    edition: '2025-07-22',
  },
  {
    id: 'us-3ht-pressurisations',
    text: '3HT: condemned after this many pressurisations, or 24 years if they come first',
    value: 4380,
    unit: 'pressurisations',
    source: 'cfr-49-180-205-2015',
    place: 'paragraph (i)(1)(v), since moved to (j)',
    edition: '2015, amended since',
  },
  {
    id: 'mild-service',
    text: 'visual inspection instead of the test for certain non-corrosive services',
    source: 'memory',
    place: '49 CFR 180.209(g)',
    edition: 'current',
  },
  {
    id: 'un-not-filled-after',
    text: 'UN: not filled after the due date; may be requalified up to the due month; a cylinder filled before it may stay in service until empty',
    ...un,
  },
  { id: 'un-service-life', text: 'UN: no requalification after a stated service life', ...un },
  {
    id: 'un-ultrasonic',
    text: 'UN steel of this tensile strength or more: ultrasonic examination, as the copy of the letter quotes 180.207(d)(1)',
    value: 950,
    unit: 'MPa',
    source: 'phmsa-13-0137',
    place: 'letter',
    edition: '2013-12-13',
  },
  {
    id: 'dual-marked',
    text: 'marked both TC and DOT: requalified under the US table or by a Canadian facility',
    source: 'cfr-49-180-205',
    place: 'paragraph (c)',
    edition: '2021',
  },
  {
    id: 'composite-extended',
    text: 'composite receptacles: the authority may extend 5 years up to the table value, at most',
    value: 10,
    unit: 'year',
    source: 'adr-2025',
    place: '4.1.4.1 P200 (3)',
    edition: '2025',
  },
  {
    id: 'older-european-standards',
    text: 'older standards of periodic inspection: EN 1968 steel, EN 1802 aluminium, EN ISO 11623 composite',
    source: 'hse-cylinders',
    place: 'sheet on diving cylinders',
    edition: '2009 and revision 1, read in a copy',
  },
  { id: 'standards-replaced', text: 'EN ISO 18119:2018 replaced EN 1968:2002 and EN 1802:2002', ...federation },
  {
    id: 'moisture-free-2004',
    text: 'commercially free of corrosive components: dew point at 101 kPa at most',
    value: -46.7,
    unit: 'degC',
    source: 'cfr-49-180-203',
    place: 'definition; unchanged in the annual edition 2015, last changed by 71 FR 33894 of 2006',
    edition: '2004',
  },
  {
    id: 'moisture-free-later',
    text: 'commercially free of corrosive components: moisture below',
    value: 55,
    unit: 'ppm',
    source: 'cfr-49-180-203',
    place: 'definition, changed after October 2015',
    edition: 'later codification, copy undated',
  },
  {
    id: 'permit-3442',
    text: 'one published permit family: stamped 3442, yet tested at 3/2 of a design pressure of 3500 psi; test pressure',
    value: 5250,
    unit: 'psi',
    source: 'common-practice',
    place: 'note of a maker on special-permit steel cylinders',
    edition: 'current',
  },
]
