import { LitrebarError, requireKeys, requireList } from '../../errors/index.ts'
import { type Mixture, requireMixture } from '../../gas-law/mixture/mixture.ts'
import {
  type AbsolutePressure,
  type Accepted,
  bar,
  celsius,
  type Duration,
  type Fraction,
  hour,
  type InternalVolume,
  kelvin,
  litre,
  one,
  type PressureDifference,
  requireWithin,
  second,
  type Temperature,
  type TemperatureDifference,
} from '../../units/index.ts'
import { first, last, type Profile, requireProfile } from '../use/profile.ts'

/** A moment of a logged cylinder pressure. */
export interface TraceReading {
  /** On the clock of the profile. */
  readonly time: Duration
  readonly pressure: AbsolutePressure
}

/** The log of one cylinder on a dive, and what is known of it. */
export interface PressureTrace {
  readonly internalVolume: InternalVolume
  readonly mixture: Mixture
  /** In order of time, within the profile. */
  readonly readings: readonly TraceReading[]
  readonly profile: Profile
  /** Of the gas inside at the first reading: warmer than the water after filling or a car. */
  readonly startTemperature: Temperature
  /** Water around the cylinder. */
  readonly surroundings: Temperature
  /** Time in which a difference of temperature between gas and water falls to 37 %. */
  readonly timeConstant: Duration
  readonly breathingGasTemperature: Temperature
  readonly uncertainty: TraceUncertainty
}

/** Standard uncertainties of what a rate from a log rests on. */
export interface TraceUncertainty {
  /** Of one reading: noise and step of the scale. A common offset nearly cancels. */
  readonly reading: PressureDifference
  readonly startTemperature: TemperatureDifference
  /** As fractions. */
  readonly relativeTimeConstant: Fraction | number
  readonly relativeVolume: Fraction | number
}

const volumeRange: Accepted = { above: 0, atMost: 1000, unit: litre, hint: 'Give the volume inside the cylinder.' }
const pressureRange: Accepted = {
  above: 0,
  atMost: 500,
  unit: bar,
  hint: 'Give absolute pressures: gauge and ambient.',
}
const timeRange: Accepted = { atLeast: 0, atMost: 1e8, unit: second, hint: 'Count time as in the profile.' }
const gasRange: Accepted = { atLeast: -20, atMost: 80, unit: celsius, hint: 'Check the temperature scale.' }
const constantRange: Accepted = {
  above: 0,
  atMost: 24,
  unit: hour,
  hint: 'Minutes in water, longer in air: measure it.',
}
const readingRange: Accepted = { above: 0, atMost: 50, unit: bar, hint: 'At least the step of the scale over √12.' }
const kelvinRange: Accepted = { atLeast: 0, atMost: 50, unit: kelvin, hint: 'Give a standard uncertainty.' }
const relative: Accepted = { atLeast: 0, below: 1, unit: one, hint: 'Give ten per cent as 0.1.' }

const leastReadings = 18

/** Refuses a log whose readings, times or statements make no sense. */
export function requireTrace(trace: PressureTrace): void {
  requireKeys('trace', trace, {
    internalVolume: true,
    mixture: true,
    readings: true,
    profile: true,
    startTemperature: true,
    surroundings: true,
    timeConstant: true,
    breathingGasTemperature: true,
    uncertainty: true,
  })
  const { readings, profile, uncertainty } = trace
  requireWithin('trace.internalVolume', trace.internalVolume, volumeRange)
  requireMixture('trace.mixture', trace.mixture)
  requireList('trace.profile', profile, 2, 'Give the start and the end at least.')
  profile.forEach((point, i) => {
    requireKeys(`trace.profile[${i}]`, point, { time: true, ambientPressure: true })
  })
  requireProfile('trace.profile', profile)
  requireWithin('trace.startTemperature', trace.startTemperature, gasRange)
  requireWithin('trace.surroundings', trace.surroundings, gasRange)
  requireWithin('trace.timeConstant', trace.timeConstant, constantRange)
  requireWithin('trace.breathingGasTemperature', trace.breathingGasTemperature, gasRange)
  requireKeys('trace.uncertainty', uncertainty, {
    reading: true,
    startTemperature: true,
    relativeTimeConstant: true,
    relativeVolume: true,
  })
  requireWithin('trace.uncertainty.reading', uncertainty.reading, readingRange)
  requireWithin('trace.uncertainty.startTemperature', uncertainty.startTemperature, kelvinRange)
  requireWithin('trace.uncertainty.relativeTimeConstant', uncertainty.relativeTimeConstant, relative)
  requireWithin('trace.uncertainty.relativeVolume', uncertainty.relativeVolume, relative)
  requireList(
    'trace.readings',
    readings,
    leastReadings,
    'A rate with its spread needs three readings for each sixth of the log.',
  )
  readings.forEach((reading, i) => {
    requireKeys(`trace.readings[${i}]`, reading, { time: true, pressure: true })
    const { time, pressure } = reading
    requireWithin(`trace.readings[${i}].time`, time, timeRange)
    requireWithin(`trace.readings[${i}].pressure`, pressure, pressureRange)
    const earliest = readings[i - 1]?.time ?? first(profile).time
    const isLater = i === 0 ? time >= earliest : time > earliest
    if (isLater && time <= last(profile).time) return
    throw new LitrebarError({
      code: 'input',
      argument: `trace.readings[${i}].time`,
      value: `${time} s`,
      expected: `later than ${earliest} s, and within the profile, which ends at ${last(profile).time} s`,
      hint: 'Sort the readings, bring both clocks together, and cut the log to the dive.',
    })
  })
}
