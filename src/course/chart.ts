import { LitrebarError } from '../errors/index.ts'
import { type NumberStyle, roundNumber, withNumberStyle } from '../units/index.ts'
import type { CautionName, CitedSource, SourceName } from './cited.ts'
import { escaped, requireId } from './escape.ts'

/** One axis. Numbers of a chart are plain numbers in the unit that the axis states. */
export interface Axis {
  readonly label: string
  /** Symbol of the unit; empty for a pure number. */
  readonly unit: string
  /** Where the axis starts, where the physics says so; else at the round value below the data. */
  readonly from?: number
  readonly to?: number
}

/** One line of a chart. */
export interface Series {
  readonly name: string
  readonly x: readonly number[]
  readonly y: readonly number[]
  /** A loop: the last point joins the first, arrows show the way round. */
  readonly closed?: boolean
}

/** A value that a line of the chart may be held against. */
export interface LimitLine {
  readonly value: number
  readonly label: string
}

/** A line chart as data. Title and description are what a reader, or a listener, should see in it. */
export interface Chart {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** The chart in words, for those who do not see it. */
  readonly description: string
  readonly x: Axis
  readonly y: Axis
  /** At most four. */
  readonly series: readonly Series[]
  readonly limits?: readonly LimitLine[]
  /** Text inside the chart, at a point of it. */
  readonly note?: { readonly x: number; readonly y: number; readonly text: string }
  /** Cautions and sources that belong to the numbers; every writer of a chapter prints them. */
  readonly cautions?: readonly CautionName[]
  readonly sources?: readonly (SourceName | CitedSource)[]
}

// Dash and weight tell lines apart before colour does, so that grey print works; the colours follow the Okabe–Ito set,
// two of them darkened until text in them stands 4.5:1 against white.
const strokes = [
  { colour: '#0072B2', dash: '', width: 2.4 },
  { colour: '#B34A00', dash: '7 4', width: 2 },
  { colour: '#00775A', dash: '2 3', width: 2.2 },
  { colour: '#000000', dash: '10 3 2 3', width: 1.4 },
] as const

const frame = { width: 680, height: 420, left: 74, right: 150, top: 16, bottom: 58 }
const plotWidth = frame.width - frame.left - frame.right
const plotHeight = frame.height - frame.top - frame.bottom

/**
 * Round values for the ticks of an axis.
 *
 * @param from - lower end of the data
 * @param to - upper end of the data, above `from`
 * @param about - how many steps are wanted
 * @returns values at 1, 2 or 5 times a power of ten, covering the data
 * @example
 * ticks(0, 232, 5) // => [0, 50, 100, 150, 200, 250]
 */
export function ticks(from: number, to: number, about = 5): number[] {
  const rough = (to - from) / about
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = ([1, 2, 5, 10].find((multiple) => multiple * power >= rough * 0.999) ?? 10) * power
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
  const first = Math.floor(from / step + 1e-9)
  const last = Math.ceil(to / step - 1e-9)
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toFixed(decimals)))
}

/**
 * A chart as an SVG element with title, description, axes, units and lines labelled at their end.
 *
 * @param chart - the chart as data
 * @param style - decimal sign and grouping of the tick labels
 * @returns the `svg` element, without scripts, styled by attributes only
 * @throws LitrebarError `input` for no series, more than four, unequal columns, or a number that is not finite
 */
export function chartSvg(chart: Chart, style: NumberStyle = {}): string {
  requireChart(chart)
  const all = (axis: 'x' | 'y'): number[] => [
    ...chart.series.flatMap((series) => series[axis]),
    ...(axis === 'y' ? (chart.limits ?? []).map((limit) => limit.value) : []),
  ]
  const xTicks = axisTicks(chart.x, all('x'))
  const yTicks = axisTicks(chart.y, all('y'))
  const x = scale(xTicks, frame.left, frame.left + plotWidth)
  const y = scale(yTicks, frame.top + plotHeight, frame.top)
  const bottom = frame.top + plotHeight
  const right = frame.left + plotWidth
  const parts = [
    `<title id="${chart.id}-title">${escaped(chart.title)}</title>`,
    `<desc id="${chart.id}-desc">${escaped(chart.description)}</desc>`,
    ...yTicks.flatMap((tick) => [
      line(frame.left, y(tick), right, y(tick), tick === 0 ? '#666' : '#ddd'),
      label(frame.left - 8, y(tick) + 4.5, tickText(tick, yTicks, style), 'end'),
    ]),
    ...xTicks.flatMap((tick) => [
      line(x(tick), bottom, x(tick), bottom + 5, '#333'),
      label(x(tick), bottom + 21, tickText(tick, xTicks, style), 'middle'),
    ]),
    line(frame.left, frame.top, frame.left, bottom, '#333'),
    line(frame.left, bottom, right, bottom, '#333'),
    label(frame.left + plotWidth / 2, frame.height - 12, axisTitle(chart.x), 'middle'),
    `<text x="18" y="${fixed(frame.top + plotHeight / 2)}" text-anchor="middle" transform="rotate(-90 18 ${fixed(frame.top + plotHeight / 2)})">${escaped(axisTitle(chart.y))}</text>`,
    ...(chart.limits ?? []).flatMap((limit) => [
      `<line x1="${fixed(frame.left)}" y1="${fixed(y(limit.value))}" x2="${fixed(right)}" y2="${fixed(y(limit.value))}" stroke="#000" stroke-width="1.2" stroke-dasharray="1 4" stroke-linecap="round"/>`,
    ]),
    ...chart.series.map((series, index) => drawn(series, index, x, y)),
    ...endLabels(chart, x, y, right),
    ...(chart.note === undefined ? [] : [label(x(chart.note.x), y(chart.note.y), chart.note.text, 'middle')]),
  ]
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${chart.id}-title ${chart.id}-desc" viewBox="0 0 ${String(frame.width)} ${String(frame.height)}" font-family="system-ui, sans-serif" font-size="14" fill="#111">`,
    ...parts,
    '</svg>',
  ].join('\n')
}

/** A chart of values on a grammar-of-graphics engine: version 5 of the Vega-Lite format, an open specification. */
export interface VegaLiteChart {
  readonly $schema: string
  readonly title: string
  readonly description: string
  readonly width: number
  readonly height: number
  readonly data: {
    readonly values: readonly {
      readonly series: string
      readonly order: number
      readonly x: number
      readonly y: number
    }[]
  }
  readonly layer: readonly object[]
}

/**
 * A chart as a Vega-Lite specification, for those who set their own look.
 *
 * @param chart - the chart as data
 * @returns plain JSON with the data inside
 * @throws LitrebarError `input` as `chartSvg`
 */
export function chartVegaLite(chart: Chart): VegaLiteChart {
  requireChart(chart)
  const scaleOf = (axis: Axis): object => ({
    ...(axis.from !== undefined && { domainMin: axis.from }),
    ...(axis.to !== undefined && { domainMax: axis.to }),
  })
  const limits = (chart.limits ?? []).map((limit) => ({ y: limit.value, label: limit.label }))
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v5.json',
    title: chart.title,
    description: chart.description,
    width: plotWidth,
    height: plotHeight,
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
          x: { field: 'x', type: 'quantitative', title: axisTitle(chart.x), scale: scaleOf(chart.x) },
          y: { field: 'y', type: 'quantitative', title: axisTitle(chart.y), scale: scaleOf(chart.y) },
          order: { field: 'order', type: 'quantitative' },
          color: { field: 'series', type: 'nominal', title: null },
          strokeDash: { field: 'series', type: 'nominal', title: null },
        },
      },
      ...(limits.length === 0
        ? []
        : [
            {
              data: { values: limits },
              layer: [
                { mark: { type: 'rule', strokeDash: [1, 4] }, encoding: { y: { field: 'y', type: 'quantitative' } } },
                {
                  mark: { type: 'text', align: 'left', dy: -6 },
                  encoding: { y: { field: 'y', type: 'quantitative' }, x: { value: 4 }, text: { field: 'label' } },
                },
              ],
            },
          ]),
    ],
  }
}

function requireChart(chart: Chart): void {
  const refuse = (argument: string, value: string, expected: string, hint: string): never => {
    throw new LitrebarError({ code: 'input', argument, value, expected, hint })
  }
  requireId('chart.id', chart.id)
  for (const [name, axis] of Object.entries({ x: chart.x, y: chart.y })) {
    for (const end of [axis.from, axis.to]) {
      if (end !== undefined && !Number.isFinite(end))
        refuse(`chart.${name}`, String(end), 'a finite number', 'Leave out an end of an axis that is not known.')
    }
  }
  const { note } = chart
  if (note !== undefined && !(Number.isFinite(note.x) && Number.isFinite(note.y)))
    refuse('chart.note', `${String(note.x)}, ${String(note.y)}`, 'two finite numbers', 'Place the note at a point.')
  if (chart.series.length < 1 || chart.series.length > strokes.length) {
    refuse(
      'chart.series',
      `${String(chart.series.length)} lines`,
      `1 to ${String(strokes.length)} lines`,
      'Split the chart: more lines cannot be told apart in grey.',
    )
  }
  ;(chart.limits ?? []).forEach((limit, index) => {
    if (!Number.isFinite(limit.value))
      refuse(
        `chart.limits[${String(index)}]`,
        String(limit.value),
        'a finite number',
        'Leave out a limit without a value.',
      )
  })
  chart.series.forEach((series, index) => {
    const argument = `chart.series[${String(index)}]`
    if (series.x.length !== series.y.length || series.x.length < 2) {
      refuse(
        argument,
        `${String(series.x.length)} x and ${String(series.y.length)} y`,
        'at least two points, as many x as y',
        'Give one y for each x.',
      )
    }
    const bad = [...series.x, ...series.y].find((n) => !Number.isFinite(n))
    if (bad !== undefined) refuse(argument, String(bad), 'finite numbers', 'Leave out points without a value.')
  })
}

function axisTicks(axis: Axis, data: readonly number[]): number[] {
  const from = axis.from ?? Math.min(...data)
  const to = axis.to ?? Math.max(...data)
  return ticks(from, to > from ? to : from + 1)
}

function axisTitle({ label, unit }: Axis): string {
  return unit === '' ? label : `${label}, ${unit}`
}

function scale(values: readonly number[], start: number, end: number): (n: number) => number {
  const from = values[0] as number
  const to = values.at(-1) as number
  return (n) => start + ((n - from) / (to - from)) * (end - start)
}

function tickText(tick: number, all: readonly number[], style: NumberStyle): string {
  const decimals = Math.max(...all.map((n) => String(n).split('.')[1]?.length ?? 0))
  return withNumberStyle(roundNumber(tick, { decimals }).text, style)
}

function fixed(n: number): string {
  return String(Number(n.toFixed(1)))
}

function line(x1: number, y1: number, x2: number, y2: number, colour: string): string {
  return `<line x1="${fixed(x1)}" y1="${fixed(y1)}" x2="${fixed(x2)}" y2="${fixed(y2)}" stroke="${colour}"/>`
}

function label(x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end'): string {
  return `<text x="${fixed(x)}" y="${fixed(y)}" text-anchor="${anchor}">${escaped(text)}</text>`
}

function drawn(series: Series, index: number, x: (n: number) => number, y: (n: number) => number): string {
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

/** Names at the ends of their lines and limits at the frame, moved apart where they would touch. */
function endLabels(chart: Chart, x: (n: number) => number, y: (n: number) => number, right: number): string[] {
  const lineHeight = 15
  const at = (text: string, colour: string, px: number, py: number): PlacedLabel => ({
    lines: wrapped(text, 20),
    colour,
    x: px,
    y: py,
  })
  const names = chart.series.flatMap((series, index) =>
    series.closed
      ? []
      : [
          at(
            series.name,
            (strokes[index] as (typeof strokes)[number]).colour,
            x(series.x.at(-1) as number) + 8,
            y(series.y.at(-1) as number) + 4.5,
          ),
        ],
  )
  const limits = (chart.limits ?? []).map((limit) => at(limit.label, '#000', right + 8, y(limit.value) + 4.5))
  let free = Number.NEGATIVE_INFINITY
  return [...names, ...limits]
    .sort((a, b) => a.y - b.y)
    .flatMap((row) => {
      const top = Math.max(row.y, free)
      free = top + row.lines.length * lineHeight + 3
      return row.lines.map(
        (text, index) =>
          `<text x="${fixed(row.x)}" y="${fixed(top + index * lineHeight)}" fill="${row.colour}">${escaped(text)}</text>`,
      )
    })
}

interface PlacedLabel {
  readonly lines: readonly string[]
  readonly colour: string
  readonly x: number
  readonly y: number
}

/** Words in lines of about so many characters: SVG text does not wrap. */
function wrapped(text: string, width: number): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && `${last} ${word}`.length <= width) lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines
}
