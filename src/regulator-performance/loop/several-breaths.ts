import { LitrebarError } from '../../errors/index.ts'
import type { Energy, PressureDifference, Volume } from '../../units/index.ts'
import type { BreathingAnalysis } from '../log/analysed-breathing.ts'
import type { AveragedHalf } from '../log/averaged-loop.ts'
import { breathingAnalysis } from '../log/breathing-analysis.ts'
import type { LogColumn } from '../log/column.ts'
import type { BreathingLoop, HalfBreath, WorkOfBreathing } from './breathing-loop.ts'
import type { LoopFinding } from './loop-finding.ts'

/** How often the volume rises from its lowest to its highest quarter, going round the end of the record. */
export function breathsIn(volume: LogColumn, lowest: number, range: number): number {
  const low = lowest + range / 4
  const high = lowest + (3 * range) / 4
  let wasHigh: boolean | undefined
  let startedHigh: boolean | undefined
  let rises = 0
  for (const v of volume) {
    const isHigh: boolean | undefined = v > high ? true : v < low ? false : wasHigh
    if (isHigh === true && wasHigh === false) rises++
    startedHigh ??= isHigh
    wasHigh = isHigh
  }
  return startedHigh === true && wasHigh === false ? rises + 1 : rises
}

// Fewer show no turns.
const fewestRowsPerBreath = 8

/** The mean breath of a record of several, its rows taken as even in time. */
export function meanBreath(loop: BreathingLoop, zero: number, breaths: number): WorkOfBreathing {
  const { volume, pressure } = loop
  requireTurns(volume.length, breaths)
  const time = Float64Array.from(volume, (_, row) => row)
  const options = { zero: zero as PressureDifference, pressureGainUncertainty: 0 }
  const analysis = breathingAnalysis({ time, volume, pressure }, options)
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
