import {
  bar,
  depthConventions,
  foot,
  format,
  hectopascal,
  indicatedDepth,
  kilogramPerCubicMetre,
  maximumOperatingDepth,
  metre,
  nitrox,
  pressureAtDepth,
  psi,
  standardGravity,
} from 'litrebar'
import { dualUnitTable, maximumOperatingDepthCard, pressureAtDepthCard, workedSolution } from 'litrebar/course'

/** Pressure at depth in fresh water at altitude, and what a sea-level display makes of it. */
export function lakeSection(request, { style, water, quantity }) {
  const depth = quantity('depth', request.depth)
  const pressure = pressureAtDepth({ ...water, depth })
  const shown = indicatedDepth({
    pressure,
    surfacePressure: water.surfacePressure,
    convention: depthConventions.depthGauge,
  })
  const metres = (q) => format(q, { unit: metre, decimals: 1, ...style })
  const inputs = { p0: water.surfacePressure, rho: water.density, g: standardGravity, d: depth }
  const units = { p: bar, p0: hectopascal, rho: kilogramPerCubicMetre, d: metre }
  const working = workedSolution(pressureAtDepthCard, inputs, { units, figures: 4 })
  const limit = quantity('absolute pressure', request.maximumOxygenPartialPressure)
  const deepest = maximumOperatingDepth({
    ...water,
    mixture: nitrox(request.oxygen),
    maximumOxygenPartialPressure: limit,
  })
  const mixtureWorking = workedSolution(
    maximumOperatingDepthCard,
    { pO2: limit, x: request.oxygen, p0: water.surfacePressure, rho: water.density, g: standardGravity },
    { units: { ...units, pO2: bar }, figures: 3, toward: 'caution', use: 'maximum depth' },
  )
  const table = dualUnitTable(
    {
      caption: 'Absolute pressure in the lake, and what a depth display shows',
      argument: {
        heading: 'Depth',
        values: request.tableDepths,
        primary: { unit: metre, rounding: { decimals: 0 } },
        second: { unit: foot, rounding: { decimals: 0 } },
      },
      columns: [
        {
          heading: 'Pressure',
          of: (d) => pressureAtDepth({ ...water, depth: d }),
          primary: { unit: bar, rounding: { decimals: 2, toward: 'up' } },
          second: { unit: psi, rounding: { decimals: 1, toward: 'up' } },
        },
        {
          heading: 'Display',
          of: (d) =>
            indicatedDepth({
              pressure: pressureAtDepth({ ...water, depth: d }),
              surfacePressure: water.surfacePressure,
              convention: depthConventions.depthGauge,
            }),
          primary: { unit: metre, rounding: { decimals: 1 } },
          second: { unit: foot, rounding: { decimals: 0 } },
        },
      ],
      notes: [
        'Fresh water of 1000 kg/m³, 915 hPa at the surface, standard gravity. The display counts 10 kPa as a metre and is zeroed at the surface.',
      ],
    },
    style,
  )
  return {
    section: {
      id: request.id,
      title: 'What the pressure is at the bottom of a mountain lake',
      blocks: [
        {
          kind: 'answer',
          text: `At ${metres(depth)} in the lake the absolute pressure is ${format(pressure, { unit: bar, decimals: 2, ...style })}, and a display set for the sea shows ${metres(shown)}.`,
        },
        { kind: 'cautions', cautions: ['altitude-pressure', 'instrument'] },
        {
          kind: 'paragraph',
          text: 'Two things are less than at the coast: the air above the water, and the weight of the water itself. The rule of one bar for ten metres belongs to sea water and to no lake. The surface pressure is measured on the day; nothing here assumes it.',
        },
        { kind: 'solution', solution: working },
        { kind: 'sources', sources: ['openstax-college-physics', 'en-13319'] },
        { kind: 'table', table },
        {
          kind: 'paragraph',
          text: `The same surface pressure decides how deep a mixture may go. For a stated limit of ${format(limit, { unit: bar, decimals: 1, ...style })} a mixture with ${String(request.oxygen * 100)} per cent of oxygen reaches its limit at ${format(deepest.depth, { unit: metre, decimals: 1, toward: 'caution', use: 'maximum depth', ...style })}.`,
        },
        { kind: 'cautions', cautions: deepest.cautions },
        { kind: 'solution', solution: mixtureWorking },
      ],
    },
    summary: `${metres(depth)} of fresh water under 915 hPa: ${format(pressure, { unit: bar, decimals: 2, ...style })} absolute; a sea-water display shows ${metres(shown)}`,
    tables: { 'lake-pressure': table },
    solutions: [working, mixtureWorking],
  }
}
