import { requireKeys } from '../../errors/index.ts'
import {
  type Accepted,
  type Duration,
  type EnergyPerVolume,
  type Frequency,
  joulePerLitre,
  kilopascal,
  one,
  type PressureDifference,
  perMinute,
  requireWithin,
  second,
} from '../../units/index.ts'

const frequency: Accepted = { above: 0, atMost: 200, unit: perMinute, hint: 'State breaths per minute.' }
const lasting: Accepted = { above: 0, unit: second, hint: 'State the time that the change took.' }
const anyPressure: Accepted = { unit: kilopascal, hint: 'Replace a missing value before the calculation.' }
/** What is accepted as a delay or a time constant of a channel. */
export const anyTime: Accepted = {
  atLeast: 0,
  atMost: 10,
  unit: second,
  hint: 'State a delay of the pressure as positive.',
}

/** Beyond this phase the pressure of one part of the breath is read as that of another, and a correction is a guess. */
const largestPhase: Accepted = {
  atMost: 0.5,
  unit: one,
  hint: 'Shorten the pressure line or breathe more slowly: beyond 0.5 rad between the channels the loop is not corrected.',
  code: 'outside-validity',
}

/**
 * What a drift of the pressure's zero adds to the work per litre of a breath whose volume rises and falls alike: the change over half a breath.
 *
 * @param drift - by how much the zero moved, Pa, and in what time, s
 * @param breathingFrequency - Hz, to 200 per minute
 * @returns error of the work per litre, Pa, of the sign of the drift
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * inUnit(driftError({ change: difference(0.05, kilopascal), during: measure(1, second) }, measure(25, perMinute)), joulePerLitre).toFixed(4) // => '0.0600'
 */
export function driftError(
  drift: { readonly change: PressureDifference; readonly during: Duration },
  breathingFrequency: Frequency,
): EnergyPerVolume {
  requireKeys('drift', drift, { change: true, during: true })
  requireWithin('drift.change', drift.change, anyPressure)
  requireWithin('drift.during', drift.during, lasting)
  requireWithin('breathingFrequency', breathingFrequency, frequency)
  return (drift.change / drift.during / (2 * breathingFrequency)) as EnergyPerVolume
}

/** A pressure channel that lags behind the volume channel. */
export interface LaggingChannel {
  /** Peak of the pressure that goes with flow, Pa. */
  readonly resistivePressure: PressureDifference
  /** Half the swing of the pressure that goes with volume, Pa; positive where pressure falls as volume grows. */
  readonly elasticPressure: PressureDifference
  /** Pure delay, s: the way of the sound along the line. */
  readonly delay?: Duration
  /** Time constant of a first-order lag, s: the filling of the line. */
  readonly timeConstant?: Duration
  readonly breathingFrequency: Frequency
}

/** What a lagging channel makes of the work per litre of a sinusoidal breath. */
export interface LagError {
  /** Phase between the channels, rad. */
  readonly phase: number
  readonly trueWorkPerLitre: EnergyPerVolume
  readonly measuredWorkPerLitre: EnergyPerVolume
  /** Measured over true, minus 1. */
  readonly relativeError: number
}

/**
 * How wrong the work per litre is when the pressure comes late: part of the elastic swing is read as resistance, with its sign reversed.
 *
 * @param channel - pressures, delay, time constant, breathing frequency
 * @returns phase, true and measured work per litre of a sinusoid
 * @throws LitrebarError `outside-validity` for a phase above 0.5 rad; `range`
 * @source litrebar-derivation
 * @example
 * const late = lagError({ resistivePressure: difference(1, kilopascal), elasticPressure: difference(0.5, kilopascal), delay: measure(30, millisecond), breathingFrequency: measure(25, perMinute) })
 * late.relativeError.toFixed(3) // => '-0.042'
 */
export function lagError(channel: LaggingChannel): LagError {
  requireKeys('channel', channel, {
    resistivePressure: true,
    elasticPressure: true,
    delay: false,
    timeConstant: false,
    breathingFrequency: true,
  })
  const { resistivePressure, elasticPressure, breathingFrequency } = channel
  requireWithin('channel.resistivePressure', resistivePressure, { ...anyPressure, above: 0 })
  requireWithin('channel.elasticPressure', elasticPressure, anyPressure)
  const { phase, gain } = lagOf(channel, breathingFrequency)
  const trueWork = (Math.PI / 2) * resistivePressure
  const measured = (Math.PI / 2) * gain * (resistivePressure * Math.cos(phase) - elasticPressure * Math.sin(phase))
  return {
    phase,
    trueWorkPerLitre: trueWork as EnergyPerVolume,
    measuredWorkPerLitre: measured as EnergyPerVolume,
    relativeError: measured / trueWork - 1,
  }
}

/** Phase and gain of a lag at a breathing frequency; refuses a phase beyond 0.5 rad. */
export function lagOf(
  lag: { readonly delay?: Duration; readonly timeConstant?: Duration },
  breathingFrequency: Frequency,
): { readonly phase: number; readonly gain: number } {
  const { delay = 0, timeConstant = 0 } = lag
  requireWithin('delay', delay, anyTime)
  requireWithin('timeConstant', timeConstant, anyTime)
  requireWithin('breathingFrequency', breathingFrequency, frequency)
  const angular = 2 * Math.PI * breathingFrequency
  const turned = angular * timeConstant
  const phase = angular * delay + Math.atan(turned)
  requireWithin('phase between the channels', phase, largestPhase)
  return { phase, gain: 1 / Math.sqrt(1 + turned * turned) }
}

/** What an even sampling of a sinusoid loses. */
export interface SamplingLoss {
  /** Work of the polygon over the true work. */
  readonly workFactor: number
  /** Largest sample over the true peak, at worst. */
  readonly peakFactor: number
}

/**
 * What is lost by sampling a sinusoidal breath at so many even points: the polygon lies inside the ellipse, and the peak between two samples.
 *
 * @param samplesPerBreath - at least 3
 * @returns factors of work and peak, below 1
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * samplingLoss(50).workFactor.toFixed(5) // => '0.99737'
 */
export function samplingLoss(samplesPerBreath: number): SamplingLoss {
  requireWithin('samplesPerBreath', samplesPerBreath, { atLeast: 3, unit: one, hint: 'Two points make no loop.' })
  const step = (2 * Math.PI) / samplesPerBreath
  return { workFactor: Math.sin(step) / step, peakFactor: Math.cos(step / 2) }
}

/** What makes a measured work per litre uncertain. Standard uncertainties. */
export interface WorkUncertaintyInput {
  readonly workOfBreathingPerLitre: EnergyPerVolume
  /** Of the pressure gain, relative. That of the volume gain cancels. */
  readonly pressureGain: number
  /** Noise of a single pressure sample, Pa. */
  readonly pressureNoise: PressureDifference
  readonly samplesPerBreath: number
  /** Standard deviation of the breaths about their mean, Pa, and how many there are. It holds the noise as well: state noise 0 with it. */
  readonly breaths?: { readonly spread: EnergyPerVolume; readonly count: number }
}

/** The parts of the standard uncertainty of a work per litre, Pa. */
export interface WorkUncertainty {
  readonly noise: EnergyPerVolume
  readonly gain: EnergyPerVolume
  readonly breaths: EnergyPerVolume
  readonly combined: EnergyPerVolume
}

/**
 * Standard uncertainty of a work per litre from the pressure gain, independent noise of even samples, and the spread of the breaths.
 *
 * @param input - the work and what is known of each part; at least 20 samples per breath
 * @returns the parts and their combination
 * @throws LitrebarError `range`
 * @source litrebar-derivation
 * @example
 * const parts = workUncertainty({ workOfBreathingPerLitre: difference(1.5, joulePerLitre), pressureGain: 0.005, pressureNoise: difference(0.05, kilopascal), samplesPerBreath: 500 })
 * inUnit(parts.combined, joulePerLitre).toFixed(4) // => '0.0090'
 */
export function workUncertainty(input: WorkUncertaintyInput): WorkUncertainty {
  requireKeys('input', input, {
    workOfBreathingPerLitre: true,
    pressureGain: true,
    pressureNoise: true,
    samplesPerBreath: true,
    breaths: false,
  })
  const { workOfBreathingPerLitre, pressureGain, pressureNoise, samplesPerBreath, breaths } = input
  requireWithin('input.workOfBreathingPerLitre', workOfBreathingPerLitre, {
    unit: joulePerLitre,
    hint: 'State it in J/L.',
  })
  requireWithin('input.pressureGain', pressureGain, { atLeast: 0, atMost: 1, unit: one, hint: 'Give 0.5 % as 0.005.' })
  requireWithin('input.pressureNoise', pressureNoise, {
    atLeast: 0,
    unit: kilopascal,
    hint: 'State a standard deviation.',
  })
  requireWithin('input.samplesPerBreath', samplesPerBreath, { atLeast: 20, unit: one, hint: 'Sample more often.' })
  if (breaths !== undefined) {
    requireKeys('input.breaths', breaths, { spread: true, count: true })
    requireWithin('input.breaths.spread', breaths.spread, {
      atLeast: 0,
      unit: joulePerLitre,
      hint: 'State a standard deviation.',
    })
    requireWithin('input.breaths.count', breaths.count, { atLeast: 1, unit: one, hint: 'Count the breaths.' })
  }
  const gain = Math.abs(workOfBreathingPerLitre) * pressureGain
  const noise = (pressureNoise * Math.PI) / Math.sqrt(2 * samplesPerBreath)
  const spread = breaths === undefined ? 0 : breaths.spread / Math.sqrt(breaths.count)
  return {
    noise: noise as EnergyPerVolume,
    gain: gain as EnergyPerVolume,
    breaths: spread as EnergyPerVolume,
    combined: Math.hypot(noise, gain, spread) as EnergyPerVolume,
  }
}
