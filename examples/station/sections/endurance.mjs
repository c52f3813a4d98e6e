import {
  ascentReserve,
  bar,
  endurance,
  format,
  gasUsed,
  inUnit,
  litre,
  litrePerMinute,
  maximumPermissibleError,
  meanAmbientPressure,
  measure,
  minute,
  pressureSeries,
  profileInWater,
  second,
  toAbsolute,
} from 'litrebar'
import { enduranceCard, workedSolution } from 'litrebar/course'
import { ascentSchema, cylinderContentsSchema, depthPointSchema } from 'litrebar/schemas'

/** A dive from its profile: what it takes, how the pressure falls, what has to be kept for two. */
export function enduranceSection(request, { style, water, profile: columns, quantity }) {
  const cylinder = cylinderContentsSchema.parse(request.cylinder)
  const { time, depth } = columns
  const points = time.values.map((t, at) =>
    depthPointSchema.parse({
      time: { value: t, unit: time.unit },
      depth: { value: depth.values[at], unit: depth.unit },
    }),
  )
  const profile = profileInWater(points, water)
  const respiratoryMinuteVolume = quantity('volume flow', request.respiratoryMinuteVolume)
  const breathingGasTemperature = quantity('temperature', request.breathingGasTemperature)
  const residualPressure = toAbsolute(quantity('gauge pressure', request.residualPressure), cylinder.ambientPressure)
  const dive = {
    profile,
    breathing: [{ from: measure(0, second), respiratoryMinuteVolume, cylinder: 'back' }],
    cylinders: { back: { contents: cylinder, residualPressure } },
    breathingGasTemperature,
  }
  const series = (gas) => pressureSeries(dive, { every: measure(0.5, minute), gas })
  const used = gasUsed(dive).cylinders.back
  const bars = (q) => format(q, { unit: bar, decimals: 0, ...style })
  const ascent = ascentSchema.parse({
    ...request.ascent,
    water: { surfacePressure: `${water.surfacePressure} Pa`, density: `${water.density} kg/m³` },
  })
  const reserve = ascentReserve(
    ascent,
    {
      internalVolume: cylinder.internalVolume,
      temperature: cylinder.temperature,
      mixture: cylinder.mixture,
      residualPressure,
      maximumPermissibleError: maximumPermissibleError({
        span: quantity('pressure difference', request.gaugeClass.span),
        accuracyClass: request.gaugeClass.accuracyClass,
      }),
    },
    { show: { unit: bar, step: 5 } },
  )
  const lines = ['ideal', 'real'].map((gas) => {
    const { moments } = series(gas)
    return {
      name: gas === 'ideal' ? 'ideal gas' : 'real gas',
      x: moments.map((moment) => inUnit(moment.time, minute)),
      y: moments.map((moment) => inUnit(moment.gaugePressures.back, bar)),
    }
  })
  const [ideal, real] = lines
  const chart = {
    id: 'pressure',
    title: 'The cylinder meets its reserve before the dive is over',
    description: `Gauge pressure of the cylinder against time on the working dive, from ${request.cylinder.gaugePressure} down to ${Math.floor(real.y.at(-1))} bar, with the reserve for two divers as a level line.`,
    x: { label: 'Time', unit: 'min', from: 0 },
    y: { label: 'Gauge pressure', unit: 'bar', from: 0 },
    series: lines,
    limits: [{ value: reserve.shown.value, label: 'reserve for two' }],
  }
  const meets = real.x[real.y.findIndex((pressure) => pressure < reserve.shown.value)]
  chart.title =
    meets === undefined
      ? 'The dive ends above the reserve for two'
      : `The reserve for two is reached after ${Math.floor(meets)} minutes`
  const parts = {
    caption: 'What has to be kept, and for what',
    columns: [
      { heading: 'For', align: 'text' },
      { heading: 'Gauge pressure', unit: 'bar', align: 'number' },
    ],
    rows: reserve.parts.map(({ cause, pressure }) => [cause, inUnit(pressure, bar).toFixed(1)]),
    notes: [
      `Together ${reserve.shown.text} bar on the gauge; ${reserve.shown.rule}. No decompression is planned here: the stop is the one that the request states.`,
    ],
  }
  const meanPressure = meanAmbientPressure(profile)
  const lasting = endurance({
    cylinders: [{ contents: cylinder, residualPressure }],
    respiratoryMinuteVolume,
    ambientPressure: meanPressure,
    breathingGasTemperature,
  })
  const solution = workedSolution(
    enduranceCard,
    {
      V: cylinder.internalVolume,
      p: toAbsolute(cylinder.gaugePressure, cylinder.ambientPressure),
      pr: residualPressure,
      VE: respiratoryMinuteVolume,
      pa: meanPressure,
    },
    {
      units: { t: minute, V: litre, p: bar, pr: bar, VE: litrePerMinute, pa: bar },
      figures: 2,
      toward: 'caution',
      use: 'endurance',
    },
  )
  return {
    section: {
      id: request.id,
      title: 'How long the gas lasts, and what must be kept',
      blocks: [
        {
          kind: 'answer',
          text: `The working dive takes the cylinder from ${bars(cylinder.gaugePressure)} to ${Math.floor(real.y.at(-1))}\u202fbar; for an ascent of two from ${format(ascent.depth, { unit: { symbol: 'm', quantity: 'length', factor: 1 }, decimals: 0 })} at least ${reserve.shown.text}\u202fbar must show on the gauge.`,
        },
        { kind: 'cautions', cautions: reserve.cautions },
        {
          kind: 'paragraph',
          text: `On this profile the mean pressure around the diver is ${format(meanPressure, { unit: bar, decimals: 2, ...style })}. At ${request.respiratoryMinuteVolume} the dive takes ${format(used.used.pressureVolume, { unit: { symbol: 'bar·L', quantity: 'pressure volume', factor: 100 }, decimals: 0, ...style })}, and the gas above ${request.residualPressure} would last ${format(lasting.duration, { unit: minute, decimals: 0, toward: 'caution', use: 'endurance' })} at that mean pressure.`,
        },
        { kind: 'chart', chart },
        { kind: 'table', table: parts },
        { kind: 'sources', sources: reserve.sources },
        { kind: 'solution', solution },
      ],
    },
    summary: `${request.cylinder.gaugePressure} at the start, ${Math.floor(real.y.at(-1))} bar at the end (the ideal law says ${Math.floor(ideal.y.at(-1))}); keep ${reserve.shown.text} bar for two from ${request.ascent.depth}`,
    tables: { reserve: parts },
    solutions: [solution],
  }
}
