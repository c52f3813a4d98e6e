import type { GasModel, GasModelOption } from '../../gas-law/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import type { CautionId } from '../../references/index.ts'
import {
  type AbsolutePressure,
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
import { densityBy, gasModelOf, pressureBy } from '../cylinder-gas.ts'
import { type FillLimit, type FillLimitInput, limitOf, requireMarking } from './fill-limit.ts'
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
 * Exactly the limit is within it. `undetermined` when the temperature of the gas is not known, when the marks contradict each other,
 * or when the pressure lies between the plain limit and that of the plus mark and a condition of the latter has not been stated.
 *
 * @param filled - marking, mixture, ambient pressure (absolute, Pa), reading (gauge, Pa), temperature of the gas, K
 * @param options - `gas: 'ideal'` to show the difference
 * @returns settled gauge pressure against the limit, Pa, with reasons that name rule and edition
 * @throws LitrebarError `range`, naming the field; `input` for an unknown rule, key or word
 * @source cfr-49-173-301a, cfr-49-173-302-2015, cfr-49-173-302a-2015, cfr-49-173-302b
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
  requireMarking(filled, {
    reading: true,
    gasTemperature: false,
    readingUncertainty: false,
    temperatureUncertainty: false,
  })
  const gas = gasModelOf(options)
  requireWithin('reading', filled.reading, gaugePressure)
  const limit = limitOf(filled, gas)
  const { gasTemperature } = filled
  if (gasTemperature === undefined) {
    return {
      value: filled.reading,
      limit: limit.settledPressure,
      ...verdictFrom({ against: [], doubts: [temperatureUnknown, ...limit.doubts], notes: rowsOf(limit) }),
      cautions: [...limit.cautions, 'hot-fill'],
      sources: limit.sources,
    }
  }
  requireWithin('gasTemperature', gasTemperature, temperatureRange)
  const settledAt = (reading: number, at: number): GaugePressure =>
    settledPressure(gas, filled, { reading, at, settled: limit.temperature })
  const value = settledAt(filled.reading, gasTemperature)
  const isOver = isAbove(value, limit.settledPressure)
  const open = plusUnknown(filled, value, gas)
  const uncertainty = uncertaintyOf(filled, gasTemperature, settledAt)
  const state = settledReason(value, limit, isOver)
  return {
    value,
    limit: limit.settledPressure,
    margin: isOver || value < limit.settledPressure ? limit.settledPressure - value : 0,
    ...(uncertainty === undefined ? {} : { marginUncertainty: uncertainty }),
    ...verdictFrom({
      against: isOver && open.length === 0 ? [state] : [],
      doubts: [...open, ...limit.doubts],
      notes: [...(isOver && open.length === 0 ? [] : [state]), ...rowsOf(limit)],
    }),
    cautions: cautionsOf(limit, gasTemperature, isOver),
    sources: limit.sources,
  }
}

const temperatureUnknown: Reason = {
  code: 'gas-temperature-unknown',
  text: 'The gas temperature at the reading is not known, so neither is the settled pressure.',
}

// Settling is solved to some 1e-12 of the pressure: a difference below this is the solve, not the gas.
const solveTolerance = 1e-9

function isAbove(pressure: GaugePressure, limit: GaugePressure): boolean {
  return pressure > limit * (1 + solveTolerance)
}

/** The reasons of a limit that merely say what it is. */
function rowsOf({ because, doubts }: FillLimit): readonly Reason[] {
  return because.filter((reason) => !doubts.includes(reason))
}

function settledPressure(
  gas: GasModel,
  { mixture, ambientPressure }: FilledCylinder,
  { reading, at, settled }: { readonly reading: number; readonly at: number; readonly settled: Temperature },
): GaugePressure {
  const density = densityBy(gas, mixture, toAbsolute(reading as GaugePressure, ambientPressure), at)
  return toGauge(pressureBy(gas, mixture, density, settled) as AbsolutePressure, ambientPressure)
}

/** Why the plus mark leaves the matter open, if it does. */
function plusUnknown(filled: FilledCylinder, value: GaugePressure, gas: GasModel): readonly Reason[] {
  if (filled.rule !== 'us-specification' || filled.plus === undefined) return []
  const { outcome, met, unmet, unknown } = plusPermission(filled.plus)
  if (outcome !== 'undetermined') return []
  const allMet = Object.fromEntries([...met, ...unmet, ...unknown].map((condition) => [condition, true]))
  const plain = limitOf({ ...filled, plus: {} }, gas)
  const excess = limitOf({ ...filled, plus: allMet }, gas)
  if (!isAbove(value, plain.settledPressure) || isAbove(value, excess.settledPressure)) return []
  return [
    {
      code: 'plus-conditions-unknown',
      text: `The pressure is above the service pressure, and these conditions of the plus mark are unknown: ${unknown.join(', ')}.`,
      source: 'cfr-49-173-302a-2015',
    },
  ]
}

function settledReason(value: GaugePressure, { settledPressure: limit }: FillLimit, isOver: boolean): Reason {
  const shown = (p: GaugePressure): string => `${inUnit(p, bar).toFixed(1)} bar`
  return {
    code: isOver ? 'above-limit' : 'at-or-below-limit',
    text: `settles at ${shown(value)}, limit ${shown(limit)}`,
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
