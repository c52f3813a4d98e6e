import { expect, test } from 'vitest'
import { dryAir } from '../../../src/gas-law/index.ts'
import {
  assessTestPlan,
  type BreathingTestPoint,
  breathingAnalysis,
  comparedWork,
  type TestConditions,
  type TestPlanOptions,
} from '../../../src/regulator-performance/index.ts'
import { normalQuantile, seededRandom } from '../../../src/uncertainty/index.ts'
import {
  absolute,
  bar,
  celsius,
  difference,
  gauge,
  joulePerLitre,
  litre,
  measure,
  millisecond,
  perMinute,
  temperatureOf,
} from '../../../src/units/index.ts'
import { calm, syntheticLog } from '../synthetic-log.ts'

const at = (supply: number): TestConditions => ({
  ambientPressure: absolute(6, bar),
  gas: dryAir,
  waveform: 'sinusoid',
  tidalVolume: measure(2.5, litre),
  breathingFrequency: measure(25, perMinute),
  supplyPressure: gauge(supply, bar),
  ratedWorkingPressure: gauge(232, bar),
  waterTemperature: temperatureOf(10, celsius),
})
const point = (name: string, supply: number, works: readonly number[]): BreathingTestPoint => ({
  name,
  conditions: at(supply),
  runs: works.map((work) => ({ measured: { workOfBreathingPerLitre: difference(work, joulePerLitre) } })),
})
const plan: TestPlanOptions = {
  limitId: 'european-work',
  points: ['rated', '50 bar'],
  runs: 1,
  statistics: 'every run',
}
const codes = (tested: readonly BreathingTestPoint[], options: TestPlanOptions) => {
  const { verdict, because } = assessTestPlan(tested, options)
  return [verdict, ...because.map(({ code }) => code)]
}

test('a plan is within only where every point was run and is', () => {
  const both = [point('rated', 232, [1.6]), point('50 bar', 50, [1.9])]
  expect(assessTestPlan(both, plan)).toMatchObject({ verdict: 'within', margin: expect.closeTo(1100, 6), limit: 3000 })
  expect(codes(both.slice(0, 1), plan)).toEqual(['undetermined', 'point-not-run'])
  expect(codes(both, { ...plan, runs: 2 })[0]).toBe('undetermined')
  const bad = [both[0] as BreathingTestPoint, point('50 bar', 50, [1.9, 3.1])]
  expect(codes(bad, plan)).toEqual(['beyond', 'compared-absolute'])
  expect(assessTestPlan(bad, plan).points).toEqual([
    { name: 'rated', verdict: 'within' },
    { name: '50 bar', verdict: 'beyond' },
  ])
  // another supply is no point of the plan, whatever it is called
  expect(codes([both[0] as BreathingTestPoint, point('50 bar', 100, [1.9])], plan)).toEqual([
    'undetermined',
    'condition-differs',
  ])
  // an exceeded point stands, even where another was never run
  expect(codes([point('rated', 232, [3.2])], plan)[0]).toBe('beyond')
})

// Five runs of standard deviation 0.01 J/L: t(0.95, 4) is 2.132, so that the mean has to keep 0.0095 J/L away.
test.each([
  [2.98, 'within'],
  [2.995, 'undetermined'],
  [3.005, 'undetermined'],
  [3.02, 'beyond'],
])('the mean of five runs at %f J/L is %s by the one-sided t test', (mean, verdict) => {
  const step = 0.01 / Math.sqrt(2.5)
  const works = [-2, -1, 0, 1, 2].map((k) => mean + k * step)
  const options = { ...plan, runs: 5, statistics: 'mean, one-sided t' } as const
  expect(assessTestPlan([point('rated', 232, works), point('50 bar', 50, works)], options).verdict).toBe(verdict)
})

test('one run has no scatter, and what is misspelt is refused', () => {
  const options = { ...plan, statistics: 'mean, one-sided t' } as const
  expect(codes([point('rated', 232, [1]), point('50 bar', 50, [1])], options)).toEqual([
    'undetermined',
    'no-scatter',
    'no-scatter',
  ])
  const refuses = (tested: readonly BreathingTestPoint[], more: object, argument: string) =>
    expect(() => assessTestPlan(tested, { ...plan, ...more })).toThrow(
      expect.objectContaining({ name: 'LitrebarError', argument }),
    )
  refuses([], { limitId: 'european' }, 'options.limitId')
  refuses([], { statistics: 'mean' }, 'options.statistics')
  refuses([], { runs: 0 }, 'options.runs')
  refuses([], { points: [] }, 'options.points')
  refuses([], {}, 'tested')
  // the runs of a second list would be lost
  const rated = point('rated', 232, [1])
  refuses([rated, point('rated', 232, [9])], {}, 'tested[1].name')
  refuses([rated], { points: ['rated', 'rated'] }, 'options.points[1]')
  refuses([point('50bar', 50, [1])], {}, 'tested[0].name')
  refuses([{ ...point('rated', 50, []), runs: [{ measure: {} }] as never }], {}, 'tested[0].runs[0].measure')
})

const workOf = (inhalation: number, seed: number) => {
  const uniform = seededRandom(seed)
  const setting = { ...calm, breaths: 12, inhalation: [inhalation, 2e4, 3e7] as const, pressureNoise: 30 }
  return breathingAnalysis(
    syntheticLog(setting, uniform, () => normalQuantile(uniform())),
    {
      zero: 'as recorded',
      pressureGainUncertainty: 0.01,
      lag: { delay: measure(0, millisecond) },
    },
  ).workOfBreathingPerLitre
}

test('before and after service: a change beyond its uncertainty is shown, the common gain drops out', () => {
  const before = workOf(400, 1)
  const after = workOf(380, 2)
  const same = comparedWork(before, after, { sameChannel: true })
  expect(same.change).toBeCloseTo(-20, -1)
  expect(same.meaning).toBe('less work')
  expect(comparedWork(after, before, { sameChannel: true }).meaning).toBe('more work')
  const other = comparedWork(before, after, { sameChannel: false })
  // a gain of 1 % in each of 1.37 J/L
  expect(other.standardUncertainty).toBeGreaterThan(19)
  expect(other.meaning).toBe('no change shown')
  expect(comparedWork(before, workOf(400, 3), { sameChannel: true }).meaning).toBe('no change shown')
  expect(() => comparedWork(before, after, {} as never)).toThrow(expect.objectContaining({ code: 'input' }))
  expect(() => comparedWork(undefined as never, after, { sameChannel: true })).toThrow(
    expect.objectContaining({ name: 'LitrebarError', argument: 'before' }),
  )
})
