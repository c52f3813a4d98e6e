import { LitrebarError, requireText, shown } from '../errors/index.ts'

/**
 * Text made fit for HTML, XML and attributes.
 *
 * @param text - any text
 * @returns the text with its markup characters replaced
 */
export function escaped(text: string): string {
  requireText('text', text)
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;')
}

const latexCharacters: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '{': '\\{',
  '}': '\\}',
  $: '\\$',
  '&': '\\&',
  '#': '\\#',
  '%': '\\%',
  _: '\\_',
  '^': '\\textasciicircum{}',
  '~': '\\textasciitilde{}',
  '<': '\\textless{}',
  '>': '\\textgreater{}',
  '|': '\\textbar{}',
  '"': "''",
  '\u202f': '\\,',
  '\u00a0': '~',
  '\u2009': '\\,',
  '−': '\\ensuremath{-}',
  '≤': '\\ensuremath{\\leq}',
  '≥': '\\ensuremath{\\geq}',
  '≈': '\\ensuremath{\\approx}',
  '√': '\\ensuremath{\\surd}',
  '⋅': '\\ensuremath{\\cdot}',
  '⁻': '\\textsuperscript{-}',
  '⁰': '\\textsuperscript{0}',
  '⁴': '\\textsuperscript{4}',
  '⁵': '\\textsuperscript{5}',
  '⁶': '\\textsuperscript{6}',
  '₂': '\\textsubscript{2}',
  α: '\\ensuremath{\\alpha}',
  β: '\\ensuremath{\\beta}',
  γ: '\\ensuremath{\\gamma}',
  Δ: '\\ensuremath{\\Delta}',
  ζ: '\\ensuremath{\\zeta}',
  η: '\\ensuremath{\\eta}',
  θ: '\\ensuremath{\\theta}',
  κ: '\\ensuremath{\\kappa}',
  λ: '\\ensuremath{\\lambda}',
  μ: '\\ensuremath{\\mu}',
  π: '\\ensuremath{\\pi}',
  ρ: '\\ensuremath{\\rho}',
  σ: '\\ensuremath{\\sigma}',
  φ: '\\ensuremath{\\varphi}',
  Ω: '\\ensuremath{\\Omega}',
}

/**
 * Text made fit for LaTeX outside formulas: characters that LaTeX reads as commands stand for themselves.
 *
 * @param text - any text
 * @returns the text with its command characters replaced
 */
export function escapedLatex(text: string): string {
  requireText('text', text)
  return Array.from(text, (character) =>
    Object.hasOwn(latexCharacters, character) ? latexCharacters[character] : character,
  ).join('')
}

/**
 * Text made fit for one line of Markdown: no character of it starts emphasis, a link, code, markup or a new cell.
 *
 * @param text - any text
 * @returns the text in one line, its marks escaped
 */
export function escapedMarkdown(text: string): string {
  requireText('text', text)
  return text
    .replaceAll(/\s*[\r\n]+\s*/g, ' ')
    .replaceAll(/[\\`*_[\]<>|$]/g, '\\$&')
    .replaceAll('&', '&amp;')
    .replace(/^(\s*)([#+-]|\d+[.)](?=\s))/, (_, space: string, mark: string) =>
      mark.length === 1 ? `${space}\\${mark}` : `${space}${mark.slice(0, -1)}\\${mark.slice(-1)}`,
    )
}

/**
 * Refuses an id that could end an attribute or miss its target.
 *
 * @param argument - the parameter with its path
 * @param id - a letter, then letters, digits, hyphens or underscores
 * @throws LitrebarError `input` for any other text
 */
export function requireId(argument: string, id: unknown): void {
  if (typeof id === 'string' && /^[A-Za-z][A-Za-z0-9_-]{0,99}$/.test(id)) return
  throw new LitrebarError({
    code: 'input',
    argument,
    value: typeof id === 'string' ? JSON.stringify(id.slice(0, 80)) : shown(id),
    expected: 'a letter, then letters, digits, hyphens or underscores',
    hint: 'Ids become the targets of links.',
  })
}
