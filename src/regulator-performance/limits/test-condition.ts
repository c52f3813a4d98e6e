import { requireKeys, requireWord } from '../../errors/index.ts'
import type { Mixture } from '../../gas-law/index.ts'
import { requireMixture } from '../../gas-law/mixture/mixture.ts'
import type { Reason } from '../../references/index.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Frequency,
  type GaugePressure,
  litre,
  litrePerMinute,
  perMinute,
  requireWithin,
  type Temperature,
  type Unit,
  type Volume,
  type VolumeFlow,
} from '../../units/index.ts'
import type { AcceptanceLimit, ConditionName, LimitCondition } from './acceptance-limit.table.ts'

/** Under what conditions it was measured. What is not stated here cannot be compared with a limit that depends on it. */
export interface TestConditions {
  readonly ambientPressure?: AbsolutePressure
  /** Pressure at the surface of the water or of the chamber's zero: depth is counted from it. */
  readonly surfacePressure?: AbsolutePressure
  /** What was breathed. Published limits are for compressed air. */
  readonly gas?: Mixture
  readonly waveform?: 'sinusoid' | 'trapezoid' | 'other'
  readonly tidalVolume?: Volume
  readonly breathingFrequency?: Frequency
  /** Where it is left out, tidal volume times breathing frequency. */
  readonly respiratoryMinuteVolume?: VolumeFlow
  readonly waterTemperature?: Temperature
  readonly supplyPressure?: GaugePressure
  readonly ratedWorkingPressure?: GaugePressure
  readonly attitude?: 'vertical' | 'horizontal'
}

/** The fields of the conditions: none is required. */
export const conditionKeys: Readonly<Record<keyof TestConditions, boolean>> = {
  ambientPressure: false,
  surfacePressure: false,
  gas: false,
  waveform: false,
  tidalVolume: false,
  breathingFrequency: false,
  respiratoryMinuteVolume: false,
  waterTemperature: false,
  supplyPressure: false,
  ratedWorkingPressure: false,
  attitude: false,
}

const stated = 'Leave out what was not stated.'
const absolutePressure: Accepted = { above: 0, atMost: 200, unit: bar, hint: stated }
const gaugePressure: Accepted = { above: 0, atMost: 1500, unit: bar, hint: stated }
const conditionRanges = {
  ambientPressure: absolutePressure,
  surfacePressure: absolutePressure,
  tidalVolume: { above: 0, atMost: 100, unit: litre, hint: stated },
  breathingFrequency: { above: 0, atMost: 1000, unit: perMinute, hint: stated },
  respiratoryMinuteVolume: { above: 0, atMost: 1e4, unit: litrePerMinute, hint: stated },
  waterTemperature: { atLeast: -60, atMost: 100, unit: celsius, hint: stated },
  supplyPressure: gaugePressure,
  ratedWorkingPressure: gaugePressure,
} as const satisfies Readonly<Record<string, Accepted>>

/** Refuses conditions that are misspelt, not numbers, or in a wrong unit. */
export function requireConditions(argument: string, conditions: TestConditions): void {
  requireKeys(argument, conditions, conditionKeys)
  for (const name of Object.keys(conditionRanges) as (keyof typeof conditionRanges)[]) {
    const { [name]: value } = conditions
    if (value !== undefined) requireWithin(`${argument}.${name}`, value, conditionRanges[name])
  }
  const { gas, waveform, attitude } = conditions
  if (gas !== undefined) requireMixture(`${argument}.gas`, gas)
  if (waveform !== undefined) requireWord(`${argument}.waveform`, waveform, ['sinusoid', 'trapezoid', 'other'])
  if (attitude !== undefined) requireWord(`${argument}.attitude`, attitude, ['vertical', 'horizontal'])
}

// Decimals that were converted meet a setting's edge within rounding.
const rounding = 1e-9

/** Share of the rated working pressure that a test at it may be off by. Ours: the printed figure is not legible in what was seen. */
const ratedPressureGive = 0.05

/** Why a condition stands in the way of a comparison; nothing if it does not. */
export function obstacles(
  condition: LimitCondition,
  conditions: TestConditions,
  limit: AcceptanceLimit,
): readonly Reason[] {
  const source = condition.source ?? limit.source
  const name = condition.of
  const stated = stating[name](conditions)
  if (stated === undefined) {
    const needed = name === 'depth' ? 'ambient and surface pressure are not both stated' : `the ${name} is not stated`
    return [{ code: 'condition-not-stated', text: `${needed}; the limit holds ${wanted(condition)}`, source }]
  }
  if (condition.orRatedWorkingPressure && isRated(conditions)) return []
  if (meets(stated, condition)) return []
  return [
    {
      code: 'condition-differs',
      text: `the ${name} is ${shown(stated, condition)}; the limit holds ${wanted(condition)}`,
      source,
    },
  ]
}

/** What rests on memory in the conditions of a limit, and ventilations that contradict one another. */
export function conditionDoubts(limit: AcceptanceLimit, conditions: TestConditions): readonly Reason[] {
  const remembered = limit.conditions.filter(({ source }) => source === 'memory').map(({ of }) => of)
  const reasons: Reason[] = []
  if (remembered.length > 0) {
    reasons.push({
      code: 'condition-from-memory',
      text: `for which ${remembered.join(' and ')} the limit holds is recalled, not read`,
      source: 'memory',
    })
  }
  const { respiratoryMinuteVolume: stated, tidalVolume, breathingFrequency } = conditions
  if (stated !== undefined && tidalVolume !== undefined && breathingFrequency !== undefined) {
    const product = tidalVolume * breathingFrequency
    // 3 % each of rate and stroke
    if (Math.abs(stated - product) > 0.06 * product) {
      reasons.push({
        code: 'ventilation-contradicts',
        text: `the ventilation stated is ${figure(stated * 6e4)} L/min, tidal volume times breathing frequency ${figure(product * 6e4)} L/min`,
      })
    }
  }
  return reasons
}

/** What a reader should know of the settings that a single test leaves out. */
export function conditionNotes(limit: AcceptanceLimit): readonly Reason[] {
  return limit.conditions
    .filter(({ allOf }) => allOf === true)
    .map((condition) => ({
      code: 'one-of-two-supplies',
      text: `one of two supplies: the test is made ${wanted(condition).replace(' or ', ' and again at ')}; for both, give the whole plan`,
      source: condition.source ?? limit.source,
    }))
}

const stating: Record<ConditionName, (conditions: TestConditions) => number | string | Mixture | undefined> = {
  'ambient pressure': ({ ambientPressure }) => ambientPressure,
  depth: depthPressure,
  gas: ({ gas }) => gas,
  waveform: ({ waveform }) => waveform,
  'tidal volume': ({ tidalVolume }) => tidalVolume,
  'breathing frequency': ({ breathingFrequency }) => breathingFrequency,
  'respiratory minute volume': minuteVolume,
  'water temperature': ({ waterTemperature }) => waterTemperature,
  'supply pressure': ({ supplyPressure }) => supplyPressure,
  attitude: ({ attitude }) => attitude,
}

function minuteVolume({ respiratoryMinuteVolume, tidalVolume, breathingFrequency }: TestConditions) {
  if (respiratoryMinuteVolume !== undefined) return respiratoryMinuteVolume
  if (tidalVolume === undefined || breathingFrequency === undefined) return undefined
  return tidalVolume * breathingFrequency
}

/** Depth as a pressure, Pa, where both pressures are stated. */
export function depthPressure({ ambientPressure, surfacePressure }: TestConditions): number | undefined {
  if (ambientPressure === undefined || surfacePressure === undefined) return undefined
  return ambientPressure - surfacePressure
}

function isRated({ supplyPressure, ratedWorkingPressure }: TestConditions): boolean {
  if (supplyPressure === undefined || ratedWorkingPressure === undefined) return false
  return Math.abs(supplyPressure - ratedWorkingPressure) <= (ratedPressureGive + rounding) * ratedWorkingPressure
}

function meets(stated: number | string | Mixture, condition: LimitCondition): boolean {
  const { settings, unit, upTo } = condition
  if (typeof stated === 'string') return stated === condition.word
  if (typeof stated === 'object') return isAir(stated)
  const n = unit === undefined ? stated : inConditionUnit(stated, unit)
  if (upTo !== undefined) return n >= -rounding && n <= upTo * (1 + rounding)
  return settings?.some(({ at, give }) => Math.abs(n - at) <= give + rounding * Math.abs(at)) ?? false
}

// Compressed air as dried and analysed: nothing in it but air. Ours.
function isAir({ oxygen, nitrogen }: Mixture): boolean {
  return Math.abs(oxygen - 0.2095) <= 0.005 && nitrogen >= 0.775
}

function inConditionUnit(stated: number, { factor, offset = 0 }: Unit): number {
  return (stated - offset) / factor
}

function shown(stated: number | string | Mixture, { unit }: LimitCondition): string {
  if (typeof stated === 'object') {
    return `one with ${figure(100 * stated.oxygen)} % oxygen and ${figure(100 * stated.helium)} % helium`
  }
  if (typeof stated === 'string' || unit === undefined) return String(stated)
  return `${figure(inConditionUnit(stated, unit))} ${unit.symbol}`
}

function wanted({ settings, unit, word, upTo, orRatedWorkingPressure }: LimitCondition): string {
  if (word !== undefined) return `for ${word}`
  if (upTo !== undefined) return `down to ${upTo} ${unit?.symbol ?? ''}`
  const listed = (settings ?? []).map(({ at, give }) => `${at} ± ${give} ${unit?.symbol ?? ''}`).join(' or ')
  return `at ${listed}${orRatedWorkingPressure ? ' or the rated working pressure' : ''}`
}

function figure(value: number): string {
  return String(Number(value.toPrecision(5))).replace('-', '−')
}
