import { cartridgeLife } from '../../charging/index.ts'
import type { ReferenceCondition } from '../../gas-law/index.ts'
import {
  type AbsolutePressure,
  celsius,
  type FreeGasFlow,
  hour,
  inUnit,
  type Mass,
  type Temperature,
} from '../../units/index.ts'
import type { LineChart, Series } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** A cartridge whose life is drawn over the temperature of its air. */
export interface CartridgeLifeChartOptions<Name extends string> {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  readonly freeAir: FreeGasFlow<Name>
  readonly reference: ReferenceCondition<NoInfer<Name>>
  /** Water that the cartridge holds. */
  readonly capacity: Mass
  /** Of the last separator, rising, two or more. */
  readonly temperatures: readonly Temperature[]
  /** At the last separator, absolute, at most four, each under the name that stands at the end of its line. */
  readonly pressures: Readonly<Record<string, AbsolutePressure>>
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

/**
 * Life of a cartridge by water against the temperature of the last separator, a line for each pressure that the pressure-maintaining
 * valve may hold. It says nothing about carbon monoxide or oil.
 *
 * @param options - id, title, flow of free air with its reference condition, capacity, temperatures and pressures
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for options that are missing, misspelt or of another kind; as `cartridgeLife`
 * @source litrebar-derivation
 */
export function cartridgeLifeChart<Name extends string>(options: CartridgeLifeChartOptions<Name>): LineChart {
  requireShape('options', options, figureShapes.cartridgeLife)
  const { id, title, freeAir, reference, capacity, temperatures, pressures, texts } = options
  const words = { ...figureTexts, ...texts }
  const series = Object.entries(pressures).map(
    ([name, pressure]): Series => ({
      name,
      x: temperatures.map((temperature) => inUnit(temperature, celsius)),
      y: temperatures.map((temperature) =>
        inUnit(cartridgeLife({ freeAir, separator: { pressure, temperature } }, capacity, { reference }).life, hour),
      ),
    }),
  )
  const ends = series.map(({ name, x, y }) =>
    filled(words.cartridgeLine, {
      name,
      first: String(Math.round(y[0] ?? 0)),
      cold: String(Math.round(x[0] ?? 0)),
      last: String(Math.round(y.at(-1) ?? 0)),
      warm: String(Math.round(x.at(-1) ?? 0)),
    }),
  )
  return {
    id,
    title,
    description: filled(words.cartridgeDescription, { lines: ends.join('; ') }),
    x: { label: words.cartridgeAcross, unit: '°C' },
    y: { label: words.cartridgeUp, unit: 'h', from: 0 },
    series,
    cautions: ['breathing-air', 'carbon-monoxide'],
    sources: ['litrebar-derivation'],
  }
}
