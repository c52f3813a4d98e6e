import type { Unit } from '../../units/index.ts'
import type { Card, CardSymbol } from '../card.ts'
import { symbolsIn } from '../expression.ts'
import type { Ask } from '../recipe.ts'
import { readShowing, readStated, type Showing, type Stated } from '../stated.ts'
import { systems } from '../systems.table.ts'
import type { Entry } from './entries.ts'
import { type Problems, unknownWord } from './problem.ts'

/** A number that a chapter has given a name to. */
export interface Named {
  readonly line: number
  readonly value: number
  readonly symbol: Pick<CardSymbol, 'dimension' | 'datum'>
  readonly showing: Showing
  /** As the author stated it; none for a computed number. */
  readonly text?: string
}

/** What the blocks of one chapter share. */
export interface Setting {
  readonly problems: Problems
  readonly cards: readonly Card[]
  readonly names: Map<string, Named>
  /** Names whose own number could not be made out: said once, where they are given. */
  readonly unknownNumbers: Set<string>
  readonly decimal: 'point' | 'comma'
}

/** The names that every ask may have beside the symbols of its formula. */
export const askNames = ['formula', 'find', 'show'] as const

/** The card behind a name: its id, or the function that it documents. */
export function cardNamed(name: string, line: number, { cards, problems }: Setting): Card | undefined {
  const card = cards.find(({ id }) => id === name) ?? cards.find(({ documents }) => documents === name)
  if (card === undefined)
    problems.add(
      line,
      unknownWord('formula of the library', name, [
        ...cards.map(({ id }) => id),
        ...cards.map(({ documents }) => documents),
      ]),
    )
  return card
}

/**
 * Reads an ask: a formula, numbers for its symbols, what to find and how to show it.
 *
 * @param fields - the lines of the block
 * @param line - where the block begins
 * @param setting - names, cards and problems of the chapter
 * @param besides - further names that the block knows
 * @param open - symbols that may stay without a number, since a table or a chart runs over them
 * @returns the ask, or undefined with its problems noted
 */
export function readAsk(
  fields: ReadonlyMap<string, Entry>,
  line: number,
  setting: Setting,
  besides: readonly string[] = [],
  open: readonly string[] = [],
): Ask | undefined {
  const { problems } = setting
  const formula = fields.get('formula')
  if (formula?.text === undefined) {
    problems.add(line, '"formula" is missing. Add a line "formula: …" with a name from `litrebar list`.')
    return undefined
  }
  const card = cardNamed(formula.text, formula.line, setting)
  if (card === undefined) return undefined
  const asked = fields.get('find')
  const find = asked?.text ?? card.result
  const expression = Object.hasOwn(card.forms, find) ? card.forms[find] : undefined
  if (expression === undefined) {
    problems.add(asked?.line ?? line, unknownWord(`symbol that ${card.id} can find`, find, Object.keys(card.forms)))
    return undefined
  }
  const stated: Record<string, Stated> = {}
  const written: Record<string, string> = {}
  let sound = true
  for (const [name, entry] of fields) {
    if ((askNames as readonly string[]).includes(name) || besides.includes(name)) continue
    const symbol = Object.hasOwn(card.symbols, name) ? card.symbols[name] : undefined
    if (symbol === undefined) {
      problems.add(
        entry.line,
        `${unknownWord(`symbol of ${card.id}`, name, [...Object.keys(card.symbols), ...askNames, ...besides])} Its symbols: ${described(card)}.`,
      )
      sound = false
      continue
    }
    const read = readNumber(entry, symbol, setting)
    if (read === undefined) sound = false
    else {
      stated[name] = read
      written[name] = entry.text ?? ''
    }
  }
  for (const name of symbolsIn(expression)) {
    if (stated[name] !== undefined || card.constants?.[name] !== undefined || open.includes(name) || fields.has(name))
      continue
    problems.add(
      line,
      `"${name}" (${card.symbols[name]?.meaning ?? ''}) is missing. Add a line "${name}: …" to the block.`,
    )
    sound = false
  }
  const show = fields.get('show')
  const { dimension } = card.symbols[find] as CardSymbol
  const showing = problems.attempt(show?.line ?? line, () => readShowing(show?.text, dimension, usualUnit(dimension)))
  return sound && showing !== undefined ? { card, find, stated, written, showing } : undefined
}

/** The unit of a dimension that is used where none is asked for. */
export function usualUnit(dimension: CardSymbol['dimension']): Unit | undefined {
  return (systems.metric as Partial<Record<string, Unit>>)[dimension]
}

function described(card: Card): string {
  return Object.entries(card.symbols)
    .filter(([name]) => card.constants?.[name] === undefined)
    .map(([name, { meaning }]) => `${name} (${meaning})`)
    .join(', ')
}

/** A number of an ask: written out, or the name of one that the chapter has. */
export function readNumber(
  entry: Entry,
  symbol: Pick<CardSymbol, 'dimension' | 'datum'>,
  setting: Setting,
): Stated | undefined {
  const { problems, names, decimal } = setting
  if (entry.text === undefined || entry.text === '') {
    problems.add(entry.line, 'A number with its unit is missing here.')
    return undefined
  }
  const text = entry.text
  const named = names.get(text)
  if (named?.text !== undefined)
    return problems.attempt(entry.line, () => readStated(named.text as string, symbol, { decimal }))
  if (named !== undefined) {
    if (named.symbol.dimension === symbol.dimension && (named.symbol.datum ?? '') === (symbol.datum ?? ''))
      return { value: named.value, unit: named.showing.unit }
    problems.add(entry.line, `"${text}" is ${phrase(named.symbol)}, and ${phrase(symbol)} belongs here.`)
    return undefined
  }
  if (setting.unknownNumbers.has(text)) return undefined
  if (/^[A-Za-z]/.test(text)) {
    problems.add(entry.line, unknownWord('value of this chapter', text, [...names.keys()]))
    return undefined
  }
  return problems.attempt(entry.line, () => readStated(text, symbol, { decimal }))
}

function phrase({ dimension, datum }: Pick<CardSymbol, 'dimension' | 'datum'>): string {
  if (dimension !== 'pressure') return `a quantity of ${dimension}`
  return datum === 'difference'
    ? 'a difference of pressures'
    : datum === 'gauge'
      ? 'a gauge pressure'
      : 'an absolute pressure'
}
