import { expect, test } from 'vitest'
import { ticks } from '../../src/course/chart-frame.ts'
import { chartSvg, chartTable, chartVegaLite, type LineChart } from '../../src/course/index.ts'

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
  expect(notes).toEqual([`${rows.length} of 60 points, evenly spaced.`])
})

test('a closed loop returns to its start and shows its direction', () => {
  const loop: LineChart = { ...chart, series: [{ name: 'breath', x: [0, 1, 2, 1], y: [0, -1, 0, 1], closed: true }] }
  expect(chartSvg(loop)).toMatch(/Z" fill="none"/)
  expect(chartSvg(loop).match(/d="M-6 -5L7 0L-6 5Z"/g)).toHaveLength(2)
  expect(chartVegaLite(loop).data.values).toHaveLength(5)
})

test.each([
  [{ series: [] }, 'chart.series', 'input'],
  [{ series: Array.from({ length: 5 }, () => ({ name: 'x', x: [0, 1], y: [0, 1] })) }, 'chart.series', 'input'],
  [{ series: [{ name: 'x', x: [0, 1], y: [0] }] }, 'chart.series[0]', 'input'],
  [{ series: [{ name: 'x', x: [0, 1], y: [0, Number.NaN] }] }, 'chart.series[0].y[1]', 'range'],
  [{ limits: [{ value: Number.NaN, label: 'none' }] }, 'chart.limits[0].value', 'range'],
])('%# refuses what cannot be drawn', (change, argument, code) => {
  expect(() => chartSvg({ ...chart, ...change })).toThrow(expect.objectContaining({ code, argument }))
})

test('a map is written with its cells between their edges and its lines of equal value, as a specification too', () => {
  // z = 10 x + y: the line of 15 runs from (1.4, 1) to (1.3, 2), and on to (1.2, 3)
  const map = {
    kind: 'heat map',
    id: 'map',
    title: 'A map',
    description: 'Cells that grow to the right and upward.',
    x: { label: 'x', unit: 'm', values: [1, 2] },
    y: { label: 'y', unit: 's', values: [1, 2, 3] },
    z: { label: 'z', unit: 'bar' },
    cells: [1, 2, 3].map((y) => [1, 2].map((x) => 10 * x + y)),
    contours: [15],
  } as const
  const spec = chartVegaLite(map) as unknown as {
    data: { values: object[] }
    layer: {
      mark: { type: string }
      data?: { values: Record<string, number>[] }
      encoding: { x: { scale?: object } }
    }[]
  }
  expect(spec.data.values[3]).toEqual({ x: 1.5, x2: 2, y: 1.5, y2: 2.5, z: 22 })
  expect(spec.layer.map(({ mark }) => mark.type)).toEqual(['rect', 'rule', 'text'])
  expect(spec.layer[0]?.encoding.x.scale).toMatchObject({ domainMin: 1, domainMax: 2 })
  const segments = spec.layer[1]?.data?.values ?? []
  for (const { x = 0, y = 0, x2 = 0, y2 = 0 } of segments) {
    expect(10 * x + y).toBeCloseTo(15, 12)
    expect(10 * x2 + y2).toBeCloseTo(15, 12)
  }
  expect(Math.min(...segments.flatMap(({ y = 0, y2 = 0 }) => [y, y2]))).toBe(1)
  expect(Math.max(...segments.flatMap(({ y = 0, y2 = 0 }) => [y, y2]))).toBe(3)
  expect(spec.layer[2]?.data?.values).toEqual([{ x: expect.closeTo(1.4, 12) as number, y: 1, z: 15 }])
  expect((chartVegaLite({ ...map, contours: [] }) as unknown as typeof spec).layer).toHaveLength(1)
  expect(chartSvg(map)).toContain('>15</text>')
})

test('lines keep their order in a specification, and what stands inside a chart is written there', () => {
  const spec = chartVegaLite({ ...chart, note: { x: 100, y: 2000, text: '1.2 J/L' } }) as unknown as {
    layer: { encoding: { color?: { sort: null } }; data?: { values: object[] } }[]
  }
  expect(spec.layer[0]?.encoding.color?.sort).toBeNull()
  expect(spec.layer.at(-1)?.data?.values).toEqual([{ x: 100, y: 2000, text: '1.2 J/L' }])
})
