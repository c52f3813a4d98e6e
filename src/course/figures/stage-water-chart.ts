import { type SeparatorTrain, separatedWater } from '../../charging/index.ts'
import { gramPerHour, inUnit, type NumberStyle, withNumberStyle } from '../../units/index.ts'
import type { BarChart } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** A compressor whose water is drawn. */
export interface StageWaterChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** At most seven separators. */
  readonly train: SeparatorTrain
  /** Of the numbers in the description. */
  readonly style?: NumberStyle
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

/**
 * Water that each separator of a compressor drains, and what is left for the cartridge, a bar for each.
 *
 * @param options - id, title, and the intake with the separators
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for options that are missing, misspelt or of another kind; as `separatedWater`
 * @source litrebar-derivation
 */
export function stageWaterChart(options: StageWaterChartOptions): BarChart {
  requireShape('options', options, figureShapes.stageWater)
  const { id, title, train, style, texts } = options
  const words = { ...figureTexts, ...texts }
  const { separators, carryOver, cautions } = separatedWater(train)
  const flows = [
    ...separators.map(
      ({ drained }, k) => [filled(words.stageWaterSeparator, { number: String(k + 1) }), drained] as const,
    ),
    [words.stageWaterLeft, carryOver] as const,
  ]
  const bars = flows.map(([name, { value }]) => ({
    name,
    parts: [{ name: words.stageWaterUp, value: inUnit(value, gramPerHour) }],
  }))
  return {
    kind: 'bars',
    id,
    title,
    description: filled(words.stageWaterDescription, {
      bars: bars
        .map(({ name, parts }) => `${name}, ${withNumberStyle((parts[0]?.value ?? 0).toFixed(1), style)} g`)
        .join('; '),
    }),
    y: { label: words.stageWaterUp, unit: 'g/h', from: 0 },
    bars,
    cautions,
    sources: ['litrebar-derivation'],
  }
}
