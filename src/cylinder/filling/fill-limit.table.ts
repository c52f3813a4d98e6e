import type { SourceId } from '../../references/index.ts'

/** The rule sets whose filling limits are held here. Which one governs a cylinder is read from its marking and its place of use, never guessed. */
export type FillRule = 'us-specification' | 'us-specification-plus' | 'un-receptacle'

/** What a filling limit is a multiple of: a mark, or the unit psi for a limit that is a fixed figure. */
export type LimitedMark = 'servicePressure' | 'testPressure' | 'workingPressure' | 'psi'

/** One filling limit: the gauge pressure that the gas may have at a stated temperature. */
export interface FillLimitRow {
  readonly rule: FillRule
  readonly id: string
  readonly text: string
  /** The temperature at which the limit holds, as printed. */
  readonly at: { readonly value: number; readonly unit: 'fahrenheit' | 'celsius' }
  /** The limit is `mark` times numerator over denominator. */
  readonly numerator: number
  readonly denominator: number
  readonly mark: LimitedMark
  /** What the limit is confined to; it holds for every cylinder of the rule set, if absent. */
  readonly only?: {
    readonly material: 'aluminium'
    /** Oxygen of the gas, per cent, above which the limit holds. */
    readonly oxygenAbove: number
    /** Country of filling, as two letters. */
    readonly country?: 'US'
  }
  readonly source: SourceId
  readonly place: string
  readonly edition: string
  /** Whether the text itself was seen, a report of it, or neither. */
  /** Whether the text itself was seen, or a report of it. None rests on memory. */
  readonly evidence: 'primary' | 'secondary'
}

/**
 * Filling limits of the regulations, for gases that stay gas: air, nitrox, trimix, heliox, oxygen, argon.
 * Not for liquefied, dissolved or poisonous gases, which have rules of their own.
 */
export const fillLimitRows: readonly FillLimitRow[] = [
  {
    rule: 'us-specification',
    id: 'us-settled',
    text: 'settled pressure at 70 °F at most the service pressure',
    at: { value: 70, unit: 'fahrenheit' },
    numerator: 1,
    denominator: 1,
    mark: 'servicePressure',
    source: 'cfr-49-173-301a',
    place: 'paragraph (c)',
    edition: '2024-02-29',
    evidence: 'primary',
  },
  {
    rule: 'us-specification',
    id: 'us-hot',
    text: 'pressure at 131 °F at most five quarters of the service pressure',
    at: { value: 131, unit: 'fahrenheit' },
    numerator: 5,
    denominator: 4,
    mark: 'servicePressure',
    source: 'cfr-49-173-301a',
    place: 'paragraph (d)',
    edition: '2024-02-29',
    evidence: 'primary',
  },
  {
    rule: 'us-specification',
    id: 'us-aluminium-oxygen',
    text: 'oxygen above 23.5 % in an aluminium cylinder: settled pressure at 70 °F at most 3000 psi',
    at: { value: 70, unit: 'fahrenheit' },
    numerator: 3000,
    denominator: 1,
    mark: 'psi',
    only: { material: 'aluminium', oxygenAbove: 23.5 },
    source: 'cfr-49-173-302-2015',
    place: 'paragraph (b)(4)',
    edition: 'annual edition 2015',
    evidence: 'primary',
  },
  {
    rule: 'us-specification-plus',
    id: 'us-plus-settled',
    text: 'settled pressure at 70 °F at most eleven tenths of the service pressure, if every condition of the plus mark holds',
    at: { value: 70, unit: 'fahrenheit' },
    numerator: 11,
    denominator: 10,
    mark: 'servicePressure',
    source: 'cfr-49-173-302a-2015',
    place: 'paragraph (b)',
    edition: 'annual edition 2015',
    evidence: 'primary',
  },
  {
    rule: 'us-specification-plus',
    id: 'us-plus-hot',
    // Five quarters of the filling pressure, which may itself be eleven tenths of the service pressure.
    text: 'pressure at 131 °F at most five quarters of the permitted filling pressure',
    at: { value: 131, unit: 'fahrenheit' },
    numerator: 11,
    denominator: 8,
    mark: 'servicePressure',
    source: 'cfr-49-173-301a',
    place: 'paragraph (d)',
    edition: '2024-02-29',
    evidence: 'primary',
  },
  {
    rule: 'un-receptacle',
    id: 'un-working',
    // The definition of working pressure in ADR 1.2.1 and ISO 10286 is remembered; a national law that says the same was read.
    text: 'settled pressure at 15 °C at most the marked working or filling pressure',
    at: { value: 15, unit: 'celsius' },
    numerator: 1,
    denominator: 1,
    mark: 'workingPressure',
    source: 'afs-norway-2013',
    place: 'paragraph 25-15',
    edition: 'as changed 2013-12-30 no. 1725',
    evidence: 'primary',
  },
  {
    rule: 'un-receptacle',
    id: 'un-two-thirds',
    text: 'working pressure, settled at 15 °C, at most two thirds of the test pressure',
    at: { value: 15, unit: 'celsius' },
    numerator: 2,
    denominator: 3,
    mark: 'testPressure',
    source: 'cfr-49-173-302b',
    place: 'compressed gas in UN receptacles',
    edition: '2021',
    evidence: 'primary',
  },
  {
    rule: 'un-receptacle',
    id: 'un-hot',
    text: 'pressure at 65 °C at most the test pressure',
    at: { value: 65, unit: 'celsius' },
    numerator: 1,
    denominator: 1,
    mark: 'testPressure',
    source: 'cfr-49-173-302b',
    place: 'compressed gas in UN receptacles',
    edition: '2021',
    evidence: 'primary',
  },
  {
    rule: 'un-receptacle',
    id: 'un-aluminium-oxygen',
    text: 'oxygen above 23.5 % in an aluminium cylinder, in the US: settled pressure at 70 °F at most 3000 psi',
    at: { value: 70, unit: 'fahrenheit' },
    numerator: 3000,
    denominator: 1,
    mark: 'psi',
    only: { material: 'aluminium', oxygenAbove: 23.5, country: 'US' },
    source: 'cfr-49-173-302-2015',
    place: 'paragraph (b)(4)',
    edition: 'annual edition 2015',
    evidence: 'primary',
  },
]

/** A service pressure that a rule assigns to a cylinder without one. */
export interface DesignatedServicePressure {
  readonly specification: string
  /** psi, gauge */
  readonly value: number
  readonly source: SourceId
  readonly edition: string
}

/** Service pressures designated for cylinders without a marked one, as printed in psig. */
export const designatedServicePressures: readonly DesignatedServicePressure[] = [
  { specification: '3', value: 1800, source: 'cfr-49-173-301a', edition: '2024-02-29' },
  { specification: '3E', value: 1800, source: 'cfr-49-173-301a', edition: '2024-02-29' },
  { specification: '8', value: 250, source: 'cfr-49-173-301a', edition: '2024-02-29' },
]

/** What a limit above does not speak about, or speaks about otherwise. */
export interface FillLimitNote {
  readonly rule: FillRule
  readonly text: string
  readonly source: SourceId
  readonly edition: string
}

/** Exceptions to the filling limits, to be read with them. */
export const fillLimitNotes: readonly FillLimitNote[] = [
  {
    rule: 'us-specification',
    text: 'Before each filling the cylinder is inspected externally. With a crack, leak, bulge, defective valve or relief device, or signs of abuse, fire, heat or detrimental rust it is not filled; nor is one that is overdue for requalification.',
    source: 'cfr-49-173-301-2015',
    edition: 'annual edition 2015',
  },
  {
    rule: 'us-specification',
    text: 'The limit at 131 °F does not apply to acetylene, liquefied nitrous oxide and carbon dioxide; poisonous gases of hazard zones A and B must stay within the service pressure at 131 °F.',
    source: 'cfr-49-173-301a',
    edition: '2024-02-29',
  },
  {
    rule: 'us-specification',
    text: 'A cylinder that predates its specification may stay in use if it is properly tested and otherwise conforms.',
    source: 'cfr-49-173-301a',
    edition: '2024-02-29',
  },
  {
    rule: 'us-specification-plus',
    text: 'The plus does not raise the service pressure; it permits the excess for non-liquefied gases of division 2.2 as long as all conditions are met.',
    source: 'phmsa-17-0035',
    edition: '2017-11-16',
  },
  {
    rule: 'us-specification-plus',
    text: 'The plus belongs to the test date that it follows: a later test date without a plus ends the permission.',
    source: 'memory',
    edition: 'current',
  },
  {
    rule: 'un-receptacle',
    text: 'A limit prescribed for the gas replaces the two thirds of the test pressure.',
    source: 'cfr-49-173-302b',
    edition: '2021',
  },
]
