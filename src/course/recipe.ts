import { roundNumber, type Unit } from '../units/index.ts'
import type { Card, CardSymbol } from './card.ts'
import type { Axis, Chart, HeatMap, LineChart } from './chart-kinds.ts'
import { type Expression, numberOf } from './expression.ts'
import { filled } from './filled.ts'
import type { PageTexts } from './page-text.table.ts'
import type { RoundingWords } from './rounding-text.table.ts'
import type { Showing, Stated } from './stated.ts'
import { type SystemName, systems } from './systems.table.ts'
import { dualUnitTable, type Table } from './table.ts'
import { solutionOf, type WorkedSolution, type WorkingOptions } from './worked-solution.ts'

/** A formula with everything that it needs to be worked out. */
export interface Ask {
  readonly card: Card
  readonly find: string
  readonly stated: Readonly<Record<string, Stated>>
  /** Each number as its author wrote it, or the name that he gave it: what is written alike changes together. */
  readonly written: Readonly<Record<string, string>>
  readonly showing: Showing
}

/** What a table or a chart runs over. */
export interface Run {
  readonly name: string
  readonly symbol: CardSymbol
  readonly values: readonly number[]
  readonly unit: Unit
}

/** What a worked solution is made from. */
export interface SolutionRecipe {
  readonly kind: 'solution'
  readonly asks: readonly [Ask]
  readonly system?: SystemName
  readonly commonErrors: boolean
  readonly title?: string
  /** Whether this is the second working of a pair, and in which units. */
  readonly second?: SystemName
  /** The symbols whose numbers a reader may change. */
  readonly live: readonly string[]
}

/** What a table is made from: an ask for each computed column. */
export interface TableRecipe {
  readonly kind: 'table'
  readonly caption: string
  readonly run: Run
  readonly other: Showing
  readonly asks: readonly Ask[]
  readonly columns: readonly { readonly heading: string; readonly second: Showing }[]
  readonly notes: readonly string[]
}

/** A limit of a chart with the number that it was read from. */
export interface StatedLimit {
  readonly label: string
  readonly stated: Stated
  readonly written: string
  readonly symbol: Pick<CardSymbol, 'dimension' | 'datum'>
}

type ChartHead = Pick<LineChart, 'id' | 'title' | 'description'>

/** What a chart of lines is made from: an ask for each line. */
export interface LinesRecipe extends ChartHead {
  readonly kind: 'lines'
  readonly run: Run
  readonly unit: Unit
  readonly x: Axis
  readonly y: Axis
  readonly asks: readonly Ask[]
  readonly names: readonly string[]
  readonly limits: readonly StatedLimit[]
}

/** What a map over two symbols is made from. */
export interface HeatMapRecipe extends ChartHead {
  readonly kind: 'heat map'
  readonly across: Run
  readonly up: Run
  readonly x: Axis
  readonly y: Axis
  readonly z: HeatMap['z']
  readonly asks: readonly [Ask]
  readonly contours: readonly number[]
}

/** What a computed block is made from, as plain data: enough to make it again from other numbers. */
export type Recipe = SolutionRecipe | TableRecipe | LinesRecipe | HeatMapRecipe

/** The words that a made block needs in the language of its page. */
export interface RecipeWords {
  readonly decimal: 'point' | 'comma'
  readonly texts: PageTexts
  readonly roundings?: RoundingWords
}

/** The number that an ask comes to, in SI. */
export function numberOfAsk({ card, find, stated }: Ask, changes: Readonly<Record<string, number>> = {}): number {
  return numberOf(
    card.forms[find] as Expression,
    { ...card.constants, ...valuesOf(stated), ...changes } as Record<string, number>,
    card.calls,
  )
}

function valuesOf(stated: Readonly<Record<string, Stated>>): Record<string, number> {
  return Object.fromEntries(Object.entries(stated).map(([name, { value }]) => [name, value]))
}

/** A number in SI, in a unit. */
export function inUnitOf(value: number, unit: Unit): number {
  return (value - (unit.offset ?? 0)) / unit.factor
}

/** The number of an ask as it is shown, rounded once. */
export function shownText(value: number, { unit, rounding }: Showing): string {
  return roundNumber(inUnitOf(value, unit), rounding).text
}

/**
 * The worked solution of an ask, in the units it was stated in or in those of a system.
 *
 * @param recipe - formula, numbers, what to find, in which system, with which title
 * @param words - the words of the page
 * @returns the solution
 */
export function solutionFrom(recipe: SolutionRecipe, words: RecipeWords): WorkedSolution {
  const { asks, system, commonErrors, title, second } = recipe
  const [{ card, find, stated, showing }] = asks
  const inSystem: Partial<Record<string, Unit>> = system === undefined ? {} : systems[system]
  const units = Object.fromEntries(
    Object.entries(card.symbols).flatMap(([name, { dimension }]): [string, Unit][] => {
      const own = name === find ? showing.unit : stated[name]?.unit
      // work per volume and the like keep the unit they are spoken of in
      const unit = own?.quantity === dimension || own === undefined ? (inSystem[dimension] ?? own) : own
      return unit === undefined ? [] : [[name, unit]]
    }),
  )
  const { toward, use } = showing.rounding
  const { roundings } = words
  const solution = solutionOf(card, valuesOf(stated), {
    find,
    units,
    figures: showing.figures,
    commonErrors,
    ...(roundings !== undefined && { roundings }),
    ...(toward !== undefined && { toward }),
    ...(use !== undefined && { use }),
  } as WorkingOptions)
  const named = title ?? solution.title
  const frame = second === undefined ? '{title}' : second === 'metric' ? words.texts.metricUnits : words.texts.usUnits
  return { ...solution, title: filled(frame, { title: named }) }
}

/** Whether most numbers of an ask were stated in the units of the US. */
export function isStatedInUs({ stated }: Pick<Ask, 'stated'>): boolean {
  const all = Object.values(stated)
  return all.filter(({ unit }) => isUs(unit)).length > all.length / 2
}

/** Whether a unit is one of those that the US system of courses uses. */
export function isUs(unit: Unit): boolean {
  return (Object.values(systems.us) as Unit[]).some(({ symbol }) => symbol === unit.symbol)
}

/**
 * A table of one or several asks over values of a symbol, each column in two units.
 *
 * @param recipe - the columns and what they run over
 * @param words - the words of the page
 * @returns the table, with the cautions and sources of its formulas
 */
export function tableFrom(recipe: TableRecipe, words: RecipeWords): Table {
  const { caption, run, other, asks, columns, notes } = recipe
  const stated = run.values.map((value) => Number(inUnitOf(value, run.unit).toPrecision(10)))
  const decimals = Math.max(0, ...stated.map((value) => String(value).split('.')[1]?.length ?? 0))
  const table = dualUnitTable(
    {
      caption,
      argument: {
        heading: capitalised(run.symbol.meaning),
        values: stated,
        primary: { unit: run.unit, rounding: { decimals: Math.min(decimals, 4) } },
        second: { unit: other.unit, rounding: other.rounding },
      },
      columns: asks.map((ask, at) => {
        const { heading, second } = columns[at] as TableRecipe['columns'][number]
        return {
          heading,
          of: (value: number) => numberOfAsk(ask, { [run.name]: value }),
          primary: { unit: ask.showing.unit, rounding: ask.showing.rounding },
          second: { unit: second.unit, rounding: second.rounding },
        }
      }),
      notes,
    },
    { decimal: words.decimal },
    { note: words.texts.tableRounding, ...(words.roundings !== undefined && { roundings: words.roundings }) },
  )
  const cards = asks.map(({ card }) => card)
  return {
    ...withoutTwins(table),
    cautions: [...new Set(cards.flatMap((card) => card.cautions ?? []))],
    sources: cards
      .filter((card, at) => cards.findIndex((each) => each.source === card.source) === at)
      .map((card) => (card.place === undefined ? card.source : { id: card.source, place: card.place })),
  }
}

/** A quantity whose second unit is its first (a fraction, a work per litre) needs one column, not two. */
function withoutTwins(table: Table): Table {
  const keep = table.columns.map((column, at) => {
    const before = table.columns[at - 1]
    return !(at % 2 === 1 && before !== undefined && before.unit === column.unit)
  })
  const kept = <Cell>(row: readonly Cell[]): Cell[] => row.filter((_, at) => keep[at])
  return { ...table, columns: kept(table.columns), rows: table.rows.map(kept) }
}

/**
 * A chart of one or several asks over values of a symbol, or of one ask over two.
 *
 * @param recipe - the lines or the map
 * @returns the chart, with the cautions and sources of its formulas
 */
export function chartFrom(recipe: LinesRecipe | HeatMapRecipe): Chart {
  const { id, title, description, asks } = recipe
  const cards = asks.map(({ card }) => card)
  const head = {
    id,
    title,
    description,
    cautions: [...new Set(cards.flatMap((card) => card.cautions ?? []))],
    sources: [...new Set(cards.map((card) => card.source))],
  }
  if (recipe.kind === 'lines') {
    const { run, unit, x, y, names, limits } = recipe
    const across = run.values.map((value) => inUnitOf(value, run.unit))
    const series = recipe.asks.map((ask, at) => ({
      name: names[at] ?? '',
      x: across,
      y: run.values.map((value) => inUnitOf(numberOfAsk(ask, { [run.name]: value }), unit)),
    }))
    const lines = limits.map(({ label, stated }) => ({ label, value: inUnitOf(stated.value, unit) }))
    return { ...head, x, y, series, limits: lines }
  }
  const { across, up, x, y, z, contours } = recipe
  const [ask] = recipe.asks
  const values = (run: Run): number[] => run.values.map((value) => inUnitOf(value, run.unit))
  return {
    ...head,
    kind: 'heat map',
    x: { ...x, values: values(across) },
    y: { ...y, values: values(up) },
    z,
    cells: up.values.map((one) =>
      across.values.map((other) =>
        inUnitOf(numberOfAsk(ask, { [up.name]: one, [across.name]: other }), ask.showing.unit),
      ),
    ),
    contours,
  }
}

/** A meaning as the head of a column or an axis. */
export function capitalised(text: string): string {
  return `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`
}
