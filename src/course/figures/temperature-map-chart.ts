import type { Mixture } from '../../gas-law/index.ts'
import { throttledTemperature } from '../../regulator-performance/index.ts'
import {
  type AbsolutePressure,
  bar,
  celsius,
  format,
  inUnit,
  type NumberStyle,
  type Temperature,
  temperatureOf,
} from '../../units/index.ts'
import type { LimitLine, LineChart, Series } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** Over which supply pressures, and for which waters, the gas is followed through the first stage. */
export interface TemperatureMapChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  readonly mixture: Mixture
  /** Behind the first stage, absolute: ambient and intermediate pressure together. */
  readonly pressureBehind: AbsolutePressure
  /** Absolute, rising, each above the pressure behind. */
  readonly supplyPressures: readonly AbsolutePressure[]
  /** At most four. The gas in the cylinder has the temperature of the water. */
  readonly waterTemperatures: readonly Temperature[]
  readonly limits?: readonly LimitLine[]
  readonly style?: NumberStyle
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

/**
 * Map of how cold gas gets behind a first stage, as its contours: temperature over the pressure in the cylinder, a line for each water. Without
 * any heat from the water, it is the coldest bound: nothing says that ice forms, or that none does.
 *
 * @param options - id, title, mixture, pressures, absolute, Pa, and water temperatures, K
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for options that are missing, misspelt or of another kind; as `throttledTemperature`
 * @source gerg-2008; litrebar-derivation, constant enthalpy
 */
export function temperatureMapChart(options: TemperatureMapChartOptions): LineChart {
  requireShape('options', options, figureShapes.temperatureMap)
  const { id, title, mixture, pressureBehind, supplyPressures, waterTemperatures, limits, style, texts } = options
  const words = { ...figureTexts, ...texts }
  const degrees = (temperature: Temperature) => format(temperature, { unit: celsius, decimals: 0, ...style })
  const x = supplyPressures.map((pressure) => inUnit(pressure, bar))
  const series = waterTemperatures.map(
    (temperature): Series => ({
      name: filled(words.temperatureName, { temperature: degrees(temperature) }),
      x,
      y: supplyPressures.map((pressure) =>
        inUnit(throttledTemperature(mixture, { pressure, temperature }, pressureBehind), celsius),
      ),
    }),
  )
  const ends = series.map(({ name, y }) => `${name}, ${degrees(temperatureOf(y.at(-1) as number, celsius))}`)
  return {
    id,
    title,
    description: filled(words.temperatureDescription, {
      pressure: String(Math.round(x.at(-1) ?? 0)),
      lines: ends.join('; '),
    }),
    x: { label: words.temperatureAcross, unit: 'bar', from: 0 },
    y: { label: words.temperatureUp, unit: '°C' },
    series,
    ...(limits !== undefined && { limits }),
  }
}
