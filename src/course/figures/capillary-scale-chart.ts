import { type CapillaryGauge, capillaryScale } from '../../gauges/index.ts'
import { type Depth, inUnit, millimetre } from '../../units/index.ts'
import type { LineChart } from '../chart-kinds.ts'

/** A capillary gauge whose scale is drawn. */
export interface CapillaryScaleChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  readonly gauge: CapillaryGauge
  /** Of the marks, rising, two or more, m. */
  readonly depths: readonly Depth[]
}

/**
 * Where the marks of a capillary gauge stand along its tube, against depth: they crowd with depth.
 *
 * @param options - id, title, the gauge, and the depths of its marks
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError as `capillaryScale`
 * @source litrebar-derivation
 */
export function capillaryScaleChart({ id, title, gauge, depths }: CapillaryScaleChartOptions): LineChart {
  const marks = capillaryScale(gauge, depths)
  const positions = marks.map(({ position }) => inUnit(position, millimetre))
  return {
    id,
    title,
    description: `Distance of each mark from the open end of the tube, against depth. The marks crowd: ${marks.map(({ depth }, k) => `${Math.round(depth)} m at ${Math.round(positions[k] ?? 0)} mm`).join('; ')}.`,
    x: { label: 'Depth', unit: 'm', from: 0 },
    y: { label: 'Mark from the open end', unit: 'mm', from: 0 },
    series: [{ name: 'Marks', x: marks.map(({ depth }) => depth), y: positions }],
    cautions: ['instrument'],
    sources: ['litrebar-derivation'],
  }
}
