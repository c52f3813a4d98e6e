import { type NumberStyle, withNumberStyle } from '../units/index.ts'
import { refuseChart } from './chart-check.ts'
import { fixed, frame, label, line, svgElement, wrapped } from './chart-frame.ts'
import type { PressureSteps } from './chart-kinds.ts'
import { quantityText } from './quantity-text.ts'

const height = 300
const base = 236
const top = 34

/** The pressures along a regulator as an SVG element: a level for each place, drops between them, on a logarithmic scale. */
export function pressureStepsSvg(chart: PressureSteps, style: NumberStyle): string {
  const { places, unit } = chart
  const logs = places.map(({ pressure }) => Math.log10(pressure))
  const [least, most] = [Math.min(...logs), Math.max(...logs)]
  const y = (log: number): number => base - ((log - least) / Math.max(1e-9, most - least)) * (base - top) * 0.92
  const left = 24
  const slot = (frame.width - 2 * left) / places.length
  const levels = places.map(({ name, pressure }, at) => {
    const from = left + slot * at
    const level = y(logs[at] as number)
    const next = logs[at + 1]
    const text = withNumberStyle(String(Number(pressure.toPrecision(3))), style)
    const drop =
      next === undefined
        ? ''
        : `<path d="M${fixed(from + slot * 0.94)} ${fixed(level)}L${fixed(from + slot * 1.06)} ${fixed(y(next))}" stroke="#0072B2" stroke-width="2.4" fill="none"/>`
    return [
      `<line x1="${fixed(from + slot * 0.06)}" y1="${fixed(level)}" x2="${fixed(from + slot * 0.94)}" y2="${fixed(level)}" stroke="#0072B2" stroke-width="2.4"/>`,
      drop,
      label(from + slot / 2, level - 8, quantityText(text, unit), 'middle'),
      ...wrapped(name, Math.max(8, Math.floor(slot / 8))).map((word, row) =>
        label(from + slot / 2, base + 22 + row * 16, word, 'middle'),
      ),
    ].join('\n')
  })
  return svgElement(chart, [line(left, base + 4, frame.width - left, base + 4, '#333'), ...levels], height)
}

/** Refuses pressures that cannot be drawn. */
export function requirePressureSteps({ places }: PressureSteps): void {
  if (places.length < 2 || places.length > 6)
    refuseChart('chart.places', `${String(places.length)} places`, '2 to 6 places', 'Leave out the less telling ones.')
  places.forEach(({ pressure }, at) => {
    if (!(Number.isFinite(pressure) && pressure > 0))
      refuseChart(
        `chart.places[${String(at)}]`,
        String(pressure),
        'a finite pressure above 0',
        'State pressures absolute, or all over ambient.',
      )
  })
}

/** The pressures along a regulator in the Vega-Lite format. */
export function pressureStepsVegaLite({ places, unit }: PressureSteps): {
  readonly data: object
  readonly layer: readonly object[]
} {
  return {
    data: { values: places.map(({ name, pressure }, order) => ({ place: name, y: pressure, order })) },
    layer: [
      {
        mark: { type: 'line', interpolate: 'step', point: true },
        encoding: {
          x: { field: 'place', type: 'nominal', title: null, sort: { field: 'order' } },
          y: { field: 'y', type: 'quantitative', title: unit, scale: { type: 'log' } },
        },
      },
    ],
  }
}
