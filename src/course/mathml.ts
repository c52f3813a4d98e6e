import type { NumberStyle } from '../units/index.ts'
import { escaped } from './escape.ts'
import { linesOf, type Notation, type WorkedLine } from './notation.ts'
import { plainNotation } from './plain.ts'
import { requireSolution } from './require-solution.ts'
import type { WorkedSolution } from './worked-solution.ts'

/** MathML Core, which browsers set without help. */
export const mathmlNotation: Notation = {
  number: (text) => `<mn>${escaped(text)}</mn>`,
  quantity: (text, unit) =>
    unit === ''
      ? `<mn>${escaped(text)}</mn>`
      : `<mrow><mn>${escaped(text)}</mn>${unit === '°' ? '' : '<mspace width="0.17em"></mspace>'}<mtext>${escaped(unit)}</mtext></mrow>`,
  symbol: ({ letter, subscript }) => {
    const base = `<mi>${escaped(letter)}</mi>`
    // the padding gives every letter the same depth: without a mathematical font, browsers hang a subscript from the letter's own
    return subscript === undefined
      ? base
      : `<msub><mpadded depth="0.22em">${base}</mpadded><mtext>${escaped(subscript)}</mtext></msub>`
  },
  infix: { '+': '<mo>+</mo>', '-': '<mo>−</mo>', '*': '<mo>⋅</mo>', '=': '<mo>=</mo>' },
  fraction: (over, under) => `<mfrac><mrow>${over}</mrow><mrow>${under}</mrow></mfrac>`,
  fractionHasLevels: true,
  power: (base, exponent) => `<msup><mrow>${base}</mrow><mrow>${exponent}</mrow></msup>`,
  root: (inner) => `<msqrt>${inner}</msqrt>`,
  word: (name) => `<mi>${escaped(name)}</mi>`,
  call: (name, parts) =>
    parts.some((part) => part.includes('<mfrac>'))
      ? `<mrow>${name}<mo>(</mo>${parts.join('<mo>,</mo>')}<mo>)</mo></mrow>`
      : `<mrow>${name}<mo stretchy="false">(</mo>${parts.join('<mo>,</mo>')}<mo stretchy="false">)</mo></mrow>`,
  brackets: (inner) => `<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>`,
  group: (inner) => `<mrow>${inner}</mrow>`,
}

/**
 * A worked solution as MathML elements, each with the plain line as its text alternative.
 *
 * @param solution - the worked solution
 * @param style - decimal sign and grouping
 * @returns one line for each step, each a whole `math` element
 * @throws LitrebarError `input` for what is no worked solution or no style
 */
export function mathmlLines(solution: WorkedSolution, style: NumberStyle = {}): WorkedLine[] {
  requireSolution(solution, style)
  return mathLines(solution, style)
}

/** The lines of what is known to be a solution: behind the doors that have checked it. */
export function mathLines(solution: WorkedSolution, style: NumberStyle): WorkedLine[] {
  const plain = linesOf(solution, plainNotation, style)
  return linesOf(solution, mathmlNotation, style).map((line, index) => ({
    ...line,
    text: mathElement(line.text, plain[index]?.text ?? ''),
  }))
}

/**
 * A `math` element around MathML.
 *
 * @param inner - presentation MathML
 * @param alternative - the same in plain text
 * @param display - set as a block or in the line
 * @returns the element
 */
export function mathElement(inner: string, alternative: string, display: 'block' | 'inline' = 'block'): string {
  return `<math display="${display}" alttext="${escaped(alternative)}">${inner}</math>`
}
