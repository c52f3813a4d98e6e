import { LitrebarError } from '../../errors/index.ts'
import type { Energy, PressureDifference, Volume } from '../../units/index.ts'
import type { BreathingAnalysis } from '../log/analysed-breathing.ts'
import type { AveragedHalf } from '../log/averaged-loop.ts'
import { breathingAnalysis } from '../log/breathing-analysis.ts'
import type { LogColumn } from '../log/column.ts'
import type { BreathingLoop, HalfBreath, WorkOfBreathing } from './breathing-loop.ts'
import { breathsIn } from './breaths-in.ts'
import type { LoopFinding } from './loop-finding.ts'
import { type LoopOptions, requireLoop, requireVolumeBreathed } from './work-of-breathing.ts'

// Fewer show no turns.
const fewestRowsPerBreath = 8

/**
 * External work of breathing of a record of several breaths without their time: cut into whole ones, its drift taken off over the rows
 * as if they were even in time, and the mean breath given. What was made of it is a finding. With the time at hand, `breathingAnalysis`
 * does better and says how sure it is.
 *
 * @param loop - `volume` m³, rising on inhalation; `pressure` Pa relative to the reference; at least eight points in each breath
 * @param options - the pressure that counts as zero for the split
 * @returns as `workOfBreathing`, of the mean breath
 * @throws LitrebarError `range` for a value that is not finite; `input` for columns of different lengths, no volume breathed, no whole breath, too few
 *   points in each, or an unknown key
 * @source litrebar-derivation
 * @example
 * const angle = Array.from({ length: 600 }, (_, row) => row / 20)
 * const volume = angle.map((a) => 0.001 * (1 - Math.cos(a)))
 * const pressure = angle.map((a) => -500 * Math.sin(a))
 * const mean = meanWorkOfBreathing({ volume, pressure })
 * mean.breaths // => 4
 * inUnit(mean.workOfBreathingPerLitre, joulePerLitre).toFixed(3) // => '0.785'
 */
export function meanWorkOfBreathing(loop: BreathingLoop, options: LoopOptions = {}): WorkOfBreathing {
  const { volume, pressure, zero } = requireLoop(loop, options)
  const { lowest, highest } = rangeOf(volume)
  requireVolumeBreathed(highest - lowest, lowest)
  const breaths = Math.max(1, breathsIn(volume, lowest, highest - lowest))
  requireTurns(volume.length, breaths)
  const time = Float64Array.from(volume, (_, row) => row)
  const stated = { zero: zero as PressureDifference, pressureGainUncertainty: 0 }
  const analysis = breathingAnalysis({ time, volume, pressure }, stated)
  const { summary, workOfBreathingPerLitre, averagedLoop } = analysis
  const tidalVolume = summary.tidalVolume.mean
  const last = volume.length - 1
  return {
    workOfBreathing: (workOfBreathingPerLitre.value * tidalVolume) as Energy,
    workOfBreathingPerLitre: workOfBreathingPerLitre.value,
    tidalVolume,
    breaths: analysis.breaths.length,
    inhalation: meanHalf(analysis.inhalation, tidalVolume, {
      workPerLitre: summary.inhalationPerLitre.mean,
      peakPressure: summary.inhalationPressure.mean,
      peakAssistPressure: summary.assistPressureOnInhalation.mean,
    }),
    exhalation: meanHalf(analysis.exhalation, tidalVolume, {
      workPerLitre: summary.exhalationPerLitre.mean,
      peakPressure: summary.exhalationPressure.mean,
      peakAssistPressure: Math.min(...averagedLoop.exhalationPressurePascal) as PressureDifference,
    }),
    crossings: analysis.crossings,
    grossWork: (analysis.grossWorkPerLitre * tidalVolume) as Energy,
    closingGap: {
      volume: ((volume[0] as number) - (volume[last] as number)) as Volume,
      pressure: ((pressure[0] as number) - (pressure[last] as number)) as PressureDifference,
    },
    findings: findingsOf(analysis),
  }
}

function rangeOf(values: LogColumn): { readonly lowest: number; readonly highest: number } {
  let lowest = Infinity
  let highest = -Infinity
  for (let row = 0; row < values.length; row++) {
    lowest = Math.min(lowest, values[row] as number)
    highest = Math.max(highest, values[row] as number)
  }
  return { lowest, highest }
}

function requireTurns(points: number, breaths: number): void {
  if (points >= fewestRowsPerBreath * breaths) return
  throw new LitrebarError({
    code: 'input',
    argument: 'loop.volume',
    value: `${breaths} breaths in ${points} points`,
    expected: `one breath, or at least ${fewestRowsPerBreath} points in each`,
    hint: 'Give the points of one breath.',
  })
}

function meanHalf(
  averaged: AveragedHalf,
  tidalVolume: number,
  half: Pick<HalfBreath, 'workPerLitre' | 'peakPressure' | 'peakAssistPressure'>,
): HalfBreath {
  // On the averaged loop, noise does not make an assist.
  const assist = averaged.workOfAssistPerLitre
  return {
    ...half,
    work: (half.workPerLitre * tidalVolume) as Energy,
    workPerLitre: half.workPerLitre,
    workOfDiver: ((half.workPerLitre + assist) * tidalVolume) as Energy,
    workOfAssist: (assist * tidalVolume) as Energy,
  }
}

/** The findings that hold without a time, and what was made of the record. */
function findingsOf(analysis: BreathingAnalysis): readonly LoopFinding[] {
  const { breaths, removed, findings, workOfBreathingPerLitre: work } = analysis
  const ofTime: readonly LoopFinding['code'][] = [
    'delay-not-stated',
    'unlikely-rate',
    'drift-removed',
    'volume-drift-removed',
  ]
  const text = [
    `The record holds ${breaths.length} whole breaths: the figures are of their mean, ± ${figure(work.standardUncertainty / 1000)} J/L by their spread.`,
    `A drift of ${figure(removed.pressure.change)} Pa and ${figure(removed.volume.change * 1000)} L over the record was taken off, its rows taken as even in time.`,
  ].join(' ')
  return [{ code: 'several-breaths', text }, ...findings.filter(({ code }) => !ofTime.includes(code))]
}

function figure(value: number): string {
  return String(Number(value.toPrecision(3)))
}
