import { isLitrebarError } from '../../errors/index.ts'
import { allUnits, type Dimension, dimensions, parseUnit, roundNumber, type Unit } from '../../units/index.ts'
import type { Card, CardSymbol } from '../card.ts'
import { allCards } from '../cards/all-cards.ts'
import { type Expression, numberOf, symbolsIn } from '../expression.ts'
import { type Ask, numberOfAsk } from '../recipe.ts'
import { requireCard } from '../require-card.ts'
import { requireShape } from '../require-shape.ts'
import { type SlipId, slips } from '../slip.table.ts'
import { dimensionOfText, readShowing, readStated, type Stated } from '../stated.ts'
import { askNames, cardNamed, type Named, readNumber, type Setting } from './ask.ts'
import { type Entry, fieldsOf, readEntries, textOf } from './entries.ts'
import { type Problem, Problems, unknownWord } from './problem.ts'

/** A number that a text prints, held against what the library computes. */
export interface Claim {
  readonly line: number
  /** What the text says, in its own words. */
  readonly text: string
  readonly says: string
  readonly verdict: 'agrees' | 'differs' | 'cannot be judged'
  /** The computed number in the unit of the text, with two digits more than the text has. */
  readonly computed?: string
  /** (printed − computed) / computed. */
  readonly difference?: number
  /** Which slip would explain the difference, or why nothing can be said. */
  readonly because?: string
}

const claimNames = ['says', 'text', 'last place', 'same as', 'because', ...askNames] as const

/**
 * Reads claims, one to an item of a list, and judges each.
 *
 * @param entry - the list
 * @param setting - names, cards and problems of the file
 * @returns one judged claim for each item that could be read
 */
export function readClaims(entry: Entry, setting: Setting): Claim[] {
  if (entry.list === undefined) setting.problems.add(entry.line, 'Claims are a list: begin each with "- says: …".')
  return (entry.list ?? []).flatMap((row) => {
    const claim = readClaim(row, setting)
    return claim === undefined ? [] : [claim]
  })
}

function readClaim(row: Entry, setting: Setting): Claim | undefined {
  const { problems } = setting
  const fields = fieldsOf(row, 'A claim', problems)
  const says = textOf(fields, 'says', row.line, problems)
  if (says === undefined) return undefined
  const text = fields.get('text')?.text ?? says
  const open = (because: string): Claim => ({ line: row.line, text, says, verdict: 'cannot be judged', because })
  const place = fields.get('last place')?.text
  const printed = printedOf(says, place)
  const same = fields.get('same as')
  if (same !== undefined) {
    const read = same.text === undefined ? undefined : readQuantity(same.text, same.line, setting)
    if (read !== undefined && printed !== undefined)
      return { line: row.line, text, says, ...compared(read.value, read, printed, () => undefined) }
    if (printed === undefined) problems.add(row.line, `"${says}" is no number with a unit.`)
    return undefined
  }
  const formula = fields.get('formula')
  if (formula?.text === undefined) return open(fields.get('because')?.text ?? 'no formula is named for it')
  const card = cardNamed(formula.text, formula.line, setting)
  if (card === undefined) return undefined
  const find = fields.get('find')?.text ?? card.result
  const expression = Object.hasOwn(card.forms, find) ? card.forms[find] : undefined
  if (expression === undefined) {
    problems.add(
      fields.get('find')?.line ?? row.line,
      unknownWord(`symbol that ${card.id} can find`, find, Object.keys(card.forms)),
    )
    return undefined
  }
  const stated: Record<string, Stated> = {}
  for (const [name, entry] of fields) {
    if ((claimNames as readonly string[]).includes(name)) continue
    const symbol = Object.hasOwn(card.symbols, name) ? card.symbols[name] : undefined
    if (symbol === undefined) {
      problems.add(entry.line, unknownWord(`symbol of ${card.id}`, name, [...Object.keys(card.symbols), ...claimNames]))
      return undefined
    }
    const read = readNumber(entry, symbol, setting)
    if (read === undefined) return undefined
    stated[name] = read
  }
  const missing = symbolsIn(expression).filter(
    (name) => stated[name] === undefined && card.constants?.[name] === undefined,
  )
  if (missing.length > 0)
    return open(
      `the text does not state ${missing.map((name) => `${name} (${card.symbols[name]?.meaning ?? ''})`).join(', ')}`,
    )
  if (printed === undefined) {
    problems.add(row.line, `"${says}" is no number with a unit.`)
    return undefined
  }
  const ask: Ask = {
    card,
    find,
    stated,
    written: {},
    showing: readShowing(undefined, (card.symbols[find] as CardSymbol).dimension),
  }
  try {
    return { line: row.line, text, says, ...judged(ask, printed) }
  } catch (error) {
    if (!isLitrebarError(error)) throw error
    return open(error.message)
  }
}

interface Printed {
  readonly number: number
  /** Half a unit of the last printed place. */
  readonly half: number
  readonly unit: string
}

/** Number, precision and unit of a printed text. Trailing zeros of a whole number may or may not count: the wider reading is taken. */
function printedOf(says: string, place: string | undefined): Printed | undefined {
  // one space for many, and no digit that two parts could take: the time stays in step with the length
  const text = says.trim().replaceAll(/\s+/g, ' ')
  const found = /^([+\-−]?(?:\d+(?: \d+)*)?(?:\.\d+)?)(?: ?[x×] ?10\^?([+\-−]?\d+)|e([+-]?\d+))? ?(.*)$/i.exec(text)
  if (found === null || !/\d/.test(found[1] ?? '')) return undefined
  const digits = (found[1] ?? '').replaceAll(/\s/g, '').replace('−', '-')
  const power = 10 ** Number((found[2] ?? found[3] ?? '0').replace('−', '-'))
  const decimals = digits.split('.')[1]?.length
  const zeros = decimals === undefined ? (/0*$/.exec(digits)?.[0].length ?? 0) : 0
  const last = place === undefined ? 10 ** (decimals === undefined ? zeros : -decimals) : Number(place)
  const number = Number(digits) * power
  return Number.isFinite(number) && last > 0
    ? { number, half: (last * power) / 2, unit: found[4]?.trim() ?? '' }
    : undefined
}

/** A quantity that the text states in another unit, as it stands there. */
function readQuantity(
  text: string,
  line: number,
  { problems, decimal }: Setting,
): { readonly value: number; readonly dimension: Dimension; readonly meaning: string } | undefined {
  return problems.attempt(line, () => {
    const dimension = dimensionOfText(text)
    return { value: readStated(text, { dimension }, { decimal }).value, dimension, meaning: text }
  })
}

type Judgement = Pick<Claim, 'verdict' | 'computed' | 'difference' | 'because'>

function judged(ask: Ask, printed: Printed): Judgement {
  const value = numberOfAsk(ask)
  return compared(value, ask.card.symbols[ask.find] as CardSymbol, printed, (unit) =>
    slipBehind(ask, value, unit, printed),
  )
}

/** A printed number against the computed one; where they differ, the slip of the formula or of the printing that explains it. */
function compared(
  value: number,
  { dimension, meaning }: Pick<CardSymbol, 'dimension' | 'meaning'>,
  printed: Printed,
  slipOfFormula: (unit: Unit) => string | undefined,
): Judgement {
  const unit = unitOf(printed.unit, dimension)
  if (unit === undefined) {
    const other = dimensionOfText(`1 ${printed.unit}`)
    return {
      verdict: 'differs',
      because: `${printed.unit} is a unit of ${other}, and ${meaning} is a quantity of ${dimension}`,
    }
  }
  const computed = inUnit(value, unit)
  const shown = roundNumber(computed, {
    decimals: Math.min(12, Math.max(0, 1 - Math.floor(Math.log10(printed.half * 2)) + 1)),
  }).text
  const facts = {
    computed: `${shown}${unit.symbol === '' ? '' : ` ${unit.symbol}`}`,
    difference: (printed.number - computed) / computed,
  }
  if (fits(computed, printed)) return { verdict: 'agrees', ...facts }
  const because = slipOfFormula(unit) ?? slipOfPrint(value, unit, printed)
  return { verdict: 'differs', ...facts, ...(because !== undefined && { because }) }
}

/** A number rounds to what is printed, with an allowance for binary arithmetic. */
function fits(computed: number, { number, half }: Printed): boolean {
  return Math.abs(computed - number) <= half * (1 + 1e-9) + 1e-12 * Math.abs(number)
}

function inUnit(value: number, unit: Unit): number {
  return (value - (unit.offset ?? 0)) / unit.factor
}

/** The unit that a text names, of the dimension or of one that is made the same way; undefined for a unit of another. */
function unitOf(text: string, dimension: Dimension): Unit | undefined {
  const plain = text.replace(/\(?\b(gauge|absolute|abs)\b\)?$/i, '').trimEnd()
  if (plain === '') return allUnits.find(({ quantity, symbol }) => quantity === dimension && symbol === '')
  for (const like of [
    dimension,
    ...(Object.keys(dimensions) as Dimension[]).filter((each) => alike(each, dimension)),
  ]) {
    try {
      return parseUnit(plain, like)
    } catch (error) {
      if (!isLitrebarError(error)) throw error // else of another dimension: the next is tried
    }
  }
  return undefined
}

function alike(one: Dimension, other: Dimension): boolean {
  return String(dimensions[one]) === String(dimensions[other]) && one !== 'torque' && other !== 'torque'
}

const slipTexts: Readonly<Record<SlipId, string>> = {
  'gauge-for-absolute': 'a gauge pressure was used as absolute',
  'absolute-for-gauge': 'an absolute pressure was used as gauge',
  'celsius-for-kelvin': 'degrees Celsius were used as kelvin',
  'percent-for-fraction': 'per cent were used as a fraction',
  'diameter-for-radius': 'a diameter was used as a radius',
  'minutes-for-seconds': 'minutes were used as seconds',
  'sea-water-for-fresh': 'the density of sea water was used',
  'fresh-water-for-sea': 'the density of fresh water was used',
}

/** The slips that may explain a wrong number, by the dimension of the symbol that each changes. */
const slipsOf: Readonly<Partial<Record<Dimension, readonly SlipId[]>>> = {
  pressure: ['gauge-for-absolute', 'absolute-for-gauge'],
  temperature: ['celsius-for-kelvin'],
  fraction: ['percent-for-fraction'],
  density: ['sea-water-for-fresh', 'fresh-water-for-sea'],
  length: ['diameter-for-radius'],
  duration: ['minutes-for-seconds'],
}

/** Other densities of depth conventions, kg/m³: 10 m and 33 ft of sea water to the atmosphere or bar. */
const conventions: Readonly<Record<string, number>> = {
  '10 m of water to the bar': 1e5 / (9.80665 * 10),
  '33 ft of water to the atmosphere': 101_325 / (9.80665 * 33 * 0.3048),
  '34 ft of water to the atmosphere': 101_325 / (9.80665 * 34 * 0.3048),
}

/** Units that are taken for one another: few, since any wrong number fits some unit. */
const confusedUnits: readonly (readonly string[])[] = [
  ['bar', 'psi', 'kPa'],
  ['°C', '°F'],
  ['m', 'ft'],
  ['L', 'ft³'],
  ['L/min', 'ft³/min'],
  ['kg', 'lb'],
]

/** The first slip with the formula after which the number comes out as printed. */
function slipBehind(ask: Ask, value: number, unit: Unit, printed: Printed): string | undefined {
  const { card, find, stated } = ask
  const expression = card.forms[find] as Expression
  const values = {
    ...card.constants,
    ...Object.fromEntries(Object.entries(stated).map(([name, each]) => [name, each.value])),
  } as Record<string, number>
  const comes = (changes: Readonly<Record<string, number>>, other: Expression = expression): boolean => {
    try {
      return fits(inUnit(numberOf(other, { ...values, ...changes }, card.calls), unit), printed)
    } catch {
      return false // a wrong number may lie outside what a called function takes
    }
  }
  for (const { slip, text, instead } of card.commonErrors ?? []) {
    const other = instead?.[find]
    if (slip === 'other-formula' && other !== undefined && comes({}, other)) return lowered(text)
  }
  const used = symbolsIn(expression).filter((name) => values[name] !== undefined)
  for (const [dimension, ids] of Object.entries(slipsOf)) {
    const names = used.filter(
      (name) => card.symbols[name]?.dimension === dimension && card.constants?.[name] === undefined,
    )
    for (const id of ids) {
      // what is above 1 was no fraction that somebody could have entered in per cent
      const open = names.filter((name) => id !== 'percent-for-fraction' || (values[name] as number) <= 1)
      const each = open.map((name): [string, number] => [name, slips[id].of(values[name] as number)])
      for (const changes of [Object.fromEntries(each), ...each.map((one) => Object.fromEntries([one]))]) {
        if (open.length > 0 && comes(changes)) return slipTexts[id]
      }
    }
  }
  for (const [text, density] of Object.entries(conventions)) {
    const names = used.filter((name) => card.symbols[name]?.dimension === 'density')
    if (names.length === 1 && comes({ [names[0] as string]: density }))
      return `another depth convention was used: ${text}`
  }
  if (rightIn(value, unit, printed) !== undefined) return undefined
  for (const name of used) {
    const { unit: from, value: given } = stated[name] ?? {}
    const row = confusedUnits.find((symbols) => symbols.includes(from?.symbol ?? ''))
    if (from === undefined || given === undefined || row === undefined) continue
    const other = allUnits.find(
      (each) =>
        each !== from &&
        each.quantity === from.quantity &&
        row.includes(each.symbol) &&
        comes({ [name]: inUnit(given, from) * each.factor + (each.offset ?? 0) }),
    )
    if (other !== undefined)
      return `${card.symbols[name]?.meaning ?? name} was taken in ${other.symbol} instead of ${from.symbol}`
  }
  if (card.symbols[find]?.dimension !== 'pressure') return undefined
  if (fits(inUnit(value - 101_325, unit), printed)) return 'the result is a gauge pressure'
  if (fits(inUnit(value + 101_325, unit), printed)) return 'the result is an absolute pressure'
  return undefined
}

/** The other unit in which the printed number is right. */
function rightIn(value: number, unit: Unit, printed: Printed): Unit | undefined {
  return allUnits.find(
    (other) => other.symbol !== unit.symbol && other.quantity === unit.quantity && fits(inUnit(value, other), printed),
  )
}

/** What may have happened to the right number on its way into print. */
function slipOfPrint(value: number, unit: Unit, printed: Printed): string | undefined {
  const meant = rightIn(value, unit, printed)
  if (meant !== undefined) return `the number is right in ${meant.symbol}`
  const computed = inUnit(value, unit)
  const lost = Math.abs(computed) - Math.abs(printed.number)
  if (computed * printed.number > 0 && lost > 0 && lost < 2 * printed.half) return 'the number was cut off, not rounded'
  const ratio = printed.number / computed
  const decimal = Math.round(Math.log10(Math.abs(ratio)))
  if (decimal !== 0 && fits(computed * 10 ** decimal, printed))
    return `the decimal sign or the prefix of the unit is off by a factor of ${String(10 ** Math.abs(decimal))}`
  if (Math.abs(ratio - 1) < 0.02) return 'an intermediate result was probably rounded'
  return undefined
}

function lowered(text: string): string {
  return `${text[0]?.toLowerCase() ?? ''}${text.slice(1)}`
}

/**
 * Judges the claims of a file that holds nothing else: a YAML or JSON list.
 *
 * @param text - the file
 * @param options - its name, and cards of the author’s own
 * @returns the judged claims, and what could not be read
 * @throws LitrebarError `input` for what is no text, and for unknown options
 */
export function judgeClaims(
  text: string,
  options: { readonly file: string; readonly cards?: readonly Card[] },
): { readonly claims: readonly Claim[]; readonly problems: readonly Problem[] } {
  requireShape('text', text, 'text')
  requireShape('options', options, { fields: { file: 'text', 'cards?': ['any'] } })
  for (const [at, card] of (options.cards ?? []).entries()) requireCard(`options.cards[${String(at)}]`, card)
  const problems = new Problems(options.file)
  const entry = readEntries(text, 1, problems)
  const cards = [...allCards(), ...(options.cards ?? [])]
  const claims =
    entry === undefined
      ? []
      : readClaims(entry, {
          problems,
          cards,
          names: new Map<string, Named>(),
          unknownNumbers: new Set<string>(),
          decimal: 'point',
        })
  return { claims, problems: problems.inOrder() }
}
