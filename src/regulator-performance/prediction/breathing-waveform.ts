import { requireKeys, requireWord } from '../../errors/index.ts'
import {
  type Accepted,
  type Duration,
  type Fraction,
  type Frequency,
  litre,
  litrePerMinute,
  one,
  perMinute,
  requireWithin,
  type Volume,
  type VolumeFlow,
} from '../../units/index.ts'

/** How a breathing machine moves: as a sinusoid, or with flow that ramps up, stays and ramps down. */
export type Waveform =
  | { readonly shape: 'sinusoid' }
  | {
      readonly shape: 'trapezoid'
      /** Share of the breath that is inhalation, above 0 and below 1. */
      readonly inhalationShare: Fraction
      /** Share of each half that each of its two ramps takes, from 0 to 0.5. */
      readonly rampShare: Fraction
    }

/** What is set on a breathing machine. */
export interface BreathingSetting {
  readonly tidalVolume: Volume
  readonly breathingFrequency: Frequency
  readonly waveform: Waveform
}

/** What a setting of a breathing machine comes to. Flows at the pressure of the diver. */
export interface SimulatedBreathing {
  readonly period: Duration
  readonly respiratoryMinuteVolume: VolumeFlow
  readonly peakInhalationFlow: VolumeFlow
  readonly peakExhalationFlow: VolumeFlow
  readonly meanInhalationFlow: VolumeFlow
}

/** A breath as a machine makes it, in columns of SI; inhalation first, flow positive on inhalation. */
export interface BreathingSeries {
  readonly timeSecond: Float64Array
  readonly volumeCubicMetre: Float64Array
  readonly flowCubicMetrePerSecond: Float64Array
}

const tidalVolume: Accepted = { above: 0, atMost: 10, unit: litre, hint: 'State the volume of one breath.' }
const breathingFrequency: Accepted = { above: 0, atMost: 200, unit: perMinute, hint: 'State breaths per minute.' }
const ventilation: Accepted = {
  atLeast: 0,
  atMost: 500,
  unit: litrePerMinute,
  hint: 'State litres per minute at depth.',
}
const inhalationShare: Accepted = { above: 0, below: 1, unit: one, hint: 'Give half the breath as 0.5.' }
const rampShare: Accepted = {
  atLeast: 0,
  atMost: 0.5,
  unit: one,
  hint: 'Two ramps fill at most the whole of a half: 0.5 makes a triangle, 0 a rectangle.',
}

/**
 * Peak inhalation flow at a respiratory minute volume: π times it for a sinusoid. A supply sized for the minute volume itself is
 * three times too small.
 *
 * @param respiratoryMinuteVolume - m³/s, from 0 to 500 L/min
 * @param waveform - sinusoid, or trapezoid with its shares
 * @returns flow at the pressure of the diver, m³/s
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * inUnit(peakInhalationFlow(measure(62.5, litrePerMinute), { shape: 'sinusoid' }), litrePerSecond).toFixed(3) // => '3.272'
 */
export function peakInhalationFlow(respiratoryMinuteVolume: VolumeFlow, waveform: Waveform): VolumeFlow {
  requireWithin('respiratoryMinuteVolume', respiratoryMinuteVolume, ventilation)
  requireWaveform(waveform)
  if (waveform.shape === 'sinusoid') return (Math.PI * respiratoryMinuteVolume) as VolumeFlow
  return (respiratoryMinuteVolume / (waveform.inhalationShare * (1 - waveform.rampShare))) as VolumeFlow
}

/**
 * What a setting of a breathing machine comes to: ventilation, period, peak and mean flows.
 *
 * @param setting - tidal volume to 10 L, breathing frequency to 200 per minute, waveform
 * @returns period, ventilation and flows at the pressure of the diver
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const setting = { tidalVolume: measure(2.5, litre), breathingFrequency: measure(25, perMinute), waveform: { shape: 'sinusoid' } } as const
 * inUnit(simulatedBreathing(setting).respiratoryMinuteVolume, litrePerMinute).toFixed(2) // => '62.50'
 */
export function simulatedBreathing(setting: BreathingSetting): SimulatedBreathing {
  requireSetting(setting)
  const { waveform } = setting
  const respiratoryMinuteVolume = (setting.tidalVolume * setting.breathingFrequency) as VolumeFlow
  const share = waveform.shape === 'sinusoid' ? 0.5 : waveform.inhalationShare
  const peak = peakInhalationFlow(respiratoryMinuteVolume, waveform)
  return {
    period: (1 / setting.breathingFrequency) as Duration,
    respiratoryMinuteVolume,
    peakInhalationFlow: peak,
    peakExhalationFlow: ((peak * share) / (1 - share)) as VolumeFlow,
    meanInhalationFlow: (respiratoryMinuteVolume / share) as VolumeFlow,
  }
}

/**
 * Time, volume and flow of simulated breaths, evenly sampled from end exhalation on. The last row closes the last breath.
 *
 * @param setting - as `simulatedBreathing`
 * @param sampling - `breaths` and `samplesPerBreath`, whole numbers, at least 1 and 3
 * @returns columns of `breaths × samplesPerBreath + 1` rows, in SI
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const setting = { tidalVolume: measure(2.5, litre), breathingFrequency: measure(25, perMinute), waveform: { shape: 'sinusoid' } } as const
 * breathingSeries(setting, { breaths: 1, samplesPerBreath: 4 }).volumeCubicMetre[2] // => 0.0025
 */
export function breathingSeries(
  setting: BreathingSetting,
  sampling: { readonly breaths: number; readonly samplesPerBreath: number },
): BreathingSeries {
  requireSetting(setting)
  requireKeys('sampling', sampling, { breaths: true, samplesPerBreath: true })
  requireCount('sampling.breaths', sampling.breaths, 1)
  requireCount('sampling.samplesPerBreath', sampling.samplesPerBreath, 3)
  const rows = sampling.breaths * sampling.samplesPerBreath + 1
  const timeSecond = new Float64Array(rows)
  const volumeCubicMetre = new Float64Array(rows)
  const flowCubicMetrePerSecond = new Float64Array(rows)
  for (let row = 0; row < rows; row++) {
    const phase = (row % sampling.samplesPerBreath) / sampling.samplesPerBreath
    const { volume, flow } = breathAt(setting, phase)
    timeSecond[row] = row / sampling.samplesPerBreath / setting.breathingFrequency
    volumeCubicMetre[row] = volume
    flowCubicMetrePerSecond[row] = flow
  }
  return { timeSecond, volumeCubicMetre, flowCubicMetrePerSecond }
}

function breathAt(setting: BreathingSetting, phase: number): { readonly volume: number; readonly flow: number } {
  const { tidalVolume: whole, breathingFrequency: frequency, waveform } = setting
  if (waveform.shape === 'sinusoid') {
    const angle = 2 * Math.PI * phase
    return { volume: (whole * (1 - Math.cos(angle))) / 2, flow: Math.PI * frequency * whole * Math.sin(angle) }
  }
  const { inhalationShare: share, rampShare } = waveform
  const inhaling = phase < share
  const half = inhaling ? trapezoid(phase / share, rampShare) : trapezoid((phase - share) / (1 - share), rampShare)
  const lasting = (inhaling ? share : share - 1) / frequency // negative: exhalation runs back
  return { volume: whole * (inhaling ? half.done : 1 - half.done), flow: (whole * half.rate) / lasting }
}

/** Share of a half breath done, and its rate, at a share of its time. */
function trapezoid(at: number, ramp: number): { readonly done: number; readonly rate: number } {
  const top = 1 / (1 - ramp)
  if (at < ramp) return { done: (top * at * at) / (2 * ramp), rate: (top * at) / ramp }
  const left = 1 - at
  if (left < ramp) return { done: 1 - (top * left * left) / (2 * ramp), rate: (top * left) / ramp }
  return { done: top * (at - ramp / 2), rate: top }
}

function requireSetting(setting: BreathingSetting): void {
  requireKeys('setting', setting, { tidalVolume: true, breathingFrequency: true, waveform: true })
  requireWithin('setting.tidalVolume', setting.tidalVolume, tidalVolume)
  requireWithin('setting.breathingFrequency', setting.breathingFrequency, breathingFrequency)
  requireWaveform(setting.waveform)
}

function requireWaveform(waveform: Waveform): void {
  requireWord('waveform.shape', (waveform as Waveform | undefined)?.shape, ['sinusoid', 'trapezoid'])
  if (waveform.shape === 'sinusoid') {
    requireKeys('waveform', waveform, { shape: true })
    return
  }
  requireKeys('waveform', waveform, { shape: true, inhalationShare: true, rampShare: true })
  requireWithin('waveform.inhalationShare', waveform.inhalationShare, inhalationShare)
  requireWithin('waveform.rampShare', waveform.rampShare, rampShare)
}

function requireCount(argument: string, count: number, atLeast: number): void {
  requireWithin(argument, Number.isInteger(count) ? count : Number.NaN, {
    atLeast,
    atMost: 10_000_000,
    unit: one,
    hint: 'State a whole number.',
  })
}
