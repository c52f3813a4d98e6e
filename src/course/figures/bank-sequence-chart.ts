import { type BankFill, bankSequence } from '../../cylinder/index.ts'
import { type AbsolutePressure, bar, inUnit } from '../../units/index.ts'
import type { LineChart, Series } from '../chart-kinds.ts'

/** Fills of one cylinder from a bank, in orders to compare. */
export interface BankSequenceChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** With the pressure of the receiver, absolute. */
  readonly fill: BankFill & { readonly receiver: { readonly pressure: AbsolutePressure } }
  /** Places in the bank in the order of opening, at most four orders, each under the name that stands at the end of its line. */
  readonly orders: Readonly<Record<string, readonly number[]>>
}

/**
 * Pressure in a cylinder after each cylinder of a bank that is opened to it, a line for each order.
 *
 * @param options - id, title, the fill, and the orders
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError as `bankSequence`
 * @source litrebar-derivation
 */
export function bankSequenceChart({ id, title, fill, orders }: BankSequenceChartOptions): LineChart {
  const series = Object.entries(orders).map(([name, order]): Series => {
    const reached = [
      fill.receiver.pressure,
      ...bankSequence(fill, order).steps.map(({ receiverPressure }) => receiverPressure),
    ]
    return { name, x: [...reached.keys()], y: reached.map((pressure) => inUnit(pressure, bar)) }
  })
  return {
    id,
    title,
    description: `Pressure in the cylinder after each bank cylinder that is opened to it: ${series.map(({ name, y }) => `${name}, ${Math.round(y.at(-1) ?? 0)} bar at the end`).join('; ')}.`,
    x: { label: 'Bank cylinders opened', unit: '', from: 0 },
    y: { label: 'Pressure reached', unit: 'bar absolute', from: 0 },
    series,
    ...(fill.target !== undefined && { limits: [{ value: inUnit(fill.target, bar), label: 'Wanted' }] }),
    cautions: ['fill-limit', 'hot-fill'],
    sources: ['litrebar-derivation'],
  }
}
