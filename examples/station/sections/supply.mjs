import {
  absolute,
  bar,
  celsius,
  compileSupply,
  dryAir,
  foot,
  format,
  gramPerMole,
  gramPerSecond,
  inUnit,
  kelvin,
  litrePerMinute,
  metre,
  minimumSupplyPressure,
  molarMass,
  nearestColdTest,
  peakDemand,
  pressureAtDepth,
  psi,
  squareMillimetre,
  throttledTemperature,
  toGauge,
} from 'litrebar'
import {
  chokedSupplyPressureCard,
  dualUnitTable,
  supplyMapChart,
  temperatureMapChart,
  workedSolution,
} from 'litrebar/course'

/** What one first stage can feed: the lowest cylinder pressure for one diver and for two, and how cold its gas gets. */
export function supplySection(request, { style, water, quantity }) {
  const depth = quantity('depth', request.depth)
  const temperature = quantity('temperature', request.waterTemperature)
  const ventilation = quantity('volume flow', request.respiratoryMinuteVolume)
  const ambientPressure = pressureAtDepth({ ...water, depth })
  const stage = {
    orifice: {
      area: quantity('area', request.firstStage.orificeArea),
      dischargeCoefficient: request.firstStage.dischargeCoefficient,
    },
    mixture: dryAir,
    supplyTemperature: temperature,
    breathingGasTemperature: temperature,
    intermediatePressure: quantity('pressure difference', request.firstStage.intermediatePressure),
    regulatingMargin: quantity('pressure difference', request.firstStage.regulatingMargin),
  }
  const together = { ...stage, peakFlow: peakDemand(ventilation, { shift: 0 }).peakFlow }
  const alone = { ...stage, peakFlow: peakDemand(ventilation).peakFlow }
  const lowest = (supply, at) => minimumSupplyPressure({ ...supply, ambientPressure: at }).supplyPressure
  const gauge = (pressure) => toGauge(pressure, water.surfacePressure)
  const bars = (pressure) => format(gauge(pressure), { unit: bar, decimals: 0, toward: 'up', ...style })
  const metres = (q) => format(q, { unit: metre, decimals: 0, ...style })
  const both = minimumSupplyPressure({ ...together, ambientPressure })
  const one = lowest(alone, ambientPressure)
  const maximumPressure = quantity('absolute pressure', request.upTo)
  const depths = request.tableDepths.map((n) => quantity('depth', `${n} m`))
  const chart = supplyMapChart({
    id: 'supply',
    title: 'Two who breathe in step need about twice the pressure',
    water,
    depths,
    supplies: {
      'one diver': compileSupply(alone, { maximumPressure }),
      'two, breathing in step': compileSupply(together, { maximumPressure }),
    },
  })
  const table = dualUnitTable(
    {
      caption: 'Lowest cylinder pressure, gauge, that still feeds the peaks',
      argument: {
        heading: 'Depth',
        values: request.tableDepths,
        primary: { unit: metre, rounding: { decimals: 0 } },
        second: { unit: foot, rounding: { decimals: 0 } },
      },
      columns: [
        ['One diver', alone],
        ['Two in step', together],
      ].map(([heading, supply]) => ({
        heading,
        of: (d) => gauge(lowest(supply, pressureAtDepth({ ...water, depth: d }))),
        primary: { unit: bar, rounding: { decimals: 0, toward: 'up' } },
        second: { unit: psi, rounding: { decimals: 0, toward: 'up' } },
      })),
      notes: [
        `Each breathes ${format(ventilation, { unit: litrePerMinute, decimals: 0, ...style })} in ${format(temperature, { unit: celsius, decimals: 0, ...style })} water. The valve of the cylinder is fully open and its filter clean. The margin that the stage needs to regulate is counted; a reserve is not.`,
      ],
    },
    style,
  )
  const working = workedSolution(
    chokedSupplyPressureCard,
    {
      m: both.massFlow,
      Cd: stage.orifice.dischargeCoefficient,
      A: stage.orifice.area,
      T1: temperature,
      M: molarMass(dryAir),
      k: 1.4,
    },
    {
      units: { ps: bar, m: gramPerSecond, A: squareMillimetre, T1: kelvin, M: gramPerMole },
      figures: 3,
    },
  )
  const pressureBehind = absolute(inUnit(ambientPressure, bar) + inUnit(stage.intermediatePressure, bar), bar)
  const behind = (pressure) =>
    throttledTemperature(dryAir, { pressure: absolute(pressure, bar), temperature }, pressureBehind)
  const degrees = (t) => format(t, { unit: celsius, decimals: 0, ...style })
  const full = inUnit(maximumPressure, bar)
  const coldChart = temperatureMapChart({
    id: 'cold',
    title: 'A full cylinder makes the coldest gas',
    mixture: dryAir,
    pressureBehind,
    supplyPressures: request.chartPressures.map((n) => absolute(n, bar)),
    waterTemperatures: request.chartTemperatures.map((text) => quantity('temperature', text)),
    limits: [{ value: 0, label: 'fresh water freezes' }],
    style,
  })
  const { test } = nearestColdTest(temperature)
  return {
    section: {
      id: request.id,
      title: 'What one first stage can feed',
      blocks: [
        {
          kind: 'answer',
          text: `At ${metres(depth)} this first stage feeds one hard-working diver down to ${bars(one)} in the cylinder, and two who breathe in step only down to ${bars(both.supplyPressure)}.`,
        },
        { kind: 'cautions', cautions: both.cautions },
        {
          kind: 'paragraph',
          text: 'A diver who breathes 40 litres a minute draws them in half the time and not evenly: the peak is π times the mean. Two may draw their peaks together, and nobody can arrange that they do not. All of it passes one small opening, and once the gas there is as fast as sound, only more pressure in the cylinder pushes more through. Below the line the intermediate pressure gives way at each breath, and both regulators turn hard at once.',
        },
        { kind: 'chart', chart },
        { kind: 'table', table },
        { kind: 'sources', sources: ['gerg-2008', 'iso-6358', 'litrebar-derivation'] },
        {
          kind: 'paragraph',
          text: `By hand it goes with the ideal gas, which passes a little less through an opening than real air does: the working ends somewhat above the answer, at ${format(both.supplyPressure, { unit: bar, decimals: 0, toward: 'up', ...style })} absolute by the real gas.`,
        },
        { kind: 'solution', solution: working },
        { kind: 'cautions', cautions: ['regulator-cold'] },
        {
          kind: 'paragraph',
          text: `The same opening cools what it throttles. From ${String(full)} bar absolute in ${degrees(temperature)} water the gas leaves it at ${degrees(behind(full))} if the water brings no heat; from 50 bar at ${degrees(behind(50))}. The water does bring heat, and how much the body of the stage lets through decides. Published trial nearest to this water: ${test.what}; ${test.criterion === undefined ? `seen: ${test.observation}` : `it asks for ${test.criterion}`}.`,
        },
        { kind: 'sources', sources: ['gerg-2008', test.source] },
        { kind: 'chart', chart: coldChart },
      ],
    },
    summary: `${metres(depth)}: one diver down to ${bars(one)}, two in step down to ${bars(both.supplyPressure)}; ${degrees(behind(full))} behind the first stage from ${String(full)} bar`,
    tables: { 'supply-map': table },
    solutions: [working],
  }
}
