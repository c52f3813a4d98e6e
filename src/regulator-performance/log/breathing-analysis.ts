import { LitrebarError } from '../../errors/index.ts'
import {
  type Accepted,
  type Duration,
  type EnergyPerVolume,
  type Frequency,
  kilopascal,
  one,
  type PressureDifference,
  requireWithin,
  second,
  type Volume,
  type VolumeFlow,
} from '../../units/index.ts'
import type { AnalysisOptions, BreathingAnalysis } from './analysed-breathing.ts'
import { averagedCrossings, averagedHalf, averagedLoop, middleLine, withZero } from './averaged-loop.ts'
import { type BreathRows, wholeBreaths } from './breath-rows.ts'
import { measureBreath, rowOf, summaryOf } from './breath-table.ts'
import { type BreathingLog, cleanLog } from './breathing-log.ts'
import { lagOf } from './channel-error.ts'
import { type RemovedDrift, removeDrift } from './drift-removal.ts'
import { analysisFindings } from './judge-log.ts'
import { noiseGain, withoutLag } from './lag-correction.ts'
import { mean } from './mean.ts'
import { measuredWork } from './measured-work.ts'
import { signalNoise } from './signal-noise.ts'
import { turningPoints } from './turning-points.ts'

const gainUncertainty: Accepted = { atLeast: 0, atMost: 0.2, unit: one, hint: 'Give half a per cent as 0.005.' }
const lagUncertainty: Accepted = { atLeast: 0, atMost: 1, unit: second, hint: 'State it in seconds.' }
const zeroRange: Accepted = {
  atLeast: -20,
  atMost: 20,
  unit: kilopascal,
  hint: 'State the pressure that counts as zero.',
}

/**
 * Work of breathing from the log of a breathing machine or a diver: breaths found, drift and lag taken off and reported, each breath
 * measured, the mean with its uncertainty, and what the averaged loop says of resistance, elastance and assist.
 *
 * Work is −∮ p dV with a correction for the curve between the samples; halves and peaks depend on the zero that is chosen. A lag that
 * is not stated cannot be found in the record: resistance and elastance would trade places.
 *
 * @param log - columns in SI (`siColumn`), at least one whole breath from end exhalation to end exhalation; missing values as NaN
 * @param options - zero, uncertainty of the pressure gain, lag of the pressure channel
 * @returns table of breaths, mean work with expanded uncertainty (95 %), averaged loop, what was removed, findings
 * @throws LitrebarError `input` for columns that do not fit, a time that does not rise, or no whole breath; `outside-validity` for a
 *   lag beyond 0.5 rad of phase; `range`
 * @source litrebar-derivation; gum-2008, 4.2 and G.4 (uncertainty)
 * @example
 * const { timeSecond, volumeCubicMetre, flowCubicMetrePerSecond } = breathingSeries({ tidalVolume: measure(2.5, litre), breathingFrequency: measure(25, perMinute), waveform: { shape: 'sinusoid' } }, { breaths: 5, samplesPerBreath: 100 })
 * const pressure = flowCubicMetrePerSecond.map((flow) => -2e5 * flow)
 * const log = { time: timeSecond, volume: volumeCubicMetre, pressure }
 * const analysis = breathingAnalysis(log, { zero: 'as recorded', pressureGainUncertainty: 0.005 })
 * inUnit(analysis.workOfBreathingPerLitre.value, joulePerLitre).toFixed(4) // => '1.0281'
 */
export function breathingAnalysis(log: BreathingLog, options: AnalysisOptions): BreathingAnalysis {
  requireOptions(options)
  const raw = cleanLog(log)
  const noise = {
    pressure: signalNoise(raw.pressure, raw.time) as PressureDifference,
    volume: signalNoise(raw.volume, raw.time) as Volume,
  }
  const { log: clean, turns } = withoutLag(raw, turningPoints(raw, noise.volume), options.lag ?? {})
  const found = wholeBreaths(turns, clean.breaks)
  requireBreaths(found.breaths.length, found.spoilt)
  const frequency = frequencyOf(found.breaths)
  if (options.lag !== undefined) lagOf(options.lag, frequency)
  const { breaths, pressure, volume } = removeDrift(clean, found.breaths, options.drift ?? 'removed')
  const peakNoise = noise.pressure * noiseGain(options.lag, clean.time)
  const measured = breaths.map((breath) => measureBreath(clean, breath, peakNoise))
  const tidalVolume = mean(measured.map((one) => one.tidalVolume))
  const recorded = averagedLoop(clean, breaths, tidalVolume)
  const { endExhalationPressure, apparentElastance } = middleLine(recorded)
  const zero = zeroPressure(options.zero, endExhalationPressure)
  const loop = withZero(recorded, zero)
  const rows = measured.map((one) => rowOf(one, zero))
  const samplesPerBreath = samplesOf(breaths)
  const work = measuredWork(measured, options, noise, samplesPerBreath)
  const noiseOfMean = (2 * noise.pressure) / Math.sqrt(samplesPerBreath * breaths.length)
  const analysis = {
    workOfBreathingPerLitre: work,
    breaths: rows,
    summary: summaryOf(rows),
    breathingFrequency: frequency,
    respiratoryMinuteVolume: (tidalVolume * frequency) as VolumeFlow,
    inhalation: averagedHalf(loop, 'inhalation', apparentElastance),
    exhalation: averagedHalf(loop, 'exhalation', apparentElastance),
    averagedLoop: loop,
    ...averagedCrossings(loop, noiseOfMean),
    apparentElastance,
    endExhalationPressure,
    removed: {
      pressure: pressure as RemovedDrift & { change: PressureDifference; during: Duration },
      volume: volume as RemovedDrift & { change: Volume; during: Duration },
      zeroPressure: zero as PressureDifference,
      curvaturePerLitre: mean(measured.map((one) => one.curvaturePerLitre)) as EnergyPerVolume,
    },
    changePerSecondOfDelay: -mean(measured.map((one) => one.perDelay)),
    noise,
    samplesPerBreath,
  }
  const facts = { rowsLeftOut: raw.rowsLeftOut, gaps: raw.breaks.length, spoilt: found.spoilt, options }
  return { ...analysis, findings: analysisFindings(analysis, facts) }
}

function zeroPressure(zero: AnalysisOptions['zero'], endExhalationPressure: number): number {
  if (zero === 'as recorded') return 0
  return zero === 'end exhalation' ? endExhalationPressure : zero
}

function frequencyOf(breaths: readonly BreathRows[]): Frequency {
  return (1 / mean(breaths.map(({ start, end }) => end.time - start.time))) as Frequency
}

function samplesOf(breaths: readonly BreathRows[]): number {
  return mean(breaths.map(({ start, end }) => end.row - start.row))
}

function requireOptions({ zero, pressureGainUncertainty, lag }: AnalysisOptions): void {
  requireWithin('options.pressureGainUncertainty', pressureGainUncertainty, gainUncertainty)
  if (typeof zero === 'number') requireWithin('options.zero', zero, zeroRange)
  if (lag?.standardUncertainty !== undefined) {
    requireWithin('options.lag.standardUncertainty', lag.standardUncertainty, lagUncertainty)
  }
}

function requireBreaths(whole: number, spoilt: number): void {
  if (whole > 0) return
  throw new LitrebarError({
    code: 'input',
    argument: 'log',
    value: spoilt > 0 ? `no whole breath, ${spoilt} spoilt by gaps` : 'no whole breath',
    expected: 'at least one breath from end exhalation to end exhalation',
    hint: 'Give a longer record. A single closed loop without time goes to `workOfBreathing`; a volume that is constant or only rises is no breath.',
  })
}
