import type { SourceId } from '../../references/index.ts'

/** An oxygen content above which a rule treats gas or equipment differently. As printed, per cent by volume. */
interface OxygenThreshold {
  /** per cent; content above it is concerned */
  readonly above: number
  readonly text: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
  /** `policy`: no text stands behind it but the decision of whoever names it. */
  readonly evidence: 'primary' | 'policy'
}

/**
 * Published thresholds of oxygen service. They contradict each other because they speak about different things:
 * transport class, valves, diving equipment. There is no default; the filling station’s policy names one.
 */
export const oxygenThresholds = {
  'us-transport-oxidizer': {
    above: 23.5,
    text: 'the gas is an oxidizer in transport; an aluminium cylinder must meet the conditions for oxygen',
    source: 'phmsa-06-0064',
    place: 'letter',
    edition: '2006-05-23',
    evidence: 'primary',
  },
  'en-nitrox-connection': {
    above: 22,
    text: 'a diving valve needs the nitrox connection',
    source: 'en-144-3',
    place: 'scope',
    edition: '2003',
    evidence: 'primary',
  },
  'en-synthetic-air': {
    above: 23.5,
    text: 'the gas is no longer synthetic air (20 to 23.5 %)',
    source: 'en-1089-3',
    place: 'clauses 3 and 5',
    edition: '2011',
    evidence: 'primary',
  },
  'us-diving-equipment': {
    above: 40,
    text: 'equipment must be designed for oxygen and cleaned; above 125 psig shut-offs must open slowly',
    source: 'cfr-29-1910-430',
    place: 'paragraph (i)',
    edition: 'as amended to 1986, annual edition 2015',
    evidence: 'primary',
  },
  'any-enrichment': {
    above: 21,
    text: 'any mixture richer than air is handled like oxygen',
    source: 'common-practice',
    place: 'policy of some filling stations',
    edition: 'current',
    evidence: 'policy',
  },
} as const satisfies Record<string, OxygenThreshold>

/** The id of a published threshold. */
export type OxygenThresholdId = keyof typeof oxygenThresholds

/** Conditions for oxygen, and for mixtures above 23.5 % of it, in aluminium cylinders in the US. */
export const aluminiumOxygenConditions = {
  threads: 'straight threads only, except on UN cylinders',
  valve: 'brass or stainless steel wherever metal is in contact with the gas',
  cleaning: 'cleaned to a stated standard',
  /** psi, gauge, at 70 °F */
  pressureAtMost: 3000,
  /** Per cent by volume, above which the conditions hold. */
  oxygenAbove: 23.5,
  source: 'cfr-49-173-302-2015',
  place: 'paragraph (b)(1) to (4)',
} as const satisfies { readonly source: SourceId; readonly [name: string]: string | number }
