import { pressureAtDepth, type WaterColumn } from '../../environment/index.ts'
import { LitrebarError } from '../../errors/index.ts'
import type { Mixture } from '../../gas-law/index.ts'
import { predictedWork, type WorkInGas } from '../../regulator-performance/index.ts'
import {
  type Depth,
  inUnit,
  joulePerLitre,
  type NumberStyle,
  type Temperature,
  withNumberStyle,
} from '../../units/index.ts'
import type { LimitLine, LineChart, Series } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** Measured work, and where it is drawn to. */
export interface ResistanceChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  readonly measurements: readonly WorkInGas[]
  /** Share of the part without density that is laminar. */
  readonly laminarShare: number | 'unknown'
  /** At most four, each under the name that stands at the end of its line. */
  readonly mixtures: Readonly<Record<string, Mixture>>
  readonly temperature: Temperature
  readonly water: WaterColumn
  /** Rising, m. */
  readonly depths: readonly Depth[]
  /** In joule per litre. */
  readonly limits?: readonly LimitLine[]
  /** Of the numbers in the description. */
  readonly style?: NumberStyle
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

/**
 * Resistance against depth: the work of breathing that measurements let one expect, a line for each mixture. A line ends where the density lies
 * beyond what the measurements carry, twice the largest or half the smallest.
 *
 * @param options - id, title, measurements, mixtures, temperature, K, water and depths, m
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for options that are missing, misspelt or of another kind, and for a mixture that the measurements carry at fewer than two of the depths; as `predictedWork`
 * @source litrebar-derivation
 */
export function resistanceChart(options: ResistanceChartOptions): LineChart {
  requireShape('options', options, figureShapes.resistance)
  const { id, title, measurements, mixtures, temperature, water, depths, laminarShare, limits, style, texts } = options
  const words = { ...figureTexts, ...texts }
  const series = Object.entries(mixtures).map(([name, mixture]): Series => {
    const points = depths.flatMap((depth) => {
      const gas = { mixture, pressure: pressureAtDepth({ ...water, depth }), temperature }
      const work = workWithinReach(measurements, gas, laminarShare)
      return work === undefined ? [] : [[depth, work] as const]
    })
    if (points.length < 2) throw outOfReach(name, points.length)
    return { name, x: points.map(([depth]) => depth), y: points.map(([, work]) => work) }
  })
  const ends = series.map(({ name, x, y }) =>
    filled(words.atDepth, {
      name,
      value: `${withNumberStyle((y.at(-1) as number).toFixed(2), style)} J/L`,
      depth: String(Math.round(x.at(-1) as number)),
    }),
  )
  return {
    id,
    title,
    description: filled(words.resistanceDescription, { lines: ends.join('; ') }),
    x: { label: words.resistanceAcross, unit: 'm', from: 0 },
    y: { label: words.resistanceUp, unit: 'J/L', from: 0 },
    series,
    ...(limits !== undefined && { limits }),
  }
}

function workWithinReach(
  measurements: readonly WorkInGas[],
  gas: WorkInGas['gas'],
  laminarShare: number | 'unknown',
): number | undefined {
  try {
    return inUnit(predictedWork(measurements, gas, { laminarShare }).workOfBreathingPerLitre, joulePerLitre)
  } catch (error) {
    if ((error as LitrebarError).code === 'outside-validity') return undefined
    throw error
  }
}

function outOfReach(name: string, depths: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: `options.mixtures.${name}`,
    value: `carried by the measurements at ${depths} of the depths`,
    expected: 'two depths or more',
    hint: 'Measure at densities nearer to this mixture.',
  })
}
