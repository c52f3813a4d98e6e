import { type BankFill, bankSequence } from '../../cylinder/index.ts'
import { type AbsolutePressure, bar, inUnit } from '../../units/index.ts'
import type { LineChart, Series } from '../chart-kinds.ts'
import { filled } from '../filled.ts'
import { requireShape } from '../require-shape.ts'
import { figureShapes } from './figure-shape.table.ts'
import { type FigureTexts, figureTexts } from './figure-text.table.ts'

/** Fills of one cylinder from a bank, in orders to compare. */
export interface BankSequenceChartOptions {
  readonly id: string
  /** What to see, as a statement. */
  readonly title: string
  /** With the pressure of the receiver, absolute. */
  readonly fill: BankFill & { readonly receiver: { readonly pressure: AbsolutePressure } }
  /** Places in the bank in the order of opening, at most four orders, each under the name that stands at the end of its line. */
  readonly orders: Readonly<Record<string, readonly number[]>>
  /** Axis titles, names of lines and the description in other words; what is left out stays English. */
  readonly texts?: Partial<FigureTexts>
}

/**
 * Pressure in a cylinder after each cylinder of a bank that is opened to it, a line for each order.
 *
 * @param options - id, title, the fill, and the orders
 * @returns a chart as data, for `chartSvg` and `chartVegaLite`
 * @throws LitrebarError `input` for options that are missing, misspelt or of another kind; as `bankSequence`
 * @source litrebar-derivation
 */
export function bankSequenceChart(options: BankSequenceChartOptions): LineChart {
  requireShape('options', options, figureShapes.bankSequence)
  const { id, title, fill, orders, texts } = options
  const words = { ...figureTexts, ...texts }
  const series = Object.entries(orders).map(([name, order]): Series => {
    const { steps } = bankSequence(fill, order)
    const reached = [fill.receiver.pressure, ...steps.map(({ receiverPressure }) => receiverPressure)]
    return { name, x: [...reached.keys()], y: reached.map((pressure) => inUnit(pressure, bar)) }
  })
  return {
    id,
    title,
    description: filled(words.bankDescription, {
      lines: series
        .map(({ name, y }) => filled(words.bankLine, { name, end: String(Math.round(y.at(-1) ?? 0)) }))
        .join('; '),
    }),
    x: { label: words.bankAcross, unit: '', from: 0 },
    y: { label: words.bankUp, unit: words.bankUnit, from: 0 },
    series,
    ...(fill.target !== undefined && { limits: [{ value: inUnit(fill.target, bar), label: words.bankWanted }] }),
    cautions: ['fill-limit', 'hot-fill'],
    sources: ['litrebar-derivation'],
  }
}
