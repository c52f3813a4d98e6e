import type { Assessment, CautionId, Reason } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Elastance,
  type EnergyPerVolume,
  type GaugePressure,
  type PressureDifference,
  type Quantity,
  requireWithin,
  roundNumber,
  type Temperature,
  type Unit,
  type VolumeFlow,
} from '../../units/index.ts'
import {
  type AcceptanceLimit,
  acceptanceLimits,
  type ConditionName,
  type LimitCondition,
  type LimitedQuantity,
  type PrintedLimit,
  type PrintedLine,
} from './acceptance-limit.table.ts'

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

/** Under what conditions it was measured. What is not stated here cannot be compared with a limit that depends on it. */
export interface TestConditions {
  readonly ambientPressure?: AbsolutePressure
  /** Pressure at the surface of the water or of the chamber's zero: depth is counted from it. */
  readonly surfacePressure?: AbsolutePressure
  readonly respiratoryMinuteVolume?: VolumeFlow
  readonly waterTemperature?: Temperature
  readonly supplyPressure?: GaugePressure
  readonly ratedWorkingPressure?: GaugePressure
  readonly attitude?: 'vertical' | 'horizontal'
}

/** How a value is held against a limit. */
export interface AcceptanceOptions {
  readonly conditions: TestConditions
  /** Standard uncertainties of the measured values, in the same units. */
  readonly standardUncertainty?: { readonly [Name in LimitedQuantity]?: number }
  /**
   * `absolute`, unless told otherwise: the value as it is. `rounded`: the value first rounded to the decimals that the limit
   * is printed with, as some standards prescribe.
   */
  readonly comparison?: 'absolute' | 'rounded'
  /** The limits to hold it against; all of the table unless given. */
  readonly limits?: readonly AcceptanceLimit[]
}

/** One value held against one limit. */
export interface AcceptanceAssessment extends Assessment {
  readonly limitId: AcceptanceLimit['id']
  readonly quantity: LimitedQuantity
}

/**
 * Measured breathing performance held against each published limit that speaks about it: within, beyond, or undetermined where the
 * test was another one or a condition was not stated. A loop taken at another ventilation, pressure or water temperature is not
 * comparable, however small its work.
 *
 * @param measured - the figures, SI
 * @param options - conditions of the test, uncertainties, way of comparison
 * @returns one assessment for each limit whose quantity was measured, in the order of the table; values, limits and margins in SI
 * @throws LitrebarError `range` for a value that is not finite
 * @source astm-e29 (absolute and rounded comparison); limits as each row says
 * @example
 * const conditions = {
 *   ambientPressure: absolute(6, bar), surfacePressure: absolute(1, bar), respiratoryMinuteVolume: measure(62.5, litrePerMinute),
 *   supplyPressure: gauge(50, bar), waterTemperature: temperatureOf(10, celsius),
 * }
 * assessAcceptance({ workOfBreathingPerLitre: difference(1.8, joulePerLitre) }, { conditions }).map(({ limitId, verdict }) => `${limitId} ${verdict}`).join(', ') // => 'european-work within, naval-goal undetermined, naval-goal-old-unit undetermined, diver-focused-metres beyond, diver-focused-feet beyond'
 */
export function assessAcceptance(
  measured: MeasuredPerformance,
  options: AcceptanceOptions,
): readonly AcceptanceAssessment[] {
  const { limits = acceptanceLimits } = options
  const speaking = limits.filter((limit) => measured[limit.quantity] !== undefined)
  return speaking.map((limit) => againstLimit(limit, measured[limit.quantity] as Quantity, options))
}

function againstLimit(limit: AcceptanceLimit, value: Quantity, options: AcceptanceOptions): AcceptanceAssessment {
  requireWithin(`measured.${limit.quantity}`, value, { unit: unitOf(limit), hint: 'Leave out what was not measured.' })
  const { conditions, standardUncertainty } = options
  const obstacles = limit.conditions.flatMap((condition) => obstacle(condition, conditions, limit))
  const facts = {
    limitId: limit.id,
    quantity: limit.quantity,
    value,
    cautions: ['always', 'regulator'] as readonly CautionId[],
    sources: [limit.source],
  }
  if (obstacles.length > 0) return { ...facts, verdict: 'undetermined', because: obstacles }
  const uncertainty = standardUncertainty?.[limit.quantity]
  const { bound, margin, because } = nearestBound(limit, value, options)
  return {
    ...facts,
    limit: bound,
    margin,
    ...(uncertainty === undefined ? {} : { marginUncertainty: uncertainty }),
    verdict: margin >= 0 ? 'within' : 'beyond',
    because: [...because, ...doubts(limit, margin, uncertainty)],
  }
}

function nearestBound(
  limit: AcceptanceLimit,
  value: number,
  { conditions, comparison = 'absolute' }: AcceptanceOptions,
): { readonly bound: number; readonly margin: number; readonly because: readonly Reason[] } {
  const bounds = [
    ...(limit.atLeast === undefined ? [] : [boundOf(limit.atLeast, conditions, 1)]),
    ...(limit.atMost === undefined ? [] : [boundOf(limit.atMost, conditions, -1)]),
  ]
  const judged = bounds.map(({ unit, decimals, stated, sign }) => {
    const asStated = value / unit.factor
    const compared = comparison === 'rounded' ? roundNumber(asStated, { decimals }).value : asStated
    return { bound: stated * unit.factor, margin: (compared - stated) * sign * unit.factor, unit, decimals, stated }
  })
  const nearest = judged.reduce((a, b) => (b.margin < a.margin ? b : a))
  const { unit, decimals, stated, bound, margin } = nearest
  const because: Reason = {
    code: `compared-${comparison}`,
    text: `${figure(value / unit.factor)} ${unit.symbol} against ${figure(stated)} ${unit.symbol}, ${comparison === 'rounded' ? `the value rounded to ${decimals} decimals first` : 'without rounding'}`,
    source: limit.source,
  }
  return { bound, margin, because: [because] }
}

/** A bound in the unit it is printed in, and which way the room lies. */
interface StatedBound {
  readonly unit: Unit
  readonly decimals: number
  readonly stated: number
  readonly sign: 1 | -1
}

function boundOf(bound: PrintedLimit | PrintedLine, conditions: TestConditions, sign: 1 | -1): StatedBound {
  const { printed, unit } = 'printed' in bound ? bound : bound.intercept
  const decimals = printed.split('.')[1]?.length ?? 0
  if ('printed' in bound) return { unit, decimals, stated: Number(printed), sign }
  const depth = (depthPressure(conditions) ?? Number.NaN) / bound.depthUnit.factor
  return { unit, decimals, stated: Number(printed) + bound.slope * depth, sign }
}

function doubts(limit: AcceptanceLimit, margin: number, uncertainty: number | undefined): readonly Reason[] {
  const reasons: Reason[] = []
  if (limit.evidence === 'memory') {
    reasons.push({ code: 'limit-from-memory', text: 'the limit is recalled, its text was not seen', source: 'memory' })
  }
  if (uncertainty !== undefined && Math.abs(margin) < 2 * uncertainty) {
    reasons.push({
      code: 'within-uncertainty',
      text: 'the margin is smaller than the expanded uncertainty of the value: another measurement may fall on the other side',
    })
  }
  return reasons
}

/** Why a condition stands in the way of a comparison; nothing if it does not. */
function obstacle(condition: LimitCondition, conditions: TestConditions, limit: AcceptanceLimit): readonly Reason[] {
  const source = condition.source ?? limit.source
  const name = condition.of
  const stated = statedCondition(name, conditions)
  if (stated === undefined) {
    const needed = name === 'depth' ? 'ambient and surface pressure are not both stated' : `the ${name} is not stated`
    return [{ code: 'condition-not-stated', text: `${needed}; the limit holds ${wanted(condition)}`, source }]
  }
  if (name === 'supply pressure' && condition.orRatedWorkingPressure && isRated(conditions)) return []
  if (meets(stated, condition)) return []
  return [
    {
      code: 'condition-differs',
      text: `the ${name} is ${inConditionUnit(stated, condition)}; the limit holds ${wanted(condition)}`,
      source,
    },
  ]
}

const readCondition: Record<ConditionName, (conditions: TestConditions) => number | string | undefined> = {
  'ambient pressure': ({ ambientPressure }) => ambientPressure,
  depth: depthPressure,
  'respiratory minute volume': ({ respiratoryMinuteVolume }) => respiratoryMinuteVolume,
  'water temperature': ({ waterTemperature }) => waterTemperature,
  'supply pressure': ({ supplyPressure }) => supplyPressure,
  attitude: ({ attitude }) => attitude,
}

function statedCondition(name: ConditionName, conditions: TestConditions): number | string | undefined {
  return readCondition[name](conditions)
}

function depthPressure({ ambientPressure, surfacePressure }: TestConditions): number | undefined {
  if (ambientPressure === undefined || surfacePressure === undefined) return undefined
  return ambientPressure - surfacePressure
}

function isRated({ supplyPressure, ratedWorkingPressure }: TestConditions): boolean {
  if (supplyPressure === undefined || ratedWorkingPressure === undefined) return false
  return Math.abs(supplyPressure - ratedWorkingPressure) <= 0.05 * ratedWorkingPressure
}

function meets(stated: number | string, { settings, unit, word }: LimitCondition): boolean {
  if (typeof stated === 'string') return stated === word
  if (settings === undefined || unit === undefined) return Number.isFinite(stated)
  const inUnit = (stated - (unit.offset ?? 0)) / unit.factor
  return settings.some(({ at, give }) => Math.abs(inUnit - at) <= give + 1e-9 * Math.abs(at))
}

function inConditionUnit(stated: number | string, { unit }: LimitCondition): string {
  if (typeof stated === 'string' || unit === undefined) return String(stated)
  return `${figure((stated - (unit.offset ?? 0)) / unit.factor)} ${unit.symbol}`
}

function wanted({ settings, unit, word, orRatedWorkingPressure }: LimitCondition): string {
  if (word !== undefined) return `for ${word}`
  if (settings === undefined || unit === undefined) return 'for a stated value'
  const listed = settings.map(({ at, give }) => `${at} ± ${give} ${unit.symbol}`).join(' or ')
  return `at ${listed}${orRatedWorkingPressure ? ' or the rated working pressure' : ''}`
}

function unitOf(limit: AcceptanceLimit): Unit {
  const bound = limit.atMost ?? limit.atLeast
  if (bound === undefined) throw new Error(`limit ${limit.id} has no bound`) // a defect of the table, which a test walks
  return 'printed' in bound ? bound.unit : bound.intercept.unit
}

function figure(value: number): string {
  return String(Number(value.toPrecision(5))).replace('-', '−')
}
