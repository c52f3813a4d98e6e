import { LitrebarError } from '../../errors/index.ts'
import type { Mixture } from '../../gas-law/index.ts'
import type { CautionId, SourceId } from '../../references/index.ts'
import { leastSquares } from '../../uncertainty/least-squares.ts'
import type { Duration, Temperature, VolumeFlow } from '../../units/index.ts'
import { densityTime } from '../use/breathed-dive.ts'
import { type Profile, segmentsOf } from '../use/profile.ts'
import { cooledReadings } from './cooling-cylinder.ts'
import { type PressureTrace, requireTrace } from './pressure-trace.ts'
import { type TraceFinding, traceFindings } from './trace-findings.ts'

/** A rate from a log. */
export interface TracedRate {
  readonly respiratoryMinuteVolume: VolumeFlow
  /** Of the mean rate on this dive: twice it covers about 95 %. It says nothing about the next dive. */
  readonly standardUncertainty: VolumeFlow
  /** What makes it up: the readings, breathing that changes, temperature at the start, time constant, volume of the cylinder. */
  readonly parts: Readonly<
    Record<'readings' | 'variation' | 'startTemperature' | 'timeConstant' | 'volume', VolumeFlow>
  >
  /** Of the gas at the last reading, by the model. */
  readonly endTemperature: Temperature
  /** What the log does not carry. */
  readonly findings: readonly TraceFinding[]
  readonly cautions: readonly CautionId[]
  readonly sources: readonly SourceId[]
}

const blocks = 6

/**
 * Rate of consumption from a logged cylinder pressure, with the cooling of the gas taken out: a straight line by least squares through the amount
 * of gas in the cylinder against what one litre each minute would have taken. The gas settles to the water by one stated time constant, and
 * cools by its own expansion.
 *
 * @param trace - internal volume, m³; mixture; at least 18 readings, absolute, Pa; profile that covers them; temperature of the gas at the first
 *   reading and of the water, K, -20 to 80 °C; time constant, s, up to 24 h; temperature of the gas as it is breathed, K; standard uncertainties
 * @returns the rate with its uncertainty, both m³/s at the pressure of the diver, and what the log does not carry
 * @throws LitrebarError `range` or `input`, naming the reading or field; `input` if no gas was used
 * @source litrebar-derivation; gerg-2008
 * @example
 * const minutes = Array.from({ length: 41 }, (_, i) => i)
 * const traced = tracedRate({
 *   internalVolume: internalVolumeOf(12, litre),
 *   mixture: dryAir,
 *   readings: minutes.map((i) => ({ time: measure(i, minute), pressure: absolute(200 - 3.6 * i, bar) })),
 *   profile: steadyProfile(absolute(3, bar), measure(40, minute)),
 *   startTemperature: temperatureOf(12, celsius),
 *   surroundings: temperatureOf(12, celsius),
 *   timeConstant: measure(1, minute),
 *   breathingGasTemperature: temperatureOf(12, celsius),
 *   uncertainty: {
 *     reading: difference(0.3, bar),
 *     startTemperature: difference(2, kelvin),
 *     relativeTimeConstant: 0.3,
 *     relativeVolume: 0.01,
 *   },
 * })
 * inUnit(traced.respiratoryMinuteVolume, litrePerMinute).toFixed(1) // => '14.0'
 */
export function tracedRate(trace: PressureTrace): TracedRate {
  requireTrace(trace)
  const { readings, profile, mixture, breathingGasTemperature, uncertainty } = trace
  const times = readings.map(({ time }) => time)
  const pressures = readings.map(({ pressure }) => pressure)
  const breathed = breathedBy(profile, times, mixture, breathingGasTemperature)
  const fitted = (change: Partial<PressureTrace>) => {
    const cooled = cooledReadings({ ...trace, ...change }, times, pressures)
    const start = cooled[0]?.amount as number
    const used = cooled.map(({ amount }) => start - amount)
    return { cooled, used, fit: slope(breathed, used) }
  }
  const { cooled, used, fit } = fitted({})
  const rate = fit.coefficients[1] as number
  if (!(rate > 0)) throw noUse(rate)
  const moved = (change: Partial<PressureTrace>): number =>
    Math.abs((fitted(change).fit.coefficients[1] as number) - rate)

  const perPascal = (cooled[0]?.amount as number) / (pressures[0] as number)
  const readingAmount = uncertainty.reading * perPascal
  const readingsPart = readingAmount * spreadOf(fit)
  const sixths = sixthsOf(breathed, used)
  const parts = {
    readings: readingsPart,
    variation: deviation(sixths.map(({ rate: each }) => each)) / Math.sqrt(sixths.length),
    startTemperature: moved({
      startTemperature: (trace.startTemperature + uncertainty.startTemperature) as Temperature,
    }),
    timeConstant: moved({
      timeConstant: (trace.timeConstant * (1 + uncertainty.relativeTimeConstant)) as Duration,
    }),
    volume: rate * uncertainty.relativeVolume,
  }
  return {
    respiratoryMinuteVolume: rate as VolumeFlow,
    standardUncertainty: Math.hypot(...Object.values(parts)) as VolumeFlow,
    parts: parts as unknown as TracedRate['parts'],
    endTemperature: cooled.at(-1)?.temperature as Temperature,
    findings: traceFindings({
      trace,
      times,
      pressures,
      breathed,
      used,
      rate,
      readingAmount,
      readingsPart,
      parts: sixths.map((sixth) => ({ rate: sixth.rate, uncertainty: readingAmount * sixth.spread })),
      temperatures: cooled.map(({ temperature }) => temperature),
    }),
    cautions: ['reserve', 'instrument', 'always'],
    sources: ['litrebar-derivation', 'gerg-2008'],
  }
}

/** Moles that one cubic metre a second would have taken by each moment. */
function breathedBy(profile: Profile, times: readonly number[], mixture: Mixture, temperature: Temperature): number[] {
  let sum = 0
  return times.map((time, i) => {
    const before = times[i - 1]
    if (before !== undefined) {
      for (const segment of segmentsOf(profile, before as Duration, time as Duration)) {
        sum += densityTime({}, mixture, segment, temperature)
      }
    }
    return sum
  })
}

function slope(breathed: readonly number[], used: readonly number[]): ReturnType<typeof leastSquares> {
  return leastSquares(
    breathed.map((x) => [1, x]),
    used,
    'trace.readings',
  )
}

/** Standard uncertainty of the slope for readings of standard uncertainty 1. */
function spreadOf(fit: ReturnType<typeof leastSquares>): number {
  return Math.sqrt((fit.inverse[1] as readonly number[])[1] as number)
}

/** Rate of each sixth of the log. Their spread holds noise and breathing that changes alike. */
function sixthsOf(breathed: readonly number[], used: readonly number[]): { rate: number; spread: number }[] {
  const size = breathed.length / blocks
  return Array.from({ length: blocks }, (_, i) => {
    const from = Math.round(i * size)
    const to = Math.round((i + 1) * size)
    const fit = slope(breathed.slice(from, to), used.slice(from, to))
    return { rate: fit.coefficients[1] as number, spread: spreadOf(fit) }
  })
}

function deviation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1))
}

function noUse(rate: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: 'trace.readings',
    value: `a rate of ${String(Number((rate * 60_000).toPrecision(3)))} L/min`,
    expected: 'less gas at the end than at the start',
    hint: 'Check the temperatures and the time constant, and that the log is that of the cylinder that was breathed.',
  })
}
