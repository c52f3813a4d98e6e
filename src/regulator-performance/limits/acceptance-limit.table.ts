import type { SourceId } from '../../references/index.ts'
import {
  bar,
  celsius,
  footOfSeaWaterThirtyThreePointZeroEight,
  joulePerLitre,
  kilogramForceMetrePerLitre,
  kilopascal,
  kilopascalPerLitre,
  litre,
  litrePerMinute,
  metreOfSeaWaterTenKilopascal,
  millibar,
  perMinute,
  psi,
  type Unit,
} from '../../units/index.ts'

/** What a limit can speak about. */
export type LimitedQuantity =
  | 'workOfBreathingPerLitre'
  | 'inhalationPressure'
  | 'exhalationPressure'
  | 'assistPressureOnInhalation'
  | 'assistWorkOnInhalation'
  | 'elastance'
  | 'hydrostaticImbalance'

/** A number as its source prints it, so that a reader can hold the page beside it. Converted where it is used. */
export interface PrintedLimit {
  /** With its trailing zeros: a comparison by rounding rounds to the same decimals. */
  readonly printed: string
  readonly unit: Unit
}

/** A limit that falls or rises with depth: `intercept + slope × depth`. */
export interface PrintedLine {
  readonly intercept: PrintedLimit
  /** In the unit of the intercept, per unit of depth. */
  readonly slope: number
  readonly depthUnit: Unit<'pressure'>
  /** Deepest depth, in that unit, to which the line is drawn here: continued, it would ask for less than nothing. */
  readonly deepest: number
}

/** What must be known of a test before a limit speaks about it. */
export type ConditionName =
  | 'ambient pressure'
  | 'depth'
  | 'gas'
  | 'waveform'
  | 'tidal volume'
  | 'breathing frequency'
  | 'respiratory minute volume'
  | 'water temperature'
  | 'supply pressure'
  | 'attitude'

/** One condition of a limit: settings with what they may be off by, a word, or a deepest depth. */
export interface LimitCondition {
  readonly of: ConditionName
  readonly unit?: Unit
  readonly settings?: readonly { readonly at: number; readonly give: number }[]
  readonly word?: 'vertical' | 'horizontal' | 'sinusoid' | 'air'
  /** Largest value, in the unit. */
  readonly upTo?: number
  /** Where a test at the rated working pressure counts too. */
  readonly orRatedWorkingPressure?: true
  /** The test is made at every setting, and at the rated working pressure where that counts: one of them is not the whole. */
  readonly allOf?: true
  /** What the figures rest on, where it is not the source of the row. */
  readonly source?: SourceId
}

/** One limit that a breathing simulation is judged by. */
export interface AcceptanceLimit {
  readonly id: string
  readonly quantity: LimitedQuantity
  readonly atLeast?: PrintedLimit
  readonly atMost?: PrintedLimit | PrintedLine
  readonly conditions: readonly LimitCondition[]
  readonly source: SourceId
  readonly place: string
  /** `secondary`: someone reporting the rule was read, not the rule. */
  readonly evidence: 'primary' | 'secondary' | 'memory'
  /** The row that this one repeats in another unit: the two are one limit, not two. */
  readonly alternativeOf?: string
  readonly note?: string
}

const compressedAir: LimitCondition = { of: 'gas', word: 'air', source: 'common-practice' }

// The European test point. Rate and stroke may each be off by 3 % as printed, so the ventilation by 6 %; what pressures and
// temperatures may be off by is ours, the printed figures not being legible in what was seen.
const europeanTest: readonly LimitCondition[] = [
  { of: 'ambient pressure', unit: bar, settings: [{ at: 6, give: 0.1 }] },
  { of: 'gas', word: 'air' },
  { of: 'waveform', word: 'sinusoid' },
  { of: 'tidal volume', unit: litre, settings: [{ at: 2.5, give: 0.075 }] },
  { of: 'breathing frequency', unit: perMinute, settings: [{ at: 25, give: 0.75 }] },
  { of: 'respiratory minute volume', unit: litrePerMinute, settings: [{ at: 62.5, give: 3.75 }] },
  {
    of: 'supply pressure',
    unit: bar,
    settings: [{ at: 50, give: 2.5 }],
    orRatedWorkingPressure: true,
    allOf: true,
  },
  {
    of: 'water temperature',
    unit: celsius,
    settings: [
      { at: 10, give: 2 },
      { at: 3, give: 1 }, // the cold-water test keeps the same limits
    ],
  },
]

// The abstract prints depth and goal, and the settings of the series: supply pressures and water, with ours for what they may be
// off by. Which ventilation the goal belongs to, and how it is breathed, is remembered.
const navalTest: readonly LimitCondition[] = [
  { of: 'depth', unit: metreOfSeaWaterTenKilopascal, settings: [{ at: 60, give: 1 }] },
  compressedAir,
  { of: 'waveform', word: 'sinusoid', source: 'memory' },
  { of: 'respiratory minute volume', unit: litrePerMinute, settings: [{ at: 62.5, give: 3.75 }], source: 'memory' },
  {
    of: 'supply pressure',
    unit: psi,
    settings: [
      { at: 1500, give: 75 },
      { at: 500, give: 25 },
    ],
    allOf: true,
    source: 'nedu-ada272974',
  },
  { of: 'water temperature', unit: celsius, settings: [{ at: 21, give: 2 }], source: 'nedu-ada272974' },
]

// The abstract prints no range of depth. The deepest of the naval test series is taken: from there on the line is a continuation.
const deepestMetres = 60
const deepestFeet = 198

const effortByMetres: readonly LimitCondition[] = [
  { of: 'depth', unit: metreOfSeaWaterTenKilopascal, upTo: deepestMetres, source: 'nedu-ada272974' },
  compressedAir,
]

const effortByFeet: readonly LimitCondition[] = [
  { of: 'depth', unit: footOfSeaWaterThirtyThreePointZeroEight, upTo: deepestFeet, source: 'nedu-ada272974' },
  compressedAir,
]

const europeanPlace = 'summary by others; test point in clause 6.7.1'

/** Limits in force or proposed, as printed. To add one, add a row; the tests walk the table. Limits of gas density: `gasDensityLimits`. */
export const acceptanceLimits: readonly AcceptanceLimit[] = [
  {
    id: 'european-work',
    quantity: 'workOfBreathingPerLitre',
    atMost: { printed: '3.0', unit: joulePerLitre },
    conditions: europeanTest,
    source: 'en-250-2014',
    place: europeanPlace,
    evidence: 'secondary',
  },
  {
    id: 'european-inhalation',
    quantity: 'inhalationPressure',
    atLeast: { printed: '-25', unit: millibar },
    conditions: europeanTest,
    source: 'en-250-2014',
    place: europeanPlace,
    evidence: 'secondary',
  },
  {
    id: 'european-exhalation',
    quantity: 'exhalationPressure',
    atMost: { printed: '25', unit: millibar },
    conditions: europeanTest,
    source: 'en-250-2014',
    place: europeanPlace,
    evidence: 'secondary',
  },
  {
    id: 'european-assist-pressure',
    quantity: 'assistPressureOnInhalation',
    atMost: { printed: '5', unit: millibar },
    conditions: europeanTest,
    source: 'en-250-2014',
    place: europeanPlace,
    evidence: 'secondary',
    note: 'positive pressure during inhalation',
  },
  {
    id: 'european-assist-work',
    quantity: 'assistWorkOnInhalation',
    atMost: { printed: '0.3', unit: joulePerLitre },
    conditions: europeanTest,
    source: 'en-250-2014',
    place: 'clause on respiratory pressure',
    evidence: 'memory',
    note: 'recalled, not seen: check before use',
  },
  {
    id: 'naval-goal',
    quantity: 'workOfBreathingPerLitre',
    atMost: { printed: '1.37', unit: joulePerLitre },
    conditions: navalTest,
    source: 'nedu-ada272974',
    place: 'abstract',
    evidence: 'primary',
    note: 'mean of five runs, compared by a one-sided t test at 0.05; 60 msw also printed as 198 fsw',
  },
  {
    id: 'naval-goal-old-unit',
    quantity: 'workOfBreathingPerLitre',
    atMost: { printed: '0.14', unit: kilogramForceMetrePerLitre },
    conditions: navalTest,
    source: 'mil-01-94',
    place: 'performance goal',
    evidence: 'memory',
    alternativeOf: 'naval-goal',
    note: 'the same goal before it was rounded to 1.37 J/L: 1.3729 J/L',
  },
  {
    id: 'diver-focused-metres',
    quantity: 'workOfBreathingPerLitre',
    atMost: {
      intercept: { printed: '2.49', unit: kilopascal },
      slope: -0.016,
      depthUnit: metreOfSeaWaterTenKilopascal,
      deepest: deepestMetres,
    },
    conditions: effortByMetres,
    source: 'nedu-tr-07-02',
    place: 'abstract',
    evidence: 'primary',
    note: 'resistive effort W/VT, proposed',
  },
  {
    id: 'diver-focused-feet',
    quantity: 'workOfBreathingPerLitre',
    atMost: {
      intercept: { printed: '2.49', unit: kilopascal },
      slope: -0.00485,
      depthUnit: footOfSeaWaterThirtyThreePointZeroEight,
      deepest: deepestFeet,
    },
    conditions: effortByFeet,
    source: 'nedu-tr-07-02',
    place: 'abstract',
    evidence: 'primary',
    alternativeOf: 'diver-focused-metres',
    note: 'the same line in feet; which foot of sea water is not printed',
  },
  {
    id: 'diver-focused-elastance',
    quantity: 'elastance',
    atMost: { printed: '0.7', unit: kilopascalPerLitre },
    conditions: [],
    source: 'nedu-tr-07-02',
    place: 'abstract',
    evidence: 'primary',
    note: 'independent of depth and ventilation',
  },
  {
    id: 'hydrostatic-vertical',
    quantity: 'hydrostaticImbalance',
    atLeast: { printed: '0.4', unit: kilopascal },
    atMost: { printed: '2.9', unit: kilopascal },
    conditions: [{ of: 'attitude', word: 'vertical' }],
    source: 'nedu-tr-07-02',
    place: 'abstract',
    evidence: 'primary',
    note: 'relative to the suprasternal notch',
  },
  {
    id: 'hydrostatic-horizontal',
    quantity: 'hydrostaticImbalance',
    atLeast: { printed: '-0.3', unit: kilopascal },
    atMost: { printed: '1.7', unit: kilopascal },
    conditions: [{ of: 'attitude', word: 'horizontal' }],
    source: 'nedu-tr-07-02',
    place: 'abstract',
    evidence: 'primary',
    note: 'relative to the suprasternal notch',
  },
]
