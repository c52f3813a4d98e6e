import { LitrebarError } from '../../errors/index.ts'
import { type Dimension, dimensions } from '../../units/index.ts'
import type { CardSymbol } from '../card.ts'
import { dimensionOf } from '../dimension-of.ts'
import { evaluate } from '../evaluate.ts'
import { numberOfAsk } from '../recipe.ts'
import { dimensionOfText, readShowing, readStated } from '../stated.ts'
import { type Named, readAsk, type Setting, usualUnit } from './ask.ts'
import { type Entry, requireNames } from './entries.ts'
import { readFormula } from './formula-text.ts'
import { unknownWord } from './problem.ts'

/** Reads a number that a chapter gives a name to: stated outright, or asked for. */
export function readNamed(entry: Entry, setting: Setting): Named | undefined {
  const { problems, decimal } = setting
  const { line, text, fields } = entry
  if (text !== undefined) {
    return problems.attempt(line, () => {
      const dimension = dimensionOfText(text)
      const datum = /gauge|psig|barg|\(g\)/i.test(text) ? ('gauge' as const) : undefined
      const symbol = { dimension, ...(datum !== undefined && { datum }) }
      const { value, unit } = readStated(text, symbol, { decimal })
      return { line, value, symbol, text, showing: readShowing(undefined, dimension, unit) }
    })
  }
  if (fields === undefined) {
    problems.add(line, 'A value is a number with its unit, or lines that begin with "formula: …".')
    return undefined
  }
  const sum = fields.get('is')
  if (sum !== undefined) return readReckoned(sum, fields, setting)
  const ask = readAsk(fields, line, setting)
  if (ask === undefined) return undefined
  return problems.attempt(line, () => ({
    line,
    value: numberOfAsk(ask),
    symbol: ask.card.symbols[ask.find] as CardSymbol,
    showing: ask.showing,
  }))
}

/** A value that is an expression over others: `{ is: full - turn, show: bar }`. */
function readReckoned(sum: Entry, fields: ReadonlyMap<string, Entry>, setting: Setting): Named | undefined {
  const { problems } = setting
  requireNames(fields, 'line of a value', ['is', 'show'], problems)
  const found = readArithmetic(sum.text ?? '', sum.line, setting)
  if (found === undefined) return undefined
  const { value, dimension } = found
  const symbol = { dimension, ...(dimension === 'pressure' && { datum: 'difference' as const }) }
  const show = fields.get('show')
  return problems.attempt(show?.line ?? sum.line, () => ({
    line: sum.line,
    value,
    symbol,
    showing: readShowing(show?.text, dimension, usualUnit(dimension)),
  }))
}

/**
 * Works out an expression over the named values of a chapter, in SI: `full - turn`. Adding a length to a pressure is refused.
 *
 * @param text - names, numbers, + − · / ^ and brackets
 * @param line - where it stands
 * @param setting - names and problems of the chapter
 * @returns value and dimension, or undefined with its problem noted
 */
function readArithmetic(
  text: string,
  line: number,
  { names, unknownNumbers, problems }: Setting,
): { readonly value: number; readonly dimension: Dimension } | undefined {
  return problems.attempt(line, () => {
    const { expression, symbols } = readFormula(text)
    const used = Object.keys(symbols)
    const unknown = used.find((name) => !names.has(name))
    if (unknown !== undefined) {
      if (!unknownNumbers.has(unknown))
        problems.add(line, unknownWord('value of this chapter', unknown, [...names.keys()]))
      return undefined
    }
    const quantities = Object.fromEntries(used.map((name) => [name, names.get(name) as Named]))
    const kinds = Object.fromEntries(used.map((name) => [name, (quantities[name] as Named).symbol]))
    const exponents = String(dimensionOf(expression, kinds))
    const alike = (Object.keys(dimensions) as Dimension[]).filter((each) => String(dimensions[each]) === exponents)
    // a torque has the exponents of an energy: what the names are comes first
    const dimension = Object.values(kinds).find((kind) => alike.includes(kind.dimension))?.dimension ?? alike[0]
    if (dimension === undefined) throw nothing(text)
    const numbers = Object.fromEntries(used.map((name) => [name, (quantities[name] as Named).value]))
    return { value: evaluate(expression, numbers), dimension }
  })
}

function nothing(text: string): LitrebarError {
  return new LitrebarError({
    code: 'unit',
    argument: `"${text}"`,
    value: 'a quantity without a name',
    expected: 'a quantity that has units, such as a pressure or a volume',
    hint: 'Leave it inside a longer expression.',
  })
}
