import { requireKeys, requireList, requireWord } from '../../errors/index.ts'
import { type Evidence, verdictFrom } from '../../references/assessment.ts'
import type { Assessment, Reason } from '../../references/index.ts'
import {
  type Accepted,
  type Elastance,
  type EnergyPerVolume,
  joulePerLitre,
  kilopascal,
  kilopascalPerLitre,
  one,
  type PressureDifference,
  requireWithin,
} from '../../units/index.ts'
import type { LoopFinding } from '../loop/loop-finding.ts'
import { type AcceptanceLimit, acceptanceLimits, type LimitedQuantity } from './acceptance-limit.table.ts'
import { doubtfulBy } from './doubtful-finding.table.ts'
import { nearestBound } from './limit-bound.ts'
import { requireLimit } from './require-limit.ts'
import { conditionDoubts, conditionNotes, obstacles, requireConditions, type TestConditions } from './test-condition.ts'

/** What was measured, as far as it was. Energies per volume and pressures in Pa, elastance in Pa/m³. */
export interface MeasuredPerformance {
  readonly workOfBreathingPerLitre?: EnergyPerVolume
  /** Peak of the suction on inhalation; negative. */
  readonly inhalationPressure?: PressureDifference
  readonly exhalationPressure?: PressureDifference
  /** Peak above zero during inhalation. */
  readonly assistPressureOnInhalation?: PressureDifference
  /** Work that the apparatus gave during inhalation, per litre. */
  readonly assistWorkOnInhalation?: EnergyPerVolume
  readonly elastance?: Elastance
  /** Mouth pressure at end exhalation without flow, minus the pressure at the suprasternal notch. */
  readonly hydrostaticImbalance?: PressureDifference
}

/** How a value is held against a limit. */
export interface AcceptanceOptions {
  readonly conditions: TestConditions
  /** Standard uncertainties of the measured values, in the same units. */
  readonly standardUncertainty?: { readonly [Name in LimitedQuantity]?: number }
  /** What the analysis noticed: a finding that puts a figure in doubt keeps it from being `within`. */
  readonly findings?: readonly LoopFinding[]
  /**
   * `absolute`, unless told otherwise: the value as it is. `rounded`: the value first rounded to the decimals that the limit
   * is printed with, as some standards prescribe.
   */
  readonly comparison?: 'absolute' | 'rounded'
  /**
   * Guarded decision: a value nearer to its limit than the coverage factor times its standard uncertainty is `undetermined`, on
   * either side. 2 for about 95 % both ways, 1.645 for a risk of 5 % one way. Without it the value itself decides.
   */
  readonly guardBand?: { readonly coverageFactor: number }
  /** The limits to hold it against; all of the table unless given. */
  readonly limits?: readonly AcceptanceLimit[]
}

/** One value held against one limit. */
export interface AcceptanceAssessment extends Assessment {
  readonly limitId: AcceptanceLimit['id']
  /** The limit that this one repeats in another unit: count the two as one. */
  readonly alternativeOf?: AcceptanceLimit['id']
  readonly quantity: LimitedQuantity
}

const measuredKeys: Readonly<Record<LimitedQuantity, boolean>> = {
  workOfBreathingPerLitre: false,
  inhalationPressure: false,
  exhalationPressure: false,
  assistPressureOnInhalation: false,
  assistWorkOnInhalation: false,
  elastance: false,
  hydrostaticImbalance: false,
}

const optionKeys = {
  conditions: true,
  standardUncertainty: false,
  findings: false,
  comparison: false,
  guardBand: false,
  limits: false,
}

const shownIn: Partial<Record<LimitedQuantity, Accepted['unit']>> = {
  workOfBreathingPerLitre: joulePerLitre,
  assistWorkOnInhalation: joulePerLitre,
  elastance: kilopascalPerLitre,
}
const unitOf = (quantity: LimitedQuantity): Accepted['unit'] => shownIn[quantity] ?? kilopascal
const factorRange: Accepted = { above: 0, atMost: 10, unit: one, hint: 'Give the coverage factor, such as 2.' }

/**
 * Measured breathing performance held against each published limit that speaks about it. `undetermined` wherever the test was another
 * one, a condition was not stated, the limit is only remembered, a sign is impossible, or the analysis found something that puts the
 * figure in doubt: a loop taken in another way is not comparable, however small its work.
 *
 * Two rows may be one limit in two units: the second names the first in `alternativeOf`.
 *
 * @param measured - the figures, SI
 * @param options - conditions of the test, uncertainties, findings of the analysis, way of comparison
 * @returns one assessment for each limit whose quantity was measured, in the order of the table; values, limits and margins in SI
 * @throws LitrebarError `range` for a value that is not finite; `input` for an unknown key or word
 * @source astm-e29 (absolute and rounded comparison); limits as each row says; guard band common-practice
 * @example
 * const conditions = {
 *   ambientPressure: absolute(6, bar), surfacePressure: absolute(1, bar), gas: dryAir, waveform: 'sinusoid',
 *   tidalVolume: measure(2.5, litre), breathingFrequency: measure(25, perMinute),
 *   supplyPressure: gauge(50, bar), waterTemperature: temperatureOf(10, celsius),
 * } as const
 * assessAcceptance({ workOfBreathingPerLitre: difference(1.8, joulePerLitre) }, { conditions }).map(({ limitId, verdict }) => `${limitId} ${verdict}`).join(', ') // => 'european-work within, naval-goal undetermined, naval-goal-old-unit undetermined, diver-focused-metres beyond, diver-focused-feet beyond'
 */
export function assessAcceptance(
  measured: MeasuredPerformance,
  options: AcceptanceOptions,
): readonly AcceptanceAssessment[] {
  requireMeasured(measured, options)
  if (options.limits !== undefined) requireLimits(options.limits)
  const { limits = acceptanceLimits } = options
  const speaking = limits.filter((limit) => measured[limit.quantity] !== undefined)
  return speaking.map((limit) => againstLimit(limit, measured[limit.quantity] as number, options))
}

function requireLimits(limits: readonly AcceptanceLimit[]): void {
  requireList('options.limits', limits, 0, 'List rows of acceptanceLimits, or rows of your own.')
  limits.forEach((limit, k) => {
    requireLimit(`options.limits[${k}]`, limit)
  })
}

/** Refuses figures and options that no limit can be held against. */
export function requireMeasured(measured: MeasuredPerformance, options: AcceptanceOptions): void {
  requireKeys('measured', measured, measuredKeys)
  requireKeys('options', options, optionKeys)
  requireConditions('options.conditions', options.conditions)
  requireWord('options.comparison', options.comparison ?? 'absolute', ['absolute', 'rounded'])
  const { standardUncertainty = {}, guardBand } = options
  requireKeys('options.standardUncertainty', standardUncertainty, measuredKeys)
  for (const [name, u] of Object.entries(standardUncertainty)) {
    requireWithin(`options.standardUncertainty.${name}`, u, {
      atLeast: 0,
      unit: unitOf(name as LimitedQuantity),
      hint: 'State a standard deviation.',
    })
  }
  if (guardBand === undefined) return
  requireKeys('options.guardBand', guardBand, { coverageFactor: true })
  requireWithin('options.guardBand.coverageFactor', guardBand.coverageFactor, factorRange)
}

function againstLimit(limit: AcceptanceLimit, value: number, options: AcceptanceOptions): AcceptanceAssessment {
  const { comparison, evidence } = heldAgainst(limit, value, options)
  return {
    limitId: limit.id,
    ...(limit.alternativeOf === undefined ? {} : { alternativeOf: limit.alternativeOf }),
    quantity: limit.quantity,
    value,
    ...comparison,
    ...verdictFrom(evidence),
    cautions: ['always', 'regulator'],
    sources: [limit.source],
  }
}

/** A value held against a limit: bound and margin, where the two can be compared, and what speaks for and against. */
export interface HeldAgainst {
  readonly comparison?: { readonly limit: number; readonly margin: number; readonly marginUncertainty?: number }
  readonly evidence: Evidence
}

/** Holds a value against one limit. */
export function heldAgainst(limit: AcceptanceLimit, value: number, options: AcceptanceOptions): HeldAgainst {
  requireWithin(`measured.${limit.quantity}`, value, {
    unit: unitOf(limit.quantity),
    hint: 'Leave out what was not measured.',
  })
  const { conditions, standardUncertainty, guardBand } = options
  const aboutValue = doubtsAbout(limit.quantity, value, options.findings)
  const inTheWay = limit.conditions.flatMap((condition) => obstacles(condition, conditions, limit))
  if (inTheWay.length > 0) return { evidence: { against: [], doubts: [...inTheWay, ...aboutValue] } }
  const uncertainty = standardUncertainty?.[limit.quantity]
  const { bound, margin, compared } = nearestBound(limit, value, options)
  const { against, doubts, notes } = decided(compared, margin, uncertainty, guardBand?.coverageFactor)
  return {
    comparison: { limit: bound, margin, ...(uncertainty === undefined ? {} : { marginUncertainty: uncertainty }) },
    evidence: {
      against,
      doubts: [...doubts, ...memoryDoubts(limit), ...conditionDoubts(limit, conditions), ...aboutValue],
      notes: [...notes, ...conditionNotes(limit)],
    },
  }
}

/** Where the margin puts the value, with or without a guard band. */
function decided(
  compared: Reason,
  margin: number,
  uncertainty: number | undefined,
  coverageFactor: number | undefined,
): { readonly against: readonly Reason[]; readonly doubts: readonly Reason[]; readonly notes: readonly Reason[] } {
  if (coverageFactor !== undefined && uncertainty === undefined) {
    const text = 'a guard band was asked for, and the uncertainty of the value is not stated'
    return { against: [], doubts: [{ code: 'uncertainty-not-stated', text }], notes: [compared] }
  }
  const isNear = uncertainty !== undefined && Math.abs(margin) < (coverageFactor ?? 2) * uncertainty
  if (coverageFactor !== undefined && isNear) {
    const text = `the margin is smaller than the guard band of ${coverageFactor} standard uncertainties`
    return { against: [], doubts: [{ code: 'inside-guard-band', text }], notes: [compared] }
  }
  const text =
    'the margin is smaller than the expanded uncertainty of the value: another measurement may fall on the other side'
  const near: readonly Reason[] = isNear ? [{ code: 'within-uncertainty', text }] : []
  return margin >= 0
    ? { against: [], doubts: [], notes: [compared, ...near] }
    : { against: [compared], doubts: [], notes: near }
}

function memoryDoubts(limit: AcceptanceLimit): readonly Reason[] {
  if (limit.evidence !== 'memory') return []
  return [{ code: 'limit-from-memory', text: 'the limit is recalled, its text was not seen', source: 'memory' }]
}

/** Which sign a figure cannot have, and what that would mean. A work of nothing is as impossible as one below. */
const impossible: { readonly [Name in LimitedQuantity]?: { readonly is: (value: number) => boolean; text: string } } = {
  workOfBreathingPerLitre: {
    is: (value) => value <= 0,
    text: 'no apparatus is breathed for nothing: check the order of the samples and the sign of the pressure',
  },
  inhalationPressure: {
    is: (value) => value > 0,
    text: 'suction is negative here: a sheet that prints it without its sign has to be read with one',
  },
  exhalationPressure: { is: (value) => value < 0, text: 'the peak of an exhalation lies above zero: check the sign' },
  assistPressureOnInhalation: {
    is: (value) => value < 0,
    text: 'a pressure that never rises above zero gives no assist: leave it out',
  },
  assistWorkOnInhalation: { is: (value) => value < 0, text: 'what the apparatus gives is counted as positive' },
}

function doubtsAbout(
  quantity: LimitedQuantity,
  value: number,
  findings: readonly LoopFinding[] = [],
): readonly Reason[] {
  const sign = impossible[quantity]
  const wrongSign: readonly Reason[] = sign?.is(value) ? [{ code: 'impossible-sign', text: sign.text }] : []
  // an unknown code is somebody else's finding: it cannot be weighed, so it counts
  const doubtful = findings.filter(
    ({ code }) => !Object.hasOwn(doubtfulBy, code) || doubtfulBy[code].includes(quantity),
  )
  return [...wrongSign, ...doubtful.map(({ code, text }) => ({ code: `finding-${code}`, text }))]
}
