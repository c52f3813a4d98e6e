import { compressorWork, type MultistageCompressor } from '../../charging/index.ts'
import { celsius, inUnit } from '../../units/index.ts'
import type { BarChart, LimitLine } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** A compressor whose discharge temperatures are drawn. */
export interface InterstageTemperatureChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** At most eight stages. */
  readonly machine: MultistageCompressor
  /** In degrees Celsius: what oil or valves bear, as their maker states it. */
  readonly limits?: readonly LimitLine[]
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

/**
 * Temperature of the gas after each stage of a compressor, a bar for each.
 *
 * @param options - id, title, the machine, and limits, °C
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for options that are missing, misspelt or of another kind; as `compressorWork`
 * @source litrebar-derivation
 */
export function interstageTemperatureChart(options: InterstageTemperatureChartOptions): BarChart {
  requireShape('options', options, figureShapes.interstageTemperature)
  const { id, title, machine, limits, texts } = options
  const words = { ...figureTexts, ...texts }
  const { stages, cautions } = compressorWork(machine)
  const bars = stages.map(({ dischargeTemperature }, k) => ({
    name: filled(words.interstageStage, { number: String(k + 1) }),
    parts: [{ name: words.interstageUp, value: inUnit(dischargeTemperature, celsius) }],
  }))
  return {
    kind: 'bars',
    id,
    title,
    description: filled(words.interstageDescription, {
      bars: bars
        .map(({ parts }, k) =>
          filled(words.interstageBar, { number: String(k + 1), temperature: String(Math.round(parts[0]?.value ?? 0)) }),
        )
        .join('; '),
    }),
    y: { label: words.interstageUp, unit: '°C', from: 0 },
    bars,
    ...(limits !== undefined && { limits }),
    cautions,
    sources: ['gerg-2008'],
  }
}
