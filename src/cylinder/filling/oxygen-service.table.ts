import type { SourceId } from '../../references/index.ts'

/** An oxygen content above which a rule treats gas or equipment differently. As printed, per cent by volume. */
interface OxygenThreshold {
  /** per cent; content above it is concerned */
  readonly above: number
  readonly text: string
  readonly source: SourceId
  readonly place: string
  readonly edition: string
  readonly evidence: 'primary' | 'secondary' | 'memory'
}

/**
 * Published thresholds of oxygen service. They contradict each other because they speak about different things:
 * transport class, valves, diving equipment. There is no default; the filling station’s policy names one.
 */
export const oxygenThresholds = {
  'us-transport-oxidizer': {
    above: 23.5,
    text: 'gas is an oxidizer in transport; an aluminium cylinder must meet the conditions for oxygen',
    source: 'phmsa-06-0064',
    place: 'letter',
    edition: '2006-05-23',
    evidence: 'primary',
  },
  'en-nitrox-connection': {
    above: 22,
    text: 'diving valve needs the nitrox connection',
    source: 'en-144-3',
    place: 'scope',
    edition: '2003',
    evidence: 'primary',
  },
  'en-synthetic-air': {
    above: 23.5,
    text: 'gas is no longer synthetic air (20 to 23.5 %)',
    source: 'en-1089-3',
    place: 'clauses 3 and 5',
    edition: '2011',
    evidence: 'primary',
  },
  'us-diving-equipment': {
    above: 40,
    text: 'equipment must be designed for oxygen and cleaned; above 125 psig shut-offs must open slowly',
    source: 'memory',
    place: '29 CFR 1910.430(i)',
    edition: 'current',
    evidence: 'memory',
  },
  'any-enrichment': {
    above: 21,
    text: 'any mixture richer than air is handled as oxygen',
    source: 'common-practice',
    place: 'policy of some filling stations',
    edition: 'current',
    evidence: 'memory',
  },
} as const satisfies Record<string, OxygenThreshold>

/** The id of a published threshold. */
export type OxygenThresholdId = keyof typeof oxygenThresholds

/** Conditions remembered for oxygen in aluminium cylinders; none was seen printed. */
export const aluminiumOxygenConditions = {
  threads: 'straight threads only',
  valve: 'brass or stainless steel',
  cleaning: 'cleaned to a stated standard',
  /** psi, gauge, at 70 °F */
  pressureAtMost: 3000,
  source: 'memory',
  place: '49 CFR 173.302(b)',
} as const satisfies { readonly source: SourceId; readonly [name: string]: string | number }
