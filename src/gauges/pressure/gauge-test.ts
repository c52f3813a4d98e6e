import { LitrebarError, requireKeys } from '../../errors/index.ts'
import { type Assessment, type Reason, verdictFrom } from '../../references/assessment.ts'
import { type GaugePressure, type PressureDifference, requireWithin, type Temperature } from '../../units/index.ts'
import { gaugeReading } from '../accepted.ts'
import { gaugeError, type PressureGauge, requireGauge } from './gauge-error.ts'
import { fewestTestPoints, gaugeClasses } from './gauge-kind.table.ts'

/** One pressure of a test, set by a reference, and what the gauge showed on the way up and on the way down. */
export interface TestPoint {
  readonly reference: GaugePressure
  readonly rising: GaugePressure
  readonly falling?: GaugePressure
}

/** A test of a gauge against a reference. */
export interface GaugeTest {
  readonly gauge: PressureGauge
  readonly points: readonly TestPoint[]
  /** Of the gauge during the test. */
  readonly temperature: Temperature
}

/** What a test found. */
export interface GaugeTestResult extends Assessment<PressureDifference> {
  /** Largest difference between rising and falling; left out where none was read. */
  readonly hysteresis?: PressureDifference
}

/**
 * A test of a pressure gauge judged by its class: the largest error on the way up and down, and the hysteresis between them.
 * The class holds at 20 °C: an error that only the allowance for temperature could explain leaves the verdict open. So do
 * too few points, a missing way down, and hysteresis, whose limit is known from memory only.
 *
 * @param test - gauge; points with reference and readings, gauge, Pa; temperature of the gauge, K
 * @returns an assessment of the largest error against the class, Pa, with the hysteresis
 * @throws LitrebarError `range`, naming the field; `input` for no point or an unknown key
 * @source en-837-1, table 11 and clause on testing (its limit of hysteresis from memory)
 * @example
 * const points = [0, 5, 10, 15, 20].map((p) => ({ reference: gauge(p, bar), rising: gauge(p, bar), falling: gauge(p + 0.1, bar) }))
 * const dial = { span: difference(25, bar), accuracyClass: 0.016 }
 * assessGaugeTest({ gauge: dial, points, temperature: temperatureOf(20, celsius) }).verdict // => 'within'
 */
export function assessGaugeTest(test: GaugeTest): GaugeTestResult {
  requireKeys('test', test, { gauge: true, points: true, temperature: true })
  const { gauge, points } = test
  requireGauge('test.gauge', gauge)
  requirePoints(points)
  const { classError, largestError } = gaugeError(gauge, test.temperature)
  const value = Math.max(...points.map(errorOf))
  const returns = points.filter((point) => point.falling !== undefined)
  const hysteresis = Math.max(...returns.map(({ rising, falling }) => Math.abs(rising - (falling ?? rising))))
  const isHysteresisKnown = returns.length > 0
  // the last bit of a reading in bar must not decide
  const limit = classError * (1 + 1e-9)
  const against: Reason[] = []
  const doubts: Reason[] = []
  if (value > largestError * (1 + 1e-9))
    against.push({ code: 'error', text: 'A reading is off by more than the class allows.', source: 'en-837-1' })
  else if (value > limit)
    doubts.push({
      code: 'temperature',
      text: 'The class is exceeded, and the test was not made at 20 °C.',
      source: 'en-837-1',
    })
  const classPercent = gauge.accuracyClass * 100
  if (!gaugeClasses.some((known) => Math.abs(known - classPercent) < 1e-9))
    doubts.push({ code: 'class', text: 'The standard has no such class.', source: 'en-837-1' })
  const fewest = fewestTestPoints.find(({ upToClassPercent }) => classPercent <= upToClassPercent + 1e-9)?.points ?? 5
  if (points.length < fewest)
    doubts.push({ code: 'few-points', text: `This class is tested at ${fewest} points at least.`, source: 'en-837-1' })
  if (returns.length < points.length)
    doubts.push({ code: 'one-way', text: 'Not every point was read on the way down: hysteresis is not known.' })
  if (isHysteresisKnown && hysteresis > limit)
    doubts.push({ code: 'hysteresis', text: 'Rising and falling differ by more than the class.', source: 'memory' })
  return {
    value: value as PressureDifference,
    limit: classError,
    margin: classError - value,
    ...(isHysteresisKnown ? { hysteresis: hysteresis as PressureDifference } : {}),
    ...verdictFrom({ against, doubts }),
    cautions: ['instrument'],
    sources: ['en-837-1', 'memory'],
  }
}

function errorOf({ reference, rising, falling }: TestPoint): number {
  return Math.max(Math.abs(rising - reference), Math.abs((falling ?? rising) - reference))
}

/** Refuses test points that are missing or out of range. */
export function requirePoints(points: readonly TestPoint[]): void {
  if (!Array.isArray(points) || points.length === 0) {
    throw new LitrebarError({
      code: 'input',
      argument: 'test.points',
      value: 'none',
      expected: 'at least one point',
      hint: 'Give the pressures of the reference with what the gauge showed.',
    })
  }
  points.forEach((point: TestPoint, i) => {
    const argument = `test.points[${i}]`
    requireKeys(argument, point, { reference: true, rising: true, falling: false })
    requireWithin(`${argument}.reference`, point.reference, gaugeReading)
    requireWithin(`${argument}.rising`, point.rising, gaugeReading)
    if (point.falling !== undefined) requireWithin(`${argument}.falling`, point.falling, gaugeReading)
  })
}
