import type { Endurance, Reserve } from '../../consumption/index.ts'
import type { BlendPlan, Requalification, Stamp } from '../../cylinder/index.ts'
import {
  dewPoint,
  type Mixture,
  relativeHumidity,
  saturatedWaterFraction,
  saturationPressure,
  waterFractionFromHumidity,
} from '../../gas-law/index.ts'
import type { MinimumSupplyPressure } from '../../regulator-performance/index.ts'
import {
  type AbsolutePressure,
  bar,
  celsius,
  type Fraction,
  kilogram,
  litre,
  type MoleFraction,
  millibar,
  minute,
  partPerMillion,
  percent,
  type Temperature,
  type Unit,
} from '../../units/index.ts'
import type { RowInputName } from './row-input.table.ts'

/** One row, as a calculation reads it. What several results rest on is worked out once. */
export interface RowRecord {
  /** A quantity, SI. */
  readonly number: (name: RowInputName) => number
  readonly stamp: () => Stamp
  readonly requalification: () => Requalification
  readonly blend: () => BlendPlan
  readonly endurance: () => Endurance
  readonly reserve: () => Reserve
  readonly supply: () => MinimumSupplyPressure
  /** Ids of the cautions that belong beside what has been worked out for the row so far. */
  readonly cautions: () => readonly string[]
}

/** Something that is computed row by row from the function that the library has for it. */
export interface RecordCalculation {
  /** What a row must state. */
  readonly inputs: readonly RowInputName[]
  /** What else it rests on. */
  readonly needs?: readonly RecordNeed[]
  /** Results that go with this one unasked, because nobody should have one without the other. */
  readonly brings?: readonly RecordCalculationName[]
  /** SI to this unit, unless the plan names another; `text` for words. */
  readonly unit: Unit | 'text'
  /** The value, SI, or the words; NaN or no words where the row has no such thing. */
  readonly of: (record: RowRecord) => number | string
}

/** What a plan states once, or a column of words. */
export type RecordNeed = 'mixture' | 'stamp' | 'ruleSet' | 'asOf'

const state = ({ number }: RowRecord): { readonly pressure: AbsolutePressure; readonly temperature: Temperature } => ({
  pressure: number('pressure') as AbsolutePressure,
  temperature: number('temperature') as Temperature,
})
const waterFraction = ({ number }: RowRecord): MoleFraction => number('waterFraction') as MoleFraction
const ofStamp = (unit: Unit | 'text', of: (stamp: Stamp) => number | string | undefined): RecordCalculation => ({
  inputs: [],
  needs: ['stamp'],
  brings: ['stampFindings'],
  unit,
  of: (record) => of(record.stamp()) ?? (unit === 'text' ? '' : Number.NaN),
})
const ofRequalification = (of: (found: Requalification) => string | undefined): RecordCalculation => ({
  inputs: [],
  needs: ['stamp', 'ruleSet', 'asOf'],
  brings: ['requalificationVerdict', 'stampFindings', 'cautions'],
  unit: 'text',
  of: (record) => of(record.requalification()) ?? '',
})
const afterGas = (isMeant: (mixture: Mixture) => boolean): RecordCalculation => ({
  inputs: ['pressure', 'temperature', 'internalVolume', 'targetPressure', 'targetOxygen', 'targetHelium'],
  needs: ['mixture'],
  brings: ['cautions'],
  unit: bar,
  of: (record) => record.blend().steps.findLast(({ mixture }) => isMeant(mixture))?.pressure ?? Number.NaN,
})

const ofReserve = (of: (reserve: Reserve) => number): RecordCalculation => ({
  inputs: [
    'temperature',
    'internalVolume',
    'residualPressure',
    'respiratoryMinuteVolume',
    'depth',
    'surfacePressure',
    'waterDensity',
    'stressFactor',
    'timeAtDepth',
    'ascentRate',
    'stopDepth',
    'stopDuration',
    'maximumPermissibleError',
  ],
  needs: ['mixture'],
  brings: ['cautions'],
  unit: bar,
  of: (record) => of(record.reserve()),
})

/** Everything that is computed row by row, by the name that a plan uses. A function, so that an import alone costs nothing. */
export const recordCalculations = (): Readonly<Record<RecordCalculationName, RecordCalculation>> => ({
  saturationPressure: {
    inputs: ['temperature'],
    unit: millibar,
    of: ({ number }) => saturationPressure(number('temperature') as Temperature),
  },
  saturatedWaterFraction: {
    inputs: ['pressure', 'temperature'],
    unit: partPerMillion,
    of: (record) => saturatedWaterFraction(state(record)),
  },
  waterFractionFromHumidity: {
    inputs: ['pressure', 'temperature', 'relativeHumidity'],
    unit: partPerMillion,
    of: (record) =>
      waterFractionFromHumidity({
        ...state(record),
        relativeHumidity: record.number('relativeHumidity') as Fraction,
      }),
  },
  relativeHumidity: {
    inputs: ['pressure', 'temperature', 'waterFraction'],
    unit: percent,
    of: (record) => relativeHumidity({ ...state(record), waterFraction: waterFraction(record) }),
  },
  dewPoint: {
    inputs: ['pressure', 'waterFraction'],
    unit: celsius,
    of: (record) =>
      dewPoint({ pressure: record.number('pressure') as AbsolutePressure, waterFraction: waterFraction(record) })
        .temperature,
  },
  endurance: {
    inputs: [
      'pressure',
      'temperature',
      'internalVolume',
      'residualPressure',
      'pressureAtDepth',
      'breathingGasTemperature',
      'respiratoryMinuteVolume',
    ],
    needs: ['mixture'],
    brings: ['cautions'],
    unit: minute,
    of: (record) => record.endurance().duration,
  },
  reservePressure: ofReserve(({ pressure }) => pressure),
  reserveGaugePressure: ofReserve(({ gaugePressure }) => gaugePressure),
  minimumSupplyPressure: {
    inputs: [
      'temperature',
      'breathingGasTemperature',
      'pressureAtDepth',
      'peakFlow',
      'intermediatePressure',
      'regulatingMargin',
      'orificeArea',
      'dischargeCoefficient',
    ],
    needs: ['mixture'],
    brings: ['cautions'],
    unit: bar,
    of: (record) => record.supply().supplyPressure,
  },
  blendAfterHelium: afterGas(({ helium }) => helium === 1),
  blendAfterOxygen: afterGas(({ oxygen }) => oxygen === 1),
  blendAfterAir: afterGas(({ nitrogen }) => nitrogen > 0),
  stampSpecification: ofStamp('text', ({ specification }) => specification),
  stampSerial: ofStamp('text', ({ serial }) => serial),
  stampServicePressure: ofStamp(bar, ({ servicePressure }) => servicePressure),
  stampWorkingPressure: ofStamp(bar, ({ workingPressure }) => workingPressure),
  stampTestPressure: ofStamp(bar, ({ testPressure }) => testPressure),
  stampWaterCapacity: ofStamp(litre, ({ waterCapacity }) => waterCapacity),
  stampEmptyMass: ofStamp(kilogram, ({ emptyMass }) => emptyMass),
  stampFirstTest: ofStamp('text', ({ firstTest }) => firstTest),
  stampLastTest: ofStamp(
    'text',
    ({ retests, firstTest }) =>
      retests
        .map(({ date }) => date)
        .sort()
        .at(-1) ?? firstTest,
  ),
  stampFindings: {
    inputs: [],
    needs: ['stamp'],
    unit: 'text',
    of: (record) =>
      record
        .stamp()
        .findings.map(({ code }) => code)
        .join(' '),
  },
  requalificationDue: ofRequalification(({ due }) => due),
  requalificationVerdict: {
    inputs: [],
    needs: ['stamp', 'ruleSet', 'asOf'],
    brings: ['stampFindings', 'cautions'],
    unit: 'text',
    of: (record) => {
      const { verdict, because } = record.requalification()
      return [verdict, ...because.map(({ code }) => code)].join(' ')
    },
  },
  cautions: { inputs: [], unit: 'text', of: (record) => record.cautions().join(' ') },
})

/** Name of something that is computed row by row. */
export type RecordCalculationName =
  | 'saturationPressure'
  | 'saturatedWaterFraction'
  | 'waterFractionFromHumidity'
  | 'relativeHumidity'
  | 'dewPoint'
  | 'endurance'
  | 'reservePressure'
  | 'reserveGaugePressure'
  | 'minimumSupplyPressure'
  | 'blendAfterHelium'
  | 'blendAfterOxygen'
  | 'blendAfterAir'
  | 'stampSpecification'
  | 'stampSerial'
  | 'stampServicePressure'
  | 'stampWorkingPressure'
  | 'stampTestPressure'
  | 'stampWaterCapacity'
  | 'stampEmptyMass'
  | 'stampFirstTest'
  | 'stampLastTest'
  | 'stampFindings'
  | 'requalificationDue'
  | 'requalificationVerdict'
  | 'cautions'
