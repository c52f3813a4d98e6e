import { LitrebarError, requireKeys, requireList, requireWord, shown } from '../../errors/index.ts'
import { verdictFrom } from '../../references/assessment.ts'
import type { Assessment, Reason } from '../../references/index.ts'
import { observationsOf, studentQuantile } from '../../uncertainty/index.ts'
import {
  type AcceptanceOptions,
  type HeldAgainst,
  heldAgainst,
  type MeasuredPerformance,
  requireMeasured,
} from './acceptance.ts'
import {
  type AcceptanceLimit,
  acceptanceLimits,
  type PrintedLimit,
  type PrintedLine,
} from './acceptance-limit.table.ts'
import { requireConditions, type TestConditions } from './test-condition.ts'

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
  const marginOf = ({ comparison }: HeldRun): number => comparison?.margin ?? Infinity
  const worst = points.flatMap(({ held }) => held).toSorted((a, b) => marginOf(a) - marginOf(b))[0]
  if (worst === undefined) throw noFigure(limit)
  const { value, comparison } = worst
  return {
    value,
    ...(comparison && { limit: comparison.limit, margin: comparison.margin }),
    ...verdictFrom({
      against: points.flatMap(({ against }) => against),
      doubts: points.flatMap(({ doubts }) => doubts),
    }),
    cautions: ['always', 'regulator'],
    sources: [limit.source],
    points: points.map(({ name, against, doubts }) => ({ name, verdict: verdictFrom({ against, doubts }).verdict })),
  }
}

/** One run held against the limit. */
interface HeldRun extends HeldAgainst {
  readonly value: number
}

interface JudgedPoint {
  readonly name: string
  readonly held: readonly HeldRun[]
  readonly against: readonly Reason[]
  readonly doubts: readonly Reason[]
}

function judgedPoint(
  name: string,
  point: BreathingTestPoint | undefined,
  limit: AcceptanceLimit,
  options: TestPlanOptions,
): JudgedPoint {
  const held = point === undefined ? [] : heldRuns(point, limit, options)
  const missing: Reason = {
    code: 'point-not-run',
    text: `${name}: ${held.length} of ${options.runs} runs`,
    source: limit.source,
  }
  const named = (reasons: readonly Reason[]): readonly Reason[] =>
    reasons.map((reason) => ({ ...reason, text: `${name}: ${reason.text}` }))
  // a run in doubt is no part of a mean either, whichever side of the limit it lies on
  const doubts = [
    ...(held.length < options.runs ? [missing] : []),
    ...held.flatMap(({ evidence }) => named(evidence.doubts)),
  ]
  if (options.statistics === 'every run') {
    return { name, held, against: held.flatMap(({ evidence }) => named(evidence.against)), doubts }
  }
  const byMean = meanAgainst(name, held, limit)
  return { name, held, against: byMean.against, doubts: [...doubts, ...byMean.doubts] }
}

function heldRuns(
  { conditions, runs }: BreathingTestPoint,
  limit: AcceptanceLimit,
  { guardBand }: TestPlanOptions,
): readonly HeldRun[] {
  return runs.flatMap(({ measured, ...known }) => {
    const options = { conditions, ...known, ...(guardBand && { guardBand }) }
    requireMeasured(measured, options)
    const value = measured[limit.quantity]
    return value === undefined ? [] : [{ value, ...heldAgainst(limit, value, options) }]
  })
}

/** The mean of the runs by its distance from the limit, in standard deviations of the mean. */
function meanAgainst(
  name: string,
  held: readonly HeldRun[],
  limit: AcceptanceLimit,
): { readonly against: readonly Reason[]; readonly doubts: readonly Reason[] } {
  const margins = held.flatMap(({ comparison }) => (comparison === undefined ? [] : [comparison.margin]))
  if (margins.length < held.length || margins.length === 0) return { against: [], doubts: [] }
  if (margins.length < 2) {
    const text = `${name}: one run has no scatter for a t test`
    return { against: [], doubts: [{ code: 'no-scatter', text, source: limit.source }] }
  }
  const { unit } = boundOf(limit)
  const inLimitUnit = (margin: number): string => `${figure(Math.abs(margin) / unit.factor)} ${unit.symbol}`
  const mean = margins.reduce((sum, margin) => sum + margin, 0) / margins.length
  const { standardUncertaintyOfMean } = observationsOf(margins)
  const needed = studentQuantile(1 - risk, margins.length - 1) * standardUncertaintyOfMean
  const text = `${name}: the mean lies ${mean >= 0 ? 'inside' : 'beyond'} the limit by ${inLimitUnit(mean)}, where the t test at 5 % asks for ${inLimitUnit(needed)}`
  if (mean < 0 && -mean > needed) return { against: [{ code: 'mean-beyond', text, source: limit.source }], doubts: [] }
  return mean > needed
    ? { against: [], doubts: [] }
    : { against: [], doubts: [{ code: 'mean-near-limit', text, source: limit.source }] }
}

/** A bound of the limit as printed: the margins are told in its unit. */
function boundOf({ atMost, atLeast }: AcceptanceLimit): PrintedLimit {
  const bound = (atMost ?? atLeast) as PrintedLimit | PrintedLine
  return 'printed' in bound ? bound : bound.intercept
}

function requirePlan(tested: readonly BreathingTestPoint[], options: TestPlanOptions): AcceptanceLimit {
  requireKeys('options', options, { limitId: true, points: true, runs: true, statistics: true, guardBand: false })
  requireWord(
    'options.limitId',
    options.limitId,
    acceptanceLimits.map(({ id }) => id),
  )
  requireWord('options.statistics', options.statistics, ['every run', 'mean, one-sided t'])
  requireList('options.points', options.points, 1, 'State what the plan asks for.')
  requireList('tested', tested)
  if (!Number.isInteger(options.runs) || options.runs < 1) {
    throw new LitrebarError({
      code: 'input',
      argument: 'options.runs',
      value: shown(options.runs),
      expected: 'a whole number from 1',
      hint: 'State what the plan asks for.',
    })
  }
  options.points.forEach((name, at) => {
    requireOnce(`options.points[${at}]`, name, options.points.slice(0, at))
  })
  tested.forEach((point, at) => {
    requireKeys(`tested[${at}]`, point, { name: true, conditions: true, runs: true })
    requireWord(`tested[${at}].name`, point.name, options.points)
    requireOnce(
      `tested[${at}].name`,
      point.name,
      tested.slice(0, at).map(({ name }) => name),
    )
    requireConditions(`tested[${at}].conditions`, point.conditions)
    requireList(`tested[${at}].runs`, point.runs)
    point.runs.forEach((run, index) => {
      requireKeys(`tested[${at}].runs[${index}]`, run, { measured: true, standardUncertainty: false, findings: false })
      const findings = run.findings ?? []
      requireList(`tested[${at}].runs[${index}].findings`, findings)
      for (const [k, finding] of findings.entries())
        requireKeys(`tested[${at}].runs[${index}].findings[${k}]`, finding, { code: true, text: true })
    })
  })
  return acceptanceLimits.find(({ id }) => id === options.limitId) as AcceptanceLimit
}

function requireOnce(argument: string, name: string, before: readonly string[]): void {
  if (!before.includes(name)) return
  throw new LitrebarError({
    code: 'input',
    argument,
    value: `${name}, a second time`,
    expected: 'each point once',
    hint: 'List all runs of a point together.',
  })
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
