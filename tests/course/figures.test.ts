import { expect, test } from 'vitest'
import {
  chartSvg,
  chartVegaLite,
  loopChart,
  resistanceChart,
  supplyMapChart,
  temperatureMapChart,
} from '../../src/course/index.ts'
import { dryAir, trimix } from '../../src/gas-law/index.ts'
import {
  compileSupply,
  type MappedSupply,
  minimumSupplyPressure,
  peakDemand,
  throttledTemperature,
} from '../../src/regulator-performance/index.ts'
import {
  absolute,
  bar,
  celsius,
  depthOf,
  difference,
  type Fraction,
  hectopascal,
  inUnit,
  joulePerLitre,
  kilogramPerCubicMetre,
  litrePerMinute,
  measure,
  metre,
  squareMillimetre,
  temperatureOf,
} from '../../src/units/index.ts'

const water = { surfacePressure: absolute(915, hectopascal), density: measure(1000, kilogramPerCubicMetre) }
const depths = [0, 6, 12, 18, 24, 30].map((metres) => depthOf(metres, metre))
const cold = temperatureOf(4, celsius)
const breathers = (shift?: number): MappedSupply => ({
  orifice: { area: measure(1.2, squareMillimetre), dischargeCoefficient: 0.7 as Fraction },
  mixture: dryAir,
  supplyTemperature: cold,
  breathingGasTemperature: cold,
  peakFlow: peakDemand(measure(40, litrePerMinute), shift === undefined ? undefined : { shift: shift as Fraction })
    .peakFlow,
  intermediatePressure: difference(9.5, bar),
  regulatingMargin: difference(2, bar),
})
const maximumPressure = absolute(230, bar)
const supplies = {
  one: compileSupply(breathers(), { maximumPressure }),
  'two in step': compileSupply(breathers(0), { maximumPressure }),
}

const loop = loopChart(
  {
    volumeCubicMetre: Float64Array.of(0.0005, 0.001, 0.0015),
    inhalationPressurePascal: Float64Array.of(-500, -900, -400),
    exhalationPressurePascal: Float64Array.of(300, 700, 600),
    inhalationFlowCubicMetrePerSecond: Float64Array.of(0.001, 0.002, 0.001),
    exhalationFlowCubicMetrePerSecond: Float64Array.of(0.001, 0.002, 0.001),
  },
  { id: 'loop', title: 'A loop', workOfBreathingPerLitre: difference(1.2, joulePerLitre), breaths: 12 },
)
const supply = supplyMapChart({ id: 'supply', title: 'Two ask for more than one', water, depths, supplies })
const temperature = temperatureMapChart({
  id: 'cold',
  title: 'Full cylinders make cold gas',
  mixture: dryAir,
  pressureBehind: absolute(12, bar),
  supplyPressures: [20, 60, 100, 150, 200, 232].map((pressure) => absolute(pressure, bar)),
  waterTemperatures: [temperatureOf(4, celsius), temperatureOf(20, celsius)],
  limits: [{ value: 0, label: 'fresh water freezes' }],
})
const resistance = resistanceChart({
  id: 'resistance',
  title: 'Air costs more with every metre',
  measurements: [1, 2, 4].map((pressure) => ({
    gas: { mixture: dryAir, pressure: absolute(pressure, bar), temperature: cold },
    workOfBreathingPerLitre: difference(0.3 + 0.2 * pressure, joulePerLitre),
    standardUncertainty: difference(0.02, joulePerLitre),
  })),
  laminarShare: 'unknown',
  mixtures: { air: dryAir, trimix: trimix({ oxygen: 0.18, helium: 0.45 }) },
  temperature: cold,
  water,
  depths: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90].map((metres) => depthOf(metres, metre)),
})

test.each([loop, supply, temperature, resistance])(
  '$id: drawn, told in words, and given as a specification',
  (chart) => {
    const svg = chartSvg(chart)
    expect(svg).toContain(`<title id="${chart.id}-title">`)
    expect(svg).not.toMatch(/NaN|undefined/)
    expect(chart.description.length).toBeGreaterThan(80)
    const spec = chartVegaLite(chart)
    expect(spec.description).toBe(chart.description)
    const points = chart.series.reduce((sum, { x, closed }) => sum + x.length + (closed ? 1 : 0), 0)
    expect(spec.data.values).toHaveLength(points)
  },
)

test('the loop goes out along inhalation and back along exhalation, in litres and millibars, with its work inside', () => {
  expect(loop.series[0]).toMatchObject({ x: [0.5, 1, 1.5, 1.5, 1, 0.5], y: [-5, -9, -4, 6, 7, 3], closed: true })
  expect(loop.note?.text).toMatch(/^1\.20.J\/L$/)
  expect(loop.description).toContain('12 breaths')
  expect(loop.description).toMatch(/to .9\.0 mbar, .*to 7\.0 mbar/)
})

test('a point of the supply map is the lowest supply pressure at that depth, over the surface', () => {
  const index = 4
  const ambient = 0.915 + (1000 * 9.80665 * 24) / 1e5
  const direct = minimumSupplyPressure({ ...breathers(0), ambientPressure: absolute(ambient, bar) }).supplyPressure
  expect(Math.abs((supply.series[1]?.y[index] as number) - (inUnit(direct, bar) - 0.915))).toBeLessThan(0.4)
  expect(supply.series[1]?.y[index]).toBeGreaterThan(supply.series[0]?.y[index] as number)
})

test('a supply line ends where its supply is not enough, and a chart of no depth at all is refused', () => {
  const low = compileSupply(breathers(0), { maximumPressure: absolute(50, bar) })
  const chart = supplyMapChart({ id: 's', title: 't', water, depths, supplies: { low } })
  expect(chart.series[0]?.x.length).toBeLessThan(depths.length)
  const deep = [60, 70].map((metres) => depthOf(metres, metre))
  expect(() => supplyMapChart({ id: 's', title: 't', water, depths: deep, supplies: { low } })).toThrow(
    expect.objectContaining({ code: 'input', argument: 'options.supplies.low' }),
  )
})

test('a point of the temperature map is the throttled temperature', () => {
  const before = { pressure: absolute(200, bar), temperature: cold }
  const direct = inUnit(throttledTemperature(dryAir, before, absolute(12, bar)), celsius)
  expect(temperature.series[0]?.y[4]).toBe(direct)
  expect(temperature.series.map(({ name }) => name.replaceAll('\u202f', ' '))).toEqual([
    'water of 4 °C',
    'water of 20 °C',
  ])
})

test('resistance is drawn as far as the measurements carry, deeper for the lighter gas', () => {
  const [air, helium] = resistance.series
  const deepest = (series: typeof air) => series?.x.at(-1) as number
  expect(deepest(air)).toBeLessThan(90)
  expect(deepest(helium)).toBeGreaterThan(deepest(air))
})
