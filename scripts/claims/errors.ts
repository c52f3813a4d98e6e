// The error of every closed form that a card prints, against the same formula in 40 digits.
import { Decimal } from 'decimal.js'
import type { Card } from '../../src/course/card.ts'
import { type Expression, fold } from '../../src/course/expression.ts'
import { allCards } from '../../src/course/index.ts'
import { seededRandom } from '../../src/uncertainty/index.ts'
import type { Block, Figures } from './block.ts'

const draws = 200
const Exact = Decimal.clone({ precision: 60, defaults: true })

type Exact = InstanceType<typeof Exact>

const arithmetic: Readonly<Record<string, (parts: readonly Exact[]) => Exact>> = {
  '+': (parts) => parts.reduce((a, b) => a.plus(b)),
  '*': (parts) => parts.reduce((a, b) => a.times(b)),
  '-': ([a, b]) => known(a).minus(known(b)),
  '/': ([a, b]) => known(a).div(known(b)),
  '^': ([a, b]) => known(a).pow(known(b)),
  sqrt: ([a]) => known(a).sqrt(),
  ln: ([a]) => known(a).ln(),
  exp: ([a]) => known(a).exp(),
  sin: ([a]) => known(a).sin(),
  cos: ([a]) => known(a).cos(),
  tan: ([a]) => known(a).tan(),
  arctan: ([a]) => known(a).atan(),
  min: (parts) => Exact.min(...parts),
  max: (parts) => Exact.max(...parts),
}

function known(part: Exact | undefined): Exact {
  if (part === undefined) throw new Error('a formula lacks an argument')
  return part
}

/** The formula in 40 digits and more; a call, which has no closed form, is taken as the library gives it. */
function exactly(
  expression: Expression,
  values: Readonly<Record<string, number>>,
  card: Card,
  moved?: readonly [symbol: string, step: Exact],
): Exact {
  return fold<Exact>(expression, {
    number: (n) => new Exact(n),
    symbol: (name) => {
      const value = new Exact(values[name] ?? Number.NaN)
      return moved?.[0] === name ? value.times(moved[1].plus(1)) : value
    },
    apply: (operator, parts) => {
      const operation = arithmetic[operator]
      if (operation !== undefined) return operation(parts)
      if (!operator.startsWith('call:'))
        throw new Error(`${operator} has no form in 40 digits yet: add it to scripts/claims/errors.ts`)
      return new Exact(card.calls?.[operator.slice(5)]?.(...parts.map(Number)) ?? Number.NaN)
    },
  })
}

function hasCall(expression: Expression): boolean {
  return typeof expression === 'object' && (expression[0] === 'call' || expression.slice(1).some(hasCall))
}

function symbolsOf(expression: Expression): string[] {
  if (typeof expression === 'string') return [expression]
  if (typeof expression === 'number') return []
  return [
    ...new Set(expression.slice(expression[0] === 'call' ? 2 : 1).flatMap((part) => symbolsOf(part as Expression))),
  ]
}

/** Distance from a double of this size to the next. */
function ulp(value: number): number {
  const size = Math.abs(value)
  return size < 2 ** -1022 ? 2 ** -1074 : 2 ** (Math.floor(Math.log2(size)) - 52)
}

interface Form {
  readonly name: string
  readonly card: Card
  readonly find: string
  readonly expression: Expression
}

/** Every form, by the public function that it documents. */
export const forms: readonly Form[] = allCards().flatMap((card) =>
  Object.entries(card.forms as Record<string, Expression>).map(([find, expression]) => ({
    name: `${card.documents}: ${find} of ${card.id}`,
    card,
    find,
    expression,
  })),
)

/** By how much a relative change of the given numbers is magnified: what a difference of near numbers costs whoever computes it. */
function condition(expression: Expression, values: Readonly<Record<string, number>>, card: Card, exact: Exact): number {
  const step = new Exact('1e-20')
  const sum = symbolsOf(expression).reduce((total, symbol) => {
    const moved = exactly(expression, values, card, [symbol, step])
    return total.plus(moved.minus(exact).abs())
  }, new Exact(0))
  return Number(sum.div(step).div(exact.abs()))
}

interface Errors {
  /** In units of the last place of the result. */
  readonly apart: number
  /** The same over the condition, where that is above 1. */
  readonly own: number
}

function errorsOf({ card, find, expression, name }: Form, uniform: () => number): Errors[] {
  const core = (card.core as Record<string, ((knowns: never) => number | object) | undefined>)[find]
  const constants = (card.constants ?? {}) as Record<string, number>
  return Array.from({ length: draws }, () => {
    const values = Object.fromEntries(
      symbolsOf(expression)
        .filter((symbol) => constants[symbol] === undefined)
        .map((symbol): [string, number] => {
          const [low = Number.NaN, high = Number.NaN] = (card.range as Record<string, readonly number[]>)[symbol] ?? []
          return [symbol, low + (high - low) * uniform()]
        }),
    )
    const knowns = Object.fromEntries(
      Object.entries(values).map(([symbol, value]) => [card.symbols[symbol]?.parameter ?? symbol, value]),
    )
    const result = core?.(knowns as never)
    const computed =
      typeof result === 'number' ? result : (result as Record<string, number>)[card.symbols[find]?.parameter ?? find]
    if (computed === undefined || !Number.isFinite(computed)) throw new Error(`${name} gave ${computed}`)
    const exact = exactly(expression, { ...constants, ...values }, card)
    const apart = Number(exact.minus(computed).abs()) / ulp(Number(exact))
    const magnified = hasCall(expression) ? 1 : condition(expression, { ...constants, ...values }, card, exact)
    return { apart, own: apart / Math.max(1, magnified) }
  })
}

/** Said aloud where a card and its function do not fit: the test of the cards is red then. */
function triedErrorsOf(form: Form, uniform: () => number): Errors[] | undefined {
  try {
    return errorsOf(form, uniform)
  } catch (error) {
    console.error(`${form.name} is not measured: ${(error as Error).message}`)
    return undefined
  }
}

/** In units of the last place, largest and mean over the draws of all forms of a function. */
export const errors: Block = {
  page: 'docs/measured/errors.md',
  name: 'errors',
  kind: 'quick',
  band: 1.000001,
  measure(): Figures {
    const uniform = seededRandom(1)
    const figures: Record<string, number> = {}
    for (const form of forms) {
      const found = triedErrorsOf(form, uniform)
      if (found === undefined) continue
      const name = `${form.name}${hasCall(form.expression) ? ' (with a call)' : ''}`
      const three = (value: number): number => Number(value.toPrecision(3))
      figures[`${name}: largest`] = three(Math.max(...found.map(({ apart }) => apart)))
      figures[`${name}: mean`] = three(found.reduce((sum, { apart }) => sum + apart, 0) / draws)
      figures[`${name}: own`] = three(Math.max(...found.map(({ own }) => own)))
    }
    return figures
  },
  table: (figures) => {
    const names = Object.keys(figures).flatMap((name) => (name.endsWith(': largest') ? [name.slice(0, -9)] : []))
    const largest = (name: string): number => figures[`${name}: largest`] ?? Number.NaN
    const closed = names.filter((name) => !name.endsWith('(with a call)'))
    const own = (name: string): number => figures[`${name}: own`] ?? Number.NaN
    const functions = new Set(names.map((name) => name.split(':')[0]))
    const within = closed.filter((name) => largest(name) <= 4)
    const magnified = closed.filter((name) => largest(name) > 4 && own(name) <= 4)
    const misses = closed.filter((name) => own(name) > 4)
    return [
      `${names.length} forms of ${functions.size} functions, ${closed.length} of them closed: ${within.length} stay within 4 ulp; ${magnified.length} exceed that only as`,
      `far as the formula itself magnifies any rounding; ${misses.length} miss it: ${misses.map((name) => `\`${name.split(':')[0]}\``).join(', ')}.`,
      '',
      '| Function: what is found, card | Largest, ulp | Mean, ulp | Largest over the condition |',
      '| :--- | ---: | ---: | ---: |',
      ...names
        .toSorted((a, b) => largest(b) - largest(a))
        .map((name) => `| ${name} | ${largest(name)} | ${figures[`${name}: mean`]} | ${own(name)} |`),
    ]
  },
}
