import { type SeparatorTrain, separatedWater } from '../../charging/index.ts'
import { gramPerHour, inUnit } from '../../units/index.ts'
import type { BarChart } from '../chart-kinds.ts'

/** A compressor whose water is drawn. */
export interface StageWaterChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** At most seven separators. */
  readonly train: SeparatorTrain
}

/**
 * Water that each separator of a compressor drains, and what is left for the cartridge, a bar for each.
 *
 * @param options - id, title, and the intake with the separators
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError as `separatedWater`
 * @source litrebar-derivation
 */
export function stageWaterChart({ id, title, train }: StageWaterChartOptions): BarChart {
  const { separators, carryOver, cautions } = separatedWater(train)
  const flows = [
    ...separators.map(({ drained }, k) => [`Separator ${k + 1}`, drained] as const),
    ['Left', carryOver] as const,
  ]
  const bars = flows.map(([name, { value }]) => ({
    name,
    parts: [{ name: 'Water', value: inUnit(value, gramPerHour) }],
  }))
  return {
    kind: 'bars',
    id,
    title,
    description: `Water in each hour: ${bars.map(({ name, parts }) => `${name.toLowerCase()}, ${(parts[0]?.value ?? 0).toFixed(1)} g`).join('; ')}.`,
    y: { label: 'Water', unit: 'g/h', from: 0 },
    bars,
    cautions,
    sources: ['litrebar-derivation'],
  }
}
