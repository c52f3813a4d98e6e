import type { AveragedLoop } from '../../regulator-performance/index.ts'
import { type EnergyPerVolume, format, joulePerLitre, litre, millibar, type NumberStyle } from '../../units/index.ts'
import type { LimitLine, LineChart } from '../chart-kinds.ts'

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
}

/**
 * Picture of a breathing loop: mouth pressure over the volume breathed in, below zero while inhaling and back above it while exhaling.
 *
 * @param loop - the averaged loop of an analysis
 * @param options - id, title, work per litre, number of breaths, limits in millibar
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @source litrebar-derivation
 */
export function loopChart(loop: AveragedLoop, options: LoopChartOptions): LineChart {
  const { id, title, workOfBreathingPerLitre, breaths, limits, style } = options
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
    description: `Pressure at the mouth against volume breathed in, the mean of ${breaths} breaths. The loop runs below zero while inhaling, to ${shown(lowest)} mbar, and back above zero while exhaling, to ${shown(highest)} mbar; the area inside it is the work, ${work} for each litre.`,
    x: { label: 'Volume breathed in', unit: 'L', from: 0 },
    y: { label: 'Mouth pressure', unit: 'mbar' },
    series: [
      {
        name: 'mean breath',
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
