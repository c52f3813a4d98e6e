import { pressureAtDepth, type WaterColumn } from '../../environment/index.ts'
import { LitrebarError } from '../../errors/index.ts'
import { type CompiledSupply, supplyMap } from '../../regulator-performance/index.ts'
import { type AbsolutePressure, bar, type Depth, toGauge } from '../../units/index.ts'
import type { LineChart, Series } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** Which supplies are drawn over which depths. */
export interface SupplyMapChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  readonly water: WaterColumn
  /** Rising, m. */
  readonly depths: readonly Depth[]
  /** At most four, each under the name that stands at the end of its line. */
  readonly supplies: Readonly<Record<string, CompiledSupply>>
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

const rows = 600

/**
 * Map of what a first stage can feed, as its contours: over the depth, the lowest gauge pressure in the cylinder at which it still meets the
 * peaks of those who breathe from it. A line ends where not even the highest pressure of its supply is enough.
 *
 * @param options - id, title, water, depths, and the compiled supplies by name
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for options that are missing, misspelt or of another kind, and for a supply that meets its demand at fewer than two of the depths
 * @source litrebar-derivation
 */
export function supplyMapChart(options: SupplyMapChartOptions): LineChart {
  requireShape('options', options, figureShapes.supplyMap)
  const { id, title, water, depths, supplies, texts } = options
  const words = { ...figureTexts, ...texts }
  const ambientPressures = Float64Array.from(depths, (depth) => pressureAtDepth({ ...water, depth }))
  const series = Object.entries(supplies).map(([name, compiled]): Series => {
    const from = bar.factor
    const supplyPressures = Float64Array.from(
      { length: rows },
      (_, row) => from + ((compiled.maximumPressure - from) * row) / (rows - 1),
    )
    const { minimumSupplyPressure } = supplyMap(compiled, { ambientPressures, supplyPressures })
    const met = depths.flatMap((depth, index) => {
      const pressure = minimumSupplyPressure[index] as AbsolutePressure
      return Number.isNaN(pressure) ? [] : [[depth, toGauge(pressure, water.surfacePressure) / bar.factor] as const]
    })
    if (met.length < 2) throw notMet(name, met.length)
    return { name, x: met.map(([depth]) => depth), y: met.map(([, pressure]) => pressure) }
  })
  const ends = series.map(({ name, x, y }) =>
    filled(words.atDepth, {
      name,
      value: `${Math.round(y.at(-1) as number)} bar`,
      depth: String(Math.round(x.at(-1) as number)),
    }),
  )
  return {
    id,
    title,
    description: filled(words.supplyDescription, { lines: ends.join('; ') }),
    x: { label: words.supplyAcross, unit: 'm', from: 0 },
    y: { label: words.supplyUp, unit: words.supplyUnit, from: 0 },
    series,
  }
}

function notMet(name: string, depths: number): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument: `options.supplies.${name}`,
    value: `enough at ${depths} of the depths`,
    expected: 'enough at two depths or more',
    hint: 'Compile the supply to a higher pressure, or draw shallower depths.',
  })
}
