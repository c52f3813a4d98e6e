import { requireFields } from '../units/accepted.ts'
import { type Accepted, type NumberStyle, one, roundNumber, withNumberStyle } from '../units/index.ts'
import type { Axis } from './chart-kinds.ts'
import { escaped } from './escape.ts'

// Dash and weight tell lines apart before colour does, so that grey print works; the colours follow the Okabe–Ito set,
// two of them darkened until text in them stands 4.5:1 against white.
export const strokes = [
  { colour: '#0072B2', dash: '', width: 2.4 },
  { colour: '#B34A00', dash: '7 4', width: 2 },
  { colour: '#00775A', dash: '2 3', width: 2.2 },
  { colour: '#000000', dash: '10 3 2 3', width: 1.4 },
] as const

// Small enough that the letters can still be read on a telephone, where the whole chart is about 340 px wide.
export const frame = { width: 540, height: 390, left: 68, right: 126, top: 16, bottom: 58 }
export const plotWidth = frame.width - frame.left - frame.right
export const plotHeight = frame.height - frame.top - frame.bottom

/**
 * Round values for the ticks of an axis.
 *
 * @param from - lower end of the data
 * @param to - upper end of the data, above `from`
 * @param about - how many steps are wanted
 * @returns values at 1, 2 or 5 times a power of ten, covering the data
 */
export function ticks(from: number, to: number, about = 5): number[] {
  requireFields('ticks', { from, to, about }, tickRanges)
  const rough = (to - from) / about
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = ([1, 2, 5, 10].find((multiple) => multiple * power >= rough * 0.999) ?? 10) * power
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
  const first = Math.floor(from / step + 1e-9)
  const last = Math.ceil(to / step - 1e-9)
  return Array.from({ length: last - first + 1 }, (_, index) => Number(((first + index) * step).toFixed(decimals)))
}

const any: Accepted = { atLeast: -1e100, atMost: 1e100, unit: one, hint: 'Give the ends of the data.' }
const tickRanges = { from: any, to: any, about: { atLeast: 1, atMost: 1000, unit: one, hint: 'Take about 5.' } }

/** The drawn span of an axis: a stated end is kept as stated, the other ends lie at round values beyond the data. */
export interface Span {
  readonly from: number
  readonly to: number
  /** Round values within the span. */
  readonly ticks: readonly number[]
}

export function spanOf(axis: Axis, data: readonly number[]): Span {
  const least = axis.from ?? Math.min(...data)
  const most = axis.to ?? Math.max(...data)
  const round = ticks(least, most > least ? most : least + 1)
  const from = axis.from ?? round[0] ?? least
  const to = axis.to ?? round.at(-1) ?? most
  const slack = 1e-9 * (to - from)
  return { from, to, ticks: round.filter((tick) => tick >= from - slack && tick <= to + slack) }
}

export function axisTitle({ label, unit }: Axis): string {
  return unit === '' ? label : `${label}, ${unit}`
}

export function scale({ from, to }: Span, start: number, end: number): (n: number) => number {
  return (n) => start + ((n - from) / (to - from)) * (end - start)
}

export function tickText(tick: number, all: readonly number[], style: NumberStyle): string {
  const decimals = Math.max(...all.map((n) => String(n).split('.')[1]?.length ?? 0))
  return withNumberStyle(roundNumber(tick, { decimals }).text, style)
}

export function fixed(n: number): string {
  return String(Number(n.toFixed(1)))
}

export function line(x1: number, y1: number, x2: number, y2: number, colour: string): string {
  return `<line x1="${fixed(x1)}" y1="${fixed(y1)}" x2="${fixed(x2)}" y2="${fixed(y2)}" stroke="${colour}"/>`
}

export function label(x: number, y: number, text: string, anchor: 'start' | 'middle' | 'end'): string {
  return `<text x="${fixed(x)}" y="${fixed(y)}" text-anchor="${anchor}">${escaped(text)}</text>`
}

/** Words in lines of about so many characters: SVG text does not wrap. */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && `${last} ${word}`.length <= width) lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines
}

/** The `svg` element of a chart with its title and description. */
export function svgElement(
  { id, title, description }: { readonly id: string; readonly title: string; readonly description: string },
  parts: readonly string[],
  height = frame.height,
): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${id}-title ${id}-desc" viewBox="0 0 ${String(frame.width)} ${String(height)}" font-family="system-ui, sans-serif" font-size="15" fill="#111">`,
    `<title id="${id}-title">${escaped(title)}</title>`,
    `<desc id="${id}-desc">${escaped(description)}</desc>`,
    ...parts,
    '</svg>',
  ].join('\n')
}

const bottom = frame.top + plotHeight
const right = frame.left + plotWidth

/** Grid, ticks, numbers and title of the upright axis. */
export function uprightAxis(axis: Axis, span: Span, y: (n: number) => number, style: NumberStyle): string[] {
  const middle = fixed(frame.top + plotHeight / 2)
  return [
    ...span.ticks.flatMap((tick) => [
      line(frame.left, y(tick), right, y(tick), tick === 0 ? '#666' : '#ddd'),
      label(frame.left - 8, y(tick) + 5, tickText(tick, span.ticks, style), 'end'),
    ]),
    line(frame.left, frame.top, frame.left, bottom, '#333'),
    line(frame.left, bottom, right, bottom, '#333'),
    `<text x="16" y="${middle}" text-anchor="middle" transform="rotate(-90 16 ${middle})">${escaped(axisTitle(axis))}</text>`,
  ]
}

/** Ticks, numbers and title of the level axis. */
export function levelAxis(axis: Axis, span: Span, x: (n: number) => number, style: NumberStyle): string[] {
  return [
    ...span.ticks.flatMap((tick) => [
      line(x(tick), bottom, x(tick), bottom + 5, '#333'),
      label(x(tick), bottom + 22, tickText(tick, span.ticks, style), 'middle'),
    ]),
    label(frame.left + plotWidth / 2, frame.height - 10, axisTitle(axis), 'middle'),
  ]
}

/** A value to hold against, as a dotted line across the plot. */
export function limitLine(at: number): string {
  return `<line x1="${fixed(frame.left)}" y1="${fixed(at)}" x2="${fixed(right)}" y2="${fixed(at)}" stroke="#000" stroke-width="1.2" stroke-dasharray="1 4" stroke-linecap="round"/>`
}

/** A text to be set beside the plot, at the height of what it names. */
export interface PlacedLabel {
  readonly text: string
  readonly colour: string
  readonly x: number
  readonly y: number
  /** Breaks ties: of two labels at one height the one with the lesser number stands higher. */
  readonly rank?: number
}

const lineHeight = 16

/** Labels beside the plot in the order of what they name, moved apart where they would touch and up where they would leave the chart. */
export function sideLabels(labels: readonly PlacedLabel[]): string[] {
  const sorted = labels.toSorted((a, b) => (Math.abs(a.y - b.y) > 2 ? a.y - b.y : (a.rank ?? a.y) - (b.rank ?? b.y)))
  const rows = sorted.map((row) => ({ ...row, lines: wrapped(row.text, 15) }))
  const heights = rows.map(({ lines }) => lines.length * lineHeight + 3)
  let free = Number.NEGATIVE_INFINITY
  const tops = rows.map(({ y }, index) => {
    const top = Math.max(y, free)
    free = top + (heights[index] as number)
    return top
  })
  const lowest = frame.height - 4
  let floor = lowest + lineHeight
  for (let index = tops.length - 1; index >= 0; index--) {
    tops[index] = Math.min(tops[index] as number, floor - (heights[index] as number))
    floor = tops[index] as number
  }
  return rows.flatMap(({ lines, x, colour }, index) =>
    lines.map(
      (text, at) =>
        `<text x="${fixed(x)}" y="${fixed((tops[index] as number) + at * lineHeight)}" fill="${colour}">${escaped(text)}</text>`,
    ),
  )
}
