import { expect, test } from 'vitest'
import { chartSvg, chartTable, chartVegaLite, type LineChart, ticks } from '../../src/course/index.ts'

const chart: LineChart = {
  id: 'free-gas',
  title: 'A 300 bar cylinder holds a fifth more, not a third',
  description: 'Free gas of a 12 litre cylinder against gauge pressure, real and ideal; the lines part above 200 bar.',
  x: { label: 'Gauge pressure', unit: 'bar', from: 0 },
  y: { label: 'Free gas', unit: 'L', from: 0 },
  series: [
    { name: 'ideal gas', x: [0, 100, 200, 300], y: [0, 1200, 2400, 3600] },
    { name: 'air', x: [0, 100, 200, 300], y: [0, 1215, 2330, 3220] },
  ],
  limits: [{ value: 3000, label: 'a limit' }],
}

test.each([
  [0, 232, [0, 50, 100, 150, 200, 250]],
  [-25, 15, [-30, -20, -10, 0, 10, 20]],
  [0, 0.0031, [0, 0.001, 0.002, 0.003, 0.004]],
  [1e5, 4e5, [1e5, 2e5, 3e5, 4e5]],
] as const)('ticks from %s to %s are round and cover the data', (from, to, expected) => {
  expect(ticks(from, to)).toEqual(expected)
})

test('has a role, a title, a description, units on both axes and a name at the end of each line', () => {
  const svg = chartSvg(chart)
  expect(svg).toMatch(/^<svg [^>]*role="img" aria-labelledby="free-gas-title free-gas-desc"/)
  for (const text of [
    '<title id="free-gas-title">',
    '<desc id="free-gas-desc">',
    'Gauge pressure, bar',
    'Free gas, L',
    '>ideal gas<',
    '>air<',
    '>a limit<',
  ])
    expect(svg).toContain(text)
  expect(svg).not.toMatch(/NaN|undefined|<script|style=/)
})

test('points lie where their numbers say', () => {
  const path = /d="M([\d.]+) ([\d.]+)L[^"]*?([\d.]+) ([\d.]+)"/.exec(chartSvg(chart))?.slice(1).map(Number)
  // plot from x 68 to 414 over 0 to 300 bar, y 332 to 16 over 0 to 4000 L
  expect(path).toEqual([68, 332, 414, expect.closeTo(332 - (3600 / 4000) * 316, 0)])
})

test('writes the same data as a Vega-Lite specification and as a table', () => {
  const spec = chartVegaLite(chart)
  expect(spec.data.values).toHaveLength(8)
  expect(spec.data.values[7]).toEqual({ series: 'air', order: 3, x: 300, y: 3220 })
  expect(JSON.parse(JSON.stringify(spec))).toEqual(spec)
  const table = chartTable(chart)
  expect(table.rows[3]).toEqual(['300', '3600', '3220'])
  expect(table.columns.map((column) => column.unit)).toEqual(['bar', 'L', 'L'])
})

test('the table of a chart lines up its decimals and says how much of the data it prints', () => {
  const x = Array.from({ length: 60 }, (_, n) => n / 2)
  const { rows, notes } = chartTable({ ...chart, series: [{ name: 'line', x, y: x.map((n) => 210 - n * 5.123) }] })
  expect(rows.slice(0, 2)).toEqual([
    ['0.0', '210.0'],
    ['1.5', '202.3'],
  ])
  expect(rows.at(-1)).toEqual(['29.5', '58.9'])
  expect(notes).toEqual([`${rows.length} of 60 points, evenly spread.`])
})

test('a closed loop returns to its start and shows its direction', () => {
  const loop: LineChart = { ...chart, series: [{ name: 'breath', x: [0, 1, 2, 1], y: [0, -1, 0, 1], closed: true }] }
  expect(chartSvg(loop)).toMatch(/Z" fill="none"/)
  expect(chartSvg(loop).match(/d="M-6 -5L7 0L-6 5Z"/g)).toHaveLength(2)
  expect(chartVegaLite(loop).data.values).toHaveLength(5)
})

test.each([
  [{ series: [] }, 'chart.series'],
  [{ series: Array.from({ length: 5 }, () => ({ name: 'x', x: [0, 1], y: [0, 1] })) }, 'chart.series'],
  [{ series: [{ name: 'x', x: [0, 1], y: [0] }] }, 'chart.series[0]'],
  [{ series: [{ name: 'x', x: [0, 1], y: [0, Number.NaN] }] }, 'chart.series[0]'],
  [{ limits: [{ value: Number.NaN, label: 'none' }] }, 'chart.limits[0]'],
])('%# refuses what cannot be drawn', (change, argument) => {
  expect(() => chartSvg({ ...chart, ...change })).toThrow(expect.objectContaining({ code: 'input', argument }))
})
