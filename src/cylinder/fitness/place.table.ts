import type { MarkingFamily } from '../marking/index.ts'
import type { RuleSetId } from '../requalification/index.ts'

// Which marks and which rules belong to which country, as two-letter codes. What is not listed was not read, and is a doubt.

const european = [
  'AT',
  'BE',
  'BG',
  'CH',
  'CY',
  'CZ',
  'DE',
  'DK',
  'EE',
  'ES',
  'FI',
  'FR',
  'GB',
  'GR',
  'HR',
  'HU',
  'IE',
  'IS',
  'IT',
  'LI',
  'LT',
  'LU',
  'LV',
  'MT',
  'NL',
  'NO',
  'PL',
  'PT',
  'RO',
  'SE',
  'SI',
  'SK',
] as const

/** Countries in which the marks of a family are at home; every country, if absent. */
export const homeOfFamily: Readonly<Record<MarkingFamily, readonly string[] | undefined>> = {
  US: ['US', 'CA'],
  UN: undefined,
  'EU-pi': european,
  ADR: european,
  'METRIC-OLD': european,
}

/** The country whose rule a rule set is; none for agreements and practice that hold in many. */
export const countryOfRuleSet: { readonly [Id in RuleSetId]?: string } = {
  'us-180.209': 'US',
  'us-180.207': 'US',
  'us-navy': 'US',
  'canadian-diving': 'CA',
  'uk-diving': 'GB',
  'german-diving': 'DE',
  'austrian-diving': 'AT',
  'swiss-diving': 'CH',
  'french-diving': 'FR',
  'belgian-diving': 'BE',
  'dutch-diving': 'NL',
  'danish-diving': 'DK',
  'spanish-diving': 'ES',
  'italian-diving': 'IT',
  'norwegian-diving': 'NO',
  'finnish-diving': 'FI',
  'japanese-diving': 'JP',
  'australian-diving': 'AU',
  'new-zealand-diving': 'NZ',
  'south-african-diving': 'ZA',
}
