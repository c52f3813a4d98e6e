import type { SourceId } from '../../references/index.ts'
import { litrePerMinute, type Unit } from '../../units/index.ts'

/** Oxygen uptake and ventilation of one kind of work, as printed. */
export interface WorkLevel {
  readonly activity: string
  /** At STPD unless `condition` says otherwise. */
  readonly oxygenUptake?: {
    readonly value: number | readonly [from: number, to: number]
    readonly unit: Unit<'volume flow'>
  }
  /** At the pressure of the diver. */
  readonly ventilation?: {
    readonly value: number | readonly [from: number, to: number]
    readonly unit: Unit<'volume flow'>
  }
  /** Of single subjects about the value, in the same unit, and how many subjects. */
  readonly standardDeviation?: number
  readonly subjects?: number
  readonly condition: string
  readonly source: SourceId
  readonly place: string
  /** `primary`: the text was read. `memory`: recalled; check it before use. */
  readonly evidence: 'primary' | 'secondary' | 'memory'
}

const flow = litrePerMinute

/**
 * Published work levels. Divers measure their own rates: these tell what to expect of a kind of work.
 */
export const workLevels: readonly WorkLevel[] = [
  ...[
    { activity: 'rest in bed', uptake: 0.25, ventilation: 6 },
    { activity: 'sitting', uptake: 0.3, ventilation: 7 },
    { activity: 'standing', uptake: 0.4, ventilation: 9 },
    { activity: 'slow walk on a hard bottom', uptake: 0.6, ventilation: 13 },
    { activity: 'walk at 2 miles per hour', uptake: 0.7, ventilation: 16 },
    { activity: 'swim at 0.5 knot', uptake: 0.8, ventilation: 18 },
    { activity: 'slow walk in mud', uptake: 1.1, ventilation: 23 },
    { activity: 'walk at 4 miles per hour', uptake: 1.2, ventilation: 27 },
    { activity: 'swim at 0.85 knot', uptake: 1.4, ventilation: 30 },
    { activity: 'fastest walk on a hard bottom', uptake: 1.5, ventilation: 34 },
    { activity: 'swim at 1.0 knot', uptake: 1.8, ventilation: 40 },
    { activity: 'fastest walk in mud', uptake: 1.8, ventilation: 40 },
    { activity: 'run at 8 miles per hour', uptake: 2, ventilation: 50 },
    { activity: 'swim at 1.2 knots', uptake: 2.5, ventilation: 60 },
    { activity: 'run uphill', uptake: 4, ventilation: 95 },
  ].map(
    ({ activity, uptake, ventilation }): WorkLevel => ({
      activity,
      oxygenUptake: { value: uptake, unit: flow },
      ventilation: { value: ventilation, unit: flow },
      condition: 'table of the handbook',
      source: 'us-navy-diving-manual',
      place: 'figure of oxygen consumption and minute volume',
      evidence: 'memory',
    }),
  ),
  {
    activity: 'swim at one’s own pace',
    oxygenUptake: { value: 1.5, unit: flow },
    standardDeviation: 0.2,
    subjects: 8,
    condition: 'closed-circuit oxygen, operational swimmers',
    source: 'nedu-1-89',
    place: 'abstract',
    evidence: 'primary',
  },
  {
    activity: 'rest in the water',
    oxygenUptake: { value: 0.64, unit: flow },
    standardDeviation: 0.09,
    subjects: 12,
    condition: 'closed-circuit oxygen',
    source: 'nedu-1-89',
    place: 'abstract',
    evidence: 'primary',
  },
  {
    activity: 'hard leg work, immersed, 1 atmosphere',
    ventilation: { value: 76.3, unit: flow },
    standardDeviation: 20.5,
    subjects: 25,
    condition: 'prone exercise, air at 1 atmosphere',
    source: 'cherry-2009',
    place: 'abstract',
    evidence: 'primary',
  },
  {
    activity: 'the same work, 4.7 atmospheres',
    ventilation: { value: 61.6, unit: flow },
    standardDeviation: 13.9,
    subjects: 25,
    condition: 'prone exercise, air at 4.7 atmospheres; carbon dioxide in the blood rises',
    source: 'cherry-2009',
    place: 'abstract',
    evidence: 'primary',
  },
  {
    activity: 'the same work, 4.7 atmospheres, breathing resistance',
    ventilation: { value: 49.2, unit: flow },
    standardDeviation: 7.3,
    subjects: 25,
    condition: 'prone exercise, air at 4.7 atmospheres, resistance; carbon dioxide in the blood rises further',
    source: 'cherry-2009',
    place: 'abstract',
    evidence: 'primary',
  },
]

/** A ratio that turns one measure of work into another. */
export interface RespiratoryRatio {
  readonly value: number
  readonly usual: readonly [from: number, to: number]
  readonly meaning: string
  readonly source: SourceId
  readonly place: string
}

/** Ratios for `ventilationFor` and `carbonDioxideOutput`, for a caller who has not measured them. */
export const respiratoryRatios = {
  ventilatoryEquivalent: {
    value: 24,
    usual: [20, 30],
    meaning: 'litres of ventilation (BTPS) for a litre of oxygen taken up (STPD)',
    source: 'memory',
    place: 'respiratory physiology',
  },
  respiratoryQuotient: {
    value: 0.9,
    usual: [0.7, 1],
    meaning: 'litres of carbon dioxide given off for a litre of oxygen taken up',
    source: 'memory',
    place: 'respiratory physiology',
  },
  carbonDioxideToVentilation: {
    value: 0.04,
    usual: [0.04, 0.04],
    meaning: 'flow of carbon dioxide over ventilation in tests of absorbent: 25 litres for a litre',
    source: 'nedu-tr-07-02',
    place: 'abstract',
  },
} as const satisfies Readonly<Record<string, RespiratoryRatio>>

/** A published finding on breathing and work, in our words. */
export interface VentilationFact {
  readonly fact: string
  readonly source: SourceId
  readonly place: string
}

/** What limits the use of the table: ventilation does not follow work alone. */
export const ventilationFacts: readonly VentilationFact[] = [
  {
    fact: 'Oxygen uptake at a given work does not depend on pressure at 4 and 6 atmospheres; ventilation falls only above 80 % of the greatest uptake.',
    source: 'anthonisen-1976',
    place: 'abstract',
  },
  {
    fact: 'From 0.5 to 1.2 knots a swimmer needs about three times the oxygen; 0.8 to 0.9 knot is usual, and efficiency falls above it.',
    source: 'dwyer-lanphier',
    place: 'catalogue abstract',
  },
  {
    fact: 'At the same work ventilation falls, and carbon dioxide in the blood rises, with depth and with breathing resistance.',
    source: 'cherry-2009',
    place: 'abstract',
  },
]
