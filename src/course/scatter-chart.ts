import type { NumberStyle } from '../units/index.ts'
import { refuseChart, requireAxes, requireLimits } from './chart-check.ts'
import {
  fixed,
  frame,
  levelAxis,
  limitLine,
  plotHeight,
  plotWidth,
  scale,
  sideLabels,
  spanOf,
  svgElement,
  uprightAxis,
} from './chart-frame.ts'
import type { ScatterChart } from './chart-kinds.ts'
import { drawn, requireSeries } from './line-chart.ts'
import { vegaAxis, vegaLimits } from './vega-lite.ts'

/** Points with their intervals as an SVG element. */
export function scatterSvg(chart: ScatterChart, style: NumberStyle): string {
  const { points, line, limits = [] } = chart
  const across = spanOf(chart.x, [...points.map(({ x }) => x), ...(line?.x ?? [])])
  const up = spanOf(chart.y, [
    ...points.flatMap(({ y, low = y, high = y }) => [y, low, high]),
    ...(line?.y ?? []),
    ...limits.map(({ value }) => value),
  ])
  const x = scale(across, frame.left, frame.left + plotWidth)
  const y = scale(up, frame.top + plotHeight, frame.top)
  const right = frame.left + plotWidth
  return svgElement(chart, [
    ...uprightAxis(chart.y, up, y, style),
    ...levelAxis(chart.x, across, x, style),
    ...limits.map(({ value }) => limitLine(y(value))),
    ...(line === undefined ? [] : [drawn(line, 0, x, y)]),
    ...points.map(({ x: px, y: py, low, high }) => {
      const dot = `<circle cx="${fixed(x(px))}" cy="${fixed(y(py))}" r="3.6" fill="#111"/>`
      if (low === undefined || high === undefined) return dot
      const [at, top, base] = [fixed(x(px)), fixed(y(high)), fixed(y(low))]
      return `<path d="M${at} ${top}V${base}M${fixed(x(px) - 5)} ${top}h10M${fixed(x(px) - 5)} ${base}h10" stroke="#111" stroke-width="1.2" fill="none"/>${dot}`
    }),
    ...sideLabels([
      ...(line === undefined
        ? []
        : [{ text: line.name, colour: '#0072B2', x: right + 8, y: y(line.y.at(-1) as number) + 5 }]),
      ...limits.map(({ value, label: text }) => ({ text, colour: '#000', x: right + 8, y: y(value) + 5 })),
    ]),
  ])
}

/** Refuses points that cannot be drawn. */
export function requireScatter(chart: ScatterChart): void {
  requireAxes(chart)
  requireLimits(chart.limits)
  if (chart.points.length < 1) refuseChart('chart.points', 'none', 'at least one point', 'Give the points.')
  chart.points.forEach(({ x, y, low = y, high = y }, at) => {
    if (!([x, y, low, high].every(Number.isFinite) && low <= y && y <= high))
      refuseChart(
        `chart.points[${String(at)}]`,
        `${String(x)}, ${String(y)} (${String(low)} to ${String(high)})`,
        'finite numbers, y within its interval',
        'Leave out points without a value.',
      )
  })
  if (chart.line !== undefined) requireSeries(chart.line, 'chart.line')
}

/** Points in the Vega-Lite format. */
export function scatterVegaLite(chart: ScatterChart): { readonly data: object; readonly layer: readonly object[] } {
  const { points, line } = chart
  const encoding = { x: vegaAxis('x', chart.x), y: vegaAxis('y', chart.y) }
  return {
    data: { values: points.map(({ x, y, low = y, high = y }) => ({ x, y, low, high })) },
    layer: [
      { mark: { type: 'rule' }, encoding: { ...encoding, y: vegaAxis('low', chart.y), y2: { field: 'high' } } },
      { mark: { type: 'point', filled: true }, encoding },
      ...(line === undefined
        ? []
        : [{ data: { values: line.x.map((x, at) => ({ x, y: line.y[at] })) }, mark: { type: 'line' }, encoding }]),
      ...vegaLimits(chart.limits),
    ],
  }
}
