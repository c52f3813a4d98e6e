import type { NumberStyle } from '../units/index.ts'
import { linesOf, type Notation, type WorkedLine } from './notation.ts'
import type { WorkedSolution } from './worked-solution.ts'

const greek: Readonly<Record<string, string>> = {
  α: '\\alpha',
  β: '\\beta',
  γ: '\\gamma',
  Δ: '\\Delta',
  δ: '\\delta',
  ε: '\\varepsilon',
  η: '\\eta',
  κ: '\\kappa',
  λ: '\\lambda',
  μ: '\\mu',
  π: '\\pi',
  ρ: '\\rho',
  σ: '\\sigma',
  τ: '\\tau',
  φ: '\\varphi',
  ω: '\\omega',
}

/** LaTeX without packages: units in `\mathrm`, which every renderer knows. */
export const latexNotation: Notation = {
  number: latexNumber,
  quantity: (text, unit) => (unit === '' ? latexNumber(text) : `${latexNumber(text)}\\,\\mathrm{${latexUnit(unit)}}`),
  symbol: ({ letter, subscript }) => {
    const base = greek[letter] ?? letter
    return subscript === undefined ? base : `${base}_{\\mathrm{${subscript}}}`
  },
  infix: { '+': ' + ', '-': ' - ', '*': ' \\cdot ', '=': ' = ' },
  fraction: (over, under) => `\\frac{${over}}{${under}}`,
  fractionHasLevels: true,
  power: (base, exponent) => `${base}^{${exponent}}`,
  root: (inner) => `\\sqrt{${inner}}`,
  call: (name, parts) => `${/^[a-z]{2,}$/.test(name) ? `\\${name}` : name}\\left(${parts.join(', ')}\\right)`,
  brackets: (inner) => `\\left(${inner}\\right)`,
  group: (inner) => inner,
}

/**
 * A worked solution as lines of LaTeX, each for math mode.
 *
 * @param solution - the worked solution
 * @param style - decimal sign and grouping
 * @returns one line for each step
 */
export function latexLines(solution: WorkedSolution, style: NumberStyle = {}): WorkedLine[] {
  return linesOf(solution, latexNotation, style)
}

function latexNumber(text: string): string {
  return text.replace('−', '-').replace(',', '{,}').replaceAll('\u202f', '\\,')
}

function latexUnit(unit: string): string {
  const digits = { '¹': '1', '²': '2', '³': '3', '₂': '2' } as const
  return unit
    .replace(/⁻?[¹²³]/g, (mark) => `^{${mark.replace('⁻', '-').replace(/[¹²³]/, (digit) => digits[digit as '²'])}}`)
    .replace(/H₂O|H2O/, 'H_2O')
    .replaceAll('·', '{\\cdot}')
    .replaceAll('°', '{}^{\\circ}')
    .replaceAll('µ', '\\mu{}')
    .replaceAll('%', '\\%')
    .replaceAll(' ', '\\ ')
}
