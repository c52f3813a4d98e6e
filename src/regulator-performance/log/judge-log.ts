import { signFindings, unitFindings } from '../loop/judge-loop.ts'
import type { LoopFinding } from '../loop/loop-finding.ts'
import type { AnalysisOptions, BreathingAnalysis } from './analysed-breathing.ts'
import type { ColumnSummary } from './breath-table.ts'
import { levelFindings } from './level-change.ts'
import { breathFindings } from './outlier-breath.ts'

interface LogFacts {
  readonly rowsLeftOut: number
  readonly gaps: number
  readonly spoilt: number
  readonly zeroStep: number
  readonly options: AnalysisOptions
}

// From when on a departure is worth a word. Ours.
const noticeable = { driftOfWork: 0.002, shareOfSpread: 0.1, volumeDrift: 0.01, breathSpread: 0.1, uncertainty: 0.01 }
// Of the swing and of the tidal volume. A hum beats with the samples, so that many of them do not average it away.
const loud = { pressure: 0.05, volume: 0.0025 }
const fewSamples = 50 // the polygon of so many even samples loses 0.26 %
const usualRate = { from: 3, to: 60 } // per minute

/** What is doubtful about a log, and what was done to it. */
export function analysisFindings(
  analysis: Omit<BreathingAnalysis, 'findings'>,
  facts: LogFacts,
): readonly LoopFinding[] {
  const { summary, workOfBreathingPerLitre: work, crossings, grossWorkPerLitre } = analysis
  const figures = {
    work: work.value * summary.tidalVolume.mean,
    tidalVolume: summary.tidalVolume.mean,
    crossings,
    grossWork: grossWorkPerLitre * summary.tidalVolume.mean,
    lowestPressure: Math.min(summary.inhalationPressure.mean, summary.exhalationPressure.mean),
    maximumPressure: Math.max(summary.exhalationPressure.mean, summary.assistPressureOnInhalation.mean),
  }
  return [
    ...signFindings(figures),
    ...unitFindings(figures),
    ...recordFindings(analysis, facts),
    ...noiseFindings(analysis),
    ...driftFindings(analysis, facts),
    ...lagFindings(analysis, facts),
    ...zeroFindings(analysis, facts),
    ...breathFindings(analysis.breaths, analysis.noise.pressure),
    ...levelFindings(analysis.breaths),
    ...uncertaintyFindings(analysis),
    ...rateFindings(analysis),
  ]
}

type Analysis = Omit<BreathingAnalysis, 'findings'>

function recordFindings(
  { samplesPerBreath }: Analysis,
  { rowsLeftOut, gaps, spoilt }: LogFacts,
): readonly LoopFinding[] {
  const findings: LoopFinding[] = []
  if (rowsLeftOut > 0) {
    findings.push({ code: 'missing-values', text: `${rowsLeftOut} rows with missing values were left out.` })
  }
  if (gaps > 0) findings.push({ code: 'time-gap', text: `The record has ${gaps} gaps in time.` })
  if (spoilt > 0) findings.push({ code: 'breaths-left-out', text: `${spoilt} breaths were left out, cut by gaps.` })
  if (samplesPerBreath < fewSamples) {
    findings.push({
      code: 'few-samples',
      text: `A breath holds ${samplesPerBreath.toFixed(0)} samples; below ${fewSamples} what happens between them counts.`,
    })
  }
  return findings
}

function noiseFindings({ noise, summary }: Analysis): readonly LoopFinding[] {
  const swing = summary.exhalationPressure.mean - summary.inhalationPressure.mean
  const findings: LoopFinding[] = []
  if (noise.pressure > loud.pressure * swing) {
    const text = `Single samples of the pressure scatter by ${figure(noise.pressure)} Pa, ${figure((100 * noise.pressure) / swing)} % of its swing: a hum may not average out. Filter it at its source.`
    findings.push({ code: 'noisy-pressure', text })
  }
  if (noise.volume > loud.volume * summary.tidalVolume.mean) {
    const text = `Single samples of the volume scatter by ${figure(noise.volume * 1e6)} mL, ${figure((100 * noise.volume) / summary.tidalVolume.mean)} % of the tidal volume: its turns are drawn too far apart, and the work per litre too small.`
    findings.push({ code: 'noisy-volume', text })
  }
  return findings
}

function driftFindings(analysis: Analysis, { options, zeroStep }: LogFacts): readonly LoopFinding[] {
  const { removed, summary, workOfBreathingPerLitre: work, breaths } = analysis
  const findings: LoopFinding[] = []
  if (breaths.length === 1 || options.drift === 'kept') {
    findings.push({
      code: 'drift-not-removed',
      text:
        breaths.length === 1
          ? 'One breath does not show a drift of the pressure: none was removed.'
          : 'The drift of the pressure was kept, as asked.',
    })
  }
  const { change, during, uncertainty } = removed.pressure
  const ofWork = ((change / during) * summary.duration.mean) / 2
  // Breaths of different sizes leave something of themselves in what is read about their ends.
  const least = noticeable.driftOfWork + noticeable.shareOfSpread * relativeSpread(summary.tidalVolume)
  if (Math.abs(ofWork) > least * Math.abs(work.value) && Math.abs(change) > 4 * uncertainty) {
    findings.push({
      code: 'drift-removed',
      text: `A drift of the pressure of ${figure(change)} Pa in ${figure(during)} s was removed; it would have added ${figure(ofWork / 1000)} J/L.`,
    })
  }
  if (zeroStep !== 0) {
    findings.push({
      code: 'zero-steps',
      text: `The zero of the pressure jumps by about ${figure(zeroStep)} Pa from one breath to the next: what was removed as drift about there is not that of the breaths.`,
    })
  }
  const perBreath = (removed.volume.change / removed.volume.during) * summary.duration.mean
  if (Math.abs(perBreath) > noticeable.volumeDrift * summary.tidalVolume.mean) {
    findings.push({
      code: 'volume-drift-removed',
      text: `A drift of the volume of ${figure(removed.volume.change * 1000)} L in ${figure(removed.volume.during)} s was removed.`,
    })
  }
  return findings
}

/** What the record itself leaves open, apart from the gain and the lag that were stated. */
function uncertaintyFindings({ workOfBreathingPerLitre: work }: Analysis): readonly LoopFinding[] {
  const { parts, coverageFactor, value } = work
  const open = Math.hypot(parts.breaths, parts.tidalVolume, parts.sampling, parts.resolution)
  const share = (coverageFactor * open) / Math.abs(value)
  if (!(share > noticeable.uncertainty)) return []
  const text = `The record leaves ${figure(100 * share)} % of the work open: breaths that scatter, a zero that wanders, noise, or few samples.`
  return [{ code: 'uncertain-work', text }]
}

function lagFindings(analysis: Analysis, { options }: LogFacts): readonly LoopFinding[] {
  const { changePerSecondOfDelay, workOfBreathingPerLitre: work } = analysis
  const { lag } = options
  if (lag === undefined) {
    const share = (changePerSecondOfDelay * 0.01) / work.value
    return [
      {
        code: 'delay-not-stated',
        text: `No lag of the pressure channel was stated, and none corrected. Each 10 ms of it changes the work by ${figure(-100 * share)} %.`,
      },
    ]
  }
  const late = (lag.delay ?? 0) + (lag.timeConstant ?? 0)
  if (late === 0) return []
  return [
    { code: 'delay-corrected', text: `A lag of the pressure channel of ${figure(late * 1000)} ms was corrected.` },
  ]
}

function zeroFindings(
  { endExhalationPressure, middleLinePressure }: Analysis,
  { options }: LogFacts,
): readonly LoopFinding[] {
  if (options.zero !== 'end exhalation' || endExhalationPressure !== undefined) return []
  return [
    {
      code: 'zero-flow-not-seen',
      text: `No pause shows the pressure without flow at end exhalation: ${figure(middleLinePressure)} Pa, half way between the halves, was taken. Halves and peaks are off by half of what the cracking pressures differ.`,
    },
  ]
}

function relativeSpread({ mean, standardDeviation }: ColumnSummary<number>): number {
  return (standardDeviation ?? 0) / mean
}

function rateFindings({ summary, breathingFrequency }: Analysis): readonly LoopFinding[] {
  const findings: LoopFinding[] = []
  const spreads = [
    { name: 'tidal volumes', share: relativeSpread(summary.tidalVolume) },
    { name: 'durations', share: relativeSpread(summary.duration) },
  ].filter(({ share }) => share > noticeable.breathSpread)
  if (spreads.length > 0) {
    const shares = spreads.map(({ name, share }) => `the ${name} spread by ${figure(100 * share)} %`).join(' and ')
    findings.push({
      code: 'unlike-breaths',
      text: `${shares.replace('the', 'The')}: the mean stands for no single breath.`,
    })
  }
  const rate = breathingFrequency * 60
  if (rate < usualRate.from || rate > usualRate.to) {
    findings.push({
      code: 'unlikely-rate',
      text: `${figure(rate)} breaths per minute are outside ${usualRate.from} to ${usualRate.to}: check the unit of the time.`,
    })
  }
  return findings
}

function figure(value: number): string {
  return String(Number(value.toPrecision(3)))
}
