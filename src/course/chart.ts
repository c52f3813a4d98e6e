import { requireWord } from '../errors/index.ts'
import type { NumberStyle } from '../units/index.ts'
import { barSvg, barVegaLite, requireBars } from './bar-chart.ts'
import { plotHeight, plotWidth } from './chart-frame.ts'
import type { Chart } from './chart-kinds.ts'
import { requireId } from './escape.ts'
import { heatMapSvg, heatMapVegaLite, requireHeatMap } from './heat-map.ts'
import { lineSvg, lineVegaLite, requireLines } from './line-chart.ts'
import { pressureStepsSvg, pressureStepsVegaLite, requirePressureSteps } from './pressure-steps.ts'
import { requireShape } from './require-shape.ts'
import { requireScatter, scatterSvg, scatterVegaLite } from './scatter-chart.ts'
import { chartShapes } from './shapes.table.ts'

type Kind = NonNullable<Chart['kind']>
type Of<K extends Kind> = K extends 'lines' ? Extract<Chart, { kind?: 'lines' }> : Extract<Chart, { kind: K }>

/** What each kind of chart needs: a check, a drawing, a specification. */
const kinds: {
  readonly [K in Kind]: {
    readonly check: (chart: Of<K>) => void
    readonly svg: (chart: Of<K>, style: NumberStyle) => string
    readonly vegaLite: (chart: Of<K>) => { readonly data: object; readonly layer: readonly object[] }
  }
} = {
  lines: { check: requireLines, svg: lineSvg, vegaLite: lineVegaLite },
  bars: { check: requireBars, svg: barSvg, vegaLite: barVegaLite },
  'heat map': { check: requireHeatMap, svg: heatMapSvg, vegaLite: heatMapVegaLite },
  points: { check: requireScatter, svg: scatterSvg, vegaLite: scatterVegaLite },
  'pressure steps': { check: requirePressureSteps, svg: pressureStepsSvg, vegaLite: pressureStepsVegaLite },
}

/** What a kind does, its chart checked. */
function checked(chart: Chart): (typeof kinds)['lines'] {
  const { kind = 'lines' } = Object(chart) as Chart
  requireWord('chart.kind', kind, Object.keys(kinds) as Kind[])
  requireShape('chart', chart, chartShapes[kind])
  requireId('chart.id', chart.id)
  const row = kinds[kind] as unknown as (typeof kinds)['lines']
  row.check(chart as Of<'lines'>)
  return row
}

/**
 * A chart as an SVG element with title, description, axes, units and everything named where it stands.
 *
 * @param chart - the chart as data
 * @param style - decimal sign and grouping of its numbers
 * @returns the `svg` element, without scripts, styled by attributes only
 * @throws LitrebarError `input` for a kind that is not known, too many or unequal parts, or a number that is not finite
 */
export function chartSvg(chart: Chart, style: NumberStyle = {}): string {
  return checked(chart).svg(chart as Of<'lines'>, style)
}

/** A chart of values on a grammar-of-graphics engine: version 5 of the Vega-Lite format, an open specification. */
export interface VegaLiteChart {
  readonly $schema: string
  readonly title: string
  readonly description: string
  readonly width: number
  readonly height: number
  readonly data: { readonly values: readonly Readonly<Record<string, string | number>>[] }
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
  const { data, layer } = checked(chart).vegaLite(chart as Of<'lines'>)
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v5.json',
    title: chart.title,
    description: chart.description,
    width: plotWidth,
    height: plotHeight,
    data: data as VegaLiteChart['data'],
    layer,
  }
}
