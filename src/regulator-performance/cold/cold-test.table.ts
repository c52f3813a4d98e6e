import type { SourceId } from '../../references/index.ts'
import { bar, celsius, fahrenheit, litrePerMinute, minute, psi } from '../../units/index.ts'
import type { PrintedLimit } from '../limits/acceptance-limit.table.ts'

/** A published test or observation in cold water, as its conditions. It says what was tried, not what will hold. */
export interface ColdTest {
  readonly id: string
  readonly what: string
  /** All that were tried, each as printed. */
  readonly waterTemperature: readonly PrintedLimit[]
  readonly water?: 'fresh' | 'sea'
  readonly ambientPressure?: PrintedLimit
  readonly supplyPressure?: PrintedLimit
  readonly respiratoryMinuteVolume?: PrintedLimit
  readonly duration?: PrintedLimit
  /** What the test asks for. No result of any regulator. */
  readonly criterion?: string
  /** What was seen, on the regulators that were tried. */
  readonly observation?: string
  readonly source: SourceId
  readonly place: string
  readonly evidence: 'primary' | 'secondary' | 'memory'
}

/** Published cold tests and observations. */
export const coldTests: readonly ColdTest[] = [
  {
    id: 'european-cold-water',
    what: 'European test for cold water, which is water below 10 °C',
    waterTemperature: [
      { printed: '2', unit: celsius },
      { printed: '4', unit: celsius },
    ],
    ambientPressure: { printed: '6', unit: bar },
    respiratoryMinuteVolume: { printed: '62.5', unit: litrePerMinute },
    duration: { printed: '5', unit: minute },
    criterion: 'no free flow, and the limits of work and pressure kept',
    source: 'en-250-2014',
    place: 'cold-water test, as summarised by others; the temperature since the edition of 2000',
    evidence: 'secondary',
  },
  {
    id: 'naval-cold-water',
    what: 'naval test in sea water, since 1995',
    waterTemperature: [{ printed: '28', unit: fahrenheit }],
    water: 'sea',
    criterion: 'judged mainly by free flow',
    observation: 'regulators that pass the European test often fail this one',
    source: 'naval-cold-water-notes',
    place: 'page of 2 August 2012',
    evidence: 'secondary',
  },
  {
    id: 'naval-survey-fresh',
    what: 'temperatures inside an instrumented regulator, fresh water',
    waterTemperature: [
      { printed: '42', unit: fahrenheit },
      { printed: '38', unit: fahrenheit },
      { printed: '34', unit: fahrenheit },
    ],
    water: 'fresh',
    respiratoryMinuteVolume: { printed: '62.5', unit: litrePerMinute },
    observation: 'measured behind the first stage, at the inlet of the second and at the outlet of its valve',
    source: 'naval-cold-water-notes',
    place: 'page on the survey',
    evidence: 'secondary',
  },
  {
    id: 'naval-survey-sea',
    what: 'temperatures inside an instrumented regulator, sea water',
    waterTemperature: [{ printed: '29', unit: fahrenheit }],
    water: 'sea',
    respiratoryMinuteVolume: { printed: '62.5', unit: litrePerMinute },
    observation: 'measured behind the first stage, at the inlet of the second and at the outlet of its valve',
    source: 'naval-cold-water-notes',
    place: 'page on the survey',
    evidence: 'secondary',
  },
  {
    id: 'old-icing-rule',
    what: 'one instrumented regulator against an old rule that put the limit of icing at 38 °F',
    waterTemperature: [{ printed: '42', unit: fahrenheit }],
    supplyPressure: { printed: '2500', unit: psi },
    duration: { printed: '40', unit: minute },
    observation: 'second stage below freezing while inhaling, free flow in the end: the rule does not hold',
    source: 'naval-cold-water-notes',
    place: 'page on the old rule',
    evidence: 'secondary',
  },
]
