import { LitrebarError, requireText, shown } from '../errors/index.ts'

/** White space that holds a line end, as one space: in one regular expression this would be quadratic. */
function inOneLine(text: string): string {
  return text.replaceAll(/\s+/g, (space) => (/[\r\n]/.test(space) ? ' ' : space))
}

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
    .replaceAll('\r', '&#13;') // parsers read a bare one as a line feed
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
  '"': "{''}",
  '[': '{[}', // after a line end it would open an argument
  ']': '{]}',
  '*': '{*}',
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

/** Neighbours that LaTeX would set as one other character. */
const ligatures = new Set(['--', "''", '``', '?`', '!`', ',,'])

/**
 * Text made fit for one paragraph of LaTeX outside formulas: characters that LaTeX reads as commands stand for themselves.
 *
 * @param text - any text
 * @returns the text in one line, its command characters replaced
 */
export function escapedLatex(text: string): string {
  requireText('text', text)
  return Array.from(inOneLine(text))
    .map((character, at, all) => {
      if (Object.hasOwn(latexCharacters, character)) return latexCharacters[character]
      return ligatures.has(character + (all[at + 1] ?? '')) ? `${character}{}` : character
    })
    .join('')
}

/**
 * Text made fit for one line of Markdown: no character of it starts emphasis, a link, code, markup or a new cell.
 *
 * @param text - any text
 * @returns the text in one line, its marks escaped
 */
export function escapedMarkdown(text: string): string {
  requireText('text', text)
  return inOneLine(text)
    .replace(/^\s+/, ' ') // four spaces would be code
    .replaceAll(/[\\`*_[\]<>|$#~^@{}]/g, '\\$&')
    .replaceAll('&', '&amp;')
    .replaceAll(/:(?=[\w+/-])/g, '\\:') // an address, a picture by its name
    .replaceAll(/www\./gi, (word) => `${word.slice(0, -1)}\\.`)
    .replace(/^( ?)([+:-])/, '$1\\$2')
    .replace(/^( ?\(?(?:\d{1,9}|[a-z]{1,9}))([.)])(?=\s|$)/i, '$1\\$2') // an item of a list
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
