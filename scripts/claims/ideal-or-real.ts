import { type Chart, chartSvg, type Table, tableMarkdown } from '../../src/course/index.ts'
import {
  absolute,
  atmosphere,
  bar,
  celsius,
  differenceOf,
  dryAir,
  freeGasByModel,
  gasState,
  gauge,
  heliox,
  internalVolumeOf,
  inUnit,
  litre,
  type Mixture,
  molarDensity,
  nitrox,
  percent,
  pressureAtDensity,
  pureGas,
  roomCondition,
  roundNumber,
  temperatureOf,
  toAbsolute,
  trimix,
  withNumberStyle,
} from '../../src/index.ts'

const ambient = absolute(1, atmosphere)
const room = temperatureOf(20, celsius)
const mixtures: readonly (readonly [string, Mixture])[] = [
  ['air', dryAir],
  ['nitrox 32', nitrox(0.32)],
  ['oxygen', pureGas('oxygen')],
  ['trimix 21/35', trimix({ oxygen: 0.21, helium: 0.35 })],
  ['trimix 18/45', trimix({ oxygen: 0.18, helium: 0.45 })],
  ['heliox 21/79', heliox(0.21)],
  ['argon', pureGas('argon')],
]

const signed = (n: number, decimals: number): string =>
  (n > 0 ? '+' : '') + withNumberStyle(roundNumber(n, { decimals }).text)
const contents = (mixture: Mixture, bars: number) => ({
  internalVolume: internalVolumeOf(12, litre),
  gaugePressure: gauge(bars, bar),
  ambientPressure: ambient,
  temperature: room,
  mixture,
})
const overstatement = (mixture: Mixture, bars: number): number =>
  inUnit(freeGasByModel(contents(mixture, bars), { reference: roomCondition }).overstatement, percent)

/** The tables and charts of the page about ideal and real gas. */
export function idealOrRealFigures(): {
  readonly tables: Record<string, string>
  readonly charts: Record<string, string>
} {
  return {
    tables: { overstatement: tableMarkdown(overstatementTable()), cooling: tableMarkdown(coolingTable()) },
    charts: { overstatement: chartSvg(overstatementChart()), compressibility: chartSvg(compressibilityChart()) },
  }
}

const pressures = [50, 100, 150, 200, 232, 300]

function overstatementTable(): Table {
  return {
    caption: 'By how many per cent the ideal law overstates the free gas of a cylinder at 20 °C',
    columns: [
      { heading: 'Gas', align: 'text' },
      ...pressures.map((bars) => ({ heading: `${bars} bar`, align: 'number' as const })),
    ],
    rows: mixtures.map(([name, mixture]) => [
      name,
      ...pressures.map((bars) => signed(overstatement(mixture, bars), 1)),
    ]),
    notes: [
      'Gauge pressures over 1 atm; real gas inside and at the reference, 20 °C and 1 atm. Rounded once, to 1 decimal, ties to even.',
    ],
  }
}

const temperatures = [0, 4, 10, 30, 40, 50]

function coolingTable(): Table {
  const settled = (mixture: Mixture, degrees: number): [number, number] => {
    const inside = toAbsolute(gauge(232, bar), ambient)
    const temperature = temperatureOf(degrees, celsius)
    const real = pressureAtDensity(mixture, { molarDensity: molarDensity(mixture, inside, room), temperature })
    return [inUnit(differenceOf(real, ambient), bar), ((inside / room) * temperature - ambient) / bar.factor]
  }
  return {
    caption: 'What a cylinder filled to 232 bar at 20 °C shows at other temperatures, gauge bar: real (ideal)',
    columns: [
      { heading: 'Gas', align: 'text' },
      ...temperatures.map((t) => ({ heading: `${t} °C`, align: 'number' as const })),
    ],
    rows: mixtures.map(([name, mixture]) => [
      name,
      ...temperatures
        .map((degrees) => settled(mixture, degrees).map((bars) => roundNumber(bars, { decimals: 0 }).text))
        .map(([real, ideal]) => `${real} (${ideal})`),
    ]),
    notes: ['The content does not change; the cylinder is taken as rigid. Rounded once, to whole bars, ties to even.'],
  }
}

const steps = Array.from({ length: 60 }, (_, step) => 5 * (step + 1))

function lines(names: readonly string[], of: (mixture: Mixture, bars: number) => number) {
  return mixtures
    .filter(([name]) => names.includes(name))
    .map(([name, mixture]) => ({ name, x: steps, y: steps.map((bars) => of(mixture, bars)) }))
}

function overstatementChart(): Chart {
  return {
    id: 'overstatement',
    title: 'One correction does not serve: the error changes sign with gas and pressure',
    description:
      'Overstatement of the free gas by the ideal law against gauge pressure to 300 bar at 20 °C. Air lies slightly below zero to about 140 bar and rises to 10.6 per cent at 300 bar; trimix 18/45 rises steadily to 18 per cent; oxygen lies below zero throughout, lowest near 160 bar.',
    x: { label: 'Gauge pressure', unit: 'bar', from: 0 },
    y: { label: 'Ideal law overstates by', unit: '%' },
    series: lines(['trimix 18/45', 'air', 'oxygen'], overstatement),
  }
}

function compressibilityChart(): Chart {
  return {
    id: 'compressibility',
    title: 'Compressibility factors at 20 °C',
    description:
      'Compressibility factor against absolute pressure to 300 bar at 20 °C. Heliox rises almost in a straight line to 1.17; air dips to 0.99 near 70 bar and rises to 1.11; oxygen falls to 0.94 near 170 bar and stays below 1.',
    x: { label: 'Absolute pressure', unit: 'bar', from: 0 },
    y: { label: 'Compressibility factor', unit: '' },
    series: lines(
      ['heliox 21/79', 'air', 'oxygen'],
      (mixture, bars) => gasState(mixture, { pressure: absolute(bars, bar), temperature: room }).compressibilityFactor,
    ),
  }
}
