import { type NumberStyle, withNumberStyle } from '../units/index.ts'
import { refuseChart, requireAxes, requireLimits } from './chart-check.ts'
import {
  fixed,
  frame,
  label,
  limitLine,
  plotHeight,
  plotWidth,
  scale,
  sideLabels,
  spanOf,
  svgElement,
  uprightAxis,
  wrapped,
} from './chart-frame.ts'
import type { BarChart } from './chart-kinds.ts'
import { escaped } from './escape.ts'
import { vegaAxis, vegaLimits } from './vega-lite.ts'

// From dark to light, so that grey print tells the parts apart; the frame does the rest.
const fills = ['#0A4F78', '#5C9BC2', '#B9D4E4', '#EDF3F7'] as const

/** Bars, plain or stacked, as an SVG element. */
export function barSvg(chart: BarChart, style: NumberStyle): string {
  const { bars, limits = [] } = chart
  const sums = bars.map(({ parts }) => parts.reduce((sum, { value }) => sum + value, 0))
  const up = spanOf({ from: 0, ...chart.y }, [0, ...sums, ...limits.map(({ value }) => value)])
  const y = scale(up, frame.top + plotHeight, frame.top)
  const right = frame.left + plotWidth
  const names = partNames(chart)
  const slot = plotWidth / bars.length
  const width = Math.min(64, slot * 0.62)
  const drawn = bars.flatMap(({ name, parts }, at) => {
    const middle = frame.left + slot * (at + 0.5)
    let base = 0
    const boxes = parts.map((part) => {
      const top = base + part.value
      const box = `<rect x="${fixed(middle - width / 2)}" y="${fixed(y(top))}" width="${fixed(width)}" height="${fixed(Math.max(0, y(base) - y(top)))}" fill="${fills[names.indexOf(part.name)] as string}" stroke="#111" stroke-width="0.8"/>`
      base = top
      return box
    })
    const words = wrapped(name, Math.max(6, Math.floor(slot / 8)))
    return [
      ...boxes,
      ...words.map((word, row) => label(middle, frame.top + plotHeight + 20 + row * 16, word, 'middle')),
    ]
  })
  const last = bars.at(-1)
  const middles = (last?.parts ?? []).map((part, at, all) => {
    const below = all.slice(0, at).reduce((sum, { value }) => sum + value, 0)
    return { text: part.name, colour: '#111', x: right + 8, y: y(below + part.value / 2) + 5 }
  })
  return svgElement(chart, [
    ...uprightAxis(chart.y, up, y, style),
    ...drawn,
    ...limits.map(({ value }) => limitLine(y(value))),
    ...(names.length > 1
      ? []
      : bars.map((_, at) =>
          sumLabel(frame.left + slot * (at + 0.5), y(sums[at] as number), sums[at] as number, style),
        )),
    ...sideLabels([
      ...(names.length > 1 ? middles : []),
      ...limits.map(({ value, label: text }) => ({ text, colour: '#000', x: right + 8, y: y(value) + 5 })),
    ]),
  ])
}

function sumLabel(x: number, y: number, value: number, style: NumberStyle): string {
  const text = withNumberStyle(String(Number(value.toPrecision(3))), style)
  return `<text x="${fixed(x)}" y="${fixed(y - 5)}" text-anchor="middle">${escaped(text)}</text>`
}

/** Names of the parts in the order in which they are stacked. */
function partNames({ bars }: BarChart): string[] {
  return [...new Set(bars.flatMap(({ parts }) => parts.map(({ name }) => name)))]
}

/** Refuses bars that cannot be drawn. */
export function requireBars(chart: BarChart): void {
  requireAxes(chart)
  requireLimits(chart.limits)
  if (chart.bars.length < 1 || chart.bars.length > 8)
    refuseChart('chart.bars', `${String(chart.bars.length)} bars`, '1 to 8 bars', 'Split the chart.')
  const parts = partNames(chart)
  if (parts.length < 1 || parts.length > fills.length)
    refuseChart('chart.bars', `${String(parts.length)} kinds of parts`, '1 to 4 kinds of parts', 'Join small parts.')
  chart.bars.forEach(({ parts: own }, at) => {
    for (const { value } of own) {
      if (!(Number.isFinite(value) && value >= 0))
        refuseChart(
          `chart.bars[${String(at)}]`,
          String(value),
          'a finite number of at least 0',
          'Leave out a part without a value.',
        )
    }
  })
}

/** Bars in the Vega-Lite format. */
export function barVegaLite(chart: BarChart): { readonly data: object; readonly layer: readonly object[] } {
  const values = chart.bars.flatMap(({ name, parts }, bar) =>
    parts.map((part, order) => ({ bar: name, part: part.name, y: part.value, order: bar * 10 + order })),
  )
  return {
    data: { values },
    layer: [
      {
        mark: { type: 'bar', stroke: '#111' },
        encoding: {
          x: { field: 'bar', type: 'nominal', title: null, sort: { field: 'order' } },
          y: { ...vegaAxis('y', chart.y), stack: 'zero' },
          color: { field: 'part', type: 'nominal', title: null, scale: { range: [...fills] } },
          order: { field: 'order', type: 'quantitative' },
        },
      },
      ...vegaLimits(chart.limits),
    ],
  }
}
