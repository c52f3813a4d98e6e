import type { AveragedLoop } from '../../regulator-performance/index.ts'
import { type EnergyPerVolume, format, joulePerLitre, litre, millibar, type NumberStyle } from '../../units/index.ts'
import type { LimitLine, LineChart } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes, loopShape } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** What a picture of a loop says besides its line. */
export interface LoopChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** What the area stands for; written into the loop. */
  readonly workOfBreathingPerLitre: EnergyPerVolume
  /** How many breaths the loop is the mean of. */
  readonly breaths: number
  /** In millibar. */
  readonly limits?: readonly LimitLine[]
  readonly style?: NumberStyle
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

/**
 * Picture of a breathing loop: mouth pressure over the volume breathed in, below zero while inhaling and back above it while exhaling.
 *
 * @param loop - the averaged loop of an analysis
 * @param options - id, title, work per litre, number of breaths, limits in millibar
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for a loop or options that are missing, misspelt or of another kind; `range` for a number that is not finite
 * @source litrebar-derivation
 */
export function loopChart(loop: AveragedLoop, options: LoopChartOptions): LineChart {
  requireShape('loop', loop, loopShape)
  requireShape('options', options, figureShapes.loop)
  const { id, title, workOfBreathingPerLitre, breaths, limits, style, texts } = options
  const words = { ...figureTexts, ...texts }
  const volume = Array.from(loop.volumeCubicMetre, (v) => v / litre.factor)
  const inhaling = Array.from(loop.inhalationPressurePascal, (p) => p / millibar.factor)
  const exhaling = Array.from(loop.exhalationPressurePascal, (p) => p / millibar.factor)
  const work = format(workOfBreathingPerLitre, { unit: joulePerLitre, decimals: 2, ...style })
  const largest = volume.reduce((most, v) => Math.max(most, v), 0)
  const ends = [...inhaling, ...exhaling]
  const [lowest, highest] = [Math.min(...ends), Math.max(...ends)]
  return {
    id,
    title,
    description: filled(words.loopDescription, {
      breaths: String(breaths),
      lowest: shown(lowest),
      highest: shown(highest),
      work,
    }),
    x: { label: words.loopAcross, unit: 'L', from: 0 },
    y: { label: words.loopUp, unit: 'mbar' },
    series: [
      {
        name: words.loopName,
        x: [...volume, ...volume.toReversed()],
        y: [...inhaling, ...exhaling.toReversed()],
        closed: true,
      },
    ],
    ...(limits !== undefined && { limits }),
    // a little above the line of no pressure, which would strike it through
    note: { x: largest / 2, y: (highest - lowest) / 25, text: work },
  }

  function shown(pressure: number): string {
    return format((pressure * millibar.factor) as EnergyPerVolume, { unit: millibar, decimals: 1, ...style }).split(
      '\u202f',
    )[0] as string
  }
}
