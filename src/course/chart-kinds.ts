import type { CautionName, CitedSource, SourceName } from './cited.ts'

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

/** What every chart has. Title and description are what a reader, or a listener, should see in it. */
interface Head {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** The chart in words, for those who do not see it. */
  readonly description: string
  /** Cautions and sources that belong to the numbers; every writer of a chapter prints them. */
  readonly cautions?: readonly CautionName[]
  readonly sources?: readonly (SourceName | CitedSource)[]
}

/** A chart of lines, or of a loop. */
export interface LineChart extends Head {
  readonly kind?: 'lines'
  readonly x: Axis
  readonly y: Axis
  /** At most four. */
  readonly series: readonly Series[]
  readonly limits?: readonly LimitLine[]
  /** Text inside the chart, at a point of it. */
  readonly note?: { readonly x: number; readonly y: number; readonly text: string }
}

/** Bars side by side, each of one part or of several stacked on each other: a reserve and what it is made of. */
export interface BarChart extends Head {
  readonly kind: 'bars'
  readonly y: Axis
  /** At most eight. */
  readonly bars: readonly {
    readonly name: string
    /** At most four; their names tell the same parts of all bars apart. None below zero. */
    readonly parts: readonly { readonly name: string; readonly value: number }[]
  }[]
  readonly limits?: readonly LimitLine[]
}

/** A quantity over two others as a map of cells, with lines of equal value. */
export interface HeatMap extends Head {
  readonly kind: 'heat map'
  readonly x: Axis & { readonly values: readonly number[] }
  readonly y: Axis & { readonly values: readonly number[] }
  readonly z: { readonly label: string; readonly unit: string }
  /** One row for each value of y. */
  readonly cells: readonly (readonly number[])[]
  readonly contours?: readonly number[]
}

/** Measured points, each with its interval where there is one, and a line through them where there is one. */
export interface ScatterChart extends Head {
  readonly kind: 'points'
  readonly x: Axis
  readonly y: Axis
  readonly points: readonly { readonly x: number; readonly y: number; readonly low?: number; readonly high?: number }[]
  readonly line?: Series
  readonly limits?: readonly LimitLine[]
}

/** The pressures along a regulator, from the cylinder to the mouth, on a logarithmic scale. */
export interface PressureSteps extends Head {
  readonly kind: 'pressure steps'
  readonly unit: string
  /** Two to six places, in the order of the flow. */
  readonly places: readonly { readonly name: string; readonly pressure: number }[]
}

/** A chart as data. */
export type Chart = LineChart | BarChart | HeatMap | ScatterChart | PressureSteps
