import type { GasModelOption } from '../../gas-law/index.ts'
import type { Assessment, CautionId, Reason } from '../../references/index.ts'
import {
  type Accepted,
  bar,
  type GaugePressure,
  inUnit,
  kelvin,
  type PressureDifference,
  requireWithin,
  type Temperature,
  type TemperatureDifference,
  toAbsolute,
  toGauge,
} from '../../units/index.ts'
import { gaugePressure, temperature as temperatureRange } from '../accepted-contents.ts'
import { developedPressure } from './developed-pressure.ts'
import { type FillLimit, type FillLimitInput, fillLimit } from './fill-limit.ts'
import { plusPermission } from './plus-permission.ts'

/** A filled cylinder: its marking and gas, and what its gauge shows. */
export type FilledCylinder = FillLimitInput & {
  readonly reading: GaugePressure
  /** Temperature of the gas. Leave out when unknown: a warm reading then says nothing about the settled pressure. */
  readonly gasTemperature?: Temperature
  /** Standard uncertainty of the reading. */
  readonly readingUncertainty?: PressureDifference
  /** Standard uncertainty of the gas temperature. */
  readonly temperatureUncertainty?: TemperatureDifference
}

const pressureUncertainty: Accepted = { atLeast: 0, atMost: 50, unit: bar, hint: 'Give one standard uncertainty.' }
const degreeUncertainty: Accepted = { atLeast: 0, atMost: 50, unit: kelvin, hint: 'Give one standard uncertainty.' }

/**
 * A fill judged against the filling limit, at the reference temperature of the rule.
 * `undetermined` when the temperature of the gas is not known, or when the pressure lies between the plain limit and that of the
 * plus mark and a condition of the latter has not been stated.
 *
 * @param filled - marking, mixture, ambient pressure (absolute, Pa), reading (gauge, Pa), temperature of the gas, K
 * @param options - `gas: 'ideal'` to show the difference
 * @returns settled gauge pressure against the limit, Pa, with reasons that name rule and edition
 * @throws LitrebarError `range`, naming the field
 * @source cfr-49-173-301a, cfr-49-173-302, cfr-49-173-302b
 * @example
 * const fill = assessFill({
 *   rule: 'un-receptacle',
 *   testPressure: gauge(348, bar),
 *   workingPressure: gauge(232, bar),
 *   mixture: dryAir,
 *   ambientPressure: absolute(1, atmosphere),
 *   reading: gauge(250, bar),
 *   gasTemperature: temperatureOf(40, celsius),
 * })
 * const shown = [fill.verdict, inUnit(fill.value, bar).toFixed(1)] // => ['within', '221.3']
 */
export function assessFill(filled: FilledCylinder, options: GasModelOption = {}): Assessment<GaugePressure> {
  requireWithin('reading', filled.reading, gaugePressure)
  const limit = fillLimit(filled, options)
  if (filled.gasTemperature === undefined) {
    return {
      value: filled.reading,
      limit: limit.settledPressure,
      verdict: 'undetermined',
      because: [
        {
          code: 'gas-temperature-unknown',
          text: 'The reading was taken at an unknown temperature of the gas, so the settled pressure is not known.',
        },
        ...limit.because,
      ],
      cautions: [...limit.cautions, 'hot-fill'],
      sources: limit.sources,
    }
  }
  requireWithin('gasTemperature', filled.gasTemperature, temperatureRange)
  const settledAt = (reading: number, temperature: number): GaugePressure => {
    const { mixture, ambientPressure } = filled
    const contents = {
      mixture,
      pressure: toAbsolute(reading as GaugePressure, ambientPressure),
      temperature: temperature as Temperature,
    }
    return toGauge(developedPressure(contents, limit.temperature, options), ambientPressure)
  }
  const value = settledAt(filled.reading, filled.gasTemperature)
  const open = openReasons(filled, value, options)
  const isBeyond = value > limit.settledPressure && !open
  const uncertainty = uncertaintyOf(filled, filled.gasTemperature, settledAt)
  return {
    value,
    limit: limit.settledPressure,
    margin: limit.settledPressure - value,
    ...(uncertainty === undefined ? {} : { marginUncertainty: uncertainty }),
    verdict: open ? 'undetermined' : isBeyond ? 'beyond' : 'within',
    because: [...(open ?? []), settledReason(value, limit), ...limit.because],
    cautions: cautionsOf(limit, filled.gasTemperature, value > limit.settledPressure),
    sources: limit.sources,
  }
}

/** Why the plus mark leaves the matter open, if it does. */
function openReasons(
  filled: FilledCylinder,
  value: GaugePressure,
  options: GasModelOption,
): readonly Reason[] | undefined {
  if (filled.rule !== 'us-specification' || filled.plus === undefined) return undefined
  const { outcome, met, unmet, unknown } = plusPermission(filled.plus)
  if (outcome !== 'undetermined') return undefined
  const allMet = Object.fromEntries([...met, ...unmet, ...unknown].map((condition) => [condition, true]))
  const plain = fillLimit({ ...filled, plus: {} }, options)
  const excess = fillLimit({ ...filled, plus: allMet }, options)
  if (value <= plain.settledPressure || value > excess.settledPressure) return undefined
  return [
    {
      code: 'plus-conditions-unknown',
      text: `The pressure is above the service pressure, and of the conditions of the plus mark these are unknown: ${unknown.join(', ')}.`,
      source: 'cfr-49-173-302',
    },
  ]
}

function settledReason(value: GaugePressure, { settledPressure }: FillLimit): Reason {
  const shown = (p: GaugePressure): string => `${inUnit(p, bar).toFixed(1)} bar`
  return {
    code: value > settledPressure ? 'above-limit' : 'at-or-below-limit',
    text: `settles at ${shown(value)}, limit ${shown(settledPressure)}`,
  }
}

function cautionsOf(limit: FillLimit, gasTemperature: Temperature, isOver: boolean): readonly CautionId[] {
  return [
    ...limit.cautions,
    ...(isOver ? (['overfill'] as const) : []),
    ...(gasTemperature === limit.temperature ? [] : (['hot-fill'] as const)),
  ]
}

/** First order: how the settled pressure follows reading and temperature, by central differences. */
function uncertaintyOf(
  { reading, readingUncertainty, temperatureUncertainty }: FilledCylinder,
  gasTemperature: Temperature,
  settledAt: (reading: number, temperature: number) => GaugePressure,
): number | undefined {
  if (readingUncertainty === undefined && temperatureUncertainty === undefined) return undefined
  if (readingUncertainty !== undefined) requireWithin('readingUncertainty', readingUncertainty, pressureUncertainty)
  if (temperatureUncertainty !== undefined) {
    requireWithin('temperatureUncertainty', temperatureUncertainty, degreeUncertainty)
  }
  const step = 1e-4 * reading
  const perReading =
    (settledAt(reading + step, gasTemperature) - settledAt(reading - step, gasTemperature)) / (2 * step)
  const perKelvin = (settledAt(reading, gasTemperature + 0.1) - settledAt(reading, gasTemperature - 0.1)) / 0.2
  return Math.hypot(perReading * (readingUncertainty ?? 0), perKelvin * (temperatureUncertainty ?? 0))
}
