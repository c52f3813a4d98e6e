import type { NumberStyle } from '../units/index.ts'
import { linesOf, type Notation, type WorkedLine } from './notation.ts'
import { plainLines } from './plain.ts'
import type { WorkedSolution } from './worked-solution.ts'

/** MathML Core, which browsers set without help. */
export const mathmlNotation: Notation = {
  number: (text) => `<mn>${escaped(text)}</mn>`,
  quantity: (text, unit) =>
    unit === ''
      ? `<mn>${escaped(text)}</mn>`
      : `<mrow><mn>${escaped(text)}</mn><mspace width="0.17em"></mspace><mtext>${escaped(unit)}</mtext></mrow>`,
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
  call: (name, parts) =>
    `<mrow>${name.startsWith('<') ? name : `<mi>${escaped(name)}</mi>`}<mo stretchy="false">(</mo>${parts.join('<mo>,</mo>')}<mo stretchy="false">)</mo></mrow>`,
  brackets: (inner) => `<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>`,
  group: (inner) => `<mrow>${inner}</mrow>`,
}

/**
 * A worked solution as MathML elements, each with the plain line as its text alternative.
 *
 * @param solution - the worked solution
 * @param style - decimal sign and grouping
 * @returns one line for each step, each a whole `math` element
 */
export function mathmlLines(solution: WorkedSolution, style: NumberStyle = {}): WorkedLine[] {
  const plain = plainLines(solution, style)
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
 * @returns the element, set as a block
 */
export function mathElement(inner: string, alternative: string): string {
  return `<math display="block" alttext="${escaped(alternative)}">${inner}</math>`
}

/**
 * Text made fit for HTML, XML and attributes.
 *
 * @param text - any text
 * @returns the text with its markup characters replaced
 */
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}
