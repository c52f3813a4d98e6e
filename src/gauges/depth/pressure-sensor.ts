import type { DepthConvention } from '../../environment/index.ts'
import { requireKeys } from '../../errors/index.ts'
import { quantizationStep } from '../../uncertainty/index.ts'
import {
  type Accepted,
  type Duration,
  day,
  kelvin,
  type Length,
  one,
  type PressureDifference,
  percent,
  requireWithin,
  type TemperatureDifference,
} from '../../units/index.ts'
import { span } from '../accepted.ts'
import { pressurePerMetre } from './depth-gauge.ts'

/** An electronic pressure sensor by its data sheet. Every figure is an input: sensors differ, and diving ones are seldom the better. */
export interface PressureSensor {
  readonly range: PressureDifference
  /** Of its converter. */
  readonly bits: number
  /** Largest error at the reference temperature, a fraction of the range. */
  readonly accuracy: number
  /** Largest change per kelvin, a fraction of the range. */
  readonly temperatureCoefficient: number
  /** Largest drift per year, a fraction of the range. */
  readonly driftPerYear: number
}

/** The use of a sensor since it was last adjusted. */
export interface SensorUse {
  /** Away from the temperature it was adjusted at. */
  readonly temperatureDifference: TemperatureDifference
  readonly age: Duration
  /** Of the depth it shows. */
  readonly convention: DepthConvention
}

/** Standard uncertainty of a sensor, part by part. */
export interface SensorBudget {
  /** The least step that its converter tells. */
  readonly step: PressureDifference
  readonly resolution: PressureDifference
  readonly accuracy: PressureDifference
  readonly temperature: PressureDifference
  readonly drift: PressureDifference
  readonly standardUncertainty: PressureDifference
  /** Twice that. */
  readonly expandedUncertainty: PressureDifference
  readonly depthUncertainty: Length
}

const share: Accepted = {
  atLeast: 0,
  atMost: 100,
  unit: percent,
  hint: 'Give a fraction of the range: 0.5 % is 0.005.',
}
const change: Accepted = { atLeast: -200, atMost: 200, unit: kelvin, hint: 'Give a difference of temperatures.' }
const age: Accepted = { atLeast: 0, atMost: 50 * 365.25, unit: day, hint: 'Give the time since the last adjustment.' }
const bits: Accepted = { atLeast: 1, atMost: 64, unit: one, hint: 'Count the bits of the converter.' }
const secondsPerYear = 365.25 * 86_400

/**
 * Uncertainty of an electronic depth or pressure sensor from its data sheet: steps of the converter, accuracy, temperature and drift, each
 * rectangular and independent. Noise is not in it, and a sensor that is zeroed at every dive loses most of its drift.
 *
 * @param sensor - range, Pa; bits, 1 to 64; accuracy, temperature coefficient and drift, fractions of the range
 * @param use - temperature difference, K; age, s; convention of the depth shown
 * @returns the parts and the whole, Pa, and in metres of the display
 * @throws LitrebarError `range`, naming the field; `input` for an unknown key
 * @source gum-2008, 4.3.7 and 5.1.2
 * @example
 * const sensor = { range: difference(30, bar), bits: 16, accuracy: 0.001, temperatureCoefficient: 0.0001, driftPerYear: 0.001 }
 * const use = {
 *   temperatureDifference: difference(20, kelvin),
 *   age: measure(2 * 365.25, day),
 *   convention: depthConventions.depthGauge,
 * }
 * sensorBudget(sensor, use).depthUncertainty.toFixed(2) // => '0.52'
 */
export function sensorBudget(sensor: PressureSensor, use: SensorUse): SensorBudget {
  requireKeys('sensor', sensor, {
    range: true,
    bits: true,
    accuracy: true,
    temperatureCoefficient: true,
    driftPerYear: true,
  })
  requireKeys('use', use, { temperatureDifference: true, age: true, convention: true })
  requireWithin('sensor.range', sensor.range, span)
  requireWithin('sensor.bits', sensor.bits, bits)
  for (const name of ['accuracy', 'temperatureCoefficient', 'driftPerYear'] as const)
    requireWithin(`sensor.${name}`, sensor[name], share)
  requireWithin('use.temperatureDifference', use.temperatureDifference, change)
  requireWithin('use.age', use.age, age)
  const step = quantizationStep(sensor.range, sensor.bits)
  const rectangular = (halfWidth: number): number => halfWidth / Math.sqrt(3)
  const resolution = rectangular(step / 2)
  const accuracy = rectangular(sensor.accuracy * sensor.range)
  const temperature = rectangular(sensor.temperatureCoefficient * sensor.range * Math.abs(use.temperatureDifference))
  const drift = rectangular((sensor.driftPerYear * sensor.range * use.age) / secondsPerYear)
  const standardUncertainty = Math.hypot(resolution, accuracy, temperature, drift)
  return {
    step,
    resolution: resolution as PressureDifference,
    accuracy: accuracy as PressureDifference,
    temperature: temperature as PressureDifference,
    drift: drift as PressureDifference,
    standardUncertainty: standardUncertainty as PressureDifference,
    expandedUncertainty: (2 * standardUncertainty) as PressureDifference,
    depthUncertainty: (standardUncertainty / pressurePerMetre(use.convention)) as Length,
  }
}
