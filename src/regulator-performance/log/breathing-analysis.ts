import { LitrebarError, requireKeys, requireWord } from '../../errors/index.ts'
import {
  type Accepted,
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
import { type BreathRow, measureBreath, rowOf, summaryOf } from './breath-table.ts'
import { type BreathingLog, type CleanLog, cleanLog } from './breathing-log.ts'
import { anyTime, lagOf } from './channel-error.ts'
import { removeDrift } from './drift-removal.ts'
import { channelFaults } from './judge-channels.ts'
import { analysisFindings } from './judge-log.ts'
import { noiseGain, withoutLag } from './lag-correction.ts'
import { mean } from './mean.ts'
import { measuredWork } from './measured-work.ts'
import { meanWithin, pausesAt } from './pause.ts'
import { signalNoise } from './signal-noise.ts'
import { type TurningPoint, turningPoints } from './turning-points.ts'

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
    pressure: raw.channels.pressure.noise as PressureDifference,
    volume: (raw.channels.isFlow ? signalNoise(raw.volume, raw.time) : raw.channels.volume.noise) as Volume,
  }
  const faults = channelFaults(raw, restingTurns(raw, noise.volume))
  const { log: clean, turns } = withoutLag(raw, faults.turns, options.lag ?? {})
  const found = wholeBreaths(turns, clean)
  requireBreaths(found.breaths.length, found.spoilt)
  const frequency = frequencyOf(found.breaths)
  if (options.lag !== undefined) lagOf(options.lag, frequency)
  const { breaths, pressure, volume, zeroStep } = removeDrift(clean, found.breaths, options.drift ?? 'removed')
  const peakNoise = noise.pressure * noiseGain(options.lag, clean.time)
  const measured = breaths.map((breath) => measureBreath(clean, breath, peakNoise))
  const tidalVolume = mean(measured.map((one) => one.tidalVolume))
  const recorded = averagedLoop(clean, breaths, tidalVolume)
  const { middleLinePressure, apparentElastance } = middleLine(recorded)
  const endExhalationPressure = pressureAtRest(clean, breaths)
  const zero = zeroPressure(options.zero, endExhalationPressure ?? middleLinePressure, middleLinePressure)
  const loop = withZero(recorded, zero)
  const rows = measured.map((one) => rowOf(one, zero))
  const samplesPerBreath = samplesOf(breaths)
  const work = measuredWork(measured, options, noise, { samplesPerBreath, ...stepsOf(raw) })
  const noiseOfMean = (2 * noise.pressure) / Math.sqrt(samplesPerBreath * breaths.length)
  const analysis = {
    workOfBreathingPerLitre: work,
    totalWorkPerLitre: totalPerLitre(rows),
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
    middleLinePressure,
    removed: {
      pressure: pressure as BreathingAnalysis['removed']['pressure'],
      volume: volume as BreathingAnalysis['removed']['volume'],
      zeroPressure: zero as PressureDifference,
      curvaturePerLitre: mean(measured.map((one) => one.curvaturePerLitre)) as EnergyPerVolume,
    },
    changePerSecondOfDelay: -mean(measured.map((one) => one.perDelay)),
    noise,
    samplesPerBreath,
  }
  const facts = { rowsLeftOut: raw.rowsLeftOut, gaps: raw.breaks.length, spoilt: found.spoilt, zeroStep, options }
  return { ...analysis, findings: [...faults.findings, ...analysisFindings(analysis, facts)] }
}

/** The turns of the volume with the pauses at them. */
function restingTurns(log: CleanLog, noise: number): readonly TurningPoint[] {
  const turns = turningPoints(log, noise)
  const pauses = pausesAt(log, turns, noise)
  return turns.map((turn, index) => {
    const pause = pauses[index]
    return pause === undefined ? turn : { ...turn, pause }
  })
}

/** Mean pressure of the pauses at end exhalation; undefined where fewer than half of the breaths show one. */
function pressureAtRest(log: CleanLog, breaths: readonly BreathRows[]): PressureDifference | undefined {
  const rests = breaths.flatMap(({ start, end }) => {
    const values = [start, end].flatMap(({ pause }) => (pause ? [meanWithin(pause, log.time, log.pressure)] : []))
    return values.filter((value) => value !== undefined).slice(0, 1)
  })
  return rests.length > 0 && rests.length >= breaths.length / 2 ? (mean(rests) as PressureDifference) : undefined
}

function stepsOf({ channels }: CleanLog): { readonly pressureStep: number; readonly volumeStep: number } {
  const { pressure, volume, isFlow } = channels
  return { pressureStep: pressure.quantizationStep, volumeStep: isFlow ? 0 : volume.quantizationStep }
}

function totalPerLitre(rows: readonly BreathRow[]): EnergyPerVolume {
  const work = rows.reduce((sum, row) => sum + row.workOfBreathingPerLitre * row.tidalVolume, 0)
  return (work / rows.reduce((sum, row) => sum + row.tidalVolume, 0)) as EnergyPerVolume
}

function zeroPressure(zero: AnalysisOptions['zero'], atRest: number, middle: number): number {
  if (typeof zero === 'number') return zero
  return { 'as recorded': 0, 'end exhalation': atRest, 'middle line': middle }[zero]
}

function frequencyOf(breaths: readonly BreathRows[]): Frequency {
  return (1 / mean(breaths.map(({ start, end }) => end.time - start.time))) as Frequency
}

function samplesOf(breaths: readonly BreathRows[]): number {
  return mean(breaths.map(({ start, end }) => end.row - start.row))
}

function requireOptions(options: AnalysisOptions): void {
  requireKeys('options', options, { zero: true, pressureGainUncertainty: true, lag: false, drift: false })
  const { zero, pressureGainUncertainty, lag } = options
  if (typeof zero !== 'number') requireWord('options.zero', zero, ['as recorded', 'end exhalation', 'middle line'])
  requireWord('options.drift', options.drift ?? 'removed', ['removed', 'kept'])
  if (lag !== undefined) {
    requireKeys('options.lag', lag, { delay: false, timeConstant: false, standardUncertainty: false })
  }
  requireWithin('options.pressureGainUncertainty', pressureGainUncertainty, gainUncertainty)
  if (typeof zero === 'number') requireWithin('options.zero', zero, zeroRange)
  if (lag?.standardUncertainty !== undefined) {
    requireWithin('options.lag.standardUncertainty', lag.standardUncertainty, lagUncertainty)
  }
  if (lag?.delay !== undefined) requireWithin('options.lag.delay', lag.delay, anyTime)
  if (lag?.timeConstant !== undefined) requireWithin('options.lag.timeConstant', lag.timeConstant, anyTime)
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
