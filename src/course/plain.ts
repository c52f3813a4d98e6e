import type { NumberStyle } from '../units/index.ts'
import { linesOf, type Notation, type WorkedLine } from './notation.ts'
import { quantityText } from './quantity-text.ts'
import { requireSolution } from './require-solution.ts'
import type { WorkedSolution } from './worked-solution.ts'

/** Plain text: true minus, middle dot, narrow no-break space before units. */
export const plainNotation: Notation = {
  number: (text) => text,
  quantity: quantityText,
  symbol: ({ letter, subscript }) => (subscript === undefined ? letter : `${letter}_${subscript}`),
  infix: { '+': ' + ', '-': ' − ', '*': ' · ', '=': ' = ' },
  fraction: (over, under) => `${over} / ${under}`,
  fractionHasLevels: false,
  power: (base, exponent) => `${base}^${exponent.includes(' ') ? `(${exponent})` : exponent}`,
  root: (inner) => `√(${inner})`,
  word: (name) => name,
  call: (name, parts) => `${name}(${parts.join(', ')})`,
  brackets: (inner) => `(${inner})`,
  group: (inner) => inner,
}

/**
 * A worked solution as lines of plain text, for a console or a text alternative.
 *
 * @param solution - the worked solution
 * @param style - decimal sign and grouping
 * @returns one line for each step
 * @throws LitrebarError `input` for what is no worked solution or no style
 */
export function plainLines(solution: WorkedSolution, style: NumberStyle = {}): WorkedLine[] {
  requireSolution(solution, style)
  return linesOf(solution, plainNotation, style)
}
