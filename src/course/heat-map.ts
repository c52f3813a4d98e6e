import { type NumberStyle, withNumberStyle } from '../units/index.ts'
import { refuseChart, requireAxes } from './chart-check.ts'
import {
  axisTitle,
  fixed,
  frame,
  label,
  levelAxis,
  plotHeight,
  plotWidth,
  scale,
  spanOf,
  svgElement,
  ticks,
  uprightAxis,
  wrapped,
} from './chart-frame.ts'
import type { HeatMap } from './chart-kinds.ts'
import { vegaAxis } from './vega-lite.ts'

/** A map of cells with lines of equal value as an SVG element. */
export function heatMapSvg(chart: HeatMap, style: NumberStyle): string {
  const { x: xs, y: ys, z, cells, contours = [] } = chart
  const x = scale(spanOf(xs, xs.values), frame.left, frame.left + plotWidth)
  const y = scale(spanOf(ys, ys.values), frame.top + plotHeight, frame.top)
  const all = cells.flat()
  const [least, most] = [Math.min(...all), Math.max(...all)]
  const [columns, rows] = [edgesOf(xs.values), edgesOf(ys.values)]
  const boxes = cells.flatMap((row, at) =>
    row.map((value, across) => {
      const [left, right] = [x(columns[across] as number), x(columns[across + 1] as number)]
      const [base, top] = [y(rows[at] as number), y(rows[at + 1] as number)]
      return `<rect x="${fixed(left)}" y="${fixed(top)}" width="${fixed(right - left + 0.4)}" height="${fixed(base - top + 0.4)}" fill="${shade(value, least, most)}"/>`
    }),
  )
  const right = frame.left + plotWidth
  const steps = ticks(least, most > least ? most : least + 1, 4).filter((value) => value >= least && value <= most)
  const legend = steps.map((value, at) => {
    const top = frame.top + 22 + wrapped(axisTitle(z), 15).length * 16 + at * 26
    return `<rect x="${fixed(right + 10)}" y="${fixed(top)}" width="18" height="18" fill="${shade(value, least, most)}" stroke="#333" stroke-width="0.6"/>${label(right + 34, top + 14, numberText(value, style), 'start')}`
  })
  return svgElement(chart, [
    `<clipPath id="${chart.id}-plot"><rect x="${String(frame.left)}" y="${String(frame.top)}" width="${String(plotWidth)}" height="${String(plotHeight)}"/></clipPath>`,
    `<g clip-path="url(#${chart.id}-plot)">`,
    ...boxes,
    '</g>',
    ...uprightAxis(ys, spanOf(ys, ys.values), y, style).filter((part) => !part.includes('#ddd')),
    ...levelAxis(xs, spanOf(xs, xs.values), x, style),
    ...contours.map((value) => contourOf(chart, value, x, y, style)),
    ...wrapped(axisTitle(z), 15).map((text, at) => label(right + 10, frame.top + 12 + at * 16, text, 'start')),
    ...legend,
  ])
}

function numberText(value: number, style: NumberStyle): string {
  return withNumberStyle(String(Number(value.toPrecision(4))), style)
}

/** From white to dark blue: lightness alone carries the value, so that grey print works. */
function shade(value: number, least: number, most: number): string {
  const share = most > least ? Math.min(1, Math.max(0, (value - least) / (most - least))) : 0
  const part = (light: number, dark: number): number => Math.round(light + (dark - light) * share)
  return `rgb(${String(part(247, 60))},${String(part(250, 120))},${String(part(252, 170))})`
}

/** Borders of cells halfway between their values; the outer ones at the outermost values. */
function edgesOf(values: readonly number[]): number[] {
  const between = values.slice(1).map((value, at) => (value + (values[at] as number)) / 2)
  return [values[0] as number, ...between, values.at(-1) as number]
}

type Point = readonly [x: number, y: number]

/** The line of one value, from triangle to triangle between the cells, in the units of the axes. */
function segmentsOf({ x: { values: xs }, y: { values: ys }, cells }: HeatMap, value: number): [Point, Point][] {
  const at = (row: number, column: number): readonly [number, number, number] => [
    xs[column] as number,
    ys[row] as number,
    (cells[row] as readonly number[])[column] as number,
  ]
  const segments: [Point, Point][] = []
  for (let row = 0; row + 1 < ys.length; row++) {
    for (let column = 0; column + 1 < xs.length; column++) {
      const corners = [at(row, column), at(row, column + 1), at(row + 1, column + 1), at(row + 1, column)] as const
      for (const triangle of [
        [corners[0], corners[1], corners[2]],
        [corners[0], corners[2], corners[3]],
      ]) {
        const [one, other] = triangle.flatMap((from, index): Point[] => {
          const to = triangle[(index + 1) % 3] as readonly [number, number, number]
          if (from[2] < value === to[2] < value) return []
          const share = (value - from[2]) / (to[2] - from[2])
          return [[from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]]
        })
        if (one !== undefined && other !== undefined) segments.push([one, other])
      }
    }
  }
  return segments
}

/** Where a line of equal value ends, furthest across: there stands its number. */
function endOf(segments: readonly [Point, Point][]): Point | undefined {
  return segments
    .flat()
    .reduce<Point | undefined>((last, cut) => (last === undefined || cut[0] > last[0] ? cut : last), undefined)
}

function contourOf(
  chart: HeatMap,
  value: number,
  x: (n: number) => number,
  y: (n: number) => number,
  style: NumberStyle,
): string {
  const segments = segmentsOf(chart, value)
  const last = endOf(segments)
  if (last === undefined) return ''
  const path = segments
    .map((ends) => `M${ends.map(([px, py]) => `${fixed(x(px))} ${fixed(y(py))}`).join('L')}`)
    .join('')
  return `<path d="${path}" fill="none" stroke="#111" stroke-width="1.3"/><text x="${fixed(x(last[0]) - 4)}" y="${fixed(y(last[1]) - 5)}" text-anchor="end" stroke="#fff" stroke-width="3" paint-order="stroke">${numberText(value, style)}</text>`
}

/** Refuses a map that cannot be drawn. */
export function requireHeatMap(chart: HeatMap): void {
  requireAxes(chart)
  const { x, y, cells, contours = [] } = chart
  for (const [name, values] of Object.entries({ x: x.values, y: y.values })) {
    const rising = values.every(
      (value, at) => Number.isFinite(value) && (at === 0 || value > (values[at - 1] as number)),
    )
    if (values.length < 2 || !rising)
      refuseChart(
        `chart.${name}.values`,
        values.slice(0, 6).join(', '),
        'at least two finite numbers, rising',
        'Sort the values.',
      )
  }
  const fits = cells.length === y.values.length && cells.every((row) => row.length === x.values.length)
  if (!fits)
    refuseChart('chart.cells', `${String(cells.length)} rows`, 'a row for each y, a cell for each x', 'Fill the map.')
  const bad = [...cells.flat(), ...contours].find((value) => !Number.isFinite(value))
  if (bad !== undefined)
    refuseChart('chart.cells', String(bad), 'finite numbers', 'Narrow the map to where it has values.')
}

/** A map of cells with its lines of equal value in the Vega-Lite format. */
export function heatMapVegaLite(chart: HeatMap): { readonly data: object; readonly layer: readonly object[] } {
  const { x, y, z, cells, contours = [] } = chart
  const [columns, rows] = [edgesOf(x.values), edgesOf(y.values)]
  const lines = contours.map((value) => ({ value, segments: segmentsOf(chart, value) }))
  const place = { x: { field: 'x', type: 'quantitative' }, y: { field: 'y', type: 'quantitative' } }
  const ends = { x2: { field: 'x2' }, y2: { field: 'y2' } }
  const contourLayers = [
    {
      data: {
        values: lines.flatMap(({ segments }) => segments.map(([[x1, y1], [x2, y2]]) => ({ x: x1, y: y1, x2, y2 }))),
      },
      mark: { type: 'rule', color: '#111' },
      encoding: { ...place, ...ends },
    },
    {
      data: {
        values: lines.flatMap(({ value, segments }) => {
          const end = endOf(segments)
          return end === undefined ? [] : [{ x: end[0], y: end[1], z: value }]
        }),
      },
      mark: { type: 'text', align: 'right', dx: -4, dy: -6 },
      encoding: { ...place, text: { field: 'z', type: 'quantitative' } },
    },
  ]
  return {
    data: {
      values: cells.flatMap((row, at) =>
        row.map((value, across) => ({
          x: columns[across],
          x2: columns[across + 1],
          y: rows[at],
          y2: rows[at + 1],
          z: value,
        })),
      ),
    },
    layer: [
      {
        mark: { type: 'rect' },
        encoding: {
          x: within(vegaAxis('x', x), columns),
          y: within(vegaAxis('y', y), rows),
          ...ends,
          color: {
            field: 'z',
            type: 'quantitative',
            title: axisTitle(z),
            scale: { range: [shade(0, 0, 1), shade(1, 0, 1)] },
          },
        },
      },
      ...(contours.length === 0 ? [] : contourLayers),
    ],
  }
}

/** An axis that begins and ends with the cells, where it is not told otherwise. */
function within(axis: object, edges: readonly number[]): object {
  const scale = { domainMin: edges[0], domainMax: edges.at(-1), nice: false, zero: false }
  return { ...axis, scale: { ...scale, ...('scale' in axis && typeof axis.scale === 'object' ? axis.scale : {}) } }
}
