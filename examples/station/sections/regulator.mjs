import {
  acceptanceLimits,
  assessAcceptance,
  breathingAnalysis,
  difference,
  dryAir,
  format,
  inUnit,
  joulePerLitre,
  kilogramPerCubicMetre,
  litre,
  litrePerMinute,
  measure,
  millibar,
  sourceOf,
  trimix,
} from 'litrebar'
import { loopChart, powerOfBreathingCard, resistanceChart, workedSolution } from 'litrebar/course'
import { breathingLogSchema, testConditionsSchema } from 'litrebar/schemas'

const seaWater = measure(1025, kilogramPerCubicMetre)

/** A log from a breathing machine: loop, work per litre, breaths, and what published limits say. */
export function regulatorSection(request, { style, breathingLog, quantity }) {
  const log = breathingLogSchema.parse(breathingLog)
  const conditions = testConditionsSchema.parse(request.conditions)
  const analysis = breathingAnalysis(log, {
    zero: 'as recorded',
    pressureGainUncertainty: request.pressureGainUncertainty,
    lag: {
      delay: quantity('duration', request.delay),
      standardUncertainty: quantity('duration', request.delayUncertainty),
    },
  })
  const { value, standardUncertainty, expandedUncertainty } = analysis.workOfBreathingPerLitre
  const work = (q) => format(q, { unit: joulePerLitre, decimals: 2, ...style })
  const { inhalationPressure, exhalationPressure } = analysis.summary
  const judged = assessAcceptance(
    {
      workOfBreathingPerLitre: value,
      inhalationPressure: inhalationPressure.mean,
      exhalationPressure: exhalationPressure.mean,
    },
    {
      conditions,
      standardUncertainty: { workOfBreathingPerLitre: standardUncertainty },
      findings: analysis.findings,
    },
  )
  const limitOf = (id) => acceptanceLimits.find((limit) => limit.id === id)
  const verdicts = { within: 'met', beyond: 'not met', undetermined: 'not comparable' }
  const names = {
    workOfBreathingPerLitre: ['work per litre', joulePerLitre, 2],
    inhalationPressure: ['lowest inhalation pressure', millibar, 1],
    exhalationPressure: ['highest exhalation pressure', millibar, 1],
  }
  const limits = {
    caption: 'Published limits, each with its own test conditions',
    columns: [
      { heading: 'Quantity', align: 'text' },
      { heading: 'Measured', align: 'number' },
      { heading: 'Limit', align: 'number' },
      { heading: 'Verdict', align: 'text' },
      { heading: 'Because', align: 'text' },
      { heading: 'Source', align: 'text' },
    ],
    rows: judged.map(({ limitId, quantity: name, value: measured, limit, verdict, because }) => {
      const [words, unit, decimals] = names[name]
      const shown = (q) => (q === undefined ? '' : format(q, { unit, decimals, ...style }))
      return [
        words,
        shown(measured),
        shown(limit),
        verdicts[verdict],
        because.map((reason) => reason.text).join('; '),
        sourceOf(limitOf(limitId).source).title,
      ]
    }),
    notes: [
      'A limit speaks only about its own test: another depth, ventilation or water temperature is not comparable, however small the work.',
    ],
  }
  const european = acceptanceLimits.find((limit) => limit.id === 'european-inhalation')
  const chart = loopChart(analysis.averagedLoop, {
    id: 'loop',
    title: 'Exhaling costs as much as inhaling here',
    workOfBreathingPerLitre: value,
    breaths: analysis.breaths.length,
    limits: [{ value: Number(european.atLeast.printed), label: 'European limit, inhaling' }],
    style,
  })
  const temperature = quantity('temperature', request.conditions.waterTemperature)
  const inAir = (ambientPressure, workOfBreathingPerLitre, uncertainty) => ({
    gas: { mixture: dryAir, pressure: ambientPressure, temperature },
    workOfBreathingPerLitre,
    standardUncertainty: uncertainty,
  })
  const byDepth = resistanceChart({
    id: 'resistance',
    title: 'The lighter gas costs less, the deeper the more so',
    measurements: [
      ...request.earlierMeasurements.map((row) =>
        inAir(
          quantity('absolute pressure', row.ambientPressure),
          quantity('pressure difference', row.workOfBreathingPerLitre),
          quantity('pressure difference', row.standardUncertainty),
        ),
      ),
      inAir(quantity('absolute pressure', request.conditions.ambientPressure), value, standardUncertainty),
    ],
    laminarShare: 'unknown',
    mixtures: { air: dryAir, 'trimix 18/45': trimix(request.trimix) },
    temperature,
    water: { surfacePressure: quantity('absolute pressure', request.conditions.surfacePressure), density: seaWater },
    depths: request.chartDepths.map((n) => quantity('depth', `${n} m`)),
  })
  const rows = analysis.breaths.map((breath, index) => [
    String(index + 1),
    format(breath.tidalVolume, { unit: litre, decimals: 2, ...style }).split('\u202f')[0],
    ...[breath.workOfBreathingPerLitre, breath.inhalationPerLitre, breath.exhalationPerLitre].map((q) =>
      inUnit(q, joulePerLitre).toFixed(2),
    ),
    ...[breath.inhalationPressure, breath.exhalationPressure].map(
      (q) => format(q, { unit: millibar, decimals: 1, ...style }).split('\u202f')[0],
    ),
  ])
  const breaths = {
    caption: 'Breath by breath',
    columns: [
      { heading: 'Breath', align: 'number' },
      { heading: 'Tidal volume', unit: 'L', align: 'number' },
      { heading: 'Work', unit: 'J/L', align: 'number' },
      { heading: 'Inhaling', unit: 'J/L', align: 'number' },
      { heading: 'Exhaling', unit: 'J/L', align: 'number' },
      { heading: 'Lowest', unit: 'mbar', align: 'number' },
      { heading: 'Highest', unit: 'mbar', align: 'number' },
    ],
    rows,
    notes: [
      `Removed before: a drift of ${format(difference(analysis.removed.pressure.change, { symbol: 'Pa', quantity: 'pressure', factor: 1 }), { unit: millibar, decimals: 2, ...style })} over the record.`,
      ...analysis.findings.map((finding) => finding.text),
    ],
  }
  const solution = workedSolution(
    powerOfBreathingCard,
    { W: value, VE: analysis.respiratoryMinuteVolume },
    { units: { W: joulePerLitre, VE: litrePerMinute }, figures: 3 },
  )
  return {
    section: {
      id: request.id,
      title: 'What this regulator costs to breathe at 50 m',
      blocks: [
        {
          kind: 'answer',
          text: `Breathing costs ${work(value)}, give or take ${work(expandedUncertainty)} (95 per cent), at ${format(analysis.respiratoryMinuteVolume, { unit: litrePerMinute, decimals: 1, ...style })}.`,
        },
        { kind: 'cautions', cautions: ['regulator'] },
        {
          kind: 'paragraph',
          text: 'The machine breathes for the diver, and the log keeps volume and mouth pressure. Around one breath the two draw a loop; its area is the work the diver would have done, and divided by the volume it is a pressure: one joule per litre is one kilopascal.',
        },
        { kind: 'sources', sources: [...new Set(judged.flatMap((assessment) => assessment.sources))] },
        { kind: 'chart', chart },
        { kind: 'table', table: limits },
        { kind: 'solution', solution },
        {
          kind: 'paragraph',
          text: 'Three earlier logs, nearer to the surface, tell the part that grows with the density of the gas from the part that does not. That is enough to draw the work against depth, and for another gas, as far as its density stays near what was measured. How deep a mixture may be breathed at all is another question.',
        },
        { kind: 'chart', chart: byDepth },
        { kind: 'table', table: breaths },
      ],
    },
    summary: `${analysis.breaths.length} breaths: ${work(value)} ± ${work(expandedUncertainty)}; ${countOf(judged, 'within')} of ${countOf(judged)} published limits met, ${countOf(judged, 'beyond')} not met, ${countOf(judged, 'undetermined')} not comparable`,
    tables: { breaths, limits },
    solutions: [solution],
  }
}

/** A limit that is printed in two units counts once. */
function countOf(judged, verdict) {
  return judged.filter(
    ({ alternativeOf, verdict: found }) => alternativeOf === undefined && (verdict === undefined || found === verdict),
  ).length
}
