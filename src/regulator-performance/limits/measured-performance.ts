import { inputError, requireKeys, requireList, requireText, shown } from '../../errors/index.ts'
import { type Accepted, one, requireWithin } from '../../units/index.ts'
import type { BreathingAnalysis } from '../log/analysed-breathing.ts'
import type { ColumnSummary } from '../log/breath-table.ts'
import type { LoopFinding } from '../loop/loop-finding.ts'
import type { AcceptanceOptions, MeasuredPerformance } from './acceptance.ts'
import type { TestConditions } from './test-condition.ts'

const analysisKeys = {
  workOfBreathingPerLitre: true,
  totalWorkPerLitre: false,
  breaths: true,
  summary: true,
  breathingFrequency: true,
  respiratoryMinuteVolume: true,
  inhalation: true,
  exhalation: true,
  averagedLoop: false,
  crossings: false,
  grossWorkPerLitre: false,
  apparentElastance: true,
  endExhalationPressure: false,
  middleLinePressure: false,
  removed: false,
  changePerSecondOfDelay: false,
  noise: false,
  samplesPerBreath: false,
  findings: true,
}

/**
 * What `assessAcceptance` judges, out of the analysis of a log: mean work, mean peaks, assist and apparent elastance, with the standard
 * uncertainties of work and peaks, what the analysis noticed, and how the log was breathed. Peaks and assist rest on the zero that the
 * analysis was given; an inhalation whose pressure never rises above it has no assist pressure.
 *
 * @param analysis - from `breathingAnalysis`
 * @returns figures, uncertainties and findings to be passed on; tidal volume and breathing frequency for the conditions
 * @throws LitrebarError `input` for what is no analysis
 * @source litrebar-derivation
 */
export function measuredPerformance(analysis: BreathingAnalysis): {
  readonly measured: MeasuredPerformance
  readonly standardUncertainty: NonNullable<AcceptanceOptions['standardUncertainty']>
  readonly findings: readonly LoopFinding[]
  /** How the log was breathed, to be joined with what else is known of the test. */
  readonly breathed: Pick<TestConditions, 'tidalVolume' | 'breathingFrequency' | 'respiratoryMinuteVolume'>
} {
  requireAnalysis(analysis)
  const { summary, workOfBreathingPerLitre: work, inhalation, breaths } = analysis
  const gain = work.value === 0 ? 0 : work.parts.pressureGain / Math.abs(work.value)
  requireWithin('analysis.workOfBreathingPerLitre.parts.pressureGain over the value', gain, relative)
  const ofMean = ({ mean, standardDeviation }: ColumnSummary<number>) =>
    Math.hypot((standardDeviation ?? 0) / Math.sqrt(breaths.length), mean * gain)
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
    findings: analysis.findings,
    breathed: {
      tidalVolume: summary.tidalVolume.mean,
      breathingFrequency: analysis.breathingFrequency,
      respiratoryMinuteVolume: analysis.respiratoryMinuteVolume,
    },
  }
}

const anyNumber: Accepted = { unit: one, hint: 'Hand in what breathingAnalysis gave.' }
const notBelow: Accepted = { atLeast: 0, unit: one, hint: 'Hand in what breathingAnalysis gave.' }
const relative: Accepted = { atLeast: 0, atMost: 1, unit: one, hint: 'Hand in what breathingAnalysis gave.' }
const summaries = ['inhalationPressure', 'exhalationPressure', 'assistPressureOnInhalation', 'tidalVolume'] as const

/** Refuses what is no analysis, in the parts that are read here. */
function requireAnalysis(analysis: BreathingAnalysis): void {
  requireKeys('analysis', analysis, analysisKeys)
  const { workOfBreathingPerLitre: work, summary, inhalation, breaths, findings } = analysis
  requirePart('workOfBreathingPerLitre', work)
  requirePart('workOfBreathingPerLitre.parts', work.parts)
  requirePart('summary', summary)
  requirePart('inhalation', inhalation)
  requireWithin('analysis.workOfBreathingPerLitre.value', work.value, anyNumber)
  requireWithin('analysis.workOfBreathingPerLitre.standardUncertainty', work.standardUncertainty, notBelow)
  requireWithin('analysis.workOfBreathingPerLitre.parts.pressureGain', work.parts.pressureGain, notBelow)
  requireWithin('analysis.inhalation.workOfAssistPerLitre', inhalation.workOfAssistPerLitre, anyNumber)
  for (const name of ['breathingFrequency', 'respiratoryMinuteVolume'] as const)
    requireWithin(`analysis.${name}`, analysis[name], notBelow)
  requireWithin('analysis.apparentElastance', analysis.apparentElastance, anyNumber)
  for (const name of summaries) {
    const argument = `analysis.summary.${name}`
    const { [name]: column } = summary
    requireKeys(argument, column, { mean: true, standardDeviation: false })
    requireWithin(`${argument}.mean`, column.mean, anyNumber)
    if (column.standardDeviation !== undefined)
      requireWithin(`${argument}.standardDeviation`, column.standardDeviation, notBelow)
  }
  requireList('analysis.breaths', breaths, 1, 'Hand in what breathingAnalysis gave.')
  requireList('analysis.findings', findings, 0, 'Hand in what breathingAnalysis gave.')
  findings.forEach((finding, k) => {
    requireKeys(`analysis.findings[${k}]`, finding, { code: true, text: true })
    requireText(`analysis.findings[${k}].code`, finding.code)
    requireText(`analysis.findings[${k}].text`, finding.text)
  })
}

function requirePart(name: string, part: unknown): void {
  if (typeof part === 'object' && part !== null) return
  throw inputError(`analysis.${name}`, shown(part), 'an object', 'Hand in what breathingAnalysis gave.')
}
