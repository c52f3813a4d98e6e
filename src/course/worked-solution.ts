import { LitrebarError, nearestOf } from '../errors/index.ts'
import {
  allUnits,
  type Dimension,
  type Direction,
  dimensions,
  fahrenheit,
  type RoundingRule,
  rankine,
  roundNumber,
  type Unit,
} from '../units/index.ts'
import type { Card, CardSymbol } from './card.ts'
import type { CautionName, CitedSource, SourceName } from './cited.ts'
import { type Call, callsOf, type Expression, fold, numberOf, type Operator, symbolsIn } from './expression.ts'
import { roundingsShape } from './language-shape.table.ts'
import { requireCard, requireForm } from './require-card.ts'
import { type Fields, requireShape } from './require-shape.ts'
import { type RoundingWords, roundingText } from './rounding-text.table.ts'
import { type SlipId, slips } from './slip.table.ts'

/** A number with its unit, as it will be shown: the text is rounded for showing, the value is not. */
export interface Shown {
  /** In the unit, at full precision. */
  readonly value: number
  /** Digits with a point as decimal sign. */
  readonly text: string
  /** Symbol of the unit; empty for a pure number. */
  readonly unit: string
}

/** One line of a worked solution, as plain JSON. */
export type Step =
  | { readonly kind: 'given'; readonly symbol: string; readonly quantity: Shown; readonly meaning: string }
  | { readonly kind: 'convert'; readonly symbol: string; readonly from: Shown; readonly to: Shown }
  | { readonly kind: 'formula'; readonly find: string; readonly expression: Expression }
  | {
      readonly kind: 'called'
      readonly name: string
      readonly expression: Expression
      readonly quantity: Shown
      readonly meaning: string
    }
  | {
      readonly kind: 'substitute'
      readonly find: string
      readonly expression: Expression
      readonly values: Readonly<Record<string, Shown>>
    }
  | { readonly kind: 'reduce'; readonly find: string; readonly operator: '+' | '-'; readonly terms: readonly Shown[] }
  | {
      readonly kind: 'result'
      readonly find: string
      readonly unrounded: Shown
      readonly quantity: Shown
      readonly rule: string
    }

/** A worked solution: plain JSON that can be stored, sent and written in any notation. */
export interface WorkedSolution {
  readonly card: string
  readonly title: string
  readonly find: string
  /** The answer in SI, unrounded. */
  readonly value: number
  /** The answer as shown, rounded once. */
  readonly answer: Shown
  readonly symbols: Readonly<Record<string, CardSymbol>>
  readonly steps: readonly Step[]
  readonly conditions: readonly string[]
  readonly sources: readonly SourceName[]
  /** The same with their places, where the card names one. */
  readonly citations?: readonly (SourceName | CitedSource)[]
  readonly cautions: readonly CautionName[]
  /** What comes out if one of the common errors is made; only where asked for. */
  readonly commonErrors?: readonly WrongAnswer[]
}

/** The answer that a common error leads to. */
export interface WrongAnswer {
  readonly slip: SlipId | 'other-formula'
  readonly text: string
  /** In SI, unrounded. */
  readonly value: number
  /** Rounded as the right answer is. */
  readonly answer: Shown
}

/** What the card cannot know: what is asked, in which units, how finely. */
export type WorkingOptions<Symbol extends string = string> = {
  /** The symbol to find; the card’s own result unless given. */
  readonly find?: Symbol
  /** The unit each number was stated in and the answer is wanted in. SI where none is given. */
  readonly units?: Readonly<Partial<Record<Symbol, Unit>>>
  /** Significant figures of the answer. */
  readonly figures: number
  /** Whether the common errors of the card and what comes of them are shown. */
  readonly commonErrors?: boolean
  /** The words that the rounding is said in; English unless given. */
  readonly roundings?: RoundingWords
} & Direction

/**
 * A worked solution: given, convert, formula, substitute, reduce, result.
 * Numbers are substituted in the units they were stated in where the formula comes out right with them, in coherent units otherwise.
 * The answer is rounded once, at the end, by the stated rule; nothing that is shown ever enters the value.
 *
 * @param card - the formula card
 * @param knowns - a number in SI for every symbol but constants and the one to be found (quantities are such numbers)
 * @param options - what to find, units, figures of the answer, direction of its rounding
 * @returns the steps, the answer, sources and cautions
 * @throws LitrebarError `input` for what is no card, an unknown symbol or option, or a symbol without a finite value; `unit` for a
 *   unit of another quantity; `range` where the formula has no answer for the numbers
 * @example
 * workedSolution(pressureAtDepthCard, { p0: 101325, rho: 1025, g: 9.80665, d: 30 }, { units: { p: bar, p0: bar }, figures: 3 }).answer.text // => '4.03'
 */
export function workedSolution<Symbol extends string>(
  card: Card<Symbol>,
  knowns: { readonly [Name in NoInfer<Symbol>]?: number },
  options: WorkingOptions<NoInfer<Symbol>>,
): WorkedSolution {
  requireCard('card', card)
  requireShape('options', options, { fields: optionFields() })
  requireShape('knowns', knowns, { each: 'number' })
  requireSymbols('knowns', knowns, card)
  requireUnits(options.units ?? {}, card)
  requireForm('options.find', card, options.find ?? card.result)
  return solutionOf(card, knowns as Readonly<Record<string, number>>, options)
}

/** A worked solution of what is known to fit together: behind the doors that have checked it. */
export function solutionOf(
  card: Card,
  knowns: Readonly<Record<string, number>>,
  options: WorkingOptions,
): WorkedSolution {
  const find = options.find ?? card.result
  const expression = card.forms[find] as Expression
  const inputs = { ...card.constants, ...knowns } as Readonly<Record<string, number>>
  const value = numberOf(expression, inputs, card.calls)
  const named = symbolsIn(expression)
  const used = Object.keys(card.symbols).filter((name) => named.includes(name)) // in the order of the card
  const symbols = { ...card.symbols, ...card.callSymbols }
  const stated = (name: string): Unit => options.units?.[name] ?? coherentUnit((symbols[name] as CardSymbol).dimension)
  const calls = new Map(callsOf(expression).map((call) => [JSON.stringify(call), call]))
  const called = [...calls.values()].map((call) => ({
    name: call[1],
    call: withoutInnerCalls(call),
    value: numberOf(call, inputs, card.calls),
  }))
  const si: Record<string, number> = Object.fromEntries([
    ...used.map((name) => [name, inputs[name] as number] as const),
    ...called.map((row) => [row.name, row.value] as const),
  ])
  const closed = withoutCalls(expression)
  const working = workingUnits(closed, stated, find, symbols)
  const digits = options.figures + 2
  const shownIn = (name: string, unit: Unit): Shown => shown(si[name] as number, unit, digits)

  const answerUnit = stated(find)
  const { text, value: rounded } = roundNumber(inUnitOf(value, answerUnit), roundingOf(options))
  const rule = roundingText(roundingOf(options), options.roundings)
  const answer: Shown = { value: rounded, text, unit: answerUnit.symbol }
  const steps: Step[] = [
    ...used.flatMap((name): Step[] => {
      const from = shownIn(name, stated(name))
      const to = shownIn(name, working(name))
      const given: Step = {
        kind: 'given',
        symbol: name,
        quantity: from,
        meaning: (symbols[name] as CardSymbol).meaning,
      }
      return from.unit === to.unit ? [given] : [given, { kind: 'convert', symbol: name, from, to }]
    }),
    { kind: 'formula', find, expression },
    ...called.map(
      ({ name, call }): Step => ({
        kind: 'called',
        name,
        expression: call,
        quantity: shownIn(name, working(name)),
        meaning: (symbols[name] as CardSymbol).meaning,
      }),
    ),
    {
      kind: 'substitute',
      find,
      expression: closed,
      values: Object.fromEntries(Object.keys(si).map((name) => [name, shownIn(name, working(name))])),
    },
    ...reduced(closed, si, find, answerUnit, digits),
    { kind: 'result', find, unrounded: shown(value, working(find), digits), quantity: answer, rule },
  ]
  return {
    card: card.id,
    title: card.title,
    find,
    value,
    answer,
    symbols,
    steps,
    conditions: card.conditions,
    sources: [card.source],
    citations: [card.place === undefined ? card.source : { id: card.source, place: card.place }],
    cautions: card.cautions ?? [],
    ...(options.commonErrors === true && { commonErrors: wrongAnswers(card, inputs, find, answerUnit, options) }),
  }
}

function optionFields(): Fields {
  return {
    'find?': 'text',
    'units?': { each: 'unit' },
    figures: 'number',
    'commonErrors?': 'truth',
    'roundings?': roundingsShape,
    'toward?': 'text',
    'ties?': 'text',
    'use?': 'text',
  }
}

/** What each common error of a card leads to; an error that has no answer (a root of a negative number) is left out. */
function wrongAnswers(
  card: Card,
  inputs: Readonly<Record<string, number>>,
  find: string,
  unit: Unit,
  options: WorkingOptions,
): WrongAnswer[] {
  return (card.commonErrors ?? []).flatMap(({ slip, text, symbols: names = [], instead }): WrongAnswer[] => {
    const expression = slip === 'other-formula' ? instead?.[find] : card.forms[find]
    if (expression === undefined) return []
    const used = symbolsIn(expression)
    if (slip !== 'other-formula' && !names.some((name) => used.includes(name))) return []
    const changed = slip === 'other-formula' ? {} : changedBy(slip, names, inputs)
    const value = valueOrNothing(expression, { ...inputs, ...changed }, card)
    if (value === undefined) return []
    const { text: rounded, value: number } = roundNumber(inUnitOf(value, unit), roundingOf(options))
    return [{ slip, text, value, answer: { value: number, text: rounded, unit: unit.symbol } }]
  })
}

function changedBy(
  slip: SlipId,
  names: readonly string[],
  inputs: Readonly<Record<string, number>>,
): Record<string, number> {
  const known = names.filter((name) => inputs[name] !== undefined)
  return Object.fromEntries(known.map((name) => [name, slips[slip].of(inputs[name] as number)]))
}

/** A wrong number may lie outside what a called function accepts: then nothing comes out. */
function valueOrNothing(
  expression: Expression,
  inputs: Readonly<Record<string, number>>,
  card: Card,
): number | undefined {
  try {
    const value = numberOf(expression, inputs, card.calls)
    return Number.isFinite(value) ? value : undefined
  } catch {
    return undefined
  }
}

function roundingOf(options: WorkingOptions): RoundingRule {
  const { figures, toward, ties, use } = options
  return {
    figures,
    ...(toward !== undefined && { toward }),
    ...(ties !== undefined && { ties }),
    ...(use !== undefined && { use }),
  } as RoundingRule
}

function requireSymbols(argument: string, given: Readonly<Record<string, unknown>>, card: Card): void {
  for (const name of Object.keys(given)) {
    if (Object.hasOwn(card.symbols, name)) continue
    const near = nearestOf(name, Object.keys(card.symbols))
    throw new LitrebarError({
      code: 'input',
      argument: `${argument}.${name}`,
      value: 'not a symbol of the formula',
      expected: Object.entries(card.symbols)
        .map(([known, { meaning }]) => `${known} (${meaning})`)
        .join(', '),
      hint: near === undefined ? 'Leave it out.' : `Did you mean ${near}?`,
    })
  }
}

function requireUnits(units: { readonly [name: string]: Unit | undefined }, card: Card): void {
  requireSymbols('options.units', units, card)
  for (const [name, unit] of Object.entries(units)) {
    const { dimension } = card.symbols[name] as CardSymbol
    if (unit === undefined || alikeDimensions(unit.quantity, dimension)) continue
    throw new LitrebarError({
      code: 'unit',
      argument: `options.units.${name}`,
      value: unit.symbol,
      expected: `a unit of ${dimension}`,
      hint: `${unit.symbol} is a unit of ${unit.quantity}.`,
    })
  }
}

/** Quantities of one dimension may share a unit: work per volume is a pressure, an actual flow is a flow. */
function alikeDimensions(one: Dimension, other: Dimension): boolean {
  return one === other || String(dimensions[one]) === String(dimensions[other])
}

/** The units to substitute in: as stated if the formula then gives the answer in its stated unit; else temperatures in kelvin; else the answer in SI; else all in SI. */
function workingUnits(
  expression: Expression,
  stated: (name: string) => Unit,
  find: string,
  symbols: Readonly<Record<string, CardSymbol>>,
): (name: string) => Unit {
  const inSi = (name: string): Unit => coherentUnit((symbols[name] as CardSymbol).dimension)
  const inKelvin = (name: string): Unit =>
    stated(name).offset === undefined ? stated(name) : stated(name).symbol === fahrenheit.symbol ? rankine : inSi(name)
  const answerInSi = (name: string): Unit => (name === find ? inSi(name) : stated(name))
  return (
    [stated, inKelvin, answerInSi].find((unitOf) => alike(scaleOf(expression, unitOf), scaleOf(find, unitOf))) ?? inSi
  )
}

interface Scale {
  readonly scale: number
  /** The number itself, where it is one and may stand as an exponent. */
  readonly power?: number
}

/**
 * The size in SI of the unit that an expression comes out in; NaN where its units do not fit together.
 * A matter of units alone: trying it with the numbers would be misled by a depth of 0 or by two equal temperatures.
 */
function scaleOf(expression: Expression, unitOf: (name: string) => Unit): number {
  return fold<Scale>(expression, {
    number: (n) => ({ scale: 1, power: n }),
    symbol: (name) => ({ scale: unitOf(name).offset === undefined ? unitOf(name).factor : Number.NaN }),
    apply: (operator, parts) => ({ scale: scaleOfParts(operator, parts) }),
  }).scale
}

function scaleOfParts(operator: Operator, parts: readonly Scale[]): number {
  const { scale: first = Number.NaN } = parts[0] ?? {}
  const second = parts[1]
  switch (operator) {
    case '*':
      return parts.reduce((product, { scale }) => product * scale, 1)
    case '/':
      return first / (second?.scale ?? Number.NaN)
    case '^':
      return first ** (second?.power ?? (first === 1 ? 1 : Number.NaN))
    case 'sqrt':
      return Math.sqrt(first)
    case 'ln':
    case 'exp':
    case 'arctan':
      return first === 1 ? 1 : Number.NaN
    case 'sin':
    case 'cos':
    case 'tan':
      return 1 // an angle may stand in degrees: sin(30°)
    default: // terms of a sum, of which one is the least or the greatest
      return parts.every(({ scale }) => alike(scale, first)) ? first : Number.NaN
  }
}

/** Factors that differ only by rounding. */
function alike(a: number, b: number): boolean {
  return Math.abs(a - b) <= 1e-12 * Math.abs(b)
}

function inUnitOf(si: number, unit: Unit): number {
  return (si - (unit.offset ?? 0)) / unit.factor
}

function coherentUnit(dimension: Dimension): Unit {
  const held = dimension === 'temperature difference' ? 'temperature' : dimension // its units are those of the scale
  return (
    allUnits.find(({ quantity, factor, offset }) => quantity === held && factor === 1 && offset === undefined) ?? {
      symbol: '',
      quantity: dimension,
      factor: 1,
    }
  )
}

/** As stated where it has few digits, else to the digits asked for. */
function shown(si: number, unit: Unit, digits: number): Shown {
  const value = inUnitOf(si, unit)
  const full = trimmed(roundNumber(value, { figures: 12 }).text)
  const figures = full
    .replace(/^-?[0.]*/, '')
    .replace('.', '')
    .replace(/0+$/, '').length
  return {
    value,
    text: figures <= Math.max(digits, 6) ? full : roundNumber(value, { figures: digits }).text,
    unit: unit.symbol,
  }
}

function trimmed(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text
}

/** The terms of an outermost sum, in the unit of the answer. */
function reduced(
  expression: Expression,
  si: Readonly<Record<string, number>>,
  find: string,
  unit: Unit,
  digits: number,
): Step[] {
  if (!Array.isArray(expression) || unit.offset !== undefined) return []
  const [operator, ...terms] = expression as readonly ['+', ...Expression[]]
  if (!['+', '-'].includes(operator) || terms.every((term) => !Array.isArray(term))) return []
  return [{ kind: 'reduce', find, operator, terms: terms.map((term) => shown(numberOf(term, si), unit, digits)) }]
}

/** A call whose own calls are shown by their names: each has had its value in a line before. */
function withoutInnerCalls(call: Call): Expression {
  const [, name, ...parts] = call
  return ['call', name, ...parts.map(withoutCalls)]
}

/** The expression with every call replaced by a symbol of its name. */
function withoutCalls(expression: Expression): Expression {
  if (typeof expression === 'number' || typeof expression === 'string') return expression
  if (expression[0] === 'call') return expression[1]
  const [operator, ...parts] = expression
  return [operator, ...(parts as readonly Expression[]).map(withoutCalls)] as unknown as Expression
}
