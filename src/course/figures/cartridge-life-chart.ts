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
}

/**
 * Life of a cartridge by water against the temperature of the last separator, a line for each pressure that the pressure-maintaining
 * valve may hold. It says nothing about carbon monoxide or oil.
 *
 * @param options - id, title, flow of free air with its reference condition, capacity, temperatures and pressures
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError as `cartridgeLife`
 * @source litrebar-derivation
 */
export function cartridgeLifeChart<Name extends string>(options: CartridgeLifeChartOptions<Name>): LineChart {
  const { id, title, freeAir, reference, capacity, temperatures, pressures } = options
  const series = Object.entries(pressures).map(
    ([name, pressure]): Series => ({
      name,
      x: temperatures.map((temperature) => inUnit(temperature, celsius)),
      y: temperatures.map((temperature) =>
        inUnit(cartridgeLife({ freeAir, separator: { pressure, temperature } }, capacity, { reference }).life, hour),
      ),
    }),
  )
  const ends = series.map(
    ({ name, x, y }) =>
      `${name}, from ${Math.round(y[0] ?? 0)} h at ${Math.round(x[0] ?? 0)} °C to ${Math.round(y.at(-1) ?? 0)} h at ${Math.round(x.at(-1) ?? 0)} °C`,
  )
  return {
    id,
    title,
    description: `Life of a cartridge by water against the temperature of the last separator. Every line falls: ${ends.join('; ')}.`,
    x: { label: 'Temperature at the last separator', unit: '°C' },
    y: { label: 'Life by water', unit: 'h', from: 0 },
    series,
    cautions: ['breathing-air', 'carbon-monoxide'],
    sources: ['litrebar-derivation'],
  }
}
