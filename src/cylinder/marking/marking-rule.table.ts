import type { SourceId } from '../../references/sources.ts'

/** A rule about marks that no field of a stamp carries: where they stand, how high, who gives them, what may be removed. */
export interface MarkingRule {
  readonly id: string
  readonly text: string
  /** The figure of the rule, where it has one, in the unit printed. */
  readonly value?: number
  readonly unit?: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

const un = { source: 'un-model-regulations-17', edition: '2011' } as const
const us = { source: 'cfr-49-178-35', place: 'paragraph (f)', edition: '2010' } as const
const retest = { source: 'cfr-49-180-213', place: 'paragraphs (a) and (b)', edition: '2007' } as const
const retest2015 = { source: 'cfr-49-180-213', edition: '2015, amended since' } as const
const un2015 = { source: 'cfr-49-178-71', edition: '2015, amended since' } as const
const prefix = { source: 'cfr-49-180-205', place: 'paragraph (c)', edition: '2021' } as const
const condemned = { source: 'cfr-49-180-205-2015', edition: '2015, amended since' } as const
const practice = {
  source: 'common-practice',
  place: 'from marking examples and trade articles',
  edition: 'current',
} as const
const recalled = { source: 'memory', edition: 'current' } as const

/** Rules about marks, for reading and teaching. */
export const markingRules: readonly MarkingRule[] = [
  {
    id: 'us-original-marks',
    text: 'specification with service pressure, serial number, maker, inspector with test date',
    ...us,
  },
  { id: 'us-closed-end', text: 'SPUN or PLUG is added near the specification if an end is closed that way', ...us },
  {
    id: 'us-place-of-marks',
    text: 'marks are stamped on shoulder, top head or neck, and a serial number is mandatory',
    source: 'phmsa-99-0034',
    place: 'letter',
    edition: '1999-10-14',
  },
  {
    id: 'us-numbers',
    text: 'a maker may be an M number and an inspector an IA number; the date is month, inspector, year',
    ...practice,
  },
  {
    id: 'us-canadian',
    text: 'a Canadian mark has an M after the type and the pressure in bar: 207 bar for 3000 psi',
    value: 207,
    unit: 'bar',
    ...practice,
  },
  {
    id: 'us-permit',
    text: 'a special permit stamps its number before the pressure: SP, formerly E',
    value: 3442,
    unit: 'psi',
    ...practice,
  },
  {
    id: 'us-plus-date',
    text: 'a later test date followed by + permits ten per cent more on 3A and 3AA',
    value: 10,
    unit: '%',
    source: 'crc-handbook',
    place: 'cylinder markings',
    edition: 'as copied, edition not seen',
  },
  { id: 'us-old-prefixes', text: 'older prefixes: ICC in the US; BTC, CRC and CTC in Canada', ...prefix },
  {
    id: 'us-old-prefix-year',
    text: 'ICC was used before this year',
    value: 1970,
    unit: 'year',
    place: '49 CFR 180.205(c)',
    ...recalled,
  },
  {
    id: 'us-old-dates',
    text: 'older test dates are month and year with a hyphen, without a RIN; any date older than this has expired',
    value: 5,
    unit: 'year',
    source: 'us-navy-diving-manual',
    place: 'naval aviation training text, table 8-1, as copied',
    edition: 'revisions 4 to 6, read in public copies',
  },
  { id: 'rin-of-facility', text: 'a RIN belongs to a facility, not to a person', ...practice },
  {
    id: 'us-before-3al',
    text: 'aluminium cylinders before 1982 carry a special permit or exemption, later overstamped 3AL',
    value: 1982,
    unit: 'year',
    ...practice,
  },
  {
    id: 'dual-marks-differ',
    text: 'Canadian and US pressures on one 3AA shoulder need not be equal: 184 bar beside 2400 psi was seen',
    value: 184,
    unit: 'bar',
    ...practice,
  },
  {
    id: 'us-authorised-types',
    text: 'authorised types: 3A, 3AA, 3AL, 3AX, 3A480X, 3AAX, 3B, 3BN, 3E, 3HT, 3T, the 4 series, 8, 8AL, 39; ICC-3 only where it exists',
    source: 'cfr-49-173-301',
    place: 'paragraph (a)',
    edition: '2006',
  },
  {
    id: 'retest-mark-removal',
    text: 'old test dates may be peened off with the owner’s consent and an intact wall; the date of manufacture stays',
    ...retest,
  },
  {
    id: 'retest-mark-place',
    text: 'requalification marks go on the upper end, never on the sidewall unless the specification allows it',
    ...retest,
  },
  {
    id: 'condemned-mark',
    text: 'on a condemned cylinder a row of X is stamped over specification and pressure, or the word CONDEMNED: either will do; a composite gets a label with the word',
    ...condemned,
    place: 'paragraph (i)(2), since moved to (j)',
  },
  {
    id: 'condemned-mark-stays',
    text: 'nobody may remove or cover the condemnation mark; the owner is notified in writing',
    ...condemned,
    place: 'paragraph (i)(3), since moved to (j)',
  },
  {
    id: 'french-pressure-mark',
    text: 'an older French shoulder has the filling pressure at 15 °C after C à 15°',
    value: 15,
    unit: 'degC',
    source: 'french-order-2000',
    place: 'article 10, paragraph 1 c',
    edition: 'as codified',
  },
  {
    id: 'spanish-epsilon-mark',
    text: 'an older Spanish shoulder has an epsilon, with 1 for steel or 2 for aluminium',
    source: 'rd-809-2021',
    place: 'EP-5 annex I no. 1 b',
    edition: '2021-09-21, consolidated with RD 145/2023',
  },
  {
    id: 'retest-mark-height',
    text: 'height of the date, at least',
    value: 6.35,
    unit: 'mm',
    place: 'paragraph (e)',
    ...retest2015,
  },
  {
    id: 'rin-height',
    text: 'height of the RIN, at least',
    value: 3.18,
    unit: 'mm',
    place: 'paragraph (e)',
    ...retest2015,
  },
  {
    id: 'rin-square',
    text: 'four characters in a square between month and year, read clockwise from the upper left',
    value: 4,
    unit: 'characters',
    place: 'paragraph (d)',
    ...retest2015,
  },
  {
    id: 'retest-letters',
    text: '+ ten per cent, star ten years, E external visual instead of a test, S proof test, FS shell and filler, AE acoustic emission, UE ultrasonic, VE eddy current; none: the volumetric test, which says nothing about the interval',
    place: 'paragraph (f)',
    ...retest2015,
  },
  {
    id: 'un-groups',
    text: 'manufacturing marks on top, operational in the middle, certification at the bottom; top and bottom in sequence',
    place: '6.2.2.7.5',
    ...un,
  },
  {
    id: 'un-example',
    text: '25E D MF 765432 H / PW200 PH300BAR 62.1KG 50L 5.8MM / UN ISO 9809-1 F IB 2000/12',
    place: '6.2.2.7.5',
    ...un,
  },
  {
    id: 'un-certification',
    text: 'UN symbol, technical standard, country of approval, inspection body, initial inspection as YYYY/MM',
    source: 'adr-2017',
    place: '6.2.2.9.2',
    edition: '2017',
  },
  {
    id: 'un-test-pressure',
    text: 'the test pressure follows PH and precedes BAR',
    source: 'adr-2017',
    place: '6.2.2.9.2',
    edition: '2017',
  },
  {
    id: 'un-manufacturing',
    text: 'thread, country of manufacture if it differs, serial number of the maker, H for steel suitable for embrittling gases',
    place: '6.2.2.7.5',
    ...un,
  },
  {
    id: 'un-periodic',
    text: 'country sign (left out where it is that of the approval), mark of the body, date YY/MM or YYYY/MM',
    place: '6.2.2.7.7',
    ...un,
  },
  { id: 'un-height', text: 'height of marks from 140 mm diameter', value: 5, unit: 'mm', place: '6.2.2.7.1', ...un },
  {
    id: 'un-height-small',
    text: 'height of marks below 140 mm diameter',
    value: 2.5,
    unit: 'mm',
    place: '6.2.2.7.1',
    ...un,
  },
  {
    id: 'un-symbol-height',
    text: 'height of the UN symbol from 140 mm diameter',
    value: 10,
    unit: 'mm',
    place: '6.2.2.7.1',
    ...un,
  },
  {
    id: 'un-symbol-height-small',
    text: 'height of the UN symbol below 140 mm diameter',
    value: 5,
    unit: 'mm',
    place: '6.2.2.7.1',
    ...un,
  },
  {
    id: 'un-figures',
    text: 'mass to three figures, rounded up; below 1 kg two figures, rounded down; capacity to three figures, rounded down, and required for liquefied gases only',
    value: 3,
    unit: 'figures',
    place: 'paragraphs (q)(8) and (q)(11)',
    ...un2015,
  },
  {
    id: 'adr-without-symbol',
    text: 'a non-UN receptacle omits the symbol; the month may be omitted where the interval is at least this long',
    value: 10,
    unit: 'year',
    source: 'adr-2017',
    place: '6.2.3.9',
    edition: '2017',
  },
  {
    id: 'pi-mark',
    text: 'the pi mark with the notified body’s four-digit number, at the initial and each periodic inspection',
    value: 4,
    unit: 'figures',
    place: 'directive 2010/35/EU, articles 14 and 15',
    ...recalled,
  },
  {
    id: 'usa-approval',
    text: 'UN receptacles approved in the US carry USA/ and the approval number of the maker',
    place: 'paragraph (q)(3)',
    ...un2015,
  },
  {
    id: 'body-catalogue',
    text: 'marks of retesters and inspection bodies are catalogued by country',
    source: 'eiga-doc-36',
    place: 'abstract',
    edition: '2019',
  },
  {
    id: 'iso-13769',
    text: 'ISO 13769 is the standard of the stamp; some countries, Germany among them, stamp the expiry date instead of the test date',
    ...practice,
  },
  {
    id: 'old-european',
    text: 'an older European stamp: gas word, 200 and T 300bar, mass with a decimal comma, capacity, date YY/MM',
    value: 300,
    unit: 'bar',
    ...practice,
  },
]

/** A colour of the shoulder. */
export interface ShoulderColour {
  readonly stands: string
  readonly colour: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
}

const en = { source: 'en-1089-3', edition: '2011' } as const

/** Colours of EN 1089-3. The label names the gas; a colour never does so alone, and an analysis decides what is breathed. */
export const shoulderColours: readonly ShoulderColour[] = [
  { stands: 'toxic or corrosive', colour: 'yellow', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'flammable', colour: 'red', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'oxidizing', colour: 'light blue', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'inert; not for breathing air', colour: 'bright green', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'oxygen', colour: 'white', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'nitrous oxide', colour: 'blue', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'acetylene', colour: 'maroon', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'argon', colour: 'dark green', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'nitrogen', colour: 'black', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'carbon dioxide', colour: 'grey', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'helium', colour: 'brown', place: 'clauses 6.2.2 to 6.2.4', ...en },
  { stands: 'body of a medical cylinder', colour: 'white', place: 'clauses 3 and 5', ...en },
  {
    stands: 'air or nitrox for breathing',
    colour: 'white and black',
    source: 'memory',
    place: 'EN 1089-3, clause 6.2.5',
    edition: 'current',
  },
  {
    stands: 'heliox',
    colour: 'white and brown',
    source: 'memory',
    place: 'EN 1089-3, clause 6.2.5',
    edition: 'current',
  },
  {
    stands: 'trimix',
    colour: 'white, black and brown',
    source: 'memory',
    place: 'EN 1089-3, clause 6.2.5',
    edition: 'current',
  },
]
