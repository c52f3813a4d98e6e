import type { CardSymbol } from '../card.ts'
import type { PageTexts } from '../page-text.table.ts'
import type { Run } from '../recipe.ts'
import type { RoundingWords } from '../rounding-text.table.ts'
import { readNumber, type Setting } from './ask.ts'
import type { Entry } from './entries.ts'
import { unknownWord } from './problem.ts'

/** What a block may look up beside the numbers of its chapter. */
export interface BlockSetting extends Setting {
  readonly knownSources: readonly string[]
  readonly knownCautions: readonly string[]
  /** Ids of charts, so that each is unique in the chapter. */
  readonly nextId: (kind: string) => string
  /** The words of made blocks in the language of the chapter. */
  readonly texts: PageTexts
  readonly roundings?: RoundingWords
  /** What the head of the file says of changing numbers. */
  readonly live: boolean
}

/**
 * Reads what a table or a chart runs over: `over: { d: 0 m to 30 m every 3 m }` or `over: { d: 0, 3, 6 m }`.
 *
 * @param entry - one symbol with its values
 * @param symbols - the symbols of the formula
 * @param setting - names and problems of the chapter
 * @returns the values in SI and the unit they were stated in
 */
export function readRun(
  entry: Entry | undefined,
  symbols: Readonly<Record<string, CardSymbol>>,
  line: number,
  setting: Setting,
): Run | undefined {
  const { problems } = setting
  const [pair] = entry?.fields ?? []
  if (entry === undefined || pair === undefined) {
    problems.add(
      entry?.line ?? line,
      '"over" is missing. Add "over:" and below it a symbol with its values: "d: 0 m to 30 m every 3 m".',
    )
    return undefined
  }
  const [name, { text = '', line: at }] = pair
  const symbol = Object.hasOwn(symbols, name) ? symbols[name] : undefined
  if (symbol === undefined) {
    problems.add(at, unknownWord('symbol of the formula', name, Object.keys(symbols)))
    return undefined
  }
  // in two steps, each of which takes time in step with the length
  const span = /^(.+?) to (.+)$/.exec(text)
  const stepped = /^(.+?) every (.+)$/.exec(span?.[2] ?? '')
  const number = (part: string, of: Pick<CardSymbol, 'dimension' | 'datum'> = symbol): ReturnType<typeof readNumber> =>
    readNumber({ line: at, text: part.trim() }, of, setting)
  if (span !== null && stepped !== null) {
    const [from, to] = [number(span[1] ?? ''), number(stepped[1] ?? '')]
    const asStep: Pick<CardSymbol, 'dimension' | 'datum'> =
      symbol.dimension === 'temperature'
        ? { dimension: 'temperature difference' }
        : symbol.dimension === 'pressure'
          ? { dimension: 'pressure', datum: 'difference' }
          : symbol
    const step = number(stepped[2] ?? '', asStep)
    if (from === undefined || to === undefined || step === undefined) return undefined
    const count = Math.floor((to.value - from.value) / step.value + 1e-6)
    if (!(step.value > 0) || !(count >= 1) || count > 400) {
      problems.add(
        at,
        'The steps do not lead from the first value to the last in 1 to 400 steps. Write the lower value first.',
      )
      return undefined
    }
    return {
      name,
      symbol,
      unit: from.unit,
      values: Array.from({ length: count + 1 }, (_, n) => from.value + n * step.value),
    }
  }
  const parts = text.split(/,\s|;/).map((part) => part.trim())
  const unitText = /[^\d.\s][\s\S]*/.exec(parts.at(-1) ?? '')?.[0] ?? ''
  const read = parts.map((part) => number(/[^\d.\s−-]/.test(part) ? part : `${part} ${unitText}`))
  const known = read.filter((value) => value !== undefined)
  return known.length === read.length && known[0] !== undefined
    ? { name, symbol, unit: known[0].unit, values: known.map(({ value }) => value) }
    : undefined
}
