import type { BreathingAnalysis } from '../log/analysed-breathing.ts'
import type { AcceptanceOptions, MeasuredPerformance } from './acceptance.ts'

/**
 * What `assessAcceptance` judges, out of the analysis of a log: mean work, mean peaks, assist and apparent elastance, with the standard
 * uncertainties of work and peaks. Peaks and assist rest on the zero that the analysis was given; an inhalation whose pressure never
 * rises above it has no assist pressure.
 *
 * @param analysis - from `breathingAnalysis`
 * @returns the figures and their standard uncertainties, to be passed on
 * @source litrebar-derivation
 */
export function measuredPerformance(analysis: BreathingAnalysis): {
  readonly measured: MeasuredPerformance
  readonly standardUncertainty: NonNullable<AcceptanceOptions['standardUncertainty']>
} {
  const { summary, workOfBreathingPerLitre: work, inhalation, breaths } = analysis
  const gain = work.value === 0 ? 0 : work.parts.pressureGain / Math.abs(work.value)
  const ofMean = ({
    mean,
    standardDeviation = 0,
  }: {
    readonly mean: number
    readonly standardDeviation?: number | undefined
  }) => Math.hypot(standardDeviation / Math.sqrt(breaths.length), mean * gain)
  const assisted = summary.assistPressureOnInhalation.mean > 0
  return {
    measured: {
      workOfBreathingPerLitre: work.value,
      inhalationPressure: summary.inhalationPressure.mean,
      exhalationPressure: summary.exhalationPressure.mean,
      ...(assisted ? { assistPressureOnInhalation: summary.assistPressureOnInhalation.mean } : {}),
      assistWorkOnInhalation: inhalation.workOfAssistPerLitre,
      elastance: analysis.apparentElastance,
    },
    standardUncertainty: {
      workOfBreathingPerLitre: work.standardUncertainty,
      inhalationPressure: ofMean(summary.inhalationPressure),
      exhalationPressure: ofMean(summary.exhalationPressure),
      ...(assisted ? { assistPressureOnInhalation: ofMean(summary.assistPressureOnInhalation) } : {}),
    },
  }
}
