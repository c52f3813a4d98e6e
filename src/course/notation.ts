import type { NumberStyle } from '../units/index.ts'
import { withNumberStyle } from '../units/index.ts'
import type { CardSymbol } from './card.ts'
import { lookShape } from './card-shape.table.ts'
import { type Expression, fold } from './expression.ts'
import { requireShape, type Shape } from './require-shape.ts'
import type { Shown, Step, WorkedSolution } from './worked-solution.ts'

/** How one kind of writing spells the parts of a formula. */
export interface Notation {
  /** A bare number. */
  readonly number: (text: string) => string
  /** A number with the symbol of its unit, empty for a pure number. */
  readonly quantity: (text: string, unit: string) => string
  /** A symbol: letter and subscript. */
  readonly symbol: (symbol: Pick<CardSymbol, 'letter' | 'subscript'>) => string
  readonly infix: Readonly<Record<'+' | '-' | '*' | '=', string>>
  /** One expression over another. */
  readonly fraction: (over: string, under: string) => string
  /** Whether a fraction stands on two levels, so that its parts need no brackets. */
  readonly fractionHasLevels: boolean
  /** A base with its exponent. */
  readonly power: (base: string, exponent: string) => string
  /** A square root. */
  readonly root: (inner: string) => string
  /** The name of a function: ln, min. */
  readonly word: (name: string) => string
  /** A function, its name already written, with its arguments. */
  readonly call: (name: string, parts: readonly string[]) => string
  /** Round brackets around an expression. */
  readonly brackets: (inner: string) => string
  /** What belongs together, without a sign for it. */
  readonly group: (inner: string) => string
}

const notationShape: Shape = {
  fields: {
    number: 'function',
    quantity: 'function',
    symbol: 'function',
    infix: { fields: { '+': 'text', '-': 'text', '*': 'text', '=': 'text' } },
    fraction: 'function',
    fractionHasLevels: 'truth',
    power: 'function',
    root: 'function',
    word: 'function',
    call: 'function',
    brackets: 'function',
    group: 'function',
  },
}

interface Piece {
  readonly text: string
  /** How strongly it holds together: 1 sum, 2 product, 3 quantity with its unit, 4 power, 9 atom. */
  readonly binding: number
}

/** What stands for a symbol in a line: its letter in the formula, its number in the substitution. */
type Leaf = (name: string) => Piece

/**
 * An expression in a notation.
 *
 * @param expression - the formula
 * @param notation - plain text, LaTeX or MathML
 * @param leaf - what stands for each symbol
 * @param style - decimal sign of bare numbers
 * @param calledName - how the name of a call is written
 * @returns the text
 */
function written(
  expression: Expression,
  notation: Notation,
  leaf: Leaf,
  style: NumberStyle,
  calledName: (name: string) => string,
): Piece {
  const held = (piece: Piece | undefined, atLeast: number): string =>
    piece === undefined ? '' : piece.binding < atLeast ? notation.brackets(piece.text) : piece.text
  return fold<Piece>(expression, {
    number: (n) => ({ text: notation.number(withNumberStyle(String(n), style)), binding: n < 0 ? 0 : 9 }),
    symbol: leaf,
    apply: (operator, parts) => {
      const [first, second] = parts
      const infix = (sign: '+' | '-' | '*', left: number, right: number): string =>
        notation.group(parts.map((part, index) => held(part, index === 0 ? left : right)).join(notation.infix[sign]))
      switch (operator) {
        case '+':
          return { text: infix('+', 1, 1), binding: 1 }
        case '-':
          return { text: infix('-', 1, 2), binding: 1 }
        case '*':
          return { text: infix('*', 2, 2), binding: 2 }
        case '/':
          return notation.fractionHasLevels
            ? { text: notation.fraction(first?.text ?? '', second?.text ?? ''), binding: 3 }
            : { text: notation.fraction(held(first, 2), held(second, 3)), binding: 2 }
        case '^':
          return { text: notation.power(held(first, 5), second?.text ?? ''), binding: 4 }
        case 'sqrt':
          return { text: notation.root(first?.text ?? ''), binding: 9 }
        default:
          return {
            text: notation.call(
              operator.startsWith('call:') ? calledName(operator.slice('call:'.length)) : notation.word(operator),
              parts.map((part) => part.text),
            ),
            binding: 9,
          }
      }
    },
  })
}

/** One written line: its kind, its text, and a note in words where there is one. */
export interface WorkedLine {
  readonly kind: Step['kind']
  readonly text: string
  readonly note?: string
}

/**
 * The lines of a worked solution in a notation.
 *
 * @param solution - the worked solution
 * @param notation - plain text, LaTeX or MathML
 * @param style - decimal sign and grouping
 * @returns one line for each step; what is given and then converted shares one
 */
export function linesOf(solution: WorkedSolution, notation: Notation, style: NumberStyle): WorkedLine[] {
  const symbolOf = (name: string): string => {
    const symbol = Object.hasOwn(solution.symbols, name) ? solution.symbols[name] : undefined
    return notation.symbol(symbol ?? { letter: name })
  }
  const quantity = (q: Shown): Piece => ({
    text: notation.quantity(withNumberStyle(q.text, style), q.unit),
    binding: q.text.startsWith('-') ? 0 : q.unit === '' ? 9 : 3,
  })
  const letters: Leaf = (name) => ({ text: symbolOf(name), binding: 9 })
  const equation = (...sides: readonly string[]): string => notation.group(sides.join(notation.infix['=']))
  const text = (step: Step): string => {
    switch (step.kind) {
      case 'given':
        return equation(symbolOf(step.symbol), quantity(step.quantity).text)
      case 'convert':
        return equation(symbolOf(step.symbol), quantity(step.from).text, quantity(step.to).text)
      case 'formula':
        return equation(symbolOf(step.find), written(step.expression, notation, letters, style, symbolOf).text)
      case 'called':
        return equation(written(step.expression, notation, letters, style, symbolOf).text, quantity(step.quantity).text)
      case 'substitute': {
        const numbers: Leaf = (name) => {
          const value = step.values[name]
          return value === undefined ? letters(name) : quantity(value)
        }
        return equation(symbolOf(step.find), written(step.expression, notation, numbers, style, symbolOf).text)
      }
      case 'reduce': {
        const terms = step.terms.map((term, index) =>
          index > 0 && term.text.startsWith('-') ? notation.brackets(quantity(term).text) : quantity(term).text,
        )
        return equation(symbolOf(step.find), notation.group(terms.join(notation.infix[step.operator])))
      }
      case 'result':
        return step.unrounded.unit === step.quantity.unit
          ? equation(symbolOf(step.find), quantity(step.quantity).text)
          : equation(symbolOf(step.find), quantity(step.unrounded).text, quantity(step.quantity).text)
    }
  }
  // a number that is converted is given and converted in one line
  const converted = new Set(solution.steps.flatMap((step) => (step.kind === 'convert' ? [step.symbol] : [])))
  return solution.steps
    .filter((step) => step.kind !== 'given' || !converted.has(step.symbol))
    .map((step) => ({ kind: step.kind, text: text(step), ...noteOf(step, solution) }))
}

function noteOf(step: Step, { symbols }: WorkedSolution): { readonly note?: string } {
  switch (step.kind) {
    case 'given':
    case 'called':
      return { note: step.meaning }
    case 'convert':
      return { note: symbols[step.symbol]?.meaning ?? '' }
    case 'result':
      return { note: step.rule }
    default:
      return {}
  }
}

/**
 * The formula of a card, or any expression over its symbols, in a notation.
 *
 * @param find - symbol on the left; none for an expression alone
 * @param expression - right side
 * @param symbols - how the symbols look
 * @param notation - plain text, LaTeX or MathML
 * @returns the equation
 * @throws LitrebarError `input` for what is no expression, no symbols or no notation
 */
export function equationOf(
  find: string | undefined,
  expression: Expression,
  symbols: Readonly<Record<string, Pick<CardSymbol, 'letter' | 'subscript'>>>,
  notation: Notation,
): string {
  if (find !== undefined) requireShape('find', find, 'text')
  requireShape('expression', expression, 'expression')
  requireShape('symbols', symbols, { each: lookShape })
  requireShape('notation', notation, notationShape)
  const symbolOf = (name: string): string =>
    notation.symbol((Object.hasOwn(symbols, name) ? symbols[name] : undefined) ?? { letter: name })
  return notation.group(
    [
      ...(find === undefined ? [] : [symbolOf(find)]),
      written(expression, notation, (name) => ({ text: symbolOf(name), binding: 9 }), {}, symbolOf).text,
    ].join(notation.infix['=']),
  )
}
