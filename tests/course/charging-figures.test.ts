import { expect, test } from 'vitest'
import {
  bankSequenceChart,
  capillaryScaleChart,
  cartridgeLifeChart,
  chartSvg,
  chartVegaLite,
  interstageTemperatureChart,
  stageWaterChart,
} from '../../src/course/index.ts'
import { dryAir, roomCondition } from '../../src/gas-law/index.ts'
import {
  absolute,
  bar,
  celsius,
  centimetre,
  depthOf,
  freeGasFlowOf,
  gram,
  hectopascal,
  internalVolumeOf,
  kilogramPerCubicMetre,
  litre,
  litrePerMinute,
  measure,
  metre,
  one,
  percent,
  temperatureOf,
} from '../../src/units/index.ts'

const head = { id: 'shown', title: 'What is to be seen' }
const room = temperatureOf(20, celsius)

const temperatures = interstageTemperatureChart({
  ...head,
  machine: {
    mixture: dryAir,
    intake: { pressure: absolute(1, bar), temperature: room },
    stages: [{ to: absolute(6, bar) }, { to: absolute(37, bar) }, { to: absolute(225, bar) }],
    path: { process: 'polytropic', exponent: measure(1.3, one) },
  },
  limits: [{ value: 180, label: 'Oil' }],
})
const separator = (bars: number, degrees: number) => ({
  pressure: absolute(bars, bar),
  temperature: temperatureOf(degrees, celsius),
})
const water = stageWaterChart({
  ...head,
  train: {
    intake: { pressure: absolute(1, bar), temperature: room, relativeHumidity: measure(60, percent) },
    flow: measure(100, litrePerMinute),
    separators: [separator(6.5, 30), separator(40, 32), separator(225, 35)],
  },
})
const life = cartridgeLifeChart({
  ...head,
  freeAir: freeGasFlowOf(100, litrePerMinute, roomCondition),
  reference: roomCondition,
  capacity: measure(300, gram),
  temperatures: [20, 30, 40].map((degrees) => temperatureOf(degrees, celsius)),
  pressures: { '200 bar': absolute(200, bar), '100 bar': absolute(100, bar) },
})
const cylinder = (litres: number, bars: number) => ({
  internalVolume: internalVolumeOf(litres, litre),
  mixture: dryAir,
  pressure: absolute(bars, bar),
  temperature: room,
})
const bank = bankSequenceChart({
  ...head,
  fill: { receiver: cylinder(12, 20), bank: [cylinder(50, 100), cylinder(50, 180), cylinder(50, 250)] },
  orders: { 'low to high': [0, 1, 2], 'high to low': [2, 1, 0] },
})
const capillary = capillaryScaleChart({
  ...head,
  gauge: {
    length: measure(10, centimetre),
    scale: { surfacePressure: absolute(1000, hectopascal), density: measure(1019.716, kilogramPerCubicMetre) },
  },
  depths: [0, 10, 20, 40].map((metres) => depthOf(metres, metre)),
})

test.each([temperatures, water, life, bank, capillary].map((chart) => ({ chart, name: chart.description })))(
  'drawn both ways, with cautions and sources: $name',
  ({ chart }) => {
    expect(chartSvg(chart)).toContain('What is to be seen')
    expect(chartVegaLite(chart).title).toBe('What is to be seen')
    expect(chart.cautions?.length).toBeGreaterThan(0)
    expect(chart.sources?.length).toBeGreaterThan(0)
  },
)

test('temperatures after stages of one ratio stand near T₁ r^(1 - 1/n)', () => {
  const expected = 293.15 * 6 ** (1 - 1 / 1.3) - 273.15 // ideal gas; real air within 3 K at 6 bar
  expect(Math.abs((temperatures.bars[0]?.parts[0]?.value ?? 0) - expected)).toBeLessThan(3)
  expect(temperatures.bars).toHaveLength(3)
})

test('water of the separators falls from stage to stage, what is left is a bar of its own', () => {
  expect(water.bars.map(({ name }) => name)).toEqual(['Separator 1', 'Separator 2', 'Separator 3', 'Left'])
  const values = water.bars.map(({ parts }) => parts[0]?.value ?? 0)
  expect([...values].sort((a, b) => b - a)).toEqual(values)
})

test('a cartridge lasts shorter in warm air and at low pressure', () => {
  const [high, low] = life.series
  for (const { y } of life.series) expect(y[0]).toBeGreaterThan((y[2] ?? Infinity) * 2)
  expect(high?.y[1]).toBeGreaterThan(low?.y[1] ?? Infinity)
})

test('a bank opened from low to high reaches more', () => {
  expect(bank.series.map(({ y }) => Math.round(y.at(-1) ?? 0))).toEqual([231, 199])
  expect(bank.series[0]?.x).toEqual([0, 1, 2, 3])
})

test('the marks of a capillary gauge crowd with depth', () => {
  expect(capillary.series[0]?.y.map((y) => y.toFixed(2))).toEqual(['0.00', '50.00', '66.67', '80.00'])
})
