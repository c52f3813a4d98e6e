import {
  LitrebarError,
  nearestOf,
  requireKeys,
  requireList,
  requireText,
  requireWord,
  shown,
} from '../../errors/index.ts'
import { type CautionId, cautions, type SourceId, sources } from '../../references/index.ts'
import { allUnits, type ParsedKind, type Unit } from '../../units/index.ts'
import type { Card, CardSymbol, CommonError } from '../card.ts'
import { allCards } from '../cards/all-cards.ts'
import type { CitedSource } from '../cited.ts'
import { dimensionOf } from '../dimension-of.ts'
import type { Expression } from '../expression.ts'
import { readFormula } from '../file/formula-text.ts'
import { type CourseLanguage, translatedCard } from '../language.ts'
import { languageShape } from '../language-shape.table.ts'
import { requireShape } from '../require-shape.ts'
import { type SlipId, slips } from '../slip.table.ts'
import { drawnIds } from './drawn/drawn.ts'
import { evaluatorOf } from './evaluator.ts'
import type { Exercise, Given, Misconception, Statement } from './exercise.ts'
import { fingerprint } from './fingerprint.ts'

const commonKeys = { id: true, kind: true, level: true, source: true, place: false, cautions: false } as const
const numberKeys = {
  ...commonKeys,
  text: true,
  givens: true,
  find: true,
  card: false,
  formula: false,
  form: false,
  reads: false,
  within: true,
  errors: false,
  conventions: false,
}
const judgementKeys = { ...commonKeys, text: true, right: true, wrong: true, because: true }
const drawnKeys = { ...commonKeys, drawn: true }

type Entry = Readonly<Record<string, unknown>>

/** What a bank may be told. */
export interface ReadExerciseOptions {
  readonly language?: CourseLanguage
}

/**
 * Reads one exercise of a bank: plain data as it comes from YAML or JSON. Formulas are checked for their dimensions.
 *
 * @param entry - the exercise as data
 * @param subject - the subject that it belongs to
 * @param at - its place in the bank, for messages
 * @param options - the language of the bank: common errors and meanings of the cards come in it
 * @returns the exercise
 * @throws LitrebarError `input` naming the place for unknown keys, units, cards, sources, cautions, symbols, and a formula of another
 * dimension than its answer
 * @example
 * const entry = { id: 'weight', kind: 'number', level: 1, text: 'What does {m} weigh?', formula: 'F = m·g',
 *   givens: { m: '2 to 9 step 1 kg', g: '9.81 m/s²' }, find: 'force in N to 2 figures', within: '1 to 99', source: 'common-practice' }
 * const exercise = readExercise(entry, 'forces', 'entry')
 * exercise.kind // => 'number'
 */
export function readExercise(entry: unknown, subject: string, at: string, options: ReadExerciseOptions = {}): Exercise {
  requireText('subject', subject)
  requireText('at', at)
  requireShape('options', options, { fields: { 'language?': languageShape } })
  const kind = (entry as Entry | null)?.['kind']
  requireWord(`${at}.kind`, kind, ['number', 'choice', 'judgement', 'several', 'drawn'])
  requireKeys(
    at,
    entry,
    kind === 'number' || kind === 'choice' ? numberKeys : kind === 'drawn' ? drawnKeys : judgementKeys,
  )
  const fields = entry as Entry
  const core = {
    ...coreOf(fields, at),
    subject,
    fingerprint: fingerprint(`${subject} ${JSON.stringify(entry, bigAsText)}`),
  }
  if (kind === 'drawn') {
    requireWord(`${at}.drawn`, fields['drawn'], drawnIds)
    return { ...core, kind, drawn: fields['drawn'] }
  }
  const text = textOf(fields['text'], `${at}.text`)
  if (kind === 'judgement' || kind === 'several') {
    return {
      ...core,
      kind,
      text,
      right: statements(fields['right'], `${at}.right`, 1),
      wrong: statements(fields['wrong'], `${at}.wrong`, kind === 'judgement' ? 2 : 1),
      because: textOf(fields['because'], `${at}.because`),
    }
  }
  return { ...core, kind, text, ...numberPart(fields, text, at, options) }
}

/** JSON has no such numbers; where an entry holds one, its field is refused. */
function bigAsText(_: string, value: unknown): unknown {
  return typeof value === 'bigint' ? String(value) : value
}

function coreOf(
  fields: Entry,
  at: string,
): Omit<Exercise & { readonly kind: 'drawn' }, 'kind' | 'drawn' | 'subject' | 'fingerprint'> {
  const { id, level, source, place } = fields
  if (typeof id !== 'string' || !/^[a-z][a-z0-9-]*$/.test(id))
    throw unfit(`${at}.id`, id, 'small letters, digits and hyphens', 'Ids become names of files and links.')
  if (level !== 1 && level !== 2 && level !== 3) throw unfit(`${at}.level`, level, '1, 2 or 3', 'Say how hard it is.')
  requireWord(`${at}.source`, source, Object.keys(sources))
  const named = (fields['cautions'] ?? []) as readonly unknown[]
  if (!Array.isArray(named)) throw unfit(`${at}.cautions`, named, 'a list of caution ids', 'Write [reserve].')
  for (const caution of named) requireWord(`${at}.cautions`, caution, Object.keys(cautions))
  const cited: CitedSource = {
    id: source as SourceId,
    place: place === undefined ? '' : textOf(place, `${at}.place`),
  }
  return { id, level, cautions: named as readonly CautionId[], sources: [cited] }
}

function numberPart(fields: Entry, text: string, at: string, { language }: ReadExerciseOptions) {
  for (const name of ['errors', 'conventions'])
    if (fields[name] !== undefined) requireList(`${at}.${name}`, fields[name])
  const asked = readAsked(textOf(fields['find'], `${at}.find`), fields['reads'], at)
  const givens: Record<string, Given> = {}
  const meanings: Record<string, string> = {}
  for (const [symbol, line] of Object.entries((fields['givens'] ?? {}) as Entry)) {
    const [meaning = '', numbers] = textOf(line, `${at}.givens.${symbol}`).split(' = ')
    givens[symbol] = readGiven(numbers ?? meaning, `${at}.givens.${symbol}`)
    meanings[symbol] = numbers === undefined ? symbol : meaning
  }
  const { card, find } = cardPart(fields, { at, asked, givens, meanings, ...(language !== undefined && { language }) })
  const expression = card.forms[find] as Expression
  for (const [, symbol = ''] of text.matchAll(/\{([\p{L}\p{N}_]+)\}/gu)) {
    if (!Object.hasOwn(givens, symbol))
      throw unfit(`${at}.text`, `{${symbol}}`, `one of ${Object.keys(givens).join(', ')}`, 'Name a given.')
  }
  const known = new Set([...Object.keys(givens), ...Object.keys(card.constants ?? {})])
  for (const symbol of symbolsIn(expression)) {
    if (!known.has(symbol)) throw unfit(`${at}.givens`, `without ${symbol}`, 'every symbol of the formula', 'Give it.')
  }
  for (const symbol of Object.keys(givens)) {
    if (!symbolsIn(expression).has(symbol) && !text.includes(`{${symbol}}`))
      throw unfit(
        `${at}.givens.${symbol}`,
        'used nowhere',
        'a symbol of the formula or a name in the text',
        'Leave it out.',
      )
  }
  return {
    card,
    find,
    givens,
    asked: { unit: asked.unit, figures: asked.figures, kind: asked.kind },
    within: readWithin(fields['within'], `${at}.within`),
    conventions: ((fields['conventions'] ?? []) as readonly unknown[]).map((line) => readConvention(line, at, card)),
    misconceptions: [
      ...cardMisconceptions(card, find),
      ...((fields['errors'] ?? []) as readonly unknown[]).map((error, index) =>
        readError(error, expression, card, `${at}.errors[${String(index)}]`),
      ),
    ],
  }
}

interface Asked {
  readonly meaning: string
  readonly unit: Unit
  readonly figures: number
  readonly kind: ParsedKind
}

/** `absolute pressure at the depth in bar to 3 figures`. */
function readAsked(line: string, reads: unknown, at: string): Asked {
  const [, meaning, symbol = '', figures] = /^(.+?) in (\S+) to ([1-6]) figures$/.exec(line) ?? []
  if (meaning === undefined)
    throw unfit(
      `${at}.find`,
      line,
      'what it is, then in a unit, then to 1 to 6 figures',
      'Write “time in min to 2 figures”.',
    )
  const unit = unitOf(symbol === '1' ? '' : symbol, `${at}.find`)
  const kind = (reads ?? defaultKind(unit)) as ParsedKind
  return { meaning, unit, figures: Number(figures), kind }
}

const kindsOfDimension: Readonly<Record<string, ParsedKind>> = {
  pressure: 'pressure difference',
  volume: 'gas volume',
  fraction: 'mole fraction',
}

function defaultKind({ quantity }: Unit): ParsedKind {
  return Object.hasOwn(kindsOfDimension, quantity)
    ? (kindsOfDimension[quantity] as ParsedKind)
    : (quantity as ParsedKind)
}

/** `5 to 40 step 1 m`, `10, 12, 15 L`, `9.81 m/s²`. */
function readGiven(line: string, at: string): Given {
  const range = /^(-?[\d.]+) to (-?[\d.]+) step ([\d.]+)(?: (\S+))?$/.exec(line)
  const list = /^(-?[\d.]+(?:, -?[\d.]+)*)(?: (\S+))?$/.exec(line)
  const unit = unitOf(range?.[4] ?? list?.[2] ?? '', at)
  const texts = range === null ? list?.[1]?.split(', ') : stepped(range[1] ?? '', range[2] ?? '', range[3] ?? '')
  if (texts === undefined || texts.length === 0 || texts.length > 10_000)
    throw unfit(at, line, 'a number, a list, or from … to … step …, then a unit', 'Write “5 to 40 step 1 m”.')
  return { unit, texts, values: texts.map((text) => Number(text) * unit.factor + (unit.offset ?? 0)) }
}

/** Steps in whole units of the last decimal: 0.1 + 0.2 never enters. */
function stepped(from: string, to: string, step: string): string[] {
  const decimals = Math.max(...[from, step].map((text) => text.split('.')[1]?.length ?? 0))
  const scale = 10 ** decimals
  const [low, high, by] = [from, to, step].map((text) => Math.round(Number(text) * scale)) as [number, number, number]
  const count = by > 0 ? Math.floor((high - low) / by) + 1 : 0
  return Array.from({ length: Math.max(0, count) }, (_, index) => ((low + index * by) / scale).toFixed(decimals))
}

function readWithin(value: unknown, at: string): readonly [number, number] {
  const [, low, high] = /^(-?[\d.]+) to (-?[\d.]+)$/.exec(String(value)) ?? []
  if (low === undefined || high === undefined || !(Number(low) < Number(high)))
    throw unfit(at, value, 'two numbers in the unit asked for, such as 1 to 20', 'Say which answers can happen.')
  return [Number(low), Number(high)]
}

function readConvention(line: unknown, at: string, card: Card): Readonly<Record<string, number>> {
  const [symbol = '', numbers = ''] = textOf(line, `${at}.conventions`).split(' = ')
  requireWord(`${at}.conventions`, symbol, Object.keys(card.symbols))
  return { [symbol]: readGiven(numbers, `${at}.conventions`).values[0] as number }
}

interface Parts {
  readonly at: string
  readonly asked: Asked
  readonly givens: Readonly<Record<string, Given>>
  readonly meanings: Readonly<Record<string, string>>
  readonly language?: CourseLanguage
}

function cardPart(
  fields: Entry,
  { at, asked, givens, meanings, language }: Parts,
): { readonly card: Card; readonly find: string } {
  if (typeof fields['card'] === 'string') {
    const card = allCards().find(({ id }) => id === fields['card'])
    if (card === undefined) {
      const near = nearestOf(
        fields['card'],
        allCards().map(({ id }) => id),
      )
      throw unfit(
        `${at}.card`,
        fields['card'],
        'the id of a card',
        near === undefined ? 'See allCards().' : `Did you mean ${near}?`,
      )
    }
    const find = (fields['form'] ?? card.result) as string
    requireWord(`${at}.form`, find, Object.keys(card.forms))
    return { card: language === undefined ? card : translatedCard(card, language), find }
  }
  const { find, expression, symbols } = readFormula(textOf(fields['formula'], `${at}.formula`))
  if (find === undefined) throw unfit(`${at}.formula`, fields['formula'], 'a formula with a left side', 'Write p = …')
  const constants = Object.hasOwn(symbols, 'π') ? { π: Math.PI } : {}
  const cardSymbols: Record<string, CardSymbol> = {
    [find]: { ...(symbols[find] ?? { letter: find }), meaning: asked.meaning, dimension: asked.unit.quantity },
    ...('π' in constants && { π: { letter: 'π', meaning: 'the number π', dimension: 'fraction' as const } }),
  }
  for (const [symbol, { unit }] of Object.entries(givens)) {
    const look = symbols[symbol] ?? lookOf(symbol)
    cardSymbols[symbol] = { ...look, meaning: meanings[symbol] ?? symbol, dimension: unit.quantity }
  }
  const card: Card = {
    id: fields['id'] as string,
    title: asked.meaning,
    documents: '',
    result: find,
    symbols: cardSymbols,
    forms: { [find]: expression },
    core: {},
    constants,
    conditions: [],
    source: fields['source'] as SourceId,
    range: {},
  }
  const unlike = differences(card, find)
  if (unlike !== undefined)
    throw unfit(`${at}.formula`, fields['formula'], `a formula that gives ${asked.unit.symbol}`, unlike)
  return { card, find }
}

function lookOf(symbol: string): { readonly letter: string; readonly subscript?: string } {
  const [letter = '', subscript] = symbol.split('_')
  return subscript === undefined ? { letter } : { letter, subscript }
}

function differences(card: Card, find: string): string | undefined {
  const wanted = dimensionOf(find, card.symbols).join()
  const found = dimensionOf(card.forms[find] as Expression, card.symbols).join()
  return wanted === found ? undefined : `Exponents of m, kg, s, K, mol, A: [${found}] instead of [${wanted}].`
}

function readError(error: unknown, expression: Expression, card: Card, at: string): Misconception {
  requireKeys(at, error, { says: true, formula: false, slip: false, of: false })
  const { says, formula, slip, of } = error as Entry
  const constants = card.constants ?? {}
  if (typeof formula === 'string') {
    const wrong = evaluatorOf(readFormula(formula).expression, card.calls)
    return { says: textOf(says, `${at}.says`), of: (givens) => wrong({ ...constants, ...givens }) }
  }
  requireWord(`${at}.slip`, slip, Object.keys(slips))
  return slipped(
    { slip: slip as SlipId, text: textOf(says, `${at}.says`), symbols: of as readonly string[] },
    expression,
    card,
  )
}

function slipped({ slip, text, symbols = [] }: CommonError, expression: Expression, card: Card): Misconception {
  const right = evaluatorOf(expression, card.calls)
  const { of } = slips[slip as SlipId]
  return {
    says: text,
    of: (givens) => {
      const changed: Record<string, number | undefined> = { ...card.constants, ...givens }
      for (const symbol of symbols) if (symbol in givens) changed[symbol] = of(givens[symbol] as number)
      return right(changed)
    },
  }
}

/** The common errors of the card, for the form that is asked. */
function cardMisconceptions(card: Card, find: string): Misconception[] {
  const expression = card.forms[find] as Expression
  const used = symbolsIn(expression)
  return (card.commonErrors ?? []).flatMap((error): Misconception[] => {
    if (error.slip !== 'other-formula')
      return error.symbols?.some((symbol) => used.has(symbol)) === true ? [slipped(error, expression, card)] : []
    const instead = error.instead?.[find]
    if (instead === undefined) return []
    const wrong = evaluatorOf(instead, card.calls)
    return [{ says: error.text, of: (givens) => wrong({ ...card.constants, ...givens }) }]
  })
}

function symbolsIn(expression: Expression): Set<string> {
  if (typeof expression === 'number') return new Set()
  if (typeof expression === 'string') return new Set([expression])
  const parts = expression.slice(expression[0] === 'call' ? 2 : 1) as readonly Expression[]
  return new Set(parts.flatMap((part) => [...symbolsIn(part)]))
}

function statements(value: unknown, at: string, least: number): Statement[] {
  if (!Array.isArray(value) || value.length < least)
    throw unfit(at, value, `a list of ${String(least)} statements or more`, 'Write each as a line of its own.')
  return value.map((statement: unknown, index): Statement => {
    if (typeof statement === 'string') return { text: statement }
    requireKeys(`${at}[${String(index)}]`, statement, { text: true, because: true })
    const { text, because } = statement as Entry
    return {
      text: textOf(text, `${at}[${String(index)}].text`),
      because: textOf(because, `${at}[${String(index)}].because`),
    }
  })
}

function unitOf(symbol: string, at: string): Unit {
  const unit = allUnits.find((one) => one.symbol === symbol) ?? allUnits.find((one) => one.spellings?.includes(symbol))
  if (unit !== undefined) return unit
  throw unfit(at, symbol, 'the symbol of a unit', 'Write it as litrebar prints it: L/min, kg/m³, °C.')
}

function textOf(value: unknown, at: string): string {
  if (typeof value === 'number' && Number.isFinite(value)) return String(value)
  if (typeof value === 'string' && value.trim() !== '') return value.trim()
  throw unfit(at, value, 'a text', 'Write a text.')
}

function unfit(argument: string, value: unknown, expected: string, hint: string): LitrebarError {
  return new LitrebarError({
    code: 'input',
    argument,
    value: shown(value),
    expected,
    hint,
  })
}
