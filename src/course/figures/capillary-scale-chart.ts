import { type CapillaryGauge, capillaryScale } from '../../gauges/index.ts'
import { type Depth, inUnit, millimetre } from '../../units/index.ts'
import type { LineChart } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** A capillary gauge whose scale is drawn. */
export interface CapillaryScaleChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  readonly gauge: CapillaryGauge
  /** Of the marks, rising, two or more, m. */
  readonly depths: readonly Depth[]
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

/**
 * Where the marks of a capillary gauge stand along its tube, against depth: they crowd with depth.
 *
 * @param options - id, title, the gauge, and the depths of its marks
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for options that are missing, misspelt or of another kind; as `capillaryScale`
 * @source litrebar-derivation
 */
export function capillaryScaleChart(options: CapillaryScaleChartOptions): LineChart {
  requireShape('options', options, figureShapes.capillaryScale)
  const { id, title, gauge, depths, texts } = options
  const words = { ...figureTexts, ...texts }
  const marks = capillaryScale(gauge, depths)
  const positions = marks.map(({ position }) => inUnit(position, millimetre))
  return {
    id,
    title,
    description: filled(words.capillaryDescription, {
      marks: marks
        .map(({ depth }, k) =>
          filled(words.capillaryMark, {
            depth: String(Math.round(depth)),
            position: String(Math.round(positions[k] ?? 0)),
          }),
        )
        .join('; '),
    }),
    x: { label: words.capillaryAcross, unit: 'm', from: 0 },
    y: { label: words.capillaryUp, unit: 'mm', from: 0 },
    series: [{ name: words.capillaryName, x: marks.map(({ depth }) => depth), y: positions }],
    cautions: ['instrument'],
    sources: ['litrebar-derivation'],
  }
}
