import { LitrebarError } from '../errors/index.ts'
import type { CautionId, SourceId } from '../references/index.ts'
import { allUnits, type Dimension, type Direction, roundNumber, type Unit } from '../units/index.ts'
import type { Card, CardSymbol } from './card.ts'
import { type Expression, evaluate, fold, type Operator } from './expression.ts'

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
  readonly sources: readonly SourceId[]
  readonly cautions: readonly CautionId[]
}

/** What the card cannot know: what is asked, in which units, how finely. */
export type WorkingOptions = {
  /** The symbol to find; the card’s own result unless given. */
  readonly find?: string
  /** The unit each number was stated in and the answer is wanted in. SI where none is given. */
  readonly units?: Readonly<Record<string, Unit>>
  /** Significant figures of the answer. */
  readonly figures: number
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
 * @throws LitrebarError `input` for an unknown symbol to find, or a symbol without a finite value
 * @example
 * workedSolution(pressureAtDepthCard, { p0: 101325, rho: 1025, g: 9.80665, d: 30 }, { units: { p: bar, p0: bar }, figures: 3 }).answer.text // => '4.03'
 */
export function workedSolution(
  card: Card,
  knowns: Readonly<Record<string, number>>,
  options: WorkingOptions,
): WorkedSolution {
  const find = options.find ?? card.result
  const expression = card.forms[find]
  if (expression === undefined) {
    throw new LitrebarError({
      code: 'input',
      argument: 'options.find',
      value: find,
      expected: Object.keys(card.forms).join(' or '),
      hint: 'Ask for a symbol that the card has a form for.',
    })
  }
  const inputs = { ...card.constants, ...knowns }
  const value = evaluate(expression, inputs, card.calls)
  const named = symbolsOf(expression)
  const used = Object.keys(card.symbols).filter((name) => named.includes(name)) // in the order of the card
  const symbols = { ...card.symbols, ...card.callSymbols }
  const stated = (name: string): Unit => options.units?.[name] ?? coherentUnit((symbols[name] as CardSymbol).dimension)
  const called = callsOf(expression).map((call) => ({ name: call[1], call, value: evaluate(call, inputs, card.calls) }))
  const si: Record<string, number> = Object.fromEntries([
    ...used.map((name) => [name, inputs[name] as number] as const),
    ...called.map((row) => [row.name, row.value] as const),
  ])
  const closed = withoutCalls(expression)
  const working = workingUnits(closed, stated, find, symbols)
  const digits = options.figures + 2
  const shownIn = (name: string, unit: Unit): Shown => shown(si[name] as number, unit, digits)

  const answerUnit = stated(find)
  const { text, rule, value: rounded } = roundNumber(inUnitOf(value, answerUnit), options)
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
    cautions: card.cautions ?? [],
  }
}

/** The units to substitute in: as stated if the formula then gives the answer in its stated unit; else temperatures in kelvin; else everything in SI. */
function workingUnits(
  expression: Expression,
  stated: (name: string) => Unit,
  find: string,
  symbols: Readonly<Record<string, CardSymbol>>,
): (name: string) => Unit {
  const inSi = (name: string): Unit => coherentUnit((symbols[name] as CardSymbol).dimension)
  const inKelvin = (name: string): Unit => (stated(name).offset === undefined ? stated(name) : inSi(name))
  return [stated, inKelvin].find((unitOf) => alike(scaleOf(expression, unitOf), scaleOf(find, unitOf))) ?? inSi
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
      return first === 1 ? 1 : Number.NaN
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
  return (
    allUnits.find((unit) => unit.quantity === dimension && unit.factor === 1 && unit.offset === undefined) ?? {
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
  return [{ kind: 'reduce', find, operator, terms: terms.map((term) => shown(evaluate(term, si), unit, digits)) }]
}

function symbolsOf(expression: Expression): string[] {
  if (typeof expression === 'number') return []
  if (typeof expression === 'string') return [expression]
  const parts = (expression[0] === 'call' ? expression.slice(2) : expression.slice(1)) as readonly Expression[]
  return [...new Set(parts.flatMap(symbolsOf))]
}

type Call = readonly ['call', string, ...Expression[]]

function callsOf(expression: Expression): Call[] {
  if (typeof expression === 'number' || typeof expression === 'string') return []
  if (expression[0] === 'call') return [expression]
  return (expression.slice(1) as readonly Expression[]).flatMap(callsOf)
}

/** The expression with every call replaced by a symbol of its name. */
function withoutCalls(expression: Expression): Expression {
  if (typeof expression === 'number' || typeof expression === 'string') return expression
  if (expression[0] === 'call') return expression[1]
  const [operator, ...parts] = expression
  return [operator, ...(parts as readonly Expression[]).map(withoutCalls)] as unknown as Expression
}
