// What a reader may change on a page, worked out from the recipes of a section.
import type { CardSymbol } from '../../course/card.ts'
import { type Ask, inUnitOf, type Recipe } from '../../course/recipe.ts'
import { readStated, type Stated } from '../../course/stated.ts'
import { roundNumber, type Unit, withNumberStyle } from '../../units/index.ts'

/** One number of a section that a reader may change. */
export interface Given {
  /** What numbers that change together have in common. */
  readonly key: string
  /** Its name in the address of the page. */
  readonly name: string
  readonly symbol: CardSymbol
  readonly unit: Unit
  /** The printed number as a reader would type it. */
  readonly text: string
  /** Bounds and step of the slider in the unit, where the card has a range. */
  readonly slide?: Slide
  /** The range of the card in the unit. */
  readonly range?: readonly [low: number, high: number]
}

/** A slider: round steps within the range; past an end that the printed number itself lies beyond, a quarter of the range more. */
export interface Slide {
  readonly low: number
  readonly high: number
  readonly step: number
  readonly decimals: number
}

/** Numbers written alike for one symbol of one formula, and numbers of one name, are one number. */
export function keyOf(card: string, symbol: string, written: string): string {
  return /^[A-Za-z]/.test(written) ? written : `${card} ${symbol} ${written}`
}

/**
 * The numbers that the live workings of a section leave to the reader, each once, in the order of the page.
 *
 * @param recipes - the recipes of the section
 * @param decimal - decimal sign of the page
 * @returns the numbers with their sliders
 */
export function givensOf(recipes: readonly Recipe[], decimal: 'point' | 'comma'): Given[] {
  const givens = new Map<string, Given>()
  const names = new Set<string>()
  for (const recipe of recipes) {
    if (recipe.kind !== 'solution') continue
    const [{ card, stated, written }] = recipe.asks
    for (const id of recipe.live) {
      const key = keyOf(card.id, id, written[id] ?? '')
      const { value, unit } = stated[id] as Stated
      if (givens.has(key)) continue
      const name = names.has(id) ? `${id}.${String(names.size)}` : id
      names.add(name)
      const si = card.range[id]
      const range = si === undefined ? undefined : ordered(inUnitOf(si[0], unit), inUnitOf(si[1], unit))
      givens.set(key, {
        key,
        name,
        symbol: card.symbols[id] as CardSymbol,
        unit,
        text: typed(inUnitOf(value, unit), decimal),
        ...(range !== undefined && { range, slide: slideOver(range, inUnitOf(value, unit)) }),
      })
    }
  }
  return [...givens.values()]
}

function ordered(a: number, b: number): readonly [number, number] {
  return a < b ? [a, b] : [b, a]
}

/** A number as a reader would type it: six figures at most, no zeros behind them. */
export function typed(value: number, decimal: 'point' | 'comma'): string {
  const { text } = roundNumber(value, { figures: 6 })
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text
  return withNumberStyle(short, { decimal, grouping: 'none' })
}

/** A slider of some hundred steps of 1, 2 or 5. An author who left the range of the card has room for the reader on both sides. */
export function slideOver(range: readonly [number, number], value: number): Slide {
  const more = (range[1] - range[0]) / 4
  const below = value > 0 ? Math.max(value - more, value / 2) : value - more // what is above zero stays there
  const low = value < range[0] ? below : range[0]
  const high = value > range[1] ? value + more : range[1]
  const rough = (high - low) / 100
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = power * ([1, 2, 5].find((digit) => digit * power >= rough * 0.999) ?? 10)
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9))
  const round = (number: number): number => Number(number.toFixed(decimals))
  return {
    low: round(Math.min(Math.ceil(low / step - 1e-9), Math.floor(value / step + 1e-9)) * step),
    high: round(Math.max(Math.floor(high / step + 1e-9), Math.ceil(value / step - 1e-9)) * step),
    step: round(step),
    decimals,
  }
}

/** What stands in a field, read as a number of a symbol; a number without a unit is in the unit beside the field. */
export function readTyped(
  text: string,
  { unit }: Pick<Given, 'unit'>,
  symbol: Pick<CardSymbol, 'dimension' | 'datum'>,
  decimal: 'point' | 'comma',
): Stated {
  const bare = /^[\s\d.,'’+\-−]*(?:[eE][+-]?\d+)?\s*$/.test(text)
  return readStated(bare && unit.symbol !== '' ? `${text.trim()} ${unit.symbol}` : text, symbol, { decimal })
}

/**
 * A recipe with the numbers that a reader has typed.
 *
 * @param recipe - as the page was printed
 * @param changes - typed texts by the key of their given
 * @param givens - the numbers of the section, by key
 * @param decimal - decimal sign of the page
 * @returns the recipe with those numbers in place
 * @throws LitrebarError `unit` for a text that cannot be read
 */
export function changedRecipe<Kind extends Recipe>(
  recipe: Kind,
  changes: ReadonlyMap<string, string>,
  givens: ReadonlyMap<string, Given>,
  decimal: 'point' | 'comma',
): Kind {
  const changed = (key: string, symbol: Pick<CardSymbol, 'dimension' | 'datum'>, stated: Stated): Stated => {
    const text = changes.get(key)
    const given = givens.get(key)
    return text === undefined || given === undefined ? stated : readTyped(text, given, symbol, decimal)
  }
  const asks = recipe.asks.map((ask: Ask): Ask => {
    const stated = Object.entries(ask.stated).map(([name, number]) => {
      const key = keyOf(ask.card.id, name, ask.written[name] ?? '')
      return [name, changed(key, ask.card.symbols[name] as CardSymbol, number)] as const
    })
    return { ...ask, stated: Object.fromEntries(stated) }
  })
  if (recipe.kind !== 'lines') return { ...recipe, asks }
  const limits = recipe.limits.map((limit) => ({
    ...limit,
    stated: changed(limit.written, limit.symbol, limit.stated),
  }))
  return { ...recipe, asks, limits }
}
