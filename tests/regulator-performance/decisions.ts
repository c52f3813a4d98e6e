import { dryAir, heliox, mixture, trimix } from '../../src/gas-law/index.ts'
import {
  type AcceptanceOptions,
  assessAcceptance,
  assessIntermediatePressure,
  assessTestPlan,
  type BreathingTestPoint,
  type LoopFinding,
  type MeasuredPerformance,
  type ORingInGroove,
  oRingFit,
  type TestConditions,
  type TestPlanOptions,
} from '../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  gauge,
  joulePerLitre,
  kilopascal,
  kilopascalPerLitre,
  litre,
  litrePerMinute,
  measure,
  metreOfSeaWaterTenKilopascal,
  millibar,
  millimetre,
  perMinute,
  psi,
  temperatureOf,
} from '../../src/units/index.ts'
import type { Decision } from '../fixtures/decision.ts'

// What each verdict of the room turns on, both ways: a line on either side of every bound and every condition.

const european = {
  ambientPressure: absolute(6, bar),
  surfacePressure: absolute(1, bar),
  gas: dryAir,
  waveform: 'sinusoid',
  tidalVolume: measure(2.5, litre),
  breathingFrequency: measure(25, perMinute),
  supplyPressure: gauge(50, bar),
  waterTemperature: temperatureOf(10, celsius),
} satisfies TestConditions
const atDepth = (metres: number, change: TestConditions = {}): TestConditions => ({
  ambientPressure: absolute(10 + metres, metreOfSeaWaterTenKilopascal),
  surfacePressure: absolute(10, metreOfSeaWaterTenKilopascal),
  gas: dryAir,
  ...change,
})
const naval = atDepth(60, {
  waveform: 'sinusoid',
  respiratoryMinuteVolume: measure(62.5, litrePerMinute),
  supplyPressure: gauge(1500, psi),
  waterTemperature: temperatureOf(21, celsius),
})

const { respiratoryMinuteVolume: _, ...withoutVentilation } = naval
const byStroke: TestConditions = { ...withoutVentilation, breathingFrequency: measure(25, perMinute) }

type Change = Omit<Partial<AcceptanceOptions>, 'conditions'>

function judged(limitId: string, measured: MeasuredPerformance, conditions: TestConditions, change: Change = {}) {
  const found = assessAcceptance(measured, { conditions, ...change }).find((one) => one.limitId === limitId)
  if (found === undefined) throw new Error(`no assessment of ${limitId}`)
  return found
}

const workOf = (joules: number): MeasuredPerformance => ({ workOfBreathingPerLitre: difference(joules, joulePerLitre) })
const work = (joules: number, change: TestConditions = {}, options: Change = {}) =>
  judged('european-work', workOf(joules), { ...european, ...change }, options)
const goal = (joules: number, change: TestConditions = {}) =>
  judged('naval-goal', workOf(joules), { ...naval, ...change })
const effort = (joules: number, conditions: TestConditions) =>
  judged('diver-focused-metres', workOf(joules), conditions)
const peak = (limitId: string, name: keyof MeasuredPerformance, millibars: number) =>
  judged(limitId, { [name]: difference(millibars, millibar) }, european)
const load = (kilopascals: number, attitude: 'vertical' | 'horizontal', limitId = `hydrostatic-${attitude}`) =>
  judged(limitId, { hydrostaticImbalance: difference(kilopascals, kilopascal) }, { attitude })
const without = (...names: readonly (keyof TestConditions)[]): TestConditions =>
  Object.fromEntries(Object.entries(european).filter(([name]) => !names.includes(name as keyof TestConditions)))
const unstated = (...names: readonly (keyof TestConditions)[]) => judged('european-work', workOf(2), without(...names))
const finding = (code: string): Change => ({ findings: [{ code, text: code } as LoopFinding] })
const known = (u: number, coverageFactor?: number): Change => ({
  standardUncertainty: { workOfBreathingPerLitre: u * joulePerLitre.factor },
  ...(coverageFactor === undefined ? {} : { guardBand: { coverageFactor } }),
})

const airOf = (oxygen: number) => mixture({ oxygen, nitrogen: 0.99 - oxygen, argon: 0.01 })

const fine = ['compared-absolute', 'one-of-two-supplies']
const differs = ['condition-differs']
const missing = ['condition-not-stated']
const recalled = ['condition-from-memory', 'compared-absolute', 'one-of-two-supplies']

const acceptance: readonly Decision[] = [
  ['a work under the limit, at one of the two supplies', 'within', fine, () => work(2)],
  ['a work on the limit', 'within', fine, () => work(3)],
  ['a work above the limit', 'beyond', fine, () => work(3.0001)],
  ['no work at all', 'undetermined', ['impossible-sign', ...fine], () => work(0)],
  ['a work below nothing', 'undetermined', ['impossible-sign', ...fine], () => work(-1.87)],

  ['ambient pressure 0.1 bar off', 'within', fine, () => work(2, { ambientPressure: absolute(6.1, bar) })],
  ['ambient pressure 0.1 bar off, below', 'within', fine, () => work(2, { ambientPressure: absolute(5.9, bar) })],
  ['ambient pressure too high', 'undetermined', differs, () => work(2, { ambientPressure: absolute(6.11, bar) })],
  ['ambient pressure too low', 'undetermined', differs, () => work(2, { ambientPressure: absolute(5.89, bar) })],
  ['ambient pressure not stated', 'undetermined', missing, () => unstated('ambientPressure')],
  ['helium breathed', 'undetermined', differs, () => work(2, { gas: heliox(0.2) })],
  ['some helium breathed', 'undetermined', differs, () => work(2, { gas: trimix({ oxygen: 0.21, helium: 0.05 }) })],
  ['air that is richer', 'undetermined', differs, () => work(2, { gas: airOf(0.2146) })],
  ['air within half a per cent', 'within', fine, () => work(2, { gas: airOf(0.2144) })],
  ['air with less oxygen', 'undetermined', differs, () => work(2, { gas: airOf(0.2044) })],
  ['air with just enough oxygen', 'within', fine, () => work(2, { gas: airOf(0.2046) })],
  [
    'oxygen of air in too little nitrogen',
    'undetermined',
    differs,
    () => work(2, { gas: mixture({ oxygen: 0.2095, nitrogen: 0.7745, argon: 0.016 }) }),
  ],
  ['gas not stated', 'undetermined', missing, () => unstated('gas')],
  ['another waveform', 'undetermined', differs, () => work(2, { waveform: 'trapezoid' })],
  ['waveform not stated', 'undetermined', missing, () => unstated('waveform')],
  ['a stroke 3 % off', 'within', fine, () => work(2, { tidalVolume: measure(2.575, litre) })],
  ['a stroke 3 % off, below', 'within', fine, () => work(2, { tidalVolume: measure(2.425, litre) })],
  ['a larger stroke', 'undetermined', differs, () => work(2, { tidalVolume: measure(2.58, litre) })],
  ['a smaller stroke', 'undetermined', differs, () => work(2, { tidalVolume: measure(2.42, litre) })],
  ['stroke not stated', 'undetermined', [...missing, ...missing], () => unstated('tidalVolume')],
  ['a rate 3 % off', 'within', fine, () => work(2, { breathingFrequency: measure(25.75, perMinute) })],
  ['a faster rate', 'undetermined', differs, () => work(2, { breathingFrequency: measure(25.8, perMinute) })],
  ['a slower rate', 'undetermined', differs, () => work(2, { breathingFrequency: measure(24.2, perMinute) })],
  ['rate not stated', 'undetermined', [...missing, ...missing], () => unstated('breathingFrequency')],
  [
    'a ventilation stated that fits',
    'within',
    fine,
    () => work(2, { respiratoryMinuteVolume: measure(66.2, litrePerMinute) }),
  ],
  [
    'a ventilation stated that stroke and rate contradict',
    'undetermined',
    ['ventilation-contradicts', ...fine],
    () =>
      work(2, {
        respiratoryMinuteVolume: measure(66.25, litrePerMinute),
        breathingFrequency: measure(24.9, perMinute),
      }),
  ],
  [
    'a ventilation stated that is less than stroke and rate make',
    'undetermined',
    ['ventilation-contradicts', ...fine],
    () =>
      work(2, {
        respiratoryMinuteVolume: measure(59.5, litrePerMinute),
        breathingFrequency: measure(25.5, perMinute),
      }),
  ],
  [
    'another ventilation',
    'undetermined',
    differs,
    () => work(2, { respiratoryMinuteVolume: measure(75, litrePerMinute) }),
  ],
  ['50 bar supply, 2.5 bar off', 'within', fine, () => work(2, { supplyPressure: gauge(52.5, bar) })],
  ['a higher supply', 'undetermined', differs, () => work(2, { supplyPressure: gauge(53, bar) })],
  ['a lower supply', 'undetermined', differs, () => work(2, { supplyPressure: gauge(47, bar) })],
  [
    'the rated supply',
    'within',
    fine,
    () => work(2, { supplyPressure: gauge(232, bar), ratedWorkingPressure: gauge(232, bar) }),
  ],
  [
    'the rated supply, 5 % off',
    'within',
    fine,
    () => work(2, { supplyPressure: gauge(220.4, bar), ratedWorkingPressure: gauge(232, bar) }),
  ],
  [
    'a supply further below the rated',
    'undetermined',
    differs,
    () => work(2, { supplyPressure: gauge(220, bar), ratedWorkingPressure: gauge(232, bar) }),
  ],
  [
    'the rated supply, 5 % above',
    'within',
    fine,
    () => work(2, { supplyPressure: gauge(243.6, bar), ratedWorkingPressure: gauge(232, bar) }),
  ],
  [
    'a supply further above the rated',
    'undetermined',
    differs,
    () => work(2, { supplyPressure: gauge(244, bar), ratedWorkingPressure: gauge(232, bar) }),
  ],
  ['a full supply, rating not stated', 'undetermined', differs, () => work(2, { supplyPressure: gauge(232, bar) })],
  ['supply not stated', 'undetermined', missing, () => unstated('supplyPressure')],
  ['water at 12 °C', 'within', fine, () => work(2, { waterTemperature: temperatureOf(12, celsius) })],
  ['water of the cold test', 'within', fine, () => work(2, { waterTemperature: temperatureOf(2, celsius) })],
  ['water between', 'undetermined', differs, () => work(2, { waterTemperature: temperatureOf(6, celsius) })],
  ['water at 35 °C', 'undetermined', differs, () => work(2, { waterTemperature: temperatureOf(35, celsius) })],
  ['water not stated', 'undetermined', missing, () => unstated('waterTemperature')],
  ['nothing stated', 'undetermined', Array(8).fill('condition-not-stated'), () => unstated(...conditionsOf(european))],
  [
    'a work above the limit under other conditions',
    'undetermined',
    differs,
    () => work(5, { waterTemperature: temperatureOf(35, celsius) }),
  ],

  ['a finding that changes nothing', 'within', fine, () => work(2, {}, finding('drift-removed'))],
  ['a reversed log', 'undetermined', ['finding-reversed', ...fine], () => work(2, {}, finding('reversed'))],
  [
    'a clipped channel',
    'undetermined',
    ['finding-clipped-pressure', ...fine],
    () => work(2, {}, finding('clipped-pressure')),
  ],
  ...(
    ['level-changes', 'zero-steps', 'resampled-pressure', 'resampled-volume', 'noisy-pressure', 'noisy-volume'] as const
  ).map(
    (code): Decision => [
      `a log with ${code}`,
      'undetermined',
      [`finding-${code}`, ...fine],
      () => work(2, {}, finding(code)),
    ],
  ),
  ['a work left open, whose interval is stated apart', 'within', fine, () => work(2, {}, finding('uncertain-work'))],
  ['a finding nobody knows', 'undetermined', ['finding-toString', ...fine], () => work(2, {}, finding('toString'))],
  [
    'a reversed log under other conditions',
    'undetermined',
    ['condition-differs', 'finding-reversed'],
    () => work(2, { waveform: 'other' }, finding('reversed')),
  ],
  [
    'a clipped channel above the limit',
    'beyond',
    ['compared-absolute', 'finding-clipped-pressure', 'one-of-two-supplies'],
    () => work(4, {}, finding('clipped-pressure')),
  ],

  ['a work further off than two uncertainties', 'within', fine, () => work(2.89, {}, known(0.05))],
  [
    'a work nearer than two uncertainties',
    'within',
    ['compared-absolute', 'within-uncertainty', 'one-of-two-supplies'],
    () => work(2.91, {}, known(0.05)),
  ],
  [
    'a work above by less than two uncertainties',
    'beyond',
    ['compared-absolute', 'within-uncertainty', 'one-of-two-supplies'],
    () => work(3.09, {}, known(0.05)),
  ],
  ['a guard band kept', 'within', fine, () => work(2.89, {}, known(0.05, 2))],
  ['a narrower guard band kept', 'within', fine, () => work(2.91, {}, known(0.05, 1.645))],
  ['inside the guard band', 'undetermined', ['inside-guard-band', ...fine], () => work(2.91, {}, known(0.05, 2))],
  [
    'inside the guard band, above',
    'undetermined',
    ['inside-guard-band', ...fine],
    () => work(3.09, {}, known(0.05, 2)),
  ],
  ['above the guard band', 'beyond', fine, () => work(3.11, {}, known(0.05, 2))],
  [
    'a guard band without uncertainty',
    'undetermined',
    ['uncertainty-not-stated', ...fine],
    () => work(1, {}, { guardBand: { coverageFactor: 2 } }),
  ],
  ['3.04 J/L as it is', 'beyond', fine, () => work(3.04)],
  [
    '3.04 J/L rounded as the limit is printed',
    'within',
    ['compared-rounded', 'one-of-two-supplies'],
    () => work(3.04, {}, { comparison: 'rounded' }),
  ],
  [
    '3.06 J/L rounded as the limit is printed',
    'beyond',
    ['compared-rounded', 'one-of-two-supplies'],
    () => work(3.06, {}, { comparison: 'rounded' }),
  ],

  ['no suction at all', 'within', fine, () => peak('european-inhalation', 'inhalationPressure', 0)],
  ['no pressure on exhalation', 'within', fine, () => peak('european-exhalation', 'exhalationPressure', 0)],
  ['no assist', 'within', fine, () => peak('european-assist-pressure', 'assistPressureOnInhalation', 0)],
  ['suction on its limit', 'within', fine, () => peak('european-inhalation', 'inhalationPressure', -25)],
  ['suction beyond it', 'beyond', fine, () => peak('european-inhalation', 'inhalationPressure', -25.1)],
  [
    'suction without its sign',
    'undetermined',
    ['impossible-sign', ...fine],
    () => peak('european-inhalation', 'inhalationPressure', 26),
  ],
  ['exhalation on its limit', 'within', fine, () => peak('european-exhalation', 'exhalationPressure', 25)],
  ['exhalation beyond it', 'beyond', fine, () => peak('european-exhalation', 'exhalationPressure', 25.1)],
  [
    'exhalation with the sign of suction',
    'undetermined',
    ['impossible-sign', ...fine],
    () => peak('european-exhalation', 'exhalationPressure', -1),
  ],
  ['assist on its limit', 'within', fine, () => peak('european-assist-pressure', 'assistPressureOnInhalation', 5)],
  ['assist beyond it', 'beyond', fine, () => peak('european-assist-pressure', 'assistPressureOnInhalation', 5.1)],
  [
    'assist below zero',
    'undetermined',
    ['impossible-sign', ...fine],
    () => peak('european-assist-pressure', 'assistPressureOnInhalation', -1),
  ],
  [
    'assist work under a limit that is only remembered',
    'undetermined',
    ['limit-from-memory', ...fine],
    () => judged('european-assist-work', { assistWorkOnInhalation: difference(0.2, joulePerLitre) }, european),
  ],
  [
    'assist work above it',
    'beyond',
    ['compared-absolute', 'limit-from-memory', 'one-of-two-supplies'],
    () => judged('european-assist-work', { assistWorkOnInhalation: difference(0.31, joulePerLitre) }, european),
  ],
  [
    'assist work below nothing',
    'undetermined',
    ['limit-from-memory', 'impossible-sign', ...fine],
    () => judged('european-assist-work', { assistWorkOnInhalation: difference(-0.1, joulePerLitre) }, european),
  ],

  ['the naval goal met, whose ventilation is remembered', 'undetermined', recalled, () => goal(1.37)],
  [
    'the naval goal missed',
    'beyond',
    ['compared-absolute', 'condition-from-memory', 'one-of-two-supplies'],
    () => goal(1.371),
  ],
  ['the naval goal at 500 psi', 'undetermined', recalled, () => goal(1, { supplyPressure: gauge(500, psi) })],
  ['the naval goal at another supply', 'undetermined', differs, () => goal(1, { supplyPressure: gauge(1000, psi) })],
  [
    'the naval goal in warmer water',
    'undetermined',
    differs,
    () => goal(1, { waterTemperature: temperatureOf(24, celsius) }),
  ],
  [
    'the naval goal at the ventilation of stroke and rate',
    'undetermined',
    recalled,
    () => judged('naval-goal', workOf(1), { ...byStroke, tidalVolume: measure(2.5, litre) }),
  ],
  [
    'the naval goal at another ventilation of stroke and rate',
    'undetermined',
    differs,
    () => judged('naval-goal', workOf(1), { ...byStroke, tidalVolume: measure(2, litre) }),
  ],
  ['the naval goal without a stroke', 'undetermined', missing, () => judged('naval-goal', workOf(1), byStroke)],
  ['the naval goal at 62 msw', 'undetermined', differs, () => goal(1, atDepth(62))],
  [
    'the goal in its old unit, met',
    'undetermined',
    ['limit-from-memory', ...recalled],
    () => judged('naval-goal-old-unit', workOf(1.3729), naval),
  ],
  [
    'the goal in its old unit, missed',
    'beyond',
    ['compared-absolute', 'limit-from-memory', 'condition-from-memory', 'one-of-two-supplies'],
    () => judged('naval-goal-old-unit', workOf(1.373), naval),
  ],

  ['on the line at 60 m', 'within', ['compared-absolute'], () => effort(1.53, atDepth(60))],
  ['above the line at 60 m', 'beyond', ['compared-absolute'], () => effort(1.5301, atDepth(60))],
  ['on the line at the surface', 'within', ['compared-absolute'], () => effort(2.49, atDepth(0))],
  ['deeper than the line', 'undetermined', differs, () => effort(1, atDepth(61))],
  ['above the surface', 'undetermined', differs, () => effort(1, atDepth(-1))],
  [
    'surface pressure not stated',
    'undetermined',
    missing,
    () => effort(1, { ambientPressure: absolute(6, bar), gas: dryAir }),
  ],
  [
    'ambient pressure not stated for the line',
    'undetermined',
    missing,
    () => effort(1, { surfacePressure: absolute(1, bar), gas: dryAir }),
  ],
  ['the line with helium', 'undetermined', differs, () => effort(1, atDepth(30, { gas: heliox(0.2) }))],
  ['the line in feet', 'within', ['compared-absolute'], () => judged('diver-focused-feet', workOf(1.5), atDepth(60))],
  [
    'the line in feet, beyond',
    'beyond',
    ['compared-absolute'],
    () => judged('diver-focused-feet', workOf(1.6), atDepth(60)),
  ],
  [
    'elastance on its limit',
    'within',
    ['compared-absolute'],
    () => judged('diver-focused-elastance', { elastance: measure(0.7, kilopascalPerLitre) }, {}),
  ],
  [
    'elastance beyond it',
    'beyond',
    ['compared-absolute'],
    () => judged('diver-focused-elastance', { elastance: measure(0.701, kilopascalPerLitre) }, {}),
  ],
  ['a load upright, on the lower bound', 'within', ['compared-absolute'], () => load(0.4, 'vertical')],
  ['a load upright, below', 'beyond', ['compared-absolute'], () => load(0.39, 'vertical')],
  ['a load upright, on the upper bound', 'within', ['compared-absolute'], () => load(2.9, 'vertical')],
  ['a load upright, above', 'beyond', ['compared-absolute'], () => load(2.91, 'vertical')],
  ['a load prone, on the lower bound', 'within', ['compared-absolute'], () => load(-0.3, 'horizontal')],
  ['a load prone, below', 'beyond', ['compared-absolute'], () => load(-0.31, 'horizontal')],
  ['a load prone, above', 'beyond', ['compared-absolute'], () => load(1.71, 'horizontal')],
  [
    'a load whose attitude is not stated',
    'undetermined',
    missing,
    () => judged('hydrostatic-vertical', { hydrostaticImbalance: difference(1, kilopascal) }, {}),
  ],
  ['a load in the other attitude', 'undetermined', differs, () => load(1, 'vertical', 'hydrostatic-horizontal')],
]

function conditionsOf(conditions: TestConditions): readonly (keyof TestConditions)[] {
  return Object.keys(conditions) as readonly (keyof TestConditions)[]
}

const run = (joules: number, change: Omit<BreathingTestPoint['runs'][number], 'measured'> = {}) => ({
  measured: workOf(joules),
  ...change,
})
const point = (name: string, supply: number, runs: BreathingTestPoint['runs'], change: TestConditions = {}) => ({
  name,
  conditions: { ...european, ratedWorkingPressure: gauge(232, bar), supplyPressure: gauge(supply, bar), ...change },
  runs,
})
const plan: TestPlanOptions = {
  limitId: 'european-work',
  points: ['rated', '50 bar'],
  runs: 1,
  statistics: 'every run',
}
const planned = (
  rated: BreathingTestPoint['runs'],
  low: BreathingTestPoint['runs'],
  change: Partial<TestPlanOptions> = {},
) => assessTestPlan([point('rated', 232, rated), point('50 bar', 50, low)], { ...plan, ...change })
/** Five runs about a mean, with a standard deviation of 0.01 J/L: the mean has to keep 0.00953 J/L away. */
const five = (mean: number) => [-2, -1, 0, 1, 2].map((k) => run(mean + (k * 0.01) / Math.sqrt(2.5)))
const byMean = { runs: 5, statistics: 'mean, one-sided t' } as const
const ofMean = (mean: number, change: Partial<TestPlanOptions> = {}) =>
  planned(five(mean), five(1), { ...byMean, ...change })
const spoilt = { findings: finding('clipped-pressure').findings ?? [] }

const testPlan: readonly Decision[] = [
  ['every point run, every run within', 'within', [], () => planned([run(1.6)], [run(1.9)])],
  ['runs on the limit', 'within', [], () => planned([run(3)], [run(3)])],
  ['one run above', 'beyond', ['compared-absolute'], () => planned([run(1.6)], [run(3.01)])],
  [
    'one of several runs above',
    'beyond',
    ['compared-absolute'],
    () => planned([run(1.6)], [run(1.9), run(3.01), run(2)]),
  ],
  ['a point without a run', 'undetermined', ['point-not-run'], () => planned([run(1.6)], [])],
  [
    'a point left out',
    'undetermined',
    ['point-not-run'],
    () => assessTestPlan([point('rated', 232, [run(1.6)])], plan),
  ],
  ['fewer runs than asked', 'undetermined', ['point-not-run'], () => planned([run(1), run(1)], [run(1)], { runs: 2 })],
  ['more runs than asked', 'within', [], () => planned([run(1), run(1)], [run(1), run(2)])],
  [
    'a run above where another point was never run',
    'beyond',
    ['compared-absolute', 'point-not-run'],
    () => planned([run(3.2)], []),
  ],
  [
    'a run that measured something else',
    'undetermined',
    ['point-not-run'],
    () => planned([run(1)], [{ measured: { exhalationPressure: difference(5, millibar) } }]),
  ],
  [
    'a point at another supply',
    'undetermined',
    differs,
    () => assessTestPlan([point('rated', 232, [run(1)]), point('50 bar', 100, [run(1)])], plan),
  ],
  ['a run with a finding', 'undetermined', ['finding-clipped-pressure'], () => planned([run(1)], [run(1, spoilt)])],
  [
    'a run above with a finding',
    'beyond',
    ['compared-absolute', 'finding-clipped-pressure'],
    () => planned([run(1)], [run(3.2, spoilt)]),
  ],
  [
    'a run with a finding that changes nothing',
    'within',
    [],
    () => planned([run(1)], [run(1, { findings: finding('drift-removed').findings ?? [] })]),
  ],
  [
    'a run near its limit, told its uncertainty and no guard band',
    'within',
    [],
    () => planned([run(1)], [run(2.95, { standardUncertainty: { workOfBreathingPerLitre: 50 } })]),
  ],
  [
    'a run inside the guard band',
    'undetermined',
    ['inside-guard-band'],
    () =>
      planned(
        [run(1, { standardUncertainty: { workOfBreathingPerLitre: 50 } })],
        [run(2.95, { standardUncertainty: { workOfBreathingPerLitre: 50 } })],
        { guardBand: { coverageFactor: 2 } },
      ),
  ],
  ['a mean further off than the t test asks', 'within', [], () => ofMean(2.9904)],
  ['a mean nearer than that', 'undetermined', ['mean-near-limit'], () => ofMean(2.9906)],
  ['a mean above by less than that', 'undetermined', ['mean-near-limit'], () => ofMean(3.0094)],
  ['a mean above by more', 'beyond', ['mean-beyond'], () => ofMean(3.0096)],
  [
    'one run above, its mean far below',
    'within',
    [],
    () => planned([run(3.05), ...[2.9, 2.9, 2.9, 2.9, 2.9].map((w) => run(w))], five(1), byMean),
  ],
  ['one run for a mean', 'undetermined', ['point-not-run', 'no-scatter'], () => planned(five(1), [run(1)], byMean)],
  [
    'one run for a mean, where one is asked',
    'undetermined',
    ['no-scatter'],
    () => planned(five(1), [run(1)], { ...byMean, runs: 1 }),
  ],
  [
    'four runs where five are asked',
    'undetermined',
    ['point-not-run'],
    () => planned(five(1), five(1).slice(1), byMean),
  ],
  [
    'a spoilt run in a mean',
    'undetermined',
    ['finding-clipped-pressure'],
    () => planned(five(1), [...five(1), run(1, spoilt)], byMean),
  ],
  [
    'a spoilt run above the limit in a mean below it',
    'undetermined',
    ['finding-clipped-pressure'],
    () => planned(five(1), [...five(1), run(3.01, spoilt)], byMean),
  ],
  [
    'runs of a mean under other conditions',
    'undetermined',
    Array(5).fill('condition-differs'),
    () => assessTestPlan([point('rated', 232, five(1)), point('50 bar', 100, five(1))], { ...plan, ...byMean }),
  ],
]

const pressureOf = (bars: number, range?: Parameters<typeof assessIntermediatePressure>[1]) =>
  assessIntermediatePressure(difference(bars, bar), range)
const makers = { lowest: difference(9, bar), highest: difference(9.6, bar) }
const highFinding = Array(2).fill('intermediate-high')
const lowFinding = Array(4).fill('intermediate-low')

const intermediatePressure: readonly Decision[] = [
  ['in the usual range', 'within', [], () => pressureOf(9.5)],
  ['on its lower end', 'within', [], () => pressureOf(6)],
  ['below it', 'beyond', lowFinding, () => pressureOf(5.99)],
  ['148 psi', 'within', [], () => assessIntermediatePressure(difference(148, psi))],
  ['150 psi', 'within', [], () => assessIntermediatePressure(difference(150, psi))],
  ['above 150 psi', 'beyond', highFinding, () => assessIntermediatePressure(difference(150.1, psi))],
  ['no pressure at all', 'beyond', lowFinding, () => pressureOf(0)],
  ['in the range of the maker', 'within', [], () => pressureOf(9.3, makers)],
  ['on the lower end of the maker', 'within', [], () => pressureOf(9, makers)],
  ['on the upper end of the maker', 'within', [], () => pressureOf(9.6, makers)],
  ['usual, and below the range of the maker', 'beyond', lowFinding, () => pressureOf(8.9, makers)],
  ['usual, and above the range of the maker', 'beyond', highFinding, () => pressureOf(9.7, makers)],
  [
    'a range of one pressure, met',
    'within',
    [],
    () => pressureOf(9, { lowest: makers.lowest, highest: makers.lowest }),
  ],
]

const ring = { sectionDiameter: 2, insideDiameter: 10, grooveDiameter: 10, grooveWidth: 2.8, glandDepth: 1.6 }
const fitted = (change: Partial<typeof ring> = {}) =>
  oRingFit(
    Object.fromEntries(
      Object.entries({ ...ring, ...change }).map(([name, size]) => [name, measure(size, millimetre)]),
    ) as unknown as ORingInGroove,
  ).judged

// 2 mm cord, π mm² of section: squeeze by the depth, fill by the width, stretch by the groove.
const oRing: readonly Decision[] = [
  ['a ring of 20 % squeeze, unstretched', 'within', [], () => fitted()],
  ['squeezed by 10 %', 'within', [], () => fitted({ glandDepth: 1.7999 })],
  ['squeezed by less', 'beyond', ['squeeze'], () => fitted({ glandDepth: 1.8001 })],
  ['squeezed by 30 %', 'within', [], () => fitted({ glandDepth: 1.4001 })],
  ['squeezed by more', 'beyond', ['squeeze'], () => fitted({ glandDepth: 1.3999, grooveWidth: 3 })],
  ['not squeezed at all', 'beyond', ['squeeze'], () => fitted({ glandDepth: 2.5 })],
  ['stretched by 5 %', 'within', [], () => fitted({ grooveDiameter: 10.4999 })],
  ['stretched by more', 'beyond', ['stretch'], () => fitted({ grooveDiameter: 10.5001 })],
  ['larger than its groove', 'beyond', ['stretch'], () => fitted({ grooveDiameter: 9.999 })],
  ['a gland filled to 85 %', 'within', [], () => fitted({ grooveWidth: 2.3101 })],
  ['a gland filled further', 'beyond', ['fill'], () => fitted({ grooveWidth: 2.3099 })],
  [
    'a gland that cannot hold the cord',
    'beyond',
    ['squeeze', 'fill'],
    () => fitted({ glandDepth: 1.2, grooveWidth: 2 }),
  ],
  [
    'wrong in every way',
    'beyond',
    ['stretch', 'squeeze', 'fill'],
    () => fitted({ grooveDiameter: 12, glandDepth: 1, grooveWidth: 1 }),
  ],
]

/** Decision tables of the room, by function. */
export const decisions: Readonly<Record<string, readonly Decision[]>> = {
  assessAcceptance: acceptance,
  assessTestPlan: testPlan,
  assessIntermediatePressure: intermediatePressure,
  oRingFit: oRing,
}
