import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import { verdictFrom } from '../../references/assessment.ts'
import type { Assessment, Reason } from '../../references/index.ts'
import { observationsOf, studentQuantile } from '../../uncertainty/index.ts'
import {
  type AcceptanceAssessment,
  type AcceptanceOptions,
  assessAcceptance,
  type MeasuredPerformance,
} from './acceptance.ts'
import { type AcceptanceLimit, acceptanceLimits } from './acceptance-limit.table.ts'
import type { TestConditions } from './test-condition.ts'

/** Repeated measurements at one point of a plan. */
export interface BreathingTestPoint {
  /** As the report names it: `rated pressure`, `50 bar`, `60 msw`. */
  readonly name: string
  readonly conditions: TestConditions
  /** One for each run. */
  readonly runs: readonly (Pick<AcceptanceOptions, 'standardUncertainty' | 'findings'> & {
    readonly measured: MeasuredPerformance
  })[]
}

/** How a whole plan of tests is judged. */
export interface TestPlanOptions {
  readonly limitId: AcceptanceLimit['id']
  /** Names of all points that the plan asks for: one without a run leaves the verdict open. */
  readonly points: readonly string[]
  /** Runs that each point asks for. */
  readonly runs: number
  /**
   * `every run`: each run is held against the limit. `mean, one-sided t`: the mean of the runs, which has to lie on the right side of the
   * limit by a t test at a risk of 5 %; between, the verdict stays open.
   */
  readonly statistics: 'every run' | 'mean, one-sided t'
  readonly guardBand?: AcceptanceOptions['guardBand']
}

/** One verdict for a whole plan. Its value is that of the worst point. */
export interface TestPlanAssessment extends Assessment {
  readonly points: readonly { readonly name: string; readonly verdict: Assessment['verdict'] }[]
}

const risk = 0.05

/**
 * One verdict for a whole plan of tests: `within` only where every point of the plan was run as often as asked and each is within. A test
 * at one of two supplies, or at one depth of seven, is no plan.
 *
 * @param tested - the points with their runs
 * @param options - limit, points and runs that the plan asks for, statistics
 * @returns the verdict, with the points and the reasons by point; the value is that of the worst run or mean
 * @throws LitrebarError `input` for an unknown limit, key or word, a point of no name in the plan, or no figure at all; as `assessAcceptance`
 * @source nedu-ada272974, abstract (mean of five runs, one-sided t test at 0.05); litrebar-derivation
 * @example
 * const at = (supply: number) => ({
 *   ambientPressure: absolute(6, bar), gas: dryAir, waveform: 'sinusoid', tidalVolume: measure(2.5, litre),
 *   breathingFrequency: measure(25, perMinute), supplyPressure: gauge(supply, bar), ratedWorkingPressure: gauge(232, bar),
 *   waterTemperature: temperatureOf(10, celsius),
 * } as const)
 * const run = (work: number) => ({ measured: { workOfBreathingPerLitre: difference(work, joulePerLitre) } })
 * const plan = { limitId: 'european-work', points: ['rated', '50 bar'], runs: 1, statistics: 'every run' } as const
 * const rated = { name: 'rated', conditions: at(232), runs: [run(1.6)] }
 * assessTestPlan([rated, { name: '50 bar', conditions: at(50), runs: [run(1.9)] }], plan).verdict // => 'within'
 * assessTestPlan([rated], plan).verdict // => 'undetermined'
 */
export function assessTestPlan(tested: readonly BreathingTestPoint[], options: TestPlanOptions): TestPlanAssessment {
  const limit = requirePlan(tested, options)
  const points = options.points.map((name) =>
    judgedPoint(
      name,
      tested.find((point) => point.name === name),
      limit,
      options,
    ),
  )
  const judged = points.flatMap(({ assessments }) => assessments)
  const worst = judged.toSorted((a, b) => (a.margin ?? Infinity) - (b.margin ?? Infinity))[0]
  if (worst === undefined) throw noFigure(limit)
  const { value, limit: bound, margin } = worst
  return {
    value,
    ...(bound !== undefined && { limit: bound }),
    ...(margin !== undefined && { margin }),
    ...verdictFrom({
      against: points.flatMap(({ against }) => against),
      doubts: points.flatMap(({ doubts }) => doubts),
    }),
    cautions: ['always', 'regulator'],
    sources: [limit.source],
    points: points.map(({ name, against, doubts }) => ({ name, verdict: verdictFrom({ against, doubts }).verdict })),
  }
}

interface JudgedPoint {
  readonly name: string
  readonly assessments: readonly AcceptanceAssessment[]
  readonly against: readonly Reason[]
  readonly doubts: readonly Reason[]
}

function judgedPoint(
  name: string,
  point: BreathingTestPoint | undefined,
  limit: AcceptanceLimit,
  { runs: asked, statistics, guardBand }: TestPlanOptions,
): JudgedPoint {
  const assessments = (point?.runs ?? []).flatMap(({ measured, ...known }) =>
    assessAcceptance(measured, {
      conditions: point?.conditions ?? {},
      limits: [limit],
      ...known,
      ...(guardBand && { guardBand }),
    }),
  )
  const missing: Reason = {
    code: 'point-not-run',
    text: `${name}: ${assessments.length} of ${asked} runs`,
    source: limit.source,
  }
  const doubts = assessments.length < asked ? [missing] : []
  const named = (reasons: readonly Reason[]): readonly Reason[] =>
    reasons.map((reason) => ({ ...reason, text: `${name}: ${reason.text}` }))
  const open = assessments.filter(({ verdict }) => verdict === 'undetermined').flatMap(({ because }) => named(because))
  if (statistics === 'every run') {
    const against = assessments
      .filter(({ verdict }) => verdict === 'beyond')
      .flatMap(({ because }) => named(because.slice(0, 1)))
    return { name, assessments, against, doubts: [...doubts, ...open] }
  }
  const byMean = meanAgainst(name, assessments, limit)
  return { name, assessments, against: byMean.against, doubts: [...doubts, ...open, ...byMean.doubts] }
}

/** The mean of the runs by its distance from the limit, in standard deviations of the mean. */
function meanAgainst(
  name: string,
  assessments: readonly AcceptanceAssessment[],
  limit: AcceptanceLimit,
): { readonly against: readonly Reason[]; readonly doubts: readonly Reason[] } {
  const margins = assessments.flatMap(({ margin }) => (margin === undefined ? [] : [margin]))
  if (margins.length < assessments.length || margins.length === 0) return { against: [], doubts: [] }
  if (margins.length < 2) {
    const text = `${name}: one run has no scatter for a t test`
    return { against: [], doubts: [{ code: 'no-scatter', text, source: limit.source }] }
  }
  const mean = margins.reduce((sum, margin) => sum + margin, 0) / margins.length
  const { standardUncertaintyOfMean } = observationsOf(margins)
  const needed = studentQuantile(1 - risk, margins.length - 1) * standardUncertaintyOfMean
  const text = `${name}: the mean lies ${mean >= 0 ? 'inside' : 'beyond'} the limit by ${figure(Math.abs(mean))} Pa, where the t test at 5 % asks for ${figure(needed)} Pa`
  if (mean < 0 && -mean > needed) return { against: [{ code: 'mean-beyond', text, source: limit.source }], doubts: [] }
  return mean > needed
    ? { against: [], doubts: [] }
    : { against: [], doubts: [{ code: 'mean-near-limit', text, source: limit.source }] }
}

function requirePlan(tested: readonly BreathingTestPoint[], options: TestPlanOptions): AcceptanceLimit {
  requireKeys('options', options, { limitId: true, points: true, runs: true, statistics: true, guardBand: false })
  requireWord(
    'options.limitId',
    options.limitId,
    acceptanceLimits.map(({ id }) => id),
  )
  requireWord('options.statistics', options.statistics, ['every run', 'mean, one-sided t'])
  if (!Number.isInteger(options.runs) || options.runs < 1 || options.points.length === 0) {
    throw new LitrebarError({
      code: 'input',
      argument: options.points.length === 0 ? 'options.points' : 'options.runs',
      value: options.points.length === 0 ? 'none' : String(options.runs),
      expected: options.points.length === 0 ? 'at least one point' : 'a whole number from 1',
      hint: 'State what the plan asks for.',
    })
  }
  tested.forEach((point, at) => {
    requireKeys(`tested[${at}]`, point, { name: true, conditions: true, runs: true })
    requireWord(`tested[${at}].name`, point.name, options.points)
    point.runs.forEach((run, index) => {
      requireKeys(`tested[${at}].runs[${index}]`, run, { measured: true, standardUncertainty: false, findings: false })
    })
  })
  return acceptanceLimits.find(({ id }) => id === options.limitId) as AcceptanceLimit
}

function noFigure({ quantity }: AcceptanceLimit): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'tested',
    value: `no ${quantity}`,
    expected: 'at least one run of a point of the plan with it',
    hint: 'Measure what the limit speaks about.',
  })
}

function figure(value: number): string {
  return String(Number(value.toPrecision(3)))
}
