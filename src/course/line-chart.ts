import type { NumberStyle } from '../units/index.ts'
import { refuseChart, requireAxes, requireLimits } from './chart-check.ts'
import {
  fixed,
  frame,
  label,
  levelAxis,
  limitLine,
  plotHeight,
  plotWidth,
  scale,
  sideLabels,
  spanOf,
  strokes,
  svgElement,
  uprightAxis,
} from './chart-frame.ts'
import type { LineChart, Series } from './chart-kinds.ts'
import { vegaAxis, vegaLimits } from './vega-lite.ts'

/** A chart of lines as an SVG element. */
export function lineSvg(chart: LineChart, style: NumberStyle): string {
  const limits = chart.limits ?? []
  const across = spanOf(
    chart.x,
    chart.series.flatMap((series) => series.x),
  )
  const up = spanOf(chart.y, [...chart.series.flatMap((series) => series.y), ...limits.map(({ value }) => value)])
  const x = scale(across, frame.left, frame.left + plotWidth)
  const y = scale(up, frame.top + plotHeight, frame.top)
  const right = frame.left + plotWidth
  const clip = `<clipPath id="${chart.id}-plot"><rect x="${String(frame.left)}" y="${String(frame.top - 2)}" width="${String(plotWidth)}" height="${String(plotHeight + 4)}"/></clipPath>`
  return svgElement(chart, [
    clip,
    ...uprightAxis(chart.y, up, y, style),
    ...levelAxis(chart.x, across, x, style),
    ...limits.map(({ value }) => limitLine(y(value))),
    `<g clip-path="url(#${chart.id}-plot)">`,
    ...chart.series.map((series, index) => drawn(series, index, x, y)),
    '</g>',
    ...sideLabels([
      ...chart.series.flatMap((series, index) => (series.closed ? [] : [nameAtEnd(series, index, x, y, right)])),
      ...limits.map(({ value, label: text }) => ({ text, colour: '#000', x: right + 8, y: y(value) + 5 })),
    ]),
    ...(chart.note === undefined ? [] : [label(x(chart.note.x), y(chart.note.y), chart.note.text, 'middle')]),
  ])
}

/** The name of a line at its end; where two lines meet there, the one that comes from above stands above. */
function nameAtEnd(
  series: Series,
  index: number,
  x: (n: number) => number,
  y: (n: number) => number,
  right: number,
): { text: string; colour: string; x: number; y: number; rank: number } {
  const { colour } = strokes[index] as (typeof strokes)[number]
  const before = series.y[Math.floor((series.y.length - 1) * 0.6)] as number
  return {
    text: series.name,
    colour,
    x: Math.min(x(series.x.at(-1) as number), right) + 8,
    y: Math.min(Math.max(y(series.y.at(-1) as number), frame.top), frame.top + plotHeight) + 5,
    rank: y(before),
  }
}

/** Refuses lines that cannot be drawn. */
export function requireLines(chart: LineChart): void {
  requireAxes(chart)
  requireLimits(chart.limits)
  const { note } = chart
  if (note !== undefined && !(Number.isFinite(note.x) && Number.isFinite(note.y)))
    refuseChart(
      'chart.note',
      `${String(note.x)}, ${String(note.y)}`,
      'two finite numbers',
      'Place the note at a point.',
    )
  if (chart.series.length < 1 || chart.series.length > strokes.length) {
    refuseChart(
      'chart.series',
      `${String(chart.series.length)} lines`,
      `1 to ${String(strokes.length)} lines`,
      'Split the chart: more lines cannot be told apart in grey.',
    )
  }
  chart.series.forEach((series, index) => {
    requireSeries(series, `chart.series[${String(index)}]`)
  })
}

/** Refuses a line without two points, or with a value that is not a number. */
export function requireSeries(series: Series, argument: string): void {
  if (series.x.length !== series.y.length || series.x.length < 2) {
    refuseChart(
      argument,
      `${String(series.x.length)} x and ${String(series.y.length)} y`,
      'at least two points, as many x as y',
      'Give one y for each x.',
    )
  }
  const bad = [...series.x, ...series.y].find((n) => !Number.isFinite(n))
  if (bad !== undefined) refuseChart(argument, String(bad), 'finite numbers', 'Leave out points without a value.')
}

export function drawn(series: Series, index: number, x: (n: number) => number, y: (n: number) => number): string {
  const { colour, dash, width } = strokes[index] as (typeof strokes)[number]
  const points = series.x.map((value, at) => [x(value), y(series.y[at] as number)] as const)
  const path = `M${points.map(([px, py]) => `${fixed(px)} ${fixed(py)}`).join('L')}${series.closed ? 'Z' : ''}`
  const stroke = `<path d="${path}" fill="none" stroke="${colour}" stroke-width="${String(width)}" stroke-linejoin="round"${dash === '' ? '' : ` stroke-dasharray="${dash}"`}/>`
  return series.closed ? stroke + arrows(points, colour) : stroke
}

/** Two arrow heads on a loop, a quarter and three quarters of the way round its length. */
function arrows(points: readonly (readonly [number, number])[], colour: string): string {
  const runs: number[] = [] // length of the loop up to the end of each segment
  points.forEach(([px, py], at) => {
    const [nx, ny] = points[(at + 1) % points.length] as readonly [number, number]
    runs.push((runs.at(-1) ?? 0) + Math.hypot(nx - px, ny - py))
  })
  const total = runs.at(-1) ?? 0
  return [0.2, 0.7]
    .map((share) => {
      const at = Math.max(
        0,
        runs.findIndex((run) => run >= share * total),
      )
      const back = points[(at + points.length - 2) % points.length] as readonly [number, number]
      const tip = points[(at + 3) % points.length] as readonly [number, number]
      const angle = (Math.atan2(tip[1] - back[1], tip[0] - back[0]) * 180) / Math.PI
      const [px, py] = points[at] as readonly [number, number]
      return `<path d="M-6 -5L7 0L-6 5Z" fill="${colour}" transform="translate(${fixed(px)} ${fixed(py)}) rotate(${fixed(angle)})"/>`
    })
    .join('')
}

/** A chart of lines in the Vega-Lite format. */
export function lineVegaLite(chart: LineChart): { readonly data: object; readonly layer: readonly object[] } {
  return {
    data: {
      values: chart.series.flatMap((series) => {
        const points = series.x.map((x, order) => ({ series: series.name, order, x, y: series.y[order] as number }))
        const first = points[0]
        return series.closed && first !== undefined ? [...points, { ...first, order: points.length }] : points
      }),
    },
    layer: [
      {
        mark: { type: 'line' },
        encoding: {
          x: vegaAxis('x', chart.x),
          y: vegaAxis('y', chart.y),
          order: { field: 'order', type: 'quantitative' },
          // in the order of the lines, not of the alphabet
          color: { field: 'series', type: 'nominal', title: null, sort: null },
          strokeDash: { field: 'series', type: 'nominal', title: null, sort: null },
        },
      },
      ...vegaLimits(chart.limits),
      ...(chart.note === undefined ? [] : [vegaNote(chart.note)]),
    ],
  }
}

function vegaNote({ x, y, text }: NonNullable<LineChart['note']>): object {
  return {
    data: { values: [{ x, y, text }] },
    mark: { type: 'text' },
    encoding: {
      x: { field: 'x', type: 'quantitative' },
      y: { field: 'y', type: 'quantitative' },
      text: { field: 'text' },
    },
  }
}
