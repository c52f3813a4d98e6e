import type { SourceId } from '../../references/sources.ts'

/** How a mechanical gauge answers to the temperature of its element. */
export interface GaugeElement {
  /** Change of the reading per kelvin away from 20 °C, per cent of the span. As printed. */
  readonly percentOfSpanPerKelvin: number
  readonly source: SourceId
  readonly place: string
}

/** Elements of mechanical gauges. The class of a gauge holds at 20 °C; away from it the standard allows this much on top. */
export const gaugeElements = {
  bourdon: { percentOfSpanPerKelvin: 0.04, source: 'en-837-1', place: 'clause on temperature, restated by a maker' },
  springDiaphragm: { percentOfSpanPerKelvin: 0.05, source: 'en-837-1', place: 'another part or a maker’s own figure' },
  capsule: { percentOfSpanPerKelvin: 0.06, source: 'en-837-1', place: 'another part or a maker’s own figure' },
  diaphragm: { percentOfSpanPerKelvin: 0.08, source: 'en-837-1', place: 'another part or a maker’s own figure' },
} as const satisfies Readonly<Record<string, GaugeElement>>

/** Name of an element. */
export type GaugeElementId = keyof typeof gaugeElements

/**
 * Classes that a dial may carry, per cent of the span. Each is the largest error at 20 °C, anywhere on the scale.
 *
 * @source en-837-1, table 11
 */
export const gaugeClasses = [0.1, 0.25, 0.6, 1, 1.6, 2.5, 4] as const

/** Fewest points of a test, by class: as test instructions that cite the standard have it. */
export const fewestTestPoints = [
  { upToClassPercent: 0.6, points: 10, source: 'en-837-1' },
  { upToClassPercent: 4, points: 5, source: 'en-837-1' },
] as const
