import {
  bar,
  celsius,
  cubicFoot,
  format,
  freeGas,
  freeGasByModel,
  gauge,
  isoStandard,
  litre,
  psi,
  toAbsolute,
} from 'litrebar'
import { dualUnitTable, freeGasCard, workedSolution } from 'litrebar/course'
import { cylinderContentsSchema } from 'litrebar/schemas'

/** What a cylinder holds: real gas beside ideal, as number, curve, table and working. */
export function cylinderSection(request, { style, quantity }) {
  const contents = cylinderContentsSchema.parse(request.cylinder)
  const at = (gaugePressure) => ({ ...contents, gaugePressure })
  const reference = isoStandard
  const { real, ideal, overstatement } = freeGasByModel(contents, { reference })
  const litres = (q) => format(q, { unit: litre, figures: 4, ...style })
  const pressures = Array.from({ length: 61 }, (_, n) => (n * quantity('gauge pressure', request.upTo)) / 60)
  const curve = (gas) => pressures.map((pressure) => freeGas(at(pressure), { reference, gas }) * 1000)
  const chart = {
    id: 'free-gas',
    title: 'Real air falls behind above 150 bar',
    description: `Free gas of a 12 litre cylinder against gauge pressure, up to ${request.upTo}. The ideal line is straight; the line of real air follows it to about 150 bar and then bends below it, ${((freeGas(at(gauge(300, bar)), { reference, gas: 'ideal' }) / freeGas(at(gauge(300, bar)), { reference }) - 1) * 100).toFixed(0)} per cent apart at 300 bar.`,
    x: { label: 'Gauge pressure', unit: 'bar', from: 0 },
    y: { label: 'Free gas at 15 °C, 1.01325 bar', unit: 'L', from: 0 },
    series: [
      { name: 'ideal gas', x: pressures.map((pressure) => pressure / 1e5), y: curve('ideal') },
      { name: 'air', x: pressures.map((pressure) => pressure / 1e5), y: curve('real') },
    ],
  }
  const volume = {
    primary: { unit: litre, rounding: { decimals: 0 } },
    second: { unit: cubicFoot, rounding: { decimals: 1 } },
  }
  const table = dualUnitTable(
    {
      caption: 'Free gas of a 12 litre cylinder of air at 15 °C',
      argument: {
        heading: 'Gauge pressure',
        values: request.tablePressures,
        primary: { unit: bar, rounding: { decimals: 0 } },
        second: { unit: psi, rounding: { step: 10 } },
      },
      columns: [
        { heading: 'Real gas', of: (pressure) => freeGas(at(pressure), { reference }), ...volume },
        { heading: 'Ideal gas', of: (pressure) => freeGas(at(pressure), { reference, gas: 'ideal' }), ...volume },
      ],
      notes: [
        'Everything in the cylinder counts, also what cannot be breathed from it. GERG-2008; reference 15 °C, 1.01325 bar, dry.',
      ],
    },
    style,
  )
  const solution = workedSolution(
    freeGasCard,
    {
      V: contents.internalVolume,
      p: toAbsolute(contents.gaugePressure, contents.ambientPressure),
      T: contents.temperature,
      p0: reference.pressure,
      T0: reference.temperature,
    },
    { units: { V0: litre, V: litre, p: bar, p0: bar, T: celsius, T0: celsius }, figures: 4 },
  )
  return {
    section: {
      id: request.id,
      title: `What ${request.cylinder.gaugePressure} really holds`,
      blocks: [
        {
          kind: 'answer',
          text: `A 12 L cylinder at ${format(contents.gaugePressure, { unit: bar, decimals: 0, ...style })} gauge holds ${litres(real)} of free air, not ${litres(ideal)}.`,
        },
        { kind: 'cautions', cautions: ['fill-limit'] },
        {
          kind: 'paragraph',
          text: `Air at that pressure resists being pressed together further: its compressibility factor is above 1. The ideal gas law, pressure times volume, overstates the content by ${(overstatement * 100).toFixed(1)} per cent here and by about a tenth at 300 bar. Below some 150 bar it errs the other way, so that no single correction serves a whole dive.`,
        },
        { kind: 'chart', chart },
        { kind: 'sources', sources: ['gerg-2008', 'iso-2533'] },
        { kind: 'solution', solution },
        { kind: 'table', table },
      ],
    },
    summary: `12 L at ${request.cylinder.gaugePressure}: ${litres(real)} of free air; the ideal law says ${litres(ideal)} (+${(overstatement * 100).toFixed(1)} %)`,
    tables: { 'free-gas': table },
    solutions: [solution],
  }
}
