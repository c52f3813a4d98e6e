import type { NumberStyle } from '../units/index.ts'
import { escapedLatex } from './escape.ts'
import { linesOf, type Notation, type WorkedLine } from './notation.ts'
import { requireSolution } from './require-solution.ts'
import type { WorkedSolution } from './worked-solution.ts'

const greek: Readonly<Record<string, string>> = {
  α: '\\alpha',
  β: '\\beta',
  γ: '\\gamma',
  Δ: '\\Delta',
  δ: '\\delta',
  ε: '\\varepsilon',
  ζ: '\\zeta',
  η: '\\eta',
  θ: '\\theta',
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

const knownWords: ReadonlySet<string> = new Set(['ln', 'exp', 'sin', 'cos', 'tan', 'arctan', 'min', 'max'])

/** LaTeX without packages: units in `\mathrm`, which every renderer knows. */
export const latexNotation: Notation = {
  number: latexNumber,
  quantity: (text, unit) =>
    unit === '' ? latexNumber(text) : `${latexNumber(text)}${unit === '°' ? '' : '\\,'}\\mathrm{${mathText(unit)}}`,
  symbol: ({ letter, subscript }) => {
    const base = Object.hasOwn(greek, letter)
      ? (greek[letter] as string)
      : letter.length === 1
        ? mathText(letter)
        : `\\mathrm{${mathText(letter)}}`
    return subscript === undefined ? base : `${base}_{\\mathrm{${mathText(subscript)}}}`
  },
  infix: { '+': ' + ', '-': ' - ', '*': ' \\cdot ', '=': ' = ' },
  fraction: (over, under) => `\\frac{${over}}{${under}}`,
  fractionHasLevels: true,
  power: (base, exponent) => `${base}^{${exponent}}`,
  root: (inner) => `\\sqrt{${inner}}`,
  word: (name) => (knownWords.has(name) ? `\\${name}` : `\\mathrm{${mathText(name)}}`),
  call: (name, parts) => `${name}\\left(${parts.join(', ')}\\right)`,
  brackets: (inner) => `\\left(${inner}\\right)`,
  group: (inner) => inner,
}

/**
 * A worked solution as lines of LaTeX, each for math mode.
 *
 * @param solution - the worked solution
 * @param style - decimal sign and grouping
 * @returns one line for each step
 * @throws LitrebarError `input` for what is no worked solution or no style
 */
export function latexLines(solution: WorkedSolution, style: NumberStyle = {}): WorkedLine[] {
  requireSolution(solution, style)
  return linesOf(solution, latexNotation, style)
}

function latexNumber(text: string): string {
  return text.replace('−', '-').replace(',', '{,}').replaceAll('\u202f', '\\,')
}

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹'
const lowered = '₀₁₂₃₄₅₆₇₈₉'

/** Text inside `\mathrm`: raised and lowered digits become exponents and indices, letters beyond ASCII their commands. */
function mathText(text: string): string {
  return text
    .replaceAll(/[\\{}$&#%_^~]/g, escapedLatex)
    .replaceAll(/⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/g, (mark) => `^{${digitsOf(mark, raised)}}`)
    .replaceAll(/[₀-₉]+/g, (mark) => `_{${digitsOf(mark, lowered)}}`)
    .replaceAll('·', '{\\cdot}')
    .replaceAll('°', '{}^{\\circ}')
    .replaceAll(/[µμ]/g, '\\mu{}')
    .replaceAll('Ω', '\\Omega{}')
    .replaceAll(/[−–]/g, '-')
    .replaceAll('’', "'")
    .replaceAll(/[α-ωΔ]/g, (letter) => (Object.hasOwn(greek, letter) ? `${greek[letter] ?? ''}{}` : letter))
    .replaceAll(/[\s\u202f]/g, '\\ ')
}

function digitsOf(mark: string, digits: string): string {
  return mark.replaceAll(/./gu, (digit) => (digit === '⁻' ? '-' : String(digits.indexOf(digit))))
}
